// Rules of the domain that stood within sheets before: rain to depth, the log of a tyre, the cars
// of a team, braking by speed, and what a speedometer hides.
#include "core/car/corner.hpp"
#include "core/grip/limits.hpp"
#include "core/stage/event.hpp"
#include "core/stage/team.hpp"
#include "core/standard/speedometer.hpp"
#include "core/water/from_rain.hpp"
#include "core/wear/log.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/stage_events.hpp"

using namespace treadwater;
using namespace treadwater::testing;

namespace {

water::RoadInRain road_in(double mm_per_hour) {
  water::RoadInRain road;
  road.rain = millimetres_per_hour(mm_per_hour);
  road.surface = standard::find_road_surface("asphalt");
  return road;
}

wear::Log log_of(std::initializer_list<wear::Reading> readings) {
  wear::Log log;
  for (const wear::Reading& reading : readings) log.add(reading);
  return log;
}

}  // namespace

TEST_CASE("rain to depth: the deeper end of the films, more where the formulas do not reach") {
  const water::DepthFromRain shower = water::depth_from_rain(road_in(50.0));
  CHECK(shower.reach == water::FilmReach::within);
  CHECK_FALSE(shower.may_be_deeper());
  REQUIRE(shower.film);
  CHECK(shower.depth == std::max(Length(), shower.film->high));
  CHECK(water::depth_from_rain(road_in(200.0)).may_be_deeper());
  CHECK(water::depth_from_rain(road_in(200.0)).asked->rain == water::most_rain);
  water::RoadInRain loose = road_in(50.0);
  loose.surface = standard::find_road_surface("loose");
  CHECK(water::depth_from_rain(loose).reach == water::FilmReach::off_pavement);
  CHECK(water::depth_from_rain({}).reach == water::FilmReach::no_rain);
}

TEST_CASE("a rut holds water beside the film") {
  water::RoadInRain road = road_in(50.0);
  const Length film = water::depth_from_rain(road).depth;
  road.rut = millimetres(30.0);
  const water::DepthFromRain both = water::depth_from_rain(road);
  REQUIRE(both.in_rut);
  CHECK(both.depth == film + *both.in_rut);
}

TEST_CASE("a word of rain counts at its high end, and twice its low one where it has none") {
  const standard::RainWord& open = *standard::find_rain_word("us-heavy-rain");
  CHECK(water::rain_to_reckon_with(open) == open.low * 2.0);
  const standard::RainWord& shower = *standard::find_rain_word("uk-heavy-shower");
  CHECK(water::rain_to_reckon_with(shower) == *shower.high);
}

TEST_CASE("a log stands by day, and of one day the least counts") {
  const wear::Log log =
      log_of({{20, millimetres(6.0)}, {10, millimetres(7.0)}, {20, millimetres(5.5)}});
  CHECK(log.first_day() == 10);
  CHECK(log.last_day() == 20);
  CHECK(log.latest() == millimetres(5.5));
  CHECK(log.least_of(10) == millimetres(7.0));
}

TEST_CASE("the rate counts from the last rise: tread does not grow") {
  const wear::Log log = log_of({{10, millimetres(4.0)},
                                {20, millimetres(3.0)},
                                {30, millimetres(8.0)},
                                {40, millimetres(7.5)}});
  const wear::Rise rise = log.last_rise(wear::more_than_read);
  CHECK(rise.at == 2);
  CHECK(rise.before == millimetres(3.0));
  CHECK(log.since(rise).size() == 2);
  CHECK(wear::wear_of(log).counted.size() == 2);
  // What two gauges may differ by is no rise.
  CHECK(
      log_of({{10, millimetres(4.0)}, {20, millimetres(4.4)}}).last_rise(wear::more_than_read).at ==
      0);
}

TEST_CASE("an odometer that runs back gives no rate by distance") {
  const wear::Log log = log_of(
      {{10, millimetres(8.0), kilometres(20000.0)}, {20, millimetres(7.0), kilometres(19000.0)}});
  const auto back = wear::odometer_runs_back(log.readings());
  REQUIRE(back);
  CHECK(back->high.day == 10);
  CHECK(back->low.day == 20);
  CHECK_FALSE(wear::wear_of(log).by_distance);
  CHECK(wear::wear_of(log).by_day);
}

TEST_CASE("braking from ever higher speeds is braking from the last of them") {
  grip::GripCase wet;
  wet.tread = millimetres(3.0);
  wet.film = millimetres(1.0);
  grip::BrakingBySpeed rising(wet, {});
  for (const double kmh : {40.0, 80.0, 100.0}) {
    const grip::DistanceBand band = rising.up_to(kilometres_per_hour(kmh));
    const grip::DistanceBand whole = grip::braking_band(wet, kilometres_per_hour(kmh), Speed(), {});
    CHECK_THAT(in_metres(*band.central), WithinAbs(in_metres(*whole.central), 1e-6));
  }
}

TEST_CASE("tread matters on a wet paved road, and a new tyre has 8 mm") {
  grip::GripCase one;
  one.tread = millimetres(3.0);
  CHECK_FALSE(grip::wear_matters(one));
  one.film = millimetres(1.0);
  CHECK(grip::wear_matters(one));
  CHECK(grip::when_new(one).tread == grip::new_tread);
  CHECK_FALSE(grip::wear_matters(grip::when_new(one)));
  const auto left = grip::speed_where_new_stops(one, kilometres_per_hour(80.0), {});
  REQUIRE(left);
  CHECK(left->central > Speed());
  one.tyre = grip::find_tyre_grip("slick");
  CHECK(grip::groove_credit(*one.tyre) == 0.0);
  CHECK_FALSE(grip::wear_matters(one));
}

TEST_CASE("the gap of a dry road, a wet one, and of snow as of ice") {
  grip::GripCase one;
  CHECK(grip::gap_road(one) == grip::GapRoad::dry);
  one.film = millimetres(0.5);
  CHECK(grip::gap_road(one) == grip::GapRoad::wet);
  one.surface = standard::find_friction_surface("snow");
  CHECK(grip::gap_road(one) == grip::GapRoad::ice);
}

TEST_CASE("a speedometer that reads as high as the rule allows hides the least true speed") {
  for (const double kmh : {30.0, 60.0, 100.0}) {
    const Speed truth = kilometres_per_hour(kmh);
    CHECK_THAT(in_kilometres_per_hour(standard::least_true(standard::most_shown(truth))),
               WithinAbs(kmh, 1e-9));
  }
}

TEST_CASE(
    "wear goes with load over width and circumference, with load alone where a size is not known") {
  const stage::TeamCar first{kilograms(300.0), {}};
  CHECK(stage::wear_factor({kilograms(330.0), {}}, first) == 1.1);
  CHECK_FALSE(stage::wear_factor({}, first));
  CHECK(std::string(stage::wear_by_load_source().title).size() > 5);
}

TEST_CASE("each car of a team gets what is best on it, the first one its own plan") {
  stage::Event event;
  event.stages = {plain_stage(20.0, {1.0}), plain_stage(20.0, {1.0})};
  event.sets = {{plain_kind("quick", {0.0, 1.0, 4.0}, 45.0, 90.0)},
                {plain_kind("lasting", {1.0, 1.0, 4.0}, 400.0, 800.0)}};
  const stage::Question question;
  const auto own = stage::plan(event, question);
  REQUIRE(own);
  const auto team =
      stage::plan_team({{kilograms(300.0), {}}, {kilograms(600.0), {}}, {}}, event, question, *own);
  REQUIRE(team.size() == 3);
  REQUIRE(team[0]);
  CHECK(team[0]->wear_factor == 1.0);
  CHECK(stage::same_kind(*own, team[0]->set, own->first.front().set));
  REQUIRE(team[1]);
  CHECK(team[1]->wear_factor == 2.0);
  CHECK_FALSE(stage::same_kind(*own, team[1]->set, team[0]->set));
  CHECK_FALSE(team[2]);
}

TEST_CASE("what is left of a set's tread, and the wear of its worst weather") {
  const stage::SetKind wet = *stage::find_set_kind("wet");
  CHECK(stage::tread_left(wet, 0.0) == wet.new_tread);
  CHECK_THAT(in_millimetres(stage::tread_left(wet, 1.0)),
             WithinAbs(in_millimetres(wet.least_tread), 1e-9));
  CHECK(stage::find_set_kind("slick")->slick());
  CHECK(stage::tread_left(*stage::find_set_kind("slick"), 0.5) == Length());
  const stage::SetKind kind = plain_kind("tyre", {}, 20.0, 40.0);
  CHECK_THAT(stage::worst_wear(kind, plain_stage(10.0, {0.5, 0.5})), WithinAbs(0.5, 1e-12));
}

TEST_CASE("the four places of a car have their ids and names in one table") {
  CHECK(car::name_of(car::Corner::rear_left).english() == "Rear left");
  for (std::size_t i = 0; i < std::size(car::corners); ++i)
    CHECK(static_cast<std::size_t>(car::corners[i].corner) == i);
}
