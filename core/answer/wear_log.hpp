// The sheet `wear-log`: dated tread readings of a car's tyres -> how fast each wears, and when it
// will be down to 3 mm and to the law's minimum.
#pragma once

#include "core/answer/sheet.hpp"

namespace treadwater::answer {

const SheetDescription& wear_log_sheet();
Answer wear_log(const Input& input);
Sources wear_log_sources();

}  // namespace treadwater::answer
