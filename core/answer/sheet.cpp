#include "core/answer/sheet.hpp"

#include <algorithm>

namespace treadwater::answer {

const std::string_view safety_words =
    "An estimate, not a permission. Road law, event rules, the tyre maker and a qualified fitter "
    "come first. If in doubt, go slower or do not go.";

std::string_view Input::text(std::string_view id) const {
  for (auto it = texts_.rbegin(); it != texts_.rend(); ++it)
    if (it->first == id) return it->second;
  return {};
}

const Field& field_of(const SheetDescription& sheet, std::string_view id) {
  for (const Field& field : sheet.fields)
    if (field.id == id) return field;
  return sheet.fields.front();
}

void refuse_unknown_fields(const SheetDescription& sheet, const Input& input, Answer& answer) {
  for (const auto& given : input.all()) {
    const std::string& id = given.first;
    const bool known = id == "today" || std::any_of(sheet.fields.begin(), sheet.fields.end(),
                                                    [&](const Field& f) { return f.id == id; });
    if (known) continue;
    std::string ids;
    for (const Field& field : sheet.fields) add_item(ids, field.id);
    answer.problems.push_back(
        {id, "unknown_field",
         filled("There is no field # on this sheet. Its fields are #.", {in_quotes(id), ids})});
  }
}

std::optional<double> stored_quantity_of(const SheetDescription& sheet, const Input& input,
                                         std::string_view id, Answer& answer) {
  const Field& field = field_of(sheet, id);
  if (!field.required && plain_spaces(input.text(id)).empty()) return std::nullopt;
  const auto read = read_stored(input.text(id), *field.quantity);
  if (read) return *read;
  answer.problems.push_back({std::string(id), std::string(read.error().code), read.error().text});
  return std::nullopt;
}

std::optional<std::string_view> choice_of(const SheetDescription& sheet, const Input& input,
                                          std::string_view id, Answer& answer) {
  const Field& field = field_of(sheet, id);
  const std::string given = plain_spaces(input.text(id));
  const std::string_view wanted = given.empty() ? field.initial : std::string_view(given);
  std::string values;
  for (const Choice& choice : field.choices) {
    if (choice.value == wanted) return choice.value;
    add_item(values, choice.value);
  }
  answer.problems.push_back({std::string(id), "unknown_choice",
                             filled("#: # is not one of the choices. They are #.",
                                    {field.label, in_quotes(given), values})});
  return std::nullopt;
}

void add_limit(Answer& answer, Limit limit) {
  auto place = answer.limits.begin();
  while (place != answer.limits.end() &&
         place->low * place->share_kept <= limit.low * limit.share_kept)
    ++place;
  answer.limits.insert(place, std::move(limit));
}

void add_caution(Answer& answer, Caution caution) {
  auto place = answer.cautions.begin();
  while (place != answer.cautions.end() && place->level >= caution.level) ++place;
  answer.cautions.insert(place, std::move(caution));
}

void add_once(Sources& sources, const Source& source) {
  if (std::none_of(sources.begin(), sources.end(),
                   [&](const Source* s) { return s->id == source.id; }))
    sources.push_back(&source);
}

Sources sources_used(const Answer& answer) {
  Sources used;
  const auto add = [&](const Sources& sources) {
    for (const Source* source : sources) add_once(used, *source);
  };
  for (const Limit& limit : answer.limits) add(limit.sources);
  for (const Caution& caution : answer.cautions) add(caution.sources);
  for (const Figure& figure : answer.figures) add(figure.sources);
  return used;
}

}  // namespace treadwater::answer
