// The form of the sheet `standing-water`. Field ids are part of every link anybody has kept: do not
// rename them.
#include "core/answer/form.hpp"
#include "core/answer/heads.hpp"
#include "core/answer/standing_water.hpp"

namespace treadwater::answer {
namespace {

constexpr QuantityRequest depth{"Depth of water", Dimension::length, "mm",  0.0, 1.0,
                                "0 mm",           "1000 mm (39 in)", "8 mm"};
constexpr QuantityRequest pool{
    "Length of the pool", Dimension::length, "m", 0.0, 1000.0, "0 m", "1000 m (3300 ft)", "12 m"};
constexpr QuantityRequest rain{"Rain",   Dimension::rain,      "mm/h",   0.0, 300.0,
                               "0 mm/h", "300 mm/h (12 in/h)", "25 mm/h"};
constexpr QuantityRequest path{
    "Way the water runs", Dimension::length, "m", 1.0, 200.0, "1 m", "200 m (660 ft)", "7.3 m"};
constexpr QuantityRequest crossfall{"Crossfall", Dimension::number, "%", 0.0, 15.0, "0 %", "15 %",
                                    "2.5"};
constexpr QuantityRequest grade{"Grade", Dimension::number, "%", 0.0, 25.0, "0 %", "25 %", "0"};
constexpr QuantityRequest rut{
    "Depth of rut or dip", Dimension::length, "mm", 0.0, 0.5, "0 mm", "500 mm (20 in)", "6 mm"};
constexpr QuantityRequest tread{"Tread depth", Dimension::length,  "mm",  0.0, 0.025,
                                "0 mm",        "25 mm (31/32 in)", "3 mm"};
constexpr QuantityRequest pressure{
    "Tyre pressure", Dimension::pressure,          "kPa",    50.0, 1000.0,
    "50 kPa",        "1000 kPa (10 bar, 145 psi)", "2.0 bar"};
constexpr QuantityRequest width{"Width of the tyre", Dimension::length, "mm", 0.05, 0.6, "50 mm",
                                "600 mm (24 in)",    "205 mm"};
constexpr QuantityRequest speed{"Speed you intend", Dimension::speed,     "km/h",   1.0, 500.0,
                                "1 km/h",           "500 km/h (310 mph)", "80 km/h"};

SheetDescription describe() {
  SheetDescription sheet;
  sheet.head = heads::standing_water;
  sheet.fields = {
      units_field(),
      text_field("where", "Where it is", "As you would say it on the radio.", false,
                 "Stage 4, kilometre 7"),
      quantity_field("depth",
                     "By a ruler stood in the deepest place a wheel will cross. Leave it empty to "
                     "work it out from rain.",
                     false, depth, {"mm", "in"}, {"mm", "mm", "in"}),
      quantity_field("pool", "Along the road.", false, pool, {"m", "ft"}, {"m", "m", "ft"}),
      choice_field("wheels", "Which wheels cross it", "",
                   {{"both", "Both sides"}, {"one", "One side only"}}),
      yes_no_field("moving", "Is the water moving?", "Across or along the road.", "no"),
      choice_field("vehicle", "What has to come through", "For deep and for moving water.",
                   {{"small", "Small car"}, {"large", "Large car"}, {"four-wheel", "Large 4x4"}}),
      choice_field("surface", "Road surface", "", surface_choices()),
      list_field("tyres", "Tyre",
                 "Each kind that will come through. With none, a worn road tyre is taken.", 20,
                 {also(choice_field("tyre_kind", "Kind of tyre", "", tyre_kind_choices()),
                       column::tyre_kind),
                  also(quantity_field("tread", "Leave empty for 1.6 mm.", false, tread,
                                      {"mm", "in", "/32 in"}, {"mm", "mm", "/32 in"}),
                       column::tread),
                  also(quantity_field("pressure", "Cold. Leave empty for 200 kPa.", false, pressure,
                                      {"kPa", "bar", "psi"}, {"bar", "psi", "psi"}),
                       column::pressure),
                  also(quantity_field("width", "The first number of the size.", false, width,
                                      {"mm", "in"}, {"mm", "mm", "mm"}),
                       column::width)}),
      quantity_field("speed", "If you want it judged.", false, speed, {"km/h", "mph"},
                     {"km/h", "mph", "mph"}),
      choice_field("forecast", "Rain by the forecast's word",
                   "Used where neither a depth nor a rate of rain is given. The scales differ: the "
                   "answer shows mm/h.",
                   forecast_choices()),
      quantity_field("rain", "If a gauge or the forecast gives it.", false, rain, {"mm/h", "in/h"},
                     {"mm/h", "mm/h", "in/h"}),
      quantity_field("path", "From the crown or the high side to the wheel. Empty: one lane.",
                     false, path, {"m", "ft"}, {"m", "m", "ft"}),
      number_field("crossfall", "The fall across the road, per cent. Empty: 2.5.", false,
                   crossfall),
      number_field("grade", "The fall along the road, per cent. Empty: level.", false, grade),
      quantity_field("rut", "What a straight edge across it shows.", false, rut, {"mm", "in"},
                     {"mm", "mm", "in"}),
  };
  sheet.example = {"example",
                   "An invented case: the Saltmarsh Club's stage Long Meadow, after a cloudburst",
                   "A pool across the lane; the field runs club tarmac tyres and cut slicks.",
                   {{"where", "Long Meadow, kilometre 7"},
                    {"depth", "8 mm"},
                    {"pool", "12 m"},
                    {"tyres.0.tyre_kind", "road"},
                    {"tyres.0.tread", "4 mm"},
                    {"tyres.0.pressure", "2.1 bar"},
                    {"tyres.1.tyre_kind", "cut-slick"},
                    {"tyres.1.tread", "3 mm"},
                    {"tyres.1.pressure", "1.9 bar"}}};
  return sheet;
}

}  // namespace

const SheetDescription& standing_water_sheet() {
  static const SheetDescription sheet = describe();
  return sheet;
}

}  // namespace treadwater::answer
