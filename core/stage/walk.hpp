// Walks a plan through paths of weather (paths.hpp) and fills in all its figures. For this room
// only.
#pragma once

#include "core/stage/plan.hpp"
#include "core/stage/solver.hpp"

namespace treadwater::stage {

void walk(const Event& event, const Question& question, const Model& model, Solver& solver,
          Plan& plan);

}  // namespace treadwater::stage
