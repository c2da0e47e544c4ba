// What would change the choice: the least change of one stage's chance of a wet road, and of the
// air, that makes another kind of set go on first (Swing and AirSwing in plan.hpp). Inside this
// room only.
#pragma once

#include <cstdint>

#include "core/stage/plan.hpp"
#include "core/stage/solver.hpp"

namespace treadwater::stage {

// Fills in the swings of a plan with more than one first choice. `work` is what it took to solve.
void look_for_swing(const Event& event, const Question& question, const Model& model,
                    std::uint64_t work, Plan& plan);

}  // namespace treadwater::stage
