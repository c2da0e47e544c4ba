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

// Value, low and high.
std::vector<double> whole(const Json& answer, const std::string& id) {
  const Json* figure = with_id(answer["figures"], id);
  REQUIRE(figure);
  return {(*figure)["value"], (*figure)["low"], (*figure)["high"]};
}

double hold_to(const Json& answer) {
  REQUIRE(answer.contains("hold_to"));
  return answer["hold_to"]["kmh"];
}

// The level of a caution; empty where it is not said.
std::string level(const Json& answer, const std::string& id) {
  const Json* caution = with_id(answer["cautions"], id);
  return caution == nullptr ? "" : (*caution)["level"].get<std::string>();
}

std::string verdict(const Json& answer) { return answer["verdict"]["text"]; }

// Is a distance told, in the verdict and as figures?
bool tells_stop(const Json& answer) {
  const bool said = verdict(answer).find("it stops in about") != std::string::npos;
  for (const char* id : {"braking", "stopping"})
    CHECK((with_id(answer["figures"], id) != nullptr) == said);
  return said;
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

TEST_CASE("standing water: the onset of aquaplaning caps what friction promises") {
  const Json answer = ask({{"speed", "100 km/h"}, {"water", "5 mm"}, {"tread", "3 mm"}});
  CHECK(answer["hold_to"]["governed_by"] == "aquaplaning");
  CHECK(level(answer, "speed_above_hold_to") == "unfit");
  CHECK((*with_id(answer["cautions"], "speed_above_hold_to"))["text"] ==
        "At 100 km/h it aquaplanes in 100 of 100 cases.");
  CHECK(answer["verdict"]["level"] == "unfit");
  CHECK(level(answer, "standing_water") == "care");
  CHECK_FALSE(with_id(ask({{"speed", "100 km/h"}, {"wetness", "damp"}})["limits"], "aquaplaning"));
}

TEST_CASE("a word stops as the deepest film it may mean") {
  const std::pair<const char*, const char*> films[] = {
      {"damp", "0.1 mm"}, {"wet", "1 mm"}, {"downpour", "2 mm"}};
  for (const auto& film : films)
    for (const char* speed : {"50 km/h", "60 km/h", "80 km/h"})
      for (const char* tread : {"1.6 mm", "3 mm", "8 mm"}) {
        INFO(film.first << ", " << speed << ", " << tread);
        const Json by_word = ask({{"speed", speed}, {"tread", tread}, {"wetness", film.first}});
        const Json by_ruler = ask({{"speed", speed}, {"tread", tread}, {"water", film.second}});
        for (const char* id : {"braking", "stopping"})
          CHECK(whole(by_word, id) == whole(by_ruler, id));
        CHECK(tells_stop(by_word));
      }
}

TEST_CASE("a wetter word never stops shorter, nor is more held to") {
  for (const char* tread : {"1.6 mm", "3 mm", "8 mm"}) {
    double longest = 0.0, held = 1e9;
    for (const char* word : {"unsaid", "dry", "damp", "wet", "downpour", "standing"}) {
      INFO(tread << ", " << word);
      const Json answer =
          ask({{"speed", "30 km/h"}, {"tread", tread}, {"wetness", word}, {"seen", "150 m"}});
      CHECK(whole(answer, "stopping")[2] >= longest);
      longest = whole(answer, "stopping")[2];
      CHECK(hold_to(answer) <= held);
      held = hold_to(answer);
    }
  }
}

TEST_CASE("a wetter road never makes the verdict on a stop milder") {
  const auto severity = [](const Json& answer) {
    const std::string level = answer["verdict"]["level"];
    return level == "unfit" ? 2 : level == "care" ? 1 : 0;
  };
  // Steep and smooth, where the least grip is less than the grade; setts on old tyres; a plain
  // road.
  for (const Json& base : {Json{{"surface", "smooth"}, {"grade", "-30"}, {"tread", "1.6 mm"}},
                           Json{{"surface", "cobbles"}, {"old_or_hard", "yes"}, {"tread", "6 mm"}},
                           Json{{"surface", "asphalt"}, {"tread", "3 mm"}}})
    for (const char* speed : {"40 km/h", "80 km/h", "120 km/h"}) {
      int worst = 0;
      const auto add = [&](const char* field, const char* value) {
        Json input = base;
        input["speed"] = speed;
        input[field] = value;
        INFO(input);
        const int now = severity(ask(input));
        CHECK(now >= worst);
        worst = now;
      };
      add("wetness", "dry");
      for (const char* water : {"0", "0.2 mm", "0.5 mm", "1 mm", "2 mm", "3 mm", "6 mm", "100 mm"})
        add("water", water);
      worst = 0;
      for (const char* word : {"dry", "damp", "wet", "downpour", "standing"}) add("wetness", word);
    }
}

TEST_CASE("a stop is told though aquaplaning is the limit, until the least grip may be gone") {
  const auto on = [](const char* speed) {
    return ask({{"speed", speed}, {"wetness", "wet"}, {"tread", "1.6 mm"}});
  };
  const Json answer = on("80 km/h");
  CHECK(answer["hold_to"]["governed_by"] == "aquaplaning");
  CHECK(hold_to(answer) < 80.0);
  CHECK(answer["verdict"]["level"] == "care");
  CHECK(level(answer, "speed_above_hold_to") == "care");
  CHECK(tells_stop(answer));
  // The longest stop: grip is gone at 1/sqrt(1.25 * 6.1e-5) = 114.5 km/h, told up to 0.95 of it.
  CHECK(tells_stop(on("108 km/h")));
  CHECK_FALSE(tells_stop(on("109 km/h")));
  CHECK(level(on("108 km/h"), "may_not_stop") == "");
  CHECK(level(on("109 km/h"), "may_not_stop") != "");
  CHECK(verdict(on("109 km/h")).find("From 109 km/h it may not stop.") != std::string::npos);
  const auto among = [](const Json& change) {
    Json other = {{"speed", "80 km/h"}, {"tread", "1.6 mm"}};
    other.update(change);
    return tells_stop(ask(other));
  };
  CHECK(among({{"water", "2 mm"}}));
  CHECK_FALSE(among({{"wetness", "standing"}}));
  CHECK_FALSE(among({{"wetness", "wet"}, {"tread", "0"}}));
}

TEST_CASE("a ruler that finds less than the word dries no road") {
  const Json base = {{"speed", "80 km/h"}, {"tread", "1.6 mm"}, {"seen", "100 m"}};
  for (const char* word : {"damp", "wet", "downpour", "standing"}) {
    INFO(word);
    Json said = base;
    said["wetness"] = word;
    Json both = said;
    both["water"] = "0";
    const Json answer = ask(both);
    CHECK(hold_to(answer) == hold_to(ask(said)));
    CHECK(answer["verdict"] == ask(said)["verdict"]);
    // A ruler that finds nothing says damp itself.
    CHECK((level(answer, "wetter_than_measured") == "note") == (word != std::string("damp")));
    both["water"] = "6 mm";
    CHECK(hold_to(ask(both)) < hold_to(answer));
    CHECK(level(ask(both), "wetter_than_measured") == "");
  }
}

TEST_CASE("a ruler that finds nothing says damp, not dry") {
  const Json dry = ask({{"speed", "80 km/h"}, {"wetness", "dry"}});
  const Json damp = ask({{"speed", "80 km/h"}, {"wetness", "damp"}});
  for (const char* word : {"unsaid", "dry", "damp"}) {
    const Json answer = ask({{"speed", "80 km/h"}, {"wetness", word}, {"water", "0"}});
    CHECK(whole(answer, "stopping") == whole(damp, "stopping"));
    CHECK(whole(answer, "stopping")[2] > whole(dry, "stopping")[2]);
    CHECK(level(answer, "no_dynamic_aquaplaning") == "note");
  }
  // Nothing said is judged for a dry road.
  const Json unsaid = ask({{"speed", "80 km/h"}});
  CHECK(whole(unsaid, "stopping") == whole(dry, "stopping"));
  CHECK(level(unsaid, "water_not_given") == "note");
  CHECK(level(dry, "water_not_given") == "");
}

TEST_CASE("a road that is told narrows the stop; concrete and a smooth road say it themselves") {
  const auto stop = [](const char* surface, const char* road) {
    return whole(
        ask({{"speed", "80 km/h"}, {"wetness", "wet"}, {"surface", surface}, {"road", road}}),
        "stopping");
  };
  const auto unsaid = stop("asphalt", "unsaid");
  for (const char* road : {"grippy", "ordinary", "polished"}) {
    const auto told = stop("asphalt", road);
    CHECK(told[1] >= unsaid[1]);
    CHECK(told[2] <= unsaid[2]);
    CHECK(told[2] - told[1] < unsaid[2] - unsaid[1]);
    for (const char* surface : {"concrete", "smooth", "porous"})
      CHECK(stop(surface, road) == stop(surface, "unsaid"));
  }
  CHECK(stop("asphalt", "grippy")[0] < stop("asphalt", "ordinary")[0]);
  CHECK(stop("asphalt", "ordinary")[0] < stop("asphalt", "polished")[0]);
  // As polished, and of less texture.
  const auto concrete = stop("concrete", "unsaid"), polished = stop("asphalt", "polished");
  CHECK(concrete[2] - concrete[1] < unsaid[2] - unsaid[1]);
  for (std::size_t end = 0; end < 3; ++end) {
    CHECK(concrete[end] >= polished[end]);
    CHECK(concrete[end] < 1.05 * polished[end]);
  }
}

TEST_CASE("old or hard tyres stop longer, wet or dry, and less can be driven on what is seen") {
  const auto sight = [](const Json& answer) {
    return (*with_id(answer["limits"], "seen_distance"))["low_kmh"].get<double>();
  };
  for (const char* wetness : {"dry", "wet"}) {
    INFO(wetness);
    Json input = {{"speed", "50 km/h"}, {"wetness", wetness}, {"seen", "80 m"}};
    const Json good = ask(input);
    input["old_or_hard"] = "yes";
    const Json old = ask(input);
    CHECK(value(old, "stopping") > value(good, "stopping"));
    CHECK(whole(old, "stopping")[2] > whole(good, "stopping")[2]);
    CHECK(sight(old) < sight(good));
    input["old_or_hard"] = "no";
    CHECK(ask(input) == good);
  }
}

TEST_CASE("the width of the tyre counts for aquaplaning: a wide one floats earlier") {
  const auto onset = [](const char* width) {
    const Json answer = ask({{"speed", "40 km/h"}, {"water", "6 mm"}, {"width", width}});
    return (*with_id(answer["limits"], "aquaplaning"))["kmh"].get<double>();
  };
  CHECK(onset("255 mm") < onset("205 mm"));
  CHECK(onset("205 mm") < onset("165 mm"));
}

TEST_CASE("a speed to hold to is one from which it stops, and stops before the obstacle") {
  const Json near = ask({{"speed", "80 km/h"}, {"seen", "300 m"}, {"obstacle", "60 m"}});
  CHECK(near["hold_to"]["governed_by"] == "obstacle");
  const Json there = ask({{"speed", near["hold_to"]["text"]}, {"obstacle", "60 m"}});
  CHECK(value(there, "speed_left") == 0.0);
  CHECK(there["verdict"]["level"] == "fit");

  // Damp setts, worn tyres, downhill: from 150 km/h the least grip is less than the grade.
  Json hill = {{"speed", "150 km/h"}, {"surface", "cobbles"}, {"tread", "1.6 mm"},
               {"wetness", "damp"},   {"grade", "-30"},       {"radius", "2000 m"}};
  const Json fast = ask(hill);
  CHECK(level(fast, "may_not_stop") == "unfit");
  CHECK_FALSE(tells_stop(fast));
  CHECK(fast["hold_to"]["governed_by"] == "stop");
  CHECK(hold_to(fast) < 130.0);
  hill["speed"] = fast["hold_to"]["text"];
  CHECK(level(ask(hill), "may_not_stop") == "");
  CHECK(tells_stop(ask(hill)));
  hill.erase("radius");
  CHECK_FALSE(ask(hill).contains("hold_to"));
  hill["speed"] = "150 km/h";
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
  // 84 to 117.5 m
  const Json answer = ask({{"speed", "80 km/h"}, {"wetness", "wet"}, {"obstacle", "110 m"}});
  CHECK(value(answer, "speed_left") == 0.0);
  CHECK(whole(answer, "speed_left")[2] > 0.0);
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

TEST_CASE("above the onset that is said first, and no stopping distance is promised") {
  const Json answer = ask({{"speed", "100 km/h"}, {"wetness", "standing"}, {"tread", "3 mm"}});
  CHECK(verdict(answer).find("Not like this: the speed you intend is past the limit") == 0);
  CHECK_FALSE(tells_stop(answer));
  CHECK(answer["cautions"][0]["id"] == "speed_above_hold_to");
  CHECK(answer["cautions"][0]["level"] == "unfit");
  CHECK_FALSE(with_id(answer["blocks"], "to_scale"));
  CHECK(level(answer, "pressure_assumed") == "note");
}

TEST_CASE("water floats a tyre on gravel too, a slick on a wet road, and any tyre by a ruler") {
  const Json gravel = ask({{"speed", "100 km/h"}, {"surface", "gravel-loose"}, {"water", "30 mm"}});
  CHECK(gravel["hold_to"]["governed_by"] == "aquaplaning");
  CHECK(gravel["verdict"]["level"] == "unfit");
  CHECK(level(gravel, "unpaved") == "care");
  const Json slick = ask({{"speed", "60 km/h"}, {"tyre_kind", "slick"}, {"wetness", "wet"}});
  CHECK(with_id(slick["limits"], "aquaplaning"));
  CHECK(slick["hold_to"]["governed_by"] == "slick_in_water");
  CHECK(hold_to(slick) == 0.0);
  CHECK_FALSE(
      with_id(ask({{"speed", "60 km/h"}, {"tyre_kind", "slick"}})["limits"], "aquaplaning"));
  CHECK(with_id(ask({{"speed", "60 km/h"}, {"water", "0.5 mm"}})["limits"], "aquaplaning"));
  CHECK_FALSE(with_id(ask({{"speed", "60 km/h"}, {"water", "0"}})["limits"], "aquaplaning"));
}

TEST_CASE("a tenth is kept below the onset of floating, and no ground is credited off the road") {
  const auto onset = [](const char* surface) {
    const Json answer = ask({{"speed", "30 km/h"}, {"surface", surface}, {"water", "5 mm"}});
    const Json& limit = *with_id(answer["limits"], "aquaplaning");
    CHECK(hold_to(answer) == 5.0 * std::floor(0.9 * limit["low_kmh"].get<double>() / 5.0));
    return limit["kmh"].get<double>();
  };
  for (const char* paved :
       {"asphalt", "smooth", "concrete", "surface-dressing", "porous", "cobbles"})
    CHECK(onset("gravel-loose") <= onset(paved));
  CHECK(onset("gravel-loose") < onset("surface-dressing"));
  CHECK(onset("surface-dressing") < onset("porous"));
  for (const char* other : {"gravel-packed", "earth", "grass", "snow", "ice"})
    CHECK(onset("gravel-loose") == onset(other));
}

TEST_CASE("water of 100 mm and more: do not enter, and nothing else is worked out") {
  for (const char* water : {"100 mm", "250 mm"}) {
    const Json answer = ask({{"speed", "20 km/h"}, {"water", water}});
    CHECK(answer["ok"] == true);
    CHECK(answer["verdict"]["level"] == "unfit");
    CHECK(hold_to(answer) == 0.0);
    CHECK(answer["hold_to"]["governed_by"] == "crossing");
    CHECK(with_id(answer["cautions"], "deep_water"));
    CHECK(with_id(answer["limits"], "crossing"));
    CHECK_FALSE(with_id(answer["limits"], "aquaplaning"));
    CHECK_FALSE(with_id(answer["figures"], "stopping"));
  }
  CHECK(hold_to(ask({{"speed", "20 km/h"}, {"water", "99 mm"}})) > 0.0);
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
  CHECK(said("ice", "wet").find("Ice near 0 °C, black ice, wet road: ") == 0);
  CHECK(said("asphalt", "dry").find(", dry: hold to") != std::string::npos);
  // Where nothing limits it, what is said in the wet is the longest stop.
  const Json damp = ask({{"speed", "80 km/h"}, {"wetness", "damp"}});
  CHECK_FALSE(damp.contains("hold_to"));
  CHECK((*with_id(damp["blocks"], "radio"))["text"] ==
        "Asphalt, ordinary, damp road. From 80 kilometres an hour allow 98 m to stop.");
  CHECK_FALSE(with_id(ask({{"speed", "80 km/h"}})["blocks"], "radio"));
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

TEST_CASE("where no limit is below 130 km/h there is none to hold to") {
  const Json answer = ask({{"speed", "60 km/h"}, {"seen", "5000 m"}, {"radius", "2000 m"}});
  CHECK_FALSE(answer.contains("hold_to"));
  REQUIRE(answer["limits"].size() == 2);
  for (const Json& limit : answer["limits"]) CHECK(limit["governs"] == false);
  const double lowest = answer["limits"][0]["low_kmh"];
  REQUIRE(lowest > 130.0);
  CHECK(answer["no_limit"]["text"] == "Nothing here limits it below the road's own limit.");
  CHECK_FALSE(answer["no_limit"].contains("own_kmh"));  // of a road, not of the tyre
  CHECK_FALSE(with_id(answer["cautions"], "no_limit"));
  CHECK_FALSE(with_id(answer["limits"], "end_of_tables"));
  CHECK(answer["verdict"]["level"] == "fit");
}

TEST_CASE(
    "where nothing was asked that limits speed, what to ask is said, and no limit is denied") {
  for (const char* wetness : {"unsaid", "dry", "damp"}) {
    const Json answer = ask({{"speed", "60 km/h"}, {"wetness", wetness}});
    CHECK(level(answer, "no_limit") == "note");
    CHECK_FALSE(answer.contains("hold_to"));
    CHECK_FALSE(answer.contains("no_limit"));
  }
  CHECK(level(ask({{"speed", "60 km/h"}, {"wetness", "standing"}}), "no_limit") == "");
}

TEST_CASE("above 150 km/h, where no stop was published, that is said") {
  CHECK(level(ask({{"speed", "150 km/h"}}), "beyond_tables") == "");
  const Json fast = ask({{"speed", "151 km/h"}});
  CHECK(level(fast, "beyond_tables") == "care");
  CHECK(tells_stop(fast));
}

TEST_CASE("where nothing is said of sight, a stop longer than the taught one asks for care") {
  const Json ice = ask({{"speed", "60 km/h"}, {"surface", "ice-cold"}});
  CHECK(with_id(ice["cautions"], "longer_than_taught"));
  CHECK(ice["verdict"]["level"] == "care");
  CHECK(with_id(ice["cautions"], "no_limit"));
  CHECK_FALSE(ice.contains("hold_to"));
  CHECK_FALSE(ice.contains("no_limit"));
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
  // 117.5 m
  CHECK(chart["rows"][7][3] == "120 m");
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
  CHECK_FALSE(answer.contains("hold_to"));
  CHECK_FALSE(answer.contains("no_limit"));
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
        for (const auto& [water, wetness, old] : {std::tuple("0", "unsaid", "no"),
                                                  {"2 mm", "unsaid", "yes"},
                                                  {"", "wet", "no"},
                                                  {"", "standing", "no"},
                                                  {"150 mm", "unsaid", "no"}}) {
          treadwater::sheets::Input input;
          input.set("speed", "140 km/h");
          input.set("surface", std::string(surface.value));
          input.set("tyre_kind", std::string(tyre.value));
          input.set("rubber", std::string(rubber.value));
          input.set("tread_heat", "0 °C");
          input.set("water", water);
          input.set("wetness", wetness);
          input.set("old_or_hard", old);
          input.set("road", "grippy");
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
