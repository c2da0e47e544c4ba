// The description of the form of the sheet `stage-tyres`, and its example.
#include "core/sheets/sheet.hpp"
#include "core/sheets/stage_tyres/fields.hpp"

namespace treadwater::sheets::stage_tyres {

extern const SheetHead head;
const SheetHead head{
    "stage-tyres", Phrase("Tyres for the stages"),
    Phrase("Which set goes on now, and at each halt if it is then dry, damp or wet? What does that "
           "cost, and what would change it?"),
    true};

namespace {

std::vector<Field> of_stage() {
  using sheets::describe;
  std::vector<Field> fields{also(describe(stage_name), column::name),
                            also(describe(length), column::length)};
  for (const NumberField& chance : chances) fields.push_back(describe(chance));
  for (Field field : {describe(halt), describe(gravel), describe(roughness), describe(abrasion),
                      describe(average), describe(air), also(describe(water), column::water)})
    fields.push_back(std::move(field));
  return fields;
}

std::vector<Field> of_set() {
  using sheets::describe;
  std::vector<Field> fields{also(describe(kind), "Type|Tyre|Genre|Art|Tyyppi"),
                            describe(mark),
                            describe(how_many),
                            also(describe(tread), column::tread),
                            describe(used),
                            describe(life)};
  for (const NumberField& one : slower) fields.push_back(describe(one));
  fields.push_back(describe(coolest));
  fields.push_back(describe(hottest));
  return fields;
}

std::vector<Field> of_car() {
  using sheets::describe;
  return {describe(car_name), also(describe(size), column::size),
          also(describe(load), column::load), also(describe(pressure), column::pressure)};
}

Preset example() {
  return {
      "example",
      Phrase("An invented case: the Saltmarsh Club's day of five tarmac stages, showers about"),
      Phrase(
          "Soft stage tyres, cut slicks and full wets in the van; one service at noon; two small "
          "cars."),
      {{"drive", "rear"},
       {"persistence", "60"},
       {"stages.0.name", "Long Meadow"},
       {"stages.0.length", "9 km"},
       {"stages.0.dry", "60"},
       {"stages.0.damp", "30"},
       {"stages.0.wet", "10"},
       {"stages.0.air", "8 °C"},
       {"stages.0.halt", "none"},
       {"stages.1.name", "Mill Lane"},
       {"stages.1.length", "7 km"},
       {"stages.1.dry", "50"},
       {"stages.1.damp", "30"},
       {"stages.1.wet", "20"},
       {"stages.1.air", "9 °C"},
       {"stages.1.halt", "service"},
       {"stages.2.name", "Long Meadow again"},
       {"stages.2.length", "9 km"},
       {"stages.2.dry", "40"},
       {"stages.2.damp", "20"},
       {"stages.2.wet", "30"},
       {"stages.2.standing", "10"},
       {"stages.2.air", "11 °C"},
       {"stages.2.water", "4 mm"},
       {"stages.2.halt", "none"},
       {"stages.3.name", "Mill Lane again"},
       {"stages.3.length", "7 km"},
       {"stages.3.dry", "40"},
       {"stages.3.damp", "20"},
       {"stages.3.wet", "40"},
       {"stages.3.air", "10 °C"},
       {"stages.3.halt", "tyre_zone"},
       {"stages.4.name", "Quarry"},
       {"stages.4.length", "12 km"},
       {"stages.4.dry", "30"},
       {"stages.4.damp", "20"},
       {"stages.4.wet", "50"},
       {"stages.4.air", "7 °C"},
       {"sets.0.kind", "soft"},
       {"sets.0.count", "2"},
       {"sets.1.kind", "cut-slick"},
       {"sets.2.kind", "wet"},
       {"cars.0.name", "Car 7"},
       {"cars.0.size", "185/60 R14 82H"},
       {"cars.0.load", "290 kg"},
       {"cars.0.pressure", "1.9 bar"},
       {"cars.1.name", "Car 12"},
       {"cars.1.size", "165/70 R13 79T"},
       {"cars.1.load", "240 kg"},
       {"cars.1.pressure", "1.7 bar"}}};
}

}  // namespace

const SheetDescription& describe() {
  static const SheetDescription sheet{
      head,
      {sheets::describe(fields::units), sheets::describe(stages, of_stage()),
       sheets::describe(sets, of_set()), sheets::describe(cars, of_car()),
       sheets::describe(attitude), sheets::describe(drive), sheets::describe(persistence),
       sheets::describe(most_sets), sheets::describe(least_tread), sheets::describe(grooves),
       sheets::describe(moulded_only), sheets::describe(no_studs), sheets::describe(road_sections)},
      example()};
  return sheet;
}

}  // namespace treadwater::sheets::stage_tyres
