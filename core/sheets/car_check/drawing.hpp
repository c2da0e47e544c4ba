// What the sheet `car-check` shows of a car besides its findings.
#pragma once

#include "core/judge/car.hpp"
#include "core/sheets/answer_builder.hpp"

namespace treadwater::sheets::car_check {

// The pressures in the schedules, for each beaded edge.
void tell_beaded_edges(const judge::Car& car, AnswerBuilder& answer);
// Corner by corner, in a table.
void list_corners(const judge::Car& car, AnswerBuilder& answer);
// The four patches to scale, and their area.
void draw_patches(const judge::Car& car, AnswerBuilder& answer);

}  // namespace treadwater::sheets::car_check
