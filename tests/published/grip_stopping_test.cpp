// Printed distances and speeds, reproduced to the printed digit. Standing: see the sources in
// core/grip/stopping.hpp and cornering.hpp. Points marked "worked out" are our arithmetic on the
// printed formulas in another program.
#include <cmath>

#include "core/grip/cornering.hpp"
#include "core/grip/stopping.hpp"
#include "tests/support/catch.hpp"

using namespace treadwater;
using namespace treadwater::grip;
using namespace treadwater::testing;

namespace {

constexpr Speed kmh(double v) { return kilometres_per_hour(v); }
constexpr Speed mph(double v) { return miles_per_hour(v); }

double rounded(Length l) { return std::round(in_metres(l)); }
double up_to_five(double v) { return 5.0 * std::ceil(v / 5.0); }

}  // namespace

// Highway Code rule 126 (secondary, three texts).
TEST_CASE("Highway Code rule 126: six rows to the printed metre, and in feet") {
  const double rows[][5] = {{20, 6, 6, 12, 40},    {30, 9, 14, 23, 75},   {40, 12, 24, 36, 120},
                            {50, 15, 38, 53, 175}, {60, 18, 55, 73, 240}, {70, 21, 75, 96, 315}};
  for (const auto& row : rows) {
    INFO(row[0] << " mph");
    const RuleDistance rule = highway_code(mph(row[0]));
    CHECK(rounded(rule.thinking) == row[1]);
    CHECK(rounded(rule.braking) == row[2]);
    CHECK(rounded(rule.thinking) + rounded(rule.braking) == row[3]);
    CHECK_THAT(in_feet(rule.total()), WithinAbs(row[4], 1e-9));
  }
  CHECK(highway_code_wet == 2.0);
  CHECK(highway_code_ice == 10.0);
}

// Worked out: the rule brakes as a friction of 0.655 to 0.679 does.
TEST_CASE("Highway Code rule 126: its braking is that of a friction near 0.67") {
  for (double v : {20.0, 40.0, 70.0})
    CHECK_THAT(*braking_distance(mph(v), 0.6682, 0.0) / highway_code(mph(v)).braking,
               WithinAbs(1.0, 0.001));
}

TEST_CASE("two-second gap, doubled in the wet, ten times on ice") {
  CHECK_THAT(in_metres(following_gap(kmh(90), GapRoad::dry)), WithinAbs(50.0, 1e-9));
  CHECK_THAT(in_metres(following_gap(kmh(90), GapRoad::wet)), WithinAbs(100.0, 1e-9));
  CHECK_THAT(in_seconds(following_time(GapRoad::ice)), WithinAbs(20.0, 1e-12));
}

// Secondary, teaching texts.
TEST_CASE("German driving schools: the printed examples at 30, 50 and 100 km/h") {
  CHECK_THAT(in_metres(driving_school(kmh(30), Braking::normal).thinking), WithinAbs(9, 1e-9));
  const RuleDistance at_50 = driving_school(kmh(50), Braking::normal);
  CHECK_THAT(in_metres(at_50.thinking), WithinAbs(15, 1e-9));
  CHECK_THAT(in_metres(at_50.braking), WithinAbs(25, 1e-9));
  CHECK_THAT(in_metres(at_50.total()), WithinAbs(40, 1e-9));
  CHECK_THAT(in_metres(driving_school(kmh(100), Braking::normal).total()), WithinAbs(130, 1e-9));
  CHECK_THAT(in_metres(driving_school(kmh(100), Braking::full).total()), WithinAbs(80, 1e-9));
}

// Worked out: 3.86 m/s^2, and 7.72 for full braking.
TEST_CASE("German driving schools: the decelerations behind the rule") {
  for (auto [braking, a] : {std::pair{Braking::normal, 3.86}, std::pair{Braking::full, 7.72}}) {
    const double v = in_metres_per_second(kmh(100));
    CHECK_THAT(v * v / (2.0 * in_metres(driving_school(kmh(100), braking).braking)),
               WithinAbs(a, 0.005));
  }
}

// Design table 2.2 of a highway engineering handbook (secondary): rounded up to five feet.
TEST_CASE("AASHTO stopping sight distance: the US design table") {
  const double rows[][2] = {{20, 115}, {25, 155}, {30, 200}, {35, 250},
                            {50, 425}, {55, 495}, {60, 570}, {65, 645}};
  for (const auto& row : rows) {
    INFO(row[0] << " mph");
    CHECK(up_to_five(in_feet(sight_distance_us(mph(row[0])))) == row[1]);
  }
  // Worked out, unrounded.
  CHECK_THAT(in_feet(sight_distance_us(mph(20))), WithinAbs(111.9, 0.05));
  CHECK_THAT(in_feet(sight_distance_us(mph(30))), WithinAbs(196.6, 0.051));
  CHECK_THAT(in_feet(sight_distance_us(mph(50))), WithinAbs(423.7, 0.05));
  CHECK_THAT(in_feet(sight_distance_us(mph(60))), WithinAbs(566.0, 0.05));
}

// Worked out; the rounded design values are from memory.
TEST_CASE("AASHTO stopping sight distance: the metric table") {
  const double rows[][3] = {{20, 18.5, 20},    {30, 31.2, 35},    {40, 46.2, 50},
                            {50, 63.4, 65},    {60, 83.0, 85},    {70, 104.9, 105},
                            {80, 129.0, 130},  {90, 155.5, 160},  {100, 184.2, 185},
                            {110, 215.2, 220}, {120, 248.6, 250}, {130, 284.2, 285}};
  for (const auto& row : rows) {
    INFO(row[0] << " km/h");
    const double d = in_metres(sight_distance_metric(kmh(row[0])));
    CHECK_THAT(d, WithinAbs(row[1], 0.0501));
    CHECK(up_to_five(d) == row[2]);
  }
}

// Worked out from the printed grade form.
TEST_CASE("AASHTO stopping sight distance on a grade") {
  CHECK_THAT(in_metres(*sight_distance_on_grade(kmh(100), -0.06)), WithinAbs(206.9, 0.05));
  CHECK_THAT(in_metres(*sight_distance_on_grade(kmh(100), 0.0)), WithinAbs(183.1, 0.05));
  CHECK_THAT(in_metres(*sight_distance_on_grade(kmh(100), 0.06)), WithinAbs(166.3, 0.05));
  CHECK_THAT(in_metres(*sight_distance_on_grade(kmh(60), -0.09)), WithinAbs(96.9, 0.05));
  CHECK_FALSE(sight_distance_on_grade(kmh(60), -0.35));
}

// Worked out.
TEST_CASE("braking distance from speed, friction and grade") {
  const double rows[][4] = {{50, 0.85, 0, 11.6},  {90, 0.6, 0, 53.1},   {90, 0.30, 0, 106.2},
                            {90, 0.05, 0, 637},   {130, 0.75, 0, 88.6}, {60, 0.3, -0.10, 71.2},
                            {80, 0.7, 0.05, 33.6}};
  for (const auto& row : rows) {
    INFO(row[0] << " km/h, friction " << row[1]);
    const double tolerance = row[3] > 600 ? 0.5 : 0.05;
    CHECK_THAT(in_metres(*braking_distance(kmh(row[0]), row[1], row[2])),
               WithinAbs(row[3], tolerance));
  }
}

// 31.7 m at 3 mm and 39.9 m at 1.6 mm from 50 mph: frictions 0.804 and 0.638, and where the first
// car stops the second still does 22.7 mph (worked out).
TEST_CASE("mean friction of two printed stops from 50 mph, and the speed left") {
  CHECK_THAT(in_metres(*braking_distance(mph(50), 0.804, 0.0)), WithinAbs(31.7, 0.05));
  CHECK_THAT(in_metres(*braking_distance(mph(50), 0.638, 0.0)), WithinAbs(39.9, 0.05));
  CHECK_THAT(in_miles_per_hour(speed_left(mph(50), metres(31.7), metres(39.9))),
             WithinAbs(22.7, 0.05));
  // 91 and 135 m from 70 mph: 0.549, 0.370 and 40 mph.
  CHECK_THAT(in_metres(*braking_distance(mph(70), 0.549, 0.0)), WithinAbs(91, 0.5));
  CHECK_THAT(in_metres(*braking_distance(mph(70), 0.370, 0.0)), WithinAbs(135, 0.5));
  CHECK_THAT(in_miles_per_hour(speed_left(mph(70), metres(91), metres(135))), WithinAbs(40, 0.5));
}

TEST_CASE("the speed for a seen distance is the inverse of the stopping distance") {
  for (double v : {5.0, 50.0, 130.0})
    for (double mu : {0.05, 0.4, 1.0})
      for (double grade : {-0.04, 0.0, 0.2}) {
        const Length d = *stopping_distance(kmh(v), seconds(1.5), mu, grade);
        CHECK_THAT(in_kilometres_per_hour(*speed_to_stop_within(d, seconds(1.5), mu, grade)),
                   WithinAbs(v, 1e-9));
      }
}

TEST_CASE("a grade steeper than the grip: will not stop, as a value") {
  CHECK_FALSE(braking_distance(kmh(20), 0.05, -0.05));
  CHECK_FALSE(braking_distance(kmh(20), 0.05, -0.06));
  CHECK(braking_distance(kmh(20), 0.05, -0.04));
  CHECK_FALSE(stopping_distance(kmh(20), seconds(1), 0.0, 0.0));
  CHECK_FALSE(speed_to_stop_within(metres(1000), seconds(1), 0.1, -0.2));
}

// Worked out, full form and simple form.
TEST_CASE("cornering speed from radius, friction and bank") {
  const double rows[][5] = {{50, 0.8, 0, 71.3, 71.3},
                            {50, 0.5, 0.05, 59.9, 59.1},
                            {100, 0.8, 0.05, 106.1, 103.9},
                            {20, 0.3, -0.03, 26.1, 26.2}};
  for (const auto& row : rows) {
    INFO("R " << row[0] << ", friction " << row[1]);
    CHECK_THAT(in_kilometres_per_hour(*corner_speed(metres(row[0]), row[1], row[2])),
               WithinAbs(row[3], 0.05));
    CHECK_THAT(in_kilometres_per_hour(*corner_speed_simple(metres(row[0]), row[1], row[2])),
               WithinAbs(row[4], 0.05));
  }
}

// Two printed examples (secondary): 1814.80 ft (cut off, it is 1814.81) and 395 m, rounded up to 5.
TEST_CASE("design radius: 70 mph, 0.08 and 0.10; 100 km/h, 8 % and 0.12") {
  CHECK_THAT(in_feet(design_radius_us(mph(70), 0.10, 0.08)), WithinAbs(1814.80, 0.02));
  const double metric = in_metres(design_radius_metric(kmh(100), 0.12, 0.08));
  CHECK_THAT(metric, WithinAbs(393.7, 0.05));
  CHECK(up_to_five(metric) == 395.0);
}

// Table 2.6 of the same handbook (secondary).
TEST_CASE("AASHTO design side friction: eight printed values, held beyond them") {
  const double rows[][2] = {{20, 0.27}, {30, 0.20}, {40, 0.16}, {50, 0.14},
                            {55, 0.13}, {60, 0.12}, {65, 0.11}, {70, 0.10}};
  for (const auto& row : rows)
    CHECK_THAT(comfortable_side_friction(mph(row[0])), WithinAbs(row[1], 1e-9));
  CHECK(comfortable_side_friction(mph(5)) == 0.27);
  CHECK(comfortable_side_friction(mph(100)) == 0.10);
}

TEST_CASE("the comfortable speed asks for just the comfortable friction") {
  const Length radius = design_radius_us(mph(70), 0.10, 0.08);
  const Speed v = comfortable_corner_speed(radius, 0.08);
  CHECK_THAT(side_demand(v, radius, 0.08), WithinAbs(comfortable_side_friction(v), 1e-6));
  CHECK_THAT(in_miles_per_hour(v), WithinAbs(70.0, 1.0));  // the simple form leaves 0.5 mph
}

// Geometry: 20 m of chord with 1 m of sagitta is an arc of 50.5 m radius.
TEST_CASE("radius from chord and sagitta") {
  CHECK_THAT(in_metres(*radius_from_chord(metres(20), metres(1))), WithinAbs(50.5, 1e-9));
  CHECK_THAT(in_metres(*radius_from_chord(metres(10), metres(5))), WithinAbs(5.0, 1e-9));
  CHECK_FALSE(radius_from_chord(metres(20), metres(0)));
}

// 0.8784 / 1.0422 of a published tyre data set.
TEST_CASE("the friction ellipse: side peak 0.843 of the braking peak, and 3-4-5 in between") {
  CHECK_THAT(side_share, WithinAbs(0.843, 0.0005));
  CHECK_THAT(braking_left(1.0, 1.0, 0.6), WithinAbs(0.8, 1e-12));
  CHECK_THAT(braking_left(0.5, 0.4, 0.24), WithinAbs(0.4, 1e-12));
  CHECK(braking_left(0.5, 0.4, 0.4) == 0.0);
  CHECK(braking_left(0.5, 0.4, 0.5) == 0.0);
}
