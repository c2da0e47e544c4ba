// The form of the sheet `field-list`. Field ids are part of every link anybody has kept: do not
// rename them.
#include "core/answer/field_list.hpp"
#include "core/answer/form.hpp"
#include "core/answer/heads.hpp"

namespace treadwater::answer {
namespace {

constexpr std::size_t most_rows = 5000;

constexpr QuantityRequest water{"Depth of water", Dimension::length, "mm",  0.0, 1.0,
                                "0 mm",           "1000 mm (39 in)", "5 mm"};
constexpr QuantityRequest speed{"Speed you intend", Dimension::speed,     "km/h",   1.0, 500.0,
                                "1 km/h",           "500 km/h (310 mph)", "90 km/h"};
constexpr QuantityRequest load{"Load on this wheel",  Dimension::mass, "kg", 20.0, 8000.0, "20 kg",
                               "8000 kg (17 600 lb)", "430 kg"};
constexpr QuantityRequest pressure{
    "Tyre pressure", Dimension::pressure,          "kPa",    0.0, 1000.0,
    "0 kPa",         "1000 kPa (10 bar, 145 psi)", "2.2 bar"};
constexpr QuantityRequest tread{"Tread depth", Dimension::length,  "mm",  0.0, 0.025,
                                "0 mm",        "25 mm (31/32 in)", "3 mm"};

SheetDescription describe() {
  SheetDescription sheet;
  sheet.head = heads::field_list;
  sheet.fields = {
      units_field(),
      quantity_field("water",
                     "By a ruler in the deepest place on the way. 0 for a road that is wet but has "
                     "no water standing on it.",
                     false, water, {"mm", "in"}, {"mm", "mm", "in"}),
      choice_field("surface", "Road surface", "", surface_choices()),
      choice_field("place", "Whose tread law", "", place_choices()),
      choice_field("pressure_state", "When pressures were measured",
                   "If only some were cold, take them all as warm.",
                   {{"cold", "Cold: not driven for 3 hours"}, {"hot", "Warm or hot from driving"}}),
      quantity_field("speed", "If you want it judged.", false, speed, {"km/h", "mph"},
                     {"km/h", "mph", "mph"}),
      list_field(
          "rows", "Tyre",
          "One line for each tyre, or for the worst tyre of each car. A line that cannot be read "
          "is listed, and the others are judged.",
          most_rows,
          {also(
               text_field("name", "Start number or name", "", false, "12"),
               "No|No.|Number|Start number|Start no|Bib|Name|Car|Entry|Driver|Competitor|Nr|Nr.|"
               "Startnummer|Fahrer|Fahrzeug|Numéro|N°|Dossard|Nom|Pilote|Voiture|Numero|Nimi|Auto"),
           also(text_field("size", "Sidewall text", "With every word moulded on it, if you like.",
                           true, "205/55 R16 91V"),
                column::size),
           also(quantity_field("load", "", true, load, {"kg", "lb"}, {"kg", "kg", "lb"}),
                column::load),
           also(quantity_field("pressure", "", true, pressure, {"kPa", "bar", "psi"},
                               {"bar", "psi", "psi"}),
                column::pressure),
           also(quantity_field("tread", "In the shallowest main groove.", true, tread,
                               {"mm", "in", "/32 in"}, {"mm", "mm", "/32 in"}),
                column::tread),
           also(choice_field("tyre_kind", "Kind of tyre", "", tyre_kind_choices()),
                column::tyre_kind),
           also(text_field("date_code", "Date code", "The last four digits of the DOT line.", false,
                           "2322"),
                column::date_code)}),
  };
  sheet.example = {"example",
                   "An invented case: six cars of a made-up club sprint, on a wet morning",
                   "One tyre too worn, one line that cannot be read.",
                   {{"water", "3 mm"},
                    {"rows.0.name", "7"},
                    {"rows.0.size", "205/55 R16 91V M+S"},
                    {"rows.0.load", "390 kg"},
                    {"rows.0.pressure", "2.3 bar"},
                    {"rows.0.tread", "6.5 mm"},
                    {"rows.0.date_code", "1824"},
                    {"rows.1.name", "12"},
                    {"rows.1.size", "195/65 R15 91T"},
                    {"rows.1.load", "360 kg"},
                    {"rows.1.pressure", "2.2 bar"},
                    {"rows.1.tread", "1.4 mm"},
                    {"rows.1.date_code", "0719"},
                    {"rows.2.name", "15"},
                    {"rows.2.size", "225/45 R17 94W XL 3PMSF"},
                    {"rows.2.load", "420 kg"},
                    {"rows.2.pressure", "2.4 bar"},
                    {"rows.2.tread", "5 mm"},
                    {"rows.2.tyre_kind", "winter"},
                    {"rows.3.name", "21"},
                    {"rows.3.size", "185/60 R14"},
                    {"rows.3.load", "310 kg"},
                    {"rows.3.pressure", "2.1 bar"},
                    {"rows.3.tread", "4 mm"},
                    {"rows.4.name", "33"},
                    {"rows.4.size", "205/50 R15 86V FOR COMPETITION USE ONLY"},
                    {"rows.4.load", "280 kg"},
                    {"rows.4.pressure", "1.9 bar"},
                    {"rows.4.tread", "3.5 mm"},
                    {"rows.4.tyre_kind", "cut-slick"},
                    {"rows.5.name", "40"},
                    {"rows.5.size", "205/55 R16 91V"},
                    {"rows.5.load", "400 kg"},
                    {"rows.5.pressure", "2.2 bar"},
                    {"rows.5.tread", "about 5"}}};
  return sheet;
}

}  // namespace

const SheetDescription& field_list_sheet() {
  static const SheetDescription sheet = describe();
  return sheet;
}

}  // namespace treadwater::answer
