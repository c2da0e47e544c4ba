#include "core/grip/rubber.hpp"

namespace treadwater::grip {
namespace {

// clang-format off
constexpr Rubber kinds[] = {
    {"synthetic", Phrase("Ordinary synthetic"), {1.0, 1.0}, {1.0, 1.0}, celsius(7), celsius(90), false},
    {"natural", Phrase("Natural rubber"), {0.95, 1.05}, {0.85, 0.9}, celsius(-20), celsius(90), false},
    {"high-grip", Phrase("High-grip (high-hysteresis) synthetic"), {0.95, 1.05}, {1.1, 1.25}, celsius(7), celsius(90), false},
    {"soft-stage", Phrase("Soft stage compound"), {1.0, 1.3}, {1.0, 1.25}, celsius(40), celsius(100), true},
    {"soft-race", Phrase("Soft race compound"), {1.0, 1.5}, {0.9, 1.1}, celsius(90), celsius(130), true},
};
// clang-format on

}  // namespace

standard::Rows<Rubber> rubbers() { return {std::begin(kinds), std::end(kinds)}; }

const Rubber* find_rubber(std::string_view id) {
  for (const Rubber& rubber : rubbers())
    if (rubber.id == id) return &rubber;
  return nullptr;
}

Heat heat_of(const Rubber& rubber, std::optional<Temperature> tread) {
  if (!tread) return Heat::unknown;
  if (!(*tread >= rubber.works_from)) return Heat::cold;
  return *tread > rubber.works_to ? Heat::too_hot : Heat::working;
}

Phrase heat_caution(const Rubber& rubber, Heat heat) {
  switch (heat) {
    case Heat::cold:
      return rubber.needs_heat
                 ? Phrase(
                       "These tyres are cold: until they have been driven warm, expect less grip "
                       "than "
                       "from road tyres.")
                 : Phrase(
                       "This rubber stiffens in the cold: expect less grip until it has warmed.");
    case Heat::too_hot:
      return Phrase("The tread is hotter than this rubber likes: it grips less and wears fast.");
    case Heat::unknown:
      return rubber.needs_heat
                 ? Phrase("Nobody knows how warm these tyres are: take them for cold.")
                 : Phrase();
    case Heat::working:
      break;
  }
  return Phrase();
}

}  // namespace treadwater::grip
