#include "core/standard/load_adjustment.hpp"
#include "core/standard/load_index.hpp"
#include "core/standard/road_surface.hpp"
#include "core/standard/speed_load.hpp"
#include "core/standard/speed_symbol.hpp"
#include "core/standard/tread_law.hpp"
#include "tests/support/catch.hpp"

using namespace treadwater;
using namespace treadwater::standard;
using namespace treadwater::testing;

TEST_CASE("load indices outside 0 to 279 have no load") {
  CHECK(load_of_index(0));
  CHECK(load_of_index(279));
  CHECK_FALSE(load_of_index(-1));
  CHECK_FALSE(load_of_index(280));
}

TEST_CASE("the load index table rises at every step and by a factor of ten every eighty") {
  for (int i = 1; i <= greatest_load_index; ++i) CHECK(*load_of_index(i) > *load_of_index(i - 1));
  // Eleven entries lost a half step to rounding; the greatest departure is 0.7 %.
  for (int i = 0; i + 80 <= greatest_load_index; ++i)
    CHECK_THAT(*load_of_index(i + 80) / *load_of_index(i), WithinRel(10.0, 0.007));
}

TEST_CASE("the nearest load index of a table mass is its own") {
  for (int i = 0; i <= greatest_load_index; ++i) CHECK(nearest_load_index(*load_of_index(i)) == i);
}

TEST_CASE("every speed symbol has a row, and its letters find it again") {
  for (int i = 0; i <= static_cast<int>(SpeedSymbol::VR); ++i) {
    const auto symbol = static_cast<SpeedSymbol>(i);
    CHECK(speed_row(symbol).symbol == symbol);
    CHECK(find_speed_symbol(speed_row(symbol).letters) == symbol);
  }
  CHECK_FALSE(find_speed_symbol("Z"));
  CHECK_FALSE(find_speed_symbol("I"));
  CHECK_FALSE(find_speed_symbol(""));
}

TEST_CASE("above its symbol's speed a tyre has no load at all") {
  CHECK_FALSE(load_percent(SpeedSymbol::V, kilometres_per_hour(240.1)));
  CHECK_FALSE(load_percent(SpeedSymbol::ZR, kilometres_per_hour(241.0)));
  CHECK(*load_percent(SpeedSymbol::H, kilometres_per_hour(210.0)) == 100.0);
}

TEST_CASE("the pressure to add for speed begins at 160 and reaches 30 kPa at 210 km/h") {
  CHECK(in_kilopascals(pressure_for_speed(SpeedSymbol::V, kilometres_per_hour(160.0))) == 0.0);
  CHECK_THAT(in_kilopascals(pressure_for_speed(SpeedSymbol::V, kilometres_per_hour(185.0))),
             WithinAbs(15.0, 1e-9));
  CHECK(in_kilopascals(pressure_for_speed(SpeedSymbol::V, kilometres_per_hour(210.0))) == 30.0);
  CHECK(in_kilopascals(pressure_for_speed(SpeedSymbol::V, kilometres_per_hour(240.0))) == 30.0);
  CHECK_THAT(in_kilopascals(pressure_for_speed(SpeedSymbol::W, kilometres_per_hour(240.0))),
             WithinAbs(50.0, 1e-9));
}

TEST_CASE("tread law knows the places, each with its clause") {
  for (const char* id : {"GB", "EU", "DE", "AT", "FI", "SE", "US", "elsewhere"}) {
    const TreadLaw* law = find_tread_law(id);
    REQUIRE(law != nullptr);
    CHECK_FALSE(law->source.title.empty());
    CHECK_FALSE(law->source.clause.empty());
  }
  CHECK(find_tread_law("XX") == nullptr);
  CHECK_THAT(in_millimetres(find_tread_law("US")->least), WithinAbs(1.5875, 1e-9));
}

TEST_CASE("an Austrian winter tyre needs 4 mm as a radial and 5 mm as a cross-ply in the season") {
  const auto& rule = *find_tread_law("AT")->winter;
  CHECK_THAT(in_millimetres(rule.least_radial), WithinAbs(4.0, 1e-9));
  CHECK_THAT(in_millimetres(rule.least_cross_ply), WithinAbs(5.0, 1e-9));
  CHECK(in_season(rule, {11, 1}));
  CHECK(in_season(rule, {12, 31}));
  CHECK(in_season(rule, {4, 15}));
  CHECK_FALSE(in_season(rule, {4, 16}));
  CHECK_FALSE(in_season(rule, {10, 31}));
}

TEST_CASE("loose surfaces have no texture to take credit for") {
  CHECK(find_road_surface("asphalt")->paved);
  CHECK_FALSE(find_road_surface("loose")->paved);
  CHECK(in_millimetres(find_road_surface("loose")->texture) == 0.0);
}

TEST_CASE("a motor-cycle tyre of symbol V bears less from 210 km/h up, in steps of 10") {
  CHECK(motorcycle_percent(SpeedSymbol::V, kilometres_per_hour(210.0)) == 100.0);
  CHECK(motorcycle_percent(SpeedSymbol::V, kilometres_per_hour(210.5)) == 95.0);
  CHECK(motorcycle_percent(SpeedSymbol::V, kilometres_per_hour(220.0)) == 95.0);
  CHECK(motorcycle_percent(SpeedSymbol::V, kilometres_per_hour(221.0)) == 90.0);
}
