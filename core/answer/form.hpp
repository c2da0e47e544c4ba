// Fields for a sheet's form, and the choices that several sheets offer.
#pragma once

#include "core/answer/sheet.hpp"

namespace treadwater::answer {

Field text_field(std::string_view id, std::string_view label, std::string_view hint, bool required,
                 std::string_view example);
// `units`: the first is that of a bare number. `preferred`: the picker's for metric, uk and us.
Field quantity_field(std::string_view id, std::string_view hint, bool required,
                     const QuantityRequest& request, std::vector<std::string_view> units,
                     std::vector<std::string_view> preferred);
// A plain number: a count or a share in per cent. The request's dimension is `number`.
Field number_field(std::string_view id, std::string_view hint, bool required,
                   const QuantityRequest& request);
// The first choice is the initial one.
Field choice_field(std::string_view id, std::string_view label, std::string_view hint,
                   std::vector<Choice> choices);
Field yes_no_field(std::string_view id, std::string_view label, std::string_view hint,
                   std::string_view initial);
Field date_field(std::string_view id, std::string_view label, std::string_view hint, bool required);
// `label` names one row: "Corner". With `row_names` the rows are fixed: "Front left".
Field list_field(std::string_view id, std::string_view label, std::string_view hint,
                 std::size_t most_rows, std::vector<Field> fields,
                 std::vector<std::string_view> row_names = {});
// The field with the names its column has in people's own tables, parted by '|'.
Field also(Field field, std::string_view names);

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

Field units_field();

std::vector<Choice> surface_choices();
std::vector<Choice> tyre_kind_choices();
std::vector<Choice> place_choices();
std::vector<Choice> forecast_choices();  // "none", then the words of each scale

}  // namespace treadwater::answer
