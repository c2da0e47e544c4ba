// Air leaking from a hole: time until the warning lamp, until the tyre is not fit to drive on,
// until it is flat.
//
// The hole is an orifice: choked (sonic) while the pressure inside is more than 1.8929 times that
// outside, 90.5 kPa on the gauge at sea level, and unchoked from there down. The tyre is a fixed
// volume. Two bounds, both exact for air (gamma 7/5) and derived in leak.cpp:
//   adiabatic   the air left behind cools and the jet thins more slowly: the soonest
//   isothermal  the tyre keeps the air warm, true of anything slower than about a minute:
//               the latest
//
// A leak is stored as its rate, Cd A c/V, c the speed of sound inside. All times go with V, with
// 1/(Cd d²), and with 1/sqrt(T).
//
// Range: 0 kPa gauge and up, any hole; real holes in rubber are elastic channels, and a nail left
// in one may seal and leak by turns: the hole that matters is the one inferred from two readings. A
// tyre under load shrinks as it softens, so it is flat sooner than its fixed volume would be.
// Outside the range, or if an input is not a number, nothing is returned.
#pragma once

#include <array>
#include <optional>

#include "core/air/gas_law.hpp"
#include "core/patch/geometry.hpp"
#include "core/quantity/quantity.hpp"
#include "core/standard/instrument.hpp"
#include "core/standard/source.hpp"

namespace treadwater::air {

// ---- the cavity ----

// The share of the full rectangle (tread to rim, width at the widest) that is air. From memory:
// 0.75 to 0.80, which makes 28 to 30 l of a 205/55 R16.
inline constexpr double usual_fill = 0.775;

// V = pi S² a (S a + 2540 d)/10^10 l x fill, S mm, a per cent, d in.
Volume cavity_volume(const patch::TyreSize& size, double fill = usual_fill);

// ---- flow through an orifice ----

// Discharge coefficients as printed for air; low and high are their spread.
struct Discharge {
  double low;
  double high;
};
inline constexpr Discharge sharp_hole{0.563, 0.788};
inline constexpr Discharge short_channel{0.81, 0.84};
// A hole of known size in rubber could be either.
inline constexpr Discharge any_hole{0.563, 0.84};
// An effective hole size is given for this one.
inline constexpr double effective_discharge = 0.8;

inline constexpr double gamma_of_air = 1.4;

Density air_density(AbsolutePressure pressure, Temperature temperature);

// Through an effective area Cd A, from a gas at rest. Nothing flows where inside <= outside.
MassFlow orifice_flow(AbsolutePressure inside, Density density, AbsolutePressure outside,
                      Area effective, double gamma = gamma_of_air);

// Above it the jet is choked: outside x (6/5)^(7/2) for air.
GaugePressure choking_pressure(AbsolutePressure outside);

// ---- a leak ----

struct Leak {
  double slowest;  // Cd A c/V, 1/s; above zero
  double fastest;
};

// A hole of known size. The temperature is that of the air inside.
std::optional<Leak> leak_through(Length hole, Volume cavity, Temperature inside,
                                 Discharge discharge);

// From two gauge readings and a clock, without knowing hole or cavity. The second reading is first
// converted to the conditions of the first, so that cooling is not taken for a leak; `error` is the
// possible error of their difference. Nothing if the drop is no greater than that: wait longer and
// read again.
std::optional<Leak> leak_between(const GaugeReading& first, const GaugeReading& second,
                                 Duration apart,
                                 GaugePressure error = standard::pressure_gauge_error);

// The diameter of a round hole that leaks at this rate.
Length hole_of(double rate, Volume cavity, Temperature inside,
               double discharge = effective_discharge);

struct TimeBand {
  Duration soonest;
  Duration latest;
};

// Zero if the pressure is already there.
std::optional<TimeBand> time_between(const Leak& leak, GaugePressure from, GaugePressure to,
                                     AbsolutePressure outside = standard_atmosphere);

// The pressure left after a time.
std::optional<PressureBand> pressure_after(const Leak& leak, GaugePressure from, Duration elapsed,
                                           AbsolutePressure outside = standard_atmosphere);

struct LeakPoint {
  GaugePressure pressure;
  TimeBand time;
};
inline constexpr int curve_points = 33;
using LeakCurve = std::array<LeakPoint, curve_points>;

// The leak-down curve, from now to flat, with points closer together near flat.
std::optional<LeakCurve> leak_curve(const Leak& leak, GaugePressure from,
                                    AbsolutePressure outside = standard_atmosphere);

const Source& orifice_source();
const Source& leak_down_source();
const Source& discharge_source();
const Source& cavity_source();
const Source& cavity_fill_source();

}  // namespace treadwater::air
