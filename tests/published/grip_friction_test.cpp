// Printed friction, reproduced to the printed digit. The standing of each source is in core/grip
// and core/standard/friction.cpp.
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

struct Cell {
  double kmh, tread, film, friction;
};

// Read once as flattened text (secondary): the columns are placed from memory.
constexpr Cell handbook[] = {
    {50, 8, 0, 0.85},   {50, 8, 0.2, 0.65},   {50, 8, 1, 0.55},   {50, 8, 2, 0.5},
    {50, 1.6, 0, 1.0},  {50, 1.6, 0.2, 0.5},  {50, 1.6, 1, 0.4},  {50, 1.6, 2, 0.25},
    {90, 8, 0, 0.8},    {90, 8, 0.2, 0.6},    {90, 8, 1, 0.3},    {90, 8, 2, 0.05},
    {90, 1.6, 0, 0.95}, {90, 1.6, 0.2, 0.2},  {90, 1.6, 1, 0.1},  {90, 1.6, 2, 0.05},
    {130, 8, 0, 0.75},  {130, 8, 0.2, 0.55},  {130, 8, 1, 0.2},   {130, 8, 2, 0},
    {130, 1.6, 0, 0.9}, {130, 1.6, 0.2, 0.2}, {130, 1.6, 1, 0.1}, {130, 1.6, 2, 0},
};

}  // namespace

TEST_CASE("Automotive Handbook: the 24 printed cells of static friction") {
  for (const Cell& c : handbook) {
    INFO(c.kmh << " km/h, " << c.tread << " mm of tread, " << c.film << " mm of water");
    CHECK_THAT(handbook_friction(kmh(c.kmh), mm(c.tread), mm(c.film)),
               WithinAbs(c.friction, 1e-12));
  }
}

TEST_CASE("Automotive Handbook: every printed cell lies inside the band for asphalt") {
  for (const Cell& c : handbook) {
    INFO(c.kmh << " km/h, " << c.tread << " mm of tread, " << c.film << " mm of water");
    const FrictionBand band = Grip(case_on("asphalt", c.tread, c.film)).at(kmh(c.kmh));
    CHECK(band.low <= c.friction);
    CHECK(band.high >= c.friction);
  }
}

TEST_CASE("Automotive Handbook: black ice 0.1 and less, whatever the tyre but a studded one") {
  for (const char* tyre : {"road", "winter", "gravel", "slick"}) {
    GripCase ice = case_on("ice", 8, 0);
    ice.tyre = find_tyre_grip(tyre);
    CHECK(Grip(ice).at(kmh(50)).high <= 0.1);
  }
}

TEST_CASE("Automotive Handbook: racing compounds up to 1.8 in the dry") {
  GripCase slick = case_on("asphalt", 8, 0);
  slick.tyre = find_tyre_grip("slick");
  CHECK_THAT(Grip(slick).at(kmh(50)).high, WithinAbs(1.8, 1e-9));
}

// Huang, Pavement Analysis and Design, 2004, problem 9.4 (secondary): two cubic inches of beads in
// a ten-inch patch, SN40 = 40; the book answers SN20 = 47.7 and SN60 = 33.6. Its answer for 60 mph
// is 33.54 by its own formula.
TEST_CASE("Leu and Henry: MTD 0.02546 in, SN20 47.7 and SN60 33.6 from SN40 40") {
  const Length texture = sand_patch_texture(2.0, inches(10.0));
  CHECK_THAT(in_inches(texture), WithinAbs(0.02546, 0.000005 + 1e-6));
  const double gradient = skid_gradient(texture);
  CHECK_THAT(gradient, WithinAbs(0.881, 0.0005));
  const double at_zero = skid_number_at_zero_speed(40.0, gradient, miles_per_hour(40.0));
  CHECK_THAT(skid_number(at_zero, gradient, miles_per_hour(40.0)), WithinAbs(40.0, 1e-9));
  CHECK_THAT(skid_number(at_zero, gradient, miles_per_hour(20.0)), WithinAbs(47.7, 0.05));
  CHECK_THAT(skid_number(at_zero, gradient, miles_per_hour(60.0)), WithinAbs(33.6, 0.1));
  CHECK_THAT(skid_number(at_zero, gradient, miles_per_hour(60.0)), WithinAbs(33.54, 0.005));
}

// The older form, 4.1 MTD^-0.47 with MTD in thousandths of an inch (memory), gives 0.895 there.
TEST_CASE("Leu and Henry: the older constant is within 2 % of the one used") {
  const double older = 4.1 * std::pow(25.465, -0.47);
  CHECK_THAT(older, WithinAbs(0.895, 0.0005));
  CHECK_THAT(skid_gradient(sand_patch_texture(2.0, inches(10.0))) / older, WithinAbs(1.0, 0.02));
}

TEST_CASE("Leu and Henry: SN0 = 1.32 BPN - 34.9") {
  CHECK_THAT(skid_number_from_pendulum(60.0), WithinAbs(44.3, 1e-9));
}

// Points worked out from the constants as quoted (14.2, 89.7 secondary; -11.6, 113.6 memory).
TEST_CASE("friction index: speed constants from profile and from sand patch") {
  const double by_profile[][2] = {{0.3, 41.11}, {0.5, 59.05}, {1.0, 103.90}, {1.5, 148.75}};
  for (const auto& point : by_profile)
    CHECK_THAT(speed_constant_from_profile(mm(point[0])), WithinAbs(point[1], 0.005));
  const double by_patch[][2] = {{0.5, 45.20}, {1.0, 102.0}, {1.5, 158.8}};
  for (const auto& point : by_patch)
    CHECK_THAT(speed_constant_from_sand_patch(mm(point[0])), WithinAbs(point[1], 0.005));
}

TEST_CASE("friction index: the two forms agree through MTD = 0.2 + 0.8 MPD") {
  const double rows[][3] = {{0.5, 56.6, 59.1}, {1.0, 102.0, 103.9}, {1.5, 147.4, 148.8}};
  for (const auto& row : rows) {
    CHECK_THAT(speed_constant_from_sand_patch(estimated_sand_patch(mm(row[0]))),
               WithinAbs(row[1], 0.051));
    CHECK_THAT(speed_constant_from_profile(mm(row[0])), WithinAbs(row[2], 0.051));
    CHECK_THAT(in_millimetres(estimated_profile(estimated_sand_patch(mm(row[0])))),
               WithinAbs(row[0], 1e-9));
  }
}

TEST_CASE("friction index: F(20) and F(100) at F60 = 0.4") {
  const double rows[][3] = {{50, 0.8902, 0.1797}, {100, 0.5967, 0.2681}, {150, 0.5222, 0.3064}};
  for (const auto& row : rows) {
    CHECK_THAT(index_friction(0.4, row[0], kmh(20)), WithinAbs(row[1], 0.00005));
    CHECK_THAT(index_friction(0.4, row[0], kmh(100)), WithinAbs(row[2], 0.00005));
  }
}

namespace {

struct Printed {
  std::string_view surface;
  bool wet;
  double low, high;
};

// Every row of the table that names this source is printed, and every printed one is in the table.
void same_rows(std::string_view source, std::initializer_list<Printed> printed) {
  std::size_t rows = 0;
  for (const standard::FrictionRow& row : standard::friction_rows())
    rows += row.source->id == source;
  CHECK(rows == printed.size());
  for (const Printed& p : printed) {
    INFO(source << ": " << p.surface << (p.wet ? " wet " : " dry ") << p.low << " to " << p.high);
    bool found = false;
    for (const standard::FrictionRow& row : standard::friction_rows())
      found |= row.source->id == source && row.surface == p.surface && row.wet == p.wet &&
               row.low == p.low && row.high == p.high;
    CHECK(found);
  }
}

constexpr bool dry = false;
constexpr bool wet = true;

}  // namespace

TEST_CASE("Noon 1994 (secondary): average friction by surface") {
  same_rows("friction-noon", {{"asphalt", dry, 0.65, 0.65},
                              {"asphalt", wet, 0.50, 0.50},
                              {"concrete", dry, 0.75, 0.75},
                              {"concrete", wet, 0.60, 0.60},
                              {"gravel-loose", dry, 0.35, 0.35},
                              {"earth", dry, 0.35, 0.35},
                              {"earth", wet, 0.60, 0.65},
                              {"grass", wet, 0.20, 0.20},
                              {"snow", dry, 0.20, 0.25},
                              {"ice-cold", dry, 0.10, 0.15}});
}

TEST_CASE("a tyre wholesaler's article (secondary): dry and wet by surface") {
  same_rows("friction-trade", {{"concrete", dry, 0.80, 0.90},
                               {"concrete", wet, 0.50, 0.60},
                               {"asphalt", dry, 0.70, 0.80},
                               {"asphalt", wet, 0.45, 0.55},
                               {"gravel-packed", dry, 0.60, 0.70},
                               {"gravel-packed", wet, 0.40, 0.50},
                               {"earth", dry, 0.50, 0.60},
                               {"earth", wet, 0.15, 0.25},
                               {"snow", dry, 0.25, 0.35},
                               {"ice-cold", dry, 0.05, 0.15}});
}

TEST_CASE("Kentucky report 178 (published): clean dry pavement 0.6 to 0.8") {
  same_rows("friction-kentucky", {{"asphalt", dry, 0.6, 0.8}, {"concrete", dry, 0.6, 0.8}});
}

TEST_CASE("Wong, table 1.3: peak values (secondary), sliding and loose ones (memory)") {
  same_rows("friction-wong", {{"asphalt", dry, 0.8, 0.9},
                              {"concrete", dry, 0.8, 0.9},
                              {"asphalt", wet, 0.5, 0.7},
                              {"concrete", wet, 0.8, 0.8},
                              {"earth", dry, 0.68, 0.68},
                              {"earth", wet, 0.55, 0.55}});
  same_rows("friction-wong-more", {{"asphalt", dry, 0.75, 0.75},
                                   {"concrete", dry, 0.75, 0.75},
                                   {"asphalt", wet, 0.45, 0.6},
                                   {"concrete", wet, 0.7, 0.7},
                                   {"gravel-packed", dry, 0.55, 0.6},
                                   {"earth", dry, 0.65, 0.65},
                                   {"earth", wet, 0.4, 0.5},
                                   {"snow", dry, 0.15, 0.2},
                                   {"ice-cold", dry, 0.07, 0.1}});
}

TEST_CASE("Traffic Accident Investigation Manual, topic 862 (memory): sliding, under 30 mph") {
  same_rows("friction-fricke", {{"asphalt", dry, 0.80, 1.20},
                                {"asphalt", wet, 0.50, 0.80},
                                {"asphalt", dry, 0.60, 0.80},
                                {"asphalt", wet, 0.45, 0.70},
                                {"smooth", dry, 0.55, 0.75},
                                {"smooth", wet, 0.45, 0.65},
                                {"gravel-packed", dry, 0.55, 0.85},
                                {"gravel-packed", wet, 0.40, 0.80},
                                {"gravel-loose", dry, 0.40, 0.70},
                                {"gravel-loose", wet, 0.45, 0.75},
                                {"ice-cold", dry, 0.10, 0.25},
                                {"ice", wet, 0.05, 0.10},
                                {"snow", dry, 0.30, 0.55},
                                {"snow", wet, 0.30, 0.60}});
}

TEST_CASE("ice near 0 °C and at -20 °C, polished snow (memory)") {
  same_rows("friction-ice-cold",
            {{"ice", dry, 0.05, 0.10}, {"ice-cold", dry, 0.15, 0.25}, {"snow", dry, 0.20, 0.35}});
}

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

// Junge, Lu and Esch, 1995 (secondary): 8 to 15 % short of studs on ice.
TEST_CASE("an unstudded winter tyre on ice is 8 to 15 % short of a studded one at the low end") {
  GripCase ice = case_on("ice", 8, 0);
  ice.tyre = find_tyre_grip("winter");
  const double plain = Grip(ice).at(kmh(40)).low;
  ice.tyre = find_tyre_grip("studded");
  const double share = plain / Grip(ice).at(kmh(40)).low;
  CHECK(share >= 0.85 - 1e-12);
  CHECK(share <= 0.92 + 1e-12);
}

// Memory: 0.15 to 0.30 studded on ice, 0.5 to 0.8 a gravel tyre on gravel: inside the bands.
TEST_CASE("figures from memory for studs and gravel tyres lie inside their bands") {
  GripCase studs = case_on("ice-cold", 8, 0);
  studs.tyre = find_tyre_grip("studded");
  CHECK(Grip(studs).at(kmh(40)).low <= 0.15);
  CHECK(Grip(studs).at(kmh(40)).high >= 0.30);
  GripCase gravel = case_on("gravel-packed", 8, 0);
  gravel.tyre = find_tyre_grip("gravel");
  CHECK(Grip(gravel).at(kmh(60)).high >= 0.8);
}

// Common practice, no source.
TEST_CASE("a good high-grip synthetic in the wet comes close to natural rubber in the dry") {
  GripCase wet = case_on("asphalt", 7, 0.5);
  wet.rubber = find_rubber("high-grip");
  GripCase dry = case_on("asphalt", 7, 0);
  dry.rubber = find_rubber("natural");
  CHECK_THAT(Grip(wet).at(kmh(50)).central / Grip(dry).at(kmh(50)).central, WithinAbs(1.0, 0.15));
}

TEST_CASE("a soft race compound works near 110 °C, which is 230 °F") {
  const Rubber& race = *find_rubber("soft-race");
  CHECK_THAT(in_celsius(fahrenheit(230.0)), WithinAbs(110.0, 1e-9));
  CHECK(heat_of(race, celsius(110.0)) == Heat::working);
  CHECK(heat_of(race, celsius(40.0)) == Heat::cold);
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
