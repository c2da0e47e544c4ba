// Water depth from rain, reproduced to the printed digit; words of forecasts; ruts. The standing of
// each source is in core/water/film.cpp and core/standard/rain_words.cpp.
#include "core/water/film.hpp"

#include <algorithm>
#include <cmath>

#include "core/standard/rain_words.hpp"
#include "tests/support/catch.hpp"

using namespace treadwater;
using namespace treadwater::water;
using namespace treadwater::testing;

namespace {

RainOnRoad road(double texture_mm, double path_m, double rain_mmh, double slope) {
  RainOnRoad r;
  r.rain = millimetres_per_hour(rain_mmh);
  r.path = {metres(path_m), slope};
  r.texture = millimetres(texture_mm);
  return r;
}

double film_mm(FilmModel model, const RainOnRoad& r) {
  return in_millimetres(film_depth(model, r).value());
}

double from_base_mm(FilmModel model, const RainOnRoad& r) {
  return film_mm(model, r) + in_millimetres(r.texture);
}

}  // namespace

// Secondary (the 1979 fit, US and metric), memory (the earlier fit); worked by hand.
TEST_CASE("FHWA-RD-79-31: water depths in US and metric units, and by the earlier fit") {
  struct Row {
    double texture_in, path_ft, rain_inh, slope, us_in, us_mm, earlier_in, metric_mm;
  };
  const Row rows[] = {
      {0.038, 24, 1, 0.02, 0.0098, 0.250, 0.0155, 0.248},
      {0.030, 24, 2, 0.02, 0.0402, 1.020, 0.0467, 1.018},
      {0.060, 36, 4, 0.01, 0.1215, 3.087, 0.1362, 3.081},
  };
  for (const Row& row : rows) {
    RainOnRoad r;
    r.rain = inches_per_hour(row.rain_inh);
    r.path = {metres(row.path_ft * exact::metres_per_foot), row.slope};
    r.texture = inches(row.texture_in);
    CHECK_THAT(in_inches(*film_depth(FilmModel::fhwa, r)), WithinAbs(row.us_in, 0.00005));
    CHECK_THAT(film_mm(FilmModel::fhwa, r), WithinAbs(row.us_mm, 0.0005));
    CHECK_THAT(in_inches(*film_depth(FilmModel::fhwa_earlier_fit, r)),
               WithinAbs(row.earlier_in, 0.00005));
    CHECK_THAT(film_mm(FilmModel::fhwa_metric, r), WithinAbs(row.metric_mm, 0.0005));
  }
}

// Memory, worked by hand. Depths from the base of the texture, as the report has them.
TEST_CASE("Road Research Laboratory LR 236: 0.1895, 0.2319 and 0.1640 cm, and in metric units") {
  const double rows[][5] = {{7.3, 50, 1.0 / 40, 0.1895, 1.838},
                            {10, 50, 1.0 / 50, 0.2319, 2.249},
                            {10, 25, 1.0 / 50, 0.1640, 1.590}};
  for (const auto& row : rows) {
    const RainOnRoad r = road(0.7, row[0], row[1], row[2]);
    CHECK_THAT(from_base_mm(FilmModel::road_research, r) / 10.0, WithinAbs(row[3], 0.00005));
    CHECK_THAT(from_base_mm(FilmModel::road_research_metric, r), WithinAbs(row[4], 0.0005));
  }
}

// Worked by hand. The last column is the depth from the base.
TEST_CASE("four formulas for the film side by side, to three decimals") {
  const double rows[][8] = {
      {0.7, 7.3, 2, 0.025, -0.462, -0.461, -0.474, 0.368},
      {0.7, 7.3, 4, 0.025, -0.342, -0.341, -0.358, 0.520},
      {0.7, 7.3, 10, 0.025, -0.085, -0.084, -0.107, 0.822},
      {0.7, 7.3, 25, 0.025, 0.356, 0.358, 0.327, 1.300},
      {0.7, 7.3, 50, 0.025, 0.889, 0.893, 0.857, 1.838},
      {0.7, 14.6, 50, 0.010, 2.446, 2.454, 2.406, 3.122},
      {1.5, 7.3, 50, 0.025, 0.228, 0.233, 0.057, 1.838},
      {0.4, 11, 50, 0.005, 3.104, 3.113, 2.827, 3.113},
      {0.7, 10, 50, 0.020, 1.298, 1.303, 1.310, 2.249},
      {0.91, 10, 50, 0.020, 1.147, 1.152, 1.100, 2.249},
  };
  for (const auto& row : rows) {
    const RainOnRoad r = road(row[0], row[1], row[2], row[3]);
    INFO(row[0] << " mm, " << row[1] << " m, " << row[2] << " mm/h, " << row[3]);
    CHECK_THAT(film_mm(FilmModel::fhwa_metric, r), WithinAbs(row[4], 0.0005));
    CHECK_THAT(film_mm(FilmModel::fhwa_percent, r), WithinAbs(row[5], 0.0005));
    CHECK_THAT(film_mm(FilmModel::kinematic, r), WithinAbs(row[6], 0.0005));
    CHECK_THAT(from_base_mm(FilmModel::road_research_metric, r), WithinAbs(row[7], 0.0005));
    CHECK(std::fabs(film_mm(FilmModel::fhwa_metric, r) - film_mm(FilmModel::kinematic, r)) < 0.3);
  }
}

// q = S^0.5 h^(5/3) / n in metres and seconds: the constant is 36.0 where 36.1 is quoted.
TEST_CASE("the kinematic form is Manning's sheet flow in metric units") {
  RainOnRoad r = road(0.91, 10, 50, 0.02);
  const double flow = 10.0 * 50.0 / 3.6e6;
  for (const auto& [pavement, n] :
       {std::pair(Pavement::concrete, 0.031), std::pair(Pavement::dense_asphalt, 0.0327),
        std::pair(Pavement::open_graded_asphalt, 0.0355)}) {
    r.pavement = pavement;
    const double by_theory = 1000.0 * std::pow(n * flow / std::sqrt(0.02), 0.6);
    CHECK_THAT(from_base_mm(FilmModel::kinematic, r) / by_theory,
               WithinAbs(std::pow(36.0 / 36.1, 0.6), 0.0005));
  }
}

TEST_CASE(
    "British heavy rain leaves no film on a plain cambered road; 50 mm/h on a flat one does") {
  const auto plain = rain_film(road(0.7, 7.3, 4.0, 0.025)).value();
  CHECK(plain.high < metres(0.0));
  const auto flat = rain_film(road(0.7, 14.6, 50.0, 0.010)).value();
  CHECK(flat.low > millimetres(2.0));
  CHECK(flat.high < millimetres(4.0));
}

TEST_CASE("the spread holds the four independent formulas, the central one that of 1979") {
  const RainOnRoad r = road(0.7, 10, 50, 0.02);
  const RainFilm film = rain_film(r).value();
  CHECK(film.central == *film_depth(FilmModel::fhwa, r));
  const double depths[] = {film_mm(FilmModel::fhwa, r), film_mm(FilmModel::fhwa_earlier_fit, r),
                           film_mm(FilmModel::road_research, r), film_mm(FilmModel::kinematic, r)};
  CHECK(in_millimetres(film.low) == *std::min_element(std::begin(depths), std::end(depths)));
  CHECK(in_millimetres(film.high) == *std::max_element(std::begin(depths), std::end(depths)));
}

TEST_CASE("outside its range a formula is switched off") {
  CHECK_FALSE(rain_film(road(0.7, 10, 0.0, 0.02)));
  CHECK_FALSE(rain_film(road(0.7, 10, 200, 0.02)));
  CHECK_FALSE(rain_film(road(0.7, 60, 50, 0.02)));
  CHECK_FALSE(rain_film(road(0.7, 10, 50, 0.0)));
  CHECK_FALSE(rain_film(road(0.7, 10, 50, 0.2)));
  CHECK_FALSE(rain_film(road(0.0, 10, 50, 0.02)));
  CHECK_FALSE(rain_film(road(0.7, 10, std::nan(""), 0.02)));
  RainOnRoad level = road(0.7, 10, 50, 0.02);
  level.path = flow_path(metres(7.3), 0.0, 0.03);
  CHECK_FALSE(rain_film(level));
}

TEST_CASE("a gradient lengthens the way that water takes across a road") {
  const FlowPath across = flow_path(metres(7.3), 0.025, 0.0);
  CHECK_THAT(in_metres(across.length), WithinAbs(7.3, 1e-12));
  CHECK(across.slope == 0.025);
  const FlowPath down = flow_path(metres(7.3), -0.03, 0.04);  // 3, 4, 5
  CHECK_THAT(down.slope, WithinAbs(0.05, 1e-12));
  CHECK_THAT(in_metres(down.length), WithinAbs(7.3 * 5.0 / 3.0, 1e-9));
}

TEST_CASE("a rut holds its depth less what the crossfall drains") {
  const auto mm = [](double depth, double width, double crossfall) {
    return in_millimetres(rut_water(millimetres(depth), millimetres(width), crossfall));
  };
  CHECK_THAT(mm(20, 800, 0.0), WithinAbs(20.0, 1e-9));
  CHECK_THAT(mm(20, 800, 0.025), WithinAbs(20.0 * 0.5625, 1e-9));  // (1 - 20/80)^2
  CHECK_THAT(mm(20, 800, -0.025), WithinAbs(mm(20, 800, 0.025), 1e-12));
  CHECK(mm(5, 800, 0.025) == 0.0);
  CHECK(mm(4, 800, 0.025) == 0.0);
  CHECK(mm(0, 800, 0.0) == 0.0);
  // The deepest point of a parabola tilted, found by trying.
  for (const double fall : {0.01, 0.02, 0.04}) {
    double deepest = 0.0;
    for (double x = 0.0; x <= 800.0; x += 0.5)
      deepest = std::max(deepest, 4.0 * 20.0 * x * (800.0 - x) / (800.0 * 800.0) - fall * x);
    CHECK_THAT(mm(20, 800, fall), WithinAbs(deepest, 0.001));
  }
}

// Secondary (British), published (American).
TEST_CASE("heavy rain starts at 4 mm/h in Britain and at 7.6 mm/h in America") {
  using standard::RainScale;
  const auto id = [](RainScale scale, double rate) {
    const auto* word = standard::rain_word(scale, millimetres_per_hour(rate));
    return word ? word->id : "none";
  };
  CHECK(id(RainScale::uk_rain, 0.0) == "none");
  CHECK(id(RainScale::uk_rain, 0.5) == "uk-slight-rain");
  CHECK(id(RainScale::uk_rain, 4.0) == "uk-moderate-rain");
  CHECK(id(RainScale::uk_rain, 4.1) == "uk-heavy-rain");
  CHECK(id(RainScale::uk_showers, 1.9) == "uk-slight-shower");
  CHECK(id(RainScale::uk_showers, 10.0) == "uk-moderate-shower");
  CHECK(id(RainScale::uk_showers, 50.0) == "uk-heavy-shower");
  CHECK(id(RainScale::uk_showers, 51.0) == "uk-violent-shower");
  CHECK(id(RainScale::us, 2.5) == "us-light-rain");
  CHECK(id(RainScale::us, 7.6) == "us-moderate-rain");
  CHECK(id(RainScale::us, 7.7) == "us-heavy-rain");
  CHECK(standard::find_rain_word("us-heavy-rain")->high == std::nullopt);
  CHECK(standard::find_rain_word("drizzle") == nullptr);
  // Each scale runs on from word to word.
  for (const auto& word : standard::rain_words())
    if (word.high && &word + 1 != standard::rain_words().end())
      CHECK((&word + 1)->low == *word.high);
}
