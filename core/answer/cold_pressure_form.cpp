// The form of the sheet `cold-pressure`. Field ids are part of every link anybody has kept: do not
// rename them.
#include "core/answer/cold_pressure.hpp"
#include "core/answer/form.hpp"
#include "core/answer/heads.hpp"

namespace treadwater::answer {
namespace {

constexpr QuantityRequest load{"Load on this wheel",  Dimension::mass, "kg", 20.0, 8000.0, "20 kg",
                               "8000 kg (17 600 lb)", "430 kg"};
constexpr QuantityRequest speed{
    "Fastest you will go", Dimension::speed, "km/h", 1.0, 500.0, "1 km/h",
    "500 km/h (310 mph)",  "130 km/h"};
constexpr QuantityRequest placard{"What the placard says",
                                  Dimension::pressure,
                                  "kPa",
                                  50.0,
                                  1000.0,
                                  "50 kPa",
                                  "1000 kPa (10 bar, 145 psi)",
                                  "2.3 bar"};
constexpr QuantityRequest gauge{"What the gauge says now",
                                Dimension::pressure,
                                "kPa",
                                0.0,
                                1000.0,
                                "0 kPa",
                                "1000 kPa (10 bar, 145 psi)",
                                "2.6 bar"};
constexpr QuantityRequest hot_target{"Hot pressure you want",
                                     Dimension::pressure,
                                     "kPa",
                                     50.0,
                                     1000.0,
                                     "50 kPa",
                                     "1000 kPa (10 bar, 145 psi)",
                                     "2.4 bar"};
constexpr QuantityRequest camber{"Camber", Dimension::number, "",   0.0, 4.0,
                                 "0",      "4 degrees",       "1.5"};

constexpr QuantityRequest temperature(std::string_view label, std::string_view example) {
  return {label,    Dimension::temperature, "°C",   223.15, 423.15,
          "-50 °C", "150 °C (302 °F)",      example};
}
constexpr QuantityRequest tyre_now = temperature("Tyre's temperature at that reading", "45 °C");
constexpr QuantityRequest cold_day = temperature("Air where it stands cold", "18 °C");
constexpr QuantityRequest stage_day = temperature("Air where it will be driven", "4 °C");
constexpr QuantityRequest hot_tyre = temperature("Tyre's temperature at work", "80 °C");

constexpr QuantityRequest altitude(std::string_view label) {
  return {label, Dimension::length, "m", -500.0, 9000.0, "-500 m", "9000 m (29 500 ft)", "400 m"};
}
constexpr QuantityRequest height_here = altitude("Height above the sea here");
constexpr QuantityRequest height_there = altitude("Height above the sea there");

SheetDescription describe() {
  const auto kelvins = [](std::string_view id, std::string_view hint,
                          const QuantityRequest& request) {
    return quantity_field(id, hint, false, request, {"°C", "°F"}, {"°C", "°C", "°F"});
  };
  const auto pressures = [](std::string_view id, std::string_view hint,
                            const QuantityRequest& request) {
    return quantity_field(id, hint, false, request, {"kPa", "bar", "psi"}, {"bar", "psi", "psi"});
  };
  const auto heights = [](std::string_view id, const QuantityRequest& request) {
    return quantity_field(id, "", false, request, {"m", "ft"}, {"m", "m", "ft"});
  };
  SheetDescription sheet;
  sheet.head = heads::cold_pressure;
  sheet.fields = {
      units_field(),
      text_field("size", "Sidewall text",
                 "Copy the size line from the tyre, with the number and letter after it.", true,
                 "205/55 R16 91V"),
      quantity_field(
          "load",
          "From a weighbridge or wheel scale. If all you have is the loaded car's mass: a "
          "quarter of it, and a fifth more for the heavier end.",
          true, load, {"kg", "lb"}, {"kg", "kg", "lb"}),
      quantity_field("speed", "Up to 160 km/h it makes no difference.", false, speed,
                     {"km/h", "mph"}, {"km/h", "mph", "mph"}),
      pressures("placard",
                "On the door pillar, the filler flap or in the handbook. It comes first.", placard),
      number_field("camber", "Degrees, either way, if it is set up for more than 2.", false,
                   camber),
      choice_field("towing", "Towing", "",
                   {{"no", "No trailer"}, {"rear", "Rear wheel of a car with a trailer"}}),
      pressures("gauge", "Hot or cold, with the tyre's temperature below.", gauge),
      kelvins("tyre_now", "By hand or probe. Empty: as cold as the air.", tyre_now),
      kelvins("cold_day", "Empty: 20 °C.", cold_day),
      kelvins("stage_day", "If it is colder or warmer there.", stage_day),
      heights("height_here", height_here),
      heights("height_there", height_there),
      pressures("hot_target", "For a stage or a track.", hot_target),
      kelvins("hot_tyre", "The air in the tyre, once it works.", hot_tyre),
  };
  sheet.example = {
      "example",
      "An invented case: the Pipit 1.4, a made-up small hatchback, from the garage to a "
      "cold stage",
      "Set warm in the valley, driven cold in the hills.",
      {{"size", "205/55 R16 91V"},
       {"load", "430 kg"},
       {"speed", "130 km/h"},
       {"placard", "2.3 bar"},
       {"gauge", "2.3 bar"},
       {"cold_day", "20 °C"},
       {"stage_day", "-2 °C"},
       {"height_here", "100 m"},
       {"height_there", "900 m"}}};
  return sheet;
}

}  // namespace

const SheetDescription& cold_pressure_sheet() {
  static const SheetDescription sheet = describe();
  return sheet;
}

}  // namespace treadwater::answer
