#include "core/air/gas_law.hpp"

#include <algorithm>
#include <cmath>

namespace treadwater::air {
namespace {

constexpr Source gas_law{
    "gas-law", "Gas of fixed volume: absolute pressure in proportion to absolute temperature",
    "printed example: 20 psi at 70 °F is 18.7 at 50 °F and 23.9 at 130 °F", "2002",
    Standing::secondary};
constexpr Source atmosphere{"standard-atmosphere",
                            "ISO 2533, standard atmosphere: 101.325 kPa, 288.15 K, 6.5 K/km",
                            "not seen in print", "1975", Standing::memory};
constexpr Source hot_handbooks{"hot-rise",
                               "Car and tyre handbooks: hot tyres read 20 to 40 kPa high",
                               "do not let air out of a hot tyre", "", Standing::secondary};

}  // namespace

GaugePressure carried_over(const GaugeReading& reading, const Conditions& to) {
  const Conditions& from = reading.conditions;
  return gauge(
      absolute(reading.pressure, from.outside) * (in_kelvin(to.inside) / in_kelvin(from.inside)),
      to.outside);
}

// (1 - L h/T0)^(g M/(R L)), the exponent 5.25588.
AbsolutePressure outside_at(Length altitude) {
  const double h = std::clamp(in_metres(altitude), -500.0, 9000.0);
  return standard_atmosphere * std::pow(1.0 - 0.0065 / 288.15 * h, 5.25588);
}

const Source& gas_law_source() { return gas_law; }
const Source& atmosphere_source() { return atmosphere; }
const Source& hot_rise_source() { return hot_handbooks; }

}  // namespace treadwater::air
