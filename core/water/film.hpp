// How deep: from rain, slope, drainage path and texture to the depth of water above the tops of the
// road's texture; and what a rut holds.
//
// Steady, even rain on a plane, sealed road, down to where the wheel runs. All depths are above the
// tops of the texture: a negative one means that the water is below them, in the texture, and that
// there is no film to aquaplane on. On a plain cambered road ordinary heavy rain leaves none; deep
// water is in ruts, dips and at blocked gullies, and must be measured there. A porous road takes
// water until its pores are full; no formula says how long.
//
// Range, for each formula: texture 0.1 to 4 mm, and the rest as below. Outside it the formula is
// not used (nothing is returned). The reports' own ranges were not seen; this one is ours, a little
// wider than the points they were checked against.
#pragma once

#include <optional>

#include "core/quantity/quantity.hpp"
#include "core/standard/source.hpp"

namespace treadwater::water {

inline constexpr RainIntensity least_rain = millimetres_per_hour(0.5);
inline constexpr RainIntensity most_rain = millimetres_per_hour(150.0);
inline constexpr Length shortest_path = metres(1.0);
inline constexpr Length longest_path = metres(50.0);
inline constexpr double flattest = 0.005;
inline constexpr double steepest = 0.1;

// The path of water across a road: slope along it (a ratio, 0.02 is 2 %), and its length.
struct FlowPath {
  Length length;
  double slope = 0.0;
};

// From the kerb or crown over `width` of road, by crossfall and gradient (ratios, signs do not
// matter): S = sqrt(Sx^2 + Sg^2), L = W S / Sx. Plain geometry. A crossfall of zero gives an
// endless path, which every formula refuses.
FlowPath flow_path(Length width, double crossfall, double gradient);

// Pavements whose roughness to sheet flow (Manning's n) was read in print.
enum class Pavement { concrete, dense_asphalt, open_graded_asphalt };

struct RainOnRoad {
  RainIntensity rain;
  FlowPath path;
  Length texture;  // mean texture depth, sand patch
  Pavement pavement = Pavement::dense_asphalt;
};

enum class FilmModel {
  fhwa,                  // FHWA-RD-79-31, 1979, US units: 0.00338
  fhwa_metric,           // the same as printed in metric units: 0.01485
  fhwa_percent,          // the same with the slope in per cent: 0.103
  fhwa_earlier_fit,      // an earlier fit to the same tests: 0.003726
  road_research,         // Road Research Laboratory LR 236, 1968: 0.015, cm
  road_research_metric,  // the same as rounded for metric units: 0.046
  kinematic,             // Manning's sheet flow, as NCHRP 1-29 (PAVDRN) has it
};

// The Road Research forms measure from the base of the texture; one texture depth is taken off them
// here (our own step), so that all are depths above its tops.
std::optional<Length> film_depth(FilmModel model, const RainOnRoad& road);
const Source& film_depth_source(FilmModel model);

// The spread of the four that are independent fits or theories: 1979, earlier fit, Road Research,
// kinematic. `central` is that of 1979. Nothing if it does not apply.
struct RainFilm {
  Length low;
  Length central;
  Length high;
};
std::optional<RainFilm> rain_film(const RainOnRoad& road);

// The depth of water that a rut holds on a crossfall before it spills over its lower lip: d (1 - S
// w / 4d)^2 for a rut of depth d (below a straight edge) and width w, taken as a parabola; nothing
// if S w >= 4 d, or for NaN. Our own geometry: no formula was found in print. A dip along the road
// does not drain: give it a crossfall of 0. The film from rain comes on top if it is positive.
Length rut_water(Length rut_depth, Length rut_width, double crossfall);
const Source& rut_source();

}  // namespace treadwater::water
