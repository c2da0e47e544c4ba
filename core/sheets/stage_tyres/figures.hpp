// The figures of the sheet `stage-tyres`: what the plan loses, and compared with what.
#pragma once

#include "core/judge/stages.hpp"
#include "core/sheets/answer_builder.hpp"

namespace treadwater::sheets::stage_tyres {

void tell_losses(const judge::StagesCase& stages, AnswerBuilder& answer);

}  // namespace treadwater::sheets::stage_tyres
