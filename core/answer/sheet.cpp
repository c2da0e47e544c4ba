#include "core/answer/sheet.hpp"

#include <algorithm>

namespace treadwater::answer {

const std::string_view safety_words =
    "An estimate, not a permission. Road law, event rules, the tyre maker and a qualified fitter "
    "come first. If in doubt, go slower or do not go.";

std::string_view Input::text(std::string_view path) const {
  for (auto it = texts_.rbegin(); it != texts_.rend(); ++it)
    if (it->first == path) return it->second;
  return {};
}

std::size_t Input::rows(std::string_view list) const {
  for (auto it = rows_.rbegin(); it != rows_.rend(); ++it)
    if (it->first == list) return it->second;
  return 0;
}

std::string row_path(std::string_view list, std::size_t row, std::string_view field) {
  return joined({list, ".", std::to_string(row), ".", field});
}

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

void refuse_unknown_fields(const SheetDescription& sheet, const Input& input, Answer& answer) {
  constexpr std::size_t enough = 50;
  const auto refuse = [&](const std::string& path) {
    if (answer.problems.size() == enough) return;
    std::string ids;
    for (const Field& field : sheet.fields) add_item(ids, field.id);
    answer.problems.push_back(
        {path, "unknown_field",
         filled("There is no field # on this sheet. Its fields are #.", {in_quotes(path), ids})});
  };
  for (const auto& given : input.all()) {
    const Field* field = find_field(sheet, given.first);
    if (given.first != "today" && given.first != "language" &&
        (field == nullptr || field->kind == FieldKind::list))
      refuse(given.first);
  }
  for (const auto& list : input.lists()) {
    const Field* field = find_field(sheet, list.first);
    if (field == nullptr) {
      refuse(list.first);
    } else if (field->kind != FieldKind::list) {
      answer.problems.push_back(
          {list.first, "not_a_value",
           filled("# holds a list; a text or a number would do.", {in_quotes(list.first)})});
    }
  }
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
