// The drawing of the sheet `stopping`: the stop to scale, from where the driver sees the need.
#pragma once

#include <optional>

#include "core/judge/stopping.hpp"
#include "core/sheets/answer.hpp"

namespace treadwater::sheets::stopping {

// Nothing if it may not stop, or aquaplanes.
std::optional<Drawing> stop_to_scale(const judge::StopCase& stop, const judge::StopJudged& judged,
                                     UnitSystem units);

}  // namespace treadwater::sheets::stopping
