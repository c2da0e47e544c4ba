#include "core/sidewall/words.hpp"

namespace treadwater::sidewall {
namespace {

void sort_parts(std::vector<Part>& parts) {
  for (std::size_t i = 1; i < parts.size(); ++i) {
    for (std::size_t k = i; k > 0 && parts[k].begin < parts[k - 1].begin; --k) {
      std::swap(parts[k], parts[k - 1]);
    }
  }
}

}  // namespace

bool width_in_inches(Shape shape) {
  switch (shape) {
    case Shape::flotation:
    case Shape::flotation_slash:
    case Shape::flotation_slashes:
    case Shape::inch:
    case Shape::inch_pointless:
    case Shape::inch_crossed:
    case Shape::inch_pointless_crossed:
    case Shape::inch_fraction:
    case Shape::inch_slash:
    case Shape::outer_in_crossed:
      return true;
    default:
      return false;
  }
}

standard::SpeedSymbol symbol_in_size(char letter) {
  if (letter == 'Z') return standard::SpeedSymbol::ZR;
  if (letter == 'V') return standard::SpeedSymbol::VR;
  const char letters[1] = {letter};
  const auto found = standard::find_speed_symbol(std::string_view(letters, 1));
  return found ? *found : standard::SpeedSymbol::S;
}

bool may_have_two_services(Family family) {
  return family == Family::truck_inch || family == Family::truck_metric ||
         family == Family::commercial;
}

Reading put_into_words(const Text& text, const Tyre& tyre) {
  Reading reading;
  const Gathered gathered{text, tyre, tyre.facts, reading};
  reading.family = family_row(tyre.family).family;
  reading.canonical = canonical(text, tyre, reading.family);
  reading.parts.reserve(12);
  put_values(gathered);
  put_parts(gathered);
  put_sentences(gathered);
  sort_parts(reading.parts);
  return reading;
}

Phrase family_name(Family family) {
  for (std::size_t i = 0; i < family_count; ++i) {
    if (family_row(i).family == family) return family_row(i).name;
  }
  return Phrase("tyre");
}

Phrase construction_name(Construction construction) {
  switch (construction) {
    case Construction::radial:
      return Phrase("radial");
    case Construction::cross_ply:
      return Phrase("cross-ply");
    case Construction::bias_belted:
      return Phrase("bias-belted");
  }
  return Phrase("radial");
}

}  // namespace treadwater::sidewall
