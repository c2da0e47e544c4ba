// Words for a wet road, and how deep the water is above the tops of its stones.
//
// A word is for what no ruler shows: on an ordinary texture, a film under about 1 mm. It means
// every depth of its range, each as likely. The edges are ours, each set where something printed
// changes (its source says what); the ranges join without overlap. Range: five words. Dry and damp
// have no film to aquaplane on; wet friction is another matter.
#pragma once

#include <string_view>

#include "core/quantity/quantity.hpp"
#include "core/standard/source.hpp"
#include "core/words/phrase.hpp"

namespace treadwater::standard {

enum class Wetness { dry, damp, wet, downpour, standing };  // each wetter than the one before

struct WetnessWord {
  std::string_view id;
  Wetness wetness;
  Phrase label;
  Phrase name;  // within a sentence
  Length shallow;
  Length deep;
  bool film;  // is there one above the stones, to aquaplane on?
  Source source;
};

inline constexpr WetnessWord wetness_words[] = {
    {"dry",
     Wetness::dry,
     Phrase("Dry"),
     Phrase("dry road"),
     {},
     {},
     false,
     {"wetness-dry", "No water on the road", "", "", Standing::common_practice}},
    {"damp",
     Wetness::damp,
     Phrase("Damp, no film"),
     Phrase("damp road"),
     {},
     millimetres(0.1),
     false,
     {"wetness-damp", "Damp: dark, no film above the stones; taken as 0 to 0.1 mm",
      "ours; 4 and 10 mm/h leave no film on a cambered road by the formulas of rain", "2026",
      Standing::common_practice}},
    {"wet",
     Wetness::wet,
     Phrase("Wet"),
     Phrase("wet road"),
     millimetres(0.2),
     millimetres(1.0),
     true,
     {"wetness-wet", "Wet: taken as 0.2 to 1 mm",
      "ours; skid resistance may fall fast from 0.2 mm (Engineering Proceedings 36(1) 18), skid "
      "testers wet to 0.5 to 0.6 mm, 50 mm/h leave 0.9 mm by the formulas of rain",
      "2023", Standing::common_practice}},
    {"downpour",
     Wetness::downpour,
     Phrase("Heavy downpour, spray"),
     Phrase("road in a downpour"),
     millimetres(1.0),
     millimetres(2.0),
     true,
     {"wetness-downpour", "Heavy downpour, shining, spray: taken as 1 to 2 mm",
      "ours; a tyre retailer calls 1 mm a heavy downpour, no treaded tyre was seen afloat under 2 "
      "mm (Gengenbach, as quoted in FHWA-RD-79-31)",
      "1979-2025", Standing::common_practice}},
    {"standing",
     Wetness::standing,
     Phrase("Standing water, ruts"),
     Phrase("standing water"),
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
