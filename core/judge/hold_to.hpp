// The speed to hold to: of all limits the lowest after its margin, rounded down to five in the
// person's unit.
#pragma once

#include <optional>

#include "core/judge/finding.hpp"
#include "core/quantity/write.hpp"

namespace treadwater::judge {

struct HoldTo {
  Speed speed;
  Limit governing;

  bool stands_still() const { return !(speed > Speed()); }
  bool in_water() const;  // is it water that governs?
};

// Nothing where there is no limit.
std::optional<HoldTo> hold_to(const Findings& findings, UnitSystem units);

// Is the speed somebody intends above what was held to, or past what it goes by?
void judge_intended_speed(Findings& findings, Speed intended, const HoldTo& hold);

}  // namespace treadwater::judge
