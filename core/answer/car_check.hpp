// The sheet `car-check`: four corners and a spare. Each corner is judged by the sheet for one tyre;
// this one adds what holds between them: axles, left and right, wear across a tread, the spare.
#pragma once

#include "core/answer/sheet.hpp"

namespace treadwater::answer {

const SheetDescription& car_check_sheet();
Answer car_check(const Input& input);
Sources car_check_sources();

}  // namespace treadwater::answer
