// What the form of the sheet `car-check` says of a car.
#pragma once

#include "core/judge/car.hpp"
#include "core/sheets/form_reader.hpp"

namespace treadwater::sheets::car_check {

// With what is to be said of the readings themselves: wear across a tread, what the wheels carry,
// a spare that is not there.
judge::Car read_car(FormReader& form, judge::Findings& findings);

}  // namespace treadwater::sheets::car_check
