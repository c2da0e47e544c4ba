// Air lost through the rubber itself, and how to tell that from a leak.
//
// Published for tubeless tyres: 0.5 to 1.0 psi a month at 21 °C, about 1.5 psi at 32 °C. Between
// and beyond the two temperatures the rate follows the line through the middle of the first and the
// second in ln(rate) against 1/T (ours; the spread is kept at two thirds and four thirds). Tubes of
// natural rubber, 1935: 1 to 3 psi a week, taken as at 21 °C.
// Range: -20 to 60 °C, held at the ends; cars' pressures. Tyres at higher pressure lose more.
#pragma once

#include "core/air/gas_law.hpp"
#include "core/quantity/quantity.hpp"
#include "core/standard/instrument.hpp"
#include "core/standard/source.hpp"

namespace treadwater::air {

enum class AirHolder { tubeless, natural_rubber_tube };

// Lost over a time at a steady temperature.
PressureBand natural_loss(AirHolder holder, Temperature temperature, Duration time);

// For a loss given in per cent a month: of the gauge pressure, by convention, compounded monthly.
GaugePressure after_months(GaugePressure now, double percent_a_month, double months);

enum class LossKind {
  natural,   // no more than the rubber lets through
  doubtful,  // more, but within the gauge's error: wait longer and read again
  leak,      // more than both together
};

struct LossJudgement {
  LossKind kind;
  GaugePressure lost;    // with both readings in the conditions of the first
  PressureBand natural;  // at the warmer of the two readings
};

// Two readings with the same gauge, some time apart. Doubtful if a reading or the time is not a
// number, or the time is not above zero.
LossJudgement judge_loss(AirHolder holder, const GaugeReading& first, const GaugeReading& second,
                         Duration apart, GaugePressure error = standard::pressure_gauge_error);

const Source& natural_loss_source();
const Source& tube_loss_source();

}  // namespace treadwater::air
