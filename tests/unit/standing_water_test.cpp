// The sheet `standing-water`. The formulas under it are checked in tests/register.
#include <cmath>
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

bool no_speed(const Json& answer) {
  return !answer.contains("hold_to") && !answer.contains("no_limit");
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
  CHECK(shower.contains("no_limit"));
}

TEST_CASE("beyond the reach of the film formulas more may stand: never none, never less") {
  for (const Json& input : {Json{{"rain", "200 mm/h"}, {"surface", "loose"}},
                            Json{{"forecast", "uk-violent-shower"}, {"surface", "loose"}},
                            Json{{"rain", "1 mm/h"}, {"crossfall", "0.1"}}}) {
    const Json answer = ask(input);
    CHECK(with_id(answer["cautions"], "film_unknown"));
    CHECK_FALSE(with_id(answer["cautions"], "no_dynamic_aquaplaning"));
    CHECK(answer["verdict"]["level"] == "care");
    CHECK(no_speed(answer));
    if (const Json* radio = with_id(answer["blocks"], "radio"))
      CHECK((*radio)["text"].get<std::string>().find("damp road") == std::string::npos);
  }
  const auto held = [](const Json& input) {
    const Json answer = ask(input);
    CHECK(with_id(answer["cautions"], "film_unknown"));
    return hold_to(answer);
  };
  CHECK(held({{"rain", "200 mm/h"}}) == hold_to(ask({{"rain", "150 mm/h"}})));
  CHECK(held({{"rain", "100 mm/h"}, {"crossfall", "0.1"}}) ==
        hold_to(ask({{"rain", "100 mm/h"}, {"crossfall", "0.5"}})));
  CHECK(held({{"rain", "100 mm/h"}, {"path", "90 m"}}) ==
        hold_to(ask({{"rain", "100 mm/h"}, {"path", "50 m"}})));
  const double level = held({{"rain", "100 mm/h"}, {"crossfall", "0"}});
  CHECK(level <= hold_to(ask({{"rain", "100 mm/h"}, {"crossfall", "0.5"}})));
  CHECK(level == held({{"rain", "100 mm/h"}, {"crossfall", "0"}, {"grade", "0.5"}}));
  // On top of what the rut holds.
  CHECK(held({{"rain", "200 mm/h"}, {"rut", "8 mm"}}) <= hold_to(ask({{"rut", "8 mm"}})));
  CHECK(held({{"rain", "200 mm/h"}, {"rut", "8 mm"}, {"surface", "loose"}}) ==
        hold_to(ask({{"rut", "8 mm"}, {"surface", "loose"}})));
  const Json said = ask({{"rain", "200 mm/h"}});
  CHECK((*with_id(said["blocks"], "radio"))["text"].get<std::string>().find(" or more") !=
        std::string::npos);
  // Less rain, or a steeper fall, than the formulas reach to leaves no more than at their end.
  for (const Json& input :
       {Json{{"rain", "0.2 mm/h"}}, Json{{"rain", "4 mm/h"}, {"crossfall", "12"}}}) {
    CHECK(ask(input)["verdict"]["level"] == "fit");
    CHECK_FALSE(with_id(ask(input)["cautions"], "film_unknown"));
  }
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
  CHECK(no_speed(wrong));
}

TEST_CASE("moving water and deep water are not entered, whatever the tyre") {
  for (const Json& input : {Json{{"depth", "30 mm"}, {"moving", "yes"}}, Json{{"depth", "100 mm"}},
                            Json{{"depth", "600 mm"}, {"vehicle", "four-wheel"}}}) {
    const Json answer = ask(input);
    CHECK(hold_to(answer) == 0.0);
    CHECK(answer["hold_to"]["governed_by"] == "crossing");
    CHECK(answer["verdict"]["level"] == "unfit");
    CHECK(with_id(answer["cautions"], "do_not_enter"));
    CHECK_FALSE(with_id(answer["limits"], "aquaplaning"));
    CHECK_FALSE(with_id(answer["limits"], "puddles"));
  }
  CHECK(hold_to(ask({{"depth", "95 mm"}})) > 0.0);
}

TEST_CASE("moving water is refused whatever its depth, and where none was given") {
  for (const Json& input : {Json{{"moving", "yes"}}, Json{{"moving", "yes"}, {"depth", "0"}},
                            Json{{"moving", "yes"}, {"rain", "4 mm/h"}}}) {
    const Json answer = ask(input);
    REQUIRE(answer["ok"] == true);
    CHECK(answer["verdict"]["level"] == "unfit");
    CHECK(hold_to(answer) == 0.0);
    CHECK(with_id(answer["cautions"], "do_not_enter"));
    CHECK(with_id(answer["cautions"], "depth_not_known"));
    CHECK_FALSE(with_id(answer["cautions"], "no_dynamic_aquaplaning"));
    const std::string said = (*with_id(answer["blocks"], "radio"))["text"];
    CHECK(said.find("oving water. Do not enter") != std::string::npos);
  }
  const Json read = ask({{"moving", "yes"}, {"depth", "30 mm"}});
  CHECK_FALSE(with_id(read["cautions"], "depth_not_known"));
}

TEST_CASE("one slick in the field is held to nothing, and so is all that comes") {
  const Json answer =
      ask({{"depth", "3 mm"}, {"tyres", {tyre("road", "8 mm"), tyre("slick", "0")}}});
  CHECK(hold_to(answer) == 0.0);
  CHECK(answer["hold_to"]["governed_by"] == "slick_in_water");
  CHECK(answer["hold_to"]["text"] == "Do not drive into it");
  const Json& rows = (*with_id(answer["blocks"], "field"))["rows"];
  CHECK(rows[0][1] == "do not enter");
  CHECK(rows[1][1] != "do not enter");
}

TEST_CASE("a speed at which it floats in one case of four or more is unfit, and so is any above") {
  bool unfit = false;
  for (int v = 5; v <= 80; v += 1) {
    const Json answer = ask({{"depth", "8 mm"}, {"speed", std::to_string(v) + " km/h"}});
    const double chance = (*with_id(answer["figures"], "chance"))["value"];
    INFO(v);
    if (unfit || chance >= 0.25) CHECK(answer["verdict"]["level"] == "unfit");
    unfit = answer["verdict"]["level"] == "unfit";
    CHECK(unfit == (chance >= 0.25));
  }
  CHECK(unfit);
}

TEST_CASE("a slick in standing water is unfit; the speed intended is judged by its chance") {
  CHECK(ask({{"depth", "3 mm"}, {"tyres", {tyre("slick", "0")}}})["verdict"]["level"] == "unfit");
  const Json both = ask(
      {{"depth", "3 mm"},
       {"tyres",
        {tyre("slick", "0"), {{"tyre_kind", "road"}, {"tread", "0"}, {"pressure", "60 kPa"}}}}});
  CHECK(with_id(both["cautions"], "slick_in_water"));
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

TEST_CASE("the chart of the onset is drawn up to 180 km/h, and its table says none above") {
  const Json answer = ask({{"wetness", "downpour"}, {"tyres", {tyre("road", "8 mm")}}});
  const Json* chart = with_id(answer["blocks"], "onset");
  REQUIRE(chart);
  double highest = 0.0;
  for (const Json& series : (*chart)["series"])
    for (const char* end : {"y", "high"})
      if (series.contains(end))
        for (const Json& y : series[end]) highest = std::max(highest, y.get<double>());
  CHECK(highest == 180.0);
  CHECK((*chart)["rows"].front().back() == "none");
  // The mark stands in the middle of what the word means, on the central value.
  CHECK((*chart)["marks"][0]["x"] == 1.5);
  CHECK((*chart)["marks"][0]["y"] == answer["limits"][0]["kmh"]);
  REQUIRE(with_id(answer["blocks"], "chance"));
  CHECK((*with_id(answer["blocks"], "chance"))["text"].get<std::string>().find("1 mm to 2 mm") !=
        std::string::npos);
}

TEST_CASE("where no tyre of the field aquaplanes, no chance is drawn and no limit is listed") {
  const Json answer = ask({{"depth", "0.3 mm"}, {"tyres", {tyre("road", "8 mm")}}});
  CHECK(answer["verdict"]["level"] == "fit");
  CHECK(answer["verdict"]["text"] == "Passable, as far as these readings tell.");
  CHECK_FALSE(with_id(answer["blocks"], "chance"));
  CHECK_FALSE(with_id(answer["cautions"], "when_it_floats"));
  CHECK((*with_id(answer["blocks"], "field"))["rows"][0][1] == "no limit here");
  const Json both =
      ask({{"depth", "0.3 mm"}, {"tyres", {tyre("road", "8 mm"), tyre("road", "1.6 mm")}}});
  const Json& rows = (*with_id(both["blocks"], "field"))["rows"];
  CHECK(rows[0][1] == both["hold_to"]["text"]);
  CHECK(rows[1][1] == "no limit here");
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

TEST_CASE(
    "a slick is told not to enter, with no speed; a speed too high as intended is told the other") {
  const auto said = [](const Json& answer) {
    CHECK(answer["verdict"]["level"] == "unfit");
    return (*with_id(answer["blocks"], "radio"))["text"].get<std::string>();
  };
  const std::string slick = said(ask({{"depth", "5 mm"}, {"tyres", {tyre("slick", "0")}}}));
  CHECK(slick.find("do not enter") != std::string::npos);
  CHECK(slick.find("Hold to") == std::string::npos);
  const std::string fast =
      said(ask({{"depth", "5 mm"}, {"speed", "140 km/h"}, {"tyres", {tyre("road", "8 mm")}}}));
  CHECK(fast.find("Hold to") != std::string::npos);
}

TEST_CASE(
    "the speed intended is judged by the tyre likeliest to float at it, whichever has the lowest "
    "end") {
  const auto chance = [](const char* depth, const char* speed, const std::vector<Json>& tyres) {
    return (*with_id(ask({{"depth", depth}, {"speed", speed}, {"tyres", tyres}})["figures"],
                     "chance"))["value"]
        .get<double>();
  };
  // Nor the lowest central value: of these the full one is the likelier to float at 34 km/h.
  const Json full = {{"tyre_kind", "road"}, {"tread", "3.6 mm"}, {"pressure", "69 kPa"}};
  const Json bald = {{"tyre_kind", "road"}, {"tread", "0.7 mm"}, {"pressure", "370 kPa"}};
  REQUIRE(chance("7.2 mm", "34 km/h", {full}) > 0.25);
  REQUIRE(chance("7.2 mm", "34 km/h", {bald}) < 0.25);
  CHECK(chance("7.2 mm", "34 km/h", {full, bald}) == chance("7.2 mm", "34 km/h", {full}));
  CHECK(ask({{"depth", "7.2 mm"},
             {"speed", "34 km/h"},
             {"tyres", {full, bald}}})["verdict"]["level"] == "unfit");
  // The soft road tyre is likelier to float at 41 km/h; the low end of the cut slick is lower.
  const Json soft = {{"tyre_kind", "road"}, {"tread", "1.7 mm"}, {"pressure", "129 kPa"}};
  const Json cut = {{"tyre_kind", "cut-slick"}, {"tread", "1.6 mm"}, {"pressure", "284 kPa"}};
  const Json one = ask({{"depth", "9.33 mm"}, {"speed", "41 km/h"}, {"tyres", {soft}}});
  const Json both = ask({{"depth", "9.33 mm"}, {"speed", "41 km/h"}, {"tyres", {soft, cut}}});
  CHECK(both["limits"][0]["label"].get<std::string>().find("ut slick") != std::string::npos);
  CHECK(one["verdict"]["level"] == "unfit");
  CHECK(both["verdict"]["level"] == "unfit");
  CHECK((*with_id(both["figures"], "chance"))["value"] ==
        (*with_id(one["figures"], "chance"))["value"]);
}

TEST_CASE("a wheel that has stopped turns again only below the onset, at 7.7 to 9 of it") {
  const Json answer = ask({{"depth", "8 mm"}});
  const double low = answer["limits"][0]["low_kmh"];
  const Json* caution = with_id(answer["cautions"], "when_it_floats");
  REQUIRE(caution);
  const std::string told =
      "down to about " + std::to_string(std::lround(low * 7.7 / 9.0)) + " km/h";
  INFO((*caution)["text"]);
  CHECK((*caution)["text"].get<std::string>().find(told) != std::string::npos);
}
