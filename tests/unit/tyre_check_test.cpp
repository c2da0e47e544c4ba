
#include "core/quantity/write.hpp"
#include "core/sheets/sources.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/sheets.hpp"

using namespace treadwater;
using namespace treadwater::sheets;
using namespace treadwater::testing;

namespace {

using Change = std::pair<std::string_view, std::string>;

// A part-worn tyre in 5 mm of water, with some fields changed.
Answer check(std::initializer_list<Change> changes = {}) {
  Input input;
  input.set("size", "205/55 R16 91V");
  input.set("load", "430 kg");
  input.set("pressure", "220 kPa");
  input.set("tread", "3 mm");
  input.set("water", "5 mm");
  input.set("today", "2026-11-25");
  for (const auto& [id, text] : changes) input.set(id, text);
  return tyre_check(input);
}

const Caution* caution(const Answer& answer, std::string_view id) {
  for (const Caution& c : answer.cautions)
    if (c.id == id) return &c;
  return nullptr;
}
const Limit* limit(const Answer& answer, std::string_view id) {
  for (const Limit& l : answer.limits)
    if (l.id == id) return &l;
  return nullptr;
}
const Figure* figure(const Answer& answer, std::string_view id) {
  for (const Figure& f : answer.figures)
    if (f.id == id) return &f;
  return nullptr;
}
double held_to(const Answer& answer) {
  return in_kilometres_per_hour(answer.hold_to.value().speed);
}
// Neither a maximum speed nor the word that there is none.
bool no_speed(const Answer& answer) { return !answer.hold_to && !answer.no_limit; }
double kmh(const Limit* l) { return in_kilometres_per_hour(l->central); }
std::string problem_codes(const Answer& answer) {
  std::string codes;
  for (const Problem& p : answer.problems) codes += p.field + ":" + p.code + " ";
  return codes;
}

}  // namespace

TEST_CASE("3 mm of tread in 5 mm of water holds to 50 km/h, and aquaplaning governs") {
  const Answer answer = check();
  REQUIRE(answer.ok());
  CHECK(held_to(answer) == 50.0);
  CHECK(answer.hold_to->governed_by == "aquaplaning");
  CHECK(answer.limits.front().id == "aquaplaning");
  CHECK(answer.verdict->level == Level::care);
  CHECK(limit(answer, "speed_symbol"));
  CHECK(limit(answer, "load_at_pressure"));
}

TEST_CASE("every figure of the contract is there, with its source") {
  const Answer answer = check();
  for (const char* id :
       {"load_rating", "load_capacity", "pressure_needed", "overall_diameter", "deflection",
        "patch_length", "patch_width", "patch_area", "footprint_aspect", "ground_pressure",
        "onset_pressure_only", "onset_footprint", "onset_film", "onset_estimate"}) {
    INFO(id);
    REQUIRE(figure(answer, id));
    CHECK_FALSE(figure(answer, id)->sources.empty());
    CHECK_FALSE(figure(answer, id)->text.empty());
  }
  CHECK(figure(answer, "load_rating")->value == 615.0);
  CHECK_THAT(figure(answer, "overall_diameter")->value, WithinAbs(631.9, 0.05));
  CHECK_THAT(figure(answer, "load_capacity")->value, WithinAbs(555.2, 0.05));
}

TEST_CASE("a sound tyre on a damp road is fit, and its symbol's speed is no speed to hold to") {
  const Answer answer = check({{"tread", "7 mm"}, {"water", "0"}, {"pressure", "230 kPa"}});
  CHECK(answer.verdict->level == Level::note);
  CHECK_FALSE(answer.hold_to);
  REQUIRE(answer.no_limit);
  CHECK(answer.no_limit->own == kilometres_per_hour(240.0));
  CHECK(answer.no_limit->own_text == "Its own limit is 240 km/h (speed symbol V).");
  CHECK(answer.limits.front().id == "speed_symbol");
  CHECK(caution(answer, "no_dynamic_aquaplaning"));
  CHECK(caution(answer, "thin_film"));
}

TEST_CASE("a symbol below 130 km/h governs on a damp road, and one of 130 km/h does not") {
  const auto with = [](const char* size) {
    return check({{"size", size}, {"tread", "7 mm"}, {"water", "0"}, {"pressure", "230 kPa"}});
  };
  const Answer slow = with("205/55 R16 91L");
  CHECK(held_to(slow) == 120.0);
  CHECK(slow.hold_to->governed_by == "speed_symbol");
  CHECK_FALSE(slow.no_limit);
  const Answer fast = with("205/55 R16 91M");
  CHECK_FALSE(fast.hold_to);
  CHECK(fast.no_limit.value().own == kilometres_per_hour(130.0));
}

TEST_CASE("where nothing is said of water it is judged for a dry road, and that is said") {
  const Answer answer = check({{"water", ""}, {"tread", "7 mm"}});
  CHECK(answer.ok());
  REQUIRE(caution(answer, "water_not_given"));
  CHECK_THAT(caution(answer, "water_not_given")->text,
             StartsWith("Judged for a dry road only: nothing was said about water."));
  CHECK(answer.verdict->text ==
        "Fit for this load at this pressure on a dry road, as far as these readings tell.");
  for (const char* id : {"aquaplaning", "puddles"}) CHECK_FALSE(limit(answer, id));
  for (const char* id : {"thin_film", "wet_stop", "in_puddles"}) CHECK_FALSE(caution(answer, id));
}

TEST_CASE("the hold-to speed is rounded down to five in miles where miles are asked for") {
  const Answer answer = check({{"units", "uk"}});
  CHECK(answer.hold_to->text == "30 mph");
  CHECK_THAT(in_miles_per_hour(answer.hold_to->speed), WithinAbs(30.0, 1e-9));
}

TEST_CASE("an overloaded tyre is unfit at any pressure") {
  const Answer answer = check({{"load", "650 kg"}});
  CHECK(answer.verdict->level == Level::unfit);
  CHECK(caution(answer, "overload"));
  CHECK(held_to(answer) == 0.0);
  CHECK(answer.hold_to->governed_by == "load_at_pressure");
}

TEST_CASE("too little pressure for the load is unfit, and names the pressure that would do") {
  const Answer answer = check({{"load", "500 kg"}, {"pressure", "180 kPa"}});
  CHECK(answer.verdict->level == Level::unfit);
  REQUIRE(caution(answer, "pressure_low"));
  CHECK_THAT(caution(answer, "pressure_low")->text, ContainsSubstring("194 kPa"));
  CHECK(held_to(answer) == 0.0);
}

TEST_CASE("a pressure within the gauge's error of too low is not counted on") {
  const Answer answer = check({{"load", "500 kg"}, {"pressure", "198 kPa"}});
  CHECK(caution(answer, "pressure_at_least"));
  CHECK(kmh(limit(answer, "load_at_pressure")) > 0.0);
  CHECK(held_to(answer) == 0.0);
}

TEST_CASE("a V tyre fully loaded at its reference pressure is not supported at 240 km/h") {
  const Answer answer =
      check({{"load", "560 kg"}, {"pressure", "250 kPa"}, {"water", "0"}, {"tread", "8 mm"}});
  CHECK(kmh(limit(answer, "load_at_pressure")) < 240.0);
  CHECK(kmh(limit(answer, "load_at_pressure")) > 160.0);
}

// 600 kg on a 91 needs 242.4 kPa; the 7.6 kPa left of 250 are 12.6 km/h of the 30 kPa that 160 to
// 210 km/h ask for.
TEST_CASE("what pressure is left over the load's need decides how far past 160 km/h it goes") {
  const Answer answer =
      check({{"load", "600 kg"}, {"pressure", "250 kPa"}, {"water", "0"}, {"tread", "8 mm"}});
  CHECK(kmh(limit(answer, "load_at_pressure")) == 172.0);
}

TEST_CASE("an extra-load tyre needs 290 kPa for its full load") {
  const Answer answer = check({{"size", "205/55 R16 94V XL"}, {"load", "500 kg"}});
  CHECK_THAT(figure(answer, "pressure_needed")->value, WithinAbs(201.2, 0.1));
}

TEST_CASE("pressure above what the load rating belongs to is cautioned") {
  CHECK(caution(check({{"pressure", "320 kPa"}}), "pressure_high"));
  CHECK_FALSE(caution(check({{"pressure", "250 kPa"}}), "pressure_high"));
}

TEST_CASE("a hot reading is taken as up to 40 kPa less when cold") {
  const Answer answer = check({{"pressure_state", "hot"}});
  REQUIRE(caution(answer, "hot_reading"));
  CHECK_THAT(caution(answer, "hot_reading")->text, ContainsSubstring("180 kPa"));
  CHECK(figure(answer, "load_capacity")->value < figure(check(), "load_capacity")->value);
}

TEST_CASE("tread under the law stops the tyre, at the law is cautioned, at 3 mm is low") {
  const Answer under = check({{"tread", "1.5 mm"}, {"place", "GB"}});
  CHECK(under.verdict->level == Level::unfit);
  CHECK(held_to(under) == 0.0);
  CHECK(under.hold_to->governed_by == "tread_law");
  const Answer at = check({{"tread", "1.6 mm"}, {"place", "GB"}});
  CHECK_FALSE(limit(at, "tread_law"));
  CHECK(caution(at, "tread_at_law"));
  CHECK(caution(check(), "tread_low"));
  CHECK_FALSE(caution(check({{"tread", "3.1 mm"}}), "tread_low"));
}

TEST_CASE("2/32 in is legal in the United States and not in Great Britain") {
  CHECK_FALSE(limit(check({{"tread", "2/32 in"}, {"place", "US"}}), "tread_law"));
  CHECK(limit(check({{"tread", "2/32 in"}, {"place", "GB"}}), "tread_law"));
  const Answer bald = check({{"tread", "1/32 in"}, {"place", "US"}, {"units", "us"}});
  CHECK(limit(bald, "tread_law")->why ==
        "The law (United States) asks for 2/32 in (any major groove, at three places round the "
        "tyre).");
}

TEST_CASE("an Austrian winter tyre at 3.5 mm is unfit in January and only cautioned in June") {
  const Change at{"place", "AT"}, winter{"tyre_kind", "winter"}, tread{"tread", "3.5 mm"};
  const Answer january = check({at, winter, tread, {"today", "2027-01-15"}});
  CHECK(caution(january, "winter_tread_law")->level == Level::unfit);
  const Answer june = check({at, winter, tread, {"today", "2027-06-15"}});
  CHECK(caution(june, "winter_tread_law")->level == Level::care);
  CHECK_FALSE(
      caution(check({at, {"tread", "3.5 mm"}, {"today", "2027-01-15"}}), "winter_tread_law"));
}

TEST_CASE("in a Norwegian winter any tyre needs 3 mm, in summer not") {
  const Change at{"place", "NO"}, tread{"tread", "2.5 mm"};
  CHECK(caution(check({at, tread, {"today", "2027-01-15"}}), "winter_tread_law")->level ==
        Level::unfit);
  CHECK_FALSE(caution(check({at, tread, {"today", "2027-07-15"}}), "winter_tread_law"));
}

TEST_CASE("a road tyre under 4 mm is not cautioned as a winter tyre") {
  CHECK_FALSE(caution(check({{"tread", "3.5 mm"}}), "winter_tread"));
  CHECK(caution(check({{"tread", "3.5 mm"}, {"tyre_kind", "winter"}}), "winter_tread"));
}

TEST_CASE("a speed above the symbol is unfit") {
  const Answer answer =
      check({{"size", "205/55 R16 91T"}, {"speed", "200 km/h"}, {"water", "0"}, {"tread", "8 mm"}});
  CHECK(caution(answer, "speed_above_symbol")->level == Level::unfit);
  CHECK(answer.verdict->level == Level::unfit);
}

TEST_CASE("an intended speed is judged against the hold-to speed and the limit itself") {
  CHECK_FALSE(caution(check({{"speed", "50 km/h"}}), "speed_above_hold_to"));
  CHECK(caution(check({{"speed", "60 km/h"}}), "speed_above_hold_to")->level == Level::care);
  CHECK(caution(check({{"speed", "90 km/h"}}), "speed_above_hold_to")->level == Level::unfit);
}

TEST_CASE("a speed past the water's limit is unfit though another limit governs") {
  // A pressure within a gauge's error of too low for the load: held to nothing by that.
  const Answer answer = check({{"load", "409 kg"},
                               {"pressure", "160 kPa"},
                               {"tread", "1.6 mm"},
                               {"water", "4.3 mm"},
                               {"speed", "56 km/h"}});
  CHECK(answer.hold_to->governed_by == "load_at_pressure");
  REQUIRE(kmh(limit(answer, "aquaplaning")) < 56.0);
  CHECK(caution(answer, "speed_above_hold_to")->level == Level::unfit);
  CHECK(answer.verdict->level == Level::unfit);
}

TEST_CASE("age is cautioned over six and over ten years") {
  CHECK_FALSE(caution(check({{"date_code", "4722"}}), "over_six_years"));
  CHECK(caution(check({{"date_code", "4719"}}), "over_six_years"));
  CHECK(caution(check({{"date_code", "4715"}}), "over_ten_years"));
  CHECK(caution(check({{"date_code", "324"}}), "over_ten_years"));
}

TEST_CASE("a temporary spare is held to 80 km/h, 50 mph") {
  const Answer answer =
      check({{"size", "T125/80 D15 95M"}, {"pressure", "420 kPa"}, {"water", "0"}});
  CHECK(held_to(answer) == 80.0);
  CHECK(answer.hold_to->governed_by == "temporary_spare");
  CHECK(caution(answer, "temporary_spare"));
  const Answer miles =
      check({{"size", "T125/80 D15 95M"}, {"pressure", "60 psi"}, {"water", "0"}, {"units", "uk"}});
  CHECK(miles.hold_to->text == "45 mph");
}

TEST_CASE("a P-metric tyre goes by the stricter of the two load laws") {
  const Answer answer =
      check({{"size", "P205/75R15 97S"}, {"pressure", "180 kPa"}, {"load", "600 kg"}});
  CHECK_THAT(figure(answer, "load_capacity")->value, WithinAbs(622.7, 0.05));
  CHECK(*figure(answer, "load_capacity")->low < 600.0);
  CHECK(caution(answer, "pressure_low"));
}

TEST_CASE("a P-metric tyre without a load index has it worked out, aloud") {
  const Answer answer = check({{"size", "P205/75R15"}, {"tread", "8 mm"}});
  CHECK(figure(answer, "load_rating")->value == Approx(0.985 * 730.0));
  CHECK(caution(answer, "load_index_assumed"));
  CHECK(caution(answer, "speed_symbol_unknown"));
  CHECK(answer.verdict->level == Level::care);
}

TEST_CASE("a commercial tyre's load rating belongs to the pressure on its sidewall") {
  const Answer without =
      check({{"size", "195/75 R16C 107/105R"}, {"load", "700 kg"}, {"pressure", "400 kPa"}});
  CHECK(caution(without, "reference_pressure_unknown"));
  CHECK_FALSE(figure(without, "load_capacity"));
  CHECK(no_speed(without));
  const Answer with = check(
      {{"size", "195/75 R16C 107/105R 475 kPa"}, {"load", "700 kg"}, {"pressure", "400 kPa"}});
  CHECK_FALSE(caution(with, "reference_pressure_unknown"));
  CHECK(figure(with, "load_capacity"));
  CHECK_FALSE(no_speed(with));
}

TEST_CASE("a size without a service description leaves load and speed unjudged, and says so") {
  const Answer answer = check({{"size", "205/55 R16"}, {"tread", "8 mm"}, {"water", "0"}});
  CHECK(answer.ok());
  CHECK(caution(answer, "load_index_unknown"));
  CHECK(caution(answer, "speed_symbol_unknown"));
  CHECK(answer.verdict->level == Level::care);
  CHECK(no_speed(answer));
  // Nor in water, though there the onset of aquaplaning is below 130 km/h.
  const Answer wet = check({{"size", "205/55 R16"}});
  CHECK(kmh(limit(wet, "aquaplaning")) < 100.0);
  CHECK(no_speed(wet));
}

TEST_CASE("165 SR 13: the speed stands in the size") {
  const Answer answer = check({{"size", "165 SR 13"}, {"water", "0"}});
  CHECK(kmh(limit(answer, "speed_symbol")) == 180.0);
}

TEST_CASE("a slick in standing water is unfit, on a merely wet road cautioned") {
  const Answer water = check({{"tyre_kind", "slick"}, {"water", "1 mm"}});
  CHECK(caution(water, "slick_in_water")->level == Level::unfit);
  CHECK(held_to(water) == 0.0);
  CHECK(water.hold_to->governed_by == "slick_in_water");
  CHECK(water.hold_to->text == "Do not drive into it");
  CHECK(caution(check({{"tyre_kind", "slick"}, {"water", "0"}}), "slick_on_wet"));
}

TEST_CASE("a hand-cut slick is credited less than a moulded tread") {
  CHECK(kmh(limit(check({{"tyre_kind", "cut-slick"}}), "aquaplaning")) <
        kmh(limit(check(), "aquaplaning")));
}

TEST_CASE("10 cm of water is not to be entered") {
  const Answer answer = check({{"water", "100 mm"}, {"tread", "8 mm"}});
  CHECK(answer.verdict->level == Level::unfit);
  CHECK(held_to(answer) == 0.0);
  CHECK(answer.hold_to->governed_by == "crossing");
  CHECK(answer.hold_to->text == "Do not drive into it");
  CHECK(limit(answer, "crossing"));
  CHECK_FALSE(limit(answer, "aquaplaning"));
}

TEST_CASE("bad input is a problem, not a verdict, and no figure rests on it") {
  const Answer bad_load = check({{"load", "banana"}});
  CHECK(problem_codes(bad_load) == "load:no_number ");
  CHECK_FALSE(bad_load.verdict);
  CHECK(no_speed(bad_load));
  CHECK_FALSE(limit(bad_load, "load_at_pressure"));
  CHECK_FALSE(figure(bad_load, "patch_area"));
  CHECK_FALSE(figure(bad_load, "pressure_needed"));
  CHECK(limit(bad_load, "aquaplaning"));
  const Answer bad_pressure = check({{"pressure", "1e999 bar"}});
  CHECK(problem_codes(bad_pressure) == "pressure:too_large ");
  CHECK_FALSE(limit(bad_pressure, "aquaplaning"));
  CHECK_FALSE(figure(bad_pressure, "load_capacity"));
  const Answer bad_size = check({{"size", "banana"}});
  CHECK_FALSE(limit(bad_size, "speed_symbol"));
  CHECK_FALSE(figure(bad_size, "load_rating"));
  CHECK_FALSE(figure(bad_size, "overall_diameter"));
  const Answer bad_tread = check({{"tread", "-3 mm"}});
  CHECK(problem_codes(bad_tread) == "tread:below_range ");
  CHECK_FALSE(limit(bad_tread, "aquaplaning"));
  CHECK_FALSE(figure(bad_tread, "onset_film"));
}

TEST_CASE("empty required fields are each asked for") {
  CHECK(problem_codes(check({{"size", ""}, {"load", ""}, {"pressure", " "}, {"tread", ""}})) ==
        "size:missing load:missing pressure:missing tread:missing ");
}

TEST_CASE("fields and choices that do not exist are refused by name") {
  CHECK(problem_codes(check({{"colour", "red"}})) == "colour:unknown_field ");
  CHECK(problem_codes(check({{"place", "XX"}})) == "place:unknown_choice ");
  CHECK(problem_codes(check({{"today", "tomorrow"}})) == "today:not_a_date ");
}

TEST_CASE("the patch is drawn to scale beside a payment card of ISO/IEC 7810") {
  const Answer answer = check();
  REQUIRE(answer.drawings.size() == 1);
  const Drawing& drawing = answer.drawings[0];
  CHECK_THAT(drawing.boxes[0].width, WithinAbs(figure(answer, "patch_width")->value, 1e-9));
  CHECK_THAT(drawing.boxes[0].height, WithinAbs(figure(answer, "patch_length")->value, 1e-9));
  CHECK(drawing.boxes[1].width == 85.60);
  CHECK(drawing.boxes[1].height == 53.98);
}

TEST_CASE("the sidewall text is laid out whole, with the meaning of each part") {
  const Answer answer = check({{"size", " 205/55  R16 91V XL"}});
  REQUIRE(answer.markings.size() == 1);
  std::string whole, meanings;
  for (const Stretch& stretch : answer.markings[0].stretches) {
    whole += stretch.text;
    meanings += stretch.meaning.str() + "\n";
  }
  CHECK(whole == " 205/55  R16 91V XL");
  CHECK_THAT(meanings, ContainsSubstring("205 mm") && ContainsSubstring("615 kg") &&
                           ContainsSubstring("240 km/h"));
}

TEST_CASE("what may not be driven at all is not fit, however little it lacks") {
  const auto a =
      check({{"load", "610 kg"}, {"pressure", "2.5 bar"}, {"tread", "8 mm"}, {"water", "0"}});
  CHECK(a.hold_to->speed == kilometres_per_hour(0.0));
  CHECK(a.verdict->level == Level::unfit);
}

TEST_CASE("the answer can be read out on a radio") {
  CHECK(check().spoken.at(0).text ==
        "205/55 R16 91V, tread 3 mm, water 5 mm: hold to 50 kilometres an hour. The limit is "
        "aquaplaning. From 50 kilometres an hour allow 68 m to stop.");
  CHECK_THAT(
      check({{"size", "205/55 R16 91V XL M+S 3PMSF TL DOT AB12 CDE3 2319"}}).spoken.at(0).text,
      StartsWith("205/55 R16 91V") && !ContainsSubstring("DOT"));
}

TEST_CASE("a verdict of fit never rests on what is known from memory alone") {
  // The least pressure and the patch are provisional; the limits that decide are not.
  for (const char* size : {"205/55 R16 91V", "205/55 R16 91L"}) {
    const Answer answer =
        check({{"size", size}, {"tread", "7 mm"}, {"water", "0"}, {"pressure", "230 kPa"}});
    REQUIRE(answer.verdict->level == Level::note);
    CHECK_FALSE(no_speed(answer));
    CHECK(answer.limits.front().id == "speed_symbol");
    for (const Source* source : answer.limits.front().sources)
      CHECK(source->standing != Standing::memory);
  }
}

TEST_CASE("every source an answer uses is in the sheet's list, and ids are unique") {
  const Sources all = all_sources();
  for (std::size_t i = 0; i < all.size(); ++i)
    for (std::size_t j = i + 1; j < all.size(); ++j) CHECK(all[i]->id != all[j]->id);
  const char* sizes[] = {"205/55 R16 91V", "P205/75R15", "195/75 R16C 107/105R 475 kPa",
                         "T125/80 D15 95M", "225/40 ZR18 92Y XL"};
  const char* kinds[] = {"road", "winter", "slick"};
  for (const char* size : sizes)
    for (const char* kind : kinds)
      for (const auto& [water, wetness] : {std::pair("0", "unsaid"),
                                           {"5 mm", "unsaid"},
                                           {"200 mm", "unsaid"},
                                           {"", "damp"},
                                           {"", "wet"},
                                           {"", "downpour"},
                                           {"", "standing"}})
        for (const auto& place : {"GB", "AT", "US"})
          for (const Source* used : sources_used(check({{"size", size},
                                                        {"tyre_kind", kind},
                                                        {"water", water},
                                                        {"wetness", wetness},
                                                        {"place", place},
                                                        {"tread", "1 mm"},
                                                        {"date_code", "2315"},
                                                        {"pressure_state", "hot"}}))) {
            bool found = false;
            for (const Source* known : all) found = found || known->id == used->id;
            INFO(used->id);
            CHECK(found);
          }
}

TEST_CASE("a soft tyre of a kind whose law is not known is refused all the same") {
  const Answer van = check({{"size", "195/70 R15C 104/102R"}, {"pressure", "0.4 bar"}});
  CHECK(van.verdict->level == Level::unfit);
  CHECK(held_to(van) == 0.0);
  CHECK(caution(van, "pressure_low"));
  const Answer enough = check({{"size", "195/70 R15C 104/102R"}, {"pressure", "1.5 bar"}});
  CHECK(!caution(enough, "pressure_low"));
  CHECK(no_speed(enough));
  // A beaded edge is held on its rim by pressure: 60 psi and more on cars (secondary).
  const auto beaded = [](const char* size, const char* load, const char* pressure) {
    return check({{"size", size}, {"load", load}, {"pressure", pressure}});
  };
  CHECK(held_to(beaded("815x105", "300 kg", "400 kPa")) == 0.0);
  CHECK(held_to(beaded("815x105", "300 kg", "420 kPa")) > 0.0);
  // Beyond the loads of the schedules nothing is judged.
  CHECK(no_speed(beaded("815x105", "3000 kg", "600 kPa")));
  // Nor does the law for a load index moulded on it let it go under that.
  CHECK(held_to(beaded("815x105 85N 480 kPa", "150 kg", "400 kPa")) == 0.0);
  CHECK(held_to(beaded("815x105 85N 480 kPa", "150 kg", "440 kPa")) > 0.0);
  CHECK(held_to(beaded("650x65", "150 kg", "240 kPa")) == 0.0);
  CHECK(no_speed(beaded("650x65 M/C", "150 kg", "240 kPa")));
  CHECK(caution(check({{"size", "650x65"}}), "narrow_beaded_edge"));
}

TEST_CASE("a comma that may mean thousands is asked about, and one that cannot is not") {
  CHECK(problem_codes(check({{"water", "1,000 mm"}})) == "water:thousands ");
  CHECK(problem_codes(check({{"load", "1.250 kg"}})) == "load:thousands ");
  CHECK(problem_codes(check({{"pressure", "2,250 bar"}})) == "");
  CHECK(problem_codes(check({{"tread", "3.125 mm"}})) == "");
  CHECK(problem_codes(check({{"water", "0.500 mm"}})) == "");
}

TEST_CASE("a tread that hardly any tyre has is asked about") {
  CHECK(caution(check({{"tread", "18 mm"}}), "tread_deep")->level == Level::care);
  CHECK(!caution(check({{"tread", "11 mm"}}), "tread_deep"));
  CHECK(problem_codes(check({{"tread", "3/16 /32 in"}})) == "tread:two_numbers ");
  CHECK(problem_codes(check({{"tread", "3/16 in"}})) == "");
}

TEST_CASE("a tyre marked as not for the road is not simply fit") {
  for (const char* size : {"205/55 R16 91V NHS", "205/55 R16 91V COMPETITION USE ONLY"}) {
    const Answer answer = check({{"size", size}, {"water", ""}, {"tread", "7 mm"}});
    CHECK(caution(answer, "marked_not_for_road"));
    CHECK(answer.verdict->level == Level::care);
    CHECK(!caution(check({{"size", size}, {"tyre_kind", "slick"}}), "marked_not_for_road"));
  }
}

TEST_CASE("an index above what the size carries is an extra-load tyre's, or wrong") {
  // 670 kg at 2.6 bar: by the standard law it would carry all of it, as XL 614 kg.
  const Answer as_xl =
      check({{"size", "205/55 R16 94V"}, {"load", "650 kg"}, {"pressure", "2.6 bar"}});
  CHECK(caution(as_xl, "extra_load_assumed"));
  CHECK(caution(as_xl, "pressure_low"));
  CHECK(held_to(as_xl) == 0.0);
  CHECK(!caution(check({{"size", "205/55 R16 94V XL"}}), "extra_load_assumed"));
  CHECK(!caution(check(), "extra_load_assumed"));
  const Answer typo = check({{"size", "205/55 R16 119V"}});
  CHECK(caution(typo, "load_index_wrong"));
  CHECK(typo.verdict->level == Level::unfit);
  CHECK(held_to(typo) == 0.0);
}

TEST_CASE("of two service descriptions, two dates and two loads the worse counts") {
  const Answer two =
      check({{"size", "195/65 R15 95T 91H"}, {"load", "680 kg"}, {"pressure", "2.5 bar"}});
  CHECK(caution(two, "overload"));
  CHECK(kmh(limit(two, "speed_symbol")) == 190.0);
  const Answer dates = check({{"size", "205/55 R16 91V 0105"}, {"date_code", "2322"}});
  CHECK(caution(dates, "over_ten_years"));
  CHECK(caution(check({{"date_code", "0105"}, {"size", "205/55 R16 91V 2322"}}), "over_ten_years"));
  const Answer marked = check({{"size", "205/55 R16 91V MAX LOAD 500 kg"}, {"load", "600 kg"}});
  CHECK(caution(marked, "marked_load_lower"));
  CHECK(caution(marked, "overload"));
  CHECK(!caution(check({{"size", "205/55 R16 91V MAX LOAD 615 kg (1356 lbs)"}}),
                 "marked_load_lower"));
}

TEST_CASE("where a law is known from memory only, the straight line rules") {
  // 104 is 900 kg at 450 kPa: 360 kPa carries 720 kg in line, 753 kg by the law from memory.
  const auto laden = [](const char* load) {
    return check(
        {{"size", "195/70 R15C 104/102R 450 kPa"}, {"load", load}, {"pressure", "360 kPa"}});
  };
  CHECK(caution(laden("730 kg"), "pressure_low"));
  CHECK(!caution(laden("690 kg"), "pressure_low"));
  CHECK(figure(laden("690 kg"), "load_capacity")->low == Approx(720.0));
}

TEST_CASE("a motor-cycle tyre loses load at speed by the stricter of two tables") {
  // 58 is 236 kg; V at 240 km/h: 91 % for cars, 85 % for motor cycles (memory).
  const auto at_240 = [](const char* load) {
    return check({{"size", "120/70 R17 M/C 58V 290 kPa"},
                  {"load", load},
                  {"pressure", "330 kPa"},
                  {"speed", "240 km/h"},
                  {"water", ""},
                  {"tread", "7 mm"}});
  };
  CHECK(at_240("205 kg").verdict->level == Level::unfit);
  CHECK(kmh(limit(at_240("198 kg"), "load_at_pressure")) == 240.0);
  CHECK(kmh(limit(at_240("205 kg"), "load_at_pressure")) < 240.0);
}

TEST_CASE("a heavy vehicle's tyre is told that its tread law is another") {
  CHECK(caution(check({{"size", "315/80 R22.5 156/150L 850 kPa"}}), "heavy_vehicle"));
  CHECK(!caution(check({{"size", "195/75 R16C 107/105R 475 kPa"}}), "heavy_vehicle"));
  CHECK(!caution(check({{"size", "LT265/75R16 123/120Q"}}), "heavy_vehicle"));
}

TEST_CASE("the least tread for winter has a gauge's error too") {
  const auto winter = [](const char* tread) {
    return check(
        {{"tyre_kind", "winter"}, {"place", "AT"}, {"tread", tread}, {"today", "2026-12-10"}});
  };
  CHECK(caution(winter("3.9 mm"), "winter_tread_law")->level == Level::unfit);
  CHECK(caution(winter("4.1 mm"), "winter_tread_law")->level == Level::care);
  CHECK(!caution(winter("4.3 mm"), "winter_tread_law"));
}

TEST_CASE("without a speed symbol nothing above 120 km/h is told") {
  const Answer answer = check({{"size", "P225/60R16"}, {"water", ""}, {"pressure", "240 kPa"}});
  CHECK(caution(answer, "speed_symbol_unknown"));
  CHECK(held_to(answer) == 120.0);
  CHECK(no_speed(check({{"size", "5.60-15"}, {"water", ""}})));
}

TEST_CASE("what no speed helps is told without one, and read out so") {
  const Answer old = check({{"date_code", "0110"}, {"water", ""}});
  CHECK(held_to(old) == 0.0);
  CHECK(old.hold_to->governed_by == "over_ten_years");
  CHECK(old.spoken.front().text.str().find("hold to") == std::string::npos);
  // A speed that is too high is cured by a lower one.
  const Answer fast = check({{"speed", "250 km/h"}});
  CHECK(fast.verdict->level == Level::unfit);
  CHECK(held_to(fast) == 50.0);
}
