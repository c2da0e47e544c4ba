// What a case (surface, water, tyre, tread) means in metres and km/h, as a band: the friction of
// the case is followed down through every speed of the stop, since wet friction rises as a car
// slows.
//
// On paved, straight road in closed form (stop_law.hpp); in a bend, on smooth texture and on old
// tyres in steps of 1 km/h, each with the friction of its top. Range: as friction.hpp; speeds up to
// 400 km/h. Distances: `shortest` belongs to the high friction and `longest` to the low one; an
// empty one means "will not stop" (or, in a bend, "will not hold the road"), which is an answer. On
// a wet paved road a stop from near where the grip is gone or from the onset of floating is empty
// too: where the longest is empty the car may not stop, and no distance is to be told as a value.
// Numbers that are none, or negative, give empty distances and zero speeds.
//
// Checked against 47 published wet stops (measured.hpp, tests/unit/stop_law_test.cpp).
#pragma once

#include <optional>

#include "core/grip/friction.hpp"
#include "core/quantity/quantity.hpp"
#include "core/standard/source.hpp"

namespace treadwater::grip {

struct Road {
  double grade = 0.0;            // rise over run, uphill positive
  std::optional<Length> radius;  // of a bend; empty for a straight
  double bank = 0.0;             // of the bend, see cornering.hpp
};

struct DistanceBand {
  std::optional<Length> shortest;
  std::optional<Length> central;
  std::optional<Length> longest;
};

// From one speed down to another (zero: to a standstill).
DistanceBand braking_band(const GripCase& grip_case, Speed from, Speed to, const Road& road);

// Reaction and braking to a standstill.
DistanceBand stopping_band(const GripCase& grip_case, Speed speed, Duration reaction,
                           const Road& road);

// The highest speed from which the car stops within what the driver can see. Zero: not at all.
SpeedBand seen_distance_speed(const GripCase& grip_case, Length seen, Duration reaction,
                              const Road& road);

// Speed still left after braking over `room`; zero where it has stopped. `low` is that of the high
// friction here: the better the grip, the less is left. A downhill grade that the friction does not
// hold leaves more than there was; a bend that it does not hold leaves all of it. Less grip never
// leaves less.
SpeedBand speed_left_band(const GripCase& grip_case, Speed speed, Length room, const Road& road);

// The highest speed a bend holds without braking, by the side share of cornering.hpp. 400 km/h
// where none is too high.
SpeedBand corner_speed_band(const GripCase& grip_case, Length radius, double bank);

// How many times longer a stop is on this tread than on a new one of 8 mm, straight and level. The
// band runs from the least of the three ratios to the greatest, widened upwards by 1.2: reports
// that do not state their water found more. Empty where one of the two stops is none, and in more
// than 2 mm of water, where a new tyre floats at another speed, which is not given.
struct Ratio {
  double low;
  double central;
  double high;
};
std::optional<Ratio> worn_stop_ratio(const GripCase& grip_case, Speed speed);

inline constexpr Source limits_source{
    "grip-limits", "Treadwater's own stops, with friction followed down through the speeds",
    "docs/method.md; inside its band lie 40 of 44 published wet stops", "2026",
    Standing::common_practice};

}  // namespace treadwater::grip
