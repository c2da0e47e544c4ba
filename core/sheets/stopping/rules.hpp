// What drivers are taught about stopping: a table, and its rules as figures.
#pragma once

#include "core/judge/stopping.hpp"
#include "core/sheets/answer_builder.hpp"

namespace treadwater::sheets::stopping {

void tell_rules(const judge::StopCase& stop, AnswerBuilder& answer);

}  // namespace treadwater::sheets::stopping
