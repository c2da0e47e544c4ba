#include "core/json/contract.hpp"

#include "core/json/answering.hpp"
#include "core/json/describing.hpp"
#include "core/json/putting.hpp"
#include "core/json/reading.hpp"
#include "core/quantity/text.hpp"
#include "core/words/catalogue.hpp"
#include "core/words/say.hpp"

namespace treadwater::json {

namespace a = treadwater::sheets;

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

namespace {

constexpr std::string_view version = "0.1.0";

a::Answer refused(std::string_view sheet, std::string_view field, std::string_view code,
                  Text text) {
  a::Answer answer;
  answer.sheet = text_of(sheet);
  answer.problems.push_back({text_of(field), text_of(code), std::move(text)});
  return answer;
}

// A field of a row is given within its list, as the contract says, and never by its path.
void refuse_paths(const a::Sheet& sheet, const FieldReader& reader, a::Answer& answer) {
  for (const std::string& path : reader.paths)
    if (a::find_field(sheet.describe(), path) != nullptr)
      answer.problems.push_back(
          {path, "unknown_field",
           say("There is no field # on this sheet. Give # as a list of rows, each with its named "
               "values.",
               {in_quotes(path), in_quotes(path.substr(0, path.find('.')))})});
}

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
        say("The input is not a JSON object of fields, such as {\"size\": \"205/55 R16 91V\"}."));
  a::Answer answer = sheet->answer(reader.input);
  for (const std::string& field : reader.refused)
    answer.problems.push_back(
        {field, "not_a_value",
         say("# holds what no field takes: a text or a number would do, or for a list, rows of "
             "named values.",
             {in_quotes(field)})});
  refuse_paths(*sheet, reader, answer);
  if (!reader.refused.empty() || !reader.paths.empty()) {
    answer.verdict.reset();
    answer.hold_to.reset();
    answer.no_limit.reset();
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
