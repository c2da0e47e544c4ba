// The log of one tyre, and of two side by side or one behind the other: is it worn out, or when
// will it be?
#pragma once

#include <array>
#include <optional>
#include <vector>

#include "core/car/corner.hpp"
#include "core/judge/finding.hpp"
#include "core/standard/date.hpp"
#include "core/standard/tread_law.hpp"
#include "core/wear/log.hpp"

namespace treadwater::judge {

inline constexpr Phrase another_place("Another");

struct LoggedTyre {
  std::optional<car::Corner> corner{};  // nothing for one elsewhere
  wear::Log log{};
  Phrase name() const { return corner ? car::name_of(*corner) : another_place; }
};

// The depths that a tyre wears down to, first to last: the winter depth if the law requires it of
// any tyre, otherwise that of advice; then the law's.
struct DepthAhead {
  Length depth;
  const Source* source;
  bool by_law;
};
std::array<DepthAhead, 2> depths_ahead(const standard::TreadLaw& law);

// Every log has a reading. Without a law, depth is not judged.
wear::Wear judge_log(const LoggedTyre& tyre, const standard::TreadLaw* law, standard::Date today,
                     Findings& findings);
// Across the axles and from front to back.
void judge_pairs(const std::vector<LoggedTyre>& tyres, Findings& findings);

}  // namespace treadwater::judge
