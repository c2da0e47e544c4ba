// The picture of the sheet `puncture`: the air left, from now to flat.
#pragma once

#include "core/judge/puncture.hpp"
#include "core/sheets/answer_builder.hpp"

namespace treadwater::sheets::puncture {

void draw_leak(const judge::LeakFound& leak, GaugePressure stop_below, AnswerBuilder& answer);

}  // namespace treadwater::sheets::puncture
