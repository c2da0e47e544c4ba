// The tables of the sheet `stage-tyres`.
#pragma once

#include <vector>

#include "core/judge/stages.hpp"
#include "core/sheets/answer_builder.hpp"

namespace treadwater::sheets::stage_tyres {

// For the paper in the van: a row for the start and each tyre change, a column for each weather
// that may be seen before it.
void tell_halts(const judge::StagesCase& stages, AnswerBuilder& answer);
void tell_first_choices(const judge::StagesCase& stages, AnswerBuilder& answer);
void tell_sets_to_carry(const judge::StagesCase& stages, AnswerBuilder& answer);
void tell_wear(const judge::StagesCase& stages, AnswerBuilder& answer);
void tell_water(const judge::StagesCase& stages, const std::vector<judge::Floating>& afloat,
                AnswerBuilder& answer);
void tell_team(const judge::StagesCase& stages, AnswerBuilder& answer);

}  // namespace treadwater::sheets::stage_tyres
