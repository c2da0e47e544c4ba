// Stage by stage, what is likely to be on, and what is left of it.
#pragma once

#include "core/judge/stages.hpp"
#include "core/sheets/answer_builder.hpp"

namespace treadwater::sheets::stage_tyres {

void draw_stages(const judge::StagesCase& stages, AnswerBuilder& answer);

}  // namespace treadwater::sheets::stage_tyres
