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
  CHECK(ask({{"placard", "1.7 bar"}})["verdict"]["level"] == "fit");
}

TEST_CASE("a placard under what the load needs is wrong, or the load is: care") {
  const Json answer = ask({{"placard", "1.5 bar"}});
  CHECK(std::string(answer["verdict"]["text"]).find("Set 1.70 bar (170 kPa) cold, with care") == 0);
  REQUIRE(with_id(answer["cautions"], "placard_under_need"));
  CHECK((*with_id(answer["cautions"], "placard_under_need"))["text"] ==
        "The placard's 1.50 bar (150 kPa) does not carry this load, which needs 1.60 bar (160 "
        "kPa): one of them is wrong, or the tyre is not of the placard's size. Check both.");
  // A gauge's error is no fault of the placard.
  CHECK_FALSE(with_id(ask({{"placard", "1.6 bar"}})["cautions"], "placard_under_need"));
}

TEST_CASE("speed and camber add to it, and are told apart") {
  const Json answer = ask({{"speed", "200 km/h"}, {"camber", "3"}});
  CHECK(value(answer, "pressure_needed") ==
        Approx(value(answer, "need_load") + value(answer, "need_speed") +
               value(answer, "need_camber")));
  CHECK(with_id(ask({{"speed", "150 km/h"}})["figures"], "need_speed") == nullptr);
}

TEST_CASE("a motor cycle's tyre is judged alike here, in the check of a tyre and as another size") {
  // 58 is 236 kg; V at 240 km/h: 91 % for cars, 85 % for motor cycles (memory).
  const auto ask_of = [](const char* sheet, const char* load, const Json& more) {
    Json input = {{"size", "120/70 R17 M/C 58V 290 kPa"}, {"load", load}, {"today", "2026-11-25"}};
    input.update(more);
    return Json::parse(treadwater::json::answer(sheet, input.dump()));
  };
  const Json ridden = {{"speed", "240 km/h"}};
  const Json checked = {{"speed", "240 km/h"},   {"pressure", "330 kPa"}, {"tread", "5 mm"},
                        {"tyre_kind", "summer"}, {"surface", "asphalt"},  {"place", "DE"}};
  const Json here = ask_of("cold-pressure", "205 kg", ridden);
  const Json check = ask_of("tyre-check", "205 kg", checked);
  REQUIRE(with_id(here["cautions"], "overload_at_speed"));
  REQUIRE(with_id(check["cautions"], "overload_at_speed"));
  CHECK(*with_id(here["cautions"], "overload_at_speed") ==
        *with_id(check["cautions"], "overload_at_speed"));
  CHECK((*with_id(here["cautions"], "overload_at_speed"))["text"] ==
        "At 240 km/h this tyre carries 200 kg at most, and its load is 205 kg. No pressure makes "
        "up for that: drive slower, or unload.");
  CHECK(!with_id(check["figures"], "pressure_needed"));
  CHECK(with_id(
      ask_of("fitment", "205 kg",
             {{"new_size", "120/70 R17 M/C 58V 290 kPa"}, {"top_speed", "240 km/h"}})["cautions"],
      "overload"));
  // What both tables allow needs the same pressure.
  CHECK(value(ask_of("cold-pressure", "198 kg", ridden), "pressure_needed") ==
        Approx(value(ask_of("tyre-check", "198 kg", checked), "pressure_needed")));
  // A car's tyre above its share is not told that it is over its whole rating.
  const Json car = ask({{"load", "600 kg"}, {"speed", "240 km/h"}});
  CHECK(with_id(car["cautions"], "overload_at_speed"));
  CHECK(!with_id(car["cautions"], "overload"));
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
  CHECK(ask({{"gauge", "165 kPa"}})["verdict"]["level"] == "unfit");  // a gauge may be 10 out
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

// A pressure as it is shown, without its second unit: "1.81 bar", "27 psi".
std::string shown_in(const std::string& text) {
  const std::size_t at = text.find("Set ") + 4;
  return text.substr(at, text.find(" (") - at);
}

TEST_CASE("what it says to set is never too little in the check of one tyre") {
  for (const char* size : {"205/55 R16 91V", "P205/75R15 97S", "195/65 R15 95T XL", "165 SR 13",
                           "195/70 R15C 104/102R 450 kPa"})
    for (const char* units : {"metric", "uk", "us"})
      for (const char* speed : {"130 km/h", "180 km/h"})
        for (int load = 300; load < 600; load += 7) {
          const std::string mass = std::to_string(load) + " kg";
          Json asked = {{"size", size},   {"load", mass},   {"placard", "180 kPa"},
                        {"units", units}, {"speed", speed}, {"today", "2026-11-25"}};
          const Json answer = ask(asked);
          if (answer["verdict"]["level"] == "unfit") continue;
          asked.erase("placard");
          asked["pressure"] = shown_in(answer["verdict"]["text"]);
          asked["tread"] = "7 mm";
          asked["water"] = "0";
          const Json check = Json::parse(treadwater::json::answer("tyre-check", asked.dump()));
          INFO(asked.dump() << answer["verdict"].dump() << check["verdict"].dump());
          REQUIRE(check["ok"] == true);
          CHECK(check["verdict"]["level"] != "unfit");
          CHECK_FALSE(with_id(check["cautions"], "pressure_low"));
        }
}

TEST_CASE("no tyre is told to take less than its kind is ever set to") {
  const Json van =
      ask({{"size", "195/70 R15C 104/102R"}, {"load", "800 kg"}, {"placard", "60 kPa"}});
  CHECK(van["verdict"]["level"] == "unfit");
  CHECK(with_id(van["cautions"], "under_least"));
  CHECK(van.dump().find("et 0.60") == std::string::npos);
  CHECK(ask({{"size", "195/70 R15C 104/102R"},
             {"load", "800 kg"},
             {"gauge", "60 kPa"}})["verdict"]["level"] == "unfit");
  const auto beaded = [](const char* placard) {
    return ask({{"size", "815x105"}, {"load", "300 kg"}, {"placard", placard}});
  };
  CHECK(with_id(beaded("250 kPa")["cautions"], "under_least"));
  CHECK_FALSE(with_id(beaded("70 psi")["cautions"], "under_least"));
}

TEST_CASE("the least pressure of a beaded edge is the same here and in the check of a tyre") {
  struct Case {
    const char *size, *load, *under, *least, *from;
  };
  // 1921: 105 mm, 16 hundredweight on the axle at 60 psi, 18 at 70 and no more; 1909: 5 in, 90 psi.
  for (const Case& c :
       {Case{"815x105", "300 kg", "59 psi", "60 psi", "beaded-edge-least"},
        Case{"815x105", "457 kg", "69 psi", "70 psi", "beaded-edge-1921"},
        Case{"815x105", "600 kg", "69 psi", "70 psi", "beaded-edge-1921"},
        Case{"895x155", "1140 kg", "89 psi", "90 psi", "beaded-edge-1921"},
        Case{"650x65", "150 kg", "59 psi", "60 psi", "beaded-edge-least"},
        Case{"650x65 M/C", "150 kg", "31 psi", "32 psi", "beaded-edge-motorcycle"}}) {
    INFO(c.size << " " << c.load);
    const auto found = [&](const char* sheet, const char* field, const char* pressure,
                           const char* id) -> Json {
      Json input = {{"size", c.size},
                    {"load", c.load},
                    {field, pressure},
                    {"units", "us"},
                    {"today", "2026-11-25"}};
      if (std::string(sheet) == "tyre-check") input["tread"] = "5 mm";
      const Json answer = Json::parse(treadwater::json::answer(sheet, input.dump()));
      const Json* said = with_id(answer["cautions"], id);
      return said ? *said : Json();
    };
    for (const auto& [sheet, field, id] : {std::tuple{"cold-pressure", "placard", "under_least"},
                                           std::tuple{"tyre-check", "pressure", "pressure_low"}}) {
      INFO(sheet);
      const Json soft = found(sheet, field, c.under, id);
      REQUIRE(soft.is_object());
      CHECK(std::string(soft["text"]).find(c.least) != std::string::npos);
      CHECK(soft["sources"] == Json{c.from});
      CHECK(found(sheet, field, c.least, id).is_null());
    }
  }
}

TEST_CASE("more than its rating belongs to is care, far more or more than is moulded is unfit") {
  const auto level = [](const Json& change) {
    return ask(change)["verdict"]["level"].get<std::string>();
  };
  CHECK(level({{"placard", "280 kPa"}}) == "fit");
  CHECK(level({{"placard", "285 kPa"}}) == "care");
  CHECK(level({{"placard", "375 kPa"}}) == "care");
  CHECK(level({{"placard", "376 kPa"}}) == "unfit");
  CHECK(level({{"placard", "900 kPa"}, {"gauge", "900 kPa"}}) == "unfit");
  CHECK(level({{"placard", "230 kPa"}, {"gauge", "900 kPa"}}) == "unfit");
  CHECK(level({{"placard", "230 kPa"}, {"gauge", "260 kPa"}}) == "fit");
  const Json over = ask({{"placard", "230 kPa"}, {"gauge", "265 kPa"}});
  CHECK(with_id(over["cautions"], "over_placard"));
  CHECK(over["verdict"]["level"] == "care");
  // A placard that the load is beyond is not what a reading is held against.
  CHECK_FALSE(
      with_id(ask({{"placard", "118 kPa"}, {"gauge", "239 kPa"}})["cautions"], "over_placard"));
  const Json marked = {{"size", "205/55 R16 91V MAX PRESS 300 kPa"}};
  const auto with = [&](const char* placard) {
    Json change = marked;
    change["placard"] = placard;
    return ask(change);
  };
  CHECK_FALSE(with_id(with("44 psi")["cautions"], "above_marking"));
  CHECK(with_id(with("310 kPa")["cautions"], "above_marking"));
  CHECK(with("310 kPa")["verdict"]["level"] == "unfit");
  CHECK(level({{"size", "180/55 ZR17 M/C (73W)"}, {"load", "150 kg"}, {"placard", "900 kPa"}}) ==
        "unfit");
}

TEST_CASE("a load that takes all the pressure moulded on it leaves no room for a gauge's error") {
  const auto van = [](const char* load) {
    return ask({{"size", "195/70 R15C 104/102R 450 kPa"}, {"load", load}, {"speed", "100 km/h"}});
  };
  CHECK_FALSE(with_id(van("880 kg")["cautions"], "no_room_under_marking"));
  CHECK(with_id(van("895 kg")["cautions"], "no_room_under_marking"));
}

TEST_CASE("a temporary spare is never fit, and unfit above 80 km/h") {
  const auto spare = [](const char* speed) {
    return ask({{"size", "T125/80 D15 95M"}, {"placard", "420 kPa"}, {"speed", speed}});
  };
  CHECK(spare("80 km/h")["verdict"]["level"] == "care");
  CHECK(spare("81 km/h")["verdict"]["level"] == "unfit");
  CHECK(spare("")["verdict"]["level"] == "care");
}

TEST_CASE("a load or a speed that no pressure makes up for is said without the pressure law too") {
  const Json van = {{"size", "195/70 R15C 104/102R"}, {"placard", "450 kPa"}};
  Json heavy = van, fast = van;
  heavy["load"] = "950 kg";
  fast["speed"] = "200 km/h";
  CHECK(with_id(ask(heavy)["cautions"], "overload"));
  CHECK(with_id(ask(fast)["cautions"], "speed_above_symbol"));
}

TEST_CASE("what is read out says what to set only where that is all that is wrong") {
  const auto spoken = [](const Json& answer) {
    for (const Json& block : answer["blocks"])
      if (block["kind"] == "spoken") return block["text"].get<std::string>();
    return std::string();
  };
  const Json laden = ask({{"load", "700 kg"}, {"placard", "230 kPa"}});
  CHECK(spoken(laden) == "205/55 R16 91V: Not fit as it stands: it is overloaded.");
  CHECK(spoken(ask({{"placard", "230 kPa"}, {"gauge", "120 kPa"}})) ==
        "205/55 R16 91V: not fit until 2.30 bar (230 kPa) is set cold.");
  const Json down = ask({{"load", "600 kg"},
                         {"placard", "245 kPa"},
                         {"gauge", "260 kPa"},
                         {"height_here", "2500 m"},
                         {"height_there", "0 m"}});
  CHECK(down["verdict"]["level"] == "unfit");
  CHECK(spoken(down) == "205/55 R16 91V: not fit until 2.80 bar (280 kPa) is set cold.");
}

TEST_CASE("a hot target from under the placard is for the stage; one from nothing is refused") {
  Json hot = {{"placard", "230 kPa"}, {"hot_tyre", "80 °C"}};
  const auto target = [&](const char* pressure) {
    Json change = hot;
    change["hot_target"] = pressure;
    return ask(change);
  };
  CHECK(with_id(target("260 kPa")["cautions"], "target_under_placard"));
  CHECK(with_id(target("60 kPa")["cautions"], "target_too_low"));
  hot["cold_day"] = "10 °C";
  const Json answer = target("240 kPa");
  CHECK(answer["verdict"]["level"] == "care");
  REQUIRE(with_id(answer["cautions"], "target_under_placard"));
  CHECK((*with_id(answer["cautions"], "target_under_placard"))["text"] ==
        "2.40 bar (240 kPa) hot would take 1.72 bar (172 kPa) cold, which is under the placard, so "
        "it is not set. With 2.30 bar (230 kPa) cold it will have about 3.12 bar (312 kPa) at "
        "80 °C. Less is for a stage or a track only: set it back before the road.");
  CHECK(value(answer, "hot_at_setting") ==
        Approx((230.0 + 101.325) * 353.15 / 283.15 - 101.325).margin(0.01));
  CHECK(with_id(target("340 kPa")["cautions"], "target_over_set"));
  hot["cold_day"] = "20 °C";
  CHECK(target("310 kPa")["verdict"]["level"] == "fit");
}
