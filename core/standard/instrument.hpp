// The error of people's instruments: half-widths, either way.
//
// Common practice, no source: a forecourt gauge, a tread gauge, and a ruler in a puddle.
#pragma once

#include "core/quantity/quantity.hpp"

namespace treadwater::standard {

inline constexpr GaugePressure pressure_gauge_error = kilopascals(10.0);
inline constexpr Length tread_gauge_error = millimetres(0.2);
inline constexpr Length ruler_error = millimetres(1.0);

// Who reads half a millimetre does not stand in two: a ruler errs by no more than half its reading.
constexpr Length ruler_error_at(Length reading) {
  return reading / 2.0 < ruler_error ? reading / 2.0 : ruler_error;
}

}  // namespace treadwater::standard
