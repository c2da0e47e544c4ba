// Symbols: p pressure inside, pa outside, g gamma, c speed of sound inside at the start, A hole, V
// cavity, Cd discharge, C = (2/(g+1))^((g+1)/(2(g-1))) = (5/6)³, k = Cd A c/V, and
//
//   s = (p/pa)^(2/7) = 1 + w²        choked above s = 6/5
//
// With g = 7/5 the two balances V dp/dt = -R T m and V dp/dt = -g R T m integrate in s and w:
//
//               choked                     unchoked
//   isothermal  7/(2 C) ln s               7/sqrt(5) (w + 2 w³/3 + w⁵/5)
//   adiabatic  -5/C sqrt(s1) / sqrt(s)     sqrt(5 s1) (w s^(3/2)/4 + 3/8 (w s^(1/2) + arsinh w))
//
// each the time k t that is left, s1 the start of the adiabatic fall.
#include "core/air/leak.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace treadwater::air {
namespace {

constexpr Source orifice{
    "orifice-flow", "Flow of a gas through an orifice, choked and unchoked (M. Beychok)",
    "also Encyclopaedia Britannica 1911, Hydraulics, 63-64", "2005", Standing::secondary};
constexpr Source leak_down{
    "leak-down", "Emptying of a fixed volume through an orifice, isothermal and adiabatic",
    "G. Bar-Meir, Fundamentals of Compressible Fluid Mechanics, ch. 11; integrals below choking "
    "ours",
    "", Standing::secondary};
constexpr Source discharge_of_air{
    "discharge", "Encyclopaedia Britannica, 11th ed., Hydraulics (Weisbach)",
    "63: orifice 0.563 to 0.788, short mouthpiece 0.81 to 0.84", "1911", Standing::published};
constexpr Source cavity{"cavity", "A university course's estimate of the volume of a tyre",
                        "full rectangle; prints 24.09 l for 185/50-14", "", Standing::published};
constexpr Source cavity_fill{"cavity-fill", "Share of the rectangle filled by air, 0.75 to 0.80",
                             "not seen in print", "", Standing::memory};

constexpr double gas_constant_of_air = 287.05;  // J/(kg K)
constexpr double choked_s = 1.2;
constexpr double choked_share = 125.0 / 216.0;  // C
constexpr double root_of_five = 2.23606797749978969641;

double speed_of_sound(Temperature inside) {
  return std::sqrt(gamma_of_air * gas_constant_of_air * in_kelvin(inside));
}

double area_of(Length diameter) {
  return std::numbers::pi / 4.0 * in_metres(diameter) * in_metres(diameter);
}

double s_of(GaugePressure p, AbsolutePressure outside) {
  return std::pow(absolute(p, outside) / outside, 2.0 / 7.0);
}

GaugePressure pressure_of(double s, AbsolutePressure outside) {
  return gauge(outside * (s * s * s * std::sqrt(s)), outside);
}

double isothermal(double s) {
  const double w2 = std::min(s, choked_s) - 1.0;
  const double unchoked = 7.0 / root_of_five * std::sqrt(w2) * (1.0 + w2 * (2.0 / 3.0 + w2 / 5.0));
  return s > choked_s ? unchoked + 3.5 / choked_share * std::log(s / choked_s) : unchoked;
}

// asinh(w), h being sqrt(1 + w^2), by the logarithm alone: the library's last digit differs between
// C libraries. 1 + x loses digits of a small x; log(u) x / (u - 1) has them back.
double area_sinh(double w, double h) {
  const double x = w + w * w / (1.0 + h);
  const double u = 1.0 + x;
  return u > 1.0 ? std::log(u) * (x / (u - 1.0)) : x;
}

// Without the factor sqrt(s1).
double adiabatic(double s) {
  const double below = std::min(s, choked_s);
  const double w = std::sqrt(below - 1.0);
  const double h = std::sqrt(below);
  const double unchoked = root_of_five * (w * h * below / 4.0 + 0.375 * (w * h + area_sinh(w, h)));
  return s > choked_s
             ? unchoked + 5.0 / choked_share * (1.0 / std::sqrt(choked_s) - 1.0 / std::sqrt(s))
             : unchoked;
}

TimeBand time_of(const Leak& leak, double from, double to) {
  return {seconds(std::sqrt(from) * (adiabatic(from) - adiabatic(to)) / leak.fastest),
          seconds((isothermal(from) - isothermal(to)) / leak.slowest)};
}

// The s at which this time is left: time_left rises with s.
double s_with(double (*time_left)(double), double wanted, double highest) {
  if (wanted <= 0.0) return 1.0;
  double low = 1.0;
  double high = highest;
  for (int i = 0; i < 50; ++i) {
    const double middle = (low + high) / 2.0;
    (time_left(middle) < wanted ? low : high) = middle;
  }
  return high;
}

bool above_zero(double x) { return x > 0.0 && std::isfinite(x); }

bool usable(const Leak& leak, GaugePressure from, AbsolutePressure outside) {
  return above_zero(leak.slowest) && above_zero(leak.fastest) &&
         above_zero(in_kilopascals_absolute(outside)) && std::isfinite(in_kilopascals(from)) &&
         from >= kilopascals(0.0);
}

}  // namespace

Volume cavity_volume(const patch::TyreSize& size, double fill) {
  const Length height = patch::section_height(size);
  return cubic_metres(std::numbers::pi * fill * in_metres(size.section_width) * in_metres(height) *
                      in_metres(size.rim_diameter + height));
}

Density air_density(AbsolutePressure pressure, Temperature temperature) {
  return kilograms_per_cubic_metre(1000.0 * in_kilopascals_absolute(pressure) /
                                   (gas_constant_of_air * in_kelvin(temperature)));
}

MassFlow orifice_flow(AbsolutePressure inside, Density density, AbsolutePressure outside,
                      Area effective, double g) {
  if (inside <= outside) return kilograms_per_second(0.0);
  const double critical = std::pow(2.0 / (g + 1.0), g / (g - 1.0));
  const double r = std::max(outside / inside, critical);
  const double psi2 = 2.0 * g / (g - 1.0) * (std::pow(r, 2.0 / g) - std::pow(r, (g + 1.0) / g));
  return kilograms_per_second(in_square_metres(effective) *
                              std::sqrt(psi2 * 1000.0 * in_kilopascals_absolute(inside) *
                                        in_kilograms_per_cubic_metre(density)));
}

GaugePressure choking_pressure(AbsolutePressure outside) { return pressure_of(choked_s, outside); }

std::optional<Leak> leak_through(Length hole, Volume cavity_of_tyre, Temperature inside,
                                 Discharge discharge) {
  const double rate = area_of(hole) * speed_of_sound(inside) / in_cubic_metres(cavity_of_tyre);
  const Leak leak{discharge.low * rate, discharge.high * rate};
  if (!above_zero(in_metres(hole)) || !usable(leak, kilopascals(0.0), standard_atmosphere))
    return std::nullopt;
  return leak;
}

std::optional<Leak> leak_between(const GaugeReading& first, const GaugeReading& second,
                                 Duration apart, GaugePressure error) {
  const AbsolutePressure outside = first.conditions.outside;
  const GaugePressure then = first.pressure;
  const GaugePressure now = carried_over(second, first.conditions);
  if (!(now >= kilopascals(0.0)) || !(error >= kilopascals(0.0)) || !(then - now > error))
    return std::nullopt;
  const double start = isothermal(s_of(then, outside));
  const auto rate = [&](GaugePressure p) {
    return (start - isothermal(s_of(std::max(p, kilopascals(0.0)), outside))) / in_seconds(apart);
  };
  const Leak leak{rate(now + error), rate(now - error)};
  if (!usable(leak, then, outside)) return std::nullopt;
  return leak;
}

Length hole_of(double rate, Volume cavity_of_tyre, Temperature inside, double discharge) {
  return metres(std::sqrt(4.0 * rate * in_cubic_metres(cavity_of_tyre) /
                          (std::numbers::pi * discharge * speed_of_sound(inside))));
}

std::optional<TimeBand> time_between(const Leak& leak, GaugePressure from, GaugePressure to,
                                     AbsolutePressure outside) {
  if (!usable(leak, from, outside) || !(to >= kilopascals(0.0))) return std::nullopt;
  return time_of(leak, s_of(from, outside), s_of(std::min(from, to), outside));
}

std::optional<PressureBand> pressure_after(const Leak& leak, GaugePressure from, Duration elapsed,
                                           AbsolutePressure outside) {
  const double t = in_seconds(elapsed);
  if (!usable(leak, from, outside) || !(t >= 0.0)) return std::nullopt;
  const double s1 = s_of(from, outside);
  return PressureBand{
      pressure_of(s_with(adiabatic, adiabatic(s1) - t * leak.fastest / std::sqrt(s1), s1), outside),
      pressure_of(s_with(isothermal, isothermal(s1) - t * leak.slowest, s1), outside)};
}

std::optional<LeakCurve> leak_curve(const Leak& leak, GaugePressure from,
                                    AbsolutePressure outside) {
  if (!usable(leak, from, outside)) return std::nullopt;
  const double s1 = s_of(from, outside);
  LeakCurve curve;
  for (int i = 0; i < curve_points; ++i) {
    const double share = 1.0 - static_cast<double>(i) / (curve_points - 1);
    const double s = 1.0 + (s1 - 1.0) * share * share;
    curve[static_cast<std::size_t>(i)] = {pressure_of(s, outside), time_of(leak, s1, s)};
  }
  return curve;
}

const Source& orifice_source() { return orifice; }
const Source& leak_down_source() { return leak_down; }
const Source& discharge_source() { return discharge_of_air; }
const Source& cavity_source() { return cavity; }
const Source& cavity_fill_source() { return cavity_fill; }

}  // namespace treadwater::air
