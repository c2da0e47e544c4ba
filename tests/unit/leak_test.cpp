// The closed forms of emptying against the orifice flow that they are integrals of. Their printed
// figures are in tests/register.
#include "core/air/leak.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "tests/support/catch.hpp"

using namespace treadwater;
using namespace treadwater::air;
using namespace treadwater::testing;

namespace {

constexpr Temperature mild = celsius(20.0);
constexpr Volume tyre = litres(29.2);
constexpr double discharge = 0.8;

Area disc(Length d) { return square_metres(std::numbers::pi / 4.0 * in_metres(d) * in_metres(d)); }

double flow(AbsolutePressure p, Temperature t, Area effective) {
  return in_kilograms_per_second(
      orifice_flow(p, air_density(p, t), standard_atmosphere, effective));
}

TimeBand fall(double from_kpa, double to_kpa) {
  const auto leak = leak_through(millimetres(1.0), tyre, mild, {discharge, discharge});
  return *time_between(*leak, kilopascals(from_kpa), kilopascals(to_kpa));
}

// Simpson's rule on dt = V dp/(R T m), or with gamma and the falling temperature, p = pa + (p1 -
// pa) x² taking the square root at the end away, the kink at choking made a joint.
double quadrature(double from_kpa, double to_kpa, bool falling_temperature) {
  constexpr double gas_constant = 287.05;
  constexpr int panels = 4000;
  const double pa = 101325.0;
  const double p1 = pa + 1000.0 * from_kpa;
  const double choking = pa + 1000.0 * in_kilopascals(choking_pressure(standard_atmosphere));
  const auto x_of = [&](double p) { return std::sqrt((p - pa) / (p1 - pa)); };
  const auto slope = [&](double x) {
    const double p = std::max(pa + (p1 - pa) * x * x, pa * (1.0 + 1e-13));
    const double t = falling_temperature ? 293.15 * std::pow(p / p1, 2.0 / 7.0) : 293.15;
    const double kg_per_s =
        flow(kilopascals_absolute(p / 1000.0), kelvin(t), disc(millimetres(1.0)) * discharge);
    return in_cubic_metres(tyre) * 2.0 * (p1 - pa) * x /
           ((falling_temperature ? 1.4 : 1.0) * gas_constant * t * kg_per_s);
  };
  const auto simpson = [&](double a, double b) {
    double sum = slope(a) + slope(b);
    for (int i = 1; i < panels; ++i)
      sum += (i % 2 == 1 ? 4.0 : 2.0) * slope(a + (b - a) * i / panels);
    return sum * (b - a) / panels / 3.0;
  };
  const double low = x_of(pa + 1000.0 * to_kpa);
  const double joint = p1 > choking ? std::max(low, x_of(choking)) : 1.0;
  return simpson(low, joint) + (joint < 1.0 ? simpson(joint, 1.0) : 0.0);
}

}  // namespace

TEST_CASE("closed forms agree with quadrature of the orifice flow to 1e-9") {
  const struct {
    double from, to;
  } rows[] = {{220, 91}, {220, 165}, {220, 50}, {220, 5}, {80, 20}, {850, 150}, {91, 90}};
  for (const auto& row : rows) {
    INFO(row.from << " to " << row.to);
    CHECK_THAT(in_seconds(fall(row.from, row.to).latest),
               WithinRel(quadrature(row.from, row.to, false), 1e-9));
    CHECK_THAT(in_seconds(fall(row.from, row.to).soonest),
               WithinRel(quadrature(row.from, row.to, true), 1e-9));
  }
}
