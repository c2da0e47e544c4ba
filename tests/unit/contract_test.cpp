#include "core/json/contract.hpp"

#include <algorithm>
#include <cmath>
#include <nlohmann/json.hpp>

#include "core/sheets/field.hpp"
#include "core/sheets/sheets.hpp"
#include "tests/support/catch.hpp"

using namespace treadwater::testing;
using Json = nlohmann::json;

namespace {
Json ask(const std::string& input, const std::string& sheet = "tyre-check") {
  return Json::parse(treadwater::json::answer(sheet, input));
}
const char* full =
    R"({"size":"205/55 R16 91V","load":"430 kg","pressure":"220 kPa","tread":"3 mm","water":"5 mm","today":"2026-11-25"})";

// A sheet with lists and every block that is drawn from numbers, under the name of a real one.
namespace a = treadwater::sheets;
using treadwater::Phrase;
using treadwater::Text;

constexpr a::SheetHead invented_head{"tyre-check", Phrase("Invented"), Phrase("For a test")};
constexpr a::TextField note{"note", Phrase("Note")};
constexpr a::TextField load{"load", Phrase("Load"), Phrase(), a::required};
constexpr a::TextField length{"length", Phrase("Length"), Phrase(), a::required};
constexpr a::ListField corners{"corners", Phrase("Corner"), Phrase(), 2};
constexpr a::ListField stages{"stages", Phrase("Stage"), Phrase(), 30};

const a::SheetDescription& invented_sheet() {
  static const a::SheetDescription sheet = {
      invented_head,
      {a::describe(note),
       a::describe(corners, {a::describe(load)}, {Phrase("Front left"), Phrase("Front right")}),
       a::describe(stages, {a::describe(length)})},
      {"example",
       Phrase("Two corners"),
       Phrase(),
       {{"note", "as found"},
        {"corners.0.load", "430 kg"},
        {"corners.1.load", "410 kg"},
        {"corners.1.tread", "3 mm"},
        {"stages.0.length", "9 km"}}}};
  return sheet;
}

a::Answer invented_answer(const a::Input&) {
  const auto t = [](const char* text) { return Text(std::string(text)); };
  a::Answer answer;
  answer.charts.push_back(
      {"onset",
       t("Onset"),
       t("It falls."),
       {t("Water"), t("mm")},
       {t("Speed"), t("km/h")},
       {{"subject", t("This tyre"), {1.0, 2.0}, {90.0, NAN}, {80.0, 70.0}, {95.0, INFINITY}},
        {"reference", t("A new one"), {1.0}, {99.0}, {}, {}}},
       {{2.0, 70.0, t("Here")}},
       {"", {}, {}, {t("Water"), t("Speed")}, {{t("1 mm"), t("90 km/h")}}}});
  answer.maps.push_back({"map",
                         t("Map"),
                         {},
                         {t("Water"), t("mm")},
                         {t("Tread"), t("mm")},
                         {t("Speed"), t("km/h")},
                         {1.0, 2.0},
                         {3.0},
                         {{90.0, NAN}},
                         {}});
  answer.timelines.push_back({"run",
                              t("Run"),
                              {},
                              {{t("Stage 1"), t("Dry"), 9.0, a::Level::note},
                               {t("Stage 2"), t("Wet"), NAN, a::Level::unfit}}});
  answer.tables.push_back(
      {"tyres", t("Tyres"), {}, {t("Corner"), t("Load")}, {{t("Front left"), t("430 kg")}}});
  return answer;
}

treadwater::judge::Sources no_sources() { return {}; }

const a::Sheet invented{invented_head, invented_sheet, invented_answer};
const a::Sheets invented_alone{&invented, 1, no_sources};
}  // namespace

TEST_CASE("describe() gives each sheet with its form, and an example that the sheet answers") {
  const Json d = Json::parse(treadwater::json::describe());
  CHECK(d["sheets"].size() > 1);
  for (const Json& sheet : d["sheets"]) {
    CAPTURE(sheet["id"].get<std::string>());
    CHECK_FALSE(sheet.contains("elsewhere"));
    CHECK(sheet["fields"].size() > 1);
    CHECK(sheet["fields"][0]["id"] == "units");
    Json input = sheet["example"]["input"];
    input["today"] = "2026-11-25";
    const Json a = ask(input.dump(), sheet["id"]);
    CHECK(a["problems"] == Json::array());
    CHECK(a.contains("verdict"));
  }
}

TEST_CASE("a module of the first sheets knows the others by name") {
  const auto first = treadwater::sheets::first_sheets();
  const Json d = Json::parse(treadwater::json::describe(first));
  const Json all = Json::parse(treadwater::json::describe());
  REQUIRE(d["sheets"].size() == all["sheets"].size());
  CHECK(d["sheets"][0] == all["sheets"][0]);
  for (std::size_t i = 1; i < d["sheets"].size(); ++i) {
    CHECK(d["sheets"][i]["title"] == all["sheets"][i]["title"]);
    CHECK(d["sheets"][i]["elsewhere"] == true);
  }
  CHECK(Json::parse(treadwater::json::answer(first, "tyre-check", full)) == ask(full));
  const Json refused = Json::parse(treadwater::json::answer(first, "wear-log", "{}"));
  CHECK(refused["problems"][0]["code"] == "unknown_sheet");
}

TEST_CASE("a preset holds the rows of a list, and a list may have rows of its own names") {
  const Json sheet = Json::parse(treadwater::json::describe(invented_alone))["sheets"][0];
  const Json input = sheet["example"]["input"];
  CHECK(input["note"] == "as found");
  CHECK(input["corners"] ==
        Json::parse(R"([{"load": "430 kg"}, {"load": "410 kg", "tread": "3 mm"}])"));
  CHECK(input["stages"] == Json::parse(R"([{"length": "9 km"}])"));
  CHECK(sheet["fields"][1]["row_names"] == Json::parse(R"(["Front left", "Front right"])"));
  CHECK_FALSE(sheet["fields"][2].contains("row_names"));
}

TEST_CASE(
    "charts, maps, timelines and tables: what is no number is null, and no share is left out") {
  const Json blocks =
      Json::parse(treadwater::json::answer(invented_alone, "tyre-check", "{}"))["blocks"];
  REQUIRE(blocks.size() == 4);
  const Json& timeline = blocks[0];
  CHECK(timeline["kind"] == "timeline");
  CHECK(timeline["steps"][0] ==
        Json::parse(R"({"label": "Stage 1", "text": "Dry", "share": 9.0, "level": "note"})"));
  CHECK_FALSE(timeline["steps"][1].contains("share"));
  const Json& chart = blocks[2];
  CHECK(chart["kind"] == "chart");
  CHECK(chart["text"] == "It falls.");
  CHECK(chart["y"] == Json::parse(R"({"label": "Speed", "unit": "km/h"})"));
  CHECK(chart["series"][0]["y"] == Json::parse("[90.0, null]"));
  CHECK(chart["series"][0]["high"] == Json::parse("[95.0, null]"));
  CHECK_FALSE(chart["series"][1].contains("low"));
  CHECK(chart["marks"][0] == Json::parse(R"({"x": 2.0, "y": 70.0, "label": "Here"})"));
  CHECK(chart["rows"][0][1] == "90 km/h");
  CHECK(blocks[3]["kind"] == "map");
  CHECK(blocks[3]["values"] == Json::parse("[[90.0, null]]"));
  CHECK(blocks[1]["kind"] == "table");
  CHECK(blocks[1]["rows"][0][0] == "Front left");
}

TEST_CASE("describe() gives the fixed field ids of tyre-check, the ways in and the sources") {
  const Json d = Json::parse(treadwater::json::describe());
  CHECK(d["sheets"][0]["id"] == "tyre-check");
  std::vector<std::string> ids;
  for (const Json& field : d["sheets"][0]["fields"]) ids.push_back(field["id"]);
  for (const char* id : {"size", "load", "pressure", "pressure_state", "tread", "wetness", "water",
                         "surface", "tyre_kind", "speed", "place", "date_code", "units"})
    CHECK(std::count(ids.begin(), ids.end(), id) == 1);
  CHECK(ids.size() == 13);
  CHECK(d["ways"].size() == 3);
  for (const Json& source : d["sources"]) {
    CHECK(source.contains("title"));
    CHECK(source.contains("standing"));
  }
}

TEST_CASE("an answer has the members of the contract") {
  const Json a = ask(full);
  CHECK(a["ok"] == true);
  CHECK(a["sheet"] == "tyre-check");
  CHECK(a["verdict"]["level"] == "care");
  CHECK(a["hold_to"]["kmh"] == 50.0);
  CHECK(a["hold_to"]["governed_by"] == "aquaplaning");
  CHECK_FALSE(a.contains("no_limit"));
  CHECK(a["limits"][0]["governs"] == true);
  CHECK(a["limits"][1]["governs"] == false);
  for (const Json& limit : a["limits"]) {
    CHECK(limit["low_kmh"] <= limit["kmh"]);
    CHECK(limit["kmh"] <= limit["high_kmh"]);
    for (const Json& id : limit["sources"]) CHECK(a["sources"].contains(id.get<std::string>()));
  }
  for (const Json& figure : a["figures"])
    for (const Json& id : figure["sources"]) CHECK(a["sources"].contains(id.get<std::string>()));
  CHECK(a["blocks"][0]["kind"] == "drawing");
  CHECK(a["blocks"][1]["kind"] == "marking");
  CHECK(a["blocks"][2]["kind"] == "spoken");
  CHECK_FALSE(a["safety"].get<std::string>().empty());
}

TEST_CASE("where nothing limits it, no_limit stands in place of hold_to, and no limit governs") {
  const Json a = ask(
      R"({"size":"205/55 R16 91V","load":"430 kg","pressure":"220 kPa","tread":"6 mm","wetness":"dry","today":"2026-11-25"})");
  CHECK_FALSE(a.contains("hold_to"));
  CHECK(a["no_limit"] == Json::parse(R"({
    "text": "Nothing here limits it below the road's own limit.",
    "own_kmh": 240.0,
    "own_text": "Its own limit is 240 km/h (speed symbol V)."})"));
  CHECK(a["limits"].size() == 2);
  for (const Json& limit : a["limits"]) CHECK(limit["governs"] == false);
}

TEST_CASE("a number in the input is read in the field's first unit") {
  const Json a = ask(
      R"({"size":"205/55 R16 91V","load":430,"pressure":220,"tread":3,"water":5,"today":"2026-11-25"})");
  CHECK(a["ok"] == true);
  CHECK(a["hold_to"]["kmh"] == 50.0);
}

TEST_CASE("problems leave out verdict and hold-to speed") {
  const Json a = ask(R"({"size":"205/55 R16 91V","load":"x","pressure":"220 kPa","tread":"3 mm"})");
  CHECK(a["ok"] == false);
  CHECK_FALSE(a.contains("verdict"));
  CHECK_FALSE(a.contains("hold_to"));
  CHECK_FALSE(a.contains("no_limit"));
  CHECK(a["problems"][0]["field"] == "load");
}

TEST_CASE("what is not an object of fields is answered with a problem") {
  for (const char* input :
       {"", "{", "[]", "null", "7", "\"text\"", "{\"size\":1e999}", "\xFF\xFE"}) {
    const Json a = ask(input);
    CHECK(a["ok"] == false);
    CHECK(a["problems"][0]["code"] == "not_an_object");
  }
  CHECK(ask(R"({"load":{"a":1}})")["ok"] == false);
  CHECK(ask(std::string(70000, ' '))["problems"][0]["code"] == "too_long");
  CHECK(ask("{}", "no-such-sheet")["problems"][0]["code"] == "unknown_sheet");
  CHECK(ask(std::string(30000, '['))["ok"] == false);
}

TEST_CASE("a list where a text is asked for is refused by name") {
  const Json a =
      ask(R"({"size":"205/55 R16 91V","load":["430 kg"],"pressure":"220 kPa","tread":"3 mm"})");
  CHECK(a["ok"] == false);
  CHECK_FALSE(a.contains("verdict"));
}

TEST_CASE("broken bytes and hostile texts come back as clean JSON") {
  const Json a =
      ask("{\"size\":\"\xF0\x9F\x9B\x9E\",\"<script>\":\"</script>\",\"__proto__\":\"x\"}");
  CHECK(a["ok"] == false);
  CHECK(a["problems"].size() >= 3);
}

TEST_CASE("a text in place of a list is told that the field takes rows") {
  const Json a = ask(R"({"rows":"abc"})", "field-list");
  CHECK(a["ok"] == false);
  REQUIRE(a["problems"][0]["field"] == "rows");
  CHECK(a["problems"][0]["code"] == "not_a_list");
  CHECK(a["problems"][0]["text"].get<std::string>().find("no field") == std::string::npos);
  CHECK(a["problems"][0]["text"].get<std::string>().find("is a list") != std::string::npos);
}

TEST_CASE("a field of a row given by its path is refused as a field that is not known") {
  const char* rest = R"("depth":"3 mm","where":"road")";
  for (const char* path : {"tyres.0.tyre_kind", "tyres.7.tread"})
    for (const std::string rows : {"", R"(,"tyres":[{"tyre_kind":"road","tread":"3 mm"}])"}) {
      INFO(path << rows);
      const Json a = ask("{" + std::string(rest) + ",\"" + path + "\":\"slick\"" + rows + "}",
                         "standing-water");
      CHECK(a["ok"] == false);
      CHECK_FALSE(a.contains("verdict"));
      CHECK_FALSE(a.contains("hold_to"));
      int refused = 0;
      for (const Json& p : a["problems"])
        refused += p["field"] == path && p["code"] == "unknown_field" ? 1 : 0;
      CHECK(refused == 1);
    }
}
