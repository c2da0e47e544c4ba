#include "core/sheets/input.hpp"

#include "core/quantity/text.hpp"

namespace treadwater::sheets {
namespace {

// "corners.0." of "corners.0.load".
std::string_view row_of(std::string_view path) { return path.substr(0, path.rfind('.') + 1); }

}  // namespace

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

TextsByRow::TextsByRow(const Input& input) : texts_(input.all()) {
  std::size_t size = 16;
  while (size < 2 * texts_.size()) size *= 2;
  rows_.assign(size, 0);
  before_.reserve(texts_.size());
  for (const auto& given : texts_) {
    std::uint32_t& last = rows_[place_of(row_of(given.first))];
    before_.push_back(last);
    last = static_cast<std::uint32_t>(before_.size());
  }
}

std::string_view TextsByRow::text(std::string_view row, std::string_view field) const {
  for (std::uint32_t i = rows_[place_of(row)]; i != 0; i = before_[i - 1]) {
    const auto& [path, text] = texts_[i - 1];
    if (std::string_view(path).substr(row.size()) == field) return text;
  }
  return {};
}

std::size_t TextsByRow::place_of(std::string_view row) const {
  const std::size_t last = rows_.size() - 1;
  std::size_t at = hash_of(row) & last;
  while (rows_[at] != 0 && row_of(texts_[rows_[at] - 1].first) != row) at = (at + 1) & last;
  return at;
}

std::string row_path(std::string_view list, std::size_t row, std::string_view field) {
  return joined({list, ".", std::to_string(row), ".", field});
}

}  // namespace treadwater::sheets
