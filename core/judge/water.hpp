// Water: does this tyre aquaplane in it, and may it be entered at all?
#pragma once

#include <optional>

#include "core/judge/finding.hpp"
#include "core/water/estimate.hpp"

namespace treadwater::judge {

struct TyreCase;

// The deepest of any published test is 9.5 mm; beyond this the estimate is extrapolated.
inline constexpr Length deepest_measured = millimetres(10.0);
// Assumed for a tyre not measured: at the depth of most laws, and soft.
inline constexpr Length worn_tread = millimetres(1.6);
inline constexpr GaugePressure soft_pressure = kilopascals(200.0);

// The onset of aquaplaning if there is water for it, and what it limits.
std::optional<water::SpeedBand> judge_water(const TyreCase& tyre, Findings& findings);

// The sources behind every estimate of the onset: models and measured rows.
const Sources& onset_sources();

}  // namespace treadwater::judge
