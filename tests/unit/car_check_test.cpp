// The sheet `car-check`. Its rules are checked in tests/register, one tyre in tyre_check_test.cpp.
#include <nlohmann/json.hpp>

#include "core/json/contract.hpp"
#include "tests/support/catch.hpp"

using Json = nlohmann::json;

namespace {

Json corner(const char* size = "205/55 R16 91V", const char* pressure = "220 kPa",
            const char* tread = "6 mm") {
  return {{"size", size}, {"pressure", pressure}, {"tread", tread}};
}

Json car() {
  return {{"front_axle", "820 kg"},
          {"rear_axle", "680 kg"},
          {"water", "0"},
          {"today", "2026-11-25"},
          {"corners", {corner(), corner(), corner(), corner()}}};
}

Json ask(const Json& input) {
  return Json::parse(treadwater::json::answer("car-check", input.dump()));
}

const Json* with_id(const Json& rows, const std::string& id) {
  for (const Json& row : rows)
    if (row["id"] == id) return &row;
  return nullptr;
}

std::string level(const Json& answer, const std::string& id) {
  const Json* found = with_id(answer["cautions"], id);
  return found == nullptr ? "" : (*found)["level"].get<std::string>();
}

bool no_speed(const Json& answer) {
  return !answer.contains("hold_to") && !answer.contains("no_limit");
}

std::string spoken(const Json& answer) { return (*with_id(answer["blocks"], "radio"))["text"]; }

}  // namespace

TEST_CASE("four good tyres are fit, and each is in the table") {
  const Json answer = ask(car());
  REQUIRE(answer["problems"] == Json::array());
  CHECK(answer["verdict"]["level"] == "fit");
  CHECK_FALSE(answer.contains("hold_to"));
  CHECK(answer["no_limit"]["own_kmh"] == 240.0);
  CHECK((*with_id(answer["blocks"], "corners"))["rows"].size() == 4);
  CHECK(with_id(answer["cautions"], "no_spare"));
}

TEST_CASE("a corner is judged as the sheet for one tyre judges it, and the worst one governs") {
  Json input = car();
  input["water"] = "5 mm";
  input["corners"][2]["tread"] = "2 mm";
  const Json answer = ask(input);
  const Json one = Json::parse(treadwater::json::answer(
      "tyre-check",
      R"({"size":"205/55 R16 91V","load":"340 kg","pressure":"220 kPa","tread":"2 mm","water":"5 mm","today":"2026-11-25"})"));
  REQUIRE(one["hold_to"]["kmh"] > 0.0);
  CHECK(answer["hold_to"]["kmh"] == one["hold_to"]["kmh"]);
  CHECK(answer["limits"][0]["governs"] == true);
  CHECK(answer["limits"][0]["label"].get<std::string>().find("Rear left") == 0);
  for (const Json& limit : answer["limits"]) {
    int same = 0;
    for (const Json& other : answer["limits"]) same += other["id"] == limit["id"] ? 1 : 0;
    CHECK(same == 1);
  }
}

TEST_CASE("what holds of several corners is said once, with their names") {
  Json input = car();
  input["corners"][0]["tread"] = "2.5 mm";
  input["corners"][1]["tread"] = "2.5 mm";
  const Json answer = ask(input);
  int said = 0;
  for (const Json& c : answer["cautions"]) said += c["id"] == "tread_low" ? 1 : 0;
  CHECK(said == 1);
  CHECK((*with_id(answer["cautions"], "tread_low"))["text"].get<std::string>().find(
            "Front left, Front right: ") == 0);
}

TEST_CASE("of several wheels the chance of aquaplaning that is told is that of the likeliest") {
  Json input = car();
  input["water"] = "5 mm";
  input["speed"] = "70 km/h";
  for (const std::size_t rear : {2U, 3U}) input["corners"][rear]["tread"] = "2 mm";
  for (const std::size_t front : {0U, 1U}) input["corners"][front]["tread"] = "4 mm";
  const Json rear = Json::parse(treadwater::json::answer(
      "tyre-check",
      R"({"size":"205/55 R16 91V","load":"340 kg","pressure":"220 kPa","tread":"2 mm","water":"5 mm","speed":"70 km/h","today":"2026-11-25"})"));
  const std::string of_rear = (*with_id(rear["cautions"], "speed_above_hold_to"))["text"];
  REQUIRE(of_rear.find("in 86 of 100 cases") != std::string::npos);
  const Json answer = ask(input);
  CHECK(level(answer, "speed_above_hold_to") == "unfit");
  CHECK((*with_id(answer["cautions"], "speed_above_hold_to"))["text"].get<std::string>().find(
            of_rear) != std::string::npos);
}

TEST_CASE("axles: sizes, constructions, pressures, treads") {
  Json sizes = car();
  sizes["corners"][1]["size"] = "195/65 R15 91V";
  CHECK(level(ask(sizes), "mixed_axle") == "unfit");
  Json kinds = car();
  for (const std::size_t rear : {2U, 3U}) kinds["corners"][rear]["size"] = "5.60-15 4PR 78S";
  CHECK(level(ask(kinds), "mixed_construction") == "unfit");
  Json pressures = car();
  pressures["corners"][1]["pressure"] = "190 kPa";
  CHECK(level(ask(pressures), "uneven_pressure") == "care");
  pressures["corners"][1]["pressure"] = "165 kPa";
  CHECK(level(ask(pressures), "uneven_pressure") == "unfit");
  Json treads = car();
  treads["corners"][3]["tread"] = "3.5 mm";
  CHECK(level(ask(treads), "uneven_tread") == "care");
}

TEST_CASE("the deeper tread belongs behind") {
  Json input = car();
  for (const std::size_t rear : {2U, 3U}) input["corners"][rear]["tread"] = "4 mm";
  CHECK(level(ask(input), "deeper_in_front") == "care");
  for (const std::size_t front : {0U, 1U}) input["corners"][front]["tread"] = "3.5 mm";
  CHECK(level(ask(input), "deeper_in_front") == "");
}

TEST_CASE("three depths across a tread: soft, hard, out of line; the least of them is judged") {
  const auto worn = [](const char* inner, const char* centre, const char* outer) {
    Json input = car();
    input["corners"][0] = {{"size", "205/55 R16 91V"},
                           {"pressure", "220 kPa"},
                           {"tread", centre},
                           {"tread_inner", inner},
                           {"tread_outer", outer}};
    return ask(input);
  };
  CHECK(level(worn("4 mm", "6 mm", "4 mm"), "worn_shoulders") == "note");
  CHECK(level(worn("6 mm", "4 mm", "6 mm"), "worn_middle") == "note");
  CHECK(level(worn("4 mm", "5 mm", "6 mm"), "worn_inside") == "note");
  CHECK(level(worn("6 mm", "5 mm", "4 mm"), "worn_outside") == "note");
  CHECK(level(worn("1 mm", "6 mm", "6 mm"), "tread_low") == "care");
  CHECK(level(worn("6 mm", "1 mm", "6 mm"), "tread_law") == "unfit");
}

TEST_CASE(
    "axle loads from the kerb mass and who is in the car; without either they are asked for") {
  Json input = car();
  input.erase("front_axle");
  input.erase("rear_axle");
  const Json missing = ask(input);
  REQUIRE(missing["problems"].size() == 1);
  CHECK(missing["problems"][0]["field"] == "front_axle");
  input["kerb"] = "1100 kg";
  CHECK(level(ask(input), "axle_loads_worked_out") == "note");
  CHECK(ask(input)["ok"] == true);
  input["rear_people"] = "3";
  input["boot"] = "800 kg";
  CHECK(level(ask(input), "overload") == "unfit");
}

TEST_CASE("the spare: a soft or an old one is care, and does not slow the car") {
  Json input = car();
  input["corners"].push_back(corner("T125/80 D15 95M", "310 kPa", "3 mm"));
  CHECK(level(ask(input), "spare_soft") == "care");
  input["corners"][4]["pressure"] = "420 kPa";
  CHECK(level(ask(input), "spare_soft") == "");
  input["corners"][4]["date_code"] = "1114";
  CHECK(level(ask(input), "over_ten_years") == "care");
  const Json answer = ask(input);
  CHECK(answer.contains("no_limit"));  // it is not on the car
  CHECK(answer["no_limit"] == ask(car())["no_limit"]);
  Json wet = input;
  wet["water"] = "5 mm";
  Json without = wet;
  without["corners"].erase(4);
  CHECK(ask(without).contains("hold_to"));
  CHECK(ask(wet)["hold_to"] == ask(without)["hold_to"]);
  CHECK((*with_id(answer["blocks"], "corners"))["rows"][4][1] == "care");
  CHECK(level(ask(input), "water_not_given") == "");  // the spare is not asked about the water
}

TEST_CASE("a temporary spare on the car is not told to be like its neighbour") {
  Json input = car();
  input["corners"][0] = corner("T125/80 D15 95M", "420 kPa", "3 mm");
  const Json answer = ask(input);
  CHECK(level(answer, "mixed_axle") == "");
  CHECK(level(answer, "uneven_pressure") == "");
  CHECK(level(answer, "mixed_construction") == "");
  CHECK(level(answer, "temporary_spare") == "care");
  CHECK(answer["hold_to"]["kmh"].get<double>() <= 80.0);
  input["corners"][3] = input["corners"][0];
  CHECK(level(ask(input), "two_spares") == "unfit");
  CHECK(ask(input)["hold_to"]["kmh"] == 0.0);
}

TEST_CASE("the snowflake on one side of an axle is said") {
  Json input = car();
  CHECK(level(ask(input), "mixed_winter") == "");
  input["corners"][0]["size"] = "205/55 R16 91V 3PMSF";
  CHECK(level(ask(input), "mixed_winter") == "care");
  for (std::size_t wheel = 1; wheel < 4; ++wheel)
    input["corners"][wheel]["size"] = "205/55 R16 91V 3PMSF";
  CHECK(level(ask(input), "mixed_winter") == "");
}

TEST_CASE("what no speed helps stops the car, and is read out so") {
  Json input = car();
  input["corners"][0]["size"] = "195/65 R15 91V";
  const Json answer = ask(input);
  CHECK(level(answer, "mixed_axle") == "unfit");
  CHECK(answer["hold_to"]["kmh"] == 0.0);
  CHECK(answer["hold_to"]["governed_by"] == "mixed_axle");
  CHECK(spoken(answer).find("Car not fit") == 0);
}

TEST_CASE("what is driven slowly to be put right is read out with the verdict") {
  Json input = car();
  input["water"] = "5 mm";
  input["corners"][0]["pressure"] = "180 kPa";
  input["corners"][1]["pressure"] = "250 kPa";
  const Json answer = ask(input);
  CHECK(level(answer, "uneven_pressure") == "unfit");
  CHECK(answer["hold_to"]["kmh"].get<double>() > 0.0);
  CHECK(spoken(answer).find("Not fit") != std::string::npos);
}

TEST_CASE("where the load of one tyre is not judged, the car has no speed, in water neither") {
  for (const char* water : {"", "0", "5 mm"}) {
    INFO(water);
    Json input = car();
    input["water"] = water;
    CHECK(ask(input).contains(water == std::string("5 mm") ? "hold_to" : "no_limit"));
    CHECK(level(ask(input), "no_speed_told") == "");
    input["corners"][3]["size"] = "205/55 R16";
    const Json answer = ask(input);
    CHECK(no_speed(answer));
    CHECK(level(answer, "no_speed_told") == "care");
    for (const Json& limit : answer["limits"]) CHECK(limit["governs"] == false);
    // What may not be driven at all stands still all the same.
    input["corners"][0]["tread"] = "1 mm";
    const Json bald = ask(input);
    CHECK(bald["hold_to"]["kmh"] == 0.0);
    CHECK(bald["limits"][0]["governs"] == true);
  }
}

TEST_CASE("loads that contradict each other are not passed over") {
  Json input = car();
  CHECK(level(ask(input), "loads_contradict") == "");
  input["kerb"] = "1800 kg";
  CHECK(level(ask(input), "loads_contradict") == "care");
  input.erase("kerb");
  input["corners"][0]["load"] = "100 kg";
  input["corners"][1]["load"] = "100 kg";
  CHECK(level(ask(input), "loads_contradict") == "care");
  CHECK((*with_id(ask(input)["blocks"], "corners"))["rows"][0].back() == "410 kg");
}

TEST_CASE("the car's top speed against the symbols, with the winter exception") {
  Json input = car();
  input["top_speed"] = "250 km/h";
  CHECK(level(ask(input), "symbol_below_car") == "unfit");
  for (std::size_t row = 0; row < 4; ++row)
    input["corners"][row]["size"] = "205/55 R16 91T M+S 3PMSF";
  CHECK(level(ask(input), "winter_label") == "care");
  CHECK(level(ask(input), "symbol_below_car") == "");
}

TEST_CASE("a beaded edge at a modern pressure is too soft to stay on its rim") {
  Json input = car();
  for (std::size_t row = 0; row < 4; ++row)
    input["corners"][row] = corner("815x105", "240 kPa", "6 mm");
  CHECK(level(ask(input), "beaded_edge_soft") == "unfit");
  CHECK(ask(input)["hold_to"]["kmh"] == 0.0);
  for (std::size_t row = 0; row < 4; ++row) input["corners"][row]["pressure"] = "480 kPa";
  CHECK(level(ask(input), "beaded_edge_soft") == "");
  CHECK(level(ask(input), "beaded_edge_low") == "care");
  // It has no load rating, but the schedules go by the load.
  CHECK(ask(input)["hold_to"]["kmh"] == 120.0);
  for (std::size_t row = 0; row < 4; ++row) input["corners"][row]["pressure"] = "540 kPa";
  CHECK(level(ask(input), "beaded_edge_low") == "");
  // Of more load than the schedules know no less is asked: 70 psi.
  input["front_axle"] = "1200 kg";
  for (std::size_t row = 0; row < 4; ++row) input["corners"][row]["pressure"] = "470 kPa";
  CHECK(level(ask(input), "beaded_edge_soft") == "unfit");
  for (std::size_t row = 0; row < 4; ++row) input["corners"][row]["pressure"] = "490 kPa";
  CHECK(level(ask(input), "beaded_edge_soft") == "");
}

TEST_CASE("a corner left out is asked for by name, and a wrong field by its path") {
  Json input = car();
  input["corners"].erase(3);
  const Json answer = ask(input);
  CHECK(answer["problems"][0]["field"] == "corners");
  CHECK(answer["problems"][0]["text"].get<std::string>().find("Rear right") != std::string::npos);
  Json wrong = car();
  wrong["corners"][1]["pressure"] = "soft";
  CHECK(ask(wrong)["problems"][0]["field"] == "corners.1.pressure");
  CHECK_FALSE(ask(wrong).contains("verdict"));
  CHECK(no_speed(ask(wrong)));
}

TEST_CASE("a corner that the sheet for one tyre refuses is no fit car") {
  Json input = car();
  input["corners"][1]["load"] = "20.5 kg";
  const Json light = ask(input);
  input["water"] = "1 km";
  const Json answer = ask(input);
  CHECK_FALSE(answer.contains("verdict"));
  CHECK(no_speed(answer));
  int said = 0;
  for (const Json& problem : answer["problems"]) said += problem["field"] == "water";
  CHECK(said == 1);  // what all corners share is said once
  CHECK((light.contains("verdict") || light["ok"] == false));
}

TEST_CASE("a spare without a tread depth is said not to be judged") {
  Json input = car();
  input["corners"].push_back({{"size", "205/55 R16 91V"}, {"pressure", "220 kPa"}});
  CHECK(level(ask(input), "spare_not_judged") == "note");
}

// ---- what belongs together, over axles, sides and spare ----

TEST_CASE("a trailer's tyre on a car is not fit, in front, behind or as its spare") {
  for (const std::size_t wheel : {0U, 3U}) {
    Json input = car();
    input["corners"][wheel] = corner("ST225/70R15 112L", "240 kPa");
    CHECK(level(ask(input), "trailer_tyre") == "unfit");
    CHECK(ask(input)["hold_to"]["kmh"] == 0.0);
  }
  Json spare = car();
  spare["corners"].push_back(corner("ST225/70R15 112L", "240 kPa"));
  CHECK(level(ask(spare), "trailer_tyre") == "care");
  CHECK(level(ask(car()), "trailer_tyre") == "");
}

TEST_CASE("a motorcycle's tyre among a car's is not fit") {
  Json input = car();
  input["corners"][2] = corner("180/55 ZR 17 M/C (73W)", "240 kPa");
  CHECK(level(ask(input), "other_vehicle") == "unfit");
}

TEST_CASE(
    "front and rear of another circumference: care over 3 %, not fit over 6 %, as in fitment") {
  const auto with_behind = [](const char* front, const char* rear) {
    Json input = car();
    for (std::size_t wheel = 0; wheel < 4; ++wheel)
      input["corners"][wheel]["size"] = wheel < 2 ? front : rear;
    return ask(input);
  };
  CHECK(level(with_behind("205/55 R16 91V", "225/60 R16 98V"), "circumference") == "unfit");
  CHECK(level(with_behind("225/60 R16 98V", "205/55 R16 91V"), "circumference") == "unfit");
  CHECK(level(with_behind("205/55 R16 91V", "205/60 R16 92V"), "circumference") == "care");
  // As some cars leave the works.
  CHECK(level(with_behind("225/45 R18 91V", "255/40 R18 95V"), "circumference") == "");
  CHECK(level(with_behind("205/55 R16 91V", "205/55 R16 94V XL"), "circumference") == "");
}

TEST_CASE("winter tyres on one axle only are care") {
  Json input = car();
  for (const std::size_t front : {0U, 1U})
    input["corners"][front]["size"] = "205/55 R16 91V M+S 3PMSF";
  CHECK(level(ask(input), "mixed_winter") == "care");
  for (const std::size_t rear : {2U, 3U})
    input["corners"][rear]["size"] = "205/55 R16 91V M+S 3PMSF";
  CHECK(level(ask(input), "mixed_winter") == "");
}

TEST_CASE("a run-flat beside a plain tyre, or on one axle only, is care") {
  Json beside = car();
  beside["corners"][1]["size"] = "205/55 RF16 91V";
  CHECK(level(ask(beside), "mixed_run_flat") == "care");
  Json behind = car();
  for (const std::size_t rear : {2U, 3U}) behind["corners"][rear]["size"] = "205/55 RF16 91V";
  CHECK(level(ask(behind), "mixed_run_flat") == "care");
  for (const std::size_t front : {0U, 1U}) behind["corners"][front]["size"] = "205/55 RF16 91V";
  CHECK(level(ask(behind), "mixed_run_flat") == "");
}

TEST_CASE("the spare has one level, in its caution and in the table of corners") {
  const auto in_table = [](const Json& input) {
    return (*with_id(ask(input)["blocks"], "corners"))["rows"][4][1].get<std::string>();
  };
  Json old = car();
  old["corners"].push_back(corner());
  CHECK(in_table(old) == "fit");
  old["corners"][4]["date_code"] = "1114";
  CHECK(level(ask(old), "over_ten_years") == "care");
  CHECK(in_table(old) == "care");
  Json temporary = car();
  temporary["corners"].push_back(corner("T125/80 D15 95M", "420 kPa", "3 mm"));
  CHECK(in_table(temporary) == "only to reach help");
  Json trailer = car();
  trailer["corners"].push_back(corner("ST225/70R15 112L", "240 kPa"));
  CHECK(in_table(trailer) == "care");
}

// ---- one tyre of a car ----

TEST_CASE("an intended speed above the maximum does not change the maximum") {
  Json input = car();
  for (std::size_t wheel = 0; wheel < 4; ++wheel) input["corners"][wheel]["tread"] = "4 mm";
  for (const char* water : {"2 mm", "4 mm", "6 mm"}) {
    input["water"] = water;
    input.erase("speed");
    const Json without = ask(input)["hold_to"];
    REQUIRE(without["kmh"] > 0.0);
    for (const char* speed : {"50 km/h", "70 km/h", "85 km/h", "88 km/h", "120 km/h", "300 km/h"}) {
      INFO(water << ", " << speed);
      input["speed"] = speed;
      CHECK(ask(input)["hold_to"] == without);
    }
  }
  // Nor does it on a temporary spare.
  Json spare = car();
  spare["corners"][0] = corner("T125/80 D15 95M", "420 kPa", "3 mm");
  spare["speed"] = "88 km/h";
  CHECK(ask(spare)["hold_to"]["kmh"] == 80.0);
}

TEST_CASE("pressures of an axle are compared as cold, whenever they were read") {
  const auto read = [](const char* left, const char* state, const char* right,
                       const char* other = "cold") {
    Json input = car();
    input["corners"][0]["pressure"] = left;
    input["corners"][0]["pressure_state"] = state;
    input["corners"][1]["pressure"] = right;
    input["corners"][1]["pressure_state"] = other;
    return level(ask(input), "uneven_pressure");
  };
  CHECK(read("2.6 bar", "cold", "2.2 bar") == "care");
  CHECK(read("2.6 bar", "hot", "2.2 bar") == "");
  CHECK(read("2.2 bar", "hot", "2.2 bar") == "care");  // it has 1.8 to 2.0 bar cold
  CHECK(read("2.6 bar", "hot", "2.6 bar", "hot") == "");
  CHECK(read("3 bar", "hot", "2.1 bar") == "care");
  CHECK(read("1.9 bar", "hot", "2.4 bar") == "unfit");
}

TEST_CASE("a low shoulder is judged by advice where the law looks at the middle") {
  const auto worn = [](const char* place, const char* centre, const char* inner) {
    Json input = car();
    input["place"] = place;
    input["corners"][0]["tread"] = centre;
    input["corners"][0]["tread_inner"] = inner;
    return ask(input);
  };
  for (const char* place : {"GB", "DE"}) {
    INFO(place);
    const Json shoulder = worn(place, "5 mm", "1 mm");
    CHECK(level(shoulder, "tread_law") == "");
    CHECK(level(shoulder, "shoulder_worn") == "care");
    CHECK(level(shoulder, "tread_low") == "care");
    CHECK(level(worn(place, "1 mm", "5 mm"), "tread_law") == "unfit");
    CHECK(level(worn(place, "1.7 mm", "1 mm"), "tread_at_law") == "care");
    CHECK(level(worn(place, "5 mm", "4 mm"), "shoulder_worn") == "");
  }
  // Any groove counts, or which ones is not known.
  for (const char* place : {"US", "elsewhere"}) {
    INFO(place);
    CHECK(level(worn(place, "5 mm", "1 mm"), "tread_law") == "unfit");
    CHECK(level(worn(place, "5 mm", "1 mm"), "shoulder_worn") == "");
  }
}
