// The sheet `stopping`: how long a stop is on the road that is there, how fast one may go for what
// one can see, and what a bend holds.
#pragma once

#include "core/answer/sheet.hpp"

namespace treadwater::answer {

const SheetDescription& stopping_sheet();
Answer stopping(const Input& input);
Sources stopping_sources();

}  // namespace treadwater::answer
