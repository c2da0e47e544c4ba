// The form of the sheet `puncture`.
#pragma once

#include "core/judge/puncture.hpp"
#include "core/sheets/shared_fields.hpp"

namespace treadwater::sheets::puncture {

inline constexpr SidewallField size{"size", Phrase("Sidewall text"),
                                    Phrase("Copy the size line from the tyre."), required,
                                    "205/55 R16 91V"};

constexpr QuantityField<GaugePressure> pressure_field(std::string_view id, Phrase label,
                                                      Phrase hint, std::string_view example) {
  return {id, label, hint, optional, "0 kPa", "1000 kPa (10 bar, 145 psi)", example, in_pressure};
}
inline constexpr QuantityField<GaugePressure> set =
    pressure_field("set", Phrase("Cold pressure it should have"),
                   Phrase("The placard's. Empty: 230 kPa."), "2.3 bar");
inline constexpr QuantityField<GaugePressure> first =
    pressure_field("first", Phrase("First reading"),
                   Phrase("Two readings and a clock tell how fast it leaks."), "2.3 bar");
inline constexpr QuantityField<GaugePressure> second =
    pressure_field("second", Phrase("Second reading"), Phrase("The latest one."), "1.9 bar");
inline constexpr ChoiceField<bool> first_state{"first_state", Phrase("When the first was read"),
                                               Phrase(), fields::pressure_states, fields::is_hot};
inline constexpr ChoiceField<bool> second_state{"second_state", Phrase("When the second was read"),
                                                Phrase(), fields::pressure_states, fields::is_hot};
inline constexpr QuantityField<Duration> apart{
    "apart",   Phrase("Time between the readings"), Phrase(), optional, "1 s", "1 year", "20 min",
    in_minutes};

inline constexpr QuantityField<Length> hole{"hole",
                                            Phrase("Width of the hole"),
                                            Phrase("If you can see it. Leave the nail in."),
                                            optional,
                                            "0.1 mm",
                                            "50 mm (2 in)",
                                            "3.2 mm",
                                            in_water};
// Nothing if it was not found.
inline std::optional<air::Place> place_of(std::string_view id) {
  if (id == "tread") return air::Place::tread;
  if (id == "shoulder") return air::Place::shoulder;
  if (id == "sidewall") return air::Place::sidewall;
  if (id == "bead") return air::Place::bead;
  return std::nullopt;
}
inline constexpr ChoiceField<std::optional<air::Place>> where{
    "where", Phrase("Where the hole is"), Phrase(),
    [] {
      return std::vector<Choice>{{"tread", Phrase("In the tread")},
                                 {"shoulder", Phrase("In the shoulder")},
                                 {"sidewall", Phrase("In the sidewall")},
                                 {"bead", Phrase("At the rim")},
                                 {"unknown", Phrase("Not found")}};
    },
    place_of};
inline constexpr QuantityField<Length> from_centre{"from_centre",
                                                   Phrase("From the middle of the tread"),
                                                   Phrase("Either side."),
                                                   optional,
                                                   "0 mm",
                                                   "400 mm (16 in)",
                                                   "30 mm",
                                                   in_water};
inline constexpr YesNoField between_grooves{"between_grooves",
                                            Phrase("Between the two outer grooves?"), Phrase(), ""};
inline constexpr QuantityField<Length> tread{"tread",
                                             Phrase("Tread depth"),
                                             Phrase("The least left."),
                                             optional,
                                             "0 mm",
                                             "25 mm (31/32 in)",
                                             "5 mm",
                                             in_depth};
inline constexpr YesNoField driven_flat{"driven_flat", Phrase("Was it driven flat?"),
                                        Phrase("Even a short way."), "no"};
inline constexpr YesNoField damage{"damage", Phrase("Cord in sight, a bulge or cracks?"), Phrase(),
                                   "no"};
inline constexpr YesNoField sealant{"sealant", Phrase("Sealant put in?"), Phrase(), "no"};
inline constexpr NumberField repairs{
    "repairs", Phrase("Repairs before"), Phrase(), optional, "0", "20", "0"};
inline constexpr auto date_code = fields::date_code;

inline judge::Help help_of(std::string_view id) {
  if (id == "self_supporting") return judge::Help::self_supporting;
  if (id == "lubricated") return judge::Help::lubricated;
  if (id == "temporary_spare") return judge::Help::temporary_spare;
  if (id == "full_spare") return judge::Help::full_spare;
  if (id == "sealant_kit") return judge::Help::sealant_kit;
  return judge::Help::nothing;
}
inline constexpr ChoiceField<judge::Help> help{
    "help", Phrase("What you have"), Phrase(),
    [] {
      return std::vector<Choice>{{"plain_flat", Phrase("Nothing but this tyre")},
                                 {"self_supporting", Phrase("It is a run-flat tyre")},
                                 {"lubricated", Phrase("An early run-flat with lubricant inside")},
                                 {"temporary_spare", Phrase("A temporary spare")},
                                 {"full_spare", Phrase("A full-size spare")},
                                 {"sealant_kit", Phrase("A sealant kit")}};
    },
    help_of};
inline constexpr auto load = fields::wheel_load(Phrase("For a run-flat tyre."), optional);
inline constexpr QuantityField<Length> way{
    "way",
    Phrase("Way to go"),
    Phrase("To help, home or the next service; on a stage to its finish."),
    optional,
    "0 km",
    "20 000 km",
    "35 km",
    in_kilometres_of_road};

constexpr bool is_stage(std::string_view id) { return id == "stage"; }
inline constexpr ChoiceField<bool> on{
    "on", Phrase("Where you are"),
    Phrase("On a closed stage a rally crew changes the wheel or drives out."),
    [] {
      return std::vector<Choice>{{"road", Phrase("On the road")},
                                 {"stage", Phrase("On a closed stage")}};
    },
    is_stage};
constexpr bool is_gravel(std::string_view id) { return id == "gravel"; }
inline constexpr ChoiceField<bool> stage_surface{
    "stage_surface", Phrase("Surface of the stage"), Phrase("Of a mixed one, what is left of it."),
    [] {
      return std::vector<Choice>{{"tarmac", Phrase("Tarmac")}, {"gravel", Phrase("Gravel")}};
    },
    is_gravel};
inline constexpr QuantityField<Speed> approach{"approach",
                                               Phrase("Speed at which cars come here"),
                                               Phrase("On a stage, for the triangle."),
                                               optional,
                                               "10 km/h",
                                               "250 km/h (155 mph)",
                                               "120 km/h",
                                               in_speed};

inline constexpr NumberField spares{"spares",
                                    Phrase("Spares on board"),
                                    Phrase("For a stage, and the odds of the next one."),
                                    optional,
                                    "0",
                                    "20",
                                    "1"};
inline constexpr NumberField one_in{"one_in",
                                    Phrase("Months to a puncture"),
                                    Phrase("Common practice: one in about 18 months."),
                                    optional,
                                    "0.1",
                                    "1200",
                                    "18"};
inline constexpr QuantityField<Length> a_year{"a_year",
                                              Phrase("Driven in a year"),
                                              Phrase("Empty: 12 000 km."),
                                              optional,
                                              "100 km",
                                              "1 000 000 km",
                                              "12 000 km",
                                              in_kilometres_of_road};

}  // namespace treadwater::sheets::puncture
