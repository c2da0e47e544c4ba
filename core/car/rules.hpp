// The room `car`: how the tyres of one car go together, and with the car. It is between patch and
// judge: its rules need the rooms standard, sidewall and patch.
//
// This file: which constructions may be mixed, what must be the same on an axle, tread and pressure
// left against right, wear across a tread, and the speed symbol against the car. Sources with their
// standing are in rules.cpp; thresholds without one are our choice and say so. Results are values;
// the findings have the words. NaN never gives the good result.
#pragma once

#include <optional>

#include "core/quantity/quantity.hpp"
#include "core/sidewall/sidewall.hpp"
#include "core/standard/source.hpp"
#include "core/standard/speed_symbol.hpp"

namespace treadwater::car {

// ---- constructions ----

// Two axles with single wheels: a radial in front needs radials behind, a bias-belted tyre radials
// or its like. Exempt, by the source: twin rear wheels, and three axles with one steered and one
// driven, unless a tyre's contact is 300 mm wide or more.
bool may_be_mixed(sidewall::Construction front, sidewall::Construction rear);
const Source& mixing_source();

// One axle: the same construction and the same nominal size; 80 and 82 series count as the same.
enum class AxleMatch { same, different_construction, different_size, not_known };
AxleMatch match_on_axle(const sidewall::Reading& left, const sidewall::Reading& right);
const Source& same_axle_source();

// ---- any two tyres of one car ----

// What else two tyres differ in: side by side, front and rear, the spare and the rest, a new one
// and the one now.
struct Unlike {
  bool winter = false;    // only one has the three-peak mountain and snowflake
  bool run_flat = false;  // only one is self-supporting
  bool vehicle = false;   // only one is a motorcycle's
};
Unlike unlike(const sidewall::Reading& one, const sidewall::Reading& other);
bool for_trailers_only(const sidewall::Reading& tyre);
const Source& run_flat_source();

// ---- left and right, front and rear ----

enum class Difference { none, worth_correcting, too_great };

// By the ratio of two rolling circumferences, either way up: from the first share on it is worth a
// word (gearing, speedometer and the car's electronics), from the second too much. Our choice.
inline constexpr double noticeable_change = 0.03;
inline constexpr double too_much_change = 2.0 * noticeable_change;
Difference circumference_difference(double ratio);

// None up to 20 kPa, by which two gauges may differ; too great if one is a fifth below the other,
// the share at which a monitoring system must warn.
Difference pressure_difference(GaugePressure left, GaugePressure right);
const Source& pressure_difference_source();
// None up to 2 mm (our choice); too great above 5 mm, the limit in one country's law.
Difference tread_difference(Length left, Length right);
const Source& tread_difference_source();

// The deeper tread belongs at the rear: is it in front by more than two gauges may differ?
bool deeper_tread_in_front(Length front, Length rear);
const Source& deeper_to_the_rear_source();

// ---- wear across one tread ----

// What three depths say; differences of up to two gauge errors (0.4 mm) say nothing. More than one
// may apply. Nothing for a depth below zero.
enum class Side { none, inner, outer };
struct WearPattern {
  bool under_inflated = false;  // both shoulders shallower than the centre
  bool over_inflated = false;   // the centre shallower than both shoulders
  Side alignment = Side::none;  // the shallower side, where the two differ
  bool even() const { return !under_inflated && !over_inflated && alignment == Side::none; }
};
std::optional<WearPattern> wear_pattern(Length inner, Length centre, Length outer);
const Source& wear_pattern_source();

// ---- speed symbol against the car ----

enum class SymbolFit {
  enough,
  winter_exception,  // allowed on a tyre with the snowflake, with its speed shown to the driver
  too_low
};
// Winter tyres with the three-peak mountain and snowflake may have a symbol of 160 km/h or more on
// a faster car.
SymbolFit symbol_fit(standard::SpeedSymbol symbol, Speed car_top_speed, bool snowflake);
const Source& winter_exception_source();

// The speed to choose the symbol by where a national rule adds a tolerance to the car's registered
// top speed: 1.03 V + 3.5 km/h to 150, 1.01 V + 6.5 above; 1.05 V for a European type approval.
Speed speed_with_tolerance(Speed car_top_speed, bool european_approval);
const Source& speed_tolerance_source();

}  // namespace treadwater::car
