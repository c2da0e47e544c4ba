// The sheet `stopping`. Friction, stops and bends are checked against print in tests/register.
#include <cmath>
#include <nlohmann/json.hpp>

#include "core/json/contract.hpp"
#include "core/sheets/sources.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/sheets.hpp"

using Json = nlohmann::json;
using treadwater::testing::Approx;

namespace {

Json ask(Json input) {
  input["today"] = "2026-11-25";
  return Json::parse(treadwater::json::answer("stopping", input.dump()));
}

const Json* with_id(const Json& rows, const std::string& id) {
  for (const Json& row : rows)
    if (row["id"] == id) return &row;
  return nullptr;
}

double value(const Json& answer, const std::string& id) {
  const Json* figure = with_id(answer["figures"], id);
  REQUIRE(figure);
  return (*figure)["value"];
}

}  // namespace

TEST_CASE("thinking and braking make up the stop, and reaction is the driver's own") {
  const Json answer = ask({{"speed", "72 km/h"}, {"reaction", "1.5 s"}});
  REQUIRE(answer["ok"] == true);
  CHECK(value(answer, "thinking") == Approx(30.0));
  CHECK(value(answer, "stopping") == Approx(value(answer, "thinking") + value(answer, "braking")));
  CHECK(value(ask({{"speed", "72 km/h"}}), "thinking") == Approx(50.0));  // 2.5 s
  CHECK(answer["verdict"]["level"] == "fit");
}

TEST_CASE("rule 126 at 50 mph is 53 m, beside our own stop") {
  CHECK(value(ask({{"speed", "50 mph"}}), "highway_code") == Approx(53.0).margin(0.5));
}

TEST_CASE("wetter, more worn, downhill, slicker ground: each lengthens the stop") {
  const Json base = {{"speed", "80 km/h"}, {"tread", "8 mm"}};
  const auto stop = [&](Json change) {
    Json input = base;
    input.update(change);
    return value(ask(input), "stopping");
  };
  const double dry = stop(Json::object());
  CHECK(stop({{"wetness", "wet"}}) > dry);
  CHECK(stop({{"wetness", "wet"}, {"tread", "1.6 mm"}}) > stop({{"wetness", "wet"}}));
  CHECK(stop({{"grade", "-8"}}) > dry);
  CHECK(stop({{"grade", "8"}}) < dry);
  CHECK(stop({{"surface", "ice-cold"}}) > stop({{"surface", "snow"}}));
}

TEST_CASE("what can be seen limits the speed; the stop from there is as long as the sight") {
  const Json answer = ask({{"speed", "100 km/h"}, {"seen", "60 m"}, {"reaction", "1.5 s"}});
  const Json* limit = with_id(answer["limits"], "seen_distance");
  REQUIRE(limit);
  CHECK(answer["hold_to"]["governed_by"] == "seen_distance");
  const double kmh = (*limit)["low_kmh"];
  const Json there = ask({{"speed", std::to_string(kmh) + " km/h"}, {"reaction", "1.5 s"}});
  CHECK((*with_id(there["figures"], "stopping"))["high"].get<double>() == Approx(60.0).margin(0.6));
  CHECK(with_id(answer["cautions"], "too_fast"));
  CHECK(answer["verdict"]["level"] == "unfit");
}

TEST_CASE("a grade steeper than the grip: it will not stop, which is an answer") {
  const Json answer = ask({{"speed", "30 km/h"}, {"surface", "ice"}, {"grade", "-30"}});
  REQUIRE(answer["ok"] == true);
  CHECK(with_id(answer["cautions"], "will_not_stop"));
  CHECK(answer["verdict"]["level"] == "unfit");
  CHECK(answer["verdict"]["text"].get<std::string>().find("will not stop") != std::string::npos);
}

TEST_CASE("a bend from chord and sagitta is the bend of its radius") {
  // R = c^2 / 8 s + s / 2
  const Json paced = ask({{"speed", "60 km/h"}, {"chord", "20 m"}, {"sagitta", "1 m"}});
  const Json known = ask({{"speed", "60 km/h"}, {"radius", "50.5 m"}});
  CHECK(value(paced, "radius") == Approx(50.5));
  CHECK((*with_id(paced["limits"], "bend"))["kmh"].get<double>() ==
        Approx((*with_id(known["limits"], "bend"))["kmh"].get<double>()));
  CHECK(value(known, "braking_left") < 100.0);
}

TEST_CASE("standing water: the onset of floating caps what friction promises") {
  const Json answer = ask({{"speed", "100 km/h"}, {"water", "5 mm"}, {"tread", "3 mm"}});
  CHECK(answer["hold_to"]["governed_by"] == "aquaplaning");
  CHECK(with_id(answer["cautions"], "floats"));
  CHECK_FALSE(with_id(ask({{"speed", "100 km/h"}, {"wetness", "damp"}})["limits"], "aquaplaning"));
}

TEST_CASE("a word for water is no better than the same film by a ruler") {
  const std::pair<const char*, const char*> films[] = {{"wet", "0.5 mm"}, {"standing", "2.5 mm"}};
  for (const auto& film : films)
    for (const char* speed : {"60 km/h", "80 km/h", "110 km/h"})
      for (const char* tread : {"0", "1.6 mm", "8 mm"}) {
        const Json by_word = ask({{"speed", speed}, {"tread", tread}, {"wetness", film.first}});
        const Json by_ruler = ask({{"speed", speed}, {"tread", tread}, {"water", film.second}});
        CHECK(by_word["hold_to"]["kmh"] == by_ruler["hold_to"]["kmh"]);
        CHECK(by_word["verdict"] == by_ruler["verdict"]);
      }
}

TEST_CASE("on a road that is only wet the stop is told as long as floating is not likely") {
  const Json input = {{"speed", "80 km/h"}, {"wetness", "wet"}, {"tread", "1.6 mm"}};
  const Json answer = ask(input);
  CHECK(answer["verdict"]["level"] == "care");
  CHECK((*with_id(answer["cautions"], "floats"))["level"] == "care");
  CHECK(answer["verdict"]["text"].get<std::string>().find("stops in about") != std::string::npos);
  CHECK((*with_id(answer["figures"], "stopping"))["note"] == "Only if it does not float.");
  const auto told = [&](const Json& change) {
    Json other = input;
    other.update(change);
    return ask(other)["verdict"]["text"].get<std::string>().find("stops in") != std::string::npos;
  };
  CHECK(told({{"wetness", "dry"}, {"water", "1 mm"}}));
  CHECK_FALSE(told({{"wetness", "dry"}, {"water", "1.1 mm"}}));
  CHECK_FALSE(told({{"tread", "1.5 mm"}}));
  CHECK_FALSE(told({{"speed", "110 km/h"}}));
}

TEST_CASE("a ruler that finds less than the word dries no road") {
  const Json base = {{"speed", "80 km/h"}, {"tread", "1.6 mm"}, {"seen", "100 m"}};
  for (const char* word : {"damp", "wet", "standing"}) {
    Json said = base;
    said["wetness"] = word;
    Json both = said;
    both["water"] = "0";
    const Json answer = ask(both);
    CHECK(answer["hold_to"]["kmh"] == ask(said)["hold_to"]["kmh"]);
    CHECK(answer["verdict"] == ask(said)["verdict"]);
    CHECK(with_id(answer["cautions"], "wetter_than_measured"));
    both["water"] = "4 mm";
    CHECK(ask(both)["hold_to"]["kmh"] < answer["hold_to"]["kmh"]);
    CHECK_FALSE(with_id(ask(both)["cautions"], "wetter_than_measured"));
  }
}

TEST_CASE("a speed to hold to is one from which it stops, and stops before the obstacle") {
  const Json near = ask({{"speed", "80 km/h"}, {"seen", "300 m"}, {"obstacle", "60 m"}});
  CHECK(near["hold_to"]["governed_by"] == "obstacle");
  const Json there = ask({{"speed", near["hold_to"]["text"]}, {"obstacle", "60 m"}});
  CHECK(value(there, "speed_left") == 0.0);
  CHECK(there["verdict"]["level"] == "fit");

  // Smooth, wet and worn, downhill: from 125 km/h the least grip is less than the grade.
  Json hill = {{"speed", "125 km/h"}, {"surface", "smooth"}, {"tread", "1.6 mm"},
               {"wetness", "damp"},   {"grade", "-14"},      {"radius", "2000 m"}};
  const Json fast = ask(hill);
  CHECK(with_id(fast["cautions"], "may_not_stop"));
  CHECK(fast["hold_to"]["governed_by"] == "stop");
  hill["speed"] = fast["hold_to"]["text"];
  CHECK_FALSE(with_id(ask(hill)["cautions"], "may_not_stop"));
  hill.erase("radius");
  CHECK(ask(hill)["hold_to"].is_null());
  hill["speed"] = "125 km/h";
  CHECK(ask(hill)["hold_to"] == fast["hold_to"]);
}

TEST_CASE("where a new tread has stopped, a worn one is still moving") {
  const Json answer = ask({{"speed", "80 km/h"}, {"water", "1 mm"}, {"tread", "1.6 mm"}});
  CHECK(value(answer, "speed_where_new_stops") > 20.0);
  CHECK(value(answer, "worn_ratio") > 1.2);
  CHECK_FALSE(with_id(ask({{"speed", "80 km/h"}, {"tread", "1.6 mm"}})["figures"], "worn_ratio"));
}

TEST_CASE("cold race rubber is said; the gap doubles in the wet and is ten times on ice") {
  CHECK(with_id(
      ask({{"speed", "50 km/h"}, {"rubber", "soft-race"}, {"tread_heat", "20 °C"}})["cautions"],
      "rubber_heat"));
  const double dry = value(ask({{"speed", "50 km/h"}}), "gap");
  CHECK(value(ask({{"speed", "50 km/h"}, {"wetness", "wet"}}), "gap") == Approx(2.0 * dry));
  CHECK(value(ask({{"speed", "50 km/h"}, {"surface", "ice"}}), "gap") == Approx(10.0 * dry));
}

TEST_CASE("the obstacle: nothing is left where the room is enough") {
  CHECK(value(ask({{"speed", "50 km/h"}, {"obstacle", "60 m"}}), "speed_left") == 0.0);
  const Json answer = ask({{"speed", "80 km/h"}, {"obstacle", "70 m"}});
  CHECK(value(answer, "speed_left") > 30.0);
  CHECK(with_id(answer["cautions"], "hits_obstacle"));
  CHECK(answer["verdict"]["level"] == "unfit");
}

TEST_CASE("the reaction takes its share of the way to the obstacle") {
  // 80 km/h and 2.5 s are 55.6 m: nothing is left to brake in
  const Json answer = ask({{"speed", "80 km/h"}, {"obstacle", "50 m"}});
  CHECK(value(answer, "speed_left") == Approx(80.0));
  const Json quick = ask({{"speed", "80 km/h"}, {"obstacle", "50 m"}, {"reaction", "0.9 s"}});
  CHECK(value(quick, "speed_left") < 40.0);
}

TEST_CASE("an obstacle that only the least grip reaches is said with care") {
  const Json answer = ask({{"speed", "80 km/h"}, {"wetness", "wet"}, {"obstacle", "120 m"}});
  CHECK(value(answer, "speed_left") == 0.0);
  REQUIRE(with_id(answer["cautions"], "hits_obstacle"));
  CHECK((*with_id(answer["cautions"], "hits_obstacle"))["level"] == "care");
  CHECK(answer["verdict"]["level"] == "care");
}

// The Highway Code, rule 126, as texts print it (secondary): thinking, braking, in all, m.
TEST_CASE("rule 126 to the printed metre: thinking, braking and their sum") {
  const char* printed[6][4] = {
      {"20 mph", "6 m", "6 m", "12 m"},   {"30 mph", "9 m", "14 m", "23 m"},
      {"40 mph", "12 m", "24 m", "36 m"}, {"50 mph", "15 m", "38 m", "53 m"},
      {"60 mph", "18 m", "55 m", "73 m"}, {"70 mph", "21 m", "75 m", "96 m"}};
  for (const auto& row : printed) {
    const Json answer = ask({{"speed", row[0]}, {"units", "uk"}});
    const Json& taught = (*with_id(answer["blocks"], "taught"))["rows"][0];
    for (int i = 1; i < 4; ++i) CHECK(taught[static_cast<std::size_t>(i)] == row[i]);
    CHECK((*with_id(answer["figures"], "highway_code"))["text"] == row[3]);
  }
}

// German driving schools (secondary): 50 km/h 15 + 25 = 40 m; 100 km/h 30 + 100, full 30 + 50.
TEST_CASE("the driving schools' rule to the printed metre, and each rule says how it is known") {
  const auto rows = [](const char* speed) {
    return (*with_id(ask({{"speed", speed}})["blocks"], "taught"))["rows"];
  };
  CHECK(rows("50 km/h")[1] ==
        Json({"German driving schools", "15 m", "25 m", "40 m", "secondary"}));
  CHECK(rows("100 km/h")[1] ==
        Json({"German driving schools", "30 m", "100 m", "130 m", "secondary"}));
  CHECK(rows("100 km/h")[2] ==
        Json({"The same, braking fully", "30 m", "50 m", "80 m", "secondary"}));
}

TEST_CASE("in the wet and on ice the taught stop is doubled and ten times as long") {
  const auto second = [](Json input) {
    input["speed"] = "50 mph";
    return (*with_id(ask(input)["blocks"], "taught"))["rows"][1][3].get<std::string>();
  };
  CHECK(second({{"wetness", "wet"}}) == "106 m");
  CHECK(second({{"surface", "ice"}}) == "530 m");
}

// AASHTO stopping sight distance, US design table (secondary), before its rounding up: ft.
TEST_CASE("AASHTO sight distance at 60 mph is 566 ft, and longer downhill") {
  const Json level = ask({{"speed", "60 mph"}, {"units", "us"}});
  CHECK((*with_id(level["figures"], "sight_distance"))["text"] == "566 ft");
  // 100 km/h at -6 %: 206.9 m
  const Json down = ask({{"speed", "100 km/h"}, {"grade", "-6"}});
  CHECK((*with_id(down["blocks"], "taught"))["rows"].back()[3] == "207 m");
}

TEST_CASE("above the onset of floating that is said first, and no stopping distance is promised") {
  const Json answer = ask({{"speed", "100 km/h"}, {"wetness", "standing"}, {"tread", "3 mm"}});
  const std::string verdict = answer["verdict"]["text"];
  CHECK(verdict.find("At 100 km/h it may float") == 0);
  CHECK(verdict.find("stops in") == std::string::npos);
  CHECK(answer["cautions"][0]["id"] == "floats");
  CHECK_FALSE(with_id(answer["blocks"], "to_scale"));
  CHECK(with_id(answer["cautions"], "water_assumed"));
  CHECK(with_id(answer["cautions"], "pressure_assumed"));
}

TEST_CASE("water floats a tyre on gravel too, a slick on a wet road, and any tyre by a ruler") {
  const Json gravel = ask({{"speed", "100 km/h"}, {"surface", "gravel-loose"}, {"water", "30 mm"}});
  CHECK(gravel["hold_to"]["governed_by"] == "aquaplaning");
  CHECK(gravel["verdict"]["level"] == "unfit");
  const Json slick = ask({{"speed", "60 km/h"}, {"tyre_kind", "slick"}, {"wetness", "wet"}});
  CHECK(with_id(slick["limits"], "aquaplaning"));
  CHECK_FALSE(
      with_id(ask({{"speed", "60 km/h"}, {"tyre_kind", "slick"}})["limits"], "aquaplaning"));
  CHECK(with_id(ask({{"speed", "60 km/h"}, {"water", "0.5 mm"}})["limits"], "aquaplaning"));
  CHECK_FALSE(with_id(ask({{"speed", "60 km/h"}, {"water", "0"}})["limits"], "aquaplaning"));
}

TEST_CASE("a tenth is kept below the onset of floating, and no ground is credited off the road") {
  const auto onset = [](const char* surface) {
    const Json answer = ask({{"speed", "30 km/h"}, {"surface", surface}, {"water", "2 mm"}});
    const Json& limit = *with_id(answer["limits"], "aquaplaning");
    CHECK(answer["hold_to"]["kmh"] == 5.0 * std::floor(0.9 * limit["low_kmh"].get<double>() / 5.0));
    return limit["kmh"].get<double>();
  };
  CHECK(onset("gravel-loose") < onset("asphalt"));
  CHECK(onset("gravel-loose") == onset("grass"));
}

TEST_CASE("water of 100 mm and more: do not enter, and nothing else is worked out") {
  const Json answer = ask({{"speed", "20 km/h"}, {"water", "250 mm"}});
  CHECK(answer["ok"] == true);
  CHECK(answer["verdict"]["level"] == "unfit");
  CHECK(answer["hold_to"]["kmh"] == 0.0);
  CHECK(with_id(answer["cautions"], "deep_water"));
  CHECK_FALSE(with_id(answer["figures"], "stopping"));
}

TEST_CASE("on a grade that the least grip may not hold, no speed is slow enough") {
  const Json answer = ask({{"speed", "20 km/h"}, {"surface", "ice"}, {"grade", "-7"}});
  CHECK(answer["hold_to"]["governed_by"] == "grade");
  CHECK(answer["hold_to"]["kmh"] == 0.0);
  CHECK(answer["verdict"]["level"] == "unfit");
}

TEST_CASE("a stop in a bend has less grip: what can be seen then allows less speed") {
  const Json input = {{"speed", "60 km/h"}, {"seen", "70 m"}};
  Json bend = input;
  bend["radius"] = "60 m";
  const auto sight = [](const Json& answer) {
    return (*with_id(answer["limits"], "seen_distance"))["low_kmh"].get<double>();
  };
  CHECK(sight(ask(bend)) < sight(ask(input)));
  const Json answer = ask(bend);
  const Json* left = with_id(answer["figures"], "braking_left");
  REQUIRE(left);
  CHECK((*left)["low"].get<double>() <= (*left)["value"].get<double>());
  CHECK((*left)["value"].get<double>() <= (*left)["high"].get<double>());
  CHECK((*left)["high"].get<double>() < 100.0);
}

TEST_CASE("a tread under the law asks for care on any road; a slick has none to measure") {
  const auto level = [](const char* kind, const char* tread) {
    const Json answer = ask({{"speed", "80 km/h"}, {"tyre_kind", kind}, {"tread", tread}});
    CHECK((with_id(answer["cautions"], "tread_law") != nullptr) ==
          (answer["verdict"]["level"] == "care"));
    return answer["verdict"]["level"].get<std::string>();
  };
  CHECK(level("road", "0") == "care");
  CHECK(level("road", "1.5 mm") == "care");
  CHECK(level("road", "1.6 mm") == "fit");
  CHECK_FALSE(
      with_id(ask({{"speed", "80 km/h"}, {"tyre_kind", "slick"}, {"tread", "0"}})["cautions"],
              "tread_law"));
}

TEST_CASE("read out, ice is not called dry, and asphalt is") {
  const auto said = [](const char* surface, const char* wetness) {
    const Json answer =
        ask({{"speed", "30 km/h"}, {"seen", "100 m"}, {"surface", surface}, {"wetness", wetness}});
    return (*with_id(answer["blocks"], "radio"))["text"].get<std::string>();
  };
  CHECK(said("ice", "dry").find("Ice near 0 °C, black ice: hold to") == 0);
  CHECK(said("ice", "wet").find("Ice near 0 °C, black ice, ") == 0);
  CHECK(said("asphalt", "dry").find(", dry: hold to") != std::string::npos);
}

TEST_CASE("half a bend is no bend, and that is said") {
  for (const Json& part :
       {Json{{"chord", "20 m"}}, Json{{"sagitta", "1 m"}}, Json{{"bank", "3"}}}) {
    Json input = part;
    input["speed"] = "60 km/h";
    const Json answer = ask(input);
    CHECK(with_id(answer["cautions"], "bend_not_judged"));
    CHECK(answer["verdict"]["level"] == "care");
    CHECK_FALSE(with_id(answer["limits"], "bend"));
  }
}

TEST_CASE("nothing is held to above 130 km/h, where the friction tables end") {
  const Json answer = ask({{"speed", "60 km/h"}, {"seen", "5000 m"}, {"radius", "2000 m"}});
  CHECK(answer["hold_to"]["kmh"] == 130.0);
  CHECK(answer["hold_to"]["governed_by"] == "end_of_tables");
  CHECK(with_id(ask({{"speed", "140 km/h"}})["cautions"], "beyond_tables"));
}

TEST_CASE("where nothing is said of sight, a stop longer than the taught one asks for care") {
  const Json ice = ask({{"speed", "60 km/h"}, {"surface", "ice-cold"}});
  CHECK(with_id(ice["cautions"], "longer_than_taught"));
  CHECK(ice["verdict"]["level"] == "care");
  CHECK(with_id(ice["cautions"], "no_limit"));
  CHECK_FALSE(ice.contains("hold_to"));
  const Json seen = ask({{"speed", "20 km/h"}, {"surface", "ice-cold"}, {"seen", "500 m"}});
  CHECK_FALSE(with_id(seen["cautions"], "longer_than_taught"));
}

TEST_CASE("rubber that needs heat and may have none is said once; a quick reaction is said") {
  const Json slick = ask({{"speed", "50 km/h"}, {"tyre_kind", "slick"}});
  const Json* heat = with_id(slick["cautions"], "rubber_heat");
  REQUIRE(heat);
  CHECK((*with_id(slick["cautions"], "not_known"))["text"].get<std::string>().find(
            (*heat)["text"].get<std::string>()) == std::string::npos);
  CHECK_FALSE(with_id(
      ask({{"speed", "50 km/h"}, {"tyre_kind", "slick"}, {"tread_heat", "100 °C"}})["cautions"],
      "rubber_heat"));
  CHECK(with_id(ask({{"speed", "50 km/h"}, {"reaction", "0.5 s"}})["cautions"], "reaction_quick"));
  CHECK_FALSE(with_id(ask({{"speed", "50 km/h"}})["cautions"], "reaction_quick"));
}

TEST_CASE("the chart runs through the stop that is told, and the longest is rounded up") {
  const Json answer = ask({{"speed", "80 km/h"}, {"wetness", "wet"}});
  const Json& chart = *with_id(answer["blocks"], "stops");
  const Json& own = chart["series"][0];
  CHECK(own["role"] == "subject");
  CHECK(chart["series"].back()["role"] == "reference");
  CHECK(own["x"][7] == 80.0);
  CHECK(own["y"][7].get<double>() == Approx(value(answer, "stopping")));
  CHECK(chart["marks"][0]["y"].get<double>() == Approx(value(answer, "stopping")));
  // 124.7 m
  CHECK(chart["rows"][7][3] == "130 m");
}

TEST_CASE("the bars are as long as what they stand for, a metre to a millimetre") {
  const Json answer = ask({{"speed", "80 km/h"}, {"wetness", "wet"}, {"seen", "90 m"}});
  const Json& drawing = *with_id(answer["blocks"], "to_scale");
  const Json& shapes = drawing["shapes"];
  CHECK(shapes[0]["width"].get<double>() == Approx(value(answer, "thinking")));
  CHECK(shapes[1]["width"].get<double>() == Approx(value(answer, "braking")));
  CHECK(shapes.back()["width"].get<double>() == Approx(90.0));
  for (const Json& shape : shapes) {
    CHECK(shape["x"].get<double>() + shape["width"].get<double>() <=
          drawing["width"].get<double>() * (1.0 + 1e-12));
    CHECK(shape["y"].get<double>() + shape["height"].get<double>() <=
          drawing["height"].get<double>() * (1.0 + 1e-12));
  }
}

TEST_CASE("a field that does not read leaves no figure behind") {
  const Json answer = ask({{"speed", "80 km/h"}, {"tread", "three"}});
  CHECK(answer["ok"] == false);
  CHECK(answer["figures"].empty());
  CHECK_FALSE(answer.contains("verdict"));
}

TEST_CASE("every source that the sheet names is in its list") {
  const auto listed = treadwater::sheets::all_sources();
  const auto& sheet =
      treadwater::sheets::find_sheet(treadwater::sheets::all_sheets(), "stopping")->describe();
  const auto* surfaces = treadwater::sheets::find_field(sheet, "surface");
  const auto* tyres = treadwater::sheets::find_field(sheet, "tyre_kind");
  const auto* rubbers = treadwater::sheets::find_field(sheet, "rubber");
  for (const auto& surface : surfaces->choices)
    for (const auto& tyre : tyres->choices)
      for (const auto& rubber : rubbers->choices)
        for (const char* water : {"0", "2 mm", "150 mm"}) {
          treadwater::sheets::Input input;
          input.set("speed", "140 km/h");
          input.set("surface", std::string(surface.value));
          input.set("tyre_kind", std::string(tyre.value));
          input.set("rubber", std::string(rubber.value));
          input.set("tread_heat", "0 °C");
          input.set("water", water);
          input.set("reaction", "0.5 s");
          input.set("seen", "80 m");
          input.set("obstacle", "60 m");
          input.set("radius", "90 m");
          input.set("grade", "-12");
          const auto answer = treadwater::testing::stopping(input);
          CHECK(answer.ok());
          for (const auto* used : treadwater::sheets::sources_used(answer)) {
            bool found = false;
            for (const auto* known : listed) found |= known->id == used->id;
            INFO(used->id);
            CHECK(found);
          }
        }
}
