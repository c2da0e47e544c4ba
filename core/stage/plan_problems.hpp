// Why there is no plan, in plain sentences, and what would help. For this room only.
#pragma once

#include <cstddef>

#include "core/stage/model.hpp"
#include "core/stage/plan.hpp"

namespace treadwater::stage {

// A leg that no set in the van may run: why not, kind by kind, and which would do.
Problem no_usable_set(const Event& event, const Model& model, std::size_t leg, bool careful);
// Every leg has a set that could run it, but not all legs in turn.
Problem no_set_left(const Event& event, const Question& question);

}  // namespace treadwater::stage
