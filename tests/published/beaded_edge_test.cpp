// Beaded-edge pressures: the schedules of 1909 and 1921, and what is said today.
#include "core/patch/beaded_edge.hpp"

#include "tests/support/catch.hpp"

using namespace treadwater;
using namespace treadwater::patch;
using namespace treadwater::testing;

namespace {
Mass cwt(double v) { return pounds(112.0 * v); }
}  // namespace

// Fire Engineering, 28 April 1909.
TEST_CASE("1909: 60, 75, 85, 90 and 95 psi for sections of 3.5 to 5.5 in") {
  const struct {
    double inches, psi, psi_an_inch;
  } rows[] = {{3.5, 60, 17.1}, {4, 75, 18.8}, {4.5, 85, 18.9}, {5, 90, 18.0}, {5.5, 95, 17.3}};
  for (const auto& row : rows) {
    const double p = in_psi(*beaded_edge_1909(inches(row.inches)));
    CHECK_THAT(p, WithinAbs(row.psi, 1e-6));
    CHECK_THAT(p / row.inches, WithinAbs(row.psi_an_inch, 0.051));
  }
  CHECK_THAT(in_psi(*beaded_edge_1909(inches(4.25))), WithinAbs(80.0, 1e-6));
  CHECK_FALSE(beaded_edge_1909(inches(3.4)));
  CHECK_FALSE(beaded_edge_1909(inches(5.6)));
}

// Cable cord table of 1921 from a car maker's archive (secondary: parsed from a run-on line).
TEST_CASE("1921: every load and pressure of the table") {
  const struct {
    double mm;
    Wheels wheels;
    double cwt, psi;
  } rows[] = {
      {90, Wheels::single, 16, 70},  {90, Wheels::single, 14, 62},  {90, Wheels::single, 12, 56},
      {105, Wheels::single, 18, 70}, {105, Wheels::single, 16, 60}, {120, Wheels::single, 24, 70},
      {120, Wheels::single, 20, 60}, {120, Wheels::single, 18, 56}, {120, Wheels::twin, 42, 70},
      {120, Wheels::twin, 36, 60},   {120, Wheels::twin, 30, 56},   {135, Wheels::single, 32, 70},
      {135, Wheels::single, 28, 60}, {135, Wheels::single, 25, 56}, {135, Wheels::twin, 60, 70},
      {135, Wheels::twin, 55, 60},   {135, Wheels::twin, 50, 56},   {150, Wheels::single, 30, 60},
      {150, Wheels::single, 32, 65}, {150, Wheels::single, 35, 75}, {155, Wheels::single, 35, 65},
      {155, Wheels::single, 40, 75}, {155, Wheels::single, 45, 90}, {155, Wheels::twin, 67, 65},
      {155, Wheels::twin, 77, 75},   {155, Wheels::twin, 80, 80},   {155, Wheels::twin, 87, 90}};
  for (const auto& row : rows) {
    INFO(row.mm << " mm, " << row.cwt << " cwt");
    const auto p = beaded_edge_1921(millimetres(row.mm), cwt(row.cwt), row.wheels);
    REQUIRE(p);
    CHECK_THAT(in_psi(*p), WithinAbs(row.psi, 1e-6));
  }
  CHECK_FALSE(beaded_edge_1921(millimetres(90), cwt(16.1), Wheels::single));
  CHECK_FALSE(beaded_edge_1921(millimetres(80), cwt(5), Wheels::single));
  CHECK_FALSE(beaded_edge_1921(millimetres(165), cwt(30), Wheels::single));
  CHECK_FALSE(beaded_edge_1921(millimetres(105), cwt(10), Wheels::twin));
  CHECK_THAT(in_psi(*beaded_edge_1921(millimetres(118), cwt(22), Wheels::single)),
             WithinAbs(65.0, 1e-6));
  // Between two rows the smaller section rules: 114 mm goes by 105.
  CHECK_FALSE(beaded_edge_1921(millimetres(114), cwt(20), Wheels::single));
}

TEST_CASE("1921 in kilograms a wheel: 610, 406, 711 and 1143") {
  const struct { double cwt, kg; } rows[] = {{24, 610}, {16, 406}, {28, 711}, {45, 1143}};
  for (const auto& row : rows) CHECK_THAT(in_kilograms(cwt(row.cwt)) / 2.0, WithinAbs(row.kg, 0.5));
}

TEST_CASE("the schedules disagree, and the band runs over both, never under 60 psi") {
  // 4.72 in in 1909: 87.2 psi; 18 cwt in 1921: 56 psi.
  const auto band = beaded_edge_pressure(millimetres(120), cwt(18), Wheels::single);
  REQUIRE(band);
  CHECK_THAT(in_psi(band->low), WithinAbs(60.0, 1e-9));
  CHECK_THAT(in_psi(band->high), WithinAbs(87.2, 0.05));
  const auto light = beaded_edge_pressure(millimetres(90), cwt(12), Wheels::single);
  CHECK_THAT(in_psi(light->high), WithinAbs(65.0, 1e-9));
  CHECK_FALSE(beaded_edge_pressure(millimetres(120), cwt(25), Wheels::single));
}

// An owners' forum (secondary): it contradicts 1921, which printed 610 kg at 70 psi.
TEST_CASE("an 820x120 made today is said to carry 585 lb") {
  CHECK_THAT(in_pounds(*beaded_edge_load_today(millimetres(120))), WithinAbs(585.0, 1e-9));
  CHECK_FALSE(beaded_edge_load_today(millimetres(105)));
}

TEST_CASE("straight-sided cord tyres of 1921, and motor cycles of about 1913") {
  CHECK_THAT(in_psi(*straight_side_1921(cwt(40))), WithinAbs(55.0, 1e-9));
  CHECK_THAT(in_psi(*straight_side_1921(cwt(44))), WithinAbs(55.0, 1e-9));
  CHECK_THAT(in_psi(*straight_side_1921(cwt(55))), WithinAbs(60.0, 1e-9));
  CHECK_THAT(in_psi(*straight_side_1921(cwt(56))), WithinAbs(65.0, 1e-9));
  CHECK_FALSE(straight_side_1921(cwt(39)));
  CHECK_THAT(in_psi(beaded_edge_motorcycle().low), WithinAbs(32.0, 1e-9));
  CHECK_THAT(in_psi(beaded_edge_motorcycle().high), WithinAbs(40.0, 1e-9));
}

// The list of sizes is from memory, the rule worked out.
TEST_CASE("diameter over the beads of fourteen sizes") {
  const struct {
    double overall, section, beads;
  } rows[] = {{650, 65, 520},     {700, 80, 540},      {710, 90, 530},  {760, 90, 580},
              {765, 105, 555},    {810, 90, 630},      {815, 105, 605}, {820, 120, 580},
              {875, 105, 665},    {880, 120, 640},     {895, 135, 625}, {935, 135, 665},
              {762, 88.9, 584.2}, {711.2, 76.2, 558.8}};
  for (const auto& row : rows)
    CHECK_THAT(in_millimetres(beaded_edge_rim(millimetres(row.overall), millimetres(row.section))),
               WithinAbs(row.beads, 1e-6));
  CHECK_THAT(in_inches(beaded_edge_rim(inches(30), inches(3.5))), WithinAbs(23.0, 1e-9));
}
