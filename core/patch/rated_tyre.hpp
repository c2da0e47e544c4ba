// A tyre by its rating: what is left of it at a speed, and the cold pressure that a load needs.
// Whether a pressure is enough rests on these alone; supported.hpp asks them of a pressure and a
// speed, pressure_demand.hpp of camber and a trailer too.
//
// Sources: the laws' own (load_capacity.hpp), standard/speed_load.hpp and load_adjustment.hpp.
// Range: speeds up to the symbol's, loads up to the rating.
#pragma once

#include <optional>

#include "core/patch/load_capacity.hpp"
#include "core/standard/load_adjustment.hpp"
#include "core/standard/speed_symbol.hpp"

namespace treadwater::patch {

struct RatedTyre {
  Mass greatest;                                // the mass of the load index
  std::optional<standard::SpeedSymbol> symbol;  // without one the rating counts whole
  LoadLaw law;
  std::optional<LoadLaw> second_law;  // where two could hold, the one that asks for more rules
  standard::Vehicle vehicle = standard::Vehicle::car;
  GaugePressure least = least_pressure();  // of its kind, whatever it carries
};

// What it may carry at a speed, at any pressure. Nothing above the symbol's.
std::optional<Mass> rating_at(const RatedTyre& tyre, Speed speed);
// What the load needs where `rated` is left of the rating, without what speed adds.
GaugePressure pressure_for_load(const RatedTyre& tyre, Mass rated, Mass load);
// What the speed adds.
GaugePressure pressure_for_speed(const RatedTyre& tyre, Speed speed);

}  // namespace treadwater::patch
