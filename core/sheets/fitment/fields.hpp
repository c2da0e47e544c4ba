// The form of the sheet `fitment`.
#pragma once

#include "core/sheets/shared_fields.hpp"

namespace treadwater::sheets::fitment {

inline constexpr SidewallField size{"size", Phrase("Sidewall text now"),
                                    Phrase("The tyre that the car's papers name."), required,
                                    "195/65 R15 91T"};
inline constexpr SidewallField new_size{"new_size", Phrase("Sidewall text of the new tyre"),
                                        Phrase(), required, "205/55 R16 91V"};
inline constexpr QuantityField<Speed> top_speed{"top_speed",
                                                Phrase("Top speed of the car"),
                                                Phrase("From the car's papers."),
                                                optional,
                                                "1 km/h",
                                                "500 km/h (310 mph)",
                                                "185 km/h",
                                                in_speed};
inline constexpr NumberField asked_index{
    "asked_index",
    Phrase("Load index the car asks for"),
    Phrase("From the handbook or the papers. Empty: that of the tyre now."),
    optional,
    "50",
    "150",
    "91"};
inline constexpr QuantityField<GaugePressure> pressure{
    "pressure",
    Phrase("Cold pressure now"),
    Phrase("For the pressure that carries the same load."),
    optional,
    "50 kPa",
    "1000 kPa (10 bar, 145 psi)",
    "2.3 bar",
    in_pressure};
inline constexpr auto load = fields::wheel_load(Phrase("For the contact patch."), optional);

inline constexpr Units in_rim_inches{{"in", "mm"}, {"in", "in", "in"}};
constexpr QuantityField<Length> rim_width(std::string_view id, Phrase label,
                                          std::string_view example) {
  return {id,       label,        Phrase("Empty: the one the size belongs to."),
          optional, "2 in",       "23 in",
          example,  in_rim_inches};
}
inline constexpr auto rim = rim_width("rim", Phrase("Width of the rim now"), "6.5 in");
inline constexpr auto new_rim = rim_width("new_rim", Phrase("Width of the new rim"), "7 in");

inline constexpr Units in_millimetres_of_wheel{{"mm", "in"}, {"mm", "mm", "mm"}};
constexpr QuantityField<Length> wheel_offset(std::string_view id, Phrase label,
                                             std::string_view example) {
  return {id,       label,   Phrase("The ET on the wheel."), optional, "-100 mm",
          "100 mm", example, in_millimetres_of_wheel};
}
inline constexpr auto offset = wheel_offset("offset", Phrase("Offset of the wheel now"), "45 mm");
inline constexpr auto new_offset =
    wheel_offset("new_offset", Phrase("Offset of the new wheel"), "40 mm");

constexpr QuantityField<Mass> mass_of(std::string_view id, Phrase label, Phrase hint,
                                      std::string_view example) {
  return {id, label, hint, optional, "0.5 kg", "200 kg", example, in_mass};
}
inline constexpr auto wheel_mass =
    mass_of("wheel_mass", Phrase("Wheel and tyre now"), Phrase(), "17 kg");
inline constexpr auto new_wheel_mass =
    mass_of("new_wheel_mass", Phrase("New wheel and tyre"), Phrase(), "19 kg");
inline constexpr auto unsprung =
    mass_of("unsprung", Phrase("Unsprung mass of that corner"),
            Phrase("Wheel, tyre, brake, hub and half the links."), "40 kg");
inline constexpr NumberField suspension_rate{
    "suspension_rate",
    Phrase("Suspension rate at the wheel"),
    Phrase("N/mm, with the mass for the wheel-hop frequency."),
    optional,
    "1 N/mm",
    "500 N/mm",
    "20.6"};

}  // namespace treadwater::sheets::fitment
