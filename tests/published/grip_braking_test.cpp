// Published wet braking tests. The rows here were looked at when the constants of
// core/grip/film.cpp and limits.cpp were set; those of grip_braking_held_out_test.cpp were not.
#include "core/grip/limits.hpp"
#include "tests/support/catch.hpp"

using namespace treadwater;
using namespace treadwater::grip;
using namespace treadwater::testing;

namespace {

GripCase wet(double tread, double film) {
  GripCase grip_case;
  grip_case.tread = millimetres(tread);
  grip_case.film = millimetres(film);
  return grip_case;
}

void inside(const GripCase& grip_case, Speed speed, double printed_metres) {
  const DistanceBand band = braking_band(grip_case, speed, Speed(), {});
  INFO(printed_metres << " m printed, " << in_metres(*band.shortest) << " to "
                      << in_metres(*band.longest));
  CHECK(in_metres(*band.shortest) < printed_metres);
  CHECK(in_metres(*band.longest) > printed_metres);
}

void ratio_inside(const GripCase& grip_case, Speed speed, double printed) {
  const auto ratio = worn_stop_ratio(grip_case, speed);
  REQUIRE(ratio);
  INFO(printed << " printed, " << ratio->low << " to " << ratio->high);
  CHECK(ratio->low < printed);
  CHECK(ratio->high > printed);
}

struct Stop {
  Speed speed;
  double tread, film, metres;
};

}  // namespace

// A magazine's test of 2019, 225/45 R17, anti-lock brakes (published in a tyre maker's press
// release of 30 September 2019; 1 mm of water by a second text).
TEST_CASE(
    "stops from 80 and 120 km/h on 1 mm of water, new, 3 mm and 1.6 mm, lie inside the band") {
  const Stop stops[] = {
      {kilometres_per_hour(80), 8, 1, 25.8},   {kilometres_per_hour(80), 3, 1, 31.0},
      {kilometres_per_hour(80), 1.6, 1, 36.2}, {kilometres_per_hour(120), 8, 1, 59.1},
      {kilometres_per_hour(120), 3, 1, 124},   {kilometres_per_hour(120), 1.6, 1, 154.9},
  };
  for (const Stop& stop : stops) inside(wet(stop.tread, stop.film), stop.speed, stop.metres);
}

TEST_CASE("their ratios new : 3 mm : 1.6 mm lie inside the ratio's band") {
  ratio_inside(wet(3, 1), kilometres_per_hour(80), 31.0 / 25.8);
  ratio_inside(wet(1.6, 1), kilometres_per_hour(80), 36.2 / 25.8);
  ratio_inside(wet(3, 1), kilometres_per_hour(120), 124 / 59.1);
  ratio_inside(wet(1.6, 1), kilometres_per_hour(120), 154.9 / 59.1);
}

// A test house, 50 mph, 0.5 to 1.5 mm of water (secondary): 31.7 m at 3 mm and 39.9 m at 1.6 mm, 8
// m between them; 13 m from 8 mm to 1.6 mm, so about 26.9 m new.
TEST_CASE("stops from 50 mph on 0.5 to 1.5 mm of water lie inside the band") {
  for (double film : {0.5, 1.0, 1.5}) {
    inside(wet(8, film), miles_per_hour(50), 26.9);
    inside(wet(3, film), miles_per_hour(50), 31.7);
    inside(wet(1.6, film), miles_per_hour(50), 39.9);
    ratio_inside(wet(3, film), miles_per_hour(50), 31.7 / 26.9);
    ratio_inside(wet(1.6, film), miles_per_hour(50), 39.9 / 26.9);
  }
}

// A tyre maker (secondary), 80 km/h, depth not stated: 22 m at 8 mm, more than 26 m at 4 mm.
TEST_CASE("22 m new and 26 m at 4 mm from 80 km/h lie inside the band of half a millimetre") {
  inside(wet(8, 0.5), kilometres_per_hour(80), 22.0);
  inside(wet(4, 0.5), kilometres_per_hour(80), 26.0);
  ratio_inside(wet(4, 0.5), kilometres_per_hour(80), 26.0 / 22.0);
}

// What limits.hpp says of itself.
TEST_CASE("the central stop from 80 km/h is 30 to 45 % longer than the test's") {
  for (auto [tread, metres] : {std::pair{8.0, 25.8}, std::pair{3.0, 31.0}, std::pair{1.6, 36.2}}) {
    const DistanceBand band = braking_band(wet(tread, 1), kilometres_per_hour(80), Speed(), {});
    INFO(in_metres(*band.central));
    CHECK(in_metres(*band.central) / metres > 1.30);
    CHECK(in_metres(*band.central) / metres < 1.45);
  }
}

// A motoring club's test of 2005 (secondary): two millimetres of tread on two of water "may stop no
// better than a bald tyre".
TEST_CASE("on 2 mm of water the band of 2 mm of tread reaches down to that of a bald tyre") {
  for (double v : {30.0, 50.0, 80.0}) {
    const Speed speed = kilometres_per_hour(v);
    CHECK(Grip(wet(2.0, 2.0)).at(speed).low < Grip(wet(0.0, 2.0)).at(speed).high);
  }
}
