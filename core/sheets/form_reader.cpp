#include "core/sheets/form_reader.hpp"

#include "core/quantity/text.hpp"
#include "core/sheets/shared_fields.hpp"
#include "core/words/problem.hpp"

namespace treadwater::sheets {
namespace {

std::string joined_path(std::string_view prefix, const AnyField& field) {
  return joined({prefix, field.id});
}

Text date_code_problem(const standard::DateCodeProblem& problem, std::string_view typed,
                       standard::Date today) {
  const Phrase would_do("The last four digits of the DOT line would do: 2319 is week 23 of 2019.");
  const std::string quoted = in_quotes(typed);
  switch (problem.kind) {
    case standard::DateCodeProblem::Kind::no_digits:
      break;
    case standard::DateCodeProblem::Kind::no_such_week:
      return say("Date code: # gives week #, and a year has weeks 01 to 53. #",
                 {quoted, problem.week, would_do});
    case standard::DateCodeProblem::Kind::in_the_future:
      return say(
          "Date code: # is week # of #, which is still to come on #. Check the four digits, and "
          "the date of this device.",
          {quoted, std::to_string(problem.age.week), std::to_string(problem.age.year),
           standard::write_iso_date(today)});
  }
  return say("Date code: # does not end in the three or four digits of a date code. #",
             {quoted, would_do});
}

std::string_view code_of(standard::DateCodeProblem::Kind kind) {
  switch (kind) {
    case standard::DateCodeProblem::Kind::no_digits:
      break;
    case standard::DateCodeProblem::Kind::no_such_week:
      return "no_such_week";
    case standard::DateCodeProblem::Kind::in_the_future:
      return "in_the_future";
  }
  return "not_a_date_code";
}

}  // namespace

FormReader::FormReader(const SheetDescription& sheet, const Input& input)
    : sheet_(sheet), input_(input), texts_(input) {
  refuse_unknown_fields();
  read_units_and_day();
}

FormReader::Row FormReader::row(const ListField& list, std::size_t number) {
  return {*this, joined({list.id, ".", std::to_string(number), "."})};
}

std::string_view FormReader::text_at(std::string_view prefix, const AnyField& field) const {
  return texts_.text(prefix, field.id);
}

bool FormReader::given_at(std::string_view prefix, const AnyField& field) const {
  return !plain_spaces(text_at(prefix, field)).empty();
}

void FormReader::problem_at(std::string_view path, std::string_view code, Text text) {
  problems_.push_back({std::string(path), std::string(code), std::move(text)});
}

void FormReader::missing(const AnyField& field, std::string_view example) {
  problem_at(field.id, "missing", say_missing(field.label, example));
}

std::optional<double> FormReader::stored_quantity(std::string_view prefix,
                                                  const AnyQuantityField& field) {
  const std::string_view typed = text_at(prefix, field);
  if (field.need != required && plain_spaces(typed).empty()) return std::nullopt;
  const auto read = read_stored(typed, field.request);
  if (read) return *read;
  problem_at(joined_path(prefix, field), read.error().code,
             say(read.error(), field.label, field.request));
  return std::nullopt;
}

bool FormReader::takes_at(std::string_view prefix, const AnyQuantityField& field, double stored,
                          std::string written) {
  const QuantityRequest& request = field.request;
  const bool below = stored < request.least;
  if (!below && stored <= request.most) return true;
  ReadProblem problem;
  problem.code = below ? "below_range" : "above_range";
  problem.written = std::move(written);
  problem.number = stored;
  problem_at(joined_path(prefix, field), problem.code, say(problem, field.label, request));
  return false;
}

std::optional<std::string_view> FormReader::choice(std::string_view prefix,
                                                   const AnyChoiceField& field) {
  const std::string said = plain_spaces(text_at(prefix, field));
  const std::vector<Choice> choices = field.choices();
  if (said.empty()) {
    if (!field.open) return choices.front().value;
    if (field.need == required)
      problem_at(joined_path(prefix, field), "missing",
                 say("# is missing: choose one.", {field.label}));
    return std::nullopt;
  }
  std::string values;
  for (const Choice& choice : choices) {
    if (choice.value == said) return choice.value;
    add_item(values, choice.value);
  }
  problem_at(
      joined_path(prefix, field), "unknown_choice",
      say("#: # is not one of the choices. They are #.", {field.label, in_quotes(said), values}));
  return std::nullopt;
}

std::optional<bool> FormReader::read_at(std::string_view prefix, const YesNoField& field) {
  const std::string said = plain_spaces(text_at(prefix, field));
  const std::string_view wanted = said.empty() ? field.initial : std::string_view(said);
  if (wanted == "yes") return true;
  if (wanted == "no") return false;
  if (!wanted.empty())
    problem_at(joined_path(prefix, field), "unknown_choice",
               say("#: # is neither yes nor no.", {field.label, in_quotes(said)}));
  return std::nullopt;
}

std::optional<standard::Date> FormReader::read_at(std::string_view prefix, const DateField& field) {
  const std::string said = plain_spaces(text_at(prefix, field));
  if (said.empty()) {
    if (field.need == required)
      problem_at(joined_path(prefix, field), "missing",
                 say("# is missing. A date like 2026-11-25 would do.", {field.label}));
    return std::nullopt;
  }
  const auto read = standard::read_iso_date(said);
  if (!read)
    problem_at(joined_path(prefix, field), "not_a_date",
               say("#: # is not a date like 2026-11-25.", {field.label, in_quotes(said)}));
  return read;
}

std::optional<sidewall::Reading> FormReader::read_at(std::string_view prefix,
                                                     const SidewallField& field) {
  const std::string_view typed = text_at(prefix, field);
  if (plain_spaces(typed).empty()) {
    if (field.need == required)
      problem_at(joined_path(prefix, field), "missing",
                 say("# is missing. Something like # would do.", {field.label, field.example}));
    return std::nullopt;
  }
  auto reading = sidewall::read(typed);
  if (reading) return std::move(*reading);
  const sidewall::Trouble& trouble = reading.error();
  std::string said = trouble.text;
  if (!trouble.nearest.empty() && said.find(trouble.nearest) == std::string::npos)
    said = sentences({said, say("Did you mean #?", {trouble.nearest})});
  problem_at(joined_path(prefix, field), trouble.code, std::move(said));
  return std::nullopt;
}

std::size_t FormReader::rows(const ListField& list) {
  const std::size_t count = input_.rows(list.id);
  if (count <= list.most_rows) return count;
  problem_at(list.id, "too_many_rows",
             say("#: # rows, and at most # are read.",
                 {list.label, std::to_string(count), std::to_string(list.most_rows)}));
  return 0;
}

std::optional<standard::TyreAge> FormReader::tyre_age_at(
    std::string_view prefix, const TextField& field, const std::optional<sidewall::Reading>& tyre) {
  std::optional<standard::TyreAge> oldest;
  const std::string typed = plain_spaces(text_at(prefix, field));
  for (const std::string& code : {typed, tyre ? tyre->date_code : std::string()}) {
    if (code.empty()) continue;
    const auto age = standard::read_date_code(code, today_);
    if (!age) {
      problem_at(joined_path(prefix, field), code_of(age.error().kind),
                 date_code_problem(age.error(), code, today_));
      return std::nullopt;
    }
    if (!oldest || age->least_years > oldest->least_years) oldest = *age;
  }
  return oldest;
}

std::optional<judge::RoadWater> FormReader::road_water(const QuantityField<Length>& ruler) {
  const auto word = read(fields::wetness);
  const auto depth = read(ruler);
  if (!word || (given(ruler) && !depth)) return std::nullopt;
  judge::RoadWater water;
  if (*word != nullptr) water.word = (*word)->wetness;
  if (depth) water.depth = water::Water::by_ruler(*depth);
  return water;
}

void FormReader::read_units_and_day() {
  const std::size_t before = problems_.size();
  if (const auto system = read(fields::units)) units_ = *system;
  const std::string said = plain_spaces(input_.text("today"));
  const auto read = standard::read_iso_date(said);
  today_ = read ? *read : standard::today_by_the_clock();
  if (!read && !said.empty())
    problem_at("today", "not_a_date",
               say("Today: # is not a date like 2026-11-25.", {in_quotes(said)}));
  knows_units_and_day_ = problems_.size() == before;
}

// Each of the first 50 is a problem that names it. `today` and `language` are always allowed.
void FormReader::refuse_unknown_fields() {
  constexpr std::size_t enough = 50;
  const auto refuse = [&](const std::string& path) {
    if (problems_.size() == enough) return;
    std::string ids;
    for (const Field& field : sheet_.fields) add_item(ids, field.id);
    problem_at(path, "unknown_field",
               say("There is no field # on this sheet. Its fields are #.", {in_quotes(path), ids}));
  };
  for (const auto& given : input_.all()) {
    const Field* field = find_field(sheet_, given.first);
    if (field != nullptr && field->kind == FieldKind::list)
      problem_at(given.first, "not_a_list",
                 say("# is a list: rows of named values would do, and not a text or a number.",
                     {in_quotes(given.first)}));
    else if (field == nullptr && given.first != "today" && given.first != "language")
      refuse(given.first);
  }
  for (const auto& list : input_.lists()) {
    const Field* field = find_field(sheet_, list.first);
    if (field == nullptr)
      refuse(list.first);
    else if (field->kind != FieldKind::list)
      problem_at(list.first, "not_a_value",
                 say("# holds a list; a text or a number would do.", {in_quotes(list.first)}));
  }
}

}  // namespace treadwater::sheets
