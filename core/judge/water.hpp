// Water: does this tyre float in it, and may it be entered at all?
#pragma once

#include <optional>

#include "core/judge/finding.hpp"
#include "core/water/estimate.hpp"

namespace treadwater::judge {

struct TyreCase;

// The deepest of any published test is 9.5 mm; beyond this the estimate is carried on.
inline constexpr Length deepest_measured = millimetres(10.0);
// What is taken of a tyre that nobody measured: at most laws' depth, and soft.
inline constexpr Length worn_tread = millimetres(1.6);
inline constexpr GaugePressure soft_pressure = kilopascals(200.0);

// The onset of aquaplaning where there is water to float on, and what it limits.
std::optional<water::SpeedBand> judge_water(const TyreCase& tyre, Findings& findings);

// What every estimate of the onset rests on: models and measured rows.
const Sources& onset_sources();

}  // namespace treadwater::judge
