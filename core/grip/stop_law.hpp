// How a modern tyre's grip on a wet paved road falls with speed, and the stop that follows from it.
//
//   mu(V) = mu0 a (1 - V^2/Vg^2)
//   distance = Vg^2/(2 g mu0 a) ln((1 - V2^2/Vg^2) / (1 - V1^2/Vg^2)),  V in m/s
//
//   mu0  friction at rest of a new tyre, by road      a  the share that a worn tread keeps of it
//   Vg   where the grip would be gone: 1/Vg^2 = k s f, k by tread, f by film, s by side
//
// mu0  What spreads is the road, not the tyre. Not told 0.55 / 0.76 / 1.04: central about the
//      median that 28 published stops on new tyres need, the ends ours, to hold 40 of 44 stops.
//      Told: grippy 0.90, ordinary 0.76, polished or concrete 0.65 (ours, out of the same stops),
//      each 15 % either way, so that each road's band lies inside the one of a road that was not
//      told.
// k, a  fitted (least squares, one mu0 a test) to 24 stops of six tests in 1 mm of water or a
//      wetted track, 0 to 120 km/h, tread 1.0 to 8 mm; straight lines between, held above 8 mm;
//      bare tread extrapolated.
// s    0.7, 1, 1.25 for the shortest, central and longest stop. Ours.
// f    h up to 1 mm, then 1: two tests saw no further loss to 2 mm. Longest: sqrt(h), then h^0.7 to
//      2 mm. Ours under 1 mm.
// From 3 mm of water up Vg is the onset of aquaplaning of that side, where that is stricter; from 2
// to 3 mm 1/Vg^2 goes over to it in a straight line. The film counts as read, as the tests state
// it: a ruler's error is in the onset and not here a second time.
//
// Dry: 0.70 / 0.98 / 1.20 at any speed, 56, 40 and 33 m from 100 km/h. Ours; court experts print
// 0.66 to 1.00 for summer tyres. Never less than the same road's when wet.
//
// Against the tests, each with one mu0: 24 stops within 5 %, a seventh test in 2 mm within 8 %
// (tests/unit/stop_law_test.cpp). Range: 0 to 150 km/h, tread 1 to 8 mm, film 0.5 to 2 mm; outside
// it an extrapolation. Bit for bit the same natively and in WebAssembly: only + - * /, roots and
// the powers of quantity/power.hpp.
#pragma once

#include <optional>

#include "core/grip/film.hpp"
#include "core/quantity/quantity.hpp"
#include "core/standard/source.hpp"

namespace treadwater::grip {

struct SpeedBand {
  Speed low;
  Speed central;
  Speed high;
};

// The road underneath, as a driver may know it.
enum class RoadGrip { not_told, grippy, ordinary, polished };  // polished, or concrete

FrictionBand wet_grip_at_rest(RoadGrip road);  // mu0
FrictionBand dry_grip(RoadGrip road);
double wet_tread_share(Length tread);  // a

// Vg of the longest, central and shortest stop; endless where there is no film. `onset` is that of
// aquaplaning in this film, endless on a side that does not float; what is under 1 km/h counts as
// 1. Without one, deeper water is taken for 2 mm. Tread and film are 0 or more.
SpeedBand grip_gone_at(Length tread, Length film, const std::optional<SpeedBand>& onset);

// Friction that falls with the square of speed: at_rest - loss V^2, V in km/h.
struct SquareLaw {
  double at_rest = 0.0;
  double loss = 0.0;
};
// From one speed down to another on a straight of this grade (rise over run, uphill positive).
// Empty where the car does not slow.
std::optional<Length> braked_by(const SquareLaw& law, Speed from, Speed to, double grade);

// A tyre on a paved road.
struct PavedCase {
  Length tread;  // credited
  Length film;
  std::optional<SpeedBand> onset;
  RoadGrip road = RoadGrip::not_told;
};
// One side of its friction, from dry to wet in a straight line over the first 0.2 mm; `share` is
// the surface's and the tyre's, `in_dry` and `in_wet` are the rubber's.
using Side = double FrictionBand::*;
struct PavedSide {
  SquareLaw law;
  double dry_part;  // of its friction at rest, what is not yet wet
};
PavedSide paved_side(Side side, const PavedCase& paved, double share, double in_dry, double in_wet);
inline constexpr double wet_from_mm = 0.2;
constexpr double wetness_of(Length film) {
  const double share = in_millimetres(film) / wet_from_mm;
  return share < 1.0 ? share : 1.0;
}
constexpr double blend(double dry, double wet, double wetness) {
  return dry + (wet - dry) * wetness;
}

// The highest speed from which a stop is given on this side: a share of Vg, or of where a downhill
// grade takes all that is left, and below the onset of aquaplaning. The longest is given above its
// own onset (to the central one) only where test cars were seen to stop: in up to 2 mm of water on
// 1 mm of tread and more.
Speed told_to(Side side, const PavedCase& paved, const SquareLaw& law, double grade);
// Nearer to Vg than this the logarithm runs away.
inline constexpr double told_share_of_gone = 0.95;
inline constexpr Speed fastest_of_paved_law = kilometres_per_hour(400.0);

inline constexpr Source stop_law_source{
    "grip-stop-law", "Treadwater's own law of wet stops, mu0 a (1 - V^2/Vg^2)",
    "fitted to 24 stops of six published tests (docs/method.md)", "2026",
    Standing::common_practice};
inline constexpr Source dry_grip_source{
    "grip-dry", "Vienna court experts, working group on reconstruction",
    "dry asphalt and concrete: 6.5 to 9.8 m/s2 on summer tyres, 6.0 to 8.5 on winter ones", "",
    Standing::published};

}  // namespace treadwater::grip
