// The minimum cold pressure for a duty: load, speed, camber and towing together.
//
//   base    for the load (rated_tyre.hpp)
//   speed   added above 160 km/h (standard/speed_load.hpp)
//   camber  added beyond 2 degrees, as a share of the base (memory; it can only add)
//   towing  at least 20 kPa, if the load is above the rating and the towing rule allows it
// Above 210 km/h the rating itself falls with speed (V, W, Y; a motorcycle's by its own table if
// that is lower) and with camber. Range and errors: if no pressure is enough, the reason is
// returned; the same for NaN. The car's placard and handbook come first.
#pragma once

#include <optional>
#include <tl/expected.hpp>

#include "core/patch/rated_tyre.hpp"

namespace treadwater::patch {

struct Duty {
  Mass load;  // on this wheel
  Speed speed;
  double camber_degrees = 0.0;
  Speed car_top_speed;       // for the camber limit; if lower than the duty's speed, the latter
  bool towing_rear = false;  // rear wheel of a car with a trailer, if its handbook allows for it
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
// above the symbol's speed, for more camber than the tables cover, or for NaN.
std::optional<Mass> greatest_load_at(const RatedTyre& tyre, const Duty& duty);

tl::expected<PressureDemand, NoPressure> pressure_demand(const RatedTyre& tyre, const Duty& duty);

}  // namespace treadwater::patch
