// The sheet `standing-water`. The formulas under it are checked in tests/register.
#include <nlohmann/json.hpp>

#include "core/json/contract.hpp"
#include "tests/support/catch.hpp"

using Json = nlohmann::json;
using treadwater::testing::Approx;

namespace {

Json ask(Json input) {
  input["today"] = "2026-11-25";
  return Json::parse(treadwater::json::answer("standing-water", input.dump()));
}

const Json* with_id(const Json& rows, const std::string& id) {
  for (const Json& row : rows)
    if (row["id"] == id) return &row;
  return nullptr;
}

double hold_to(const Json& answer) {
  REQUIRE(answer.contains("hold_to"));
  return answer["hold_to"]["kmh"];
}

Json tyre(const char* kind, const char* tread) {
  return {{"tyre_kind", kind}, {"tread", tread}, {"pressure", "220 kPa"}};
}

}  // namespace

TEST_CASE("the worst tyre of the field governs, and is listed first") {
  const Json answer =
      ask({{"depth", "8 mm"}, {"tyres", {tyre("road", "8 mm"), tyre("road", "1.6 mm")}}});
  REQUIRE(answer["ok"] == true);
  const Json& limit = answer["limits"][0];
  CHECK(limit["id"] == "aquaplaning");
  CHECK(limit["label"].get<std::string>().find("1.6 mm") != std::string::npos);
  CHECK(hold_to(answer) == hold_to(ask({{"depth", "8 mm"}, {"tyres", {tyre("road", "1.6 mm")}}})));
  const Json* table = with_id(answer["blocks"], "field");
  REQUIRE(table);
  CHECK((*table)["rows"].size() == 2);
  CHECK((*table)["rows"][0][0].get<std::string>().find("1.6 mm") != std::string::npos);
}

TEST_CASE("one tyre has the same onset here as on the sheet for one tyre") {
  const Json here = ask({{"depth", "5 mm"},
                         {"tyres",
                          {{{"tyre_kind", "road"},
                            {"tread", "3 mm"},
                            {"pressure", "220 kPa"},
                            {"width", "205 mm"}}}}});
  const Json there = Json::parse(treadwater::json::answer(
      "tyre-check",
      R"({"size":"205/55 R16 91V","load":"430 kg","pressure":"220 kPa","tread":"3 mm","water":"5 mm","today":"2026-11-25"})"));
  for (const char* end : {"kmh", "low_kmh", "high_kmh"})
    CHECK(here["limits"][0][end].get<double>() ==
          Approx((*with_id(there["limits"], "aquaplaning"))[end].get<double>()));
}

TEST_CASE("no tyre named: a worn one stands for all, aloud") {
  const Json answer = ask({{"depth", "8 mm"}});
  CHECK(with_id(answer["cautions"], "tyre_assumed"));
  CHECK(hold_to(answer) <= 30.0);
}

TEST_CASE("rain: a film by four formulas, the deepest taken; ordinary rain leaves none") {
  const Json cloudburst = ask({{"rain", "80 mm/h"}, {"path", "14 m"}, {"crossfall", "1"}});
  REQUIRE(cloudburst["ok"] == true);
  int films = 0;
  for (const Json& figure : cloudburst["figures"]) films += figure["id"] == "film" ? 1 : 0;
  CHECK(films == 4);
  const Json* film = with_id(cloudburst["figures"], "film_depth");
  REQUIRE(film);
  CHECK((*film)["low"] <= (*film)["value"]);
  CHECK((*film)["value"] <= (*film)["high"]);
  CHECK(with_id(cloudburst["cautions"], "rain_seldom_deep"));

  const Json shower = ask({{"rain", "4 mm/h"}});
  CHECK(with_id(shower["cautions"], "no_dynamic_aquaplaning"));
  CHECK(shower["verdict"]["level"] == "fit");
  CHECK_FALSE(shower.contains("hold_to"));
}

TEST_CASE("a forecast's word shows its mm/h; an open one is doubled and said") {
  const Json heavy = ask({{"forecast", "uk-heavy-shower"}, {"rut", "10 mm"}});
  CHECK((*with_id(heavy["figures"], "rain_word"))["text"] == "10 to 50 mm/h");
  CHECK(with_id(ask({{"forecast", "us-heavy-rain"}, {"rut", "10 mm"}})["cautions"],
                "rain_open_ended"));
}

TEST_CASE("a ruler's reading comes before the rain; neither is a problem that names the field") {
  const Json answer = ask({{"depth", "8 mm"}, {"rain", "80 mm/h"}});
  CHECK_FALSE(with_id(answer["figures"], "film"));
  const Json nothing = ask(Json::object());
  REQUIRE(nothing["problems"].size() == 1);
  CHECK(nothing["problems"][0]["field"] == "depth");
  const Json wrong = ask({{"depth", "8 kg"}, {"rain", "80 mm/h"}});
  CHECK(wrong["problems"].size() == 1);
  CHECK_FALSE(wrong.contains("hold_to"));
}

TEST_CASE("moving water and deep water are not entered, whatever the tyre") {
  for (const Json& input : {Json{{"depth", "30 mm"}, {"moving", "yes"}}, Json{{"depth", "100 mm"}},
                            Json{{"depth", "600 mm"}, {"vehicle", "four-wheel"}}}) {
    const Json answer = ask(input);
    CHECK(hold_to(answer) == 0.0);
    CHECK(answer["verdict"]["level"] == "unfit");
    CHECK(with_id(answer["cautions"], "do_not_enter"));
    CHECK_FALSE(with_id(answer["limits"], "aquaplaning"));
  }
  CHECK(hold_to(ask({{"depth", "95 mm"}})) > 0.0);
}

TEST_CASE("a slick in standing water is unfit; the speed intended is judged by its chance") {
  CHECK(ask({{"depth", "3 mm"}, {"tyres", {tyre("slick", "0")}}})["verdict"]["level"] == "unfit");
  const Json fast =
      ask({{"depth", "8 mm"}, {"speed", "110 km/h"}, {"tyres", {tyre("road", "3 mm")}}});
  CHECK((*with_id(fast["figures"], "chance"))["value"] > 0.9);
  CHECK(fast["verdict"]["level"] == "unfit");
  const Json slow =
      ask({{"depth", "8 mm"}, {"speed", "30 km/h"}, {"tyres", {tyre("road", "3 mm")}}});
  CHECK((*with_id(slow["figures"], "chance"))["value"] < 0.05);
}

TEST_CASE(
    "the chart marks where one is, on the curve of the worst tyre, and a table lies behind it") {
  const Json answer = ask({{"depth", "8 mm"}, {"tyres", {tyre("road", "3 mm")}}});
  const Json* chart = with_id(answer["blocks"], "onset");
  REQUIRE(chart);
  CHECK((*chart)["series"].size() == 5);
  CHECK((*chart)["marks"][0]["y"] == answer["limits"][0]["kmh"]);
  CHECK((*chart)["rows"].size() > 3);
  const Json* map = with_id(answer["blocks"], "tread_and_water");
  REQUIRE(map);
  CHECK((*map)["values"].size() == (*map)["ys"].size());
}

TEST_CASE("the radio sentence: place, depth, length, worst tyre, speed, what to do") {
  const Json answer = ask({{"where", "Long Meadow"},
                           {"depth", "8 mm"},
                           {"pool", "12 m"},
                           {"wheels", "one"},
                           {"tyres", {tyre("road", "3 mm")}}});
  const std::string said = (*with_id(answer["blocks"], "radio"))["text"];
  for (const char* part : {"Long Meadow", "8 mm", "12 m", "one side", "3 mm", "kilometres an hour"})
    CHECK(said.find(part) != std::string::npos);
  const Json stop = ask({{"depth", "300 mm"}});
  CHECK((*with_id(stop["blocks"], "radio"))["text"].get<std::string>().find("Do not enter") !=
        std::string::npos);
}
