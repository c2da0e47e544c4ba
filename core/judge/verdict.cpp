#include "core/judge/verdict.hpp"

#include <algorithm>

namespace treadwater::judge {

Verdict verdict(const Findings& findings, const std::optional<HoldTo>& hold) {
  constexpr std::size_t most_reasons = 3;
  Verdict verdict;
  for (const Found& one : findings.found) verdict.level = std::max(verdict.level, one.level());
  for (const Found& one : findings.found)
    if (one.level() == verdict.level && has_reason(one.what) && verdict.why.size() < most_reasons)
      verdict.why.push_back(&one);
  if (verdict.level == Level::care && hold && hold->stands_still()) verdict.level = Level::unfit;
  return verdict;
}

}  // namespace treadwater::judge
