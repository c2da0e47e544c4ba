// The law of the onset in thin and deep water: what it must give, how it changes from one depth to
// the next, and what was measured. The tyre is 205/55 R16 91V at 2.3 bar, cold, unless a test says
// so.
#include <cmath>
#include <string>
#include <vector>

#include "core/quantity/write.hpp"
#include "core/water/estimate.hpp"
#include "core/water/measured.hpp"
#include "core/water/onset.hpp"
#include "tests/support/catch.hpp"

using namespace treadwater;
using namespace treadwater::water;
using namespace treadwater::testing;
using standard::Wetness;

namespace {

WetTyre tyre_at(double tread_mm, const Water& water, double kpa = 230.0, double width_mm = 205.0) {
  return {kilopascals(kpa), millimetres(tread_mm), 1.0, millimetres(width_mm), water,
          millimetres(0.7)};
}

SpeedBand band_of(double tread_mm, const Water& water) {
  return *aquaplaning_onset(tyre_at(tread_mm, water));
}

// min(130, 0.9 low), as the sheets would have it without rounding.
double unrounded(Speed low) { return std::min(130.0, hold_to_share * in_kilometres_per_hour(low)); }

// The speed to hold to, rounded down to five; 1000 where there is none.
double hold_to(const SpeedBand& band) {
  const auto speed = held(band);
  return speed ? in_kilometres_per_hour(floor_to_five(*speed, UnitSystem::metric)) : 1000.0;
}

std::string whole(Speed onset, const char* none) {
  const auto figure = told(onset);
  return figure ? std::to_string(std::lround(in_kilometres_per_hour(*figure))) : none;
}

// "115 (132/none/-)": hold to, low, central, high.
std::string in_short(const SpeedBand& band) {
  const auto speed = held(band);
  return (speed ? std::to_string(std::lround(hold_to(band))) : "none") + " (" +
         whole(band.low, "-") + "/" + whole(band.central, "none") + "/" + whole(band.high, "-") +
         ")";
}

// 0.1 to 100 mm by ruler.
std::vector<Length> tenths() {
  std::vector<Length> all;
  for (int i = 1; i <= 1000; ++i) all.push_back(millimetres(0.1 * i));
  return all;
}

}  // namespace

TEST_CASE("18 waters and 9 treads, to the digit of the table that the law was chosen by") {
  constexpr double treads[] = {8.0, 6.0, 5.0, 4.0, 3.0, 2.0, 1.6, 1.0, 0.0};
  const struct {
    const char* name;
    Water water;
    const char* cells[9];
  } rows[] = {
      {"wet, by word",
       Water::by_word(Wetness::wet),
       {"none (-/none/-)", "115 (130/none/-)", "105 (118/none/-)", "95 (107/178/-)",
        "85 (96/168/-)", "70 (82/157/-)", "65 (77/152/-)", "65 (74/146/178)", "60 (70/135/167)"}},
      {"downpour, by word",
       Water::by_word(Wetness::downpour),
       {"85 (96/150/-)", "70 (78/133/171)", "60 (71/126/162)", "55 (65/120/153)", "55 (63/114/146)",
        "50 (56/105/136)", "45 (54/101/132)", "45 (51/96/127)", "40 (46/86/121)"}},
      {"standing, by word",
       Water::by_word(Wetness::standing),
       {"60 (69/90/126)", "55 (66/86/117)", "55 (64/84/113)", "55 (62/82/109)", "50 (60/80/106)",
        "45 (53/72/96)", "40 (50/69/93)", "40 (46/64/89)", "35 (39/55/86)"}},
      {"0.1 by ruler",
       millimetres(0.1),
       {"none (-/none/-)", "none (-/none/-)", "none (-/none/-)", "none (-/none/-)",
        "none (-/none/-)", "125 (139/none/-)", "120 (135/none/-)", "120 (134/none/-)",
        "115 (133/172/176)"}},
      {"0.3 by ruler",
       millimetres(0.3),
       {"none (-/none/-)", "none (-/none/-)", "none (-/none/-)", "none (-/none/-)",
        "120 (134/none/-)", "105 (120/179/-)", "100 (115/175/-)", "100 (114/168/178)",
        "100 (112/156/168)"}},
      {"0.5 by ruler",
       millimetres(0.5),
       {"none (-/none/-)", "none (-/none/-)", "125 (140/none/-)", "115 (128/none/-)",
        "105 (117/175/-)", "90 (103/164/-)", "85 (98/159/176)", "85 (96/153/169)",
        "80 (93/142/159)"}},
      {"1 by ruler",
       millimetres(1.0),
       {"115 (132/none/-)", "100 (111/169/-)", "90 (101/158/-)", "80 (92/149/-)", "70 (83/141/170)",
        "60 (70/131/159)", "55 (65/127/155)", "55 (62/121/149)", "50 (58/111/140)"}},
      {"1.5 by ruler",
       millimetres(1.5),
       {"85 (98/150/-)", "70 (82/133/-)", "65 (76/126/169)", "60 (71/120/159)", "60 (67/114/150)",
        "50 (59/105/140)", "50 (56/101/136)", "45 (53/96/131)", "40 (48/86/123)"}},
      {"2 by ruler",
       millimetres(2.0),
       {"70 (78/116/-)", "60 (71/107/158)", "60 (69/103/149)", "60 (67/99/141)", "55 (64/95/134)",
        "50 (58/87/124)", "45 (55/83/120)", "45 (52/78/115)", "40 (46/69/108)"}},
      {"2.5 by ruler",
       millimetres(2.5),
       {"65 (73/96/140)", "60 (69/91/126)", "60 (67/89/120)", "55 (65/86/115)", "55 (63/84/111)",
        "50 (56/76/101)", "45 (54/72/98)", "45 (51/67/94)", "40 (45/59/88)"}},
      {"3 by ruler",
       millimetres(3.0),
       {"60 (71/90/113)", "60 (68/86/105)", "55 (66/84/102)", "55 (64/82/99)", "55 (62/80/96)",
        "45 (56/72/87)", "45 (53/69/83)", "40 (50/64/80)", "35 (43/55/77)"}},
      {"4 by ruler",
       millimetres(4.0),
       {"60 (69/88/103)", "55 (66/84/98)", "55 (64/82/96)", "55 (63/79/93)", "50 (60/77/90)",
        "45 (53/67/80)", "40 (49/63/75)", "40 (46/57/72)", "30 (38/47/70)"}},
      {"5 by ruler",
       millimetres(5.0),
       {"60 (69/87/103)", "55 (65/82/97)", "55 (63/80/94)", "50 (61/77/91)", "50 (58/75/88)",
        "40 (49/63/76)", "40 (46/59/71)", "35 (41/52/67)", "25 (32/40/65)"}},
      {"8 by ruler",
       millimetres(8.0),
       {"60 (67/86/103)", "55 (62/79/95)", "50 (59/75/91)", "50 (57/72/87)", "45 (54/68/83)",
        "35 (42/53/66)", "30 (38/47/59)", "25 (31/38/54)", "15 (20/23/53)"}},
      {"10 by ruler",
       millimetres(10.0),
       {"55 (66/85/103)", "50 (61/78/95)", "50 (58/75/91)", "45 (55/71/86)", "45 (52/68/82)",
        "35 (41/53/64)", "30 (36/47/57)", "25 (30/38/52)", "15 (19/22/52)"}},
      {"20 by ruler",
       millimetres(20.0),
       {"40 (46/69/87)", "35 (42/64/80)", "35 (40/61/77)", "30 (38/58/73)", "30 (36/55/69)",
        "25 (28/43/54)", "20 (25/38/48)", "15 (21/31/44)", "10 (13/18/43)"}},
      {"50 by ruler",
       millimetres(50.0),
       {"20 (28/53/69)", "20 (25/48/64)", "20 (24/46/61)", "20 (23/44/58)", "15 (22/42/55)",
        "15 (17/33/43)", "10 (15/29/38)", "10 (13/23/35)", "5 (8/14/35)"}},
      {"99 by ruler",
       millimetres(99.0),
       {"15 (19/43/58)", "15 (18/40/54)", "15 (17/38/51)", "10 (16/36/49)", "10 (15/34/46)",
        "10 (12/27/36)", "5 (11/24/32)", "5 (9/19/30)", "0 (5/11/29)"}},
  };
  for (const auto& row : rows)
    for (std::size_t i = 0; i < 9; ++i) {
      INFO(row.name << ", " << treads[i] << " mm of tread");
      CHECK(in_short(band_of(treads[i], row.water)) == row.cells[i]);
    }
}

TEST_CASE("the speed to hold to is one that a careful driver believes") {
  const struct {
    Water water;
    double tread;
    double least;
    double most;
  } rows[] = {
      // Wet by word: its low end at the deep edge, 1 mm.
      {Water::by_word(Wetness::wet), 8.0, 1000.0, 1000.0},
      {Water::by_word(Wetness::wet), 5.0, 90.0, 1000.0},
      {Water::by_word(Wetness::wet), 3.0, 70.0, 85.0},
      {Water::by_word(Wetness::wet), 1.6, 55.0, 65.0},
      {millimetres(1.0), 8.0, 90.0, 1000.0},
      {millimetres(1.0), 5.0, 75.0, 105.0},
      {millimetres(1.0), 3.0, 65.0, 85.0},
      {millimetres(1.0), 1.6, 55.0, 65.0},
      {millimetres(2.0), 8.0, 60.0, 80.0},
      {millimetres(2.0), 5.0, 55.0, 70.0},
      {millimetres(2.0), 3.0, 55.0, 65.0},
      {millimetres(2.0), 1.6, 45.0, 55.0},
  };
  for (const auto& row : rows) {
    CAPTURE(row.tread, in_millimetres(row.water.deep()));
    const double speed = hold_to(band_of(row.tread, row.water));
    CHECK(speed >= row.least);
    CHECK(speed <= row.most);
  }
}

TEST_CASE(
    "in 3 mm and more the speed to hold to is what it was before thin water was looked into") {
  constexpr double treads[] = {8.0, 6.0, 5.0, 4.0, 3.0, 2.0, 1.6};
  const struct {
    double film;
    double kmh[7];
  } before[] = {
      {3, {60, 60, 55, 55, 55, 50, 45}},  {4, {60, 55, 55, 55, 50, 45, 40}},
      {5, {60, 55, 55, 50, 50, 40, 40}},  {6, {60, 55, 55, 50, 50, 40, 35}},
      {8, {60, 55, 50, 50, 45, 35, 30}},  {10, {55, 50, 50, 45, 45, 35, 30}},
      {15, {45, 40, 40, 40, 35, 25, 25}}, {20, {40, 35, 35, 30, 30, 25, 20}},
      {30, {30, 30, 25, 25, 25, 20, 15}}, {50, {20, 20, 20, 20, 15, 15, 10}},
      {70, {20, 15, 15, 15, 15, 10, 10}}, {99, {15, 15, 15, 10, 10, 10, 5}},
  };
  int changed = 0;
  for (const auto& row : before)
    for (std::size_t i = 0; i < 7; ++i) {
      CAPTURE(row.film, treads[i]);
      const double now = hold_to(band_of(treads[i], millimetres(row.film)));
      CHECK(std::fabs(now - row.kmh[i]) <= 5.0);
      changed += now != row.kmh[i];
    }
  CHECK(changed == 1);  // 2 mm of tread in 3 mm of water: 45 for 50
}

TEST_CASE("no tenth of a millimetre of water moves the speed to hold to by 10 km/h") {
  const double treads[] = {1.6, 2.0, 2.5, 3.0, 4.0, 5.0, 6.0, 7.0, 8.0};
  const double others[][2] = {{150.0, 145.0}, {150.0, 205.0}, {150.0, 315.0}, {180.0, 175.0},
                              {200.0, 255.0}, {280.0, 205.0}, {450.0, 145.0}, {700.0, 295.0}};
  std::vector<WetTyre> tyres;
  for (const double tread : treads) tyres.push_back(tyre_at(tread, {}));
  const std::size_t ours = tyres.size();
  for (const auto& [kpa, width] : others)
    for (const double tread : {1.6, 3.0, 5.0, 8.0, 12.0})
      tyres.push_back(tyre_at(tread, {}, kpa, width));

  std::vector<double> before(tyres.size(), 130.0);  // no water, no limit
  std::vector<Speed> central_before(tyres.size(), no_floating);
  double worst_of_ours = 0.0, worst = 0.0;
  int higher = 0;
  for (const Length film : tenths()) {
    const OnsetsInWater water(film, millimetres(0.7));
    for (std::size_t i = 0; i < tyres.size(); ++i) {
      const OnsetsInWater::Onset onset = water.of(tyres[i]);
      const double now = unrounded(onset.low);
      higher += now > before[i] || onset.central > central_before[i];
      double& most = i < ours ? worst_of_ours : worst;
      most = std::max(most, before[i] - now);
      before[i] = now;
      central_before[i] = onset.central;
    }
  }
  CHECK(higher == 0);
  CAPTURE(worst_of_ours, worst);
  CHECK(worst_of_ours <= 10.0);
  CHECK(worst <= 11.0);
}

TEST_CASE("no step where one part of the law ends and the next begins") {
  constexpr double hair = 1e-6;
  const auto near = [](const SpeedBand& a, const SpeedBand& b) {
    CHECK(std::fabs(unrounded(a.low) - unrounded(b.low)) < 0.03);
    const auto told_alike = [](Speed one, Speed other) {
      const double highest = in_kilometres_per_hour(highest_onset_told);
      CHECK(std::fabs(std::min(highest, in_kilometres_per_hour(one)) -
                      std::min(highest, in_kilometres_per_hour(other))) < 0.03);
    };
    told_alike(a.central, b.central);
    told_alike(a.high, b.high);
  };
  for (const double tread : {0.0, 0.8, 1.6, 3.0, 8.0, 12.0})
    for (const double film : {2.0, 3.0, 4.0, 10.0, 100.0}) {
      CAPTURE(tread, film);
      near(band_of(tread, millimetres(film - hair)), band_of(tread, millimetres(film + hair)));
    }
  for (const double film : {0.2, 1.0, 3.0, 8.0, 20.0}) {
    for (const double tread : {1.6, 3.0, 8.0, 9.1})
      near(band_of(tread - hair, millimetres(film)), band_of(tread + hair, millimetres(film)));
    near(band_of(0.0, millimetres(film)), band_of(hair, millimetres(film)));
    for (const double kpa : {210.0, 220.0, 240.0, 250.0, 270.0, 280.0, 290.0})
      near(*aquaplaning_onset(tyre_at(5.0, millimetres(film), kpa - hair)),
           *aquaplaning_onset(tyre_at(5.0, millimetres(film), kpa + hair)));
    for (const double width : {155.0, 205.0, 255.0})
      near(*aquaplaning_onset(tyre_at(5.0, millimetres(film), 230.0, width - hair)),
           *aquaplaning_onset(tyre_at(5.0, millimetres(film), 230.0, width + hair)));
  }
}

TEST_CASE("credit ends where nobody measured: 280 kPa, 155 mm of width, 1.8 mm held by grooves") {
  for (const double film : {1.0, 2.5, 8.0}) {
    const Water water = millimetres(film);
    const SpeedBand hard = *aquaplaning_onset(tyre_at(5.0, water, 295.0));
    const SpeedBand harder = *aquaplaning_onset(tyre_at(5.0, water, 900.0));
    CHECK(hard.low == harder.low);
    CHECK(hard.central == harder.central);
    CHECK(hard.high == harder.high);
    const SpeedBand narrow = *aquaplaning_onset(tyre_at(5.0, water, 230.0, 155.0));
    const SpeedBand narrower = *aquaplaning_onset(tyre_at(5.0, water, 230.0, 100.0));
    CHECK(narrow.low == narrower.low);
    CHECK(narrow.central == narrower.central);
    CHECK(narrow.high == narrower.high);
  }
  CHECK(band_of(13.0, millimetres(2.0)).central == band_of(30.0, millimetres(2.0)).central);
}

TEST_CASE("beyond 10 mm the central value falls as a fourth root, on top of the film formula") {
  const auto at = [](double film) { return band_of(8.0, millimetres(film)).central; };
  const auto formula = [](double film) {
    return film_onset({kilopascals(230.0), millimetres(8.0), millimetres(film), millimetres(0.7)});
  };
  CHECK(at(10.0) / formula(10.0) == Approx(1.0));
  CHECK(at(90.0) / formula(90.0) == Approx(std::pow(10.0 / 90.0, 0.25)));
}

// ---- bare and nearly so ----

TEST_CASE("bare rubber in 3 mm of water: 43, 55, 77 km/h") {
  CHECK(in_short(band_of(0.0, millimetres(3.0))).substr(3) == "(43/55/77)");
}

TEST_CASE("a road tyre without tread is a slick in water, and so is one with next to none") {
  const auto slick = [](double tread, double credit, const Water& water) {
    WetTyre tyre = tyre_at(tread, water);
    tyre.groove_credit = credit;
    return counts_as_slick(tyre);
  };
  const Water wet = Water::by_word(Wetness::wet);
  CHECK(slick(8.0, 0.0, wet));
  CHECK(slick(0.0, 1.0, wet));
  CHECK(slick(0.49, 1.0, wet));
  CHECK_FALSE(slick(0.5, 1.0, wet));
  CHECK(slick(0.9, 0.5, wet));
  CHECK_FALSE(slick(1.0, 0.5, wet));
  CHECK_FALSE(slick(8.0, 0.0, Water::by_word(Wetness::damp)));
  CHECK_FALSE(slick(8.0, 0.0, millimetres(0.19)));
  CHECK(slick(8.0, 0.0, millimetres(0.2)));
  CHECK(slick(std::nan(""), 1.0, wet));
  CHECK(slick(8.0, 0.0, millimetres(std::nan(""))));

  // The estimate of one is that of the other, but for what a gauge may have missed at 0 mm.
  for (const double film : {0.2, 1.0, 3.0, 8.0}) {
    CAPTURE(film);
    WetTyre plain = tyre_at(6.0, millimetres(film));
    plain.groove_credit = 0.0;
    const SpeedBand slick_band = *aquaplaning_onset(plain);
    const SpeedBand bare = band_of(0.0, millimetres(film));
    CHECK(bare.central == slick_band.central);
    CHECK(bare.low >= slick_band.low);
    CHECK(bare.low - slick_band.low < kilometres_per_hour(1.0));
  }
}

// ---- none ----

TEST_CASE("none stands above every number, and is no figure") {
  CHECK(no_floating > kilometres_per_hour(1e6));
  CHECK_FALSE(floats_at_road_speed(no_floating));
  CHECK(floats_at_road_speed(kilometres_per_hour(130.0)));
  CHECK_FALSE(floats_at_road_speed(kilometres_per_hour(130.1)));
  CHECK_FALSE(told(no_floating));
  CHECK(told(kilometres_per_hour(180.0)));
  CHECK_FALSE(told(kilometres_per_hour(180.1)));
  const auto with_low = [](double kmh) {
    return SpeedBand{kilometres_per_hour(kmh), no_floating, no_floating};
  };
  CHECK(held(with_low(144.0)));
  CHECK_FALSE(held(with_low(144.5)));
  CHECK_FALSE(held({no_floating, no_floating, no_floating}));

  // A new tyre on a wet road: nothing to be expected, in any draw but of those in 1 mm.
  const SpeedBand band = band_of(8.0, Water::by_word(Wetness::wet));
  CHECK_FALSE(held(band));
  CHECK_FALSE(floats_at_road_speed(band.central));
  CHECK(band.high == no_floating);
  const OnsetDraws draws(tyre_at(8.0, millimetres(1.0)));
  CHECK(draws.chance_of_floating(kilometres_per_hour(120.0)) < 0.005);
  CHECK(draws.chance_of_floating(kilometres_per_hour(1e9)) < 1.0);
  CHECK(draws.at_share(1.0) == no_floating);
}

// ---- words and rulers ----

TEST_CASE("a word is a range of depths without a ruler's error") {
  CHECK(Water::by_word(Wetness::dry).none());
  CHECK(Water::by_word(Wetness::damp).none());
  CHECK_FALSE(aquaplaning_onset(tyre_at(3.0, Water::by_word(Wetness::damp))));
  Length deepest;
  for (const auto& word : standard::wetness_words) {
    CHECK(&standard::wetness_word(word.wetness) == &word);
    CHECK(standard::find_wetness(word.id) == &word);
    CHECK(word.deep >= word.shallow);
    CHECK(word.shallow >= deepest);
    deepest = word.deep;
    const Water water = Water::by_word(word.wetness);
    CHECK(water.none() != word.film);
    if (!word.film) continue;
    CHECK(water.shallow() == word.shallow);
    CHECK(water.deep() == word.deep);
    CHECK(water.middle() == (word.shallow + word.deep) / 2.0);
    for (const double tread : {0.0, 1.6, 3.0, 8.0}) {
      const auto alone = [&](Length depth) {
        return band_of(tread, Water::between(depth, depth, depth));
      };
      const SpeedBand band = band_of(tread, water);
      CHECK(band.low == alone(water.deep()).low);
      CHECK(band.central == alone(water.middle()).central);
      CHECK(band.high == alone(water.shallow()).high);
      const OnsetDraws draws(tyre_at(tread, water));
      CHECK(draws.at_share(0.05) >= band.low);
      CHECK(draws.at_share(0.95) <= band.high);
    }
  }
  CHECK(standard::find_wetness("moist") == nullptr);
}

TEST_CASE("every depth of a word is as likely in the chance of floating") {
  const Water standing = Water::by_word(Wetness::standing);
  double sum = 0.0;
  constexpr int parts = 40;
  for (int i = 0; i < parts; ++i) {
    const Length depth = millimetres(2.0 + 2.0 * (i + 0.5) / parts);
    sum += OnsetDraws(tyre_at(3.0, Water::between(depth, depth, depth)))
               .chance_of_floating(kilometres_per_hour(80.0));
  }
  const double chance =
      OnsetDraws(tyre_at(3.0, standing)).chance_of_floating(kilometres_per_hour(80.0));
  CHECK(std::fabs(chance - sum / parts) < 0.02);
}

TEST_CASE("a ruler errs by a millimetre, but by no more than half its reading") {
  CHECK(standard::ruler_error_at(millimetres(0.5)) == millimetres(0.25));
  CHECK(standard::ruler_error_at(millimetres(2.0)) == millimetres(1.0));
  CHECK(standard::ruler_error_at(millimetres(9.0)) == millimetres(1.0));
  CHECK(Water(millimetres(5.0)).reading_error() == millimetres(1.0));
  CHECK(Water::by_word(Wetness::wet).reading_error() == Length());
  // Its draws are those of every depth within.
  const SpeedBand read = band_of(3.0, millimetres(1.0));
  const OnsetDraws draws(
      tyre_at(3.0, Water::between(millimetres(0.5), millimetres(1.0), millimetres(1.5))));
  CHECK(read.low == draws.at_share(0.05));
  CHECK(read.high == draws.at_share(0.95));
}

TEST_CASE("of a word and a ruler the one counts in which the tyre floats first") {
  const Water wet = Water::by_word(Wetness::wet);
  const auto deeper = [&](const Water& one, const Water& other) {
    const Water forth = stricter(tyre_at(3.0, {}), one, other);
    const Water back = stricter(tyre_at(3.0, {}), other, one);
    CHECK(forth.deep() == back.deep());
    return in_millimetres(forth.deep());
  };
  CHECK(deeper(wet, millimetres(1.0)) == Approx(1.0));
  CHECK(stricter(tyre_at(3.0, {}), wet, millimetres(1.0)).reading_error() > Length());
  CHECK(deeper(wet, millimetres(0.3)) == Approx(1.0));
  CHECK(deeper(wet, millimetres(5.0)) == Approx(5.0));
  CHECK(deeper(wet, {}) == Approx(1.0));
  CHECK(deeper(millimetres(0.01), millimetres(0.02)) == Approx(0.02));
}

TEST_CASE("puddles on a road that is only wet are 3 mm by ruler") {
  for (const double tread : {1.6, 3.0, 8.0}) {
    const SpeedBand puddles = onset_in_puddles(tyre_at(tread, Water::by_word(Wetness::wet)));
    const SpeedBand three = band_of(tread, millimetres(3.0));
    CHECK(puddles.low == three.low);
    CHECK(puddles.central == three.central);
    CHECK(puddles.high == three.high);
  }
  CHECK(shallower_than_puddles(Water::by_word(Wetness::wet)));
  CHECK(shallower_than_puddles(millimetres(2.9)));
  CHECK_FALSE(shallower_than_puddles(millimetres(3.0)));
  CHECK_FALSE(shallower_than_puddles(Water::by_word(Wetness::standing)));
}

// ---- what was measured ----

namespace {

SpeedBand band_of(const OnsetEvidence& row, const Water& water) {
  return *aquaplaning_onset({row.pressure.value_or(kilopascals(220.0)), row.tread, 1.0,
                             row.section_width.value_or(millimetres(205.0)), water,
                             millimetres(0.7)});
}

}  // namespace

TEST_CASE(
    "every measured onset lies at or above the speed to hold to, at any depth it may have had") {
  for (const MeasuredOnset& row : measured_onsets()) {
    CAPTURE(std::string(row.id));
    const SpeedBand band = *aquaplaning_onset({kilopascals(220.0), row.tread, 1.0,
                                               row.section_width.value_or(millimetres(205.0)),
                                               row.film, millimetres(0.7)});
    CHECK(hold_to(band) <= in_kilometres_per_hour(row.low));
  }
  using enum OnsetEvidence::Says;
  for (const OnsetEvidence& row : further_onsets()) {
    if (row.says == not_afloat) continue;
    CAPTURE(std::string(row.id));
    CHECK(row.film <= row.film_to);
    // What was only said is said of the whole range of depths.
    const Water water = row.says == onset
                            ? Water(row.film)
                            : Water::between(row.film, (row.film + row.film_to) / 2.0, row.film_to);
    CHECK(hold_to(band_of(row, water)) <= in_kilometres_per_hour(row.low));
  }
}

TEST_CASE("further measured onsets lie in the band, but for the last tyre of nineteen") {
  for (const OnsetEvidence& row : further_onsets()) {
    if (row.says != OnsetEvidence::Says::onset) continue;
    CAPTURE(std::string(row.id));
    bool inside = false;
    for (const Length film : {row.film, row.film_to}) {
      const SpeedBand band = band_of(row, film);
      inside |= band.low <= row.low && row.high <= band.high;
    }
    CHECK(inside == (row.id != "N15"));
  }
}

TEST_CASE("what stopped on its tyres was not afloat by the central value, but for two rows") {
  int against = 0;
  for (const OnsetEvidence& row : further_onsets()) {
    if (row.says != OnsetEvidence::Says::not_afloat) continue;
    CAPTURE(std::string(row.id));
    const Speed central = band_of(row, row.film_to).central;
    // A central value that is none at road speeds contradicts no stop.
    const bool holds = central >= row.low || !floats_at_road_speed(central);
    CHECK(holds != row.contradicts);
    against += row.contradicts;
  }
  CHECK(against == 2);
  for (const OnsetEvidence& row : further_onsets())
    CHECK(row.contradicts == (row.id == "N22" || row.id == "T03 1.6 mm"));
}

TEST_CASE("the chance of floating is a fair one at every onset whose conditions are stated") {
  for (const OnsetEvidence& row : further_onsets()) {
    if (row.says != OnsetEvidence::Says::onset || row.film != row.film_to) continue;
    CAPTURE(std::string(row.id));
    const OnsetDraws draws({kilopascals(220.0), row.tread, 1.0,
                            row.section_width.value_or(millimetres(205.0)), row.film,
                            millimetres(0.7)});
    const double chance = draws.chance_of_floating((row.low + row.high) / 2.0);
    CHECK(chance > 0.3);
    CHECK(chance < 0.75);
  }
}
