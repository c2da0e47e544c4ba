// The sheet `stage-tyres`. The planner under it is held against brute force in tests/property.
#include <nlohmann/json.hpp>

#include "core/json/contract.hpp"
#include "tests/support/catch.hpp"

using Json = nlohmann::json;
using namespace treadwater::testing;

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

std::string text(const Json& answer, const std::string& id) {
  const Json* caution = with_id(answer["cautions"], id);
  REQUIRE(caution);
  return (*caution)["text"];
}

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
  CHECK((*halts)["columns"] == Json({"Before", "For", "If it was dry", "If it was wet"}));
  REQUIRE((*halts)["rows"].size() == 2);
  CHECK((*halts)["rows"][0][0] == "Long Meadow");
  CHECK((*halts)["rows"][0][2] == (*halts)["rows"][0][3]);  // the start: nothing seen yet
  CHECK((*halts)["rows"][1] == Json({"Mill Lane", "1 stage, 8 km", "soft stage tyre", "full wet"}));
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

TEST_CASE("standing water whose depth nobody gave is not fit in silence") {
  Json input = day();
  input["stages"][1]["dry"] = "80";
  input["stages"][1]["standing"] = "20";
  const auto level = [&] {
    const Json answer = ask(input);
    const Json* caution = with_id(answer["cautions"], "water_not_measured");
    return caution ? (*caution)["level"].get<std::string>() : std::string();
  };
  CHECK(level() == "care");
  CHECK(text(ask(input), "water_not_measured").find("on Mill Lane,") != std::string::npos);
  input["stages"][1]["water"] = "0";
  CHECK(level() == "care");
  input["stages"][1]["dry"] = "91";
  input["stages"][1]["standing"] = "9";
  CHECK(level() == "note");
  input["stages"][1]["water"] = "4 mm";
  CHECK(level() == "");
  CHECK_FALSE(with_id(ask(day())["cautions"], "water_not_measured"));
}

TEST_CASE("the sentence to read out says what to hold to in the water before the next halt") {
  Json input = day();
  make_wet(input);
  const auto said = [&] {
    return (*with_id(ask(input)["blocks"], "radio"))["text"].get<std::string>();
  };
  CHECK(said() == "Fit full wet for Long Meadow.");
  input["stages"][0]["water"] = "8 mm";
  const std::string held = text(ask(input), "water_on_stage");
  const std::size_t speed = held.find("Hold to ") + 8;
  CHECK(said() == "Fit full wet for Long Meadow. In the water on Long Meadow hold to " +
                      held.substr(speed, held.find(" km/h there") - speed) +
                      " kilometres an hour.");
  input["stages"][0].erase("water");
  input["stages"][1]["water"] = "8 mm";  // after the service
  CHECK(said() == "Fit full wet for Long Meadow.");
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
  CHECK(rows[0][1] == "× 1.00");
  CHECK(rows[1][1] == "× 1.50");
  const auto speed = [](const Json& row) { return std::stoi(row[3].get<std::string>()); };
  CHECK(speed(rows[1]) < speed(rows[0]));
  input["cars"][1].erase("load");
  CHECK((*with_id(ask(input)["blocks"], "cars"))["rows"][1][1] == "–");
}

TEST_CASE("no car is told a speed for water too deep to enter") {
  Json input = day();
  input["cars"] = {{{"pressure", "1.9 bar"}}, {{"pressure", "1.4 bar"}}};
  input["stages"][1]["water"] = "150 mm";
  CHECK((*with_id(ask(input)["blocks"], "cars"))["columns"].size() == 3);
  // Another stage that may be driven keeps its own.
  input["stages"][0]["water"] = "6 mm";
  const Json cars = *with_id(ask(input)["blocks"], "cars");
  CHECK(cars["columns"].size() == 5);
  CHECK_THAT(cars["text"].get<std::string>(), ContainsSubstring("Long Meadow"));
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

// ---- what must never be called fit in silence ----

TEST_CASE("a set that may be on in weather it is not safe in is never called fit") {
  Json input = day();
  input["sets"] = {{{"kind", "soft"}}};
  input["stages"][1]["dry"] = "95";
  input["stages"][1]["standing"] = "5";
  Json answer = ask(input);
  CHECK(answer["verdict"]["level"] == "care");
  REQUIRE(with_id(answer["cautions"], "unsafe_weather"));
  CHECK_THAT(text(answer, "unsafe_weather"), ContainsSubstring("Mill Lane"));
  CHECK_THAT(text(answer, "unsafe_weather"), ContainsSubstring("5 %"));
  // Likelier than not: no, and the radio does not say "fit".
  input["stages"][1]["dry"] = "40";
  input["stages"][1]["standing"] = "60";
  answer = ask(input);
  CHECK(answer["verdict"]["level"] == "unfit");
  CHECK(verdict(answer).find("Not fit") == 0);
  CHECK((*with_id(answer["blocks"], "radio"))["text"].get<std::string>().find("Not fit") == 0);
  // The careful get no such plan.
  input["attitude"] = "safe";
  CHECK(ask(input)["ok"] == false);
}

TEST_CASE("a slick in reported water is unfit, and water too deep to enter is for anybody") {
  Json input = day();
  input["sets"] = {{{"kind", "slick"}}};
  input["stages"][0]["water"] = "3 mm";
  Json answer = ask(input);
  CHECK(answer["verdict"]["level"] == "unfit");
  CHECK(with_id(answer["cautions"], "water_not_in_chances"));
  CHECK((*with_id(answer["blocks"], "water"))["rows"][0][4] == "do not enter");
  input["sets"] = {{{"kind", "club"}}};
  CHECK(ask(input)["verdict"]["level"] == "care");
  input["stages"][0]["water"] = "99 mm";
  CHECK(ask(input)["verdict"]["level"] == "care");
  input["stages"][0]["water"] = "100 mm";
  answer = ask(input);
  CHECK(answer["verdict"]["level"] == "unfit");
  CHECK_FALSE(with_id(answer["cautions"], "water_on_stage"));
}

TEST_CASE("a slick is unfit in 0.2 mm of reported water, and in less is told a speed as any tyre") {
  const auto in = [](const char* kind, const char* water) {
    Json input = day();
    input["sets"] = {{{"kind", kind}}};
    input["stages"][0]["water"] = water;
    return ask(input);
  };
  const auto told = [](const Json& answer) {
    return (*with_id(answer["blocks"], "water"))["rows"][0][4].get<std::string>();
  };
  CHECK(in("slick", "0.2 mm")["verdict"]["level"] == "unfit");
  CHECK(told(in("slick", "0.2 mm")) == "do not enter");
  CHECK(in("slick", "0.19 mm")["verdict"]["level"] == "care");
  CHECK(told(in("slick", "0.19 mm")).find(" km/h") != std::string::npos);
  // Grooves take up so little: no speed is told.
  const Json club = in("club", "0.5 mm");
  REQUIRE(club["ok"] == true);
  CHECK_FALSE(with_id(club["cautions"], "water_on_stage"));
  CHECK_FALSE(with_id(club["blocks"], "water"));
  CHECK(told(in("club", "1 mm")).find(" km/h") != std::string::npos);
}

TEST_CASE("a stage without any weather is taken as dry, and said") {
  Json input = day();
  input["stages"][1].erase("dry");
  const Json answer = ask(input);
  CHECK(answer["verdict"]["level"] == "care");
  CHECK_THAT(text(answer, "weather_assumed"), ContainsSubstring("Mill Lane"));
  CHECK_THAT(text(answer, "weather_assumed"), !ContainsSubstring("Long Meadow"));
}

TEST_CASE("a row without a kind is asked for it") {
  Json input = day();
  input["sets"].push_back({{"count", "2"}});
  const Json answer = ask(input);
  REQUIRE(answer["problems"].size() == 1);
  CHECK(answer["problems"][0]["field"] == "sets.2.kind");
}

TEST_CASE("findings stand at the field that mends them") {
  const auto first_problem = [](const Json& input) {
    const Json answer = ask(input);
    REQUIRE(answer["problems"].size() >= 1);
    return answer["problems"][0]["field"].get<std::string>();
  };
  Json input = day();
  input["most_sets"] = "0";
  CHECK(first_problem(input) == "most_sets");
  input["most_sets"] = "1.5";
  CHECK(first_problem(input) == "most_sets");
  input = day();
  input["sets"][1]["count"] = "0";
  CHECK(first_problem(input) == "sets.1.count");
  input["sets"][1]["count"] = "2.5";
  CHECK(first_problem(input) == "sets.1.count");
  input = day();
  input["sets"][1]["coolest"] = "30 °C";
  CHECK(first_problem(input) == "sets.1.coolest");
  input = day();
  for (int i = 0; i < 11; ++i) input["stages"].push_back(input["stages"][0]);
  input["sets"][0]["count"] = "10";
  input["sets"][1]["count"] = "10";
  CHECK(first_problem(input) == "stages");
  input = day();
  input["sets"][0]["tread"] = input["sets"][1]["tread"] = "1.6 mm";
  CHECK(first_problem(input) == "sets");
}

TEST_CASE("a crew's own life is that set's alone, on the ground of the event") {
  Json input = day();
  for (Json& stage : input["stages"]) stage["length"] = "30 km";
  input["sets"] = {{{"kind", "soft"}, {"life", "80 km"}}, {{"kind", "soft"}}};
  CHECK(verdict(ask(input)).find("Fit soft stage tyre of row 1 now") == 0);
  input["sets"] = {{{"kind", "soft"}}, {{"kind", "soft"}, {"life", "80 km"}, {"name", "B"}}};
  CHECK(verdict(ask(input)).find("Fit soft stage tyre B now") == 0);
  // Half the stages are gravel, where it lasts longest: on tarmac it still lasts less.
  input = day();
  for (Json& stage : input["stages"]) stage["length"] = "20 km", stage["gravel"] = "50";
  input["sets"] = {{{"kind", "gravel-soft"}, {"life", "70 km"}}};  // ours: 35 gravel, 15 tarmac
  const Json answer = ask(input);
  REQUIRE(answer["ok"] == true);  // 2 x (10/70 + 10/30) = 0.95 of its life
  input["sets"][0]["life"] = "65 km";
  CHECK(ask(input)["ok"] == false);
}

TEST_CASE("a crew's own temperature window counts before ours") {
  Json input = day();
  for (Json& stage : input["stages"]) stage["air"] = "8 °C";
  CHECK_FALSE(with_id(ask(input)["cautions"], "cold_tyres"));
  input["sets"][0]["coolest"] = "9 °C";
  input["sets"].erase(1);
  const Json answer = ask(input);
  CHECK_THAT(text(answer, "cold_tyres"), ContainsSubstring("9 °C"));
  CHECK_THAT(text(answer, "cold_tyres"), ContainsSubstring("Mill Lane"));
}

TEST_CASE("cold is judged for the set that is on after each halt, not for the first alone") {
  Json input = day();
  input["stages"][0]["air"] = "8 °C";
  input["stages"][1]["air"] = "-4 °C";
  Json answer = ask(input);
  CHECK_THAT(text(answer, "cold_tyres"), ContainsSubstring("Mill Lane"));
  CHECK_THAT(text(answer, "cold_tyres"), !ContainsSubstring("Long Meadow"));
  CHECK_FALSE(with_id(answer["cautions"], "air_unknown"));
  input["stages"][1].erase("air");
  answer = ask(input);
  CHECK_FALSE(with_id(answer["cautions"], "cold_tyres"));
  CHECK_THAT(text(answer, "air_unknown"), ContainsSubstring("Mill Lane"));
}

TEST_CASE("the least tread is asked of all but slicks, and of them too where it is put in") {
  Json input = day();
  input["sets"] = {{{"kind", "slick"}}, {{"kind", "cut-slick"}, {"used", "50"}}};
  Json answer = ask(input);
  REQUIRE(answer["ok"] == true);
  // With a slick in the van the cut slick keeps its 1.6 mm: 60 % of its life is usable, half gone.
  input["sets"].erase(0);
  for (Json& stage : input["stages"]) stage["length"] = "1 km";
  CHECK(ask(input)["ok"] == true);
  input["stages"][0]["length"] = "4 km";
  CHECK(ask(input)["ok"] == false);
  input["sets"].push_back({{"kind", "slick"}, {"used", "95"}});
  CHECK(ask(input)["ok"] == false);
  input = day();
  input["sets"] = {{{"kind", "slick"}}};
  input["least_tread"] = "1.6 mm";
  CHECK(ask(input)["ok"] == false);
}

TEST_CASE("rules: moulded only, the share of grooves, an approval mark to look for") {
  Json input = day();
  input["sets"] = {{{"kind", "cut-slick"}}};
  input["moulded_only"] = "yes";
  CHECK(ask(input)["ok"] == false);
  input = day();
  input["sets"] = {{{"kind", "soft"}}};  // 17 to 21 % of it are grooves
  input["grooves"] = "17";
  CHECK_FALSE(with_id(ask(input)["cautions"], "grooves"));
  input["grooves"] = "20";
  CHECK(with_id(ask(input)["cautions"], "grooves"));
  input["grooves"] = "22";
  CHECK(ask(input)["ok"] == false);
  input = day();
  input["road_sections"] = "yes";
  CHECK(with_id(ask(input)["cautions"], "approval_mark"));
}

// ---- what the crew takes along ----

TEST_CASE("what to carry: how likely each set is, and how it stands now") {
  Json input = day();
  input["no_studs"] = "yes";
  input["sets"] = {{{"kind", "soft"}}, {{"kind", "wet"}}, {{"kind", "studded"}}};
  const Json answer = ask(input);
  const Json* carry = with_id(answer["blocks"], "carry");
  REQUIRE(carry);
  REQUIRE((*carry)["rows"].size() == 3);
  CHECK((*carry)["rows"][0][1] == "in any weather");
  CHECK((*carry)["rows"][0][2] == "goes on");
  CHECK((*carry)["rows"][1][1] == "never: leave it at home");
  CHECK_THAT((*carry)["rows"][1][2].get<std::string>(), ContainsSubstring("slower"));
  CHECK_THAT((*carry)["rows"][2][2].get<std::string>(), ContainsSubstring("studs"));
}

TEST_CASE("the tread left on every set that goes on, stage by stage") {
  const Json answer = ask(day());
  const Json* wear = with_id(answer["blocks"], "wear");
  REQUIRE(wear);
  CHECK((*wear)["columns"] == Json({"After", "soft stage tyre"}));
  // 8 km of 19, twice, from 5.5 mm to 1.6 mm.
  CHECK((*wear)["rows"][0] == Json({"Long Meadow", "3.9 mm (3.9 mm)"}));
  CHECK((*wear)["rows"][1] == Json({"Mill Lane", "2.2 mm (2.2 mm)"}));
}

TEST_CASE("cars of a team: wear by load and width, and the one that cannot do the same is named") {
  Json input = day();
  input["cars"] = {
      {{"name", "Blue"}, {"load", "300 kg"}, {"size", "185/60 R14"}, {"pressure", "2 bar"}},
      {{"name", "Red"}, {"load", "270 kg"}, {"size", "185/60 R14"}, {"pressure", "1.6 bar"}},
      {{"name", "Grey"}, {"load", "480 kg"}, {"size", "185/60 R14"}},
      {{"name", "Green"}}};
  input["stages"][1]["water"] = "4 mm";
  const Json answer = ask(input);
  const Json* cars = with_id(answer["blocks"], "cars");
  REQUIRE(cars);
  REQUIRE((*cars)["rows"].size() == 4);
  CHECK((*cars)["rows"][0][1] == "× 1.00");
  CHECK((*cars)["rows"][1][1] == "× 0.90");
  CHECK((*cars)["rows"][2][1] == "× 1.60");
  CHECK((*cars)["rows"][3][1] == "–");
  CHECK((*cars)["rows"][1][2] == "soft stage tyre");
  CHECK((*cars)["rows"][2][2] == "no set lasts");  // neither 2 x 12.8 km of 19 nor 12.8 of 12
  CHECK((*cars)["rows"][3][2] == "not known");
  CHECK_THAT(text(answer, "cars"), ContainsSubstring("Grey should not"));
  const auto speed = [&](std::size_t row) {
    return std::stod((*cars)["rows"][row][3].get<std::string>());
  };
  CHECK(speed(1) < speed(0));
  Json odd = input;
  odd["cars"][2]["size"] = "31x10.50 R15";
  CHECK(with_id(ask(odd)["cautions"], "size_unknown"));
  odd["cars"][2]["size"] = "banana";
  CHECK(ask(odd)["problems"][0]["field"] == "cars.2.size");
  // The sheet's own warning is for the lowest pressure and the widest tyre.
  const Json* water = with_id(answer["blocks"], "water");
  REQUIRE(water);
  for (std::size_t row = 0; row < 4; ++row)
    CHECK(std::stod((*water)["rows"][0][3].get<std::string>()) <= speed(row));
}

TEST_CASE("names of any kind stay short and are no templates") {
  Json input = day();
  input["stages"][0]["name"] = std::string(300, '#');
  input["stages"][0]["water"] = "4 mm";
  input["sets"][0]["name"] = "#";
  const Json answer = ask(input);
  CHECK(verdict(answer).find("Fit soft stage tyre # now") == 0);
  CHECK((*with_id(answer["blocks"], "stages"))["steps"][0]["label"].get<std::string>() ==
        std::string(40, '#').append("…"));
}
