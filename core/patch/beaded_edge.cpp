// Units of the sources: psi, inches, millimetres of section, hundredweight (112 lb) on an axle.
#include "core/patch/beaded_edge.hpp"

#include <algorithm>
#include <cmath>

namespace treadwater::patch {
namespace {

constexpr Source of_1909{"beaded-edge-1909", "Fire Engineering, 28 April 1909",
                         "pressures by section; the smallest size is blank in the copy", "1909",
                         Standing::published};
constexpr Source of_1921{"beaded-edge-1921",
                         "Cable cord tyres, greatest load on an axle, from a car maker's archive",
                         "columns parsed from a run-on line", "1921", Standing::secondary};
constexpr Source least{"beaded-edge-least", "Beaded-edge tyres on cars: 60 psi or more",
                       "two tyre dealers and a club", "", Standing::secondary};
constexpr Source practice{"beaded-edge-practice", "Beaded-edge tyres on cars: up to 65 psi",
                          "common practice, no source", "", Standing::common_practice};
constexpr Source today{"beaded-edge-today", "An 820x120 of today: 585 lb at 75 psi, 300 kg at 60",
                       "owners' forum; disagrees with 1921", "", Standing::secondary};
constexpr Source motorcycle{"beaded-edge-motorcycle", "Motor cycles of about 1913: 32 to 40 psi",
                            "an antique motor-cycle site", "", Standing::secondary};

struct Point {
  double x;  // in or cwt
  double psi;
};
constexpr Point by_section[] = {{3.5, 60}, {4, 75}, {4.5, 85}, {5, 90}, {5.5, 95}};

struct Row {
  double section_mm;
  Wheels wheels;
  int count;
  Point loads[4];
};
constexpr Row by_load[] = {
    {90, Wheels::single, 3, {{12, 56}, {14, 62}, {16, 70}}},
    {105, Wheels::single, 2, {{16, 60}, {18, 70}}},
    {120, Wheels::single, 3, {{18, 56}, {20, 60}, {24, 70}}},
    {135, Wheels::single, 3, {{25, 56}, {28, 60}, {32, 70}}},
    {150, Wheels::single, 3, {{30, 60}, {32, 65}, {35, 75}}},
    {155, Wheels::single, 3, {{35, 65}, {40, 75}, {45, 90}}},
    {120, Wheels::twin, 3, {{30, 56}, {36, 60}, {42, 70}}},
    {135, Wheels::twin, 3, {{50, 56}, {55, 60}, {60, 70}}},
    {155, Wheels::twin, 4, {{67, 65}, {77, 75}, {80, 80}, {87, 90}}},
};
constexpr double greatest_section_mm = 160.0;
// 3.5 in is 88.9 mm and was sold as 90.
constexpr double near_mm = 2.0;

double hundredweight(Mass m) { return in_pounds(m) / 112.0; }

// Unit rounding must not exclude the table's own ends.
constexpr double rounding = 1e-9;

const Row* row_of(Length section, Wheels wheels) {
  const double mm = in_millimetres(section);
  const Row* found = nullptr;
  if (mm <= greatest_section_mm)
    for (const Row& row : by_load)
      if (row.wheels == wheels && row.section_mm <= mm + near_mm) found = &row;
  return found;
}

// Straight lines through the points; the first value below them, nothing above.
std::optional<GaugePressure> along(const Point* p, int count, double x) {
  if (x <= p[0].x) return psi(p[0].psi);
  for (int i = 1; i < count; ++i)
    if (x <= p[i].x + rounding)
      return psi(p[i - 1].psi +
                 (p[i].psi - p[i - 1].psi) * (x - p[i - 1].x) / (p[i].x - p[i - 1].x));
  return std::nullopt;
}

constexpr LeastPressure least_today{psi(60.0), &least};

// Of the band: the lower of the two schedules, and no less than today's minimum.
LeastPressure low_end(Length section, GaugePressure by_1921) {
  const GaugePressure by_1909 = beaded_edge_1909(section).value_or(by_1921);
  const LeastPressure scheduled =
      by_1909 < by_1921 ? LeastPressure{by_1909, &of_1909} : LeastPressure{by_1921, &of_1921};
  return scheduled.pressure > least_today.pressure ? scheduled : least_today;
}

}  // namespace

std::optional<GaugePressure> beaded_edge_1909(Length section) {
  const double in = in_inches(section);
  if (!(in >= 3.5 - rounding)) return std::nullopt;
  return along(by_section, 5, in);
}

std::optional<GaugePressure> beaded_edge_1921(Length section, Mass axle_load, Wheels wheels) {
  const Row* found = row_of(section, wheels);
  return found ? along(found->loads, found->count, hundredweight(axle_load)) : std::nullopt;
}

std::optional<PressureBand> beaded_edge_pressure(Length section, Mass axle_load, Wheels wheels) {
  const auto by_1921 = beaded_edge_1921(section, axle_load, wheels);
  if (!by_1921) return std::nullopt;
  const GaugePressure by_1909 = beaded_edge_1909(section).value_or(*by_1921);
  return PressureBand{low_end(section, *by_1921).pressure,
                      std::max(psi(65.0), std::max(by_1909, *by_1921))};
}

LeastPressure beaded_edge_least(Length section, Mass axle_load) {
  const Row* row = row_of(section, Wheels::single);
  if (!row) return least_today;
  const GaugePressure greatest = psi(row->loads[row->count - 1].psi);
  return low_end(section, beaded_edge_1921(section, axle_load, Wheels::single).value_or(greatest));
}

std::optional<Mass> beaded_edge_load_today(Length section) {
  return std::fabs(in_millimetres(section) - 120.0) <= near_mm ? std::optional<Mass>(pounds(585.0))
                                                               : std::nullopt;
}

PressureBand beaded_edge_motorcycle() { return {psi(32.0), psi(40.0)}; }

std::optional<GaugePressure> straight_side_1921(Mass car) {
  const double cwt = hundredweight(car) + 1e-9;
  if (!(cwt >= 40.0)) return std::nullopt;
  return psi(cwt < 45.0 ? 55.0 : cwt <= 55.0 + 2e-9 ? 60.0 : 65.0);
}

const Source& beaded_edge_1909_source() { return of_1909; }
const Source& beaded_edge_1921_source() { return of_1921; }
const Source& beaded_edge_least_source() { return least; }
const Source& beaded_edge_practice_source() { return practice; }
const Source& beaded_edge_today_source() { return today; }
const Source& beaded_edge_motorcycle_source() { return motorcycle; }

}  // namespace treadwater::patch
