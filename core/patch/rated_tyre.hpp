// A tyre's rating: what is left of it at a speed, and the cold pressure that a load needs. Whether
// a pressure is enough depends on these alone; supported.hpp uses them for a pressure and a speed,
// pressure_demand.hpp for camber and a trailer too.
//
// Sources: those of the formulas (load_capacity.hpp), standard/speed_load.hpp and
// load_adjustment.hpp.
// Range: speeds up to the symbol's, loads up to the rating.
#pragma once

#include <optional>

#include "core/patch/load_capacity.hpp"
#include "core/standard/load_adjustment.hpp"
#include "core/standard/speed_symbol.hpp"

namespace treadwater::patch {

struct RatedTyre {
  Mass greatest;                                // the mass of the load index
  std::optional<standard::SpeedSymbol> symbol;  // without one the whole rating counts
  LoadLaw law;
  std::optional<LoadLaw> second_law;  // if two could apply, the one that needs more counts
  standard::Vehicle vehicle = standard::Vehicle::car;
  GaugePressure least = least_pressure();  // for its kind, whatever it carries
};

// What it may carry at a speed, at any pressure. Nothing above the symbol's.
std::optional<Mass> rating_at(const RatedTyre& tyre, Speed speed);
// What the load needs when `rated` is left of the rating, without the addition for speed.
GaugePressure pressure_for_load(const RatedTyre& tyre, Mass rated, Mass load);
// The addition for speed.
GaugePressure pressure_for_speed(const RatedTyre& tyre, Speed speed);

}  // namespace treadwater::patch
