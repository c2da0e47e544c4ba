// Another size of tyre or wheel on the same car: what changes, and whether it is enough.
//
// Geometry from the nominal sizes (patch/geometry.hpp); a real tyre departs from them by its
// tolerance, so clearance must be measured on the car. Offset is from the wheel's middle to its
// mounting face, positive where the face lies outward (ET on the wheel).
// Range: tyres with a nominal size; positive sizes. Nothing is returned if it cannot be met.
#pragma once

#include <optional>

#include "core/car/rules.hpp"
#include "core/patch/geometry.hpp"
#include "core/patch/load_capacity.hpp"
#include "core/standard/load_adjustment.hpp"

namespace treadwater::car {

struct Wheel {
  patch::TyreSize size;
  bool cross_ply = false;
  std::optional<Length> rim_width;  // the theoretical rim if not given
  Length offset;
};

struct FitmentChange {
  double circumference;  // new / old, by nominal rolling circumference
  Length diameter;       // overall, new less old
  Length ride_height;    // half of that: the room lost under the arch
  Length section_width;  // on the rims given
  Length inward;         // how much nearer the tyre comes to the suspension
  Length outward;        // how much further it stands out
  double engine_speed() const { return 1.0 / circumference; }  // at one road speed, new / old
};
FitmentChange fitment_change(const Wheel& before, const Wheel& after);

Length section_width(const Wheel& wheel);

double turns_per_kilometre(Length rolling_circumference);

// The pressure at which the new tyre carries what the old one does at its own; nothing if it cannot
// at any pressure.
std::optional<GaugePressure> pressure_for_equal_load(const patch::LoadLaw& law_before,
                                                     Mass greatest_before,
                                                     GaugePressure pressure_before,
                                                     const patch::LoadLaw& law_after,
                                                     Mass greatest_after);

// A tyre's load and speed against what the car needs: the load on a wheel, or the mass of the load
// index the maker gives. The load is judged at the car's top speed, or the symbol's if lower.
struct Adequacy {
  bool load;
  SymbolFit speed;
  Speed judged_at;
  Mass carried;  // at that speed
};
Adequacy adequacy(Mass greatest, standard::Vehicle vehicle, standard::SpeedSymbol symbol,
                  bool snowflake, Mass asked, Speed car_top_speed);

}  // namespace treadwater::car
