// Water depth from rain: ranges, spreads and geometry; words of forecasts; ruts. The printed
// figures are in tests/register.
#include "core/water/film.hpp"

#include <algorithm>
#include <cmath>

#include "core/quantity/text.hpp"
#include "core/quantity/write.hpp"
#include "core/standard/rain_words.hpp"
#include "core/words/say.hpp"
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

TEST_CASE("each scale of rain runs on from word to word, and heavy rain has no end") {
  CHECK(standard::find_rain_word("us-heavy-rain")->high == std::nullopt);
  CHECK(standard::find_rain_word("drizzle") == nullptr);
  for (const auto& word : standard::rain_words())
    if (word.high && &word + 1 != standard::rain_words().end())
      CHECK((&word + 1)->low == *word.high);
}

TEST_CASE("a word of rain as a choice says its own scale and bounds") {
  for (const auto& word : standard::rain_words()) {
    const std::string from = trimmed(in_millimetres_per_hour(word.low), 1);
    const std::string range =
        word.high ? say("# to #", {from, trimmed(in_millimetres_per_hour(*word.high), 1)})
                  : "over " + from;
    CHECK(word.choice.english() ==
          say("#: # (# mm/h)", {std::string(word.scale == standard::RainScale::us ? "US" : "UK"),
                                word.label, range}));
  }
}
