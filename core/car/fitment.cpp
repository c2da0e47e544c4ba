#include "core/car/fitment.hpp"

#include <algorithm>

namespace treadwater::car {

Length section_width(const Wheel& wheel) {
  const Length usual = patch::theoretical_rim_width(wheel.size);
  return patch::section_width_on_rim(wheel.size, wheel.rim_width.value_or(usual), usual);
}

FitmentChange fitment_change(const Wheel& before, const Wheel& after) {
  FitmentChange change;
  change.circumference = patch::rolling_circumference(after.size, after.cross_ply).nominal /
                         patch::rolling_circumference(before.size, before.cross_ply).nominal;
  change.diameter = patch::overall_diameter(after.size) - patch::overall_diameter(before.size);
  change.ride_height = change.diameter / 2.0;
  change.section_width = section_width(after) - section_width(before);
  change.inward = change.section_width / 2.0 + (after.offset - before.offset);
  change.outward = change.section_width / 2.0 - (after.offset - before.offset);
  return change;
}

double turns_per_kilometre(Length rolling_circumference) {
  return metres(1000.0) / rolling_circumference;
}

std::optional<GaugePressure> pressure_for_equal_load(const patch::LoadLaw& law_before,
                                                     Mass greatest_before,
                                                     GaugePressure pressure_before,
                                                     const patch::LoadLaw& law_after,
                                                     Mass greatest_after) {
  const Mass load = patch::load_capacity(law_before, greatest_before, pressure_before);
  if (!(load > kilograms(0.0)) || !(load <= greatest_after)) return std::nullopt;
  return patch::pressure_needed(law_after, greatest_after, load);
}

Adequacy adequacy(Mass greatest, standard::Vehicle vehicle, standard::SpeedSymbol symbol,
                  bool snowflake, Mass asked, Speed car_top_speed) {
  const Speed judged = std::min(car_top_speed, standard::speed_row(symbol).speed);
  const double percent = standard::percent_at_speed(vehicle, symbol, judged).value_or(0.0);
  const Mass carried = greatest * (percent / 100.0);
  return {asked <= carried, symbol_fit(symbol, car_top_speed, snowflake), judged, carried};
}

}  // namespace treadwater::car
