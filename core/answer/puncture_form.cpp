// The form of the sheet `puncture`. Field ids are part of every link anybody has kept: do not
// rename them.
#include "core/answer/form.hpp"
#include "core/answer/heads.hpp"
#include "core/answer/puncture.hpp"

namespace treadwater::answer {
namespace {

constexpr QuantityRequest pressure_request(std::string_view label, std::string_view example) {
  return {label,   Dimension::pressure,          "kPa",  0.0, 1000.0,
          "0 kPa", "1000 kPa (10 bar, 145 psi)", example};
}
constexpr QuantityRequest set_to = pressure_request("Cold pressure it should have", "2.3 bar");
constexpr QuantityRequest first = pressure_request("First reading", "2.3 bar");
constexpr QuantityRequest second = pressure_request("Second reading", "1.9 bar");
constexpr QuantityRequest apart{
    "Time between the readings", Dimension::time, "min", 1.0, 3.0e7, "1 s", "1 year", "20 min"};
constexpr QuantityRequest hole{"Width of the hole", Dimension::length, "mm", 0.0001, 0.05, "0.1 mm",
                               "50 mm (2 in)",      "3.2 mm"};
constexpr QuantityRequest centre{"From the middle of the tread",
                                 Dimension::length,
                                 "mm",
                                 0.0,
                                 0.4,
                                 "0 mm",
                                 "400 mm (16 in)",
                                 "30 mm"};
constexpr QuantityRequest tread{"Tread depth", Dimension::length,  "mm",  0.0, 0.025,
                                "0 mm",        "25 mm (31/32 in)", "5 mm"};
constexpr QuantityRequest load{"Load on this wheel",  Dimension::mass, "kg", 20.0, 8000.0, "20 kg",
                               "8000 kg (17 600 lb)", "430 kg"};
constexpr QuantityRequest way_home{"Way to go", Dimension::length, "km",   0.0, 2.0e7,
                                   "0 km",      "20 000 km",       "35 km"};
constexpr QuantityRequest repairs{
    "Repairs before", Dimension::number, "", 0.0, 20.0, "0", "20", "0"};
constexpr QuantityRequest spares{
    "Spares on board", Dimension::number, "", 0.0, 20.0, "0", "20", "1"};
constexpr QuantityRequest one_in{
    "Months to a puncture", Dimension::number, "", 0.1, 1200.0, "0.1", "1200", "18"};
constexpr QuantityRequest a_year{"Driven in a year", Dimension::length, "km",       1.0e5, 1.0e9,
                                 "100 km",           "1 000 000 km",    "12 000 km"};

SheetDescription describe() {
  const auto pressure = [](std::string_view id, std::string_view hint,
                           const QuantityRequest& request) {
    return quantity_field(id, hint, false, request, {"kPa", "bar", "psi"}, {"bar", "psi", "psi"});
  };
  const auto distance = [](std::string_view id, std::string_view hint,
                           const QuantityRequest& request) {
    return quantity_field(id, hint, false, request, {"km", "miles"}, {"km", "miles", "miles"});
  };
  const auto depth = [](std::string_view id, std::string_view hint,
                        const QuantityRequest& request) {
    return quantity_field(id, hint, false, request, {"mm", "in"}, {"mm", "mm", "in"});
  };
  SheetDescription sheet;
  sheet.head = heads::puncture;
  sheet.fields = {
      units_field(),
      text_field("size", "Sidewall text", "Copy the size line from the tyre.", true,
                 "205/55 R16 91V"),
      pressure("set", "The placard's. Empty: 230 kPa.", set_to),
      pressure("first", "Two readings and a clock tell how fast it leaks.", first),
      pressure("second", "The latest one.", second),
      quantity_field("apart", "", false, apart, {"min", "h", "days"}, {"min", "min", "min"}),
      depth("hole", "If you can see it. Leave the nail in.", hole),
      choice_field("where", "Where the hole is", "",
                   {{"tread", "In the tread"},
                    {"shoulder", "In the shoulder"},
                    {"sidewall", "In the sidewall"},
                    {"bead", "At the rim"},
                    {"unknown", "Not found"}}),
      depth("from_centre", "Either side.", centre),
      yes_no_field("between_grooves", "Between the two outer grooves?", "", ""),
      quantity_field("tread", "The least left.", false, tread, {"mm", "in", "/32 in"},
                     {"mm", "mm", "/32 in"}),
      yes_no_field("driven_flat", "Was it driven flat?", "Even a short way.", "no"),
      yes_no_field("damage", "Cord in sight, a bulge or cracks?", "", "no"),
      yes_no_field("sealant", "Sealant put in?", "", "no"),
      number_field("repairs", "", false, repairs),
      text_field("date_code", "Date code", "The last four digits of the DOT line.", false, "2322"),
      choice_field("help", "What you have", "",
                   {{"plain_flat", "Nothing but this tyre"},
                    {"self_supporting", "It is a run-flat tyre"},
                    {"lubricated", "An early run-flat with lubricant inside"},
                    {"temporary_spare", "A temporary spare"},
                    {"full_spare", "A full-size spare"},
                    {"sealant_kit", "A sealant kit"}}),
      quantity_field("load", "For a run-flat tyre.", false, load, {"kg", "lb"}, {"kg", "kg", "lb"}),
      distance("way", "To help, home or the next service.", way_home),
      number_field("spares", "For the odds of the next one.", false, spares),
      number_field("one_in", "Common practice: one in about 18 months.", false, one_in),
      distance("a_year", "Empty: 12 000 km.", a_year),
  };
  sheet.example = {
      "example",
      "An invented case: the Pipit 1.4, a made-up small hatchback, a nail in the tread",
      "Soft at breakfast, softer twenty minutes later.",
      {{"size", "205/55 R16 91V"},
       {"set", "2.3 bar"},
       {"first", "2.1 bar"},
       {"second", "1.8 bar"},
       {"apart", "20 min"},
       {"hole", "3 mm"},
       {"from_centre", "35 mm"},
       {"between_grooves", "yes"},
       {"tread", "5 mm"},
       {"help", "temporary_spare"},
       {"way", "35 km"},
       {"spares", "0"}}};
  return sheet;
}

}  // namespace

const SheetDescription& puncture_sheet() {
  static const SheetDescription sheet = describe();
  return sheet;
}

}  // namespace treadwater::answer
