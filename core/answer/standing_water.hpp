// The sheet `standing-water`: how deep the water is (by a ruler, or from rain), and how fast each
// kind of tyre may come through it, the worst first; floods and fords, and a sentence for the
// radio.
#pragma once

#include "core/answer/sheet.hpp"

namespace treadwater::answer {

const SheetDescription& standing_water_sheet();
Answer standing_water(const Input& input);
Sources standing_water_sources();

}  // namespace treadwater::answer
