// The sheet `puncture`. The physics under it is checked in tests/register.
#include <cmath>
#include <nlohmann/json.hpp>

#include "core/json/contract.hpp"
#include "tests/support/catch.hpp"

using Json = nlohmann::json;
using treadwater::testing::Approx;

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

TEST_CASE("a tyre too soft to drive on is stopped, whatever else is on board") {
  for (const char* help : {"plain_flat", "temporary_spare", "full_spare", "sealant_kit"})
    for (const Json& readings :
         {Json{{"first", "50 kPa"}}, Json{{"second", "50 kPa"}},
          Json{{"first", "50 kPa"}, {"second", "50 kPa"}, {"apart", "20 min"}},
          Json{{"first", "220 kPa"}, {"second", "0 kPa"}, {"apart", "20 min"}}}) {
      const Json answer = ask(with(readings, {{"help", help}}));
      INFO(help << readings.dump());
      REQUIRE(answer["ok"] == true);
      CHECK(answer["verdict"]["level"] == "unfit");
      CHECK(answer["hold_to"]["kmh"] == 0);
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
  CHECK(ask(with(flat, {{"driven_flat", "yes"}}))["hold_to"]["kmh"] == 80);
  for (const Json& change :
       {Json{{"damage", "yes"}}, Json{{"where", "sidewall"}}, Json{{"load", "700 kg"}}}) {
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
