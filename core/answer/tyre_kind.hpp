// Kinds of tyre in trade words, with what each is credited for in water and asked by winter law.
//
// Groove credit: 1 for a moulded tread (the measured rows are road tyres, and no pattern is
// credited beyond them), 0.5 for a hand-cut slick, 0 for a slick. The last two are our choice, with
// caution.
#pragma once

#include <iterator>
#include <string_view>

namespace treadwater::answer {

struct TyreKind {
  std::string_view id;
  std::string_view label;
  double groove_credit;
  bool winter;
  bool competition;  // not for the public road as it stands
};

inline constexpr TyreKind tyre_kinds[] = {
    {"road", "Road tyre", 1.0, false, false},
    {"winter", "Winter tyre", 1.0, true, false},
    {"studded", "Studded winter tyre", 1.0, true, false},
    {"gravel", "Gravel rally tyre", 1.0, false, false},
    {"wet", "Full wet", 1.0, false, true},
    {"cut-slick", "Hand-cut slick, intermediate", 0.5, false, true},
    {"slick", "Slick", 0.0, false, true},
};

constexpr const TyreKind* find_tyre_kind(std::string_view id) {
  for (const TyreKind& kind : tyre_kinds)
    if (kind.id == id) return &kind;
  return nullptr;
}

}  // namespace treadwater::answer
