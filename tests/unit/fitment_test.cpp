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
  CHECK(ask("205/55 R16 91V", "205/55 R16 91V")["verdict"]["level"] == "care");
  CHECK(ask("205/55 R16", "205/55 R16 91V", {{"top_speed", "185 km/h"}})["verdict"]["level"] ==
        "care");
  CHECK(ask("205/55 R16 91V", "205/55 R16 91V",
            {{"top_speed", "185 km/h"}, {"load", "700 kg"}})["verdict"]["level"] == "unfit");
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
