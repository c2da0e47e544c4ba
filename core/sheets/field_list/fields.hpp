// The form of the sheet `field-list`.
#pragma once

#include "core/sheets/shared_fields.hpp"

namespace treadwater::sheets::field_list {

// ---- shared by all rows ----

inline constexpr QuantityField<Length> water{
    "water",
    Phrase("Depth of water"),
    Phrase("By a ruler in the deepest place on the way. 0 for a road that is wet but has no water "
           "standing on it."),
    optional,
    "0 mm",
    "1000 mm (39 in)",
    "5 mm",
    in_water};
inline constexpr ChoiceField<bool> pressure_state{
    "pressure_state", Phrase("When pressures were measured"),
    Phrase("If only some were cold, take them all as warm."), fields::pressure_states,
    fields::is_hot};
inline constexpr QuantityField<Speed> speed{"speed",
                                            Phrase("Speed you intend"),
                                            Phrase("If you want it judged."),
                                            optional,
                                            "1 km/h",
                                            "500 km/h (310 mph)",
                                            "90 km/h",
                                            in_speed};

// ---- a row ----

inline constexpr ListField rows{
    "rows", Phrase("Tyre"),
    Phrase("One line for each tyre, or for the worst tyre of each car. A line that cannot be read "
           "is listed, and the others are judged."),
    5000};
inline constexpr TextField name{"name", Phrase("Start number or name"), Phrase(), optional, "12"};
inline constexpr SidewallField size{"size", Phrase("Sidewall text"),
                                    Phrase("With every word moulded on it, if you like."), required,
                                    "205/55 R16 91V"};
inline constexpr QuantityField<Mass> load{"load",  Phrase("Load on this wheel"), Phrase(), required,
                                          "20 kg", "8000 kg (17 600 lb)",        "430 kg", in_mass};
inline constexpr QuantityField<GaugePressure> pressure{
    "pressure", Phrase("Tyre pressure"),      Phrase(),  required,
    "0 kPa",    "1000 kPa (10 bar, 145 psi)", "2.2 bar", in_pressure};
inline constexpr QuantityField<Length> tread{"tread",
                                             Phrase("Tread depth"),
                                             Phrase("In the shallowest main groove."),
                                             required,
                                             "0 mm",
                                             "25 mm (31/32 in)",
                                             "3 mm",
                                             in_depth};
inline constexpr TextField date_code{"date_code", Phrase("Date code"),
                                     Phrase("The last four digits of the DOT line."), optional,
                                     "2322"};

}  // namespace treadwater::sheets::field_list
