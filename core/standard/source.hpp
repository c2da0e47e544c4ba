// Where a figure comes from and how it is known. Every table and formula in the core carries one.
#pragma once

#include <string_view>

#include "core/words/phrase.hpp"

namespace treadwater {

enum class Standing {
  published,        // read in the source itself
  secondary,        // read in another text that quotes the source
  memory,           // known, not seen in print here: provisional, never turns a verdict to "fit"
  common_practice,  // what the trade does, or our choice; no source
};

struct Source {
  std::string_view id;
  std::string_view title;
  std::string_view clause;
  std::string_view year;  // text: "1963", "2005-2019", or empty if the source has none
  Standing standing;
};

constexpr Phrase standing_name(Standing s) {
  switch (s) {
    case Standing::published:
      return Phrase("published");
    case Standing::secondary:
      return Phrase("secondary");
    case Standing::memory:
      return Phrase("memory");
    case Standing::common_practice:
      return Phrase("common practice");
  }
  return Phrase("memory");
}

}  // namespace treadwater
