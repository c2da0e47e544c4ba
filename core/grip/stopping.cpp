// Symbols: v speed, mu friction, th the angle of the road, t reaction time, a deceleration.
#include "core/grip/stopping.hpp"

#include <algorithm>
#include <cmath>

namespace treadwater::grip {
namespace {

constexpr double sight_seconds = 2.5;
constexpr double sight_feet = 11.2;   // ft/s^2
constexpr double sight_metres = 3.4;  // m/s^2

}  // namespace

double deceleration(double friction, double grade) {
  return exact::standard_gravity * (friction + grade) / std::sqrt(1.0 + grade * grade);
}

std::optional<Length> braking_distance(Speed speed, double friction, double grade) {
  return stopping_distance(speed, Duration(), friction, grade);
}

std::optional<Length> stopping_distance(Speed speed, Duration reaction, double friction,
                                        double grade) {
  const double a = deceleration(friction, grade);
  const double v = in_metres_per_second(speed);
  if (!(a > 0.0) || !(v >= 0.0) || !(reaction >= Duration())) return std::nullopt;
  return travelled(speed, reaction) + metres(v * v / (2.0 * a));
}

Speed speed_left(Speed speed, Length room, Length needed) {
  if (room >= needed) return Speed();
  const double share = room / needed;
  return share > 0.0 ? speed * std::sqrt(1.0 - share) : speed;
}

std::optional<Speed> speed_to_stop_within(Length seen, Duration reaction, double friction,
                                          double grade) {
  const double a = deceleration(friction, grade);
  if (!(a > 0.0) || !(seen >= Length()) || !(reaction >= Duration())) return std::nullopt;
  const double at = a * in_seconds(reaction);
  // v t + v^2 / (2 a) = seen, in the form that loses no digits.
  const double room = 2.0 * a * in_metres(seen);
  return metres_per_second(room > 0.0 ? room / (at + std::sqrt(at * at + room)) : 0.0);
}

RuleDistance highway_code(Speed speed) {
  const double mph = in_miles_per_hour(speed);
  return {feet(mph), feet(mph * mph / 20.0)};
}

RuleDistance driving_school(Speed speed, Braking braking) {
  const double tenth = in_kilometres_per_hour(speed) / 10.0;
  return {metres(3.0 * tenth), metres(tenth * tenth * (braking == Braking::full ? 0.5 : 1.0))};
}

Length sight_distance_us(Speed speed) {
  const double mph = in_miles_per_hour(speed);
  return feet(1.47 * mph * sight_seconds + 1.075 * mph * mph / sight_feet);
}

Length sight_distance_metric(Speed speed) {
  const double kmh = in_kilometres_per_hour(speed);
  return metres(0.278 * kmh * sight_seconds + 0.039 * kmh * kmh / sight_metres);
}

std::optional<Length> sight_distance_on_grade(Speed speed, double grade) {
  const double kmh = in_kilometres_per_hour(speed);
  const double share = sight_metres / 9.81 + grade;
  if (!(share > 0.0) || !(kmh >= 0.0)) return std::nullopt;
  return metres(0.278 * kmh * sight_seconds + kmh * kmh / (254.0 * share));
}

Duration following_time(GapRoad road) {
  switch (road) {
    case GapRoad::dry:
      return seconds(2.0);
    case GapRoad::wet:
      return seconds(2.0 * highway_code_wet);
    case GapRoad::ice:
      break;
  }
  return seconds(2.0 * highway_code_ice);
}

Length following_gap(Speed speed, GapRoad road) { return travelled(speed, following_time(road)); }

}  // namespace treadwater::grip
