// Tread: against the law of the place, in its winter too, and against advice.
#pragma once

#include "core/judge/finding.hpp"
#include "core/standard/source.hpp"

namespace treadwater::judge {

struct TyreCase;

// At and under this wet grip falls away fast.
inline constexpr Length low_tread = millimetres(3.0);

void judge_tread(const TyreCase& tyre, Findings& findings);
// Is it of the law of winter?
bool is_winter_law(Finding finding);
// Of a tread that no law forbids.
void judge_low_tread(Length tread, Findings& findings);

}  // namespace treadwater::judge
