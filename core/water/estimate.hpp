// Our own estimate of the speed at which this tyre starts to aquaplane: a central value from the
// readings as they are, and a distribution over the possible errors of readings and models. No
// outside source has it; docs/method.md derives it step by step.
//
// A new tyre follows the film formula of FHWA-RD-79-31 closely (within 10 % of the measured rows).
// A worn one falls below it, the more so the deeper the water, in proportion to the water its
// grooves clear. So:
//
//   V = law for a new tyre  x  (1 - (1 - c) s)  x  sqrt(205 mm / section width)
//
//   c  what the grooves clear relative to a new tread (measured.hpp); `bare` with no tread
//   s  how far the water floods the grooves: (film / flood depth)^(2/3), at most 1. Flood depth is
//      8 mm, and shrinks to nothing as the tread goes from 1.6 mm to bare, so that a bare or slick
//      tyre is flooded by any standing water.
//
// The models for a new tyre, equally likely in the distribution:
//   cautious  the film formula held at 24 psi and 3/32 in of tread, as road designers take it
//             (PAVDRN); below 220 kPa as the square root of pressure, no credit above; at most
//             0.7 mm of texture; no credit for a narrow tyre; beyond 10 mm of water, which nobody
//             measured, a further sqrt(10 mm / film)
//   film      the film formula at 8 mm of tread and the tyre's own pressure: the central value
//   pressure  the pressure law alone, no credit above 250 kPa; no loss for a wide tyre
// The other published formulas are left out: they are for trucks or slicks, are known from memory
// only, or give far more than the measured rows. How a worn tread falls away below 1.6 mm: to a
// clearing of 0.264 with a flood depth that shrinks as the square (two draws of four), to 0.407 in
// proportion (one; the central value), to 0.55 with no shrinking (one). Tyres of one test spread 11
// % either way.
//
// The distribution: 20 160 simulated cases ("draws") from a fixed stream; pressure gauge, tread
// gauge and ruler (standard/instrument.hpp) and the spread between tyres each rectangular, on 256
// equally likely steps. Low and high are its 5 % and 95 % points. The draws are the same for every
// tyre, so the order of two tyres is the order of each of their draws.
//
// Range: film above 0 (thinner than 0.5 mm counts as 0.5 mm, more than 1 m as 1 m), any tread,
// 10 kPa and up, a section of 25 mm and up (any other counts as 1 m). Tested against 1.6 to 8 mm of
// tread and 3 to 9.5 mm of water; outside that it is an extrapolation. Never rises with more water,
// never falls with more tread or more pressure: exactly, because readings are first rounded to a
// nanometre and a pascal, steps far wider than the error of a power. For zero film nothing is
// returned: no dynamic aquaplaning is expected. Bit for bit the same natively and in WebAssembly.
#pragma once

#include <memory>
#include <optional>
#include <vector>

#include "core/quantity/quantity.hpp"
#include "core/standard/source.hpp"

namespace treadwater::water {

struct WetTyre {
  GaugePressure pressure;
  Length tread;
  double groove_credit = 1.0;           // 1 a moulded tread, 0.5 a hand-cut slick, 0 a slick
  std::optional<Length> section_width;  // if not known, the band allows for 155 to 255 mm
  Length film;                          // water above the tops of the texture
  Length texture;
};

struct SpeedBand {
  Speed low;
  Speed central;
  Speed high;
};

std::optional<SpeedBand> aquaplaning_onset(const WetTyre& tyre);

// The share of the low value used for the maximum speed.
inline constexpr double hold_to_share = 0.9;

// The whole distribution, for a curve of the chance of aquaplaning. Film above 0.
class OnsetDraws {
 public:
  static constexpr int draws_of_a_case = 1680;
  static constexpr int count = 12 * draws_of_a_case;  // three laws, four ways to wear

  explicit OnsetDraws(const WetTyre& tyre);

  // The speed below which this share of the draws is, 0 to 1.
  Speed at_share(double share) const;
  // The share of the draws that aquaplane at or below this speed, 0 to 1.
  double chance_of_floating(Speed speed) const;

  const std::vector<double>& sorted_kmh() const { return sorted_kmh_; }

 private:
  std::vector<double> sorted_kmh_;
};

// Many tyres in one depth of water on one road: the water's part and the stream of draws are made
// once, and the low end is found without sorting the draws. Bit for bit what aquaplaning_onset
// gives, in a fraction of the time (less still for consecutive tyres of one pressure); without the
// high end. Film above 0.
class OnsetsInWater {
 public:
  struct Onset {
    Speed low;
    Speed central;
  };

  OnsetsInWater(Length film, Length texture);
  ~OnsetsInWater();

  // The tyre's own film and texture are ignored.
  Onset of(WetTyre tyre) const;

 private:
  struct Parts;
  Length film_;
  Length texture_;
  std::unique_ptr<Parts> parts_;
};

// The central value for every pair of a tread and a film, films (above 0) varying fastest. The
// tyre's own tread and film are ignored.
std::vector<Speed> onset_map(const WetTyre& tyre, const std::vector<Length>& treads,
                             const std::vector<Length>& films);

const Source& estimate_source();

}  // namespace treadwater::water
