// Reads the form of the sheet `car-check` into a car.
#pragma once

#include "core/judge/car.hpp"
#include "core/sheets/form_reader.hpp"

namespace treadwater::sheets::car_check {

// With the findings on the readings themselves: wear across a tread, the wheels' loads, a missing
// spare.
judge::Car read_car(FormReader& form, judge::Findings& findings);

}  // namespace treadwater::sheets::car_check
