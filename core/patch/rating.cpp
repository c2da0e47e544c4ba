#include "core/patch/rating.hpp"

#include <algorithm>
#include <cstdlib>

#include "core/standard/load_index.hpp"

namespace treadwater::patch {

using sidewall::Family;

namespace {

constexpr Source index_source{"load-index-by-size",
                              "Load indices of 140 common sizes against the "
                              "P-metric equation",
                              "our own list, from what tyres are sold as", "2026",
                              Standing::common_practice};
constexpr double extra_load_from = 1.09;
constexpr double no_tyre_from = 1.35;
// Below series 50, which the equation is not meant for, the shares of our list fall evenly.
constexpr double least_series_of_equation = 50.0;
constexpr double least_series_of_list = 30.0;
constexpr double fall_a_series = 0.0065;

constexpr Source printed_loads{
    "load-us-printed", "Loads printed for P- and LT-marked sizes: to 1.5 % less than the index",
    "a tyre maker's size sheet and a tyre tester's list: 3042 lb of index 120, 2183 lb of 108", "",
    Standing::secondary};
constexpr double sure_share = 0.985;

bool is_us_size(const sidewall::Reading& tyre) {
  return tyre.family == Family::p_metric || tyre.family == Family::lt_metric || tyre.light_truck;
}

// The equation's load, down to a series.
std::optional<Mass> load_by_size(const sidewall::Reading& tyre, double least_series) {
  const bool in_range = tyre.section_width && tyre.rim_diameter && tyre.aspect_percent &&
                        *tyre.aspect_percent >= least_series && *tyre.aspect_percent <= 80.0;
  if (!in_range) return std::nullopt;
  return p_metric_capacity(*tyre.section_width, *tyre.aspect_percent, *tyre.rim_diameter,
                           p_metric_standard_load().reference);
}

// The lowest load moulded on in words.
std::optional<Mass> marked_load(const sidewall::Reading& tyre) {
  std::optional<Mass> least;
  for (const sidewall::Mark& mark : tyre.marks) {
    const bool pound = mark.id == "max_load_lb";
    if (!pound && mark.id != "max_load") continue;
    const double number = std::strtod(mark.value.c_str(), nullptr);
    const Mass load = pound ? pounds(number) : kilograms(number);
    if (load > kilograms(0.0)) least = std::min(load, least.value_or(load));
  }
  return least;
}

}  // namespace

std::optional<IndexFits> index_fits(const sidewall::Reading& tyre) {
  const bool of_a_car = tyre.family == Family::metric_car || tyre.family == Family::p_metric;
  const auto rated = tyre.service && of_a_car ? standard::load_of_index(tyre.service->load_index)
                                              : std::optional<Mass>();
  const auto usual = rated ? load_by_size(tyre, least_series_of_list) : std::nullopt;
  if (!usual) return std::nullopt;
  const double share = *rated / *usual + fall_a_series * std::max(0.0, least_series_of_equation -
                                                                           *tyre.aspect_percent);
  return share > no_tyre_from      ? IndexFits::no_tyre
         : share > extra_load_from ? IndexFits::extra_load
                                   : IndexFits::standard;
}

const Source& index_fits_source() { return index_source; }
const Source& under_index_source() { return printed_loads; }

std::optional<Laws> laws_of(const sidewall::Reading& tyre) {
  const bool extra = tyre.extra_load || tyre.high_load || index_fits(tyre) == IndexFits::extra_load;
  switch (tyre.family) {
    case Family::temporary_spare:
      return Laws{temporary_spare_law(), {}};
    case Family::p_metric: {
      const LoadLaw law = extra ? p_metric_extra_load() : p_metric_standard_load();
      LoadLaw european = european_standard_load();
      european.reference = law.reference;
      return Laws{law, european};
    }
    case Family::metric_car:
    case Family::metric_no_series:
    case Family::millimetre_rim:
      return Laws{extra ? european_extra_load() : european_standard_load(), {}};
    default:
      break;
  }
  if (!tyre.marked_pressure) return std::nullopt;
  if (tyre.family == Family::lt_metric)
    return Laws{light_truck_at_marked_pressure(*tyre.marked_pressure), {}};
  const bool own_law_unknown =
      tyre.family == Family::flotation || tyre.family == Family::special_trailer;
  const LoadLaw linear = linear_at_marked_pressure(*tyre.marked_pressure);
  if (own_law_unknown) return Laws{linear, {}};
  return Laws{european_at_marked_pressure(*tyre.marked_pressure), linear};
}

namespace {

// Of a size marked P or LT, whose MAX LOAD may be less than its index's mass.
GreatestLoad greatest_of_us_size(Mass of_index, int index, std::optional<Mass> marked,
                                 std::optional<Mass> load) {
  const Mass sure = of_index * sure_share;
  GreatestLoad found{sure, index, sure};
  if (marked) {
    found.mass = found.sure = std::min(*marked, of_index);
    found.marked = *marked < sure;
    return found;
  }
  found.under_index = true;
  found.near_index = load && *load > sure && *load <= of_index;
  if (found.near_index) found.mass = *load;
  return found;
}

}  // namespace

std::optional<GreatestLoad> greatest_load(const sidewall::Reading& tyre, std::optional<Mass> load) {
  if (tyre.service) {
    const int index = tyre.service->load_index;
    const auto mass = standard::load_of_index(index);
    if (!mass || index_fits(tyre) == IndexFits::no_tyre) return std::nullopt;
    const auto marked = marked_load(tyre);
    if (is_us_size(tyre)) return greatest_of_us_size(*mass, index, marked, load);
    GreatestLoad found{*mass, index, *mass};
    // A load moulded in pounds and kilograms is the index's, rounded.
    if (marked && *marked < *mass * 0.99) {
      found.mass = found.sure = *marked;
      found.marked = true;
    }
    return found;
  }
  const auto usual = load_by_size(tyre, least_series_of_equation);
  if (tyre.family != Family::p_metric || tyre.extra_load || !usual) return std::nullopt;
  const int index = standard::nearest_load_index(*usual);
  GreatestLoad found =
      greatest_of_us_size(*standard::load_of_index(index), index, marked_load(tyre), load);
  found.worked_out = true;
  return found;
}

std::optional<standard::SpeedSymbol> speed_symbol(const sidewall::Reading& tyre) {
  return tyre.service ? std::optional(tyre.service->symbol) : tyre.size_symbol;
}

LeastPressure least_pressure_of(const sidewall::Reading& tyre, std::optional<Mass> load) {
  if (tyre.family != Family::beaded_edge) return {least_pressure(), &least_pressure_source()};
  if (tyre.motorcycle) return {beaded_edge_motorcycle().low, &beaded_edge_motorcycle_source()};
  return beaded_edge_least(tyre.section_width.value_or(Length()), load.value_or(Mass()) * 2.0);
}

standard::Vehicle vehicle_of(const sidewall::Reading& tyre) {
  return tyre.motorcycle ? standard::Vehicle::motorcycle : standard::Vehicle::car;
}

}  // namespace treadwater::patch
