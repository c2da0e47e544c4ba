// Fields that several sheets have, and names for columns that several lists have.
#pragma once

#include "core/quantity/write.hpp"
#include "core/sheets/field.hpp"
#include "core/standard/road_surface.hpp"
#include "core/standard/tread_law.hpp"
#include "core/standard/tyre_kind.hpp"
#include "core/standard/wetness.hpp"

namespace treadwater::sheets {

namespace fields {

inline UnitSystem unit_system(std::string_view id) { return *find_unit_system(id); }
inline constexpr ChoiceField<UnitSystem> units{"units", Phrase("Units of the answer"), Phrase(),
                                               [] {
                                                 return std::vector<Choice>{
                                                     {"metric", Phrase("km/h, bar, mm")},
                                                     {"uk", Phrase("mph, psi, mm")},
                                                     {"us", Phrase("mph, psi, 32nds")}};
                                               },
                                               unit_system};

std::vector<Choice> surface_choices();
inline constexpr ChoiceField<const standard::RoadSurface*> surface{
    "surface", Phrase("Road surface"), Phrase(), surface_choices, standard::find_road_surface};

std::vector<Choice> tyre_kind_choices();
inline constexpr ChoiceField<const standard::TyreKind*> tyre_kind{
    "tyre_kind", Phrase("Kind of tyre"), Phrase(), tyre_kind_choices, standard::find_tyre_kind};

std::vector<Choice> place_choices();
inline constexpr ChoiceField<const standard::TreadLaw*> place{
    "place", Phrase("Whose tread law"), Phrase(), place_choices, standard::find_tread_law};

// One tyre's figures: what differs by sheet is the hint, and whether a sheet can do without.
constexpr QuantityField<Mass> wheel_load(Phrase hint, Need needed) {
  return {"load",  Phrase("Load on this wheel"), hint,     needed,
          "20 kg", "8000 kg (17 600 lb)",        "430 kg", in_mass};
}
constexpr QuantityField<GaugePressure> tyre_pressure(Phrase hint) {
  return {"pressure", Phrase("Tyre pressure"),      hint,      required,
          "0 kPa",    "1000 kPa (10 bar, 145 psi)", "2.2 bar", in_pressure};
}
constexpr QuantityField<Length> tread_depth(Phrase hint, Need needed) {
  return {"tread", Phrase("Tread depth"), hint,   needed,
          "0 mm",  "25 mm (31/32 in)",    "3 mm", in_depth};
}
inline constexpr QuantityField<Speed> intended_speed{"speed",
                                                     Phrase("Speed you intend"),
                                                     Phrase("If you want it judged."),
                                                     optional,
                                                     "1 km/h",
                                                     "500 km/h (310 mph)",
                                                     "90 km/h",
                                                     in_speed};
inline constexpr TextField date_code{"date_code", Phrase("Date code"),
                                     Phrase("The last four digits of the DOT line."), optional,
                                     "2322"};

// How wet the road is, in a word; null if it was not said.
std::vector<Choice> wetness_choices();
inline constexpr ChoiceField<const standard::WetnessWord*> wetness{
    "wetness", Phrase("How wet the road is"),
    Phrase("By sight. Of this and a ruler the wetter counts."), wetness_choices,
    standard::find_wetness};
constexpr QuantityField<Length> water_depth(std::string_view id, Phrase hint,
                                            std::string_view example) {
  return {id,     Phrase("Depth of water"), hint,    optional,
          "0 mm", "1000 mm (39 in)",        example, in_water};
}

// When pressures were measured: hot?
constexpr bool is_hot(std::string_view state) { return state == "hot"; }
inline std::vector<Choice> pressure_states() {
  return {{"cold", Phrase("Cold: not driven for 3 hours")},
          {"hot", Phrase("Warm or hot from driving")}};
}

}  // namespace fields

// Names of columns that several lists have: English, then French, German and Finnish.
namespace column {
inline constexpr std::string_view size =
    "Size|Tyre size|Tyre|Tire|Tire size|Marking|Pneu|Pneus|Dimension|Dimensions|Taille|Reifen|"
    "Reifengröße|Reifengrösse|Größe|Rengas|Rengaskoko|Koko";
inline constexpr std::string_view load = "Load|Wheel load|Charge|Poids|Last|Radlast|Kuorma|Paino";
inline constexpr std::string_view pressure =
    "Pressure|Cold pressure|Inflation|Pression|Druck|Luftdruck|Reifendruck|Paine|Rengaspaine";
inline constexpr std::string_view tread =
    "Tread|Depth|Least tread|Profondeur|Sculpture|Profil|Profiltiefe|Urasyvyys";
inline constexpr std::string_view tyre_kind = "Kind|Type|Tyre type|Genre|Art|Reifenart|Tyyppi";
inline constexpr std::string_view date_code = "DOT|Date|Week|Made|Age code|DOT code|Date DOT";
inline constexpr std::string_view name =
    "Nom|Nimi|Stage|Spéciale|Prüfung|Wertungsprüfung|Erikoiskoe";
inline constexpr std::string_view length = "Distance|Km|Longueur|Länge|Pituus";
inline constexpr std::string_view water = "Water|Depth|Eau|Profondeur|Wasser|Wassertiefe|Vesi";
inline constexpr std::string_view width = "Section width|Largeur|Breite|Leveys";
inline constexpr std::string_view day = "Date|Jour|Datum|Tag|Päivä|Päivämäärä";
inline constexpr std::string_view odometer =
    "Odometer|Mileage|Distance|Kilométrage|Kilometerstand|Km|Mittarilukema";
}  // namespace column

}  // namespace treadwater::sheets
