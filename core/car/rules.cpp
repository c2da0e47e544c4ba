#include "core/car/rules.hpp"

#include <algorithm>
#include <cmath>

#include "core/standard/instrument.hpp"

namespace treadwater::car {
namespace {

using sidewall::Construction;
using sidewall::Reading;

constexpr Source mixing{
    "construction-mixing", "The Motor Vehicles (Approval) Regulations, SI 2001/25",
    "Schedule 3 para. 5; regulation 26 of 1986 itself not seen", "2001", Standing::published};
constexpr Source same_axle{"same-axle", "MOT inspection manual, 4.1, tyres of one axle",
                           "same structure, same nominal size; 80 and 82 % the same", "",
                           Standing::secondary};
constexpr Source pressures{"pressure-left-right", "UN R141: warning at 20 % under",
                           "as summarised by a tyre trade page; used here for one axle", "",
                           Standing::secondary};
constexpr Source treads{"tread-left-right", "French law: 5 mm between two tyres of an axle",
                        "read in a copy of the decree; 2 mm is our choice", "",
                        Standing::secondary};
constexpr Source rear{"deeper-tread-rear", "The deeper tread to the rear axle",
                      "common practice, no source", "", Standing::common_practice};
constexpr Source pattern{"wear-pattern", "What wear across the tread points to",
                         "common practice, no source", "", Standing::common_practice};
constexpr Source winter{"winter-symbol", "Regulation (EU) 458/2011, 4.2.2 (now UN R142)",
                        "quoted in German: 160 km/h or the car's top speed, and a label", "2011",
                        Standing::secondary};
constexpr Source run_flats{"run-flat-mixing", "Run-flat and plain tyres on one car",
                           "tyre makers advise against it, on one axle above all; no page kept", "",
                           Standing::common_practice};
constexpr Source tolerance{"speed-tolerance", "Tolerance on the registered top speed",
                           "German rule, with worked examples, in owners' pages", "2004",
                           Standing::secondary};

constexpr Length hair = millimetres(0.001);  // two readings and their difference are not exact
constexpr Length two_gauges = 2.0 * standard::tread_gauge_error + hair;

int rank(Construction c) {
  return c == Construction::cross_ply ? 0 : c == Construction::bias_belted ? 1 : 2;
}

double series(const Reading& r) {
  const double a = r.aspect_percent.value_or(0.0);
  return a == 82.0 ? 80.0 : a;
}

}  // namespace

bool may_be_mixed(Construction front, Construction rear_axle) {
  return rank(rear_axle) >= rank(front);
}

AxleMatch match_on_axle(const Reading& left, const Reading& right) {
  if (left.construction && right.construction && *left.construction != *right.construction)
    return AxleMatch::different_construction;
  if (left.rim_diameter != right.rim_diameter || left.section_width != right.section_width ||
      left.stated_outer_diameter != right.stated_outer_diameter || series(left) != series(right))
    return AxleMatch::different_size;
  if (!left.construction || !right.construction) return AxleMatch::not_known;
  // A size in letters has no width to compare: the same text is the same size.
  if (!left.section_width && left.canonical != right.canonical) return AxleMatch::not_known;
  return AxleMatch::same;
}

Unlike unlike(const Reading& one, const Reading& other) {
  return {sidewall::has_mark(one, "three_peak") != sidewall::has_mark(other, "three_peak"),
          one.run_flat != other.run_flat, one.motorcycle != other.motorcycle};
}

bool for_trailers_only(const Reading& tyre) {
  return tyre.family == sidewall::Family::special_trailer;
}

Difference circumference_difference(double ratio) {
  const double by = std::fabs(ratio - 1.0);
  if (!(by <= too_much_change)) return Difference::too_great;
  return by <= noticeable_change ? Difference::none : Difference::worth_correcting;
}

Difference pressure_difference(GaugePressure left, GaugePressure right) {
  if (!(left >= 0.8 * right) || !(right >= 0.8 * left)) return Difference::too_great;
  const double apart = std::fabs(in_kilopascals(left - right));
  return apart <= 2.0 * in_kilopascals(standard::pressure_gauge_error)
             ? Difference::none
             : Difference::worth_correcting;
}

Difference tread_difference(Length left, Length right) {
  const Length apart = metres(std::fabs(in_metres(left - right)));
  if (!(apart <= millimetres(5.0) + hair)) return Difference::too_great;
  return apart <= millimetres(2.0) + hair ? Difference::none : Difference::worth_correcting;
}

bool deeper_tread_in_front(Length front, Length rear_axle) {
  return !(front - rear_axle <= two_gauges);
}

std::optional<WearPattern> wear_pattern(Length inner, Length centre, Length outer) {
  const Length bald = millimetres(0.0);
  if (!(inner >= bald) || !(centre >= bald) || !(outer >= bald)) return std::nullopt;
  WearPattern wear;
  wear.under_inflated = centre - std::max(inner, outer) > two_gauges;
  wear.over_inflated = std::min(inner, outer) - centre > two_gauges;
  if (outer - inner > two_gauges) wear.alignment = Side::inner;
  if (inner - outer > two_gauges) wear.alignment = Side::outer;
  return wear;
}

SymbolFit symbol_fit(standard::SpeedSymbol symbol, Speed car_top_speed, bool snowflake) {
  const Speed tyre = standard::speed_row(symbol).speed;
  if (car_top_speed <= tyre) return SymbolFit::enough;
  return snowflake && tyre >= kilometres_per_hour(160.0) ? SymbolFit::winter_exception
                                                         : SymbolFit::too_low;
}

Speed speed_with_tolerance(Speed car_top_speed, bool european_approval) {
  if (european_approval) return car_top_speed * 1.05;
  return car_top_speed <= kilometres_per_hour(150.0)
             ? car_top_speed * 1.03 + kilometres_per_hour(3.5)
             : car_top_speed * 1.01 + kilometres_per_hour(6.5);
}

const Source& mixing_source() { return mixing; }
const Source& same_axle_source() { return same_axle; }
const Source& run_flat_source() { return run_flats; }
const Source& pressure_difference_source() { return pressures; }
const Source& tread_difference_source() { return treads; }
const Source& deeper_to_the_rear_source() { return rear; }
const Source& wear_pattern_source() { return pattern; }
const Source& winter_exception_source() { return winter; }
const Source& speed_tolerance_source() { return tolerance; }

}  // namespace treadwater::car
