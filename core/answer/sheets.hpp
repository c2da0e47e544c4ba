// The table of sheets, the ways into them, and every source the core can name.
#pragma once

#include "core/answer/sheet.hpp"

namespace treadwater::answer {

struct Sheet {
  const SheetDescription& (*describe)();
  Answer (*answer)(const Input&);
  Sources (*sources)();  // every source an answer of this sheet can name
};

const std::vector<Sheet>& sheets();
const Sheet* find_sheet(std::string_view id);  // null where there is none

// A way in by situation, not by formula: it opens a sheet with some fields set.
struct Way {
  Preset preset;
  std::string_view sheet;
};
const std::vector<Way>& ways();

// The sources of all sheets, each once.
Sources all_sources();

}  // namespace treadwater::answer
