// The picture of the sheet `wear-log`: each tyre's tread over time.
#pragma once

#include "core/judge/wear.hpp"
#include "core/sheets/answer_builder.hpp"

namespace treadwater::sheets::wear_log {

struct JudgedLog {
  judge::LoggedTyre tyre;
  wear::Wear wear;
};

// There is at least one log.
void draw_wear(const std::vector<JudgedLog>& logs, const standard::TreadLaw& law,
               standard::Date today, AnswerBuilder& answer);

}  // namespace treadwater::sheets::wear_log
