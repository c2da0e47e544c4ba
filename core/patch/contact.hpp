// The contact patch of a belted radial: stiffness, deflection, length, width, area, mean pressure.
//
// Sources (the standing of each is in contact.cpp):
//   stiffness  Rhyne, "Development of a Vertical Stiffness Relationship for Belted Radial Tires",
//              Tire Science and Technology 33(3), 2005. Constants from memory; against six measured
//              values it reads -10 to +8 %.
//   length     Besselink, Schmeitz, Pacejka, Vehicle System Dynamics 48 (S1), 2010, half-length
//              equation, coefficients of its 205/60R15 data set. Not the chord of the undeformed
//              circle, which is nearly twice as long. The patch takes 0.87 of it (ours: the largest
//              factor with which the prints stay within 15 %), but no less than the area needs at a
//              fill of 0.97 (the fullest print).
//   width      the effective tread width inside the stiffness relationship, narrowed at part load
//              as measured on one 255/40 tyre.
//   area       balance of forces, F / (p + the carcass's share). The share grows with load: 25 kPa
//              at the rated load, ours, from the 25 prints (mean 0, 6, 16, 21, 29 kPa at five
//              loads).
//
// Range: belted radial car tyres, series 30 to 82, upright, 150 kPa and up, near rated load. For
// other constructions, and without a load, the caller gives no figures. Accuracy, against two
// measured 255/40 tyres: deflection -8 to +12 %; against 25 prints of one: width 4 %, length and
// area 15 % (-3 to +14 and -12 to +9). Other sizes were not measured; the length formula's own tyre
// is 8 to 16 % longer than ours. Provisional.
#pragma once

#include "core/patch/geometry.hpp"
#include "core/quantity/quantity.hpp"
#include "core/standard/source.hpp"

namespace treadwater::patch {

// K = 0.00028 P sqrt((1.03 - 0.004 AR) SN (SN AR/50 + DR)) + 3.45, kgf/mm.
Stiffness vertical_stiffness(const TyreSize& size, GaugePressure pressure);

Length deflection(Force load, Stiffness stiffness);

// Axle height over the road: half the overall diameter less the deflection.
Length static_loaded_radius(const TyreSize& size, Force load, Stiffness stiffness);

// 2a = 2 R0 (0.7308 F/(Cz R0) + 0.6715 sqrt(F/(Cz R0))), as published.
Length contact_length(Force load, Stiffness stiffness, Length unloaded_radius);

// F / (p + 25 kPa x load/rated, at most 25). Nothing where nothing presses.
Area contact_area(Force load, GaugePressure pressure, double share_of_rated_load);

// (1.03 - 0.004 AR) SN at rated load, times (load/rated)^0.14 below it.
Length contact_width(const TyreSize& size, double share_of_rated_load);

struct ContactPatch {
  Stiffness stiffness;
  Length deflection;
  Length length;
  Length width;
  Area area;
  double aspect_ratio;            // footprint width / length
  GaugePressure ground_pressure;  // load / gross area
};

// `rated` is the mass of the load index; the patch of an overloaded tyre is given too.
ContactPatch contact_patch(const TyreSize& size, GaugePressure pressure, Mass load, Mass rated);

const Source& stiffness_source();
const Source& contact_length_source();
const Source& contact_width_source();
const Source& contact_area_source();

}  // namespace treadwater::patch
