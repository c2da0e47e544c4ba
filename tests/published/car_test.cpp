// Published figures of speedometers, constructions, fitment and wheels.
#include "core/car/axle_load.hpp"
#include "core/car/fitment.hpp"
#include "core/car/rules.hpp"
#include "core/car/wheel.hpp"
#include "core/standard/load_index.hpp"
#include "core/standard/speedometer.hpp"
#include "tests/support/catch.hpp"

using namespace treadwater;
using namespace treadwater::car;
using namespace treadwater::testing;
using sidewall::Construction;
using standard::SpeedSymbol;

namespace {
Speed kmh(double v) { return kilometres_per_hour(v); }
patch::TyreSize size(double width, double aspect, double rim) {
  return {millimetres(width), aspect, inches(rim)};
}
}  // namespace

// UN R39 5.3, its five examples as printed in a motoring page (secondary).
TEST_CASE("a speedometer at 50, 70, 90, 110, 130 km/h may show 59, 81, 103, 125, 147") {
  const struct {
    double truth, most;
  } rows[] = {{50, 59}, {70, 81}, {90, 103}, {110, 125}, {130, 147}};
  for (const auto& row : rows) {
    CHECK_THAT(in_kilometres_per_hour(standard::most_shown(kmh(row.truth))),
               WithinAbs(row.most, 1e-9));
    CHECK(standard::speedometer_allowed(kmh(row.truth), kmh(row.truth)));
    CHECK(standard::speedometer_allowed(kmh(row.most - 0.001), kmh(row.truth)));
    CHECK_FALSE(standard::speedometer_allowed(kmh(row.most + 0.001), kmh(row.truth)));
    CHECK_FALSE(standard::speedometer_allowed(kmh(row.truth - 0.001), kmh(row.truth)));
  }
}

// SI 2001/25 Schedule 3 para. 5 (published): CC CB CR BB BR RR may be mixed, BC RC RB may not.
TEST_CASE("constructions front and rear: six pairs allowed, three not") {
  const Construction c = Construction::cross_ply, b = Construction::bias_belted,
                     r = Construction::radial;
  for (const auto& [front, rear] : {std::pair{c, c}, {c, b}, {c, r}, {b, b}, {b, r}, {r, r}})
    CHECK(may_be_mixed(front, rear));
  for (const auto& [front, rear] : {std::pair{b, c}, {r, c}, {r, b}})
    CHECK_FALSE(may_be_mixed(front, rear));
}

// German rule with three worked examples (secondary); 200 and 230 worked out here.
TEST_CASE("tolerance on the top speed: 145, 163, 172, 200, 230 km/h") {
  const struct {
    double v, with;
    bool european;
  } rows[] = {{145, 152.85, false},
              {163, 171.13, false},
              {172, 180.60, true},
              {200, 208.5, false},
              {230, 238.8, false}};
  for (const auto& row : rows)
    CHECK_THAT(in_kilometres_per_hour(speed_with_tolerance(kmh(row.v), row.european)),
               WithinAbs(row.with, 0.005));
}

// A tyre data book (secondary): 881 and 954 turns a mile, 1826.7 and 1686.9 mm.
TEST_CASE("turns a kilometre of a rolling circumference") {
  CHECK_THAT(turns_per_kilometre(millimetres(1826.7)) * 1.609344, WithinAbs(881.0, 0.5));
  CHECK_THAT(turns_per_kilometre(millimetres(1686.9)) * 1.609344, WithinAbs(954.0, 0.5));
}

// Worked out from the nominal sizes: 631.9 mm and 634.5 mm across.
TEST_CASE("195/65 R15 for 205/55 R16: circumference, height, clearance") {
  const Wheel before{size(205, 55, 16), false, inches(6.5), millimetres(45)};
  const Wheel after{size(195, 65, 15), false, inches(6.0), millimetres(40)};
  const FitmentChange change = fitment_change(before, after);
  CHECK_THAT(change.circumference, WithinAbs(634.5 / 631.9, 0.0002));
  CHECK_THAT(change.engine_speed() * change.circumference, WithinAbs(1.0, 1e-12));
  CHECK_THAT(in_millimetres(change.diameter), WithinAbs(2.6, 0.05));
  CHECK_THAT(in_millimetres(change.ride_height), WithinAbs(1.3, 0.05));
  // 5 mm less offset moves the wheel out.
  CHECK_THAT(in_millimetres(change.outward - change.inward), WithinAbs(10.0, 1e-9));
  CHECK_THAT(in_millimetres(change.outward + change.inward),
             WithinAbs(in_millimetres(change.section_width), 1e-9));
}

// Half an inch of rim is 5.08 mm of section (UN R30 6.1.1.1).
TEST_CASE("half an inch of rim widens the section by 5.08 mm, half of it on each side") {
  const Wheel before{size(205, 55, 16), false, inches(6.5), millimetres(45)};
  Wheel after = before;
  after.rim_width = inches(7.0);
  const FitmentChange change = fitment_change(before, after);
  CHECK_THAT(in_millimetres(change.section_width), WithinAbs(5.08, 0.005));
  CHECK_THAT(in_millimetres(change.inward), WithinAbs(2.54, 0.005));
  CHECK_THAT(in_millimetres(change.outward), WithinAbs(2.54, 0.005));
}

// Automotive Chassis Engineering, worked example: 14.25 Hz, 0.2 m between cobbles, 2.85 m/s
// or 10.26 km/h. The other figures worked out here.
TEST_CASE("wheel hop: 14.25 Hz, and cobbles 0.2 m apart at 10.26 km/h") {
  const auto knm = [](double v) { return newtons_per_millimetre(v); };
  const double f = wheel_hop_hertz(knm(20.63), knm(300.0), kilograms(40.0));
  CHECK_THAT(f, WithinAbs(14.25, 0.005));
  CHECK_THAT(in_kilometres_per_hour(hop_speed(14.25, metres(0.2))), WithinAbs(10.26, 0.005));
  CHECK_THAT(in_millimetres(movement_for(newtons(2349.0), knm(20.63), knm(300.0))),
             WithinAbs(7.33, 0.005));
  CHECK_THAT(wheel_hop_hertz(knm(20), knm(200), kilograms(35)), WithinAbs(12.62, 0.005));
  CHECK_THAT(wheel_hop_hertz(knm(25), knm(260), kilograms(45)), WithinAbs(12.67, 0.005));
  CHECK_THAT(in_newtons_per_millimetre(ride_rate(knm(20.0), knm(200.0))), WithinAbs(18.18, 0.005));
}

TEST_CASE("turning wheels count again: factors 1.037, 1.042, 1.036, and 8.2 kg for a tyre") {
  const struct {
    double car, inertia, radius, factor;
  } rows[] = {{1200, 1.0, 0.30, 1.037}, {900, 0.8, 0.29, 1.042}, {1500, 1.4, 0.32, 1.036}};
  for (const auto& row : rows)
    CHECK_THAT(equivalent_mass_factor(kilograms(row.car), kilogram_square_metres(4 * row.inertia),
                                      metres(row.radius)),
               WithinAbs(row.factor, 0.0005));
  CHECK_THAT(in_kilograms(equivalent_mass(kilogram_square_metres(0.736), metres(0.30))),
             WithinAbs(8.2, 0.05));
  CHECK_THAT(in_kilograms(tyre_equivalent_mass(kilograms(9.3))), WithinAbs(8.2, 0.05));
}

// Densities from memory.
TEST_CASE("a 9 kg steel wheel in other metals, by density alone") {
  const auto kg = [](Metal metal) {
    return in_kilograms(wheel_in(kilograms(9.0), Metal::steel, metal));
  };
  CHECK_THAT(kg(Metal::cast_aluminium), WithinAbs(9.0 * 2680 / 7850, 1e-9));
  CHECK_THAT(kg(Metal::forged_aluminium), WithinAbs(9.0 * 2700 / 7850, 1e-9));
  CHECK_THAT(kg(Metal::magnesium), WithinAbs(9.0 * 1800 / 7850, 1e-9));
}
