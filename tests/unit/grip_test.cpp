// The room `grip`: what it refuses, what it says of itself, and what it must not promise.
#include <cmath>
#include <limits>
#include <set>
#include <string>

#include "core/grip/cornering.hpp"
#include "core/grip/limits.hpp"
#include "core/grip/skid.hpp"
#include "core/grip/stopping.hpp"
#include "core/standard/road_surface.hpp"
#include "tests/support/catch.hpp"

using namespace treadwater;
using namespace treadwater::grip;
using namespace treadwater::testing;

namespace {

const double no_number = std::numeric_limits<double>::quiet_NaN();
const double infinite = std::numeric_limits<double>::infinity();

constexpr Speed kmh(double v) { return kilometres_per_hour(v); }

GripCase on(std::string_view surface, double tread = 8.0, double film = 0.0) {
  GripCase grip_case;
  grip_case.surface = standard::find_friction_surface(surface);
  grip_case.tread = millimetres(tread);
  grip_case.film = millimetres(film);
  return grip_case;
}

GripCase on(std::string_view surface, std::string_view tyre) {
  GripCase grip_case = on(surface);
  grip_case.tyre = find_tyre_grip(tyre);
  return grip_case;
}

bool mentions(const Friction& answer, std::string_view id) {
  for (const Source* source : answer.sources)
    if (source->id == id) return true;
  return false;
}

bool says(const Friction& answer, std::string_view words) {
  for (const Phrase text : answer.unknown)
    if (text.english().find(words) != std::string_view::npos) return true;
  return false;
}

}  // namespace

TEST_CASE("every paved friction surface has the texture of a road surface, every other has rows") {
  for (const auto& surface : standard::friction_surfaces()) {
    INFO(surface.id);
    CHECK(&surface == standard::find_friction_surface(surface.id));
    if (surface.ground == standard::Ground::paved) {
      REQUIRE(standard::find_road_surface(surface.road_surface) != nullptr);
      CHECK(surface.share > 0.0);
      CHECK(surface.share <= 1.0);
    } else {
      bool dry = false;
      for (const auto& row : standard::friction_rows())
        dry |= row.surface == surface.id && !row.wet;
      CHECK(dry);
    }
  }
  CHECK(standard::find_friction_surface("moon") == nullptr);
}

TEST_CASE("every friction row belongs to a surface and stands in order") {
  for (const auto& row : standard::friction_rows()) {
    CHECK(standard::find_friction_surface(row.surface) != nullptr);
    CHECK(row.low > 0.0);
    CHECK(row.low <= row.high);
  }
}

TEST_CASE("the usual rubber of every tyre kind is known") {
  for (const char* id : {"road", "winter", "studded", "gravel", "wet", "cut-slick", "slick"}) {
    REQUIRE(find_tyre_grip(id) != nullptr);
    CHECK(find_rubber(find_tyre_grip(id)->rubber) != nullptr);
  }
  CHECK(find_tyre_grip("square") == nullptr);
  CHECK(find_rubber("cheese") == nullptr);
}

TEST_CASE("a case names its sources once each, and what it does not know") {
  for (const auto& surface : standard::friction_surfaces())
    for (const char* tyre : {"road", "studded", "slick"}) {
      GripCase grip_case = on(surface.id, tyre);
      grip_case.film = millimetres(0.5);
      const Friction answer = friction(grip_case, kmh(60));
      INFO(surface.id << ", " << tyre);
      CHECK_FALSE(answer.sources.empty());
      CHECK(answer.unknown.size() >= 2);
      std::set<std::string_view> ids;
      for (const Source* source : answer.sources) CHECK(ids.insert(source->id).second);
      CHECK(answer.band.low == Grip(grip_case).at(kmh(60)).low);
    }
  CHECK(mentions(friction(on("grass"), kmh(30)), "friction-noon"));
  CHECK(mentions(friction(on("asphalt"), kmh(30)), "grip-dry"));
  CHECK_FALSE(mentions(friction(on("asphalt"), kmh(30)), "grip-handbook"));
  CHECK_FALSE(mentions(friction(on("asphalt"), kmh(30)), "grip-stop-law"));
  CHECK(mentions(friction(on("asphalt", 8, 0.5), kmh(30)), "grip-stop-law"));
  CHECK_FALSE(mentions(friction(on("asphalt", 8, 0.5), kmh(30)), "grip-skid-number"));
  CHECK(mentions(friction(on("smooth", 8, 0.5), kmh(30)), "grip-skid-number"));
  GripCase old = on("asphalt", 8, 0.5);
  CHECK(says(friction(old, kmh(30)), "What road"));
  old.old_or_hard = true;
  old.road = RoadGrip::ordinary;
  CHECK_FALSE(says(friction(old, kmh(30)), "What road"));
  CHECK(mentions(friction(old, kmh(30)), "grip-handbook"));
  CHECK(mentions(friction(old, kmh(30)), "grip-film"));
  CHECK(mentions(friction(on("ice", "studded"), kmh(30)), "grip-studs"));
  // It is judged beside friction, and no longer a gap.
  CHECK_FALSE(says(friction(on("asphalt", 8, 0.5), kmh(30)), "aquaplaning"));
  CHECK(says(friction(on("ice"), kmh(30)), "0 °C"));
  CHECK(says(friction(on("asphalt", "slick"), kmh(30)), "cold"));
  CHECK_FALSE(says(friction(on("asphalt"), kmh(30)), "cold"));
}

TEST_CASE("numbers that are none, or negative, have no grip") {
  for (double bad : {no_number, -1.0}) {
    CHECK(Grip(on("asphalt")).at(kmh(bad)).high == 0.0);
    CHECK(Grip(on("asphalt", bad, 0.5)).at(kmh(50)).high == 0.0);
    CHECK(Grip(on("asphalt", 8, bad)).at(kmh(50)).high == 0.0);
    CHECK(Grip(on("ice", 8, bad)).at(kmh(50)).high == 0.0);
    CHECK(share_kept(kmh(50), millimetres(bad), millimetres(1)).high == 0.0);
    CHECK_FALSE(braking_distance(kmh(bad), 0.5, 0.0));
    CHECK_FALSE(stopping_distance(kmh(50), seconds(bad), 0.5, 0.0));
    CHECK_FALSE(speed_to_stop_within(metres(bad), seconds(1), 0.5, 0.0));
    CHECK_FALSE(braking_band(on("asphalt"), kmh(bad), Speed(), {}).shortest);
    CHECK_FALSE(stopping_band(on("asphalt"), kmh(50), seconds(bad), {}).shortest);
    CHECK(seen_distance_speed(on("asphalt"), metres(bad), seconds(1), {}).high == Speed());
    CHECK(seen_distance_speed(on("asphalt"), metres(50), seconds(bad), {}).high == Speed());
    CHECK(speed_left_band(on("asphalt"), kmh(50), metres(bad), {}).low == kmh(50));
    CHECK(speed_left(kmh(50), metres(bad), metres(10)) == kmh(50));
    CHECK_FALSE(worn_stop_ratio(on("asphalt"), kmh(bad)));
    CHECK(corner_speed_band(on("asphalt"), metres(bad), 0.0).high < kmh(0.001));
    CHECK(comfortable_corner_speed(metres(bad), 0.0) < kmh(0.001));
    CHECK_FALSE(radius_from_chord(metres(bad), metres(1)));
    CHECK_FALSE(radius_from_chord(metres(20), metres(bad)));
  }
  CHECK_FALSE(braking_distance(kmh(50), no_number, 0.0));
  CHECK_FALSE(braking_distance(kmh(50), 0.5, no_number));
  CHECK_FALSE(
      braking_band(on("asphalt"), kmh(50), Speed(), {no_number, std::nullopt, 0.0}).shortest);
  CHECK_FALSE(corner_speed(metres(no_number), 0.5, 0.0));
  CHECK_FALSE(corner_speed(metres(50), no_number, 0.0));
  CHECK(braking_left(0.5, 0.5, no_number) == 0.0);
  CHECK(std::isfinite(Grip(on("asphalt", 8, 1)).at(kmh(infinite)).high));
}

TEST_CASE("ice on a hill steeper than its grip: will not stop, and no speed is slow enough") {
  const Road downhill{-0.12, std::nullopt, 0.0};
  const DistanceBand band = braking_band(on("ice"), kmh(20), Speed(), downhill);
  CHECK_FALSE(band.longest);
  CHECK_FALSE(band.shortest);
  CHECK(seen_distance_speed(on("ice"), metres(200), seconds(1), downhill).high == Speed());
  CHECK(speed_left_band(on("ice"), kmh(20), metres(50), downhill).low > kmh(20));
}

TEST_CASE("down a steep bend less grip never leaves less speed, and no grade no speed at all") {
  Road bend;
  bend.grade = -0.5;
  bend.radius = metres(160);
  bend.bank = 0.02;
  const SpeedBand left = speed_left_band(on("asphalt", 3.0, 1.0), kmh(80), metres(25), bend);
  CHECK(left.low <= left.central);
  CHECK(left.central <= left.high);
  CHECK(left.central > kmh(80));  // this grip holds the bend and gains speed; the low one slides
  bend.grade = std::nan("");
  CHECK_FALSE(speed_left_band(on("asphalt"), kmh(80), metres(25), bend).low <= kmh(80));
  CHECK_FALSE(speed_left_band(on("asphalt"), kmh(80), metres(25), bend).high <= kmh(80));
}

TEST_CASE("the band may hold a case that stops and one that does not") {
  const DistanceBand band = braking_band(on("ice", "winter"), kmh(20), Speed(), {-0.07, {}, 0.0});
  CHECK(band.shortest);
  CHECK_FALSE(band.longest);
}

TEST_CASE("too fast for the bend: no stop in it, and the speed at which it may be taken is less") {
  const Road bend{0.0, metres(20), 0.0};
  CHECK_FALSE(braking_band(on("asphalt"), kmh(90), Speed(), bend).shortest);
  const SpeedBand corner = corner_speed_band(on("asphalt"), metres(20), 0.0);
  CHECK(seen_distance_speed(on("asphalt"), metres(500), seconds(1), bend).low <= corner.low);
  // v = sqrt(g R mu): 0.843 of a friction of 0.7 is 38.7 km/h.
  CHECK_THAT(in_kilometres_per_hour(corner.low), WithinAbs(38.7, 0.1));
}

TEST_CASE("a stop through 80 km/h is the sum of its two parts") {
  for (const char* surface : {"asphalt", "smooth"}) {
    const GripCase wet = on(surface, 3, 1);
    const double whole = in_metres(*braking_band(wet, kmh(120), Speed(), {}).central);
    const double parts = in_metres(*braking_band(wet, kmh(120), kmh(80.5), {}).central) +
                         in_metres(*braking_band(wet, kmh(80.5), Speed(), {}).central);
    CHECK_THAT(whole, WithinRel(parts, 1e-12));
  }
}

TEST_CASE("steps of 1 km/h give the closed form where friction does not change") {
  const double friction_on_snow = Grip(on("snow", "winter")).at(kmh(40)).low;
  CHECK_THAT(in_metres(*braking_band(on("snow", "winter"), kmh(63.7), Speed(), {}).longest),
             WithinRel(in_metres(*braking_distance(kmh(63.7), friction_on_snow, 0.0)), 1e-12));
}

TEST_CASE("no credit that nobody has earned") {
  // Worn rubber in the dry, slicks that may be cold, high-grip rubber: not in the low figure.
  CHECK(Grip(on("asphalt", 1.6, 0)).at(kmh(50)).low == Grip(on("asphalt", 8, 0)).at(kmh(50)).low);
  CHECK(Grip(on("asphalt", "slick")).at(kmh(50)).low < Grip(on("asphalt")).at(kmh(50)).low);
  GripCase wet = on("asphalt", 8, 0.5);
  const double ordinary = Grip(wet).at(kmh(50)).low;
  for (const Rubber& rubber : rubbers()) {
    wet.rubber = &rubber;
    CHECK(Grip(wet).at(kmh(50)).low <= ordinary);
  }
  CHECK(Grip(on("snow")).at(kmh(40)).high < Grip(on("snow", "winter")).at(kmh(40)).high);
}

TEST_CASE("rubber outside its window: no credit, and a fifth less that is sure") {
  GripCase slick = on("asphalt", "slick");
  slick.tread_heat = celsius(110);
  const FrictionBand warm = Grip(slick).at(kmh(50));
  for (double c : {20.0, 150.0}) {
    slick.tread_heat = celsius(c);
    const FrictionBand band = Grip(slick).at(kmh(50));
    CHECK_THAT(band.low / warm.low, WithinAbs(0.8, 1e-12));
    CHECK_THAT(band.high, WithinAbs(1.2, 1e-12));
  }
  const Rubber& race = *find_rubber("soft-race");
  CHECK_THAT(std::string(heat_caution(race, Heat::cold).english()), ContainsSubstring("warm"));
  CHECK_THAT(std::string(heat_caution(race, Heat::too_hot).english()), ContainsSubstring("hotter"));
  CHECK_THAT(std::string(heat_caution(race, Heat::unknown).english()), ContainsSubstring("cold"));
  CHECK(heat_caution(race, Heat::working).empty());
  const Rubber& road = *find_rubber("synthetic");
  CHECK(heat_caution(road, Heat::unknown).empty());
  CHECK_THAT(std::string(heat_caution(road, heat_of(road, celsius(-10))).english()),
             ContainsSubstring("stiffens"));
}

TEST_CASE("bends: no bank, too much outward fall, a wall") {
  CHECK(*corner_speed(metres(50), 0.1, -0.2) == Speed());
  CHECK_FALSE(corner_speed(metres(50), 0.8, 1.3));
  CHECK(std::isinf(side_demand(kmh(50), metres(0), 0.0)));
  CHECK(std::isfinite(side_demand(kmh(50), metres(0.005), 0.0)));
  CHECK(std::isinf(side_demand(kmh(200), metres(10), -0.1)));
  CHECK(comfortable_corner_speed(metres(50), -0.5) < kmh(0.001));
}

TEST_CASE("speed left where there is room enough is none") {
  CHECK(speed_left(kmh(50), metres(20), metres(20)) == Speed());
  CHECK(speed_left_band(on("asphalt"), kmh(50), metres(100), {}).high == Speed());
}
