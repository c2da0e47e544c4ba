// The figures of the sheet `standing-water`.
#pragma once

#include "core/judge/crossing.hpp"
#include "core/sheets/answer_builder.hpp"

namespace treadwater::sheets::standing_water {

// "Road tyre, 3 mm"
Text name(const judge::TyreThrough& tyre, UnitSystem units);

void tell_rain_word(const standard::RainWord& word, AnswerBuilder& answer);
void tell_rain(const water::DepthFromRain& rain, AnswerBuilder& answer);
void tell_footing(const judge::WaterAcross& water, AnswerBuilder& answer);
// What published models say of the worst tyre, and our own estimate.
void tell_onsets(const judge::TyreThrough& worst, const judge::WaterAcross& water,
                 AnswerBuilder& answer);
void tell_chance(double chance, Speed intended, AnswerBuilder& answer);
void list_field(const judge::CrossingJudged& judged, AnswerBuilder& answer);

}  // namespace treadwater::sheets::standing_water
