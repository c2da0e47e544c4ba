// The sheet `stage-tyres`. The planner under it is held against brute force in tests/property.
#include <nlohmann/json.hpp>

#include "core/json/contract.hpp"
#include "tests/support/catch.hpp"

using Json = nlohmann::json;

namespace {

Json ask(const Json& input) {
  return Json::parse(treadwater::json::answer("stage-tyres", input.dump()));
}

Json day() {
  return {{"today", "2026-11-25"},
          {"stages",
           {{{"name", "Long Meadow"}, {"length", "8 km"}, {"dry", "100"}, {"halt", "service"}},
            {{"name", "Mill Lane"}, {"length", "8 km"}, {"dry", "100"}}}},
          {"sets", {{{"kind", "soft"}}, {{"kind", "wet"}}}}};
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

std::string verdict(const Json& answer) { return answer["verdict"]["text"]; }

void make_wet(Json& input) {
  for (Json& stage : input["stages"]) {
    stage["dry"] = "0";
    stage["wet"] = "100";
  }
}

}  // namespace

TEST_CASE("a dry day takes the dry tyre, a wet day the wet one") {
  const Json dry = ask(day());
  REQUIRE(dry["problems"] == Json::array());
  CHECK(verdict(dry).find("Fit soft stage tyre now") == 0);
  Json input = day();
  make_wet(input);
  CHECK(verdict(ask(input)).find("Fit full wet now") == 0);
}

TEST_CASE("at a halt it says what to fit by the weather seen, and draws stage by stage") {
  Json input = day();
  for (Json& stage : input["stages"]) {
    stage["dry"] = "50";
    stage["wet"] = "50";
  }
  input["persistence"] = "100";
  const Json answer = ask(input);
  const Json* halts = with_id(answer["blocks"], "halts");
  REQUIRE(halts);
  CHECK((*halts)["rows"].size() == 2);
  CHECK((*halts)["rows"][0][1] == "dry");
  CHECK((*halts)["rows"][0][2] == "soft stage tyre");
  CHECK((*halts)["rows"][1][1] == "wet");
  CHECK((*halts)["rows"][1][2] == "full wet");
  REQUIRE(with_id(answer["blocks"], "stages"));
  CHECK((*with_id(answer["blocks"], "stages"))["steps"].size() == 2);
  CHECK(with_id(answer["blocks"], "radio"));
}

TEST_CASE("a set that would not last the stages is not fitted; with none left it says so") {
  Json input = day();
  for (Json& stage : input["stages"]) stage["length"] = "30 km";
  input["sets"] = {{{"kind", "soft"}}};
  const Json answer = ask(input);
  CHECK(answer["ok"] == false);
  CHECK_FALSE(answer.contains("verdict"));
  input["sets"][0]["life"] = "80 km";  // the crew's own notes
  CHECK(ask(input)["ok"] == true);
}

TEST_CASE("chances that do not make 100 are named at their stage") {
  Json input = day();
  input["stages"][1]["wet"] = "30";
  const Json answer = ask(input);
  REQUIRE(answer["problems"].size() == 1);
  CHECK(answer["problems"][0]["field"] == "stages.1.dry");
  CHECK(answer["problems"][0]["text"].get<std::string>().find("130") != std::string::npos);
}

TEST_CASE("rules: studs forbidden, the open road, no set at all") {
  Json input = day();
  input["sets"] = {{{"kind", "studded"}}};
  input["no_studs"] = "yes";
  CHECK(ask(input)["ok"] == false);
  input = day();
  input["road_sections"] = "yes";
  input["sets"] = {{{"kind", "slick"}}};
  CHECK(ask(input)["ok"] == false);
  input["sets"] = Json::array();
  CHECK(ask(input)["problems"][0]["field"] == "sets");
  input = day();
  input["stages"] = Json::array();
  CHECK(ask(input)["problems"][0]["field"] == "stages");
}

TEST_CASE("standing water and cold are said with the choice") {
  Json input = day();
  input["stages"][0]["water"] = "5 mm";
  input["stages"][0]["air"] = "-5 °C";
  const Json answer = ask(input);
  CHECK(with_id(answer["cautions"], "water_on_stage"));
  CHECK(with_id(answer["cautions"], "cold_tyres"));
  CHECK(answer["verdict"]["level"] == "care");
}

TEST_CASE("one more set never makes the expected loss worse") {
  Json input = day();
  for (Json& stage : input["stages"]) {
    stage["dry"] = "60";
    stage["wet"] = "40";
  }
  const auto loss = [](const Json& answer) {
    return (*with_id(answer["figures"], "expected_lost"))["value"].get<double>();
  };
  const double two = loss(ask(input));
  input["sets"].push_back({{"kind", "cut-slick"}});
  CHECK(loss(ask(input)) <= two + 1e-9);
}

TEST_CASE("a long event is answered too, in every attitude, with what would change it") {
  Json input = day();
  input["stages"] = Json::array();
  for (int i = 0; i < 20; ++i)
    input["stages"].push_back({{"length", "8 km"},
                               {"dry", "40"},
                               {"damp", "20"},
                               {"wet", "25"},
                               {"standing", "10"},
                               {"snow", "5"},
                               {"halt", i % 3 == 2 ? "service" : "none"}});
  input["sets"] = Json::array();
  for (const char* kind :
       {"soft", "club", "cut-slick", "wet", "all-weather", "winter", "race", "slick"})
    input["sets"].push_back({{"kind", kind}});
  const Json answer = ask(input);
  CHECK(answer["ok"] == true);
  CHECK(with_id(answer["cautions"], "swing"));
  input["attitude"] = "steady";
  const Json steady = ask(input);
  CHECK(with_id(steady["cautions"], "swing"));
  CHECK(value(steady, "tail_lost") < value(answer, "tail_lost") + 1e-9);
}

TEST_CASE("a crew's own figures count before ours, for the set they were given with alone") {
  Json input = day();
  input["stages"][0]["halt"] = "none";
  input["stages"].push_back({{"length", "8 km"}, {"dry", "100"}});
  input["sets"] = {{{"kind", "soft"}}};
  CHECK(ask(input)["ok"] == false);  // 24 km on tyres good for 19
  input["sets"][0]["life"] = "40 km";
  CHECK(ask(input)["ok"] == true);
  // Another set of that kind, without figures, still lasts 19 km.
  input["sets"] = {{{"kind", "soft"}, {"life", "40 km"}, {"tread", "1.6 mm"}}, {{"kind", "soft"}}};
  CHECK(ask(input)["ok"] == false);

  Json slow = day();
  slow["sets"][0]["slower_dry"] = "30";
  CHECK(verdict(ask(slow)).find("Fit full wet now") == 0);
}

TEST_CASE("a rule that the tread be moulded refuses slicks and cut slicks") {
  Json input = day();
  input["sets"] = {{{"kind", "slick"}}, {{"kind", "cut-slick"}}};
  CHECK(ask(input)["ok"] == true);
  input["moulded_only"] = "yes";
  const Json answer = ask(input);
  CHECK(answer["ok"] == false);
  CHECK(answer["problems"][0]["text"].get<std::string>().find("moulded") != std::string::npos);
}

TEST_CASE("water too deep to drive into is no stage to drive") {
  Json input = day();
  input["stages"][1]["water"] = "120 mm";
  const Json answer = ask(input);
  CHECK(answer["verdict"]["level"] == "unfit");
  CHECK(with_id(answer["cautions"], "deep_water"));
}

TEST_CASE("the cars of a team: the heavier wears faster, the softer floats sooner") {
  Json input = day();
  input["stages"][1]["water"] = "6 mm";
  input["cars"] = {{{"size", "165/70 R13 79T"}, {"load", "240 kg"}, {"pressure", "1.9 bar"}},
                   {{"size", "165/70 R13 79T"}, {"load", "360 kg"}, {"pressure", "1.4 bar"}},
                   Json::object()};
  const Json answer = ask(input);
  REQUIRE(answer["problems"] == Json::array());
  const Json& rows = (*with_id(answer["blocks"], "cars"))["rows"];
  REQUIRE(rows.size() == 2);
  CHECK(rows[0][1] == "1.00 times");
  CHECK(rows[1][1] == "1.50 times");
  const auto speed = [](const Json& row) { return std::stoi(row[2].get<std::string>()); };
  CHECK(speed(rows[1]) < speed(rows[0]));
  input["cars"][1].erase("load");
  CHECK(ask(input)["problems"][0]["field"] == "cars.1.load");
}

TEST_CASE("each set is said to be needed, perhaps needed, or never") {
  Json input = day();
  input["sets"].push_back({{"kind", "studded"}});
  const Json answer = ask(input);
  const Json* carry = with_id(answer["blocks"], "carry");
  REQUIRE(carry);
  CHECK((*carry)["rows"][0][1] == "in any weather");
  CHECK((*carry)["rows"][2][1] == "never: leave it at home");
}
