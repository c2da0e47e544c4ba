// The form of the sheet `stage-tyres`.
#pragma once

#include "core/sheets/shared_fields.hpp"
#include "core/stage/event.hpp"
#include "core/stage/plan.hpp"

namespace treadwater::sheets::stage_tyres {

constexpr NumberField percent(std::string_view id, Phrase label, Phrase hint,
                              std::string_view example, Bound most = "100 %") {
  return {id, label, hint, optional, "0 %", most, example};
}

// ---- a stage ----

inline constexpr ListField stages{
    "stages", Phrase("Stage"),
    Phrase("In the order in which they are driven, with the halt after each."), stage::most_stages};
inline constexpr TextField stage_name{"name", Phrase("Name"), Phrase(), optional, "Long Meadow"};
inline constexpr QuantityField<Length> length{
    "length", Phrase("Length"), Phrase(),  required,
    "0.1 km", "200 km",         "15.2 km", in_kilometres_of_road};
inline constexpr NumberField chances[stage::weathers] = {
    percent("dry", Phrase("Chance of dry"), Phrase("Per cent; the chances of a stage make 100."),
            "60"),
    percent("damp", Phrase("Chance of damp"), Phrase(), "20"),
    percent("wet", Phrase("Chance of wet"), Phrase(), "20"),
    percent("standing", Phrase("Chance of standing water"), Phrase(), "0"),
    percent("snow", Phrase("Chance of snow"), Phrase(), "0"),
    percent("ice", Phrase("Chance of ice"), Phrase(), "0")};
constexpr stage::Halt halt_of(std::string_view id) {
  return id == "service"     ? stage::Halt::service
         : id == "tyre_zone" ? stage::Halt::tyre_zone
         : id == "regroup"   ? stage::Halt::regroup
                             : stage::Halt::none;
}
inline constexpr ChoiceField<stage::Halt> halt{"halt", Phrase("After it"), Phrase(),
                                               [] {
                                                 return std::vector<Choice>{
                                                     {"none", Phrase("Straight on")},
                                                     {"service", Phrase("A service")},
                                                     {"tyre_zone", Phrase("A tyre zone")},
                                                     {"regroup", Phrase("A regroup, no work")}};
                                               },
                                               halt_of};
inline constexpr NumberField gravel =
    percent("gravel", Phrase("Gravel"), Phrase("Per cent of it; the rest is tarmac."), "0");
constexpr stage::Roughness roughness_of(std::string_view id) {
  return id == "rough"    ? stage::Roughness::rough
         : id == "broken" ? stage::Roughness::broken
                          : stage::Roughness::smooth;
}
inline constexpr ChoiceField<stage::Roughness> roughness{
    "roughness", Phrase("Ground"), Phrase(),
    [] {
      return std::vector<Choice>{
          {"smooth", Phrase("Smooth")}, {"broken", Phrase("Broken")}, {"rough", Phrase("Rough")}};
    },
    roughness_of};
inline constexpr NumberField abrasion{"abrasion",
                                      Phrase("Abrasion"),
                                      Phrase("1 is normal, 2 wears twice as fast."),
                                      optional,
                                      "0",
                                      "10",
                                      "1"};
inline constexpr QuantityField<Speed> average{"average",
                                              Phrase("Average on the right tyre"),
                                              Phrase("Empty: 80 km/h."),
                                              optional,
                                              "10 km/h",
                                              "250 km/h (155 mph)",
                                              "85 km/h",
                                              in_speed};
inline constexpr QuantityField<Temperature> air{"air",    Phrase("Air"), Phrase("When you run it."),
                                                optional, "-60 °C",      "60 °C",
                                                "12 °C",  in_temperature};
inline constexpr QuantityField<Length> water{"water",
                                             Phrase("Standing water reported"),
                                             Phrase("The deepest, by a ruler."),
                                             optional,
                                             "0 mm",
                                             "200 mm (8 in)",
                                             "6 mm",
                                             in_water};

// ---- a set ----

inline constexpr ListField sets{"sets", Phrase("Set of tyres"),
                                Phrase("What is in the van, and on the car."), stage::most_sets};
// No kind is assumed: a row without one is a problem.
inline constexpr ChoiceField<stage::SetKind> kind = open_at_first(
    ChoiceField<stage::SetKind>{"kind", Phrase("Kind"), Phrase(),
                                [] {
                                  std::vector<Choice> choices;
                                  for (std::size_t i = 0; i < stage::set_kind_count; ++i) {
                                    const stage::SetKind one = stage::set_kind(i);
                                    choices.push_back({one.id, one.label});
                                  }
                                  return choices;
                                },
                                [](std::string_view id) { return *stage::find_set_kind(id); }},
    required);
inline constexpr TextField mark{"name", Phrase("Mark on it"),
                                Phrase("To tell it from another of its kind."), optional, "B"};
inline constexpr NumberField how_many{
    "count", Phrase("How many sets"), Phrase("Empty: 1."), optional, "0", "100", "1"};
inline constexpr QuantityField<Length> tread{"tread",
                                             Phrase("Tread left"),
                                             Phrase("Empty: new."),
                                             optional,
                                             "0 mm",
                                             "25 mm (31/32 in)",
                                             "5 mm",
                                             in_depth};
inline constexpr NumberField used =
    percent("used", Phrase("Life used"),
            Phrase("By your notes: for a slick, whose wear no gauge reads."), "40");
inline constexpr QuantityField<Length> life{
    "life",
    Phrase("Life on the driven axle"),
    Phrase("In the dry, by your own notes. It counts before ours."),
    optional,
    "1 km",
    "1000 km",
    "19 km",
    in_kilometres_of_road};
inline constexpr NumberField slower[] = {
    percent("slower_dry", Phrase("Slower, dry"),
            Phrase("Per cent of time against the right tyre, by your own notes. It counts before "
                   "ours."),
            "4", "90 %"),
    percent("slower_damp", Phrase("Slower, damp"), Phrase(), "3", "90 %"),
    percent("slower_wet", Phrase("Slower, wet"), Phrase(), "6", "90 %"),
    percent("slower_standing", Phrase("Slower, standing water"), Phrase(), "20", "90 %")};
inline constexpr QuantityField<Temperature> coolest{
    "coolest", Phrase("Works from"), Phrase("Air, by your own notes."), optional, "-60 °C", "60 °C",
    "5 °C",    in_temperature};
inline constexpr QuantityField<Temperature> hottest{
    "hottest", Phrase("Works up to"), Phrase(), optional, "-60 °C", "60 °C",
    "30 °C",   in_temperature};

// ---- a car ----

inline constexpr ListField cars{
    "cars", Phrase("Car of the team"),
    Phrase("Yours first: the lives above are its own. Load and size shift wear, pressure and width "
           "the speed at which a car floats."),
    12};
inline constexpr TextField car_name{"name", Phrase("Name"), Phrase(), optional, "Car 7"};
inline constexpr SidewallField size{"size", Phrase("Sidewall text"), Phrase(), optional,
                                    "165/70 R13 79T"};
inline constexpr QuantityField<Mass> load{"load",   Phrase("Load on a driven wheel"),
                                          Phrase(), optional,
                                          "20 kg",  "8000 kg (17 600 lb)",
                                          "260 kg", in_mass};
inline constexpr QuantityField<GaugePressure> pressure{
    "pressure", Phrase("Tyre pressure"),      Phrase(),  optional,
    "50 kPa",   "1000 kPa (10 bar, 145 psi)", "1.8 bar", in_pressure};

// ---- the whole event ----

constexpr stage::Attitude attitude_of(std::string_view id) {
  return id == "steady" ? stage::Attitude::steady
         : id == "safe" ? stage::Attitude::safe
                        : stage::Attitude::average;
}
inline constexpr ChoiceField<stage::Attitude> attitude{
    "attitude", Phrase("What you want"), Phrase(),
    [] {
      return std::vector<Choice>{{"average", Phrase("Fastest on average")},
                                 {"steady", Phrase("Steady: the bad days less bad")},
                                 {"safe", Phrase("Safe: the worst day least bad")}};
    },
    attitude_of};
constexpr stage::Drive drive_of(std::string_view id) {
  return id == "front" ? stage::Drive::front : id == "all" ? stage::Drive::all : stage::Drive::rear;
}
inline constexpr ChoiceField<stage::Drive> drive{
    "drive", Phrase("Driven axle"), Phrase(),
    [] {
      return std::vector<Choice>{
          {"front", Phrase("Front")}, {"rear", Phrase("Rear")}, {"all", Phrase("All four wheels")}};
    },
    drive_of};
inline constexpr NumberField persistence =
    percent("persistence", Phrase("How far the weather lasts"),
            Phrase("0: each stage by itself. 100: it stays as it was."), "50");
inline constexpr NumberField most_sets{"most_sets",
                                       Phrase("Sets that the rules allow"),
                                       Phrase("Of four tyres each. Empty: no limit."),
                                       optional,
                                       "0",
                                       "100",
                                       "3"};
inline constexpr QuantityField<Length> least_tread{
    "least_tread",
    Phrase("Least tread"),
    Phrase("At the end of each stage. Empty: 1.6 mm, asked of all but slicks."),
    optional,
    "0 mm",
    "20 mm (25/32 in)",
    "1.6 mm",
    in_depth};
inline constexpr NumberField grooves =
    percent("grooves", Phrase("Grooves that the rules ask for"),
            Phrase("Share of the tread, per cent. Empty: none."), "17");
inline constexpr YesNoField moulded_only{"moulded_only", Phrase("Must the tread be moulded?"),
                                         Phrase("Then no slick, and none cut by hand."), "no"};
inline constexpr YesNoField no_studs{"no_studs", Phrase("Are studs forbidden?"), Phrase(), "no"};
inline constexpr YesNoField road_sections{"road_sections",
                                          Phrase("Are there sections on the open road?"),
                                          Phrase("Then every set must be legal there."), "no"};

}  // namespace treadwater::sheets::stage_tyres
