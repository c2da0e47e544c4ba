// Load against speed for car tyres: above 210, 240 or 270 km/h a V, W or Y tyre carries less than
// its load index says.
//
// Source: the rule of UN R30 for V, W and Y tyres, as printed in "Automotive Engineering:
// Powertrain, Chassis System and Vehicle Body" (Crolla, ed., 2009), fig. 10.1-14, and a second time
// in an Austrian tyre page: secondary. Linear between the printed 10 km/h steps, as the source
// says. ZR without a service description: 100 % to 240 km/h and nothing above (the printed sources
// disagree between 240 and 270; the lower is kept).
// Sheets use percent_at_speed() in load_adjustment.hpp, which covers motorcycles too.
// Range: 0 km/h to the symbol's speed. Above it nothing is returned: the tyre is not made for it.
#pragma once

#include <optional>

#include "core/standard/speed_symbol.hpp"

namespace treadwater::standard {

// Per cent of the load index's mass that the tyre may carry at this speed.
std::optional<double> load_percent(SpeedSymbol symbol, Speed speed);

// Cold pressure to add for a sustained speed: 0 up to 160 km/h, then in line to 30 kPa at 210 km/h.
// Source: the same handbook, p. 291 (0.3 bar, 160 to 210 km/h, symbols to V): secondary. Kept at
// 30 kPa above 210 km/h for V. For W the rise is printed to start at 190 km/h and goes on by
// 10 kPa every 10 km/h (memory); for Y from 220 km/h (memory). The larger of the two lines is used
// for W and Y, so that a remembered number can only raise it.
GaugePressure pressure_for_speed(SpeedSymbol symbol, Speed speed);

// The rise at 210 km/h as printed by a tyre maker for H tyres, 5 psi, against the 30 kPa above; a
// rounding, said beside it.
inline constexpr GaugePressure printed_higher_at_210 = psi(5.0);

const Source& speed_load_source();
const Source& speed_pressure_source();

}  // namespace treadwater::standard
