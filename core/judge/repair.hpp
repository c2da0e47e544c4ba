// May the hole in a soft tyre be repaired? By the rules of air/repair.hpp.
#pragma once

#include <optional>

#include "core/air/repair.hpp"
#include "core/judge/puncture.hpp"

namespace treadwater::judge {

struct RepairJudged {
  air::Damage damage;
  air::Repair repair;
};

// Nothing if too little is known; for a hole in the tread that is a finding.
std::optional<RepairJudged> judge_repair(const SoftTyre& tyre, Findings& findings);

}  // namespace treadwater::judge
