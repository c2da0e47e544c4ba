// The form of the sheet `fitment`. Field ids are part of every link anybody has kept: do not rename
// them.
#include "core/answer/fitment.hpp"
#include "core/answer/form.hpp"
#include "core/answer/heads.hpp"

namespace treadwater::answer {
namespace {

constexpr QuantityRequest rim_request(std::string_view label, std::string_view example) {
  return {label, Dimension::length, "in", 0.05, 0.6, "2 in", "23 in", example};
}
constexpr QuantityRequest offset_request(std::string_view label, std::string_view example) {
  return {label, Dimension::length, "mm", -0.1, 0.1, "-100 mm", "100 mm", example};
}
constexpr QuantityRequest mass_request(std::string_view label, std::string_view example) {
  return {label, Dimension::mass, "kg", 0.5, 200.0, "0.5 kg", "200 kg", example};
}
constexpr QuantityRequest rim = rim_request("Width of the rim now", "6.5 in");
constexpr QuantityRequest new_rim = rim_request("Width of the new rim", "7 in");
constexpr QuantityRequest offset = offset_request("Offset of the wheel now", "45 mm");
constexpr QuantityRequest new_offset = offset_request("Offset of the new wheel", "40 mm");
constexpr QuantityRequest wheel_mass = mass_request("Wheel and tyre now", "17 kg");
constexpr QuantityRequest new_wheel_mass = mass_request("New wheel and tyre", "19 kg");
constexpr QuantityRequest unsprung = mass_request("Unsprung mass of that corner", "40 kg");
constexpr QuantityRequest load{"Load on this wheel",  Dimension::mass, "kg", 20.0, 8000.0, "20 kg",
                               "8000 kg (17 600 lb)", "430 kg"};
constexpr QuantityRequest pressure{"Cold pressure now",
                                   Dimension::pressure,
                                   "kPa",
                                   50.0,
                                   1000.0,
                                   "50 kPa",
                                   "1000 kPa (10 bar, 145 psi)",
                                   "2.3 bar"};
constexpr QuantityRequest top_speed{
    "Top speed of the car", Dimension::speed, "km/h", 1.0, 500.0, "1 km/h",
    "500 km/h (310 mph)",   "185 km/h"};
constexpr QuantityRequest index{
    "Load index the car asks for", Dimension::number, "", 50.0, 150.0, "50", "150", "91"};
constexpr QuantityRequest spring{"Suspension rate at the wheel",
                                 Dimension::number,
                                 "",
                                 1.0,
                                 500.0,
                                 "1 N/mm",
                                 "500 N/mm",
                                 "20.6"};

SheetDescription describe() {
  const auto inches = [](std::string_view id, std::string_view hint,
                         const QuantityRequest& request) {
    return quantity_field(id, hint, false, request, {"in", "mm"}, {"in", "in", "in"});
  };
  const auto millimetres = [](std::string_view id, const QuantityRequest& request) {
    return quantity_field(id, "The ET on the wheel.", false, request, {"mm", "in"},
                          {"mm", "mm", "mm"});
  };
  const auto kilograms = [](std::string_view id, std::string_view hint,
                            const QuantityRequest& request) {
    return quantity_field(id, hint, false, request, {"kg", "lb"}, {"kg", "kg", "lb"});
  };
  SheetDescription sheet;
  sheet.head = heads::fitment;
  sheet.fields = {
      units_field(),
      text_field("size", "Sidewall text now", "The tyre that the car's papers name.", true,
                 "195/65 R15 91T"),
      text_field("new_size", "Sidewall text of the new tyre", "", true, "205/55 R16 91V"),
      quantity_field("top_speed", "From the car's papers.", false, top_speed, {"km/h", "mph"},
                     {"km/h", "mph", "mph"}),
      number_field("asked_index", "From the handbook or the papers. Empty: that of the tyre now.",
                   false, index),
      quantity_field("pressure", "For the pressure that carries the same load.", false, pressure,
                     {"kPa", "bar", "psi"}, {"bar", "psi", "psi"}),
      kilograms("load", "For the contact patch.", load),
      inches("rim", "Empty: the one the size belongs to.", rim),
      inches("new_rim", "Empty: the one the size belongs to.", new_rim),
      millimetres("offset", offset),
      millimetres("new_offset", new_offset),
      kilograms("wheel_mass", "", wheel_mass),
      kilograms("new_wheel_mass", "", new_wheel_mass),
      kilograms("unsprung", "Wheel, tyre, brake, hub and half the links.", unsprung),
      number_field("suspension_rate", "N/mm, with the mass for the wheel-hop frequency.", false,
                   spring),
  };
  sheet.example = {"example",
                   "An invented case: larger wheels for the Pipit 1.4, a made-up small hatchback",
                   "From 15 to 16 inches, a little wider.",
                   {{"size", "195/65 R15 91T"},
                    {"new_size", "205/55 R16 91V"},
                    {"top_speed", "185 km/h"},
                    {"pressure", "2.3 bar"},
                    {"load", "430 kg"},
                    {"rim", "6 in"},
                    {"new_rim", "7 in"},
                    {"offset", "45 mm"},
                    {"new_offset", "40 mm"},
                    {"wheel_mass", "16 kg"},
                    {"new_wheel_mass", "19 kg"},
                    {"unsprung", "40 kg"},
                    {"suspension_rate", "20.6"}}};
  return sheet;
}

}  // namespace

const SheetDescription& fitment_sheet() {
  static const SheetDescription sheet = describe();
  return sheet;
}

}  // namespace treadwater::answer
