// The form of the sheet `field-list`.
#pragma once

#include "core/sheets/shared_fields.hpp"

namespace treadwater::sheets::field_list {

// ---- shared by all rows ----

inline constexpr auto water = fields::water_depth(
    "water",
    Phrase("By a ruler in the deepest place on the way. 0 for a road that is wet but has no water "
           "standing on it."),
    "5 mm");
inline constexpr ChoiceField<bool> pressure_state{
    "pressure_state", Phrase("When pressures were measured"),
    Phrase("If only some were cold, take them all as warm."), fields::pressure_states,
    fields::is_hot};
inline constexpr auto speed = fields::intended_speed;

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
inline constexpr auto load = fields::wheel_load(Phrase(), required);
inline constexpr auto pressure = fields::tyre_pressure(Phrase());
inline constexpr auto tread =
    fields::tread_depth(Phrase("In the shallowest main groove."), required);
inline constexpr auto date_code = fields::date_code;

}  // namespace treadwater::sheets::field_list
