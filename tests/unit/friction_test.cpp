// Friction: what holds over every printed figure. The figures themselves are in tests/register.
#include "core/grip/friction.hpp"

#include "core/grip/skid.hpp"
#include "tests/support/catch.hpp"

using namespace treadwater;
using namespace treadwater::grip;
using namespace treadwater::testing;

namespace {

constexpr Speed kmh(double v) { return kilometres_per_hour(v); }
constexpr Length mm(double v) { return millimetres(v); }

GripCase case_on(std::string_view surface, double tread, double film) {
  GripCase grip_case;
  grip_case.surface = standard::find_friction_surface(surface);
  REQUIRE(grip_case.surface != nullptr);
  grip_case.tread = mm(tread);
  grip_case.film = mm(film);
  return grip_case;
}

}  // namespace

// Every printed row by surface, for a winter tyre on snow and ice and a road tyre elsewhere. None
// names its tread or its water: a legal worn tread in 0.4 mm of water (which one text counts as
// wet) at 50 km/h must take them in.
TEST_CASE("every printed figure for a surface lies inside its band") {
  int count = 0;
  for (const standard::FrictionRow& row : standard::friction_rows()) {
    INFO(row.surface << (row.wet ? " wet " : " dry ") << row.low << " to " << row.high << ", "
                     << row.source->id);
    GripCase grip_case = case_on(row.surface, 1.6, row.wet ? 0.4 : 0.0);
    const auto ground = grip_case.surface->ground;
    if (ground == standard::Ground::snow || ground == standard::Ground::ice)
      grip_case.tyre = find_tyre_grip("winter");
    grip_case.old_or_hard = true;  // the tables are of those years
    const FrictionBand band = Grip(grip_case).at(kmh(50));
    CHECK(band.low <= row.low + 1e-12);
    CHECK(band.high >= row.high - 1e-12);
    ++count;
  }
  CHECK(count == 57);
}

// Kentucky report 178 (published): clean dry pavement 0.6 to 0.8, whatever its texture.
TEST_CASE("texture makes no difference in the dry, and some in the wet") {
  CHECK(texture_share(mm(0.7), kmh(100)).low == 1.0);
  CHECK(texture_share(mm(1.5), kmh(100)).high == 1.0);
  CHECK(texture_share(mm(0.4), kmh(100)).high < 0.9);
  CHECK(Grip(case_on("porous", 4, 0)).at(kmh(90)).low ==
        Grip(case_on("asphalt", 4, 0)).at(kmh(90)).low);
}

// The handbook at 50 km/h: 0.2 mm of water takes a quarter of a new tyre's grip and, of a worn
// one's (against the new one's dry grip), two fifths, far below any speed at which a tyre floats on
// it.
TEST_CASE("thin films take grip long before a tyre floats") {
  CHECK_THAT(share_kept(kmh(50), mm(8), mm(0.2)).low, WithinAbs(0.65 / 0.85, 1e-12));
  CHECK_THAT(share_kept(kmh(50), mm(1.6), mm(0.2)).low, WithinAbs(0.5 / 0.85, 1e-12));
  CHECK_THAT(share_kept(kmh(90), mm(1.6), mm(0.2)).low, WithinAbs(0.2 / 0.8, 1e-12));
  CHECK(share_kept(kmh(50), mm(1.6), mm(0.2)).high <= 0.8);
  CHECK(share_kept(kmh(50), mm(0), mm(0.2)).low < 0.25);
}

TEST_CASE("friction index: a profile from a sand patch and back") {
  for (const double profile : {0.5, 1.0, 1.5})
    CHECK_THAT(in_millimetres(estimated_profile(estimated_sand_patch(mm(profile)))),
               WithinAbs(profile, 1e-9));
}

// A motoring club's test of 2005 (secondary): two millimetres of tread on two of water "may stop no
// better than a bald tyre".
TEST_CASE("on 2 mm of water the band of 2 mm of tread reaches down to that of a bald tyre") {
  for (const double v : {30.0, 50.0, 80.0})
    CHECK(Grip(case_on("asphalt", 2.0, 2.0)).at(kmh(v)).low <
          Grip(case_on("asphalt", 0.0, 2.0)).at(kmh(v)).high);
}
