// The sheet `puncture`. The physics under it is checked in tests/register.
#include <cmath>
#include <nlohmann/json.hpp>

#include "core/json/contract.hpp"
#include "tests/support/catch.hpp"

using Json = nlohmann::json;
using treadwater::testing::Approx;
using treadwater::testing::ContainsSubstring;

namespace {

Json ask(const Json& change) {
  Json input = {{"size", "205/55 R16 91V"}, {"today", "2026-11-25"}};
  input.update(change);
  return Json::parse(treadwater::json::answer("puncture", input.dump()));
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

const Json leaking = {{"first", "210 kPa"}, {"second", "180 kPa"}, {"apart", "20 min"}};

Json with(const Json& base, const Json& change) {
  Json both = base;
  both.update(change);
  return both;
}

}  // namespace

TEST_CASE("two readings and a clock tell how long it lasts, in the order of the marks") {
  const Json answer = ask(leaking);
  REQUIRE(answer["ok"] == true);
  CHECK(value(answer, "time_to_stop") < value(answer, "time_to_flat"));
  CHECK(with_id(answer["cautions"], "leaking"));
  CHECK(answer["verdict"]["level"] == "care");
  CHECK(answer["blocks"][0]["kind"] == "chart");
}

TEST_CASE("half the time between the same readings means half the time left") {
  const Json slow = ask(leaking);
  const Json fast = ask(with(leaking, {{"apart", "10 min"}}));
  CHECK(value(fast, "time_to_flat") == Approx(value(slow, "time_to_flat") / 2.0));
}

TEST_CASE("a wider hole empties it with the square of its width") {
  const Json narrow = ask({{"hole", "1 mm"}});
  const Json wide = ask({{"hole", "2 mm"}});
  CHECK(value(narrow, "time_to_flat") == Approx(4.0 * value(wide, "time_to_flat")));
  CHECK(with_id(narrow["cautions"], "open_hole"));
}

TEST_CASE("what a sound tyre loses is no leak; a drop inside the gauge's error is not sure") {
  CHECK(
      with_id(ask({{"first", "230 kPa"}, {"second", "226 kPa"}, {"apart", "30 days"}})["cautions"],
              "natural_loss"));
  const Json unsure = ask({{"first", "230 kPa"}, {"second", "226 kPa"}, {"apart", "20 min"}});
  CHECK(with_id(unsure["cautions"], "leak_not_sure"));
  CHECK_FALSE(with_id(unsure["figures"], "time_to_flat"));
}

TEST_CASE("too soft to drive on, and nothing else on board: stop") {
  const Json answer = ask({{"first", "130 kPa"}, {"second", "90 kPa"}, {"apart", "5 min"}});
  CHECK(with_id(answer["cautions"], "too_soft"));
  CHECK(with_id(answer["cautions"], "stop_now"));
  CHECK(answer["verdict"]["level"] == "unfit");
  CHECK(answer["hold_to"]["kmh"] == 0.0);
}

TEST_CASE("a temporary spare and a run-flat hold to 80 km/h; a way too long for it is refused") {
  CHECK(ask({{"help", "temporary_spare"}})["hold_to"]["kmh"] == 80.0);
  const Json answer = ask({{"help", "self_supporting"}, {"way", "100 km"}});
  CHECK(answer["hold_to"]["kmh"] == 80.0);
  CHECK(with_id(answer["cautions"], "too_far"));
  CHECK(answer["verdict"]["level"] == "unfit");
  const Json laden = ask({{"help", "self_supporting"}, {"load", "615 kg"}});
  CHECK(value(laden, "get_home_distance") == Approx(80.0 * 0.65));
}

TEST_CASE("repair: the middle of the tread may be, the sidewall never") {
  const Json hole = {
      {"hole", "3 mm"}, {"from_centre", "20 mm"}, {"tread", "5 mm"}, {"between_grooves", "yes"}};
  CHECK(with_id(ask(hole)["cautions"], "repair"));
  CHECK(with_id(ask(with(hole, {{"where", "sidewall"}}))["cautions"], "no_repair"));
  CHECK(with_id(ask(with(hole, {{"hole", "7 mm"}}))["cautions"], "no_repair"));
  CHECK(with_id(ask(with(hole, {{"driven_flat", "yes"}}))["cautions"], "no_repair"));
  CHECK(with_id(ask(with(hole, {{"from_centre", "80 mm"}}))["cautions"], "no_repair"));
  CHECK(with_id(ask({{"hole", "3 mm"}})["cautions"], "repair_not_judged"));
}

TEST_CASE("the odds grow with the way and fall with spares") {
  const double short_way = value(ask({{"way", "100 km"}}), "chance_of_one");
  const double long_way = value(ask({{"way", "1000 km"}}), "chance_of_one");
  CHECK(short_way < long_way);
  const Json answer = ask({{"way", "1000 km"}, {"spares", "1"}});
  CHECK(value(answer, "chance_stranded") < value(answer, "chance_of_one"));
  // 1000 of 18 000 km between punctures
  CHECK(long_way == Approx(1.0 - std::exp(-1000.0 / 18000.0)));
}

TEST_CASE("a tyre too soft to drive on is stopped, or changed or sealed first") {
  for (const char* help : {"plain_flat", "temporary_spare", "full_spare", "sealant_kit"})
    for (const Json& readings :
         {Json{{"first", "50 kPa"}}, Json{{"second", "50 kPa"}},
          Json{{"first", "50 kPa"}, {"second", "50 kPa"}, {"apart", "20 min"}},
          Json{{"first", "220 kPa"}, {"second", "0 kPa"}, {"apart", "20 min"}}}) {
      const Json answer = ask(with(readings, {{"help", help}}));
      const bool stays = help == std::string("plain_flat");
      INFO(help << readings.dump());
      REQUIRE(answer["ok"] == true);
      CHECK(answer["verdict"]["level"] == (stays ? "unfit" : "care"));
      CHECK((answer.contains("hold_to") && answer["hold_to"]["kmh"] == 0) == stays);
      CHECK((with_id(answer["cautions"], "change_first") ||
             with_id(answer["cautions"], "seal_first")) == !stays);
      CHECK(with_id(answer["cautions"], "too_soft"));
    }
  const Json runs_flat = ask({{"second", "0 kPa"}, {"help", "self_supporting"}});
  CHECK(runs_flat["hold_to"]["kmh"] == 80);
}

TEST_CASE("what tells no leak is never called sound") {
  CHECK(ask({{"first", "220 kPa"}})["verdict"]["level"] == "care");
  CHECK(ask({{"help", "full_spare"}})["verdict"]["level"] == "care");
  const Json risen = ask({{"first", "180 kPa"}, {"second", "220 kPa"}, {"apart", "20 min"}});
  CHECK(risen["verdict"]["level"] == "care");
  CHECK(with_id(risen["cautions"], "readings_rise"));
  CHECK_FALSE(with_id(risen["cautions"], "natural_loss"));
}

TEST_CASE("what makes a tyre unfit is judged wherever the hole is, and whatever it holds") {
  const Json sound = {{"first", "230 kPa"}, {"second", "230 kPa"}, {"apart", "30 days"}};
  CHECK(ask(sound)["verdict"]["level"] == "fit");
  const auto stops = [&](const Json& change, const char* id) {
    for (const Json& where : {Json::object(), Json{{"where", "unknown"}}}) {
      const Json answer = ask(with(with(sound, where), change));
      INFO(change.dump() << answer["verdict"].dump());
      CHECK(answer["verdict"]["level"] == "unfit");
      CHECK(answer["hold_to"]["kmh"] == 0);
      CHECK(with_id(answer["cautions"], id));
    }
  };
  stops({{"damage", "yes"}}, "damage");
  stops({{"driven_flat", "yes"}}, "driven_flat");
  stops({{"tread", "1.5 mm"}}, "tread_law");
  stops({{"hole", "7 mm"}}, "hole");
  stops({{"load", "700 kg"}}, "overload");
  stops({{"load", "590 kg"}}, "pressure_low");
  CHECK(ask(with(sound, {{"tread", "1.6 mm"}}))["verdict"]["level"] == "care");
  CHECK(ask(with(sound, {{"date_code", "0115"}}))["verdict"]["level"] == "unfit");
  CHECK(ask(with(sound, {{"date_code", "0119"}}))["verdict"]["level"] == "care");
  // Of two date codes the older counts, whichever was typed.
  CHECK(ask(with(sound, {{"date_code", "2322"},
                         {"size", "205/55 R16 91V 0115"}}))["verdict"]["level"] == "unfit");
  CHECK(ask(with(sound, {{"date_code", "0115"},
                         {"size", "205/55 R16 91V 2322"}}))["verdict"]["level"] == "unfit");
  CHECK(ask(with(sound, {{"hole", "3 mm"}}))["verdict"]["level"] == "care");
  CHECK(ask(with(sound, {{"set", "250 kPa"}}))["verdict"]["level"] == "care");
  CHECK(ask(with(sound, {{"sealant", "yes"}, {"help", "full_spare"}}))["verdict"]["level"] ==
        "care");
}

TEST_CASE(
    "a run-flat tyre is stopped by damage, an overload or a hole in its sidewall, not by being "
    "flat") {
  const Json flat = {{"second", "0 kPa"}, {"help", "self_supporting"}};
  for (const Json& change : {Json{{"damage", "yes"}}, Json{{"driven_flat", "yes"}},
                             Json{{"where", "sidewall"}}, Json{{"load", "700 kg"}}}) {
    const Json answer = ask(with(flat, change));
    INFO(change.dump());
    CHECK(answer["verdict"]["level"] == "unfit");
    CHECK(answer["hold_to"]["kmh"] == 0);
    CHECK_FALSE(with_id(answer["cautions"], "get_home"));
  }
}

TEST_CASE(
    "a sealant kit is for a hole in the tread of 6 mm at most, and sealant inside counts as one") {
  const auto kit = [](const Json& change) { return ask(with({{"help", "sealant_kit"}}, change)); };
  CHECK(kit({{"hole", "5 mm"}, {"where", "tread"}})["hold_to"]["kmh"] == 70);
  for (const Json& change : {Json{{"hole", "40 mm"}}, Json{{"where", "sidewall"}}}) {
    CHECK(kit(change)["verdict"]["level"] == "unfit");
    CHECK(kit(change)["hold_to"]["kmh"] == 0);
  }
  CHECK(ask({{"first", "230 kPa"},
             {"second", "230 kPa"},
             {"apart", "1 h"},
             {"sealant", "yes"}})["hold_to"]["kmh"] == 70);
}

TEST_CASE("two readings of one moment tell no leak; what is too soft within minutes is stopped") {
  CHECK(with_id(ask({{"first", "230 kPa"}, {"second", "230 kPa"}, {"apart", "5 min"}})["cautions"],
                "leak_not_sure"));
  const Json fast = ask({{"first", "230 kPa"}, {"second", "190 kPa"}, {"apart", "2 min"}});
  CHECK(with_id(fast["cautions"], "leaking_fast"));
  CHECK(fast["hold_to"]["kmh"] == 0);
}

TEST_CASE("a pressure that no tyre is set to is not taken for the right one") {
  const Json answer =
      ask({{"set", "20 kPa"}, {"first", "20 kPa"}, {"second", "20 kPa"}, {"apart", "1 h"}});
  CHECK(with_id(answer["cautions"], "too_soft"));
}

// ---- what two readings do not show ----

TEST_CASE("two equal readings twenty minutes apart are not fit: the leak they hide is told") {
  const Json soon = ask({{"first", "2.30 bar"}, {"second", "2.30 bar"}, {"apart", "20 min"}});
  CHECK(soon["verdict"]["level"] == "care");
  const Json* unsure = with_id(soon["cautions"], "leak_not_sure");
  REQUIRE(unsure);
  // 10 kPa in 20 min
  CHECK_THAT(std::string((*unsure)["text"]), ContainsSubstring("30 kPa) an hour"));
  CHECK_FALSE(with_id(soon["cautions"], "natural_loss"));
  // The same readings a night and a day apart do show one.
  CHECK(
      ask({{"first", "2.30 bar"}, {"second", "2.30 bar"}, {"apart", "12 h"}})["verdict"]["level"] ==
      "care");
  CHECK(
      ask({{"first", "2.30 bar"}, {"second", "2.30 bar"}, {"apart", "24 h"}})["verdict"]["level"] ==
      "fit");
}

TEST_CASE("a hole in the sidewall stops the car, whatever the readings say") {
  const Json holds = {{"first", "230 kPa"}, {"second", "230 kPa"}, {"apart", "30 days"}};
  const Json answer = ask(with(holds, {{"where", "sidewall"}}));
  CHECK(answer["verdict"]["level"] == "unfit");
  CHECK(answer["hold_to"]["kmh"] == 0);
  CHECK(with_id(answer["cautions"], "hole_in_sidewall"));
}

TEST_CASE("a cold reading and the same after driving are a loss") {
  const Json readings = {{"first", "2.3 bar"}, {"second", "2.3 bar"}, {"apart", "2 days"}};
  CHECK(ask(readings)["verdict"]["level"] == "fit");
  const Json driven = ask(with(readings, {{"second_state", "hot"}}));
  CHECK(driven["verdict"]["level"] == "care");
  CHECK(with_id(driven["cautions"], "leaking"));
  CHECK(with_id(driven["cautions"], "hot_reading"));
  // Cooling is no leak.
  const Json cooled = ask(
      {{"first", "2.6 bar"}, {"first_state", "hot"}, {"second", "2.3 bar"}, {"apart", "2 days"}});
  CHECK_FALSE(with_id(cooled["cautions"], "leaking"));
  // A warm 1.85 is a cold 1.45: too soft.
  CHECK_FALSE(with_id(ask({{"first", "1.85 bar"}})["cautions"], "too_soft"));
  CHECK(with_id(ask({{"first", "1.85 bar"}, {"first_state", "hot"}})["cautions"], "too_soft"));
}

TEST_CASE(
    "a hole that empties the tyre within five minutes stops the car, however often it was read") {
  for (const Json& read : {Json::object(), Json{{"first", "230 kPa"}}}) {
    const Json answer = ask(with(read, {{"hole", "6 mm"}}));
    INFO(answer.dump());
    CHECK(answer["verdict"]["level"] == "unfit");
    CHECK(answer["hold_to"]["kmh"] == 0);
    CHECK(with_id(answer["cautions"], "leaking_fast"));
    CHECK_FALSE(with_id(answer["cautions"], "leaking"));
  }
  CHECK(ask({{"first", "230 kPa"}, {"hole", "0.2 mm"}})["verdict"]["level"] == "care");
}

TEST_CASE("the tyre that comes off does not stop the car") {
  const Json flat = {{"first", "0.5 bar"}};
  const Json spare = ask(with(flat, {{"help", "full_spare"}}));
  CHECK(spare["verdict"]["level"] == "care");
  CHECK_FALSE(spare.contains("hold_to"));
  CHECK(with_id(spare["cautions"], "full_spare"));
  CHECK(with_id(spare["cautions"], "change_first"));
  CHECK_FALSE(std::string(spare["blocks"].dump()).find("needs help") != std::string::npos);
  for (const Json& worse :
       {Json{{"damage", "yes"}}, Json{{"driven_flat", "yes"}}, Json{{"tread", "1 mm"}},
        Json{{"hole", "20 mm"}}, Json{{"where", "sidewall"}}, Json{{"date_code", "0110"}}}) {
    INFO(worse.dump());
    CHECK(ask(with(with(flat, worse), {{"help", "full_spare"}}))["verdict"]["level"] == "care");
    const Json temporary = ask(with(with(flat, worse), {{"help", "temporary_spare"}}));
    CHECK(temporary["verdict"]["level"] == "care");
    CHECK(temporary["hold_to"]["kmh"] == 80);
  }
  // The load stays on the wheel.
  const Json laden = ask(with(flat, {{"help", "full_spare"}, {"load", "700 kg"}}));
  CHECK(laden["hold_to"]["kmh"] == 0);
  CHECK_FALSE(with_id(laden["cautions"], "full_spare"));
}

TEST_CASE("sealant drives on a tyre that holds air, and a kit is used before driving") {
  const Json sealed = ask({{"first", "0.5 bar"}, {"sealant", "yes"}});
  CHECK(sealed["verdict"]["level"] == "unfit");
  CHECK(sealed["hold_to"]["kmh"] == 0);
  CHECK_FALSE(with_id(sealed["cautions"], "get_home"));
  const Json kit = ask({{"first", "0.5 bar"}, {"help", "sealant_kit"}});
  CHECK(kit["verdict"]["level"] == "care");
  CHECK(kit["hold_to"]["kmh"] == 70);
  CHECK(with_id(kit["cautions"], "seal_first"));
  CHECK(ask({{"first", "0.5 bar"},
             {"help", "sealant_kit"},
             {"driven_flat", "yes"}})["hold_to"]["kmh"] == 0);
}

TEST_CASE(
    "RF in the sidewall text counts, and a run-flat that was driven flat has used its distance") {
  const Json flat = ask({{"size", "205/55 RF16 91V"}, {"first", "0 bar"}});
  CHECK(flat["verdict"]["level"] == "care");
  CHECK(flat["hold_to"]["kmh"] == 80);
  CHECK_FALSE(with_id(flat["cautions"], "softer_than_set"));
  const Json used = ask({{"size", "205/55 RF16 91V"}, {"first", "0 bar"}, {"driven_flat", "yes"}});
  CHECK(used["verdict"]["level"] == "unfit");
  CHECK(used["hold_to"]["kmh"] == 0);
  CHECK_FALSE(with_id(used["cautions"], "get_home"));
}

// ---- on a stage ----

TEST_CASE("on a stage the clock says where a wheel change pays") {
  const auto stage = [](const Json& change) {
    return ask(with({{"on", "stage"}, {"first", "0.2 bar"}, {"spares", "2"}}, change));
  };
  const Json far = stage({{"way", "15 km"}});
  CHECK(with_id(far["cautions"], "stage_change"));
  CHECK(value(far, "change_lost") == Approx(95.0));
  CHECK(value(far, "drive_out_lost") == Approx(15.0 * 8.65));
  CHECK(value(far, "spares_left") == 1.0);
  CHECK(far["verdict"]["level"] == "care");
  CHECK(with_id(stage({{"way", "5 km"}})["cautions"], "stage_drive_out"));
  CHECK(with_id(stage({{"way", "11 km"}})["cautions"], "stage_even"));
  CHECK(with_id(stage({{"way", "6 km"}, {"stage_surface", "gravel"}})["cautions"], "stage_change"));
  CHECK_FALSE(
      with_id(stage({{"way", "6 km"}, {"stage_surface", "gravel"}})["figures"], "drive_out_lost"));
  CHECK(with_id(stage({{"spares", "1"}})["cautions"], "stage_last_spare"));
  // Without a spare nothing is compared, and the tyre stops the car.
  const Json none = stage({{"spares", "0"}, {"way", "5 km"}});
  CHECK(none["hold_to"]["kmh"] == 0);
  CHECK(with_id(none["cautions"], "stage_no_spare"));
  CHECK_FALSE(with_id(none["figures"], "drive_out_lost"));
}

TEST_CASE("on a stage the line is cleared and the triangle stands 100 m before the car or more") {
  const Json answer = ask({{"on", "stage"}});
  CHECK(value(answer, "triangle") == 100.0);
  CHECK(with_id(answer["cautions"], "stage"));
  CHECK_FALSE(with_id(answer["cautions"], "roadside"));
  CHECK(value(ask({{"on", "stage"}, {"approach", "130 km/h"}}), "triangle") > 200.0);
  CHECK(value(ask({{"on", "stage"}, {"approach", "50 km/h"}}), "triangle") == 100.0);
  CHECK(with_id(ask(Json::object())["cautions"], "roadside"));
}

// ---- a beaded edge ----

TEST_CASE("a beaded edge has one minimum, here and in the check of one tyre") {
  for (const char* pressure : {"299 kPa", "400 kPa", "420 kPa"}) {
    const Json size = {{"size", "820x120 BE"}, {"load", "300 kg"}, {"today", "2026-11-25"}};
    const Json one = Json::parse(treadwater::json::answer(
        "tyre-check", with(size, {{"pressure", pressure}, {"tread", "6 mm"}}).dump()));
    const Json soft = Json::parse(treadwater::json::answer(
        "puncture",
        with(size, {{"first", pressure}, {"second", pressure}, {"apart", "30 days"}}).dump()));
    INFO(pressure << one.dump() << soft.dump());
    CHECK((with_id(one["cautions"], "pressure_low") != nullptr) ==
          (with_id(soft["cautions"], "pressure_low") != nullptr));
  }
}
