// Tread: against local law, in winter too, and against advice.
#pragma once

#include <optional>

#include "core/judge/finding.hpp"
#include "core/standard/date.hpp"
#include "core/standard/source.hpp"
#include "core/standard/tread_law.hpp"

namespace treadwater::judge {

struct TyreCase;

// At and below this, wet grip falls off fast.
inline constexpr Length low_tread = millimetres(3.0);

// How a tread compares with the depth required: clear only if above it by more than a gauge's
// error.
enum class Clearance { under, at, clear };
Clearance clearance(Length tread, Length least);

// How it compares with the winter law, and whether that applies today.
struct WinterClearance {
  Length least;
  Clearance tread;
  bool in_season;
};
// Nothing if the law has no winter rule.
std::optional<WinterClearance> winter_clearance(const standard::TreadLaw& law, Length tread,
                                                bool cross_ply, standard::Date today);

void judge_tread(const TyreCase& tyre, Findings& findings);
// Is it a finding of the winter law?
bool is_winter_law(Finding finding);
// For a tread that no law forbids.
void judge_low_tread(Length tread, Findings& findings);

}  // namespace treadwater::judge
