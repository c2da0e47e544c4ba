// The figures of the sheet `tyre-check`.
#pragma once

#include "core/judge/tyre.hpp"
#include "core/sheets/answer_builder.hpp"

namespace treadwater::sheets::tyre_check {

void tell_load(const judge::Carrying& carrying, const judge::TyreCase& tyre, AnswerBuilder& answer);
// What published models say, and our own estimate.
void tell_onsets(const judge::TyreJudged& judged, const judge::TyreCase& tyre,
                 AnswerBuilder& answer);
void tell_size(const sidewall::Reading& size, AnswerBuilder& answer);
// And its drawing. False if only the construction rules one out.
bool tell_patch(const judge::TyreCase& tyre, AnswerBuilder& answer);

}  // namespace treadwater::sheets::tyre_check
