// Quantities whose writing takes a word: their unit is one, or two of them make a range. The rest
// is in quantity/write.hpp.
#pragma once

#include <string>

#include "core/quantity/quantity.hpp"
#include "core/quantity/write.hpp"

namespace treadwater {

std::string say_range(Speed low, Speed high, UnitSystem units);  // "59 to 84 km/h"
std::string say_band(Speed central, Speed low, Speed high,
                     UnitSystem units);                  // "74 km/h (59 to 84 km/h)"
std::string say_speed_aloud(Speed v, UnitSystem units);  // "50 kilometres an hour"
// A speed to hold to in water, of which 0 leaves walking pace.
std::string say_hold_to(Speed v, UnitSystem units);
std::string say_hold_to_aloud(Speed v, UnitSystem units);
// "12 km", "7 miles", of a number in those units.
std::string say_road_distance(const std::string& number, UnitSystem units);
std::string say_road_distance(Length l, UnitSystem units);  // to a tenth
std::string say_duration(Duration time);  // to two digits: "40 s", "25 min", "3 h", "5 days"

// A chance, 0 to 1: "34 %". What is not quite nothing or all is not written as if it were.
std::string say_chance(double chance);
// Less than a share that rounds to 1 %.
inline constexpr double hardly_ever = 0.005;

}  // namespace treadwater
