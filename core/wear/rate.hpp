// The room `wear`: dated tread readings of one tyre -> how fast it wears, and when it will reach a
// given depth. The readings themselves, and which of them count, are in log.hpp.
//
// The rate is the median of the slopes between all pairs of readings, the line goes through the
// median of the residuals: P. K. Sen, "Estimates of the Regression Coefficient Based on Kendall's
// Tau", Journal of the American Statistical Association 63, 1968 (from memory). One bad reading in
// four does not move it. Its band is ours: the 5th to the 95th percentile of the slopes, widened by
// the effect of the gauge's error over the span of the readings.
//
// Units: depth in mm against `at` in any unit (days, km); the rate is mm lost per unit. Range: 2 to
// 200 readings over a span above zero; anything else gives nothing. NaN gives nothing.
#pragma once

#include <optional>
#include <vector>

#include "core/quantity/quantity.hpp"
#include "core/standard/source.hpp"

namespace treadwater::wear {

struct Depth {
  double at = 0.0;
  Length depth;
};

struct Rate {
  Length per_unit;  // lost for each unit of `at`; below zero where readings rise
  Length low;       // the lowest and highest that the readings allow
  Length high;
  double zero = 0.0;   // where the line is anchored: the latest reading's `at`
  Length depth_there;  // the line's value there
  // Where the line is carried on from: its value there, or the lowest reading there if that is
  // less. A tyre is no deeper than it was last measured.
  Length from_there;
};

std::optional<Rate> rate_of(const std::vector<Depth>& readings);

// The depth that the line gives.
Length depth_at(const Rate& rate, double at);

// The distance from the line at which a reading is called odd: three gauge errors. NaN is odd.
bool is_odd(const Rate& rate, const Depth& reading);

// When the tread comes down to a depth from there: the earliest by the high rate, the latest by the
// low one. If a rate does not reach it (zero or rising), that end is missing.
struct Until {
  std::optional<double> earliest;
  std::optional<double> central;
  std::optional<double> latest;
};
Until until(const Rate& rate, Length depth);

const Source& slope_source();

}  // namespace treadwater::wear
