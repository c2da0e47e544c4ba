// The figures of the sheet `wear-log`: how fast a tyre wears, and when it will reach a depth.
#pragma once

#include "core/judge/wear.hpp"
#include "core/sheets/answer_builder.hpp"

namespace treadwater::sheets::wear_log {

// Nothing if there is no rate.
void tell_wear(const judge::LoggedTyre& tyre, const wear::Wear& wear, const standard::TreadLaw* law,
               standard::Date today, AnswerBuilder& answer);

}  // namespace treadwater::sheets::wear_log
