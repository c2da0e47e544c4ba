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
inline constexpr auto load = fields::wheel_load(
    Phrase("From a weighbridge or wheel scale. If all you have is the loaded car's mass: a quarter "
           "of it, and a fifth more for the heavier end."),
    required);
inline constexpr auto pressure = fields::tyre_pressure(Phrase("What the gauge says."));
inline constexpr ChoiceField<bool> pressure_state{"pressure_state", Phrase("When it was measured"),
                                                  Phrase(), fields::pressure_states,
                                                  fields::is_hot};
inline constexpr auto tread =
    fields::tread_depth(Phrase("In the shallowest main groove, off the wear "
                               "bars."),
                        required);
inline constexpr auto water = fields::water_depth(
    "water",
    Phrase("By a ruler stood in the deepest place the wheel will cross. 0 for a road that is wet "
           "but has no water standing on it."),
    "5 mm");
inline constexpr auto speed = fields::intended_speed;
inline constexpr TextField date_code{
    "date_code", Phrase("Date code"),
    Phrase("The last four digits of the DOT line: week and year of making."), optional, "2322"};

}  // namespace treadwater::sheets::tyre_check
