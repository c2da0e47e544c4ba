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

std::string row_path(std::string_view list, std::size_t row, std::string_view field) {
  return joined({list, ".", std::to_string(row), ".", field});
}

}  // namespace treadwater::sheets
