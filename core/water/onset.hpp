// Published speeds at which a rolling tyre starts to aquaplane (onset of dynamic aquaplaning).
//
// Each function is one published formula, stated in its own units, with its range. None of them is
// a safe speed: compared with the measured rows they read up to 94 % too high for worn tyres (see
// measured.hpp). The estimate to use is in estimate.hpp. The formulas themselves give a number for
// anything; `onset_models` uses each only inside its range.
//
// Left out: the linear form of pressure and footprint, which contradicts the truck tests it is said
// to come from, and the forms with a lift coefficient, whose value for a treaded tyre is not known.
#pragma once

#include <iterator>
#include <optional>
#include <string_view>

#include "core/quantity/quantity.hpp"
#include "core/standard/source.hpp"
#include "core/words/phrase.hpp"

namespace treadwater::water {

// V = 10.35 sqrt(p), mph, psi: pressure alone.
// Horne and Dreher, "Phenomena of Pneumatic Tire Hydroplaning", NASA TN D-2056, 1963.
// Range: a smooth tyre, or water deeper than the grooves. No load, width, tread or depth in it.
Speed pressure_only_onset(GaugePressure pressure);
const Source& pressure_only_source();

// V = 7.7 sqrt(p), knots, psi: a locked wheel, or one not turning yet, on the same water. It is
// also where a tyre that has begun to aquaplane turns again: 0.856 of the onset.
Speed spin_up_onset(GaugePressure pressure);
const Source& spin_up_source();

// V = 7.95 sqrt(p / FAR), mph, psi: pressure and the footprint's width / length.
// W. B. Horne, 1984, as used in Transportation Research Record 1084, 1986. Constant from memory.
// Range: flooded, worn or closed-pattern tyre; made for trucks. FAR > 0.
Speed footprint_onset(GaugePressure pressure, double footprint_aspect_ratio);
const Source& footprint_source();

// V = 23.3 p^0.21 (1.4 / FAR)^0.5, mph, psi: a truck tyre. From memory.
// D. L. Ivey, 1984. Range: heavy trucks; it reads far too high for car tyres. FAR > 0.
Speed truck_onset(GaugePressure pressure, double footprint_aspect_ratio);
const Source& truck_source();

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

// Its two factors: what the tyre gives, and the A, the greater of A1 (water alone) and A2 (water
// and texture). This allows many films for one tyre.
double film_tyre_factor(GaugePressure pressure, Length tread, double spin_down_percent = 10.0);
double film_water_factor(Length film, Length texture);

// The thinnest film the film formula is evaluated at.
Length thinnest_film();

// V = 26.04 WFT^-0.259 under 0.095 in of water, 3.09 A from there on; mph, in: film and texture for
// a road designer's car, 24 psi and nearly worn out. From memory; the pressure was read in print.
// NCHRP 1-29 (PAVDRN), 1998. At the join it steps up by some per cent on a textured road.
// Range: film as above; no tyre in it.
Speed design_onset(Length film, Length texture);
const Source& design_source();

// V = WL^0.2 p^0.5 (0.82 / WD^0.06 + 0.49), km/h, N, kPa, mm: a smooth test tyre's load, pressure
// and water. From memory, units inferred.
// Gunaratne et al., FDOT BDK84-977-14, 2012, a fit to Ong and Fwa's simulations.
// Range: smooth tyre, film as above.
Speed smooth_tyre_onset(Force wheel_load, GaugePressure pressure, Length film);
const Source& smooth_tyre_source();

// ---- all of them, each inside its range ----

struct OnsetConditions {
  GaugePressure pressure;
  Length grooves;  // tread depth credited; 0 for a slick
  Length film;
  Length texture;
  std::optional<double> footprint_aspect_ratio;
  std::optional<Force> wheel_load;
  bool heavy_truck = false;
};

// `onset` returns nothing if the model does not apply. The ranges are the points at which its
// figures were checked against print, and little more; the reports' own were mostly not seen.
struct OnsetModel {
  Phrase label;
  Phrase range;  // in words, for people
  const Source& source;
  std::optional<Speed> (*onset)(const OnsetConditions& conditions);
};

struct OnsetModels {
  const OnsetModel* first;
  const OnsetModel* last;
  const OnsetModel* begin() const { return first; }
  const OnsetModel* end() const { return last; }
};

OnsetModels onset_models();

}  // namespace treadwater::water
