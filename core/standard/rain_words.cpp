#include "core/standard/rain_words.hpp"

namespace treadwater::standard {
namespace {

constexpr Source uk{"rain-words-uk", "Met Office guide to forecast words",
                    "as printed by a newspaper and by a weather station", "1998",
                    Standing::secondary};
constexpr Source us{"rain-words-us", "American Meteorological Society, Glossary of Meteorology",
                    "entry Rain", "", Standing::published};

constexpr RainWord word(std::string_view id, std::string_view label, std::string_view choice,
                        RainScale scale, double low, std::optional<double> high,
                        const Source& source) {
  return {id,
          label,
          choice,
          scale,
          millimetres_per_hour(low),
          high ? std::optional(millimetres_per_hour(*high)) : std::nullopt,
          source};
}

constexpr RainWord words[] = {
    word("uk-slight-rain", "Slight rain", "UK: Slight rain (0 to 0.5 mm/h)", RainScale::uk_rain,
         0.0, 0.5, uk),
    word("uk-moderate-rain", "Moderate rain", "UK: Moderate rain (0.5 to 4 mm/h)",
         RainScale::uk_rain, 0.5, 4.0, uk),
    word("uk-heavy-rain", "Heavy rain", "UK: Heavy rain (over 4 mm/h)", RainScale::uk_rain, 4.0, {},
         uk),
    word("uk-slight-shower", "Slight shower", "UK: Slight shower (0 to 2 mm/h)",
         RainScale::uk_showers, 0.0, 2.0, uk),
    word("uk-moderate-shower", "Moderate shower", "UK: Moderate shower (2 to 10 mm/h)",
         RainScale::uk_showers, 2.0, 10.0, uk),
    word("uk-heavy-shower", "Heavy shower", "UK: Heavy shower (10 to 50 mm/h)",
         RainScale::uk_showers, 10.0, 50.0, uk),
    word("uk-violent-shower", "Violent shower", "UK: Violent shower (over 50 mm/h)",
         RainScale::uk_showers, 50.0, {}, uk),
    word("us-light-rain", "Light rain", "US: Light rain (0 to 2.5 mm/h)", RainScale::us, 0.0, 2.5,
         us),
    word("us-moderate-rain", "Moderate rain", "US: Moderate rain (2.5 to 7.6 mm/h)", RainScale::us,
         2.5, 7.6, us),
    word("us-heavy-rain", "Heavy rain", "US: Heavy rain (over 7.6 mm/h)", RainScale::us, 7.6, {},
         us),
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
