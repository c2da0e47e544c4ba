// Tread: against the law of the place, in its winter too, and against advice.
#pragma once

#include <optional>

#include "core/judge/finding.hpp"
#include "core/standard/date.hpp"
#include "core/standard/source.hpp"
#include "core/standard/tread_law.hpp"

namespace treadwater::judge {

struct TyreCase;

// At and under this wet grip falls away fast.
inline constexpr Length low_tread = millimetres(3.0);

// How a tread stands to the depth that is asked of it: clear of it only by more than a gauge's
// error.
enum class Clearance { under, at, clear };
Clearance clearance(Length tread, Length least);

// How it stands to the law of winter, and whether that asks for it today.
struct WinterClearance {
  Length least;
  Clearance tread;
  bool in_season;
};
// Nothing where the law has no winter.
std::optional<WinterClearance> winter_clearance(const standard::TreadLaw& law, Length tread,
                                                bool cross_ply, standard::Date today);

void judge_tread(const TyreCase& tyre, Findings& findings);
// Is it of the law of winter?
bool is_winter_law(Finding finding);
// Of a tread that no law forbids.
void judge_low_tread(Length tread, Findings& findings);

}  // namespace treadwater::judge
