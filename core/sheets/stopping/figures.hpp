// The figures of the sheet `stopping`.
#pragma once

#include "core/judge/stopping.hpp"
#include "core/sheets/answer_builder.hpp"

namespace treadwater::sheets::stopping {

void tell_figures(const judge::StopCase& stop, const judge::StopJudged& judged,
                  AnswerBuilder& answer);

}  // namespace treadwater::sheets::stopping
