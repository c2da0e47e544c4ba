// The sheet `tyre-check`: one tyre, its load, pressure, tread, the water and the road -> whether it
// is fit, how fast it may go before which limit bites, and what to do about it.
#pragma once

#include "core/answer/sheet.hpp"

namespace treadwater::answer {

const SheetDescription& tyre_check_sheet();
Answer tyre_check(const Input& input);
Sources tyre_check_sources();

}  // namespace treadwater::answer
