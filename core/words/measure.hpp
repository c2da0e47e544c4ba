// Quantities whose writing takes a word: their unit is one, or two of them make a range. The rest
// is in quantity/write.hpp.
#pragma once

#include <string>

#include "core/quantity/quantity.hpp"
#include "core/quantity/write.hpp"
#include "core/words/phrase.hpp"

namespace treadwater {

std::string say_range(Speed low, Speed high, UnitSystem units);  // "59 to 84 km/h"
std::string say_band(Speed central, Speed low, Speed high,
                     UnitSystem units);                  // "74 km/h (59 to 84 km/h)"
std::string say_speed_aloud(Speed v, UnitSystem units);  // "50 kilometres an hour"
// "12 km", "7 miles", of a number in those units.
std::string say_road_distance(const std::string& number, UnitSystem units);
Phrase turns_on_the_road(UnitSystem units);  // of a wheel: "Turns a kilometre", "Turns a mile"
std::string say_duration(Duration time);     // to two digits: "40 s", "25 min", "3 h", "5 days"

}  // namespace treadwater
