// Kinds of tyre in trade words, with each one's credit in water and the winter law's requirements.
// Their grip is in grip/friction.hpp under the same ids; the sets of an event have kinds of their
// own (stage/set_kind.hpp).
//
// Groove credit: 1 for a moulded tread (the measured rows are road tyres, and no pattern is
// credited beyond them), 0.5 for a hand-cut slick, 0 for a slick. The last two are our choice, with
// caution.
#pragma once

#include <iterator>
#include <string_view>

#include "core/words/phrase.hpp"

namespace treadwater::standard {

struct TyreKind {
  std::string_view id;
  Phrase label;
  double groove_credit;
  bool winter;
  bool competition;  // not for the public road as it stands
};

inline constexpr TyreKind tyre_kinds[] = {
    {"road", Phrase("Road tyre"), 1.0, false, false},
    {"winter", Phrase("Winter tyre"), 1.0, true, false},
    {"studded", Phrase("Studded winter tyre"), 1.0, true, false},
    {"gravel", Phrase("Gravel rally tyre"), 1.0, false, false},
    {"wet", Phrase("Full wet"), 1.0, false, true},
    {"cut-slick", Phrase("Hand-cut slick, intermediate"), 0.5, false, true},
    {"slick", Phrase("Slick"), 0.0, false, true},
};

constexpr const TyreKind* find_tyre_kind(std::string_view id) {
  for (const TyreKind& kind : tyre_kinds)
    if (kind.id == id) return &kind;
  return nullptr;
}

}  // namespace treadwater::standard
