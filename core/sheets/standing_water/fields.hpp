// The form of the sheet `standing-water`.
#pragma once

#include "core/sheets/shared_fields.hpp"
#include "core/standard/rain_words.hpp"
#include "core/water/crossing.hpp"

namespace treadwater::sheets::standing_water {

inline constexpr TextField where{"where", Phrase("Where it is"),
                                 Phrase("As you would say it on the radio."), optional,
                                 "Stage 4, kilometre 7"};
inline constexpr auto depth = fields::water_depth(
    "depth",
    Phrase("By a ruler stood in the deepest place a wheel will cross. Leave it empty to work it "
           "out from rain."),
    "8 mm");
inline constexpr QuantityField<Length> pool{"pool",
                                            Phrase("Length of the pool"),
                                            Phrase("Along the road."),
                                            optional,
                                            "0 m",
                                            "1000 m (3300 ft)",
                                            "12 m",
                                            in_metres_of_road};

constexpr bool is_one_side(std::string_view id) { return id == "one"; }
inline constexpr ChoiceField<bool> wheels{
    "wheels", Phrase("Which wheels cross it"), Phrase(),
    [] {
      return std::vector<Choice>{{"both", Phrase("Both sides")}, {"one", Phrase("One side only")}};
    },
    is_one_side};
inline constexpr YesNoField moving{"moving", Phrase("Is the water moving?"),
                                   Phrase("Across or along the road."), "no"};

constexpr water::VehicleKind vehicle_kind(std::string_view id) {
  if (id == "four-wheel") return water::VehicleKind::four_by_four;
  return id == "large" ? water::VehicleKind::large_car : water::VehicleKind::small_car;
}
inline constexpr ChoiceField<water::VehicleKind> vehicle{
    "vehicle", Phrase("What has to come through"), Phrase("For deep and for moving water."),
    [] {
      return std::vector<Choice>{{"small", Phrase("Small car")},
                                 {"large", Phrase("Large car")},
                                 {"four-wheel", Phrase("Large 4x4")}};
    },
    vehicle_kind};

inline constexpr ListField tyres{
    "tyres", Phrase("Tyre"),
    Phrase("Each kind that will come through. With none, a worn road tyre is taken."), 20};
inline constexpr auto tread = fields::tread_depth(Phrase("Leave empty for 1.6 mm."), optional);
inline constexpr QuantityField<GaugePressure> pressure{"pressure",
                                                       Phrase("Tyre pressure"),
                                                       Phrase("Cold. Leave empty for 200 kPa."),
                                                       optional,
                                                       "50 kPa",
                                                       "1000 kPa (10 bar, 145 psi)",
                                                       "2.0 bar",
                                                       in_pressure};
inline constexpr QuantityField<Length> width{"width",
                                             Phrase("Width of the tyre"),
                                             Phrase("The first number of the size."),
                                             optional,
                                             "50 mm",
                                             "600 mm (24 in)",
                                             "205 mm",
                                             in_section};
inline constexpr QuantityField<Speed> speed{"speed",
                                            Phrase("Speed you intend"),
                                            Phrase("If you want it judged."),
                                            optional,
                                            "1 km/h",
                                            "500 km/h (310 mph)",
                                            "80 km/h",
                                            in_speed};

inline std::vector<Choice> forecast_choices() {
  std::vector<Choice> choices{{"none", Phrase("No forecast")}};
  for (const auto& word : standard::rain_words()) choices.push_back({word.id, word.choice});
  return choices;
}
inline constexpr ChoiceField<const standard::RainWord*> forecast{
    "forecast", Phrase("Rain by the forecast's word"),
    Phrase("Used where neither a depth nor a rate of rain is given. The scales differ: the answer "
           "shows mm/h."),
    forecast_choices, standard::find_rain_word};
inline constexpr QuantityField<RainIntensity> rain{
    "rain",    Phrase("Rain"), Phrase("If a gauge or the forecast gives it."),
    optional,  "0 mm/h",       "300 mm/h (12 in/h)",
    "25 mm/h", in_rain};
inline constexpr QuantityField<Length> path{
    "path",
    Phrase("Way the water runs"),
    Phrase("From the crown or the high side to the wheel. Empty: one lane."),
    optional,
    "1 m",
    "200 m (660 ft)",
    "7.3 m",
    in_metres_of_road};
inline constexpr NumberField crossfall{"crossfall",
                                       Phrase("Crossfall"),
                                       Phrase("The fall across the road, per cent. Empty: 2.5."),
                                       optional,
                                       "0 %",
                                       "15 %",
                                       "2.5"};
inline constexpr NumberField grade{
    "grade",  Phrase("Grade"), Phrase("The fall along the road, per cent. Empty: level."),
    optional, "0 %",           "25 %",
    "0"};
inline constexpr QuantityField<Length> rut{"rut",
                                           Phrase("Depth of rut or dip"),
                                           Phrase("What a straight edge across it shows."),
                                           optional,
                                           "0 mm",
                                           "500 mm (20 in)",
                                           "6 mm",
                                           in_water};

}  // namespace treadwater::sheets::standing_water
