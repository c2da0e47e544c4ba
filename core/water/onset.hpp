// Published speeds at which a rolling tyre starts to float (onset of dynamic aquaplaning).
//
// Each function is one published formula, in its own units at the door, with its range. None of
// them is a safe speed: against the measured rows they read up to 94 % too high for worn tyres (see
// measured.hpp). The estimate to act on is in estimate.hpp.
#pragma once

#include "core/quantity/quantity.hpp"
#include "core/standard/source.hpp"

namespace treadwater::water {

// V = 10.35 sqrt(p), mph, psi: pressure alone.
// Horne and Dreher, "Phenomena of Pneumatic Tire Hydroplaning", NASA TN D-2056, 1963.
// Range: a smooth tyre, or water deeper than the grooves. No load, width, tread or depth in it.
Speed pressure_only_onset(GaugePressure pressure);
const Source& pressure_only_source();

// V = 7.95 sqrt(p / FAR), mph, psi: pressure and the footprint's width / length.
// W. B. Horne, 1984, as used in Transportation Research Record 1084, 1986. Constant from memory.
// Range: flooded, worn or closed-pattern tyre; made for trucks. FAR > 0.
Speed footprint_onset(GaugePressure pressure, double footprint_aspect_ratio);
const Source& footprint_source();

// V = SD^0.04 p^0.3 (TD + 1)^0.06 A: spin-down, pressure, tread, water film and road texture.
// Gallaway et al., "Pavement and Geometric Design Criteria for Minimizing Hydroplaning",
// FHWA-RD-79-31, 1979. US customary form: mph, psi, 1/32 in, in, in.
// Range: film above 0 (held at 0.5 mm below that, where the formula would tend to infinity);
// texture 0 allowed. Spin-down 10 % is the onset. No width, no load.
struct FilmConditions {
  GaugePressure pressure;
  Length tread;
  Length film;     // water above the tops of the texture
  Length texture;  // mean texture depth
  double spin_down_percent = 10.0;
};
Speed film_onset(const FilmConditions& conditions);
const Source& film_source();

// The thinnest film the film formula is evaluated at.
Length thinnest_film();

}  // namespace treadwater::water
