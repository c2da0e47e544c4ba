#include "core/patch/rated_tyre.hpp"

#include <algorithm>

#include "core/standard/speed_load.hpp"

namespace treadwater::patch {

std::optional<Mass> rating_at(const RatedTyre& tyre, Speed speed) {
  if (!tyre.symbol) return tyre.greatest;
  const auto percent = standard::percent_at_speed(tyre.vehicle, *tyre.symbol, speed);
  if (!percent) return std::nullopt;
  return tyre.greatest * (*percent / 100.0);
}

GaugePressure pressure_for_load(const RatedTyre& tyre, Mass rated, Mass load) {
  GaugePressure needed = pressure_by_law(tyre.law, rated, load);
  if (tyre.second_law) needed = std::max(needed, pressure_by_law(*tyre.second_law, rated, load));
  return std::max(needed, tyre.least);
}

GaugePressure pressure_for_speed(const RatedTyre& tyre, Speed speed) {
  return tyre.symbol ? standard::pressure_for_speed(*tyre.symbol, speed) : GaugePressure();
}

}  // namespace treadwater::patch
