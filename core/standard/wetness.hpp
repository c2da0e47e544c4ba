// Words for a wet road, and how deep the water stands above the tops of its stones.
//
// A word is said where no ruler can tell: on an ordinary texture one shows no film under about 1
// mm. It stands for every depth of its range alike. The edges are ours, each set where something
// printed changes (its source says what); the ranges join, and none overlaps another. Range: five
// words. Dry and damp have no film to float on; wet friction is another matter.
#pragma once

#include <string_view>

#include "core/quantity/quantity.hpp"
#include "core/standard/source.hpp"

namespace treadwater::standard {

enum class Wetness { dry, damp, wet, downpour, standing };  // each wetter than the one before

struct WetnessWord {
  std::string_view id;
  Wetness wetness;
  Length shallow;
  Length deep;
  bool film;  // does it stand above the stones, to float on?
  Source source;
};

inline constexpr WetnessWord wetness_words[] = {
    {"dry",
     Wetness::dry,
     {},
     {},
     false,
     {"wetness-dry", "No water on the road", "", "", Standing::common_practice}},
    {"damp",
     Wetness::damp,
     {},
     millimetres(0.1),
     false,
     {"wetness-damp", "Damp: dark, no film above the stones; taken as 0 to 0.1 mm",
      "ours; 4 and 10 mm/h leave no film on a cambered road by the formulas of rain", "2026",
      Standing::common_practice}},
    {"wet",
     Wetness::wet,
     millimetres(0.2),
     millimetres(1.0),
     true,
     {"wetness-wet", "Wet: taken as 0.2 to 1 mm",
      "ours; skid resistance may fall fast from 0.2 mm (Engineering Proceedings 36(1) 18), skid "
      "testers wet to 0.5 to 0.6 mm, 50 mm/h leave 0.9 mm by the formulas of rain",
      "2023", Standing::common_practice}},
    {"downpour",
     Wetness::downpour,
     millimetres(1.0),
     millimetres(2.0),
     true,
     {"wetness-downpour", "Heavy downpour, shining, spray: taken as 1 to 2 mm",
      "ours; a tyre retailer calls 1 mm a heavy downpour, no treaded tyre was seen afloat under 2 "
      "mm (Gengenbach, as quoted in FHWA-RD-79-31)",
      "1979-2025", Standing::common_practice}},
    {"standing",
     Wetness::standing,
     millimetres(2.0),
     millimetres(4.0),
     true,
     {"wetness-standing", "Standing water, ruts and puddles: taken as 2 to 4 mm",
      "ours; aircraft rules call more than 3 mm standing water, a free-rolling wheel spun down in "
      "more than 4 mm only (RRL LR 355)",
      "1970-2025", Standing::common_practice}},
};

constexpr const WetnessWord& wetness_word(Wetness wetness) {
  return wetness_words[static_cast<int>(wetness)];
}

constexpr const WetnessWord* find_wetness(std::string_view id) {  // null where there is none
  for (const WetnessWord& word : wetness_words)
    if (word.id == id) return &word;
  return nullptr;
}

}  // namespace treadwater::standard
