#include "core/quantity/write.hpp"

#include "core/quantity/text.hpp"
#include "core/words/measure.hpp"
#include "tests/support/catch.hpp"

using namespace treadwater;
using namespace treadwater::testing;

namespace {
constexpr auto metric = UnitSystem::metric;
constexpr auto uk = UnitSystem::uk;
constexpr auto us = UnitSystem::us;
}  // namespace

TEST_CASE("the last of the significant digits is rounded the way that is asked") {
  CHECK(significant_at_most(12.96, 2) == "12");
  CHECK(significant_at_least(12.04, 2) == "13");
  CHECK(significant_at_most(0.0489, 2) == "0.048");
  CHECK(significant_at_least(1234.0, 2) == "1300");
  CHECK(significant_at_most(5.0, 2) == "5.0");
  CHECK(significant_at_least(5.0, 2) == "5.0");
}

TEST_CASE("a change has its sign, and nothing has none") {
  CHECK(write_signed(2.06, 1) == "+2.1");
  CHECK(write_signed(-3.0, 0) == "-3");
  CHECK(write_signed(0.0, 0) == "0");
  CHECK(write_signed_size(millimetres(3.0), metric) == "+3 mm");
  CHECK(write_signed_size(inches(0.5), us, 0) == "+0.5 in");
  CHECK(write_signed_percent(-1.24, 1) == "-1.2 %");
  CHECK(write_signed_wheel(kilograms(1.5)) == "+1.5 kg");
  CHECK(write_rim(inches(6.5)) == "6.5 in");
  CHECK(write_wheel(kilograms(16.4)) == "16.4 kg");
}

TEST_CASE("distances on the road: as given, whole, estimated, the longest") {
  CHECK(write_distance(metres(7.25), metric) == "7.3 m");
  CHECK(write_distance(metres(65.4), uk) == "65 m");
  CHECK(write_distance(feet(213.0), us) == "213 ft");
  CHECK(write_whole_distance(metres(7.6), metric) == "8 m");
  CHECK(write_estimated_distance(metres(123.0), metric) == "120 m");
  CHECK(write_estimated_number(metres(57.6), metric) == "58");
  CHECK(write_longest_distance(metres(121.0), metric) == "130 m");
  CHECK(write_longest_distance(metres(57.1), metric) == "58 m");
}

TEST_CASE("what a chart is drawn in is the person's own unit, and comes back from it") {
  CHECK(shown(kilometres_per_hour(80.0), metric).value == 80.0);
  CHECK(shown(miles_per_hour(50.0), uk).unit == "mph");
  CHECK_THAT(shown(celsius(100.0), us).value, WithinAbs(212.0, 1e-9));
  CHECK_THAT(shown_depth(thirty_seconds(4.0), us).value, WithinAbs(4.0, 1e-12));
  CHECK(shown_water(millimetres(5.0), uk).unit == "mm");
  CHECK(shown_distance(feet(100.0), us).unit == "ft");
  CHECK_THAT(in_road_units(miles(3.0), uk), WithinAbs(3.0, 1e-12));
  CHECK_THAT(in_road_units(kilometres(3.0), metric), WithinAbs(3.0, 1e-12));
  CHECK(road_unit(metric) == kilometres(1.0));
  CHECK(round_speed(metric) == kilometres_per_hour(100.0));
  CHECK(round_speed(us) == miles_per_hour(60.0));
  for (const UnitSystem units : {metric, uk, us}) {
    CHECK_THAT(shown(speed_shown_as(50.0, units), units).value, WithinAbs(50.0, 1e-9));
    CHECK_THAT(shown_distance(distance_shown_as(50.0, units), units).value, WithinAbs(50.0, 1e-9));
  }
}

TEST_CASE("rain, time, shares, wear and differences of temperature") {
  CHECK(write_rain(millimetres_per_hour(7.6)) == "7.6 mm/h");
  CHECK(write_seconds(seconds(4.25)) == "4.3 s");
  CHECK(write_seconds(seconds(34.4)) == "34 s");
  CHECK(write_minutes(minutes(46.0)) == "46 min");
  CHECK(write_share(0.335) == "34 %");
  CHECK(write_kelvins(10.0, metric) == "10 °C");
  CHECK(write_kelvins(10.0, us) == "18 °F");
  CHECK(write_worn(millimetres(1.26), metric) == "1.3 mm");
  CHECK(write_worn(thirty_seconds(2.0), us) == "2.0/32 in");
}

TEST_CASE("the decimal sign is that of the language spoken, and a point again after it") {
  CHECK(decimal_sign() == ".");
  use_decimal_sign(",");
  CHECK(fixed(2.5, 1) == "2,5");
  CHECK(trimmed(3.0, 1) == "3");
  use_decimal_sign(".");
  CHECK(fixed(2.5, 1) == "2.5");
}

TEST_CASE("a hash tells texts apart, and is FNV-1a's") {
  CHECK(hash_of("") == 2166136261U);
  CHECK(hash_of("a") == 0xE40C292CU);  // the test vectors of its authors
  CHECK(hash_of("foobar") == 0xBF9CF968U);
}

TEST_CASE("a time or a way that must not be too long is rounded down, one that is to go up") {
  CHECK(say_duration(seconds(89.6)) == "90 s");
  CHECK(say_duration_at_most(seconds(89.6)) == "89 s");
  CHECK(say_duration(minutes(25.0)) == "25 min");
  CHECK(say_road_distance_at_most(kilometres(12.96), metric) == "12 km");
  CHECK(say_road_distance_at_least(kilometres(12.04), metric) == "13 km");
  CHECK(say_road_distance(miles(1.0), uk).find("1.0 mile") == 0);
  CHECK(say_odometer(miles(1.0), uk) == "1 mile");
  CHECK(say_odometer(kilometres(41200.0), metric) == "41200 km");
  CHECK(say_month(5, 2026) == "May 2026");
}
