// The form of the sheet `car-check`. Field ids are part of every link anybody has kept: do not
// rename them.
#include "core/answer/car_check.hpp"
#include "core/answer/form.hpp"
#include "core/answer/heads.hpp"

namespace treadwater::answer {
namespace {

constexpr QuantityRequest pressure{
    "Tyre pressure", Dimension::pressure,          "kPa",    0.0, 1000.0,
    "0 kPa",         "1000 kPa (10 bar, 145 psi)", "2.2 bar"};
constexpr QuantityRequest depth(std::string_view label, std::string_view example) {
  return {label, Dimension::length, "mm", 0.0, 0.025, "0 mm", "25 mm (31/32 in)", example};
}
constexpr QuantityRequest inner = depth("Tread at the inner side", "4 mm");
constexpr QuantityRequest centre = depth("Tread in the middle", "5 mm");
constexpr QuantityRequest outer = depth("Tread at the outer side", "5 mm");
constexpr QuantityRequest mass(std::string_view label, double least, std::string_view least_text,
                               std::string_view example) {
  return {label,      Dimension::mass,         "kg",   least, 16000.0,
          least_text, "16 000 kg (35 000 lb)", example};
}
constexpr QuantityRequest load = mass("Load on this wheel", 20.0, "20 kg", "430 kg");
constexpr QuantityRequest front_axle = mass("Load on the front axle", 40.0, "40 kg", "820 kg");
constexpr QuantityRequest rear_axle = mass("Load on the rear axle", 40.0, "40 kg", "700 kg");
constexpr QuantityRequest kerb = mass("Kerb mass", 100.0, "100 kg", "1100 kg");
constexpr QuantityRequest boot = mass("In the boot", 0.0, "0 kg", "60 kg");
constexpr QuantityRequest roof = mass("On the roof", 0.0, "0 kg", "0 kg");
constexpr QuantityRequest tow_ball = mass("On the tow ball", 0.0, "0 kg", "0 kg");
constexpr QuantityRequest share{
    "Kerb mass on the front axle", Dimension::number, "%", 20.0, 80.0, "20 %", "80 %", "60"};
constexpr QuantityRequest people(std::string_view label) {
  return {label, Dimension::number, "", 0.0, 20.0, "0", "20", "1"};
}
constexpr QuantityRequest front_people = people("People in front");
constexpr QuantityRequest rear_people = people("People behind");
constexpr QuantityRequest top_speed{
    "Top speed of the car", Dimension::speed, "km/h", 1.0, 500.0, "1 km/h",
    "500 km/h (310 mph)",   "185 km/h"};
constexpr QuantityRequest speed{"Speed you intend", Dimension::speed,     "km/h",    1.0, 500.0,
                                "1 km/h",           "500 km/h (310 mph)", "110 km/h"};
constexpr QuantityRequest water{"Depth of water", Dimension::length, "mm",  0.0, 1.0,
                                "0 mm",           "1000 mm (39 in)", "3 mm"};

SheetDescription describe() {
  const auto treads = [](std::string_view id, std::string_view hint,
                         const QuantityRequest& request) {
    return quantity_field(id, hint, false, request, {"mm", "in", "/32 in"}, {"mm", "mm", "/32 in"});
  };
  const auto masses = [](std::string_view id, std::string_view hint,
                         const QuantityRequest& request) {
    return quantity_field(id, hint, false, request, {"kg", "lb"}, {"kg", "kg", "lb"});
  };
  const auto speeds = [](std::string_view id, std::string_view hint,
                         const QuantityRequest& request) {
    return quantity_field(id, hint, false, request, {"km/h", "mph"}, {"km/h", "mph", "mph"});
  };
  SheetDescription sheet;
  sheet.head = heads::car_check;
  sheet.fields = {
      units_field(),
      list_field(
          "corners", "Corner", "Front and rear, and the spare if you carry one.", 5,
          {also(text_field("size", "Sidewall text", "", true, "205/55 R16 91V"), column::size),
           also(quantity_field("pressure", "", true, pressure, {"kPa", "bar", "psi"},
                               {"bar", "psi", "psi"}),
                column::pressure),
           choice_field("pressure_state", "When it was measured", "",
                        {{"cold", "Cold"}, {"hot", "Warm or hot from driving"}}),
           also(treads("tread", "In the shallowest main groove.", centre), column::tread),
           also(treads("tread_inner", "If you measure across the tread.", inner),
                "Inner|Inside|Innen|Intérieur"),
           also(treads("tread_outer", "", outer), "Outer|Outside|Aussen|Außen|Extérieur"),
           also(text_field("date_code", "Date code", "The last four digits of the DOT line.", false,
                           "2322"),
                column::date_code),
           also(masses("load", "If you have wheel scales.", load), column::load)},
          {"Front left", "Front right", "Rear left", "Rear right", "Spare"}),
      masses("front_axle", "From a weighbridge. Or fill in the masses below.", front_axle),
      masses("rear_axle", "", rear_axle),
      masses("kerb", "From the car's papers.", kerb),
      number_field("front_share", "Empty: 55.", false, share),
      number_field("front_people", "The driver too. Empty: 1.", false, front_people),
      number_field("rear_people", "", false, rear_people),
      masses("boot", "", boot),
      masses("roof", "", roof),
      masses("tow_ball", "", tow_ball),
      speeds("top_speed", "From the car's papers.", top_speed),
      speeds("speed", "If you want it judged.", speed),
      quantity_field("water", "0 for a road that is wet but has no water standing on it.", false,
                     water, {"mm", "in"}, {"mm", "mm", "in"}),
      choice_field("tyre_kind", "Kind of tyre", "", tyre_kind_choices()),
      choice_field("surface", "Road surface", "", surface_choices()),
      choice_field("place", "Whose tread law", "", place_choices()),
  };
  std::vector<std::pair<std::string_view, std::string_view>> input = {
      {"front_axle", "820 kg"},
      {"rear_axle", "680 kg"},
      {"top_speed", "185 km/h"},
      {"water", "3 mm"},
      {"corners.0.size", "205/55 R16 91V"},
      {"corners.0.pressure", "2.2 bar"},
      {"corners.0.tread", "5 mm"},
      {"corners.0.tread_inner", "3.6 mm"},
      {"corners.0.tread_outer", "5.1 mm"},
      {"corners.1.size", "205/55 R16 91V"},
      {"corners.1.pressure", "1.7 bar"},
      {"corners.1.tread", "5 mm"},
      {"corners.2.size", "205/55 R16 91V"},
      {"corners.2.pressure", "2.2 bar"},
      {"corners.2.tread", "4 mm"},
      {"corners.3.size", "205/55 R16 91V"},
      {"corners.3.pressure", "2.2 bar"},
      {"corners.3.tread", "4 mm"},
      {"corners.4.size", "T125/80 D15 95M"},
      {"corners.4.pressure", "3.1 bar"},
      {"corners.4.tread", "3 mm"},
      {"corners.4.date_code", "1114"}};
  sheet.example = {
      "example", "An invented case: the Pipit 1.4, a made-up small hatchback, before a holiday",
      "One soft tyre, one worn on its inner side, and an old spare.", std::move(input)};
  return sheet;
}

}  // namespace

const SheetDescription& car_check_sheet() {
  static const SheetDescription sheet = describe();
  return sheet;
}

}  // namespace treadwater::answer
