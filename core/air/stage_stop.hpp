// A puncture on a closed stage: the time that a wheel change loses, and driving out.
//
// Sources, one for each figure, in stage_stop.cpp: works crews at the highest level, as the press
// printed them. Range: rally cars with the tools at hand, two people, a stage driven at pace. A
// club crew is slower; on gravel the loss of driving out was found nowhere.
#pragma once

#include "core/quantity/quantity.hpp"
#include "core/standard/source.hpp"

namespace treadwater::air {

struct TimeLost {
  Duration least;
  Duration most;
};

inline constexpr TimeLost lost_by_change{seconds(90.0), seconds(100.0)};
// On tarmac, for each kilometre to the finish.
inline constexpr TimeLost lost_a_kilometre{seconds(8.0), seconds(9.3)};
// On rough gravel a change pays from here.
inline constexpr Length gravel_change_from = kilometres(5.0);
// The triangle, before the car; further if cars come fast.
inline constexpr Length least_triangle = metres(100.0);

const Source& wheel_change_source();
const Source& drive_out_source();
const Source& change_or_drive_source();
const Source& stage_triangle_source();
const Source& four_wheels_source();

}  // namespace treadwater::air
