// The form of the sheet `cold-pressure`.
#pragma once

#include "core/sheets/shared_fields.hpp"

namespace treadwater::sheets::cold_pressure {

inline constexpr SidewallField size{
    "size", Phrase("Sidewall text"),
    Phrase("Copy the size line from the tyre, with the number and letter after it."), required,
    "205/55 R16 91V"};
inline constexpr auto load = fields::wheel_load(
    Phrase("From a weighbridge or wheel scale. If all you have is the loaded car's mass: a quarter "
           "of it, and a fifth more for the heavier end."),
    required);
inline constexpr QuantityField<Speed> speed{"speed",
                                            Phrase("Fastest you will go"),
                                            Phrase("Up to 160 km/h it makes no difference."),
                                            optional,
                                            "1 km/h",
                                            "500 km/h (310 mph)",
                                            "130 km/h",
                                            in_speed};
inline constexpr QuantityField<GaugePressure> placard{
    "placard",
    Phrase("What the placard says"),
    Phrase("On the door pillar, the filler flap or in the handbook. It comes first."),
    optional,
    "50 kPa",
    "1000 kPa (10 bar, 145 psi)",
    "2.3 bar",
    in_pressure};
inline constexpr NumberField camber{"camber",
                                    Phrase("Camber"),
                                    Phrase("Degrees, either way, if it is set up for more than 2."),
                                    optional,
                                    "0",
                                    "4 degrees",
                                    "1.5"};
constexpr bool on_a_rear_wheel(std::string_view towing) { return towing == "rear"; }
inline constexpr ChoiceField<bool> towing{"towing", Phrase("Towing"), Phrase(),
                                          [] {
                                            return std::vector<Choice>{
                                                {"no", Phrase("No trailer")},
                                                {"rear", Phrase("Rear wheel of a car with a "
                                                                "trailer")}};
                                          },
                                          on_a_rear_wheel};
inline constexpr QuantityField<GaugePressure> gauge{
    "gauge",
    Phrase("What the gauge says now"),
    Phrase("Hot or cold, with the tyre's temperature below."),
    optional,
    "0 kPa",
    "1000 kPa (10 bar, 145 psi)",
    "2.6 bar",
    in_pressure};
inline constexpr QuantityField<GaugePressure> hot_target{"hot_target",
                                                         Phrase("Hot pressure you want"),
                                                         Phrase("For a stage or a track."),
                                                         optional,
                                                         "50 kPa",
                                                         "1000 kPa (10 bar, 145 psi)",
                                                         "2.4 bar",
                                                         in_pressure};

constexpr QuantityField<Temperature> temperature(std::string_view id, Phrase label, Phrase hint,
                                                 std::string_view example) {
  return {id, label, hint, optional, "-50 °C", "150 °C (302 °F)", example, in_temperature};
}
inline constexpr auto tyre_now =
    temperature("tyre_now", Phrase("Tyre's temperature at that reading"),
                Phrase("By hand or probe. Empty: as cold as the air."), "45 °C");
inline constexpr auto cold_day =
    temperature("cold_day", Phrase("Air where it stands cold"), Phrase("Empty: 20 °C."), "18 °C");
inline constexpr auto stage_day = temperature("stage_day", Phrase("Air where it will be driven"),
                                              Phrase("If it is colder or warmer there."), "4 °C");
inline constexpr auto hot_tyre =
    temperature("hot_tyre", Phrase("Tyre's temperature at work"),
                Phrase("The air in the tyre, once it works."), "80 °C");

constexpr QuantityField<Length> altitude(std::string_view id, Phrase label) {
  return {
      id, label, Phrase(), optional, "-500 m", "9000 m (29 500 ft)", "400 m", in_metres_of_road};
}
inline constexpr auto height_here = altitude("height_here", Phrase("Height above the sea here"));
inline constexpr auto height_there = altitude("height_there", Phrase("Height above the sea there"));

}  // namespace treadwater::sheets::cold_pressure
