// What the tyres of one car are to each other: left and right of an axle, front and rear. Size,
// construction, winter and run-flat tyres, pressures as cold, treads.
#pragma once

#include "core/judge/car.hpp"

namespace treadwater::judge {

void judge_axles(const Car& car, Findings& findings);

}  // namespace treadwater::judge
