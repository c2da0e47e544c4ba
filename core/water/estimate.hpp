// Our own estimate of the speed at which this tyre starts to aquaplane: a central value from the
// readings as they are, and a distribution over the possible errors of readings and models. No
// outside source has it; docs/method.md derives it step by step.
//
// In 3 mm of water and more a new tyre follows the film formula of FHWA-RD-79-31 closely (within
// 10 % of the measured rows). A worn one falls below it, the more so the deeper the water, in
// proportion to the water its grooves clear. So:
//
//   x = law for a new tyre  x  (1 - (1 - c) s)  x  sqrt(205 mm / section width)
//
//   c  what the grooves clear relative to a new tread (measured.hpp), down to bare rubber
//   s  how far the water floods the grooves: (film / 8 mm)^(2/3), at most 1
//
// In less than 3 mm the grooves hold part of the water, and stops show tyres in touch with the road
// far above x: the onset rises from x at 3 mm to none at road speeds if the grooves hold it all
// (law.hpp). A thin film is slippery all the same; that is another question.
//
// The models for a new tyre, equally likely in the distribution:
//   cautious  the film formula held at 24 psi and 3/32 in of tread, as road designers take it
//             (PAVDRN); below 220 kPa as the square root of pressure, no credit above; at most
//             0.7 mm of texture; no credit for a narrow tyre; beyond 10 mm of water, which nobody
//             measured, a further sqrt(10 mm / film). Its rise in thin water is the most cautious
//   film      the film formula at 8 mm of tread and the tyre's own pressure, no credit above 280
//             kPa, the end of its range; beyond 10 mm (10 mm / film)^0.25: the central value
//   pressure  the pressure law alone, no credit above 250 kPa; no loss for a wide tyre; beyond
//             10 mm as the film law. It anchors these draws at 3 mm and has no part in the rise
// The other published formulas are left out: they are for trucks or slicks, are known from memory
// only, or give far more than the measured rows. So is the road designers' own law of thin films:
// its tests were made on a smooth tyre. How a worn tread falls away below 1.6 mm: to a clearing of
// 0.264 (two draws of four; the central value), to 0.407 (one), to 0.55 (one). No tyre narrower
// than 155 mm is credited for it. Tyres of one test spread 11 % either way.
//
// The distribution: 20 160 simulated cases ("draws") from a fixed stream; pressure gauge, tread
// gauge and ruler (standard/instrument.hpp) and the spread between tyres each rectangular, on 256
// equally likely steps. Low and high are its 5 % and 95 % points; for water given by a word, low at
// the deep end of its range, central in the middle, high at the shallow end (water.hpp). The draws
// are the same for every tyre, so the order of two tyres is the order of each of their draws.
//
// No aquaplaning: an onset may be none, which is above every number (no_floating is infinite) and
// does not leave the core: ask floats_at_road_speed, told and held. Range: water above 0 (more than
// 1 m as 1 m), any tread, 10 kPa and up, a section of 25 mm and up (any other counts as 1 m).
// Tested against 0 to 8 mm of tread and 1 to 9.5 mm of water; outside that it is an extrapolation.
// Never rises with more water, never falls with more tread or more pressure: exactly, because
// readings are first rounded to a nanometre and a pascal, steps far wider than the error of a
// power. For zero water nothing is returned: no dynamic aquaplaning is expected. Bit for bit the
// same natively and in WebAssembly.
#pragma once

#include <limits>
#include <memory>
#include <optional>
#include <vector>

#include "core/quantity/quantity.hpp"
#include "core/standard/source.hpp"
#include "core/water/water.hpp"

namespace treadwater::water {

struct WetTyre {
  GaugePressure pressure;
  Length tread;
  double groove_credit = 1.0;           // 1 a moulded tread, 0.5 a hand-cut slick, 0 a slick
  std::optional<Length> section_width;  // if not known, the band allows for 155 to 255 mm
  Water film;                           // above the tops of the texture
  Length texture;
};

// Any of the three may be no_floating, and then so are those above it.
struct SpeedBand {
  Speed low;
  Speed central;
  Speed high;
};

// Nothing if there is no water to aquaplane on.
std::optional<SpeedBand> aquaplaning_onset(const WetTyre& tyre);

// ---- what is told of a band ----

// The share of the low value used for the maximum speed.
inline constexpr double hold_to_share = 0.9;

// Above this no aquaplaning is to be expected: the highest limit of the roads we write for.
inline constexpr Speed fastest_on_roads = kilometres_per_hour(130.0);
// An onset above this is not given as a figure: nobody measured near it.
inline constexpr Speed highest_onset_told = kilometres_per_hour(180.0);

// Is aquaplaning to be expected at road speeds? For the central value, or either end.
constexpr bool floats_at_road_speed(Speed onset) { return onset <= fastest_on_roads; }

// An end as a figure; nothing if it has none.
constexpr std::optional<Speed> told(Speed onset) {
  return onset <= highest_onset_told ? std::optional(onset) : std::nullopt;
}

// The maximum speed for water, before it is rounded down; nothing if water sets no limit.
constexpr std::optional<Speed> held(const SpeedBand& onset) {
  const Speed speed = onset.low * hold_to_share;
  return speed < fastest_on_roads ? std::optional(speed) : std::nullopt;
}

// ---- the same asked otherwise ----

// In ruts and puddles, 3 mm by ruler whatever the tyre's own water: given beside a road that is
// only wet.
SpeedBand onset_in_puddles(WetTyre tyre);
constexpr bool shallower_than_puddles(const Water& water) { return water.middle() < puddle; }

// Of a word and a ruler the one in which this tyre aquaplanes first, by the low end. Its own water
// is ignored; less than any is no water.
Water stricter(WetTyre tyre, const Water& one, const Water& other);

// Is it to be judged as a slick in this water? The estimate itself goes down to bare rubber without
// a step; a verdict on slicks that began at the last hundredth of a millimetre would be one. Both
// figures are ours.
inline constexpr Length least_tread_credited = millimetres(0.5);
inline constexpr Length least_water_of_slick = millimetres(0.2);
bool counts_as_slick(const WetTyre& tyre);

// The whole distribution, for a curve of the chance of aquaplaning. Water above 0; every depth of a
// word's range is as likely.
class OnsetDraws {
 public:
  static constexpr int draws_of_a_case = 1680;
  static constexpr int count = 12 * draws_of_a_case;  // three laws, four ways to wear

  explicit OnsetDraws(const WetTyre& tyre);

  // The speed below which this share of the draws is, 0 to 1.
  Speed at_share(double share) const;
  // The share of the draws that aquaplane at or below this speed, 0 to 1.
  double chance_of_floating(Speed speed) const;

  // Draws that do not aquaplane are infinite.
  const std::vector<double>& sorted_kmh() const { return sorted_kmh_; }

 private:
  std::vector<double> sorted_kmh_;
};

// Many tyres in one water on one road: the water's part and the stream of draws are made once, and
// the low end is found without sorting the draws. Bit for bit what aquaplaning_onset gives, in a
// fraction of the time (less still for consecutive tyres of one pressure); without the high end.
// Water above 0.
class OnsetsInWater {
 public:
  struct Onset {
    Speed low;
    Speed central;
  };

  OnsetsInWater(const Water& water, Length texture);
  ~OnsetsInWater();

  // The tyre's own water and texture are ignored.
  Onset of(WetTyre tyre) const;

 private:
  struct Parts;
  Water water_;
  Length texture_;
  std::unique_ptr<Parts> parts_;
};

// The central value for every pair of a tread and a film, films (above 0) varying fastest. The
// tyre's own tread and water are ignored.
std::vector<Speed> onset_map(const WetTyre& tyre, const std::vector<Length>& treads,
                             const std::vector<Length>& films);

const Source& estimate_source();

}  // namespace treadwater::water
