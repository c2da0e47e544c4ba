// The form of the sheet `stopping`.
#pragma once

#include "core/grip/friction.hpp"
#include "core/sheets/shared_fields.hpp"

namespace treadwater::sheets::stopping {

inline constexpr QuantityField<Speed> speed{
    "speed",   Phrase("Speed"), Phrase("That you drive or intend."),
    required,  "1 km/h",        "400 km/h (248 mph)",
    "80 km/h", in_speed};

inline std::vector<Choice> ground_choices() {
  std::vector<Choice> choices;
  for (const auto& row : standard::friction_surfaces()) choices.push_back({row.id, row.label});
  return choices;
}
inline constexpr ChoiceField<const standard::FrictionSurface*> ground{
    "surface", Phrase("Ground"), Phrase(), ground_choices, standard::find_friction_surface};

constexpr grip::Wetness wetness_called(std::string_view id) {
  if (id == "damp") return grip::Wetness::damp;
  if (id == "wet") return grip::Wetness::wet;
  return id == "standing" ? grip::Wetness::standing : grip::Wetness::dry;
}
inline constexpr ChoiceField<grip::Wetness> wetness{
    "wetness", Phrase("How wet it is"), Phrase(),
    [] {
      return std::vector<Choice>{{"dry", Phrase("Dry")},
                                 {"damp", Phrase("Damp, no film")},
                                 {"wet", Phrase("Wet, about 0.5 mm")},
                                 {"standing", Phrase("Water standing, about 2.5 mm")}};
    },
    wetness_called};
inline constexpr QuantityField<Length> depth{
    "water",
    Phrase("Depth of water"),
    Phrase("If a ruler says. The wetter of it and the word counts."),
    optional,
    "0 mm",
    "1000 mm (39 in)",
    "1 mm",
    in_water};
inline constexpr auto tread = fields::tread_depth(Phrase("Empty: 3 mm."), optional);

inline std::vector<Choice> rubber_choices() {
  std::vector<Choice> choices{{"usual", Phrase("The usual one for that tyre")}};
  for (const auto& row : grip::rubbers()) choices.push_back({row.id, row.label});
  return choices;
}
// Null for the usual one.
inline constexpr ChoiceField<const grip::Rubber*> rubber{"rubber", Phrase("Rubber"), Phrase(),
                                                         rubber_choices, grip::find_rubber};
inline constexpr QuantityField<Temperature> tread_heat{
    "tread_heat",
    Phrase("Temperature of the tread"),
    Phrase("If you know it. Stage and race rubber grips only when warm."),
    optional,
    "-50 °C",
    "200 °C (392 °F)",
    "25 °C",
    in_temperature};
inline constexpr QuantityField<GaugePressure> pressure{
    "pressure",
    Phrase("Tyre pressure"),
    Phrase("In water, for whether it floats. Empty: 200 kPa."),
    optional,
    "50 kPa",
    "1000 kPa (10 bar, 145 psi)",
    "2.2 bar",
    in_pressure};
inline constexpr Units in_seconds_alone{{"s"}, {"s", "s", "s"}};
inline constexpr QuantityField<Duration> reaction{
    "reaction",
    Phrase("Reaction"),
    Phrase("From seeing to braking. Empty: 2.5 s, which nine in ten keep within."),
    optional,
    "0.1 s",
    "10 s",
    "2.5 s",
    in_seconds_alone};
inline constexpr NumberField grade{
    "grade", Phrase("Grade"), Phrase("Downhill with a minus, per cent."), optional, "-40 %", "40 %",
    "-6"};

constexpr QuantityField<Length> distance(std::string_view id, Phrase label, Phrase hint,
                                         std::string_view example) {
  return {id, label, hint, optional, "0.1 m", "20 km", example, in_metres_of_road};
}
inline constexpr QuantityField<Length> seen =
    distance("seen", Phrase("What you can see"),
             Phrase("In fog, before a crest, in the light of the lamps."), "60 m");
inline constexpr QuantityField<Length> obstacle =
    distance("obstacle", Phrase("Obstacle ahead"),
             Phrase("From where you first see it: how fast would you still be there?"), "45 m");
inline constexpr QuantityField<Length> radius = distance(
    "radius", Phrase("Radius of the bend"),
    Phrase("Or a chord paced out, and how far the bend stands off from its middle."), "80 m");
inline constexpr QuantityField<Length> chord =
    distance("chord", Phrase("Chord across the bend"), Phrase(), "20 m");
inline constexpr QuantityField<Length> sagitta =
    distance("sagitta", Phrase("From the chord to the bend"), Phrase(), "1.2 m");
inline constexpr NumberField bank{"bank",
                                  Phrase("Bank of the bend"),
                                  Phrase("Per cent, falling to the inside. Outwards with a minus."),
                                  optional,
                                  "-20 %",
                                  "60 %",
                                  "3"};

}  // namespace treadwater::sheets::stopping
