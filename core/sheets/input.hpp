// What a person typed into a form, by the path of each field: "load", or "corners.0.load" for the
// load in the first row of the list "corners".
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/quantity/progress.hpp"

namespace treadwater::sheets {

class Input {
 public:
  void set(std::string_view path, std::string text) { texts_.emplace_back(path, std::move(text)); }
  void set_rows(std::string_view list, std::size_t count) { rows_.emplace_back(list, count); }
  // The text of a field; empty where it was not given. The last one wins.
  std::string_view text(std::string_view path) const;
  std::size_t rows(std::string_view list) const;
  const std::vector<std::pair<std::string, std::string>>& all() const { return texts_; }
  const std::vector<std::pair<std::string, std::size_t>>& lists() const { return rows_; }
  // Who is told how far a long answer has come.
  Progress progress = nullptr;

 private:
  std::vector<std::pair<std::string, std::string>> texts_;
  std::vector<std::pair<std::string, std::size_t>> rows_;
};

// The same texts, each found at once however many there are: a list can have thousands of rows. The
// input is to live longer, and to stay as it is.
class TextsByPath {
 public:
  explicit TextsByPath(const Input& input);
  // As Input::text(), of a path that may be given in two parts.
  std::string_view text(std::string_view path, std::string_view rest = {}) const;

 private:
  // Where it stands in `places_`, or would.
  std::size_t place_of(std::string_view path, std::string_view rest) const;

  const std::vector<std::pair<std::string, std::string>>& texts_;
  std::vector<std::uint32_t> places_;  // hash to 1 + index; a power of two long, over half empty
};

// "corners.0.load"
std::string row_path(std::string_view list, std::size_t row, std::string_view field);

}  // namespace treadwater::sheets
