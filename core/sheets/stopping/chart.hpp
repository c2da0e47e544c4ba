// The chart of the sheet `stopping`: the stop from every speed, on this tyre and on the same one
// new.
#pragma once

#include "core/judge/stopping.hpp"
#include "core/sheets/answer.hpp"

namespace treadwater::sheets::stopping {

Chart stops_by_speed(const judge::StopCase& stop, const judge::StopJudged& judged,
                     UnitSystem units);

}  // namespace treadwater::sheets::stopping
