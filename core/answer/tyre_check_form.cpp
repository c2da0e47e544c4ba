// The form of the sheet `tyre-check`. Field ids are part of every link anybody has kept: do not
// rename them.
#include "core/answer/form.hpp"
#include "core/answer/heads.hpp"
#include "core/answer/tyre_check.hpp"

namespace treadwater::answer {
namespace {

constexpr QuantityRequest load{"Load on this wheel",  Dimension::mass, "kg", 20.0, 8000.0, "20 kg",
                               "8000 kg (17 600 lb)", "430 kg"};
constexpr QuantityRequest pressure{
    "Tyre pressure", Dimension::pressure,          "kPa",    0.0, 1000.0,
    "0 kPa",         "1000 kPa (10 bar, 145 psi)", "2.2 bar"};
constexpr QuantityRequest tread{"Tread depth", Dimension::length,  "mm",  0.0, 0.025,
                                "0 mm",        "25 mm (31/32 in)", "3 mm"};
constexpr QuantityRequest water{"Depth of water", Dimension::length, "mm",  0.0, 1.0,
                                "0 mm",           "1000 mm (39 in)", "5 mm"};
constexpr QuantityRequest speed{"Speed you intend", Dimension::speed,     "km/h",   1.0, 500.0,
                                "1 km/h",           "500 km/h (310 mph)", "90 km/h"};

SheetDescription describe() {
  SheetDescription sheet;
  sheet.head = heads::tyre_check;
  sheet.fields = {
      units_field(),
      text_field("size", "Sidewall text",
                 "Copy the size line from the tyre, with the number and letter after it. Any "
                 "spacing will do.",
                 true, "205/55 R16 91V"),
      quantity_field(
          "load",
          "From a weighbridge or wheel scale. If all you have is the loaded car's mass: a quarter "
          "of it, and a fifth more for the heavier end.",
          true, load, {"kg", "lb"}, {"kg", "kg", "lb"}),
      quantity_field("pressure", "What the gauge says.", true, pressure, {"kPa", "bar", "psi"},
                     {"bar", "psi", "psi"}),
      choice_field("pressure_state", "When it was measured", "",
                   {{"cold", "Cold: not driven for 3 hours"}, {"hot", "Warm or hot from driving"}}),
      quantity_field("tread", "In the shallowest main groove, off the wear bars.", true, tread,
                     {"mm", "in", "/32 in"}, {"mm", "mm", "/32 in"}),
      quantity_field(
          "water",
          "By a ruler stood in the deepest place the wheel will cross. 0 for a road that is wet "
          "but has no water standing on it.",
          false, water, {"mm", "in"}, {"mm", "mm", "in"}),
      quantity_field("speed", "If you want it judged.", false, speed, {"km/h", "mph"},
                     {"km/h", "mph", "mph"}),
      choice_field("tyre_kind", "Kind of tyre", "", tyre_kind_choices()),
      choice_field("surface", "Road surface", "", surface_choices()),
      choice_field("place", "Whose tread law", "", place_choices()),
      text_field("date_code", "Date code",
                 "The last four digits of the DOT line: week and year of making.", false, "2322"),
  };
  sheet.example = {"example",
                   "An invented case: the Pipit 1.4, a made-up small hatchback, on a wet evening",
                   "Part-worn tyre, front wheel, a puddle across the lane.",
                   {{"size", "205/55 R16 91V"},
                    {"load", "430 kg"},
                    {"pressure", "2.2 bar"},
                    {"tread", "3 mm"},
                    {"water", "5 mm"},
                    {"date_code", "2322"}}};
  return sheet;
}

}  // namespace

const SheetDescription& tyre_check_sheet() {
  static const SheetDescription sheet = describe();
  return sheet;
}

}  // namespace treadwater::answer
