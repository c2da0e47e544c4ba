#include "core/sheets/input.hpp"

#include "core/quantity/text.hpp"

namespace treadwater::sheets {

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

TextsByPath::TextsByPath(const Input& input) : texts_(input.all()) {
  std::size_t size = 16;
  while (size < 2 * texts_.size()) size *= 2;
  places_.assign(size, 0);
  for (std::size_t i = 0; i < texts_.size(); ++i)
    places_[place_of(texts_[i].first, {})] = static_cast<std::uint32_t>(i + 1);
}

std::string_view TextsByPath::text(std::string_view path, std::string_view rest) const {
  const std::uint32_t found = places_[place_of(path, rest)];
  return found == 0 ? std::string_view() : std::string_view(texts_[found - 1].second);
}

std::size_t TextsByPath::place_of(std::string_view path, std::string_view rest) const {
  const auto is_it = [&](std::string_view whole) {
    return whole.size() == path.size() + rest.size() && whole.substr(0, path.size()) == path &&
           whole.substr(path.size()) == rest;
  };
  const std::size_t last = places_.size() - 1;
  std::size_t at = hash_of(rest, hash_of(path)) & last;
  while (places_[at] != 0 && !is_it(texts_[places_[at] - 1].first)) at = (at + 1) & last;
  return at;
}

std::string row_path(std::string_view list, std::size_t row, std::string_view field) {
  return joined({list, ".", std::to_string(row), ".", field});
}

}  // namespace treadwater::sheets
