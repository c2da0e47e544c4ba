// What the words of a forecast mean in millimetres an hour.
//
// The scales disagree: "heavy rain" starts at 4 mm/h in a British forecast and at 7.6 mm/h in an
// American one, and showers have other limits than rain. So always give the figure too.
// Range: from just above `low` to `high`; the last word of a scale has no `high`. To be cautious
// with a word, use its high end; if there is none, ask how much.
#pragma once

#include <iterator>
#include <optional>
#include <string_view>

#include "core/quantity/quantity.hpp"
#include "core/standard/source.hpp"
#include "core/words/phrase.hpp"

namespace treadwater::standard {

enum class RainScale { uk_rain, uk_showers, us };

struct RainWord {
  std::string_view id;  // "uk-heavy-shower"
  Phrase label;
  Phrase choice;  // the same with its scale and the figures: "UK: Slight rain (0 to 0.5 mm/h)"
  RainScale scale;
  RainIntensity low;
  std::optional<RainIntensity> high;
  const Source& source;
};

struct RainWords {
  const RainWord* first;
  const RainWord* last;
  const RainWord* begin() const { return first; }
  const RainWord* end() const { return last; }
};

RainWords rain_words();
const RainWord* find_rain_word(std::string_view id);  // null where there is none

// The word of a scale for a rate; null for no rain at all.
const RainWord* rain_word(RainScale scale, RainIntensity rain);

}  // namespace treadwater::standard
