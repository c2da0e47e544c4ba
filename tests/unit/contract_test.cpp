#include "core/json/contract.hpp"

#include <algorithm>
#include <nlohmann/json.hpp>

#include "tests/support/catch.hpp"

using namespace treadwater::testing;
using Json = nlohmann::json;

namespace {
Json ask(const std::string& input, const std::string& sheet = "tyre-check") {
  return Json::parse(treadwater::json::answer(sheet, input));
}
const char* full =
    R"({"size":"205/55 R16 91V","load":"430 kg","pressure":"220 kPa","tread":"3 mm","water":"5 mm","today":"2026-11-25"})";
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
  const auto first = treadwater::answer::first_sheets();
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

TEST_CASE("describe() gives the fixed field ids of tyre-check, the ways in and the sources") {
  const Json d = Json::parse(treadwater::json::describe());
  CHECK(d["sheets"][0]["id"] == "tyre-check");
  std::vector<std::string> ids;
  for (const Json& field : d["sheets"][0]["fields"]) ids.push_back(field["id"]);
  for (const char* id : {"size", "load", "pressure", "pressure_state", "tread", "water", "surface",
                         "tyre_kind", "speed", "place", "date_code", "units"})
    CHECK(std::count(ids.begin(), ids.end(), id) == 1);
  CHECK(ids.size() == 12);
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
