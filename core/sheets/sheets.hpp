// The list of sheets, the ways into them, and every source the core can name.
#pragma once

#include "core/sheets/sheet.hpp"

namespace treadwater::sheets {

// The sheets of one module: those it can answer.
struct Sheets {
  const Sheet* first;
  std::size_t count;
  const Sheet* begin() const { return first; }
  const Sheet* end() const { return first + count; }
  // Every source an answer can name; nothing in a module without all the sheets, since each answer
  // brings its own.
  Sources (*sources)();
};

Sheets all_sheets();
// Those that a first visit needs: a module with these alone is half the size and starts sooner.
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
