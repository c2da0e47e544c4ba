#include "core/quantity/quantity.hpp"
#include <cmath>
#include "core/words/measure.hpp"

#include "core/quantity/write.hpp"
#include "tests/support/catch.hpp"

using namespace treadwater;
using namespace treadwater::testing;

TEST_CASE("gauge and absolute pressure differ by the air around the tyre") {
  const auto air = kilopascals_absolute(101.325);
  CHECK(in_kilopascals_absolute(absolute(kilopascals(220.0), air)) == 321.325);
  CHECK(in_kilopascals(gauge(kilopascals_absolute(321.325), air)) == 220.0);
}

TEST_CASE("a temperature is a point and a difference is a step") {
  CHECK_THAT(in_celsius(fahrenheit(212.0)), WithinAbs(100.0, 1e-9));
  CHECK_THAT(in_celsius(fahrenheit(-40.0)), WithinAbs(-40.0, 1e-9));
  CHECK_THAT(in_kelvin(celsius(60.0) - celsius(20.0)), WithinAbs(40.0, 1e-9));
  CHECK_THAT(in_celsius(celsius(20.0) + kelvin_difference(5.0)), WithinAbs(25.0, 1e-9));
}

TEST_CASE("figures are written in the person's units") {
  CHECK(write(kilopascals(220.0), UnitSystem::metric) == "2.20 bar (220 kPa)");
  CHECK(write(kilopascals(220.0), UnitSystem::us) == "32 psi (220 kPa)");
  CHECK(write(kilograms(615.0), UnitSystem::us) == "1356 lb");
  CHECK(write(kilometres_per_hour(80.0), UnitSystem::uk) == "50 mph");
  CHECK(write_depth(millimetres(1.6), UnitSystem::metric) == "1.6 mm");
  CHECK(write_depth(millimetres(3.0), UnitSystem::uk) == "3 mm");
  CHECK(write_depth(thirty_seconds(2.0), UnitSystem::us) == "2/32 in");
  CHECK(write_water(millimetres(5.0), UnitSystem::us) == "0.20 in");
  CHECK(write_size(millimetres(631.9), UnitSystem::metric, 1) == "631.9 mm");
  CHECK(write(square_centimetres(179.6), UnitSystem::metric) == "180 cm²");
  CHECK(say_range(kilometres_per_hour(59.2), kilometres_per_hour(84.7), UnitSystem::metric) ==
        "59 to 85 km/h");
}

TEST_CASE("a least pressure is never written lower than it is, in any of its units") {
  CHECK(write_at_least(kilopascals(181.0), UnitSystem::metric) == "1.81 bar (181 kPa)");
  CHECK(write_at_least(kilopascals(181.01), UnitSystem::metric) == "1.82 bar (182 kPa)");
  CHECK(write_at_least(kilopascals(181.0), UnitSystem::uk) == "27 psi (187 kPa)");
  CHECK(write_at_least(psi(32.0), UnitSystem::us) == "32 psi (221 kPa)");
  for (double kpa = 0.0; kpa < 500.0; kpa += 0.37) {
    CHECK(std::stod(write_at_least(kilopascals(kpa), UnitSystem::metric)) >= kpa / 100.0 - 1e-6);
    const std::string imperial = write_at_least(kilopascals(kpa), UnitSystem::uk);
    CHECK(std::stod(imperial) >= in_psi(kilopascals(kpa)) - 1e-6);
    CHECK(std::stod(imperial.substr(imperial.find('(') + 1)) >= kpa - 1e-6);
  }
  CHECK(write_at_least(kilopascals(std::nan("")), UnitSystem::metric) ==
        write(kilopascals(std::nan("")), UnitSystem::metric));
}

TEST_CASE("a mass that is passed is never written as the one it passes") {
  CHECK(write_at_most(kilograms(559.65), UnitSystem::metric) == "559 kg");
  CHECK(write_at_most(kilograms(615.0), UnitSystem::metric) == "615 kg");
  CHECK(write_at_least(kilograms(615.2), UnitSystem::uk) == "616 kg");
  CHECK(write_at_most(kilograms(615.0), UnitSystem::us) == "1355 lb");
  CHECK(write_at_least(pounds(1356.0), UnitSystem::us) == "1356 lb");
}

TEST_CASE("significant digits are kept and no exponent appears") {
  CHECK(significant(0.0345, 2) == "0.035");
  CHECK(significant(1.2226, 2) == "1.2");
  CHECK(significant(179.6, 2) == "180");
  CHECK(significant(1234567.0, 2) == "1200000");
  CHECK(significant(0.0, 2) == "0");
}

TEST_CASE("a speed is rounded down to five in the person's own unit") {
  CHECK(in_kilometres_per_hour(floor_to_five(kilometres_per_hour(53.3), UnitSystem::metric)) ==
        50.0);
  CHECK(in_kilometres_per_hour(floor_to_five(kilometres_per_hour(54.999), UnitSystem::metric)) ==
        50.0);
  CHECK(in_kilometres_per_hour(floor_to_five(kilometres_per_hour(55.0), UnitSystem::metric)) ==
        55.0);
  CHECK(in_kilometres_per_hour(floor_to_five(kilometres_per_hour(4.9), UnitSystem::metric)) == 0.0);
  CHECK_THAT(in_miles_per_hour(floor_to_five(miles_per_hour(30.0), UnitSystem::uk)),
             WithinAbs(30.0, 1e-9));
  CHECK_THAT(in_miles_per_hour(floor_to_five(miles_per_hour(33.1), UnitSystem::us)),
             WithinAbs(30.0, 1e-9));
}

TEST_CASE("what is no number is written as a dash") {
  CHECK(fixed(std::nan(""), 1) == "–");
  CHECK(fixed(HUGE_VAL, 0) == "–");
  CHECK(significant(std::nan(""), 2) == "–");
}
