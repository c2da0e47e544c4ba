// What a speedometer may show.
//
// Source: UN R39 5.3, 0 <= V1 - V2 <= 0.1 V2 + 4 km/h, V1 shown and V2 true; quoted with five
// worked examples (secondary). Range: any speed from 0 up; a NaN is never allowed.
#pragma once

#include "core/quantity/quantity.hpp"
#include "core/standard/source.hpp"

namespace treadwater::standard {

// The highest reading allowed at this true speed; the lowest is the true speed.
constexpr Speed most_shown(Speed truth) { return truth * 1.1 + kilometres_per_hour(4.0); }

// The inverse: the lowest true speed at which it may show this, if it reads as high as the rule
// allows; zero if it shows no more than 4 km/h.
constexpr Speed least_true(Speed shown) {
  const Speed above = shown - kilometres_per_hour(4.0);
  return above > Speed() ? above / 1.1 : Speed();
}

constexpr bool speedometer_allowed(Speed shown, Speed truth) {
  return truth <= shown && shown <= most_shown(truth);
}

// With other tyres the instrument counts turns as before and shows the same at a true speed that
// has changed with the circumference.
constexpr Speed true_speed_after(Speed truth_before, double circumference_ratio) {
  return truth_before * circumference_ratio;
}

const Source& speedometer_source();

}  // namespace treadwater::standard
