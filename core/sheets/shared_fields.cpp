#include "core/sheets/shared_fields.hpp"

namespace treadwater::sheets::fields {

std::vector<Choice> surface_choices() {
  std::vector<Choice> choices;
  for (const auto& row : standard::road_surfaces()) choices.push_back({row.id, row.label});
  return choices;
}

std::vector<Choice> tyre_kind_choices() {
  std::vector<Choice> choices;
  for (const auto& row : standard::tyre_kinds) choices.push_back({row.id, row.label});
  return choices;
}

std::vector<Choice> wetness_choices() {
  std::vector<Choice> choices{{"unsaid", Phrase("Not said")}};
  for (const auto& word : standard::wetness_words) choices.push_back({word.id, word.label});
  return choices;
}

std::vector<Choice> place_choices() {
  std::vector<Choice> choices;
  for (const auto& row : standard::tread_laws()) choices.push_back({row.id, row.place});
  return choices;
}

}  // namespace treadwater::sheets::fields
