// The sheet `stage-tyres`: which set of tyres goes on for the stages ahead, what to fit at each
// halt if it is then dry, damp or wet, and what that costs against hindsight.
#pragma once

#include "core/answer/sheet.hpp"

namespace treadwater::answer {

const SheetDescription& stage_tyres_sheet();
Answer stage_tyres(const Input& input);
Sources stage_tyres_sources();

}  // namespace treadwater::answer
