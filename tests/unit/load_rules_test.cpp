// Load and pressure as the sheets judge them: one rule for each, wherever it is asked.
#include <nlohmann/json.hpp>

#include "core/json/contract.hpp"
#include "tests/support/catch.hpp"

using Json = nlohmann::json;
using treadwater::testing::Approx;

namespace {

Json ask(const char* sheet, Json input) {
  input["today"] = "2026-11-25";
  return Json::parse(treadwater::json::answer(sheet, input.dump()));
}

Json check(const char* size, const char* load, const char* pressure, Json more = Json::object()) {
  more.update({{"size", size}, {"load", load}, {"pressure", pressure}, {"tread", "7 mm"}});
  return ask("tyre-check", more);
}

Json set(const char* size, const char* load, Json more = Json::object()) {
  more.update({{"size", size}, {"load", load}});
  return ask("cold-pressure", more);
}

std::string level(const Json& answer) { return answer["verdict"]["level"].get<std::string>(); }

const Json* with_id(const Json& rows, const std::string& id) {
  for (const Json& row : rows)
    if (row["id"] == id) return &row;
  return nullptr;
}

// Its level and text; empty if it is not there.
std::string caution(const Json& answer, const std::string& id) {
  const Json* found = with_id(answer["cautions"], id);
  return found ? (*found)["level"].get<std::string>() + ": " + (*found)["text"].get<std::string>()
               : "";
}

bool starts(const std::string& text, const std::string& with) { return text.find(with) == 0; }

}  // namespace

TEST_CASE("far too much pressure, and more than is moulded on the tyre, is unfit in every sheet") {
  struct Case {
    const char *size, *pressure, *id;
  };
  for (const Case& c : {Case{"205/55 R16 91V", "1000 kPa", "pressure_too_high"},
                        Case{"205/55 R16 91V", "376 kPa", "pressure_too_high"},
                        Case{"205/55 R16 91V MAX PRESS 300 kPa", "310 kPa", "above_marking"},
                        Case{"5.60-15", "900 kPa", "pressure_too_high"}}) {
    INFO(c.size << " " << c.pressure);
    CHECK(starts(caution(check(c.size, "430 kg", c.pressure), c.id), "unfit"));
    CHECK(starts(caution(set(c.size, "430 kg", {{"gauge", c.pressure}}), c.id), "unfit"));
    Json car = {{"front_axle", "800 kg"}, {"rear_axle", "800 kg"}, {"corners", Json::array()}};
    for (int wheel = 0; wheel < 4; ++wheel)
      car["corners"].push_back({{"size", c.size}, {"pressure", c.pressure}, {"tread", "7 mm"}});
    CHECK(starts(caution(ask("car-check", car), c.id), "unfit"));
  }
  CHECK(caution(check("205/55 R16 91V", "430 kg", "375 kPa"), "pressure_too_high").empty());
  CHECK(starts(caution(check("205/55 R16 91V", "430 kg", "375 kPa"), "pressure_high"), "care"));
  // 44 psi and 300 kPa are the same marking.
  CHECK(caution(check("205/55 R16 91V MAX PRESS 300 kPa", "430 kg", "44 psi"), "above_marking")
            .empty());
}

TEST_CASE("the identical tyre is never refused, whatever the car's top speed") {
  for (const char* tyre : {"205/55 R16 91V", "205/55 R16 91W", "205/55 R16 91Y"})
    for (const char* speed : {"205 km/h", "215 km/h", "240 km/h"})
      for (const char* index : {"", "91"}) {
        Json input = {{"size", tyre}, {"new_size", tyre}, {"top_speed", speed}};
        if (*index != 0) input["asked_index"] = index;
        INFO(input.dump());
        CHECK(level(ask("fitment", input)) == "fit");
      }
  // A W carries its whole rating at 215 km/h, a V no longer.
  const Json slower = {
      {"size", "205/55 R16 91W"}, {"new_size", "205/55 R16 91V"}, {"top_speed", "215 km/h"}};
  CHECK_FALSE(caution(ask("fitment", slower), "load_too_low").empty());
  // At 240 km/h a 91V carries no more than an 88W; slower it does, so a fast car changes nothing.
  for (const char* speed : {"200 km/h", "240 km/h"}) {
    const Json weaker = {
        {"size", "205/55 R16 91V"}, {"new_size", "205/55 R16 88W"}, {"top_speed", speed}};
    CHECK_FALSE(caution(ask("fitment", weaker), "load_too_low").empty());
  }
}

TEST_CASE("another size without the pressure moulded on it is no better than with it") {
  Json input = {{"size", "215/65 R16 98H"},
                {"new_size", "215/65 R16C 109/107R"},
                {"load", "700 kg"},
                {"pressure", "2.5 bar"},
                {"top_speed", "160 km/h"}};
  CHECK(level(ask("fitment", input)) == "care");
  CHECK(starts(caution(ask("fitment", input), "reference_pressure_unknown"), "care"));
  input["new_size"] = "215/65 R16C 109/107R 475 kPa";
  CHECK(level(ask("fitment", input)) == "care");
}

TEST_CASE("a reading far above what is to be set is care, though the placard says a little less") {
  const Json answer =
      set("225/45 R17 94W XL", "488 kg", {{"placard", "197 kPa"}, {"gauge", "312 kPa"}});
  CHECK(level(answer) == "care");
  CHECK(starts(caution(answer, "over_placard"), "care: Cold it has 3.12 bar (312 kPa), and 2.06"));
}

TEST_CASE("the rated load at the rated pressure is care for a gauge's error, not unfit") {
  const char* van = "195/70 R15C 104/102R 450 kPa";
  const Json to_set = set(van, "885 kg", {{"placard", "4.5 bar"}, {"gauge", "4.5 bar"}});
  CHECK(level(to_set) == "care");
  CHECK(starts(caution(to_set, "no_room_under_marking"), "care"));
  CHECK(starts(to_set["verdict"]["text"], "Set 4.50 bar (450 kPa) cold, with care"));
  const Json checked = check(van, "885 kg", "4.5 bar");
  CHECK(level(checked) == "care");
  CHECK(starts(caution(checked, "no_room_under_marking"), "care"));
  CHECK(level(check(van, "900 kg", "4.5 bar")) == "care");
  CHECK(level(check(van, "885 kg", "4.45 bar")) == "unfit");
  CHECK(level(check(van, "901 kg", "4.5 bar")) == "unfit");
  CHECK(level(set(van, "885 kg", {{"placard", "4.5 bar"}, {"gauge", "4.45 bar"}})) == "unfit");
  // More than is moulded on it, without any gauge's error.
  CHECK(starts(caution(set("205/55 R16 91V MAX PRESS 240 kPa", "605 kg"), "no_room_under_marking"),
               "unfit"));
}

TEST_CASE("a car's placard comes before a least pressure known from memory") {
  const Json answer = set("125 R15 68S", "170 kg", {{"placard", "1.4 bar"}, {"gauge", "1.4 bar"}});
  CHECK(level(answer) == "care");
  CHECK(starts(answer["verdict"]["text"], "Set 1.40 bar (140 kPa) cold, with care"));
  CHECK(starts(caution(answer, "under_least"), "care: The placard's 1.40 bar (140 kPa)"));
  CHECK(level(set("125 R15 68S", "170 kg", {{"placard", "1.4 bar"}, {"gauge", "1.2 bar"}})) ==
        "unfit");
  // Not one that the load is beyond, nor one that no car has, nor on a van's tyre.
  CHECK(caution(set("125 R15 68S", "250 kg", {{"placard", "1.4 bar"}}), "under_least").empty());
  CHECK(level(set("125 R15 68S", "170 kg", {{"placard", "0.9 bar"}, {"gauge", "0.9 bar"}})) ==
        "unfit");
  CHECK(level(set("195/70 R15C 104/102R", "400 kg", {{"placard", "1.4 bar"}})) == "unfit");
}

TEST_CASE("an LT tyre carries what its maker's table prints, not a straight line") {
  // 1700 lb at 35 psi is 771 kg; the line from 80 psi gives 604 kg.
  const Json answer = check("LT235/85R16 120/116R 80 psi", "760 kg", "36.5 psi");
  CHECK(caution(answer, "pressure_low").empty());
  CHECK((*with_id(answer["figures"], "pressure_needed"))["value"] == Approx(236.0).margin(2.0));
  // No table was seen for flotation and trailer tyres.
  CHECK_FALSE(
      caution(check("ST225/75R15 117/112M 80 psi", "760 kg", "38 psi"), "pressure_low").empty());
}

TEST_CASE("a size marked P or LT is sure of 1.5 % less than its index") {
  struct Case {
    const char *size, *within, *above, *pressure;
  };
  for (const Case& c : {Case{"LT245/75R16 120/116R LRE 80 psi", "1370 kg", "1385 kg", "80 psi"},
                        Case{"P235/75R15 XL 108S", "980 kg", "995 kg", "43 psi"}}) {
    INFO(c.size);
    CHECK(starts(caution(check(c.size, c.within, c.pressure), "load_under_index"), "note"));
    CHECK(starts(caution(check(c.size, c.above, c.pressure), "load_under_index"), "care"));
    CHECK(caution(check(c.size, c.above, c.pressure), "overload").empty());
    CHECK(starts(caution(set(c.size, c.above), "load_under_index"), "care"));
    const Json fitted = {
        {"size", c.size}, {"new_size", c.size}, {"top_speed", "150 km/h"}, {"load", c.above}};
    CHECK(starts(caution(ask("fitment", fitted), "load_under_index"), "care"));
  }
  CHECK_FALSE(caution(check("P235/75R15 XL 108S", "1001 kg", "42 psi"), "overload").empty());
  // With MAX LOAD there is nothing to guess.
  const char* marked = "P235/75R15 XL 108S MAX LOAD 990 kg";
  CHECK(caution(check(marked, "985 kg", "43 psi"), "load_under_index").empty());
  CHECK(caution(check(marked, "985 kg", "43 psi"), "marked_load_lower").empty());
  CHECK_FALSE(caution(check(marked, "991 kg", "43 psi"), "overload").empty());
  CHECK(caution(check("235/75 R15 105S", "920 kg", "2.6 bar"), "load_under_index").empty());
}

TEST_CASE("a reason that rests on a gauge's error says so") {
  const Json near = check("205/55 R16 91V", "450 kg", "1.74 bar");
  CHECK(level(near) == "unfit");
  CHECK((*with_id(near["limits"], "load_at_pressure"))["why"] ==
        "450 kg needs at least 1.80 bar (180 kPa) by a gauge that can be 0.10 bar (10 kPa) out; "
        "the tyre has 1.74 bar (174 kPa).");
  // 150 kPa carry this load, 160 by a gauge: 155 does not "not carry it".
  const Json hot =
      set("205/55 R16 91V", "400 kg", {{"hot_target", "1.9 bar"}, {"hot_tyre", "60 °C"}});
  const std::string refused = caution(hot, "target_too_low");
  CHECK(starts(refused, "unfit"));
  CHECK(refused.find("A gauge can be 0.10 bar (10 kPa) out") != std::string::npos);
  const Json too_low =
      set("205/55 R16 91V", "400 kg", {{"hot_target", "1.7 bar"}, {"hot_tyre", "60 °C"}});
  CHECK(caution(too_low, "target_too_low").find("could not carry the load") != std::string::npos);
}

TEST_CASE("water deeper than the 9.5 mm of the deepest test is said to be") {
  const auto in = [](const char* water) {
    return caution(check("205/55 R16 91V", "430 kg", "2.3 bar", {{"water", water}}),
                   "beyond_measured_water");
  };
  for (const char* water : {"9.6 mm", "9.9 mm", "10 mm", "12 mm"}) CHECK(starts(in(water), "care"));
  for (const char* water : {"9.5 mm", "3/8 in", "9 mm"}) CHECK(in(water).empty());
}
