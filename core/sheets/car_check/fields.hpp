// The form of the sheet `car-check`.
#pragma once

#include "core/sheets/shared_fields.hpp"

namespace treadwater::sheets::car_check {

// ---- a corner ----

inline constexpr ListField corners{"corners", Phrase("Corner"),
                                   Phrase("Front and rear, and the spare if you carry one."), 5};
inline constexpr SidewallField size{"size", Phrase("Sidewall text"), Phrase(), required,
                                    "205/55 R16 91V"};
inline constexpr auto pressure = fields::tyre_pressure(Phrase());
inline constexpr ChoiceField<bool> pressure_state{
    "pressure_state", Phrase("When it was measured"), Phrase(),
    [] {
      return std::vector<Choice>{{"cold", Phrase("Cold")},
                                 {"hot", Phrase("Warm or hot from driving")}};
    },
    fields::is_hot};

constexpr QuantityField<Length> a_tread(std::string_view id, Phrase label, Phrase hint,
                                        std::string_view example) {
  return {id, label, hint, optional, "0 mm", "25 mm (31/32 in)", example, in_depth};
}
inline constexpr auto tread = a_tread("tread", Phrase("Tread in the middle"),
                                      Phrase("In the shallowest main groove."), "5 mm");
inline constexpr auto tread_inner = a_tread("tread_inner", Phrase("Tread at the inner side"),
                                            Phrase("If you measure across the tread."), "4 mm");
inline constexpr auto tread_outer =
    a_tread("tread_outer", Phrase("Tread at the outer side"), Phrase(), "5 mm");
inline constexpr auto date_code = fields::date_code;

constexpr QuantityField<Mass> a_mass(std::string_view id, Phrase label, Phrase hint, Bound least,
                                     std::string_view example) {
  return {id, label, hint, optional, least, "16 000 kg (35 000 lb)", example, in_mass};
}
inline constexpr auto load = a_mass("load", Phrase("Load on this wheel"),
                                    Phrase("If you have wheel scales."), "20 kg", "430 kg");
// The bounds for a wheel's load, however it was found.
inline constexpr auto judged_load = fields::wheel_load(Phrase(), optional);

// ---- the car ----

inline constexpr auto front_axle =
    a_mass("front_axle", Phrase("Load on the front axle"),
           Phrase("From a weighbridge. Or fill in the masses below."), "40 kg", "820 kg");
inline constexpr auto rear_axle =
    a_mass("rear_axle", Phrase("Load on the rear axle"), Phrase(), "40 kg", "700 kg");
inline constexpr auto kerb =
    a_mass("kerb", Phrase("Kerb mass"), Phrase("From the car's papers."), "100 kg", "1100 kg");
inline constexpr NumberField front_share{"front_share",
                                         Phrase("Kerb mass on the front axle"),
                                         Phrase("Empty: 55."),
                                         optional,
                                         "20 %",
                                         "80 %",
                                         "60"};
constexpr NumberField people(std::string_view id, Phrase label, Phrase hint) {
  return {id, label, hint, optional, "0", "20", "1"};
}
inline constexpr auto front_people =
    people("front_people", Phrase("People in front"), Phrase("The driver too. Empty: 1."));
inline constexpr auto rear_people = people("rear_people", Phrase("People behind"), Phrase());
inline constexpr auto boot = a_mass("boot", Phrase("In the boot"), Phrase(), "0 kg", "60 kg");
inline constexpr auto roof = a_mass("roof", Phrase("On the roof"), Phrase(), "0 kg", "0 kg");
inline constexpr auto tow_ball =
    a_mass("tow_ball", Phrase("On the tow ball"), Phrase(), "0 kg", "0 kg");

constexpr QuantityField<Speed> a_speed(std::string_view id, Phrase label, Phrase hint,
                                       std::string_view example) {
  return {id, label, hint, optional, "1 km/h", "500 km/h (310 mph)", example, in_speed};
}
inline constexpr auto top_speed = a_speed("top_speed", Phrase("Top speed of the car"),
                                          Phrase("From the car's papers."), "185 km/h");
inline constexpr auto speed =
    a_speed("speed", Phrase("Speed you intend"), Phrase("If you want it judged."), "110 km/h");
inline constexpr auto water = fields::water_depth(
    "water", Phrase("By a ruler. 0 for a road that is wet but has no water standing on it."),
    "3 mm");

}  // namespace treadwater::sheets::car_check
