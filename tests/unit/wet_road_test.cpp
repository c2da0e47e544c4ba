// One road and one tyre, asked of every sheet that knows of water: how wet it is, whether it
// aquaplanes, and whether there is a speed to hold to at all.
#include <cmath>
#include <nlohmann/json.hpp>
#include <string>
#include <utility>
#include <vector>

#include "core/json/contract.hpp"
#include "core/judge/water.hpp"
#include "core/quantity/write.hpp"
#include "tests/support/catch.hpp"

using Json = nlohmann::json;
using treadwater::millimetres;
using treadwater::judge::RoadWater;
using treadwater::standard::Wetness;

namespace {

Json ask(const std::string& sheet, Json input) {
  input["today"] = "2026-11-25";
  return Json::parse(treadwater::json::answer(sheet, input.dump()));
}

const Json* with_id(const Json& rows, const std::string& id) {
  for (const Json& row : rows)
    if (row["id"] == id) return &row;
  return nullptr;
}

const Json& caution(const Json& answer, const std::string& id) {
  const Json* found = with_id(answer["cautions"], id);
  REQUIRE(found);
  return *found;
}

const Json& limit(const Json& answer, const std::string& id) {
  const Json* found = with_id(answer["limits"], id);
  REQUIRE(found);
  return *found;
}

std::string level(const Json& answer, const std::string& id) {
  const Json* found = with_id(answer["cautions"], id);
  return found == nullptr ? "" : (*found)["level"].get<std::string>();
}

double hold_to(const Json& answer) {
  REQUIRE(answer.contains("hold_to"));
  return answer["hold_to"]["kmh"];
}

const char* const of_one_tyre = "tyre-check";
// A size, a load and a symbol are known to these three.
const std::vector<std::string> whole_tyres{of_one_tyre, "car-check", "field-list"};
const std::vector<std::string> all_sheets{of_one_tyre, "car-check", "field-list", "standing-water",
                                          "stopping"};

// Notes on one tyre of several are for its own check.
bool tells_notes(const std::string& sheet) { return sheet != "car-check" && sheet != "field-list"; }

// A tyre on a road, as the sheet for one tyre takes it.
Json tyre(const Json& change = Json::object()) {
  Json one = {{"size", "205/55 R16 91V"},
              {"load", "400 kg"},
              {"pressure", "220 kPa"},
              {"tread", "3 mm"},
              {"tyre_kind", "road"}};
  one.update(change);
  return one;
}

// The same asked of any of the sheets.
Json ask_of(const std::string& sheet, const Json& one) {
  if (sheet == of_one_tyre) return ask(sheet, one);
  Json input;
  for (const char* shared : {"wetness", "water", "speed", "units"})
    if (one.contains(shared)) input[shared] = one[shared];
  const auto part = [&](std::initializer_list<const char*> fields) {
    Json row;
    for (const char* field : fields) row[field] = one[field];
    return row;
  };
  if (sheet == "car-check") {
    input["tyre_kind"] = one["tyre_kind"];
    for (const char* axle : {"front_axle", "rear_axle"}) input[axle] = "800 kg";
    const Json corner = part({"size", "pressure", "tread"});
    input["corners"] = {corner, corner, corner, corner};
  } else if (sheet == "field-list") {
    Json row = part({"size", "load", "pressure", "tread", "tyre_kind"});
    row["name"] = "7";
    input["rows"] = Json::array({row});
  } else if (sheet == "standing-water") {
    Json row = part({"pressure", "tread", "tyre_kind"});
    row["width"] = "205 mm";
    input["tyres"] = Json::array({row});
    if (input.contains("water")) input["depth"] = input["water"];
    input.erase("water");
  } else {
    input.update(part({"pressure", "tread", "tyre_kind"}));
    input["width"] = "205 mm";
    if (!input.contains("speed")) input["speed"] = "20 km/h";
  }
  return ask(sheet, input);
}

std::string rounded(const Json& kmh) { return std::to_string(std::lround(kmh.get<double>())); }

// Told of one road: its speeds and what is found of water.
void check_same(const Json& one, const Json& other) {
  REQUIRE(one["ok"] == true);
  for (const char* part : {"hold_to", "no_limit", "verdict"}) {
    CHECK(one.contains(part) == other.contains(part));
    if (one.contains(part)) CHECK(one[part] == other[part]);
  }
  CHECK(one["limits"] == other["limits"]);
}

void check_governing(const Json& answer) {
  const bool held = answer.contains("hold_to");
  for (std::size_t i = 0; i < answer["limits"].size(); ++i)
    CHECK(answer["limits"][i]["governs"] == (held && i == 0));
  if (!held) return;
  CHECK_FALSE(answer.contains("no_limit"));
  CHECK(answer["hold_to"]["kmh"] < 130.0);
  CHECK(answer["hold_to"]["governed_by"] == answer["limits"][0]["id"]);
}

}  // namespace

TEST_CASE("the film of a road is the deep end of its word or what the ruler reads, the wetter") {
  const auto film = [](std::optional<Wetness> word, std::optional<double> mm) {
    RoadWater water;
    water.word = word;
    if (mm) water.depth = treadwater::water::Water::by_ruler(millimetres(*mm));
    CHECK(water.is_known() == (word || mm));
    CHECK(water.is_wet() == (water.film() > millimetres(0.0)));
    return treadwater::in_millimetres(water.film());
  };
  using treadwater::testing::Approx;
  CHECK(film({}, {}) == 0.0);
  CHECK(film(Wetness::dry, {}) == 0.0);
  CHECK(film(Wetness::damp, {}) == Approx(0.1));
  CHECK(film(Wetness::wet, {}) == Approx(1.0));
  CHECK(film(Wetness::downpour, {}) == Approx(2.0));
  CHECK(film(Wetness::standing, {}) == Approx(4.0));
  for (const auto word : {std::optional<Wetness>(), std::optional(Wetness::dry)}) {
    CHECK(film(word, 0.0) == Approx(0.1));
    CHECK(film(word, 5.0) == Approx(5.0));
  }
  CHECK(film(Wetness::wet, 0.5) == Approx(1.0));
  CHECK(film(Wetness::wet, 3.0) == Approx(3.0));
  CHECK(film(Wetness::standing, 0.0) == Approx(4.0));
}

TEST_CASE("of a word and a ruler the wetter counts, in every sheet") {
  const struct {
    const char* word;
    const char* ruler;
    bool by_word;
  } both[] = {{"dry", "5 mm", false},     {"damp", "5 mm", false},     {"wet", "6 mm", false},
              {"downpour", "0", true},    {"wet", "0.3 mm", true},     {"standing", "1 mm", true},
              {"downpour", "1 mm", true}, {"standing", "6 mm", false}, {"damp", "0", true}};
  for (const std::string& sheet : all_sheets)
    for (const auto& road : both) {
      INFO(sheet << ": " << road.word << " and " << road.ruler);
      const Json wetter = road.by_word ? Json{{"wetness", road.word}} : Json{{"water", road.ruler}};
      const Json answer = ask_of(sheet, tyre({{"wetness", road.word}, {"water", road.ruler}}));
      check_same(answer, ask_of(sheet, tyre(wetter)));
      if (!tells_notes(sheet)) continue;
      CHECK((level(answer, "wetter_than_measured") == "note") ==
            (road.by_word && road.word != std::string("damp")));
    }
}

TEST_CASE("a word beside a ruler never makes a speed less doubtful than the ruler alone") {
  const auto severity = [](const Json& answer) {
    const std::string said = level(answer, "speed_above_hold_to");
    return said == "unfit" ? 2 : said == "care" ? 1 : 0;
  };
  for (const std::string& sheet : all_sheets)
    for (const char* word : {"dry", "damp", "wet", "downpour", "standing"}) {
      INFO(sheet << ", " << word);
      Json one = tyre({{"water", "2 mm"}, {"speed", "84 km/h"}});
      const int alone = severity(ask_of(sheet, one));
      CHECK(alone == 2);
      one["wetness"] = word;
      CHECK(severity(ask_of(sheet, one)) >= alone);
    }
}

TEST_CASE("a ruler that finds nothing says a damp road, whatever is chosen beside it") {
  for (const std::string& sheet : all_sheets)
    for (const char* word : {"unsaid", "dry", "damp"}) {
      INFO(sheet << ": " << word);
      const Json damp = ask_of(sheet, tyre({{"wetness", "damp"}}));
      CHECK(ask_of(sheet, tyre({{"wetness", word}, {"water", "0"}})) == damp);
      CHECK_FALSE(with_id(damp["limits"], "aquaplaning"));
      for (const char* note : {"no_dynamic_aquaplaning", "thin_film"})
        CHECK(level(damp, note) == (sheet == "car-check" ? "" : "note"));
    }
}

TEST_CASE("where nothing is said of water, the road is judged as dry and that is said") {
  for (const char* sheet : {"tyre-check", "car-check", "field-list", "stopping"}) {
    INFO(sheet);
    const Json unsaid = ask_of(sheet, tyre());
    const Json dry = ask_of(sheet, tyre({{"wetness", "dry"}}));
    CHECK(ask_of(sheet, tyre({{"wetness", "unsaid"}})) == unsaid);
    CHECK(unsaid["limits"] == dry["limits"]);
    CHECK(level(unsaid, "water_not_given") == "note");
    CHECK(caution(unsaid, "water_not_given")["text"].get<std::string>().find(
              "Judged for a dry road only: nothing was said about water.") != std::string::npos);
    CHECK(level(dry, "water_not_given") == "");
    for (const char* of_water : {"thin_film", "no_dynamic_aquaplaning", "standing_water"})
      for (const Json& answer : {unsaid, dry}) CHECK(level(answer, of_water) == "");
  }
  CHECK(ask_of("standing-water", tyre())["problems"][0]["field"] == "depth");
  CHECK(ask_of("standing-water", tyre({{"wetness", "dry"}}))["verdict"]["level"] == "fit");
}

TEST_CASE("a limit is a speed to hold to below 130 km/h, and from there on the tyre's own limit") {
  for (const std::string& sheet : whole_tyres)
    for (const char* water : {"", "0"}) {
      INFO(sheet << ", water " << water);
      const auto with = [&](const char* size, const char* units) {
        const Json answer = ask_of(
            sheet, tyre({{"size", size}, {"tread", "7 mm"}, {"water", water}, {"units", units}}));
        check_governing(answer);
        CHECK(answer.contains("hold_to") != answer.contains("no_limit"));
        return answer;
      };
      CHECK(hold_to(with("205/55 R16 91L", "metric")) == 120.0);
      CHECK(with("205/55 R16 91L", "uk")["hold_to"]["text"] == "70 mph");
      CHECK(with("205/55 R16 91M", "metric")["no_limit"]["own_kmh"] == 130.0);
      CHECK(with("205/55 R16 91N", "metric")["no_limit"]["own_kmh"] == 140.0);
      CHECK(with("205/55 R16 91V", "metric")["no_limit"]["own_kmh"] == 240.0);
      CHECK(with("205/55 R16 91M", "uk")["no_limit"]["own_text"].get<std::string>().find(
                "Its own limit is 80 mph") == 0);
    }
}

TEST_CASE("nothing is held to 130 km/h or more, and a limit governs where there is a hold alone") {
  for (const std::string& sheet : all_sheets)
    for (const char* word : {"dry", "damp", "wet", "downpour", "standing"})
      for (const char* tread : {"1.6 mm", "3 mm", "8 mm"})
        for (const char* speed : {"30 km/h", "140 km/h"}) {
          INFO(sheet << ", " << word << ", " << tread << ", " << speed);
          const Json answer =
              ask_of(sheet, tyre({{"wetness", word}, {"tread", tread}, {"speed", speed}}));
          REQUIRE(answer["ok"] == true);
          check_governing(answer);
          // For a stop nothing was asked that limits the speed.
          const bool asked = sheet != "stopping" || answer["limits"].size() > 1;
          if (asked) CHECK(answer.contains("hold_to") != answer.contains("no_limit"));
        }
}

TEST_CASE("where the load is not judged, no speed is told unless it stands still") {
  for (const char* size : {"205/55 R16", "195/70 R15C 104/102R", "650x65 M/C"})
    for (const std::string& sheet : whole_tyres) {
      INFO(sheet << ", " << size);
      const Json one = {{"size", size}, {"pressure", "250 kPa"}};
      for (const char* word : {"unsaid", "damp", "wet", "standing"}) {
        Json on = tyre(one);
        on["wetness"] = word;
        const Json answer = ask_of(sheet, on);
        REQUIRE(answer["ok"] == true);
        CHECK_FALSE(answer.contains("hold_to"));
        CHECK_FALSE(answer.contains("no_limit"));
        check_governing(answer);
      }
      for (const Json& still : {Json{{"water", "100 mm"}}, Json{{"tread", "1 mm"}}}) {
        Json on = tyre(one);
        on.update(still);
        CHECK(hold_to(ask_of(sheet, on)) == 0.0);
      }
    }
}

TEST_CASE("puddles are told beside a road that is only wet, and set no speed") {
  for (const std::string& sheet : all_sheets) {
    const Json in_3_mm = ask_of(sheet, tyre({{"water", "3 mm"}}));
    CHECK_FALSE(with_id(in_3_mm["limits"], "puddles"));
    const Json& onset = limit(in_3_mm, "aquaplaning");
    for (const Json& road :
         {Json{{"water", "0"}}, Json{{"water", "0.4 mm"}}, Json{{"water", "2.9 mm"}},
          Json{{"wetness", "damp"}}, Json{{"wetness", "wet"}}, Json{{"wetness", "downpour"}}}) {
      INFO(sheet << ", " << road);
      const Json answer = ask_of(sheet, tyre(road));
      const Json& beside = limit(answer, "puddles");
      CHECK(answer["limits"].back()["id"] == "puddles");
      CHECK(beside["governs"] == false);
      for (const char* end : {"kmh", "low_kmh", "high_kmh"}) CHECK(beside[end] == onset[end]);
      if (answer.contains("hold_to")) CHECK(answer["hold_to"]["governed_by"] != "puddles");
      if (answer.contains("no_limit") && answer["no_limit"].contains("own_kmh"))
        CHECK(answer["no_limit"]["own_kmh"] >= 130.0);
      if (!tells_notes(sheet)) continue;
      const double held = 5.0 * std::floor(0.9 * beside["low_kmh"].get<double>() / 5.0);
      CHECK(caution(answer, "in_puddles")["text"].get<std::string>().find(
                "In ruts and puddles, 3 mm of water and more: not above " + rounded(held) +
                " km/h.") != std::string::npos);
    }
    for (const Json& road : {Json{{"wetness", "dry"}}, Json{{"wetness", "standing"}},
                             Json{{"water", "5 mm"}}, Json{{"water", "100 mm"}}}) {
      INFO(sheet << ", " << road);
      const Json answer = ask_of(sheet, tyre(road));
      CHECK_FALSE(with_id(answer["limits"], "puddles"));
      CHECK(level(answer, "in_puddles") == "");
    }
  }
}

TEST_CASE("the longest stop told on a wet paved road is that of the sheet for stops") {
  const auto told = [](const Json& answer) -> std::string {
    const Json* stop = with_id(answer["cautions"], "wet_stop");
    return stop == nullptr ? "" : (*stop)["text"].get<std::string>();
  };
  const auto sentence = [](double metres, const char* from) {
    return "On this wet road allow up to " +
           treadwater::write_longest_distance(treadwater::metres(metres),
                                              treadwater::UnitSystem::metric) +
           " to stop from " + from + ", and drive so that you can see that far.";
  };
  for (const Json& road : {Json{{"wetness", "damp"}}, Json{{"wetness", "wet"}},
                           Json{{"wetness", "standing"}}, Json{{"water", "5 mm"}}}) {
    INFO(road);
    for (const char* intended : {"", "40 km/h", "70 km/h"}) {
      Json one = tyre(road);
      one["speed"] = intended;
      const Json answer = ask_of(of_one_tyre, one);
      double from = intended == std::string() ? 80.0 : std::stod(intended);
      if (answer.contains("hold_to")) from = std::min(from, hold_to(answer));
      const std::string speed = rounded(from) + " km/h";
      one["speed"] = speed;
      const Json stop = ask_of("stopping", one);
      const Json* figure = with_id(stop["figures"], "stopping");
      REQUIRE(figure);
      CHECK(told(answer) == sentence((*figure)["high"], speed.c_str()));
    }
  }
  CHECK(told(ask_of(of_one_tyre, tyre({{"wetness", "wet"}, {"units", "uk"}, {"tread", "8 mm"}})))
            .find("to stop from 50 mph") != std::string::npos);
  for (const Json& none :
       {Json{{"wetness", "dry"}}, Json{{"wetness", "unsaid"}}, Json{{"water", "100 mm"}},
        Json{{"wetness", "wet"}, {"surface", "loose"}},
        Json{{"wetness", "wet"}, {"tread", "1 mm"}}})
    CHECK(told(ask_of(of_one_tyre, tyre(none))) == "");
}

TEST_CASE("no stop is told from above the tyre's own limit, whatever speed is intended") {
  const Json one = tyre(
      {{"size", "205/55 R16 91M"}, {"tread", "8 mm"}, {"wetness", "damp"}, {"speed", "150 km/h"}});
  const Json answer = ask_of(of_one_tyre, one);
  CHECK(answer["verdict"]["level"] == "unfit");
  CHECK_FALSE(answer.contains("no_limit"));  // no leave to be driven
  CHECK_FALSE(answer.contains("hold_to"));
  const Json* stop = with_id(answer["cautions"], "wet_stop");
  if (stop != nullptr)
    CHECK((*stop)["text"].get<std::string>().find("150 km/h") == std::string::npos);
  for (const Json& block : answer["blocks"])
    if (block["kind"] == "spoken")
      CHECK(block["text"].get<std::string>().find("From 150") == std::string::npos);
}

TEST_CASE("a speed is judged alike in every sheet: by the central onset, and by one case in four") {
  const auto judged = [](const std::string& sheet, const Json& road, int kmh) {
    Json one = tyre(road);
    one["speed"] = std::to_string(kmh) + " km/h";
    return ask_of(sheet, one);
  };
  for (const Json& road :
       {Json{{"water", "5 mm"}}, Json{{"wetness", "downpour"}}, Json{{"water", "1 mm"}}}) {
    const Json by_chance = judged("standing-water", road, 40);
    const double held = hold_to(by_chance);
    const double central = limit(by_chance, "aquaplaning")["kmh"];
    for (int kmh = 45; kmh <= 120; ++kmh) {
      INFO(road << " at " << kmh);
      const Json chances = judged("standing-water", road, kmh);
      const double chance = (*with_id(chances["figures"], "chance"))["value"];
      const std::string expected = kmh <= held                       ? ""
                                   : kmh > central || chance >= 0.25 ? "unfit"
                                                                     : "care";
      const std::string text = "At " + std::to_string(kmh) + " km/h it aquaplanes in " +
                               std::to_string(std::lround(100.0 * chance)) + " of 100 cases.";
      for (const std::string& sheet : all_sheets) {
        if (kmh % 25 != 0 && sheet != of_one_tyre) continue;
        INFO(sheet);
        const Json answer = judged(sheet, road, kmh);
        CHECK(level(answer, "speed_above_hold_to") == expected);
        if (!expected.empty())
          CHECK(caution(answer, "speed_above_hold_to")["text"].get<std::string>().find(text) !=
                std::string::npos);
        if (expected == "unfit") CHECK(answer["verdict"]["level"] == "unfit");
      }
    }
  }
}

TEST_CASE("standing water asks for care in 3 mm and more, and in less where no speed is intended") {
  const auto said = [](const std::string& sheet, Json change) {
    const Json answer = ask_of(sheet, tyre(change));
    const bool there = level(answer, "standing_water") == "care";
    CHECK(there == (level(answer, "standing_water") != ""));
    if (answer["verdict"]["level"] == "care")
      CHECK((answer["verdict"]["text"].get<std::string>().find("there is water on the road") !=
             std::string::npos) == there);
    return there;
  };
  for (const std::string& sheet : all_sheets) {
    INFO(sheet);
    for (const char* water : {"3 mm", "5 mm", "40 mm"})
      CHECK(said(sheet, {{"water", water}, {"speed", "10 km/h"}}));
    CHECK(said(sheet, {{"wetness", "standing"}, {"speed", "10 km/h"}}));
    for (const Json& less :
         {Json{{"water", "2.9 mm"}}, Json{{"wetness", "wet"}}, Json{{"wetness", "downpour"}}}) {
      INFO(less);
      Json slowly = less;
      slowly["speed"] = "10 km/h";
      CHECK_FALSE(said(sheet, slowly));
      if (sheet != "stopping") CHECK(said(sheet, less));
    }
    for (const Json& none : {Json{{"wetness", "damp"}}, Json{{"wetness", "dry"}},
                             Json{{"wetness", "wet"}, {"tread", "8 mm"}}})
      CHECK_FALSE(said(sheet, none));
  }
}

TEST_CASE("in water that the grooves take up no aquaplaning is expected, and none limits") {
  for (const std::string& sheet : all_sheets) {
    INFO(sheet);
    const Json answer = ask_of(sheet, tyre({{"wetness", "wet"}, {"tread", "8 mm"}}));
    CHECK_FALSE(with_id(answer["limits"], "aquaplaning"));
    CHECK_FALSE(answer.contains("hold_to"));
    if (!tells_notes(sheet)) continue;
    CHECK(level(answer, "no_dynamic_aquaplaning") == "note");
    CHECK(caution(answer, "no_dynamic_aquaplaning")["text"].get<std::string>().find(
              "In up to 1 mm of water no aquaplaning is expected at road speeds: the grooves take "
              "it up.") != std::string::npos);
  }
  for (const char* sheet : {"tyre-check", "standing-water"}) {
    const Json answer = ask_of(sheet, tyre({{"wetness", "wet"}, {"tread", "8 mm"}}));
    const Json& figure = *with_id(answer["figures"], "onset_estimate");
    CHECK(figure["text"] == "not below 130 km/h");
    CHECK(figure["value"] == 180.0);
  }
}

TEST_CASE("an end of an onset that is none is said in words, and as a number it is 180 km/h") {
  int words[3] = {};
  for (const char* word : {"wet", "downpour", "standing"})
    for (const char* tread : {"1.6 mm", "2.5 mm", "4 mm", "5 mm", "6 mm", "7 mm"}) {
      INFO(word << ", " << tread);
      const Json answer = ask_of(of_one_tyre, tyre({{"wetness", word}, {"tread", tread}}));
      const Json* onset = with_id(answer["limits"], "aquaplaning");
      if (onset == nullptr) continue;
      const double low = (*onset)["low_kmh"], central = (*onset)["kmh"],
                   high = (*onset)["high_kmh"];
      CHECK(low < 144.5);
      CHECK(central <= 180.0);
      CHECK(high <= 180.0);
      const std::string from = rounded(low) + " km/h";
      std::string text = "about " + rounded(central) + " km/h (";
      if (high < 180.0)
        text += rounded(low) + " to " + rounded(high) + " km/h)";
      else if (central < 180.0)
        text += from + " or more)";
      else
        text = "from " + from + ", in most cases not below 130 km/h";
      CHECK((*onset)["text"] == text);
      ++words[high < 180.0 ? 0 : central < 180.0 ? 1 : 2];
      const Json& figure = *with_id(answer["figures"], "onset_estimate");
      CHECK(figure["text"] == text);
      CHECK(figure["value"] == central);
      CHECK(figure["low"] == low);
      CHECK(figure["high"] == high);
    }
  for (const int seen : words) CHECK(seen > 0);
}

TEST_CASE("a slick in 0.2 mm of water, or on a road called wet, may not be driven") {
  for (const std::string& sheet : all_sheets) {
    INFO(sheet);
    for (const Json& wet : {Json{{"water", "0.2 mm"}}, Json{{"water", "3 mm"}},
                            Json{{"wetness", "wet"}}, Json{{"wetness", "standing"}}}) {
      INFO(wet);
      Json slick = tyre(wet);
      slick["tyre_kind"] = "slick";
      const Json answer = ask_of(sheet, slick);
      CHECK(level(answer, "slick_in_water") == "unfit");
      CHECK(answer["verdict"]["level"] == "unfit");
      CHECK(hold_to(answer) == 0.0);
      CHECK(answer["hold_to"]["governed_by"] == "slick_in_water");
      CHECK_FALSE(with_id(answer["limits"], "puddles"));
      CHECK(level(answer, "slick_on_wet") == "");
    }
    for (const Json& wet :
         {Json{{"water", "0.19 mm"}}, Json{{"water", "0"}}, Json{{"wetness", "damp"}}}) {
      INFO(wet);
      Json slick = tyre(wet);
      slick["tyre_kind"] = "slick";
      const Json answer = ask_of(sheet, slick);
      CHECK(level(answer, "slick_in_water") == "");
      CHECK(level(answer, "slick_on_wet") == "care");
      CHECK_FALSE(with_id(answer["limits"], "slick_in_water"));
    }
  }
}

TEST_CASE("a road tyre with less than half a millimetre that is credited counts as a slick") {
  const auto bare = [](const std::string& sheet, const char* kind, const char* tread,
                       const Json& road) {
    Json one = tyre(road);
    one["tyre_kind"] = kind;
    one["tread"] = tread;
    const Json answer = ask_of(sheet, one);
    const bool said = level(answer, "slick_in_water") == "unfit";
    if (said) {
      CHECK(caution(answer, "slick_in_water")["text"].get<std::string>().find("So little tread") !=
            std::string::npos);
      CHECK(answer["verdict"]["text"].get<std::string>().find(
                "it has no tread to clear the water") != std::string::npos);
      CHECK(hold_to(answer) == 0.0);
    }
    return said;
  };
  for (const std::string& sheet : all_sheets)
    for (const Json& road : {Json{{"water", "0.2 mm"}}, Json{{"wetness", "wet"}}}) {
      INFO(sheet << ", " << road);
      CHECK(bare(sheet, "road", "0.49 mm", road));
      CHECK_FALSE(bare(sheet, "road", "0.5 mm", road));
      // Half of a hand-cut tread is credited.
      CHECK(bare(sheet, "cut-slick", "0.98 mm", road));
      CHECK_FALSE(bare(sheet, "cut-slick", "1 mm", road));
    }
  for (const std::string& sheet : all_sheets)
    for (const Json& road : {Json{{"water", "0.19 mm"}}, Json{{"wetness", "damp"}}})
      CHECK_FALSE(bare(sheet, "road", "0.49 mm", road));
  // No law of tread is asked here: it is the water alone that stops it.
  for (const char* sheet : {"standing-water", "stopping"})
    CHECK(ask_of(sheet, tyre({{"wetness", "wet"},
                              {"tread", "0.4 mm"}}))["hold_to"]["governed_by"] == "slick_in_water");
}

TEST_CASE("water of 100 mm and more is not to be entered, under one name in every sheet") {
  for (const std::string& sheet : all_sheets) {
    INFO(sheet);
    for (const char* deep : {"100 mm", "400 mm"}) {
      const Json answer = ask_of(sheet, tyre({{"water", deep}}));
      CHECK(hold_to(answer) == 0.0);
      CHECK(answer["hold_to"]["governed_by"] == "crossing");
      CHECK(answer["verdict"]["level"] == "unfit");
      CHECK(limit(answer, "crossing")["text"] == "not at any speed");
      for (const char* other : {"aquaplaning", "puddles"})
        CHECK_FALSE(with_id(answer["limits"], other));
      check_governing(answer);
    }
    const Json less = ask_of(sheet, tyre({{"water", "99 mm"}}));
    CHECK_FALSE(with_id(less["limits"], "crossing"));
    CHECK(hold_to(less) > 0.0);
  }
}
