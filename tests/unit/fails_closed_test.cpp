// Every sheet, every field: a text that the field cannot take is never passed over.
#include <nlohmann/json.hpp>

#include "core/json/contract.hpp"
#include "core/judge/finding.hpp"
#include "tests/support/catch.hpp"

using Json = nlohmann::json;

namespace {

Json ask(const Json& sheet, const Json& input) {
  return Json::parse(treadwater::json::answer(sheet["id"].get<std::string>(), input.dump()));
}

Json example_of(const Json& sheet) {
  Json input = sheet["example"]["input"];
  input["today"] = "2026-11-25";
  return input;
}

// What no field of this kind takes; nothing where any text will do.
std::vector<std::string> no_good_for(const Json& field) {
  const std::string kind = field["kind"];
  if (kind == "quantity" || kind == "number") return {"banana", "nan", "inf", "-1e300", "1e300"};
  if (kind == "text" || kind == "list") return {};
  return {"banana"};
}

// The answer names the field and gives neither a verdict nor a speed.
void check_refused(const Json& sheet, const Json& input, const std::string& path) {
  INFO(sheet["id"] << " with " << path << ": " << input.dump());
  const Json answer = ask(sheet, input);
  bool named = false;
  for (const Json& problem : answer["problems"]) named = named || problem["field"] == path;
  CHECK(named);
  CHECK(answer["ok"] == false);
  CHECK_FALSE(answer.contains("verdict"));
  CHECK_FALSE(answer.contains("hold_to"));
  CHECK_FALSE(answer.contains("no_limit"));
  for (const Json& block : answer["blocks"]) CHECK(block["kind"] != "spoken");
}

}  // namespace

TEST_CASE("what a field cannot take is a problem of that field, in every sheet") {
  const Json description = Json::parse(treadwater::json::describe());
  for (const Json& sheet : description["sheets"])
    for (const Json& field : sheet["fields"])
      for (const std::string& text : no_good_for(field)) {
        Json input = example_of(sheet);
        input[field["id"].get<std::string>()] = text;
        check_refused(sheet, input, field["id"]);
      }
}

TEST_CASE("what a row's field cannot take is a problem of that row, in every sheet") {
  const Json description = Json::parse(treadwater::json::describe());
  for (const Json& sheet : description["sheets"])
    for (const Json& list : sheet["fields"]) {
      // A field with one bad line is still judged: field_list_test.cpp holds it to what it may say.
      if (list["kind"] != "list" || sheet["id"] == "field-list") continue;
      const std::string id = list["id"];
      const std::size_t rows = example_of(sheet)[id].size();
      for (const Json& field : list["fields"])
        for (const std::string& text : no_good_for(field))
          for (const std::size_t row : {std::size_t(0), rows - 1}) {
            Json input = example_of(sheet);
            const std::string part = field["id"];
            input[id][row][part] = text;
            check_refused(sheet, input, id + "." + std::to_string(row) + "." + part);
          }
    }
}

// What is wrong with the speed alone does not stop a car that drives slower.
TEST_CASE("whatever is found of the intended speed, driving slower cures") {
  using treadwater::judge::FindingRow;
  const FindingRow* const all[] = {
#define TREADWATER_FINDING(name, id, level, cure, reason, sentence) \
  &treadwater::judge::finding::row::name,
#include "core/judge/findings.inc"
#undef TREADWATER_FINDING
  };
  int found = 0;
  for (const FindingRow* row : all) {
    const bool of_speed = row->reason.english().find("speed you intend") != std::string_view::npos;
    if (!of_speed) continue;
    INFO(row->id << ": " << row->reason.english());
    ++found;
    CHECK(row->cure == treadwater::judge::Cure::slower);
  }
  CHECK(found > 5);
}
