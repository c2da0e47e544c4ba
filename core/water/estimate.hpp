// Our own estimate of the speed at which this tyre starts to float, as a low, a central and a high
// value. It is ours and no outside source's; docs/method.md derives it step by step.
//
// A new tyre follows the film formula of FHWA-RD-79-31 closely (within 10 % of the measured rows).
// A worn one falls away from it, the more so the deeper the water, in the proportion in which its
// grooves clear less water. So:
//
//   V = film formula at 8 mm of tread  x  (1 - (1 - c) s)  x  sqrt(205 mm / section width)
//
//   c  what the grooves clear against a new tread: 1, 0.80, 0.55 at 8, 3, 1.6 mm (published), in
//      straight lines between; `bare` at no tread (never measured)
//   s  how far the water floods the grooves: (film / flood depth)^(2/3), at most 1. Flood depth is
//      8 mm; for the low and the central value it shrinks to nothing as the tread goes from 1.6 mm
//      to bare, so a bare or slick tyre is flooded by any standing water.
//
// The low value takes everything at its worst: ruler 1 mm short, tread gauge 0.2 mm long, pressure
// gauge 10 kPa high, the scale 0.88 (so that it stays under every measured row), no credit for more
// than 220 kPa or for texture over 0.7 mm, none for a narrow tyre, and beyond 10 mm of water, which
// nobody measured, a further sqrt(10 mm / film). The high value takes everything at its best.
//
// Range: film 0.5 mm and up (thinner ones count as 0.5 mm), any tread, 50 kPa and up. Tested
// against 1.6 to 8 mm of tread and 3 to 9.5 mm of water; outside that it is an extrapolation. Never
// rises with more water, never falls with more tread or more pressure. Zero film: nothing is
// returned, no dynamic aquaplaning is expected.
#pragma once

#include <optional>

#include "core/quantity/quantity.hpp"
#include "core/standard/source.hpp"

namespace treadwater::water {

struct WetTyre {
  GaugePressure pressure;
  Length tread;
  double groove_credit = 1.0;           // 1 a moulded tread, 0.5 a hand-cut slick, 0 a slick
  std::optional<Length> section_width;  // where not known, the band allows for 155 to 255 mm
  Length film;                          // water above the tops of the texture
  Length texture;
};

struct SpeedBand {
  Speed low;
  Speed central;
  Speed high;
};

std::optional<SpeedBand> aquaplaning_onset(const WetTyre& tyre);

// The share of the low value that the hold-to speed keeps.
inline constexpr double hold_to_share = 0.9;

const Source& estimate_source();

}  // namespace treadwater::water
