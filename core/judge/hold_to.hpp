// The maximum speed: the lowest of all limits after its margin, rounded down to a multiple of five
// in the user's unit.
//
// There is none if something that every speed rests on is not known, or if no limit is below the
// highest of the roads we write for: a limit that does not apply is not a speed to give.
#pragma once

#include <optional>

#include "core/judge/finding.hpp"
#include "core/quantity/write.hpp"

namespace treadwater::judge {

struct HoldTo {
  Speed speed;
  Limit governing;

  bool stands_still() const { return !(speed > Speed()); }
  bool in_water() const;  // is it set by water?
};

std::optional<HoldTo> hold_to(const Findings& findings, UnitSystem units);

// Nothing limits it below the road's own limit, as far as is known. Its own limit is the lowest of
// those above, if there is one.
struct NoLimit {
  std::optional<HoldTo> own{};
};
std::optional<NoLimit> no_limit(const Findings& findings, UnitSystem units);

// Is the intended speed above the maximum, or above the limit that sets it?
void judge_intended_speed(Findings& findings, Speed intended, UnitSystem units);

}  // namespace treadwater::judge
