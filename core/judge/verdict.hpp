// The verdict on all that was found: the worst level, and the findings that are its reasons.
#pragma once

#include <optional>
#include <vector>

#include "core/judge/finding.hpp"
#include "core/judge/hold_to.hpp"

namespace treadwater::judge {

struct Verdict {
  Level level = Level::note;        // a note reads "fit"
  std::vector<const Found*> why{};  // at most three of the findings given
};

// Anything that may not be driven at all is not fit, however small the fault.
Verdict verdict(const Findings& findings, const std::optional<HoldTo>& hold);

}  // namespace treadwater::judge
