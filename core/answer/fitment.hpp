// The sheet `fitment`: another size of tyre, and another wheel, on the same car -> what changes,
// and whether it is enough.
#pragma once

#include "core/answer/sheet.hpp"

namespace treadwater::answer {

const SheetDescription& fitment_sheet();
Answer fitment(const Input& input);
Sources fitment_sources();

}  // namespace treadwater::answer
