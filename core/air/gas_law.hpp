// The room `air`: the air in the tyre. Temperature and altitude, natural loss, holes, repair,
// running flat, the odds of a puncture, and pressure warnings.
//
// This file: the same air read on another day, warmer, colder or higher up. A tyre is a fixed
// volume of air: absolute pressure is in proportion to absolute temperature, and a gauge shows the
// difference from the air outside:
//
//   p2 = (p1 + pa1) T2/T1 - pa2      p gauge, pa outside, T of the air inside, kelvin
//
// Two pages in circulation apply the ratio to gauge pressure, which understates the change by a
// third.
// Range: a tyre that has neither leaked nor been topped up, 150 to 400 K. A tyre swells a little as
// it heats, which this leaves out. The caller's bounds keep out 0 K.
#pragma once

#include "core/quantity/quantity.hpp"
#include "core/standard/source.hpp"

namespace treadwater::air {

inline constexpr AbsolutePressure standard_atmosphere = kilopascals_absolute(101.325);

// What a reading depends on besides the air in the tyre.
struct Conditions {
  Temperature inside;
  AbsolutePressure outside = standard_atmosphere;
};

struct PressureBand {
  GaugePressure low;
  GaugePressure high;
};

struct GaugeReading {
  GaugePressure pressure;
  Conditions conditions;
};

// What the gauge will show for the same air in other conditions: a hot reading converted to cold, a
// garage setting to the stage, the valley's to the pass; and in reverse, what to set cold for a
// target hot pressure. Below zero the tyre is flat.
GaugePressure carried_over(const GaugeReading& reading, const Conditions& to);

// Pressure of the standard atmosphere. Range: -500 to 9000 m, held at the ends. The weather moves
// the true one by 3 kPa either way.
AbsolutePressure outside_at(Length altitude);

// Without a thermometer: how far a tyre just off the road reads above its cold pressure.
inline constexpr PressureBand hot_rise{kilopascals(20.0), kilopascals(40.0)};

const Source& gas_law_source();
const Source& atmosphere_source();
const Source& hot_rise_source();

}  // namespace treadwater::air
