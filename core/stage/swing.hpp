// What would change the choice: the smallest change in one stage's chance of a wet road, and in the
// air, that makes another kind of set go on first (Swing and AirSwing in plan.hpp). For this room
// only.
#pragma once

#include <cstdint>

#include "core/stage/plan.hpp"
#include "core/stage/solver.hpp"

namespace treadwater::stage {

// Fills in the swings of a plan with more than one first choice. `work` is the effort the plan
// took.
void look_for_swing(const Event& event, const Question& question, const Model& model,
                    std::uint64_t work, Plan& plan);

}  // namespace treadwater::stage
