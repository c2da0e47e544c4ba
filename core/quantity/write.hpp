// Writing figures in the user's units, with no more digits than they deserve.
//
// Three systems: metric (km/h, bar, mm, kg), uk (mph, psi, mm, kg), us (mph, psi, 32nds and inches,
// lb). Values are rounded, never truncated, except where a function says so.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/quantity/quantity.hpp"

namespace treadwater {

enum class UnitSystem { metric, uk, us };

std::optional<UnitSystem> find_unit_system(std::string_view id);

// The decimal sign on this thread: "." unless the current language says otherwise
// (words/catalogue.hpp). The view must outlive its use.
void use_decimal_sign(std::string_view sign);
std::string_view decimal_sign();

// A number with a fixed count of decimals, rounded half away from zero: fixed(2.345, 1) is "2.3".
// Range: up to 9 decimals, below 1e9, far more than a person is ever shown. Outside it, a dash.
std::string fixed(double value, int decimals);
// The same without trailing zeros: trimmed(3.0, 1) is "3".
std::string trimmed(double value, int decimals);
// A number with two or more significant digits and no exponent: significant(0.0345, 2) "0.035".
std::string significant(double value, int digits);
// The same with its last digit rounded down, or up.
std::string significant_at_most(double value, int digits);
std::string significant_at_least(double value, int digits);
// A change, with its sign: "+2.1", "-3", "0".
std::string write_signed(double change, int decimals);

std::string write(GaugePressure p, UnitSystem units);  // "2.2 bar (220 kPa)", "32 psi (220 kPa)"
// A minimum pressure, rounded up to the digits shown, so that whoever sets it has enough.
std::string write_at_least(GaugePressure p, UnitSystem units);
// A pressure below such a minimum, rounded down: it never looks like enough.
std::string write_at_most(GaugePressure p, UnitSystem units);
std::string write(Mass m, UnitSystem units);  // "615 kg", "1356 lb"
// A maximum mass, rounded down to the digits shown; one above it, up.
std::string write_at_most(Mass m, UnitSystem units);
std::string write_at_least(Mass m, UnitSystem units);
std::string write(Speed v, UnitSystem units);         // "73 km/h", "45 mph"
std::string write_number(Speed v, UnitSystem units);  // the same without its unit
std::string write_depth(Length l, UnitSystem units);  // tread: "3 mm", "4/32 in"
std::string write_worn(Length l, UnitSystem units);   // tread worn off: "1.0 mm", "1.3/32 in"
std::string write_water(Length l, UnitSystem units);  // water: "5 mm", "0.20 in"
std::string write_size(Length l, UnitSystem units, int decimals = 0);  // "632 mm", "24.9 in"
std::string write_signed_size(Length change, UnitSystem units, int decimals = 0);  // "+3 mm"
std::string write_signed_percent(double percent, int decimals);                    // "+2.1 %"
// A wheel by itself, in the same units in every system: its rim "6.5 in", its mass "16.4 kg".
std::string write_rim(Length width);
std::string write_wheel(Mass m);
std::string write_signed_wheel(Mass change);                     // "+1.5 kg"
std::string write(Area a, UnitSystem units);                     // "180 cm²", "28 sq in"
std::string write(Temperature t, UnitSystem units);              // "15 °C", "59 °F"
std::string write_kelvins(double difference, UnitSystem units);  // "10 °C", "18 °F"
// On the road, as given or exact, with a decimal below ten: "65 m", "213 ft", "7.5 m".
std::string write_distance(Length l, UnitSystem units);
std::string write_whole_distance(Length l, UnitSystem units);  // "8 m"
// As estimated, to two digits (to whole metres or feet below ten): "58 m", "190 ft".
std::string write_estimated_distance(Length l, UnitSystem units);
std::string write_estimated_number(Length l, UnitSystem units);  // the same without its unit
// The longest of an estimate, rounded up to its two digits, so that whoever leaves that much has
// enough.
std::string write_longest_distance(Length l, UnitSystem units);
std::string write_rain(RainIntensity rain);  // "4 mm/h"
std::string write_seconds(Duration time);    // "4.2 s", "34 s"
std::string write_minutes(Duration time);    // "46 min"
std::string write_share(double share);       // 0 to 1: "34 %"

// For charts: the number in the user's unit, and the unit's symbol.
struct Shown {
  double value;
  std::string_view unit;
};
Shown shown(Speed v, UnitSystem units);            // km/h, mph
Shown shown(GaugePressure p, UnitSystem units);    // bar, psi
Shown shown(Temperature t, UnitSystem units);      // °C, °F
Shown shown(Mass m, UnitSystem units);             // kg, lb
Shown shown_depth(Length l, UnitSystem units);     // tread: mm, 1/32 in
Shown shown_water(Length l, UnitSystem units);     // mm, in
Shown shown_distance(Length l, UnitSystem units);  // m, ft
double in_road_units(Length l, UnitSystem units);  // km, miles
// And the inverse, for stepping along an axis or adding numbers as shown.
Speed speed_shown_as(double value, UnitSystem units);
Length distance_shown_as(double value, UnitSystem units);
Length road_unit(UnitSystem units);  // a kilometre, a mile

// A round speed for examples: 100 km/h, 60 mph.
Speed round_speed(UnitSystem units);
// The highest multiple of five, in the user's unit, not above the speed.
Speed floor_to_five(Speed v, UnitSystem units);

}  // namespace treadwater
