// The figures of the sheet `puncture`.
#pragma once

#include "core/air/odds.hpp"
#include "core/judge/puncture.hpp"
#include "core/sheets/answer_builder.hpp"

namespace treadwater::sheets::puncture {

// Until a lamp comes on, until it must not be driven, until it is flat.
void tell_times(const judge::LeakFound& leak, const judge::SoftTyre& tyre, AnswerBuilder& answer);
void tell_way_home(const judge::WayHome& home, AnswerBuilder& answer);

void tell_stage_stop(const judge::StageStop& stop, AnswerBuilder& answer);

struct Odds {
  air::PunctureRate rate;
  std::optional<int> spares;
};
void tell_odds(const Odds& odds, Length way, AnswerBuilder& answer);

}  // namespace treadwater::sheets::puncture
