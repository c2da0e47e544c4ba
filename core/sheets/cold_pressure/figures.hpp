// The figures of the sheet `cold-pressure`.
#pragma once

#include "core/judge/pressure_setting.hpp"
#include "core/sheets/answer_builder.hpp"

namespace treadwater::sheets::cold_pressure {

// What the load needs, part by part.
void tell_need(const judge::PressureNeed& need, const judge::SettingCase& setting,
               AnswerBuilder& answer);
// The same air colder, hotter, and somewhere else.
void tell_air(const judge::SettingJudged& judged, const judge::SettingCase& setting,
              AnswerBuilder& answer);
// When a lamp warns, when to stop, and what a month takes.
void tell_warnings(const judge::SettingJudged& judged, const judge::SettingCase& setting,
                   AnswerBuilder& answer);

}  // namespace treadwater::sheets::cold_pressure
