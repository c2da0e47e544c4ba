// The sheet `fitment`. The rules and formulas under it are checked in tests/register.
#include <nlohmann/json.hpp>

#include "core/json/contract.hpp"
#include "tests/support/catch.hpp"

using Json = nlohmann::json;
using treadwater::testing::Approx;

namespace {

Json ask(const char* size, const char* new_size, Json more = Json::object()) {
  more["size"] = size;
  more["new_size"] = new_size;
  more["today"] = "2026-11-25";
  return Json::parse(treadwater::json::answer("fitment", more.dump()));
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

TEST_CASE("the same tyre changes nothing and fits") {
  const Json answer = ask("205/55 R16 91V", "205/55 R16 91V", {{"top_speed", "185 km/h"}});
  REQUIRE(answer["ok"] == true);
  CHECK(answer["verdict"]["level"] == "fit");
  for (const char* id : {"circumference_change", "ride_height", "section_change", "inward"})
    CHECK(value(answer, id) == Approx(0.0).margin(1e-9));
}

TEST_CASE("which of the two sidewall texts is missing is said in the form's own words") {
  const auto missing = [](const char* size, const char* new_size) {
    const Json answer = ask(size, new_size);
    REQUIRE(answer["problems"].size() == 1);
    return answer["problems"][0]["text"];
  };
  CHECK(missing("", "205/55 R16 91V") ==
        "Sidewall text now is missing. Something like 195/65 R15 91T would do.");
  CHECK(missing("205/55 R16 91V", "") ==
        "Sidewall text of the new tyre is missing. Something like 205/55 R16 91V would do.");
}

TEST_CASE("195/65 R15 to 205/55 R16: 634.5 to 631.9 mm") {
  const Json answer = ask("195/65 R15 91T", "205/55 R16 91V");
  CHECK(value(answer, "circumference_change") == Approx(100.0 * (631.9 / 634.5 - 1.0)));
  CHECK(value(answer, "ride_height") == Approx((631.9 - 634.5) / 2.0));
  CHECK(value(answer, "engine_speed") == Approx(100.0 * (634.5 / 631.9 - 1.0)));
}

TEST_CASE("a smaller offset and a wider tyre stand further out by both") {
  const Json more = {
      {"rim", "6 in"}, {"new_rim", "6 in"}, {"offset", "45 mm"}, {"new_offset", "35 mm"}};
  const Json answer = ask("205/55 R16 91V", "205/55 R16 91V", more);
  CHECK(value(answer, "outward") == Approx(10.0));
  CHECK(value(answer, "inward") == Approx(-10.0));
  CHECK(with_id(answer["cautions"], "clearance"));
  const Json wider =
      ask("205/55 R16 91V", "205/55 R16 91V", {{"rim", "6 in"}, {"new_rim", "7 in"}});
  CHECK(value(wider, "section_change") == Approx(0.4 * 25.4));  // K = 0.4
}

TEST_CASE("a larger tyre makes the speedometer read low: a note, care, unfit") {
  const Json little = ask("195/65 R15 91T", "195/65 R15 91T");
  CHECK_FALSE(with_id(little["cautions"], "speedometer"));
  const Json some = ask("195/65 R15 91T", "205/65 R15 94T");
  REQUIRE(with_id(some["cautions"], "speedometer"));
  CHECK((*with_id(some["cautions"], "speedometer"))["level"] == "note");
  const Json more = ask("195/65 R15 91T", "205/70 R15 96T");
  CHECK((*with_id(more["cautions"], "speedometer"))["level"] == "care");
  const Json far = ask("165/65 R13 77T", "235/75 R15 109T");
  CHECK(with_id(far["cautions"], "speedometer_low"));
  CHECK(far["verdict"]["level"] == "unfit");
}

TEST_CASE("too little load or speed is unfit; a winter tyre may be slower with its label") {
  CHECK(with_id(ask("205/55 R16 91V", "205/55 R16 88V")["cautions"], "load_too_low"));
  CHECK_FALSE(with_id(ask("205/55 R16 91V", "205/55 R16 88V", {{"asked_index", "85"}})["cautions"],
                      "load_too_low"));
  const Json fast = {{"top_speed", "220 km/h"}};
  CHECK(ask("205/55 R16 91V", "205/55 R16 91T", fast)["verdict"]["level"] == "unfit");
  const Json winter = ask("205/55 R16 91V", "205/55 R16 91T M+S 3PMSF", fast);
  CHECK(with_id(winter["cautions"], "winter_label"));
  CHECK(winter["verdict"]["level"] == "care");
}

TEST_CASE("pressure for equal load: a higher rating needs less, too low a rating has none") {
  const Json pressure = {{"pressure", "240 kPa"}};
  CHECK(value(ask("205/55 R16 91V", "205/55 R16 94V XL", pressure), "equal_pressure") > 0.0);
  CHECK(value(ask("205/55 R16 91V", "215/55 R16 93V", pressure), "equal_pressure") < 240.0);
  CHECK(
      with_id(ask("205/55 R16 91V", "185/55 R15 82V", pressure)["cautions"], "no_equal_pressure"));
}

TEST_CASE("a lighter wheel: less unsprung mass, a higher hop; 1 kg counts 1.88 when it turns") {
  const Json more = {{"pressure", "230 kPa"},
                     {"wheel_mass", "18 kg"},
                     {"new_wheel_mass", "15 kg"},
                     {"unsprung", "40 kg"},
                     {"suspension_rate", "20.6"}};
  const Json answer = ask("205/55 R16 91V", "205/55 R16 91V", more);
  CHECK(value(answer, "unsprung_change") == Approx(-3.0));
  CHECK(value(answer, "equivalent_mass") == Approx(-3.0 * 1.88));
  Json heavier = more;
  heavier["new_wheel_mass"] = "21 kg";
  CHECK(value(answer, "wheel_hop") >
        value(ask("205/55 R16 91V", "205/55 R16 91V", heavier), "wheel_hop"));
}

TEST_CASE("patch is drawn over patch where load and pressure are given") {
  const Json answer =
      ask("195/65 R15 91T", "205/55 R16 91V", {{"load", "430 kg"}, {"pressure", "230 kPa"}});
  REQUIRE(answer["blocks"][0]["kind"] == "drawing");
  CHECK(answer["blocks"][0]["shapes"].size() == 3);
}

TEST_CASE("a size that does not give its height is said, and the rest goes on") {
  const Json answer = ask("5.60-15", "205/55 R16 91V");
  CHECK(with_id(answer["cautions"], "size_unknown"));
  CHECK(answer["ok"] == true);
}

TEST_CASE("a rim an inch off wants the maker's word, two inches are too much") {
  const auto level = [](const char* rim) -> std::string {
    const Json answer =
        ask("205/55 R16 91V", "225/45 R17 94W", {{"top_speed", "185 km/h"}, {"new_rim", rim}});
    const Json* found = with_id(answer["cautions"], "rim_width");
    return found == nullptr ? "" : (*found)["level"].get<std::string>();
  };
  CHECK(level("7.5 in") == "");
  CHECK(level("6 in") == "care");
  CHECK(level("9 in") == "care");
  CHECK(level("2 in") == "unfit");
}

TEST_CASE("what was not judged is never fit") {
  CHECK(ask("205/55 R16", "205/55 R16 91V")["verdict"]["level"] == "care");
  CHECK(with_id(ask("205/55 ZR16", "205/55 R16 91V")["cautions"], "top_speed_unknown"));
  CHECK(ask("205/55 R16", "205/55 R16 91V", {{"top_speed", "185 km/h"}})["verdict"]["level"] ==
        "care");
  CHECK(ask("205/55 R16 91V", "205/55 R16 91V",
            {{"top_speed", "185 km/h"}, {"load", "700 kg"}})["verdict"]["level"] == "unfit");
}

TEST_CASE("without a top speed the symbol is judged by that of the tyre now") {
  const Json same = ask("195/65 R15 91T", "195/65 R15 91T");
  CHECK(same["verdict"]["level"] == "fit");
  CHECK(with_id(same["cautions"], "symbol_by_the_tyre_now"));
  CHECK(ask("195/65 R15 91T", "195/65 R15 91V")["verdict"]["level"] == "fit");
  const Json slower = ask("195/65 R15 91V", "195/65 R15 91T");
  CHECK(slower["verdict"]["level"] == "care");
  REQUIRE(with_id(slower["cautions"], "symbol_under_the_tyre_now"));
  CHECK(std::string((*with_id(slower["cautions"], "symbol_under_the_tyre_now"))["text"])
            .find("Its symbol T is for 190 km/h, and that of the tyre now, V, for 240 km/h.") == 0);
}

TEST_CASE("beyond twice what wants a word, and 30 mm in or out, it is not to be fitted") {
  const auto circumference = [](const char* size, const char* new_size) {
    const Json answer = ask(size, new_size, {{"top_speed", "150 km/h"}});
    const Json* found = with_id(answer["cautions"], "circumference");
    return found == nullptr ? std::string()
                            : (*found)["level"].get<std::string>() + ": " +
                                  (*found)["text"].get<std::string>().substr(0, 38);
  };
  CHECK(circumference("195/65 R15 91T", "205/70 R15 96T") ==
        "care: Its circumference is 5.3 % larger: spe");
  CHECK(circumference("195/65 R15 91T", "215/70 R15 98T") ==
        "unfit: Its circumference is 7.5 % larger: spe");
  CHECK(circumference("205/70 R15 96T", "185/60 R15 96T") ==
        "unfit: Its circumference is 9.7 % smaller: sp");
  const auto moved = [](const char* offset) {
    return ask("195/65 R15 91T", "195/65 R15 91T",
               {{"top_speed", "150 km/h"}, {"offset", "45 mm"}, {"new_offset", offset}});
  };
  CHECK(moved("-40 mm")["verdict"]["level"] == "unfit");
  CHECK(with_id(moved("80 mm")["cautions"], "moved_too_far"));
  CHECK(moved("15 mm")["verdict"]["level"] == "care");
  CHECK_FALSE(with_id(moved("15 mm")["cautions"], "moved_too_far"));
}

TEST_CASE("less unsprung mass than the wheel weighs is a problem") {
  const Json answer = ask("205/55 R16 91V", "205/55 R16 91V",
                          {{"top_speed", "185 km/h"},
                           {"pressure", "230 kPa"},
                           {"wheel_mass", "150 kg"},
                           {"new_wheel_mass", "8 kg"},
                           {"unsprung", "40 kg"},
                           {"suspension_rate", "20"}});
  CHECK(answer["problems"][0]["field"] == "unsprung");
  CHECK_FALSE(answer.contains("verdict"));
}

TEST_CASE("what is not for that car's wheels on the road is not fitted") {
  const Json fast = {{"top_speed", "120 km/h"}};
  const auto level = [&](const char* size, const char* new_size) {
    return ask(size, new_size, fast)["verdict"]["level"].get<std::string>();
  };
  CHECK(level("195/65 R15 91T", "195/65 R15 91T") == "fit");
  CHECK(level("195/65 R15 91T", "T195/65R15 91M") == "unfit");
  CHECK(level("195/65 R15 91T", "ST195/65R15 95T") == "unfit");
  CHECK(level("195/65 R15 91T", "195/65 R15 91T NOT FOR HIGHWAY USE") == "unfit");
  CHECK(level("195/65 R15 91T", "195/65 R15 91T FOR COMPETITION USE ONLY") == "unfit");
  CHECK(with_id(ask("195/65 R15 91T", "180/55 ZR17 M/C (73W)", fast)["cautions"], "other_vehicle"));
  CHECK(level("195/65 R15 91T", "195/65 R15 91T DOT ABCD EFGH 0105") == "unfit");
}

TEST_CASE("the load counts at the pressure now, and at the car's speed") {
  const auto at = [](const char* load, const char* pressure) {
    return ask("195/65 R15 91T", "195/65 R15 91T",
               {{"top_speed", "180 km/h"}, {"load", load}, {"pressure", pressure}});
  };
  CHECK(with_id(at("600 kg", "1.6 bar")["cautions"], "pressure_low"));
  CHECK(at("600 kg", "1.6 bar")["verdict"]["level"] == "care");
  CHECK(at("430 kg", "2.3 bar")["verdict"]["level"] == "fit");
  // 91V carries 91 % at 240 km/h.
  const Json fast = ask("205/55 R16 91V", "205/55 R16 91V",
                        {{"top_speed", "240 km/h"}, {"load", "580 kg"}, {"asked_index", "85"}});
  CHECK(with_id(fast["cautions"], "overload"));
}

TEST_CASE("a load index under that of the tyre now is care, whatever was asked for") {
  const Json answer =
      ask("205/55 R16 91V", "185/55 R15 79V", {{"top_speed", "185 km/h"}, {"asked_index", "50"}});
  CHECK(with_id(answer["cautions"], "under_the_tyre_now"));
  CHECK(answer["verdict"]["level"] != "fit");
}

TEST_CASE("what is carried is never written as more than what is asked and refused") {
  const Json answer = ask("205/55 R16 88V", "205/55 R16 91V", {{"top_speed", "240 km/h"}});
  const Json* refused = with_id(answer["cautions"], "load_too_low");
  REQUIRE(refused);
  CHECK((*refused)["text"] == "It carries 559 kg at that speed, and 560 kg are asked of it.");
}

TEST_CASE("a run-flat in place of a plain tyre, or the other way round, is care") {
  const auto level = [](const char* now, const char* then) {
    const Json answer = ask(now, then);
    const Json* found = with_id(answer["cautions"], "mixed_run_flat");
    return found == nullptr ? "" : (*found)["level"].get<std::string>();
  };
  CHECK(level("205/55 R16 91V", "205/55 RF16 91V") == "care");
  CHECK(level("205/55 RF16 91V", "205/55 R16 91V") == "care");
  CHECK(level("205/55 RF16 91V", "205/55 RF16 91V") == "");
}
