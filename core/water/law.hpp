// The parts of our law of the onset (estimate.hpp), each of one reading. None of them is a public
// figure: what they make together is.
//
// From 3 mm of water up the onset is x, a new tyre's speed times what worn grooves leave of it.
// Below, the less water there is the nearer it comes to Vn, the speed from which no floating is
// told, and it is none where the grooves hold the water (y from 1):
//
//   V = Vn - (Vn - x)(1 - y)
//
// Every part rises or falls one way only, and rounding keeps it so: the order of two tyres in two
// waters is exact. Plain + - * / and roots, and powers of power.hpp: the same on every machine.
//
// Symbols, ours: h film, mm; h0 the water that grooves hold, mm; x, V, Vn speeds, km/h; y the share
// of the way from x to Vn.
#pragma once

#include <algorithm>
#include <cmath>

#include "core/quantity/power.hpp"
#include "core/water/measured.hpp"
#include "core/water/onset.hpp"
#include "core/water/water.hpp"

namespace treadwater::water::law {

inline constexpr Length new_tread = millimetres(8.0);
inline constexpr Length worn_tread = millimetres(1.6);
inline constexpr Length flood_depth = millimetres(8.0);
inline constexpr Length deepest_measured = millimetres(10.0);
inline constexpr Length longest = metres(1.0);
inline constexpr Length least_width = millimetres(25.0);
inline constexpr Length narrowest_measured = millimetres(155.0);  // row B2
inline constexpr Length usual_width = millimetres(205.0);
inline constexpr Length cautious_texture = millimetres(0.7);
inline constexpr GaugePressure softest = kilopascals(10.0);
inline constexpr GaugePressure usual_pressure = kilopascals(220.0);
inline constexpr GaugePressure hardest_measured = kilopascals(250.0);
// The end of the film formula's range (onset.hpp).
inline constexpr GaugePressure hardest_of_film_formula = kilopascals(280.0);

// ---- readings, rounded so that two different ones differ by far more than a power's error ----

inline double rounded(double value, double steps_per_unit) {
  return std::floor(value * steps_per_unit + 0.5) / steps_per_unit;
}
inline Length rounded(Length l) { return metres(rounded(in_metres(l), 1073741824.0)); }  // 2^30
inline GaugePressure rounded(GaugePressure p) {
  return kilopascals(rounded(in_kilopascals(p), 1024.0));
}

// What is not a number counts as the worst.
inline Length held_tread(Length t) { return t > metres(0.0) ? std::min(t, longest) : metres(0.0); }
inline Length held_film(Length w) { return w < longest ? std::max(w, metres(0.0)) : longest; }
inline Length held_width(Length w) {
  return w >= least_width ? std::max(w, narrowest_measured) : longest;
}
inline GaugePressure held_pressure(GaugePressure p) { return p > softest ? p : softest; }

// ---- x ----

inline double root(double share) { return std::sqrt(std::min(1.0, share)); }

inline Length not_shallow(Length film) { return std::max(film, puddle); }

// How far the film floods the grooves, at most 1. The exponent is ours: it brings the rows in "a
// few millimetres" of water to what was measured.
inline double flooding(Length film) { return std::min(1.0, power(film / flood_depth, 2.0 / 3.0)); }

inline double width_factor(Length section_width) {
  return std::sqrt(usual_width / held_width(section_width));
}

inline double pressure_factor(GaugePressure p) {
  return power(std::min(p, hardest_of_film_formula) / usual_pressure, 0.3);
}

inline Speed new_tyre_film_law(Length texture, Length film) {
  return film_onset({usual_pressure, new_tread, film, texture});
}

// Beyond the depths that anybody measured: the cautious law falls as a root of depth, the others as
// a fourth root. Both ours.
inline double deep_cautious(Length film) { return root(deepest_measured / film); }
inline double deep(Length film) { return std::sqrt(deep_cautious(film)); }

// What bare rubber clears, which nobody measured: the line from 3 to 1.6 mm carried on (0.264), no
// less than at 1.6 mm (0.55), and half way between (0.407).
inline constexpr double bare_by_line =
    clearing_at_1_6_mm - 1.6 * (0.80 - clearing_at_1_6_mm) / (3.0 - 1.6);
inline constexpr double bare_half_way = (bare_by_line + clearing_at_1_6_mm) / 2.0;

// What worn grooves leave of a new tyre's speed.
inline double worn(double loss, double flooded) { return 1.0 - loss * flooded; }

// ---- the rise below 3 mm ----

// Vn. Nine tenths of the cautious 144.5 are 130 km/h: there the speed to hold to ends without a
// step. 180 is ours: it puts the central value of worn tyres in 1 mm of water near where stops say
// that grip is gone.
inline constexpr double highest_cautious = 144.5;  // km/h
inline constexpr double highest = 180.0;           // km/h

// To the next 2^-40 km/h, which is the last digit of a sum with 6144. Then V is x to the last bit
// where y is 0, and never lies below it.
[[gnu::always_inline]] inline double on_grid(double kmh) { return (kmh + 6144.0) - 6144.0; }

// What a draw has in place of a number where nothing floats. Whatever lies so high counts as none:
// it is beyond all that is told.
inline constexpr double none = 200.0;  // km/h
inline Speed onset_of(double kmh) { return kmh < none ? kilometres_per_hour(kmh) : no_floating; }

// So written it never falls by a last digit as x or y rises. It reaches Vn where y reaches 1, and
// is none from there on: a sum of two products, since a choice costs WebAssembly a branch that is
// foreseen badly. x is on the grid.
[[gnu::always_inline]] inline double risen(double x, double y, double top) {
  const double v = top - (top - x) * (1.0 - y);
  const auto floats = static_cast<double>(v < top);
  return v * floats + none * (1.0 - floats);
}

// y of the film and the pressure law, ((3 - h) / (3 - h0))^2, as a part of the water and one of the
// grooves. h0 = 0.145 tread: half (ours) of what grooves of 0.29 void hold, as measured on prints
// of one road tyre; held at 1.8 mm.
inline double shallowness(Length film) {
  const double left = std::max(0.0, in_millimetres(puddle) - in_millimetres(film));
  return left * left;
}
inline double grooves_hold(Length grooves) {
  const double left = in_millimetres(puddle) - std::min(1.8, 0.145 * in_millimetres(grooves));
  return 1.0 / (left * left);
}

// y of the cautious law, u^1.5 with u = 1 - (h - h0) / 1.65, not below 0, h0 = 0.18 (tread - 1.6)
// and none at the wear bars. All ours: the shape that no tenth of a millimetre of water moves by 10
// km/h. h0 is held where nothing of the rise is left at 3 mm.
inline constexpr double cautious_reach = 1.65;  // mm
inline double cautious_grooves(Length grooves) {
  const double most = in_millimetres(puddle) - cautious_reach;
  return 1.0 + std::clamp(0.18 * (in_millimetres(grooves) - 1.6), 0.0, most) / cautious_reach;
}
inline double cautious_water(Length film) { return in_millimetres(film) / cautious_reach; }
[[gnu::always_inline]] inline double cautious_rise(double grooves, double water) {
  const double u = grooves - water;
  const double positive = 0.5 * (u + std::fabs(u));
  return positive * std::sqrt(positive);
}

}  // namespace treadwater::water::law
