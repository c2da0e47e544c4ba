// Measured footprints and stiffness of two 255/40R17 98W tyres (both for road and track), and how
// our own patch compares.
//
// Source: ink prints and load curves of one test rig after ASTM F870, published by its builder on a
// personal engineering site, 2021 and 2024; read there, so one source and one size. Rim 9 in. Range
// of the rows: 24 to 36 psi, 500 to 1400 lbf, camber 0, 2 and 4 degrees.
#pragma once

#include <iterator>
#include <optional>

#include "core/patch/contact.hpp"

namespace treadwater::patch {

template <class Row>
struct Rows {
  const Row* first;
  const Row* last;
  const Row* begin() const { return first; }
  const Row* end() const { return last; }
};

// One print of the new tyre. Gross area is all within the outline, net area the rubber in it.
struct MeasuredFootprint {
  Force load;
  GaugePressure pressure;
  double camber_degrees;
  Length length;
  Length width;
  Area gross;
  std::optional<Area> net;
};
Rows<MeasuredFootprint> measured_footprints();

// Tangent stiffness of the used tyre at 3560 N (800 lbf).
struct MeasuredStiffness {
  GaugePressure pressure;
  double camber_degrees;
  Stiffness stiffness;
};
Rows<MeasuredStiffness> measured_stiffnesses();

const Source& measured_patch_source();

// Gross area by a fit to 50 prints of the two tyres, rms 6.3 kPa of contact pressure:
//   F/A = 52.6 + 0.660 p + 6.45 F,  kPa, kPa, kN.
// Range: that size alone, 165 to 250 kPa, 2.2 to 6.2 kN; nothing outside it.
std::optional<Area> fitted_area_255_40_17(Force load, GaugePressure pressure);
const Source& fitted_area_source();

// Our patch, 15 % either way: what holds every print, and the length as published.
struct AreaBand {
  Area low;
  Area nominal;
  Area high;
};
LengthBand contact_length_band(const ContactPatch& patch);
AreaBand contact_area_band(const ContactPatch& patch);
const Source& patch_band_source();

}  // namespace treadwater::patch
