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
  // The text of a field; empty if not given. The last one wins.
  std::string_view text(std::string_view path) const;
  std::size_t rows(std::string_view list) const;
  const std::vector<std::pair<std::string, std::string>>& all() const { return texts_; }
  const std::vector<std::pair<std::string, std::size_t>>& lists() const { return rows_; }
  // Receives the progress of a long answer.
  Progress progress = nullptr;

 private:
  std::vector<std::pair<std::string, std::string>> texts_;
  std::vector<std::pair<std::string, std::size_t>> rows_;
};

// The same texts by row, "corners.0.", or by none: a list can have thousands of rows. The input
// must outlive this and stay unchanged.
class TextsByRow {
 public:
  explicit TextsByRow(const Input& input);
  // As Input::text() of the two joined.
  std::string_view text(std::string_view row, std::string_view field) const;

 private:
  // The row's place in `rows_`, or where it would go.
  std::size_t place_of(std::string_view row) const;

  const std::vector<std::pair<std::string, std::string>>& texts_;
  // Texts by 1 + their index, 0 for none: of each row the last one, by the hash of its path in a
  // table that is a power of two long and over half empty; and of each text the one before it.
  std::vector<std::uint32_t> rows_;
  std::vector<std::uint32_t> before_;
};

// "corners.0.load"
std::string row_path(std::string_view list, std::size_t row, std::string_view field);

}  // namespace treadwater::sheets
