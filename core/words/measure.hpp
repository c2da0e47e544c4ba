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
// Of an estimate, the longest rounded up: "58 m (53 to 66 m)".
std::string say_distance_band(Length central, Length shortest, Length longest, UnitSystem units);
// "12 km", "7 miles", of a number in those units.
std::string say_road_distance(const std::string& number, UnitSystem units);
std::string say_duration(Duration time);  // to two digits: "40 s", "25 min", "3 h", "5 days"

}  // namespace treadwater
