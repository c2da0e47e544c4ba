// The sheet `cold-pressure`. The physics under it is checked in tests/register.
#include <nlohmann/json.hpp>

#include "core/json/contract.hpp"
#include "tests/support/catch.hpp"

using Json = nlohmann::json;
using treadwater::testing::Approx;

namespace {

Json ask(const Json& change) {
  Json input = {{"size", "205/55 R16 91V"}, {"load", "430 kg"}, {"today", "2026-11-25"}};
  input.update(change);
  return Json::parse(treadwater::json::answer("cold-pressure", input.dump()));
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

TEST_CASE("the load alone asks for its law's pressure, and the placard comes first") {
  CHECK(value(ask(Json::object()), "pressure_needed") == Approx(159.9).margin(0.1));
  const Json answer = ask({{"placard", "2.3 bar"}});
  CHECK(answer["verdict"]["text"] == "Set 2.30 bar (230 kPa) cold.");
  CHECK(ask({{"placard", "1.5 bar"}})["verdict"]["text"] == "Set 1.60 bar (160 kPa) cold.");
}

TEST_CASE("speed and camber add to it, and are told apart") {
  const Json answer = ask({{"speed", "200 km/h"}, {"camber", "3"}});
  CHECK(value(answer, "pressure_needed") ==
        Approx(value(answer, "need_load") + value(answer, "need_speed") +
               value(answer, "need_camber")));
  CHECK(with_id(ask({{"speed", "150 km/h"}})["figures"], "need_speed") == nullptr);
}

TEST_CASE("P-metric: both laws are shown and the larger is taken") {
  const Json answer = ask({{"size", "P205/75R15 97S"}, {"load", "650 kg"}});
  CHECK(value(answer, "need_second_law") > value(answer, "need_first_law"));
  CHECK(value(answer, "pressure_needed") == Approx(value(answer, "need_second_law")));
}

TEST_CASE("a hot reading is carried over to cold on absolute pressure") {
  // (260 + 101.325) x 293.15 / 333.15 - 101.325
  const Json answer = ask({{"gauge", "260 kPa"}, {"tyre_now", "60 °C"}});
  CHECK(value(answer, "cold_equivalent") == Approx(216.6).margin(0.1));
  CHECK(with_id(answer["cautions"], "hot_reading"));
  CHECK_FALSE(with_id(ask({{"gauge", "260 kPa"}})["figures"], "cold_equivalent"));
}

TEST_CASE("too little air is unfit; under the placard is care") {
  CHECK(ask({{"gauge", "150 kPa"}})["verdict"]["level"] == "unfit");
  CHECK(ask({{"gauge", "200 kPa"}, {"placard", "230 kPa"}})["verdict"]["level"] == "care");
  CHECK(ask({{"gauge", "165 kPa"}})["verdict"]["level"] == "care");
  CHECK(ask({{"gauge", "230 kPa"}, {"placard", "230 kPa"}})["verdict"]["level"] == "fit");
}

TEST_CASE("a colder stage makes the gauge fall, and says what to set here") {
  const Json answer = ask({{"placard", "230 kPa"}, {"stage_day", "-2 °C"}});
  const double there = value(answer, "at_stage");
  CHECK(there == Approx((230.0 + 101.325) * 271.15 / 293.15 - 101.325));
  CHECK((there + 101.325) * 293.15 / 271.15 - 101.325 == Approx(230.0));
  CHECK(value(answer, "set_here") == Approx((230.0 + 101.325) * 293.15 / 271.15 - 101.325));
  CHECK(with_id(answer["cautions"], "short_at_stage"));
  CHECK_FALSE(
      with_id(ask({{"placard", "230 kPa"}, {"stage_day", "30 °C"}})["cautions"], "short_at_stage"));
}

TEST_CASE("a hot target that starts below the need is refused, and wants a temperature") {
  CHECK(ask({{"hot_target", "200 kPa"}})["problems"][0]["field"] == "hot_tyre");
  const Json answer = ask({{"hot_target", "200 kPa"}, {"hot_tyre", "80 °C"}});
  CHECK(with_id(answer["cautions"], "target_too_low"));
  CHECK_FALSE(with_id(ask({{"hot_target", "260 kPa"}, {"hot_tyre", "80 °C"}})["cautions"],
                      "target_too_low"));
}

TEST_CASE("what no pressure makes up for is said") {
  CHECK(with_id(ask({{"load", "700 kg"}})["cautions"], "overload"));
  CHECK(with_id(ask({{"speed", "260 km/h"}})["cautions"], "speed_above_symbol"));
  CHECK(with_id(ask({{"load", "650 kg"}, {"towing", "rear"}, {"speed", "130 km/h"}})["cautions"],
                "towing_too_fast"));
  const Json towing = ask({{"load", "650 kg"}, {"towing", "rear"}, {"speed", "90 km/h"}});
  CHECK(value(towing, "need_towing") == Approx(20.0));
  for (const Json& refused : {ask({{"load", "700 kg"}}), ask({{"speed", "260 km/h"}})}) {
    CHECK(refused["verdict"]["level"] == "unfit");
    CHECK_FALSE(with_id(refused["figures"], "pressure_needed"));
  }
}

TEST_CASE("warning lamps: UN R141 and the US floor for the kind of tyre") {
  const auto lamps = [](const Json& answer) {
    int count = 0;
    for (const Json& figure : answer["figures"]) count += figure["id"] == "warning_lamp" ? 1 : 0;
    return count;
  };
  CHECK(lamps(ask({{"placard", "230 kPa"}})) == 2);
  const Json truck = ask({{"size", "LT235/85R16 120/116R 550 kPa"}, {"load", "900 kg"}});
  CHECK(lamps(truck) == 2);
}

TEST_CASE("a commercial tyre without its pressure is not guessed at") {
  const Json answer = ask({{"size", "195/75 R16 C 107/105R"}, {"load", "700 kg"}});
  CHECK(with_id(answer["cautions"], "need_unknown"));
  CHECK(answer["verdict"]["level"] == "care");
  CHECK(answer["blocks"].empty());
}

TEST_CASE("without a placard, or without a speed, the answer says so") {
  const Json answer = ask(Json::object());
  CHECK(answer["verdict"]["level"] == "care");
  CHECK(with_id(answer["cautions"], "speed_unknown"));
  CHECK(value(answer, "pressure_needed") ==
        Approx(value(ask({{"speed", "160 km/h"}}), "pressure_needed")));
}
