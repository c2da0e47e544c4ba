// The form of the sheet `wear-log`. Field ids are part of every link anybody has kept: do not
// rename them.
#include "core/answer/form.hpp"
#include "core/answer/heads.hpp"
#include "core/answer/wear_log.hpp"

namespace treadwater::answer {
namespace {

constexpr QuantityRequest depth{"Tread depth", Dimension::length,  "mm",    0.0, 0.025,
                                "0 mm",        "25 mm (31/32 in)", "5.5 mm"};
constexpr QuantityRequest odometer{"Odometer", Dimension::length, "km",       0.0, 2.0e9,
                                   "0 km",     "2 000 000 km",    "41 200 km"};

SheetDescription describe() {
  SheetDescription sheet;
  sheet.head = heads::wear_log;
  sheet.fields = {
      units_field(),
      choice_field("place", "Whose tread law", "", place_choices()),
      list_field("readings", "Reading", "One line for each tyre each time you measure.", 200,
                 {also(choice_field("tyre", "Which tyre", "",
                                    {{"front-left", "Front left"},
                                     {"front-right", "Front right"},
                                     {"rear-left", "Rear left"},
                                     {"rear-right", "Rear right"},
                                     {"other", "Another"}}),
                       "Tyre|Corner|Wheel|Position|Pneu|Roue|Reifen|Rad|Rengas"),
                  also(date_field("date", "Day", "", true), column::day),
                  also(quantity_field("depth", "In the shallowest main groove.", true, depth,
                                      {"mm", "in", "/32 in"}, {"mm", "mm", "/32 in"}),
                       column::tread),
                  also(quantity_field("odometer", "If you want distances.", false, odometer,
                                      {"km", "miles"}, {"km", "miles", "miles"}),
                       column::odometer)}),
  };
  sheet.example = {"example",
                   "An invented case: two tyres of the Pipit 1.4, a made-up small hatchback",
                   "Front left and rear left, measured four times.",
                   {{"readings.0.tyre", "front-left"}, {"readings.0.date", "2025-04-12"},
                    {"readings.0.depth", "7.6 mm"},    {"readings.0.odometer", "31000 km"},
                    {"readings.1.tyre", "front-left"}, {"readings.1.date", "2025-10-18"},
                    {"readings.1.depth", "6.2 mm"},    {"readings.1.odometer", "38900 km"},
                    {"readings.2.tyre", "front-left"}, {"readings.2.date", "2026-05-02"},
                    {"readings.2.depth", "4.9 mm"},    {"readings.2.odometer", "46100 km"},
                    {"readings.3.tyre", "rear-left"},  {"readings.3.date", "2025-04-12"},
                    {"readings.3.depth", "7.7 mm"},    {"readings.3.odometer", "31000 km"},
                    {"readings.4.tyre", "rear-left"},  {"readings.4.date", "2026-05-02"},
                    {"readings.4.depth", "6.8 mm"},    {"readings.4.odometer", "46100 km"}}};
  return sheet;
}

}  // namespace

const SheetDescription& wear_log_sheet() {
  static const SheetDescription sheet = describe();
  return sheet;
}

}  // namespace treadwater::answer
