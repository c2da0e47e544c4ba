// Where a figure comes from and how it is known. Every table and formula in the core carries one.
#pragma once

#include <string_view>

namespace treadwater {

enum class Standing {
  published,        // read in the source itself
  secondary,        // read in another text that quotes the source
  memory,           // known, not seen in print here: provisional, never turns a verdict to "fit"
  common_practice,  // what the trade does or what we chose; no source
};

struct Source {
  std::string_view id;
  std::string_view title;
  std::string_view clause;
  std::string_view year;  // text: "1963", "2005-2019", or empty where the source has none
  Standing standing;
};

constexpr std::string_view standing_name(Standing s) {
  switch (s) {
    case Standing::published:
      return "published";
    case Standing::secondary:
      return "secondary";
    case Standing::memory:
      return "memory";
    case Standing::common_practice:
      return "common practice";
  }
  return "memory";
}

}  // namespace treadwater
