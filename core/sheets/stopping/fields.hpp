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

constexpr grip::RoadGrip road_called(std::string_view id) {
  if (id == "grippy") return grip::RoadGrip::grippy;
  if (id == "ordinary") return grip::RoadGrip::ordinary;
  return id == "polished" ? grip::RoadGrip::polished : grip::RoadGrip::not_told;
}
// Of asphalt in the wet.
inline constexpr ChoiceField<grip::RoadGrip> road{
    "road", Phrase("Grip of the road in the wet"),
    Phrase("It spreads more than tyres do: a known road narrows the answer."),
    [] {
      return std::vector<Choice>{{"unsaid", Phrase("Not sure")},
                                 {"grippy", Phrase("Grippy: coarse, fresh")},
                                 {"ordinary", Phrase("Ordinary")},
                                 {"polished", Phrase("Polished, or concrete")}};
    },
    road_called};
inline constexpr auto depth = fields::water_depth(
    "water", Phrase("If a ruler says. The wetter of it and the word counts."), "1 mm");
inline constexpr auto tread = fields::tread_depth(Phrase("Empty: 3 mm."), optional);

inline std::vector<Choice> rubber_choices() {
  std::vector<Choice> choices{{"usual", Phrase("The usual one for that tyre")}};
  for (const auto& row : grip::rubbers()) choices.push_back({row.id, row.label});
  return choices;
}
inline constexpr YesNoField old_or_hard{
    "old_or_hard", Phrase("Are the tyres old or hard?"),
    Phrase("More than about ten years, or hard to a thumbnail. Then an old handbook's figures "
           "count."),
    "no"};
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
inline constexpr QuantityField<Length> width{"width",
                                             Phrase("Width of the tyre"),
                                             Phrase("The first number of the size. In water."),
                                             optional,
                                             "50 mm",
                                             "600 mm (24 in)",
                                             "205 mm",
                                             in_section};
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
