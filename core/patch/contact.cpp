// Symbols of the sources and ours:
//   K, Cz  vertical stiffness        SN  nominal section width, mm    DR  rim diameter, mm
//   P      inflation pressure, kPa   AR  aspect ratio, per cent       R0  unloaded radius
//   F      wheel load, N             a   half contact length
#include "core/patch/contact.hpp"

#include <algorithm>
#include <cmath>

#include "core/quantity/power.hpp"

namespace treadwater::patch {
namespace {

constexpr Source stiffness{"stiffness", "T. B. Rhyne, Tire Science and Technology 33(3), 136-155",
                           "vertical stiffness; constants not seen in print", "2005",
                           Standing::memory};
constexpr Source length{
    "contact-length", "Besselink, Schmeitz, Pacejka, Vehicle System Dynamics 48 (S1), 337-352",
    "half-length equation, coefficients of the 205/60R15 set, read in a public code; 0.87 of it "
    "taken",
    "2010", Standing::secondary};
constexpr Source width{"contact-width", "Effective tread width of the stiffness relationship",
                       "narrowed at part load by a fit to one measured 255/40 tyre", "2005",
                       Standing::memory};
constexpr Source area{"contact-area", "Balance of forces: load over pressure and carcass",
                      "carcass 25 kPa at rated load, ours, from 25 prints of one 255/40R17", "2026",
                      Standing::common_practice};

double effective_width_mm(const TyreSize& size) {
  return (1.03 - 0.004 * size.aspect_percent) * in_millimetres(size.section_width);
}

}  // namespace

Stiffness vertical_stiffness(const TyreSize& size, GaugePressure pressure) {
  const double diameter_mm = in_millimetres(overall_diameter(size));
  return kilograms_force_per_millimetre(0.00028 * in_kilopascals(pressure) *
                                            std::sqrt(effective_width_mm(size) * diameter_mm) +
                                        3.45);
}

Length deflection(Force load, Stiffness k) {
  return metres(in_newtons(load) / in_newtons_per_metre(k));
}

Length static_loaded_radius(const TyreSize& size, Force load, Stiffness k) {
  return overall_diameter(size) / 2.0 - deflection(load, k);
}

Length contact_length(Force load, Stiffness k, Length unloaded_radius) {
  constexpr double q1 = 0.6715;
  constexpr double q2 = 0.7308;
  const double x = in_newtons(load) / (in_newtons_per_metre(k) * in_metres(unloaded_radius));
  return unloaded_radius * (2.0 * (q2 * x + q1 * std::sqrt(x)));
}

Length contact_width(const TyreSize& size, double share_of_rated_load) {
  const double share = std::clamp(share_of_rated_load, 0.0, 1.0);
  return millimetres(effective_width_mm(size) * power(share, 0.14));
}

Area contact_area(Force load, GaugePressure pressure, double share_of_rated_load) {
  constexpr double carcass = 25.0;
  const double share = std::clamp(share_of_rated_load, 0.0, 1.0);
  const double kilonewtons = in_newtons(load) / 1000.0;
  if (kilonewtons == 0.0) return Area();
  return square_metres(kilonewtons / (in_kilopascals(pressure) + carcass * share));
}

ContactPatch contact_patch(const TyreSize& size, GaugePressure pressure, Mass load, Mass rated) {
  constexpr double of_the_law = 0.87;
  constexpr double fullest = 0.97;
  ContactPatch patch;
  const Force force = weight(load);
  patch.stiffness = vertical_stiffness(size, pressure);
  patch.deflection = deflection(force, patch.stiffness);
  patch.width = contact_width(size, load / rated);
  patch.area = contact_area(force, pressure, load / rated);
  const Length by_law = contact_length(force, patch.stiffness, overall_diameter(size) / 2.0);
  patch.length = by_law * of_the_law;
  if (patch.area > Area())
    patch.length = std::max(
        patch.length, metres(in_square_metres(patch.area) / (fullest * in_metres(patch.width))));
  patch.aspect_ratio = patch.width / patch.length;
  patch.ground_pressure = kilopascals(in_newtons(force) / in_square_metres(patch.area) / 1000.0);
  return patch;
}

const Source& stiffness_source() { return stiffness; }
const Source& contact_length_source() { return length; }
const Source& contact_width_source() { return width; }
const Source& contact_area_source() { return area; }

}  // namespace treadwater::patch
