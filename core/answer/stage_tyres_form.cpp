// The form of the sheet `stage-tyres`. Field ids are part of every link anybody has kept: do not
// rename them.
#include "core/answer/form.hpp"
#include "core/answer/heads.hpp"
#include "core/answer/stage_tyres.hpp"
#include "core/stage/event.hpp"
#include "core/stage/tyre_kind.hpp"

namespace treadwater::answer {
namespace {

constexpr QuantityRequest length{"Length", Dimension::length, "km",     100.0,
                                 2.0e5,    "0.1 km",          "200 km", "15.2 km"};
constexpr QuantityRequest average{
    "Average on the right tyre", Dimension::speed, "km/h", 10.0, 250.0, "10 km/h",
    "250 km/h (155 mph)",        "85 km/h"};
constexpr QuantityRequest air{
    "Air", Dimension::temperature, "°C", 213.15, 333.15, "-60 °C", "60 °C", "12 °C"};
constexpr QuantityRequest water{
    "Standing water reported", Dimension::length, "mm", 0.0, 0.2, "0 mm", "200 mm (8 in)", "6 mm"};
constexpr QuantityRequest tread{"Tread left", Dimension::length,  "mm",  0.0, 0.025,
                                "0 mm",       "25 mm (31/32 in)", "5 mm"};
constexpr QuantityRequest least{"Least tread", Dimension::length,  "mm",    0.0, 0.02,
                                "0 mm",        "20 mm (25/32 in)", "1.6 mm"};
constexpr QuantityRequest life{
    "Life on the driven axle", Dimension::length, "km", 1000.0, 1.0e6, "1 km", "1000 km", "19 km"};

constexpr QuantityRequest percent(std::string_view label, std::string_view example) {
  return {label, Dimension::number, "%", 0.0, 100.0, "0 %", "100 %", example};
}
constexpr QuantityRequest count(std::string_view label, double most, std::string_view most_text,
                                std::string_view example) {
  return {label, Dimension::number, "", 0.0, most, "0", most_text, example};
}
constexpr QuantityRequest dry = percent("Chance of dry", "60");
constexpr QuantityRequest damp = percent("Chance of damp", "20");
constexpr QuantityRequest wet = percent("Chance of wet", "20");
constexpr QuantityRequest standing = percent("Chance of standing water", "0");
constexpr QuantityRequest snow = percent("Chance of snow", "0");
constexpr QuantityRequest ice = percent("Chance of ice", "0");
constexpr QuantityRequest gravel = percent("Gravel", "0");
constexpr QuantityRequest persistence = percent("How far the weather lasts", "50");
constexpr QuantityRequest abrasion = count("Abrasion", 10.0, "10", "1");
constexpr QuantityRequest slower(std::string_view label, std::string_view example) {
  return {label, Dimension::number, "%", 0.0, 90.0, "0 %", "90 %", example};
}
constexpr QuantityRequest slower_dry = slower("Slower, dry", "4");
constexpr QuantityRequest slower_damp = slower("Slower, damp", "3");
constexpr QuantityRequest slower_wet = slower("Slower, wet", "6");
constexpr QuantityRequest slower_standing = slower("Slower, standing water", "20");
constexpr QuantityRequest coolest{
    "Works from", Dimension::temperature, "°C", 213.15, 333.15, "-60 °C", "60 °C", "5 °C"};
constexpr QuantityRequest hottest{
    "Works up to", Dimension::temperature, "°C", 213.15, 333.15, "-60 °C", "60 °C", "30 °C"};
constexpr QuantityRequest wheel_load{
    "Load on a driven wheel", Dimension::mass, "kg", 20.0, 8000.0, "20 kg",
    "8000 kg (17 600 lb)",    "260 kg"};
constexpr QuantityRequest pressure{
    "Tyre pressure", Dimension::pressure,          "kPa",    50.0, 1000.0,
    "50 kPa",        "1000 kPa (10 bar, 145 psi)", "1.8 bar"};
constexpr QuantityRequest grooves = percent("Grooves that the rules ask for", "17");
constexpr QuantityRequest used = percent("Life used", "40");
constexpr QuantityRequest how_many = count("How many sets", 100.0, "100", "1");
constexpr QuantityRequest most_sets = count("Sets that the rules allow", 100.0, "100", "3");

SheetDescription describe() {
  std::vector<Choice> kinds;
  for (std::size_t i = 0; i < stage::tyre_kind_count; ++i) {
    const stage::TyreKind kind = stage::tyre_kind(i);
    kinds.push_back({kind.id, kind.label});
  }
  // No kind is taken for granted: a row without one is asked for it.
  Field kind_of_set = choice_field("kind", "Kind", "", std::move(kinds));
  kind_of_set.required = true;
  kind_of_set.initial = {};
  const auto number = [](std::string_view id, std::string_view hint,
                         const QuantityRequest& request) {
    return number_field(id, hint, false, request);
  };
  SheetDescription sheet;
  sheet.head = heads::stage_tyres;
  sheet.fields = {
      units_field(),
      list_field(
          "stages", "Stage", "In the order in which they are driven, with the halt after each.",
          stage::most_stages,
          {also(text_field("name", "Name", "", false, "Long Meadow"), column::name),
           also(quantity_field("length", "", true, length, {"km", "miles"},
                               {"km", "miles", "miles"}),
                column::length),
           number("dry", "Per cent; the chances of a stage make 100.", dry),
           number("damp", "", damp), number("wet", "", wet), number("standing", "", standing),
           number("snow", "", snow), number("ice", "", ice),
           choice_field("halt", "After it", "",
                        {{"none", "Straight on"},
                         {"service", "A service"},
                         {"tyre_zone", "A tyre zone"},
                         {"regroup", "A regroup, no work"}}),
           number("gravel", "Per cent of it; the rest is tarmac.", gravel),
           choice_field("roughness", "Ground", "",
                        {{"smooth", "Smooth"}, {"broken", "Broken"}, {"rough", "Rough"}}),
           number("abrasion", "1 is normal, 2 wears twice as fast.", abrasion),
           quantity_field("average", "Empty: 80 km/h.", false, average, {"km/h", "mph"},
                          {"km/h", "mph", "mph"}),
           quantity_field("air", "When you run it.", false, air, {"°C", "°F"}, {"°C", "°C", "°F"}),
           also(quantity_field("water", "The deepest, by a ruler.", false, water, {"mm", "in"},
                               {"mm", "mm", "in"}),
                column::water)}),
      list_field(
          "sets", "Set of tyres", "What is in the van, and on the car.", stage::most_sets,
          {also(std::move(kind_of_set), "Type|Tyre|Genre|Art|Tyyppi"),
           text_field("name", "Mark on it", "To tell it from another of its kind.", false, "B"),
           number("count", "Empty: 1.", how_many),
           also(quantity_field("tread", "Empty: new.", false, tread, {"mm", "in", "/32 in"},
                               {"mm", "mm", "/32 in"}),
                column::tread),
           number("used", "By your notes: for a slick, whose wear no gauge reads.", used),
           quantity_field("life", "In the dry, by your own notes. It counts before ours.", false,
                          life, {"km", "miles"}, {"km", "miles", "miles"}),
           number("slower_dry",
                  "Per cent of time against the right tyre, by your own notes. It counts before "
                  "ours.",
                  slower_dry),
           number("slower_damp", "", slower_damp), number("slower_wet", "", slower_wet),
           number("slower_standing", "", slower_standing),
           quantity_field("coolest", "Air, by your own notes.", false, coolest, {"°C", "°F"},
                          {"°C", "°C", "°F"}),
           quantity_field("hottest", "", false, hottest, {"°C", "°F"}, {"°C", "°C", "°F"})}),
      list_field(
          "cars", "Car of the team",
          "Yours first: the lives above are its own. Load and size shift wear, pressure and width "
          "the "
          "speed at which a car floats.",
          12,
          {text_field("name", "Name", "", false, "Car 7"),
           also(text_field("size", "Sidewall text", "", false, "165/70 R13 79T"), column::size),
           also(quantity_field("load", "", false, wheel_load, {"kg", "lb"}, {"kg", "kg", "lb"}),
                column::load),
           also(quantity_field("pressure", "", false, pressure, {"kPa", "bar", "psi"},
                               {"bar", "psi", "psi"}),
                column::pressure)}),
      choice_field("attitude", "What you want", "",
                   {{"average", "Fastest on average"},
                    {"steady", "Steady: the bad days less bad"},
                    {"safe", "Safe: the worst day least bad"}}),
      choice_field("drive", "Driven axle", "",
                   {{"front", "Front"}, {"rear", "Rear"}, {"all", "All four wheels"}}),
      number("persistence", "0: each stage by itself. 100: it stays as it was.", persistence),
      number("most_sets", "Of four tyres each. Empty: no limit.", most_sets),
      quantity_field("least_tread",
                     "At the end of each stage. Empty: 1.6 mm, asked of all but slicks.", false,
                     least, {"mm", "in", "/32 in"}, {"mm", "mm", "/32 in"}),
      number("grooves", "Share of the tread, per cent. Empty: none.", grooves),
      yes_no_field("moulded_only", "Must the tread be moulded?",
                   "Then no slick, and none cut by hand.", "no"),
      yes_no_field("no_studs", "Are studs forbidden?", "", "no"),
      yes_no_field("road_sections", "Are there sections on the open road?",
                   "Then every set must be legal there.", "no"),
  };
  sheet.example = {
      "example",
      "An invented case: the Saltmarsh Club's day of five tarmac stages, showers about",
      "Soft stage tyres, cut slicks and full wets in the van; one service at noon; two small cars.",
      {{"drive", "rear"},
       {"persistence", "60"},
       {"stages.0.name", "Long Meadow"},
       {"stages.0.length", "9 km"},
       {"stages.0.dry", "60"},
       {"stages.0.damp", "30"},
       {"stages.0.wet", "10"},
       {"stages.0.air", "8 °C"},
       {"stages.0.halt", "none"},
       {"stages.1.name", "Mill Lane"},
       {"stages.1.length", "7 km"},
       {"stages.1.dry", "50"},
       {"stages.1.damp", "30"},
       {"stages.1.wet", "20"},
       {"stages.1.air", "9 °C"},
       {"stages.1.halt", "service"},
       {"stages.2.name", "Long Meadow again"},
       {"stages.2.length", "9 km"},
       {"stages.2.dry", "40"},
       {"stages.2.damp", "20"},
       {"stages.2.wet", "30"},
       {"stages.2.standing", "10"},
       {"stages.2.air", "11 °C"},
       {"stages.2.water", "4 mm"},
       {"stages.2.halt", "none"},
       {"stages.3.name", "Mill Lane again"},
       {"stages.3.length", "7 km"},
       {"stages.3.dry", "40"},
       {"stages.3.damp", "20"},
       {"stages.3.wet", "40"},
       {"stages.3.air", "10 °C"},
       {"stages.3.halt", "tyre_zone"},
       {"stages.4.name", "Quarry"},
       {"stages.4.length", "12 km"},
       {"stages.4.dry", "30"},
       {"stages.4.damp", "20"},
       {"stages.4.wet", "50"},
       {"stages.4.air", "7 °C"},
       {"sets.0.kind", "soft"},
       {"sets.0.count", "2"},
       {"sets.1.kind", "cut-slick"},
       {"sets.2.kind", "wet"},
       {"cars.0.name", "Car 7"},
       {"cars.0.size", "185/60 R14 82H"},
       {"cars.0.load", "290 kg"},
       {"cars.0.pressure", "1.9 bar"},
       {"cars.1.name", "Car 12"},
       {"cars.1.size", "165/70 R13 79T"},
       {"cars.1.load", "240 kg"},
       {"cars.1.pressure", "1.7 bar"}}};
  return sheet;
}

}  // namespace

const SheetDescription& stage_tyres_sheet() {
  static const SheetDescription sheet = describe();
  return sheet;
}

}  // namespace treadwater::answer
