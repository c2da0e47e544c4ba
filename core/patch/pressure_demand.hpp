// The least cold pressure that a duty asks for: load, speed, camber and towing together.
//
//   base    for the load (rated_tyre.hpp)
//   speed   added above 160 km/h (standard/speed_load.hpp)
//   camber  added beyond 2 degrees, as a share of the base (memory; it can only ask for more)
//   towing  at least 20 kPa, where the load is above the rating and the rule for towing allows it
// Above 210 km/h the rating itself falls with speed (V, W, Y; a motor cycle's by its own table,
// where that is lower) and camber. Range and errors: where no pressure will do, the reason is
// returned; NaN counts as such. The car's placard and handbook come before all of it.
#pragma once

#include <optional>
#include <tl/expected.hpp>

#include "core/patch/rated_tyre.hpp"

namespace treadwater::patch {

struct Duty {
  Mass load;  // on this wheel
  Speed speed;
  double camber_degrees = 0.0;
  Speed car_top_speed;       // for the limit of camber; the duty's speed where it is lower
  bool towing_rear = false;  // rear wheel of a car with a trailer, as its handbook provides
};

struct PressureDemand {
  GaugePressure base;
  GaugePressure speed;
  GaugePressure camber;
  GaugePressure towing;
  GaugePressure total() const { return base + speed + camber + towing; }
};

enum class NoPressure { not_a_number, overloaded, above_symbol, too_much_camber, towing_too_fast };

// What it may carry at the duty's speed and camber, at any pressure and without a trailer. Nothing
// above the symbol's speed, for more camber than the tables know, or for what is no number.
std::optional<Mass> greatest_load_at(const RatedTyre& tyre, const Duty& duty);

tl::expected<PressureDemand, NoPressure> pressure_demand(const RatedTyre& tyre, const Duty& duty);

}  // namespace treadwater::patch
