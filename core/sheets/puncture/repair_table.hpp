// May it be repaired: the reasons in a table, and where the hole is, to scale.
#pragma once

#include "core/judge/repair.hpp"
#include "core/sheets/answer_builder.hpp"

namespace treadwater::sheets::puncture {

void tell_repair(const judge::RepairJudged& judged, AnswerBuilder& answer);

}  // namespace treadwater::sheets::puncture
