#include "core/json/describing.hpp"

#include <iterator>

#include "core/json/putting.hpp"
#include "core/words/say.hpp"

namespace treadwater::json {
namespace {

namespace a = treadwater::sheets;

// The values in a form: a quantity with the reader's decimal sign.
std::string written_for(const a::Field* field, std::string_view given) {
  return field != nullptr && field->quantity ? quantity_in_words(given) : text_of(given);
}

// "corners.0.load" is a member of the first row of the list "corners". The rows of a list come one
// after another.
Json input_json(const a::SheetDescription* sheet, const a::Preset& preset) {
  Json input, rows, row;
  std::string_view list;  // being filled, and the number of its row
  std::string_view number;
  const auto close_row = [&] {
    if (!number.empty()) rows.push_back(row);
    row = Json();
    number = {};
  };
  const auto close_list = [&] {
    close_row();
    if (!list.empty()) put_json(input, list, rows);
    rows = Json::array();
    list = {};
  };
  for (const auto& given : preset.input) {
    const std::string_view path = given.first;
    const std::string value =
        written_for(sheet != nullptr ? a::find_field(*sheet, path) : nullptr, given.second);
    const std::size_t dot = path.find('.');
    if (path.substr(0, dot) != list) close_list();
    if (dot == std::string_view::npos) {
      put_text(input, path, value);
      continue;
    }
    list = path.substr(0, dot);
    const std::size_t last = path.rfind('.');
    const std::string_view now = path.substr(dot + 1, last - dot - 1);
    if (now != number) close_row();
    number = now;
    put_text(row, path.substr(last + 1), value);
  }
  close_list();
  return input;
}

Json names_json(const std::vector<std::string_view>& names) {
  return list_of(names, [](std::string_view name) { return Json(name); });
}

const char* dimension_name(Dimension d) {
  switch (d) {
    case Dimension::pressure:
      return "pressure";
    case Dimension::mass:
      return "mass";
    case Dimension::length:
      return "length";
    case Dimension::speed:
      return "speed";
    case Dimension::temperature:
      return "temperature";
    case Dimension::force:
      return "force";
    case Dimension::rain:
      return "rain";
    case Dimension::time:
      return "time";
    case Dimension::number:
      break;
  }
  return "number";
}

const char* kind_name(const a::Field& field) {
  switch (field.kind) {
    case a::FieldKind::text:
      return "text";
    case a::FieldKind::quantity:
      return field.quantity->dimension == Dimension::number ? "number" : "quantity";
    case a::FieldKind::choice:
      return "choice";
    case a::FieldKind::yes_no:
      return "yes-no";
    case a::FieldKind::date:
      return "date";
    case a::FieldKind::list:
      return "list";
  }
  return "text";
}

Json field_json(const a::Field& field) {
  Json json;
  put_text(json, "id", field.id);
  put_phrase(json, "label", field.label);
  put_phrase(json, "hint", field.hint);
  put_text(json, "kind", kind_name(field));
  put_flag(json, "required", field.required);
  put_text(json, "default", written_for(&field, field.initial));
  put_text(json, "example", written_for(&field, field.example));
  if (field.quantity) {
    put_text(json, "dimension", dimension_name(field.quantity->dimension));
    put_text(json, "min", quantity_in_words(field.quantity->least_text));
    put_text(json, "max", quantity_in_words(field.quantity->most_text));
    put_json(json, "units", names_json(field.units));
    const char* systems[] = {"metric", "uk", "us"};
    Json preferred;
    for (std::size_t i = 0; i < field.preferred.size() && i < std::size(systems); ++i)
      put_text(preferred, systems[i], field.preferred[i]);
    if (!preferred.empty()) put_json(json, "preferred", preferred);
  }
  if (field.kind == a::FieldKind::choice)
    put_json(json, "choices", list_of(field.choices, [](const a::Choice& choice) {
               Json one;
               put_text(one, "value", choice.value);
               put_phrase(one, "label", choice.label);
               return one;
             }));
  if (field.kind == a::FieldKind::list) {
    put_json(json, "fields", list_of(field.fields, field_json));
    put_number(json, "most", static_cast<double>(field.most_rows));
  }
  if (!field.also.empty()) put_json(json, "also", names_json(field.also));
  if (!field.row_names.empty())
    put_json(json, "row_names",
             list_of(field.row_names, [](Phrase name) { return Json(spoken(name)); }));
  return json;
}

}  // namespace

Json sheet_json(a::Sheets sheets, const a::SheetHead& head) {
  Json json;
  put_text(json, "id", head.id);
  put_phrase(json, "title", head.title);
  put_phrase(json, "purpose", head.purpose);
  if (head.long_work) put_flag(json, "long", true);
  const a::Sheet* here = a::find_sheet(sheets, head.id);
  if (here == nullptr) {
    put_json(json, "fields", Json::array());
    put_flag(json, "elsewhere", true);
    return json;
  }
  const a::SheetDescription& sheet = here->describe();
  put_json(json, "fields", list_of(sheet.fields, field_json));
  Json example;
  put_phrase(example, "title", sheet.example.title);
  put_json(example, "input", input_json(&sheet, sheet.example));
  put_json(json, "example", example);
  return json;
}

Json way_json(const a::Way& way) {
  Json json;
  put_text(json, "id", way.preset.id);
  put_phrase(json, "title", way.preset.title);
  put_phrase(json, "text", way.preset.text);
  put_text(json, "sheet", way.sheet);
  put_json(json, "input", input_json(nullptr, way.preset));
  return json;
}

}  // namespace treadwater::json
