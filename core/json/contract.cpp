#include "core/json/contract.hpp"

#include <cmath>
#include <iterator>
#include <nlohmann/json.hpp>

#include "core/json/writing.hpp"
#include "core/quantity/text.hpp"
#include "core/words/catalogue.hpp"

namespace treadwater::json {
namespace {

using Parser = nlohmann::json;
namespace a = treadwater::sheets;

constexpr std::string_view version = "0.1.0";

std::string text_of(std::string_view view) { return std::string(view); }

void put_text(Json& object, std::string_view key, std::string_view text) {
  object.put(key, Json(text));
}
// What a form says is a phrase, in the language spoken; an answer's texts are said already. Ids,
// links and sources' titles do not change.
void put_phrase(Json& object, std::string_view key, Phrase phrase) {
  put_text(object, key, spoken(phrase));
}
void put_flag(Json& object, std::string_view key, bool value) {
  object.put(key, Json::flag(value));
}
void put_json(Json& object, std::string_view key, const Json& value) { object.put(key, value); }

// NaN and infinity stop here: what cannot be said is left out.
void put_number(Json& object, std::string_view key, double value) {
  if (std::isfinite(value)) object.put(key, Json(value));
}

// One object for each row.
template <class Rows, class Make>
Json list_of(const Rows& rows, Make make) {
  Json list = Json::array();
  for (const auto& row : rows) list.push_back(make(row));
  return list;
}

Json source_json(const Source& source) {
  Json json;
  put_text(json, "title", source.title);
  put_text(json, "clause", source.clause);
  put_text(json, "year", source.year);
  put_phrase(json, "standing", standing_name(source.standing));
  return json;
}

Json sources_json(const judge::Sources& sources) {
  Json json;
  for (const Source* source : sources) put_json(json, source->id, source_json(*source));
  return json;
}

Json ids_of(const judge::Sources& sources) {
  judge::Sources once;
  for (const Source* source : sources) judge::add_once(once, *source);
  return list_of(once, [](const Source* source) { return Json(source->id); });
}

// What a form is filled with: a quantity with the decimal sign that its reader writes.
std::string written_for(const a::Field* field, std::string_view given) {
  return field != nullptr && field->quantity ? quantity_in_words(given) : text_of(given);
}

// "corners.0.load" is a member of the first row of the list "corners". The rows of a list are given
// one after another.
Json input_json(const a::SheetDescription* sheet, const a::Preset& preset) {
  Json input, rows, row;
  std::string_view list;  // that is being filled, and the number of its row
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

// ---- describe ----

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

// ---- answer ----

const char* level_name(a::Level level, const char* lowest) {
  switch (level) {
    case a::Level::note:
      return lowest;
    case a::Level::care:
      return "care";
    case a::Level::unfit:
      return "unfit";
  }
  return "unfit";
}

Json problem_json(const a::Problem& problem) {
  Json json;
  put_text(json, "field", problem.field);
  put_text(json, "code", problem.code);
  put_text(json, "text", problem.text);
  return json;
}

Json verdict_json(const a::Verdict& verdict) {
  Json json;
  put_text(json, "level", level_name(verdict.level, "fit"));
  put_text(json, "text", verdict.text);
  return json;
}

Json hold_to_json(const a::HoldTo& hold) {
  Json json;
  put_number(json, "kmh", in_kilometres_per_hour(hold.speed));
  put_text(json, "text", hold.text);
  put_text(json, "governed_by", hold.governed_by);
  put_text(json, "why", hold.why);
  return json;
}

Json limit_json(const a::Limit& limit, bool governs) {
  Json json;
  put_text(json, "id", limit.id);
  put_text(json, "label", limit.label);
  put_number(json, "kmh", in_kilometres_per_hour(limit.central));
  put_number(json, "low_kmh", in_kilometres_per_hour(limit.low));
  put_number(json, "high_kmh", in_kilometres_per_hour(limit.high));
  put_text(json, "text", limit.text);
  put_flag(json, "governs", governs);
  put_text(json, "why", limit.why);
  put_json(json, "sources", ids_of(limit.sources));
  return json;
}

Json figure_json(const a::Figure& figure) {
  Json json;
  put_text(json, "id", figure.id);
  put_text(json, "label", figure.label);
  put_number(json, "value", figure.value);
  put_text(json, "unit", figure.unit);
  if (figure.low) put_number(json, "low", *figure.low);
  if (figure.high) put_number(json, "high", *figure.high);
  put_text(json, "text", figure.text);
  put_text(json, "note", figure.note);
  put_json(json, "sources", ids_of(figure.sources));
  return json;
}

Json caution_json(const a::Caution& caution) {
  Json json;
  put_text(json, "id", caution.id);
  put_text(json, "level", level_name(caution.level, "note"));
  put_text(json, "text", caution.text);
  put_json(json, "sources", ids_of(caution.sources));
  return json;
}

Json block_json(std::string_view kind, std::string_view id, std::string_view title,
                std::string_view text) {
  Json json;
  put_text(json, "kind", kind);
  put_text(json, "id", id);
  put_text(json, "title", title);
  put_text(json, "text", text);
  return json;
}

Json box_json(const a::Box& box) {
  Json json;
  put_text(json, "shape", "box");
  put_number(json, "x", box.x);
  put_number(json, "y", box.y);
  put_number(json, "width", box.width);
  put_number(json, "height", box.height);
  put_number(json, "radius", box.radius);
  put_text(json, "role", box.role);
  put_text(json, "label", box.label);
  return json;
}

Json drawing_json(const a::Drawing& drawing) {
  Json json = block_json("drawing", drawing.id, drawing.title, drawing.text);
  put_text(json, "unit", "mm");
  put_number(json, "width", drawing.width);
  put_number(json, "height", drawing.height);
  put_json(json, "shapes", list_of(drawing.boxes, box_json));
  return json;
}

Json marking_json(const a::Marking& marking) {
  Json json = block_json("marking", marking.id, marking.title, marking.text);
  put_json(json, "stretches", list_of(marking.stretches, [](const a::Stretch& stretch) {
             Json one;
             put_text(one, "text", stretch.text);
             put_text(one, "meaning", stretch.meaning);
             return one;
           }));
  return json;
}

Json text_list(const std::vector<Text>& texts) {
  return list_of(texts, [](const Text& text) { return Json(std::string_view(text)); });
}

Json number_list(const std::vector<double>& numbers) {
  return list_of(numbers, [](double number) { return Json(number); });
}

void put_table(Json& json, const a::Table& table) {
  put_json(json, "columns", text_list(table.columns));
  put_json(json, "rows", list_of(table.rows, text_list));
}

Json table_json(const a::Table& table) {
  Json json = block_json("table", table.id, table.title, table.text);
  put_table(json, table);
  if (!table.picked_by.empty()) put_text(json, "picked_by", table.picked_by);
  return json;
}

Json axis_json(const a::Axis& axis) {
  Json json;
  put_text(json, "label", axis.label);
  put_text(json, "unit", axis.unit);
  return json;
}

Json series_json(const a::Series& series) {
  Json json;
  put_text(json, "role", series.role);
  put_text(json, "label", series.label);
  put_json(json, "x", number_list(series.x));
  put_json(json, "y", number_list(series.y));
  if (!series.low.empty()) {
    put_json(json, "low", number_list(series.low));
    put_json(json, "high", number_list(series.high));
  }
  return json;
}

Json mark_json(const a::ChartMark& mark) {
  Json json;
  put_number(json, "x", mark.x);
  put_number(json, "y", mark.y);
  put_text(json, "label", mark.label);
  return json;
}

Json chart_json(const a::Chart& chart) {
  Json json = block_json("chart", chart.id, chart.title, chart.text);
  put_json(json, "x", axis_json(chart.x));
  put_json(json, "y", axis_json(chart.y));
  put_json(json, "series", list_of(chart.series, series_json));
  put_json(json, "marks", list_of(chart.marks, mark_json));
  put_table(json, chart.table);
  return json;
}

Json map_json(const a::Map& map) {
  Json json = block_json("map", map.id, map.title, map.text);
  put_json(json, "x", axis_json(map.x));
  put_json(json, "y", axis_json(map.y));
  put_json(json, "value", axis_json(map.value));
  put_json(json, "xs", number_list(map.xs));
  put_json(json, "ys", number_list(map.ys));
  put_json(json, "values", list_of(map.values, number_list));
  put_json(json, "marks", list_of(map.marks, mark_json));
  return json;
}

Json step_json(const a::Step& step) {
  Json json;
  put_text(json, "label", step.label);
  put_text(json, "text", step.text);
  put_number(json, "share", step.share);
  put_text(json, "level", level_name(step.level, "note"));
  return json;
}

Json timeline_json(const a::Timeline& timeline) {
  Json json = block_json("timeline", timeline.id, timeline.title, timeline.text);
  put_json(json, "steps", list_of(timeline.steps, step_json));
  return json;
}

template <class Rows, class Make>
void add_blocks(Json& blocks, const Rows& rows, Make make) {
  for (const auto& row : rows) blocks.push_back(make(row));
}

Json answer_json(const a::Answer& answer) {
  Json json;
  put_text(json, "sheet", answer.sheet);
  put_flag(json, "ok", answer.ok());
  put_json(json, "problems", list_of(answer.problems, problem_json));
  if (answer.verdict) put_json(json, "verdict", verdict_json(*answer.verdict));
  if (answer.hold_to) put_json(json, "hold_to", hold_to_json(*answer.hold_to));
  put_json(json, "limits", list_of(answer.limits, [&](const a::Limit& limit) {
             return limit_json(limit, &limit == &answer.limits.front());
           }));
  put_json(json, "figures", list_of(answer.figures, figure_json));
  put_json(json, "cautions", list_of(answer.cautions, caution_json));
  Json blocks = list_of(answer.drawings, drawing_json);
  add_blocks(blocks, answer.markings, marking_json);
  add_blocks(blocks, answer.timelines, timeline_json);
  add_blocks(blocks, answer.tables, table_json);
  add_blocks(blocks, answer.spoken,
             [](const a::Spoken& s) { return block_json("spoken", s.id, s.title, s.text); });
  add_blocks(blocks, answer.charts, chart_json);
  add_blocks(blocks, answer.maps, map_json);
  put_json(json, "blocks", blocks);
  put_json(json, "sources", sources_json(a::sources_used(answer)));
  put_phrase(json, "safety", a::safety_words);
  return json;
}

// ---- input ----

a::Answer refused(std::string_view sheet, std::string_view field, std::string_view code,
                  std::string text) {
  a::Answer answer;
  answer.sheet = text_of(sheet);
  answer.problems.push_back({text_of(field), text_of(code), std::move(text)});
  return answer;
}

// Takes a JSON object straight into an Input, each value as the text a person would have typed: no
// document is built. A field holds a value, or a list of rows, each an object of values; anything
// else is a problem that names the field.
class FieldReader {
 public:
  using number_integer_t = Parser::number_integer_t;
  using number_unsigned_t = Parser::number_unsigned_t;
  using number_float_t = Parser::number_float_t;
  using string_t = Parser::string_t;
  using binary_t = Parser::binary_t;

  a::Input input;
  std::vector<std::string> refused;  // fields that hold what no field takes
  bool is_object = false;

  bool read(std::string_view text) {
    is_object = Parser::sax_parse(text, this) && is_object;
    return is_object;
  }

  bool null() { return value(""); }
  bool boolean(bool yes) { return value(yes ? "yes" : "no"); }
  bool number_integer(number_integer_t number) { return value(std::to_string(number)); }
  bool number_unsigned(number_unsigned_t number) { return value(std::to_string(number)); }
  bool number_float(number_float_t, const string_t& as_written) { return value(as_written); }
  bool string(string_t& text) { return value(text); }
  bool binary(binary_t&) { return false; }
  bool key(string_t& name) {
    if (depth_ == field_depth) field_ = name;
    if (depth_ == row_depth) row_field_ = name;
    return true;
  }
  bool start_object(std::size_t) {
    if (depth_ == 0)
      is_object = true;
    else if (depth_ != list_depth)
      refuse();
    return enter();
  }
  bool start_array(std::size_t) {
    if (depth_ == field_depth)
      rows_ = 0;
    else
      refuse();
    return enter();
  }
  bool end_object() {
    if (depth_ == row_depth) ++rows_;
    return leave();
  }
  bool end_array() {
    if (depth_ == list_depth) input.set_rows(field_, rows_);
    return leave();
  }
  template <class Error>
  bool parse_error(std::size_t, const std::string&, const Error&) {
    return false;
  }

 private:
  // How many objects and lists are open where a field, a list's row and a row's field stand.
  static constexpr int field_depth = 1;
  static constexpr int list_depth = 2;
  static constexpr int row_depth = 3;

  bool value(std::string text) {
    if (depth_ == field_depth) input.set(field_, std::move(text));
    if (depth_ == list_depth) refuse();
    if (depth_ == row_depth) input.set(a::row_path(field_, rows_, row_field_), std::move(text));
    return depth_ > 0;  // a bare value is no object
  }
  void refuse() {
    if (refused.empty() || refused.back() != field_) refused.push_back(field_);
  }
  bool enter() {
    ++depth_;
    return is_object;
  }
  bool leave() {
    --depth_;
    return true;
  }

  std::string field_;
  std::string row_field_;
  std::size_t rows_ = 0;
  int depth_ = 0;
};

a::Answer answer_of(a::Sheets sheets, const a::Sheet* sheet, std::string_view sheet_id,
                    std::size_t size, const FieldReader& reader) {
  if (sheet == nullptr) {
    std::string ids;
    for (const a::Sheet& s : sheets) add_item(ids, s.head.id);
    return refused(in_quotes(sheet_id), "sheet", "unknown_sheet",
                   say("There is no sheet #. There is: #.", {in_quotes(sheet_id), ids}));
  }
  const std::size_t longest_input = sheet->head.longest_input;
  if (size > longest_input)
    return refused(sheet_id, "input", "too_long",
                   say("The input is # bytes long; at most # are read.",
                       {std::to_string(size), std::to_string(longest_input)}));
  if (!reader.is_object)
    return refused(
        sheet_id, "input", "not_an_object",
        "The input is not a JSON object of fields, such as {\"size\": \"205/55 R16 91V\"}.");
  a::Answer answer = sheet->answer(reader.input);
  for (const std::string& field : reader.refused)
    answer.problems.push_back(
        {field, "not_a_value",
         say("# holds what no field takes: a text or a number would do, or for a list, rows of "
             "named values.",
             {in_quotes(field)})});
  if (!reader.refused.empty()) {
    answer.verdict.reset();
    answer.hold_to.reset();
    answer.spoken.clear();
  }
  return answer;
}

}  // namespace

bool learn(std::string_view language, std::string_view catalogue) {
  FieldReader reader;
  if (!reader.read(catalogue)) return false;
  treadwater::learn(language, reader.input.all());
  return true;
}

std::string describe(a::Sheets sheets, std::string_view language) {
  const Speaking speaking(language);
  Json json;
  put_text(json, "version", version);
  put_text(json, "name", "Treadwater");
  put_phrase(json, "safety", a::safety_words);
  put_json(json, "ways", list_of(a::ways(), way_json));
  put_json(json, "sheets", list_of(a::all_heads(), [&](const a::SheetHead* head) {
             return sheet_json(sheets, *head);
           }));
  put_json(json, "sources", sources_json(sheets.sources()));
  return json.text();
}

std::string answer(a::Sheets sheets, std::string_view sheet, std::string_view input,
                   Progress progress) {
  FieldReader reader;
  reader.input.progress = progress;
  const a::Sheet* asked = a::find_sheet(sheets, sheet);
  if (asked != nullptr && input.size() <= asked->head.longest_input) reader.read(input);
  const Speaking speaking(reader.input.text("language"));
  return answer_json(answer_of(sheets, asked, sheet, input.size(), reader)).text();
}

std::string describe(std::string_view language) { return describe(a::all_sheets(), language); }

std::string answer(std::string_view sheet, std::string_view input) {
  return answer(a::all_sheets(), sheet, input);
}

}  // namespace treadwater::json
