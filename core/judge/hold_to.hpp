// The maximum speed: the lowest of all limits after its margin, rounded down to a multiple of five
// in the user's unit.
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

// Nothing if there is no limit.
std::optional<HoldTo> hold_to(const Findings& findings, UnitSystem units);

// Is the intended speed above the maximum, or above the limit that sets it?
void judge_intended_speed(Findings& findings, Speed intended, const HoldTo& hold);

}  // namespace treadwater::judge
