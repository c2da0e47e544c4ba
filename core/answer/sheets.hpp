// The table of sheets, the ways into them, and every source the core can name.
#pragma once

#include "core/answer/sheet.hpp"

namespace treadwater::answer {

struct Sheet {
  const SheetHead& head;
  const SheetDescription& (*describe)();
  Answer (*answer)(const Input&);
  Sources (*sources)();  // every source an answer of this sheet can name
};

struct Sheets {
  const Sheet* first;
  std::size_t count;
  const Sheet* begin() const { return first; }
  const Sheet* end() const { return first + count; }
};

Sheets all_sheets();
// Those that a first visit needs: a module with these alone is half as large, and starts sooner.
Sheets first_sheets();

const Sheet* find_sheet(Sheets sheets, std::string_view id);  // null where there is none

// A way in by situation, not by formula: it opens a sheet with some fields set.
struct Way {
  Preset preset;
  std::string_view sheet;
};
const std::vector<Way>& ways();

// The sources of the sheets, each once.
Sources sources_of(Sheets sheets);

}  // namespace treadwater::answer
