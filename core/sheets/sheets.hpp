// The sheets there are, the ways into them, and every source the core can name.
#pragma once

#include "core/sheets/sheet.hpp"

namespace treadwater::sheets {

// Those of one module: some it can answer, and the heads of all there are.
struct Sheets {
  const Sheet* first;
  std::size_t count;
  const Sheet* begin() const { return first; }
  const Sheet* end() const { return first + count; }
  // Every source an answer can name; nothing in a module that has not all sheets, since each answer
  // brings its own.
  Sources (*sources)();
};

Sheets all_sheets();
// Those that a first visit needs: a module with these alone is half as large, and starts sooner.
Sheets first_sheets();

const std::vector<const SheetHead*>& all_heads();
const Sheet* find_sheet(Sheets sheets, std::string_view id);  // null where there is none

// A way in by situation, not by formula: it opens a sheet with some fields set.
struct Way {
  Preset preset;
  std::string_view sheet;
};
const std::vector<Way>& ways();

}  // namespace treadwater::sheets
