// The form of the sheet `tyre-check`.
#pragma once

#include "core/sheets/shared_fields.hpp"

namespace treadwater::sheets::tyre_check {

inline constexpr SidewallField size{
    "size", Phrase("Sidewall text"),
    Phrase(
        "Copy the size line from the tyre, with the number and letter after it. Any spacing will "
        "do."),
    required, "205/55 R16 91V"};
inline constexpr QuantityField<Mass> load{
    "load",
    Phrase("Load on this wheel"),
    Phrase("From a weighbridge or wheel scale. If all you have is the loaded car's mass: a quarter "
           "of it, and a fifth more for the heavier end."),
    required,
    "20 kg",
    "8000 kg (17 600 lb)",
    "430 kg",
    in_mass};
inline constexpr QuantityField<GaugePressure> pressure{"pressure",
                                                       Phrase("Tyre pressure"),
                                                       Phrase("What the gauge says."),
                                                       required,
                                                       "0 kPa",
                                                       "1000 kPa (10 bar, 145 psi)",
                                                       "2.2 bar",
                                                       in_pressure};
inline constexpr ChoiceField<bool> pressure_state{"pressure_state", Phrase("When it was measured"),
                                                  Phrase(), fields::pressure_states,
                                                  fields::is_hot};
inline constexpr QuantityField<Length> tread{"tread",
                                             Phrase("Tread depth"),
                                             Phrase("In the shallowest main groove, off the wear "
                                                    "bars."),
                                             required,
                                             "0 mm",
                                             "25 mm (31/32 in)",
                                             "3 mm",
                                             in_depth};
inline constexpr QuantityField<Length> water{
    "water",
    Phrase("Depth of water"),
    Phrase(
        "By a ruler stood in the deepest place the wheel will cross. 0 for a road that is wet but "
        "has no water standing on it."),
    optional,
    "0 mm",
    "1000 mm (39 in)",
    "5 mm",
    in_water};
inline constexpr QuantityField<Speed> speed{"speed",
                                            Phrase("Speed you intend"),
                                            Phrase("If you want it judged."),
                                            optional,
                                            "1 km/h",
                                            "500 km/h (310 mph)",
                                            "90 km/h",
                                            in_speed};
inline constexpr TextField date_code{
    "date_code", Phrase("Date code"),
    Phrase("The last four digits of the DOT line: week and year of making."), optional, "2322"};

}  // namespace treadwater::sheets::tyre_check
