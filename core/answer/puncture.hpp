// The sheet `puncture`: a tyre that is losing air. How long it lasts, whether it may be repaired,
// how far one gets on what there is, and the odds of the next one.
#pragma once

#include "core/answer/sheet.hpp"

namespace treadwater::answer {

const SheetDescription& puncture_sheet();
Answer puncture(const Input& input);
Sources puncture_sources();

}  // namespace treadwater::answer
