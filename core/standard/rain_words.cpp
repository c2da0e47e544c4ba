#include "core/standard/rain_words.hpp"

namespace treadwater::standard {
namespace {

constexpr Source uk{"rain-words-uk", "Met Office guide to forecast words",
                    "as printed by a newspaper and by a weather station", "1998",
                    Standing::secondary};
constexpr Source us{"rain-words-us", "American Meteorological Society, Glossary of Meteorology",
                    "entry Rain", "", Standing::published};

constexpr RainWord word(std::string_view id, Phrase label, Phrase choice, RainScale scale,
                        double low, std::optional<double> high, const Source& source) {
  return {id,
          label,
          choice,
          scale,
          millimetres_per_hour(low),
          high ? std::optional(millimetres_per_hour(*high)) : std::nullopt,
          source};
}

constexpr RainWord words[] = {
    word("uk-slight-rain", Phrase("Slight rain"), Phrase("UK: Slight rain (0 to 0.5 mm/h)"),
         RainScale::uk_rain, 0.0, 0.5, uk),
    word("uk-moderate-rain", Phrase("Moderate rain"), Phrase("UK: Moderate rain (0.5 to 4 mm/h)"),
         RainScale::uk_rain, 0.5, 4.0, uk),
    word("uk-heavy-rain", Phrase("Heavy rain"), Phrase("UK: Heavy rain (over 4 mm/h)"),
         RainScale::uk_rain, 4.0, {}, uk),
    word("uk-slight-shower", Phrase("Slight shower"), Phrase("UK: Slight shower (0 to 2 mm/h)"),
         RainScale::uk_showers, 0.0, 2.0, uk),
    word("uk-moderate-shower", Phrase("Moderate shower"),
         Phrase("UK: Moderate shower (2 to 10 mm/h)"), RainScale::uk_showers, 2.0, 10.0, uk),
    word("uk-heavy-shower", Phrase("Heavy shower"), Phrase("UK: Heavy shower (10 to 50 mm/h)"),
         RainScale::uk_showers, 10.0, 50.0, uk),
    word("uk-violent-shower", Phrase("Violent shower"), Phrase("UK: Violent shower (over 50 mm/h)"),
         RainScale::uk_showers, 50.0, {}, uk),
    word("us-light-rain", Phrase("Light rain"), Phrase("US: Light rain (0 to 2.5 mm/h)"),
         RainScale::us, 0.0, 2.5, us),
    word("us-moderate-rain", Phrase("Moderate rain"), Phrase("US: Moderate rain (2.5 to 7.6 mm/h)"),
         RainScale::us, 2.5, 7.6, us),
    word("us-heavy-rain", Phrase("Heavy rain"), Phrase("US: Heavy rain (over 7.6 mm/h)"),
         RainScale::us, 7.6, {}, us),
};

}  // namespace

RainWords rain_words() { return {std::begin(words), std::end(words)}; }

const RainWord* find_rain_word(std::string_view id) {
  for (const RainWord& word : rain_words())
    if (word.id == id) return &word;
  return nullptr;
}

const RainWord* rain_word(RainScale scale, RainIntensity rain) {
  for (const RainWord& word : rain_words())
    if (word.scale == scale && rain > word.low && (!word.high || rain <= *word.high)) return &word;
  return nullptr;
}

}  // namespace treadwater::standard
