// The charts of the sheet `cold-pressure`, and its table of contact patches.
#pragma once

#include "core/judge/pressure_setting.hpp"
#include "core/sheets/answer_builder.hpp"

namespace treadwater::sheets::cold_pressure {

// Load against cold pressure, up to the rating.
void draw_capacity(const judge::PressureNeed& need, Mass load, AnswerBuilder& answer);
// What the gauge shows as the tyre cools and heats.
void draw_temperature(const judge::SettingJudged& judged, const judge::SettingCase& setting,
                      AnswerBuilder& answer);
// How the patch changes with pressure, load and camber.
void tell_patches(const judge::SettingJudged& judged, const judge::SettingCase& setting,
                  AnswerBuilder& answer);

}  // namespace treadwater::sheets::cold_pressure
