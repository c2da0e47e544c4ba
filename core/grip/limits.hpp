// What a case (surface, water, tyre, tread) means in metres and km/h, as a band: the friction of
// the case is followed down through every speed of the stop, since wet friction rises as a car
// slows.
//
// On a paved, straight road in closed form (stop_law.hpp); in a bend, on wet smooth texture
// (concrete too), on old tyres and off the pavement in steps of 1 km/h, each with the friction of
// its top. Range: as friction.hpp; speeds up to 400 km/h. Distances: `shortest` is for the high
// friction, `longest` for the low one; empty means "will not stop" (or, in a bend, "will not hold
// the road"), which is an answer. On a wet paved road a stop from near the speed at which the grip
// is gone, or from the onset of aquaplaning, is empty too: if the longest is empty the car may not
// stop, and no distance is given as a value. NaN and negative numbers give empty distances and zero
// speeds.
//
// Checked against 47 published wet stops (measured.hpp, tests/unit/stop_law_test.cpp).
#pragma once

#include <optional>

#include "core/grip/friction.hpp"
#include "core/grip/stopping.hpp"
#include "core/quantity/quantity.hpp"
#include "core/standard/source.hpp"

namespace treadwater::grip {

// The highest speed that any answer here gives.
inline constexpr Speed end_of_model = kilometres_per_hour(400.0);

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

// Braking to a standstill from ever higher speeds, each from the one before, so that friction is
// looked up only once per step. An end of the band that does not stop from one speed does not stop
// from a higher one.
// Range: as braking_band; the speeds must rise.
class BrakingBySpeed {
 public:
  BrakingBySpeed(const GripCase& grip_case, const Road& road) : case_(grip_case), road_(road) {}
  const DistanceBand& up_to(Speed speed);

 private:
  GripCase case_;
  Road road_;
  Speed from_{};
  DistanceBand sum_{Length(), Length(), Length()};
};

// Reaction and braking to a standstill.
DistanceBand stopping_band(const GripCase& grip_case, Speed speed, Duration reaction,
                           const Road& road);

// The highest speed from which the car stops within what the driver can see. Zero: not at all.
SpeedBand seen_distance_speed(const GripCase& grip_case, Length seen, Duration reaction,
                              const Road& road);

// Speed left after braking over `room`; zero if it has stopped. Here `low` is for the high
// friction: the better the grip, the less is left. A downhill gradient too steep for the friction
// leaves more than there was; a bend too tight for it leaves all of it. Less grip never leaves
// less.
SpeedBand speed_left_band(const GripCase& grip_case, Speed speed, Length room, const Road& road);

// The highest speed at which a bend can be taken without braking, by the side share of
// cornering.hpp. 400 km/h if none is too high.
SpeedBand corner_speed_band(const GripCase& grip_case, Length radius, double bank);

// Is the tread known to matter, and is it less than new? Only on a wet paved road, and for a tyre
// that has tread.
bool wear_matters(const GripCase& grip_case);
inline constexpr Length new_tread = millimetres(8.0);
GripCase when_new(GripCase grip_case);

// The speed left at the point where the same tyre, new, has stopped. Empty if that one may not
// stop.
std::optional<SpeedBand> speed_where_new_stops(const GripCase& grip_case, Speed speed,
                                               const Road& road);

// On snow too, the gap to the vehicle in front is that for ice.
GapRoad gap_road(const GripCase& grip_case);

// How many times longer a stop is on this tread than on a new one of 8 mm, straight and level. The
// band runs from the least of the three ratios to the greatest, widened upwards by 1.2: reports
// that do not state their water found more. Empty if one of the two may not stop.
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
