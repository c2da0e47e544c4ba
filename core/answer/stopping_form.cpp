// The form of the sheet `stopping`. Field ids are part of every link anybody has kept: do not
// rename them.
#include "core/answer/form.hpp"
#include "core/answer/heads.hpp"
#include "core/answer/stopping.hpp"
#include "core/grip/rubber.hpp"
#include "core/standard/friction.hpp"

namespace treadwater::answer {
namespace {

constexpr QuantityRequest speed{"Speed",  Dimension::speed,     "km/h",   1.0, 400.0,
                                "1 km/h", "400 km/h (248 mph)", "80 km/h"};
constexpr QuantityRequest water{"Depth of water", Dimension::length, "mm",  0.0, 1.0,
                                "0 mm",           "1000 mm (39 in)", "1 mm"};
constexpr QuantityRequest tread{"Tread depth", Dimension::length,  "mm",  0.0, 0.025,
                                "0 mm",        "25 mm (31/32 in)", "3 mm"};
constexpr QuantityRequest pressure{
    "Tyre pressure", Dimension::pressure,          "kPa",    50.0, 1000.0,
    "50 kPa",        "1000 kPa (10 bar, 145 psi)", "2.2 bar"};
constexpr QuantityRequest heat{"Temperature of the tread",
                               Dimension::temperature,
                               "°C",
                               223.15,
                               473.15,
                               "-50 °C",
                               "200 °C (392 °F)",
                               "25 °C"};
constexpr QuantityRequest reaction{"Reaction", Dimension::time, "s",    0.1,
                                   10.0,       "0.1 s",         "10 s", "2.5 s"};
constexpr QuantityRequest grade{"Grade", Dimension::number, "%",    -40.0,
                                40.0,    "-40 %",           "40 %", "-6"};
constexpr QuantityRequest bank{
    "Bank of the bend", Dimension::number, "%", -20.0, 60.0, "-20 %", "60 %", "3"};

constexpr QuantityRequest distance(std::string_view label, std::string_view example) {
  return {label, Dimension::length, "m", 0.1, 20000.0, "0.1 m", "20 km", example};
}
constexpr QuantityRequest seen = distance("What you can see", "60 m");
constexpr QuantityRequest obstacle = distance("Obstacle ahead", "45 m");
constexpr QuantityRequest radius = distance("Radius of the bend", "80 m");
constexpr QuantityRequest chord = distance("Chord across the bend", "20 m");
constexpr QuantityRequest sagitta = distance("From the chord to the bend", "1.2 m");

SheetDescription describe() {
  const auto metres = [](std::string_view id, std::string_view hint,
                         const QuantityRequest& request) {
    return quantity_field(id, hint, false, request, {"m", "ft"}, {"m", "m", "ft"});
  };
  std::vector<Choice> surfaces;
  for (const auto& surface : standard::friction_surfaces())
    surfaces.push_back({surface.id, surface.label});
  std::vector<Choice> rubbers = {{"usual", "The usual one for that tyre"}};
  for (const auto& rubber : grip::rubbers()) rubbers.push_back({rubber.id, rubber.label});
  SheetDescription sheet;
  sheet.head = heads::stopping;
  sheet.fields = {
      units_field(),
      quantity_field("speed", "That you drive or intend.", true, speed, {"km/h", "mph"},
                     {"km/h", "mph", "mph"}),
      choice_field("surface", "Ground", "", std::move(surfaces)),
      choice_field("wetness", "How wet it is", "",
                   {{"dry", "Dry"},
                    {"damp", "Damp, no film"},
                    {"wet", "Wet, about 0.5 mm"},
                    {"standing", "Water standing, about 2.5 mm"}}),
      quantity_field("water", "If a ruler says. The wetter of it and the word counts.", false, water,
                     {"mm", "in"}, {"mm", "mm", "in"}),
      choice_field("tyre_kind", "Kind of tyre", "", tyre_kind_choices()),
      quantity_field("tread", "Empty: 3 mm.", false, tread, {"mm", "in", "/32 in"},
                     {"mm", "mm", "/32 in"}),
      choice_field("rubber", "Rubber", "", std::move(rubbers)),
      quantity_field("tread_heat", "If you know it. Stage and race rubber grips only when warm.",
                     false, heat, {"°C", "°F"}, {"°C", "°C", "°F"}),
      quantity_field("pressure", "In water, for whether it floats. Empty: 200 kPa.", false,
                     pressure, {"kPa", "bar", "psi"}, {"bar", "psi", "psi"}),
      quantity_field("reaction",
                     "From seeing to braking. Empty: 2.5 s, which nine in ten keep within.", false,
                     reaction, {"s"}, {"s", "s", "s"}),
      number_field("grade", "Downhill with a minus, per cent.", false, grade),
      metres("seen", "In fog, before a crest, in the light of the lamps.", seen),
      metres("obstacle", "From where you first see it: how fast would you still be there?",
             obstacle),
      metres("radius", "Or a chord paced out, and how far the bend stands off from its middle.",
             radius),
      metres("chord", "", chord),
      metres("sagitta", "", sagitta),
      number_field("bank", "Per cent, falling to the inside. Outwards with a minus.", false, bank),
  };
  sheet.example = {
      "example",
      "An invented case: the Pipit 1.4, a made-up small hatchback, on part-worn tyres in "
      "the rain",
      "A wet road, and a queue round the bend.",
      {{"speed", "80 km/h"},
       {"wetness", "wet"},
       {"tread", "3 mm"},
       {"seen", "90 m"},
       {"obstacle", "80 m"},
       {"radius", "160 m"},
       {"bank", "2"}}};
  return sheet;
}

}  // namespace

const SheetDescription& stopping_sheet() {
  static const SheetDescription sheet = describe();
  return sheet;
}

}  // namespace treadwater::answer
