#include "core/sheets/field.hpp"

#include <algorithm>

namespace treadwater::sheets {
namespace {

Field described(const AnyField& field, FieldKind kind) {
  Field out;
  out.id = field.id;
  out.label = field.label;
  out.hint = field.hint;
  out.required = field.need == required;
  out.kind = kind;
  return out;
}

}  // namespace

void not_a_bound() {}

const Field* find_field(const SheetDescription& sheet, std::string_view path) {
  const std::size_t dot = path.find('.');
  const std::vector<Field>* fields = &sheet.fields;
  if (dot != std::string_view::npos) {  // a list's name and a row's number before the field's own
    const Field* list = find_field(sheet, path.substr(0, dot));
    if (list == nullptr) return nullptr;
    fields = &list->fields;
    path.remove_prefix(path.rfind('.') + 1);
  }
  for (const Field& field : *fields)
    if (field.id == path) return &field;
  return nullptr;
}

Field describe(const TextField& field) {
  Field out = described(field, FieldKind::text);
  out.example = field.example;
  return out;
}

Field describe(const AnyQuantityField& field) {
  Field out = described(field, FieldKind::quantity);
  out.example = field.request.example;
  out.quantity = field.request;
  for (std::string_view unit : field.units.offered)
    if (!unit.empty()) out.units.push_back(unit);
  for (std::string_view unit : field.units.preferred)
    if (!unit.empty()) out.preferred.push_back(unit);
  return out;
}

Field describe(const AnyChoiceField& field) {
  Field out = described(field, FieldKind::choice);
  out.choices = field.choices();
  out.example = out.choices.front().value;
  if (!field.open) out.initial = out.choices.front().value;
  return out;
}

Field describe(const YesNoField& field) {
  Field out = described(field, FieldKind::yes_no);
  out.initial = field.initial;
  return out;
}

Field describe(const DateField& field) { return described(field, FieldKind::date); }

Field describe(const ListField& field, std::vector<Field> fields, std::vector<Phrase> row_names) {
  Field out = described(field, FieldKind::list);
  out.most_rows = field.most_rows;
  out.fields = std::move(fields);
  out.row_names = std::move(row_names);
  return out;
}

Field also(Field field, std::string_view names) {
  while (!names.empty()) {
    const std::size_t end = std::min(names.find('|'), names.size());
    field.also.push_back(names.substr(0, end));
    names.remove_prefix(std::min(end + 1, names.size()));
  }
  return field;
}

}  // namespace treadwater::sheets
