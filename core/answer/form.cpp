#include "core/answer/form.hpp"

#include <algorithm>

#include "core/answer/tyre_kind.hpp"
#include "core/quantity/language.hpp"
#include "core/quantity/write.hpp"
#include "core/standard/rain_words.hpp"
#include "core/standard/road_surface.hpp"
#include "core/standard/tread_law.hpp"

namespace treadwater::answer {

Field text_field(std::string_view id, std::string_view label, std::string_view hint, bool required,
                 std::string_view example) {
  Field field;
  field.id = id;
  field.label = label;
  field.hint = hint;
  field.required = required;
  field.example = example;
  return field;
}

Field quantity_field(std::string_view id, std::string_view hint, bool required,
                     const QuantityRequest& request, std::vector<std::string_view> units,
                     std::vector<std::string_view> preferred) {
  Field field = text_field(id, request.label, hint, required, request.example);
  field.kind = FieldKind::quantity;
  field.quantity = request;
  field.units = std::move(units);
  field.preferred = std::move(preferred);
  return field;
}

Field choice_field(std::string_view id, std::string_view label, std::string_view hint,
                   std::vector<Choice> choices) {
  Field field = text_field(id, label, hint, false, choices.front().value);
  field.kind = FieldKind::choice;
  field.initial = choices.front().value;
  field.choices = std::move(choices);
  return field;
}

Field number_field(std::string_view id, std::string_view hint, bool required,
                   const QuantityRequest& request) {
  return quantity_field(id, hint, required, request, {}, {});
}

Field yes_no_field(std::string_view id, std::string_view label, std::string_view hint,
                   std::string_view initial) {
  Field field = text_field(id, label, hint, false, "");
  field.kind = FieldKind::yes_no;
  field.initial = initial;
  return field;
}

Field date_field(std::string_view id, std::string_view label, std::string_view hint,
                 bool required) {
  Field field = text_field(id, label, hint, required, "");
  field.kind = FieldKind::date;
  return field;
}

Field list_field(std::string_view id, std::string_view label, std::string_view hint,
                 std::size_t most_rows, std::vector<Field> fields,
                 std::vector<std::string_view> row_names) {
  Field field = text_field(id, label, hint, false, "");
  field.kind = FieldKind::list;
  field.most_rows = most_rows;
  field.fields = std::move(fields);
  field.row_names = std::move(row_names);
  return field;
}

Field also(Field field, std::string_view names) {
  while (!names.empty()) {
    const std::size_t end = std::min(names.find('|'), names.size());
    field.also.push_back(names.substr(0, end));
    names.remove_prefix(std::min(end + 1, names.size()));
  }
  return field;
}

Field units_field() {
  return choice_field(
      "units", "Units of the answer", "",
      {{"metric", "km/h, bar, mm"}, {"uk", "mph, psi, mm"}, {"us", "mph, psi, 32nds"}});
}

std::vector<Choice> surface_choices() {
  std::vector<Choice> choices;
  for (const auto& surface : standard::road_surfaces())
    choices.push_back({surface.id, surface.label});
  return choices;
}

std::vector<Choice> tyre_kind_choices() {
  std::vector<Choice> choices;
  for (const TyreKind& kind : tyre_kinds) choices.push_back({kind.id, kind.label});
  return choices;
}

std::vector<Choice> forecast_choices() {
  std::vector<Choice> choices = {{"none", "No forecast"}};
  for (const auto& word : standard::rain_words()) choices.push_back({word.id, word.choice});
  return choices;
}

std::vector<Choice> place_choices() {
  std::vector<Choice> choices;
  for (const auto& law : standard::tread_laws()) choices.push_back({law.id, law.place});
  return choices;
}

}  // namespace treadwater::answer
