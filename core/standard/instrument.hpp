// The error of people's instruments: half-widths, either way.
//
// Common practice, no source: a forecourt gauge, a tread gauge, and a ruler in a puddle.
#pragma once

#include "core/quantity/quantity.hpp"

namespace treadwater::standard {

inline constexpr GaugePressure pressure_gauge_error = kilopascals(10.0);
inline constexpr Length tread_gauge_error = millimetres(0.2);
inline constexpr Length ruler_error = millimetres(1.0);

}  // namespace treadwater::standard
