// Quantities written with a word: their unit is one, or two of them make a range. The rest is in
// quantity/write.hpp.
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
// An estimate, with the longest rounded up: "58 m (53 to 66 m)".
std::string say_distance_band(Length central, Length shortest, Length longest, UnitSystem units);
// Of two phrases for the road's unit, the one for these units.
Phrase by_road_unit(UnitSystem units, Phrase in_kilometres, Phrase in_miles);
// "12 km", "7 miles", of a number in those units.
std::string say_road_distance(const std::string& number, UnitSystem units);
Phrase turns_on_the_road(UnitSystem units);  // of a wheel: "Turns a kilometre", "Turns a mile"
// To two digits: nearest, rounded down, rounded up.
std::string say_road_distance(Length way, UnitSystem units);
std::string say_road_distance_at_most(Length way, UnitSystem units);
std::string say_road_distance_at_least(Length way, UnitSystem units);
std::string say_odometer(Length way, UnitSystem units);  // "41200 km", "1 mile"
// A maximum speed in water; 0 becomes walking pace.
std::string say_hold_to(Speed v, UnitSystem units);
std::string say_hold_to_aloud(Speed v, UnitSystem units);
std::string say_stage_length(Length l, UnitSystem units);  // to a tenth: "15.2 km"
std::string say_duration(Duration time);  // to two digits: "40 s", "25 min", "3 h", "5 days"
std::string say_duration_at_most(Duration time);
std::string say_month(int month, int year);  // "May 2026"; months are 1 to 12

// A chance, 0 to 1: "34 %". A chance just above 0 or below 1 is not rounded to it.
std::string say_chance(double chance);
// Less than a share that rounds to 1 %.
inline constexpr double hardly_ever = 0.005;

}  // namespace treadwater
