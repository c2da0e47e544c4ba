#include "core/stage/weather.hpp"

#include <algorithm>

namespace treadwater::stage {
namespace {

constexpr Source persistence{
    "stage-persistence", "Treadwater's own weather chain (docs/method.md, Tyres for the stages)",
    "the next stage leans on the last; no outside source", "2026", Standing::common_practice};

constexpr Phrase names[weathers] = {Phrase("dry"),  Phrase("damp"),
                                    Phrase("wet"),  Phrase("standing water"),
                                    Phrase("snow"), Phrase("ice")};

constexpr bool is_wet(std::size_t w) {
  return w == index(Weather::wet) || w == index(Weather::standing_water);
}

}  // namespace

Phrase weather_name(Weather w) { return names[index(w)]; }

Follows weather_follows(const Chances& last, const Chances& next, double persistence_share) {
  double likelier = 0.0;
  for (std::size_t j = 0; j < weathers; ++j) likelier += std::max(0.0, next[j] - last[j]);
  Follows follows;
  for (std::size_t i = 0; i < weathers; ++i) {
    const double stays = next[i] < last[i] ? next[i] / last[i] : 1.0;
    for (std::size_t j = 0; j < weathers; ++j) {
      double tied = next[j];
      if (last[i] > 0.0) {
        tied = i == j ? stays : 0.0;
        if (stays < 1.0 && likelier > 0.0)
          tied += (1.0 - stays) * std::max(0.0, next[j] - last[j]) / likelier;
      }
      follows[i][j] = persistence_share * tied + (1.0 - persistence_share) * next[j];
    }
  }
  return follows;
}

const Source& persistence_source() { return persistence; }

double wet_chance(const Chances& chances) {
  return chances[index(Weather::wet)] + chances[index(Weather::standing_water)];
}

Chances with_wet_chance(const Chances& chances, double wet) {
  const double before = wet_chance(chances);
  Chances changed{};
  for (std::size_t w = 0; w < weathers; ++w) {
    const double side = is_wet(w) ? before : 1.0 - before;
    if (side > 0.0) changed[w] = std::min(1.0, chances[w] / side * (is_wet(w) ? wet : 1.0 - wet));
  }
  if (!(before > 0.0)) changed[index(Weather::wet)] = wet;
  if (!(before < 1.0)) changed[index(Weather::dry)] = 1.0 - wet;
  return changed;
}

}  // namespace treadwater::stage
