#include "core/wear/rate.hpp"

#include <algorithm>
#include <cmath>

#include "core/standard/instrument.hpp"

namespace treadwater::wear {
namespace {

constexpr Source slopes{
    "wear-slopes", "P. K. Sen, Estimates of the Regression Coefficient Based on Kendall's Tau",
    "Journal of the American Statistical Association 63", "1968", Standing::memory};

constexpr std::size_t most_readings = 200;

// The value below which the given share is, by straight lines between the sorted values.
double share_of(const std::vector<double>& sorted, double share) {
  const double place = share * static_cast<double>(sorted.size() - 1);
  const auto below = static_cast<std::size_t>(place);
  const std::size_t above = std::min(below + 1, sorted.size() - 1);
  return sorted[below] + (place - static_cast<double>(below)) * (sorted[above] - sorted[below]);
}

double median_of(std::vector<double> values) {
  std::sort(values.begin(), values.end());
  return share_of(values, 0.5);
}

}  // namespace

const Source& slope_source() { return slopes; }

std::optional<Rate> rate_of(const std::vector<Depth>& readings) {
  if (readings.size() < 2 || readings.size() > most_readings) return std::nullopt;
  for (const Depth& r : readings)
    if (!std::isfinite(r.at) || !std::isfinite(in_millimetres(r.depth))) return std::nullopt;
  std::vector<double> lost;  // mm per unit, between each pair
  double first = readings.front().at;
  double last = first;
  for (std::size_t i = 0; i < readings.size(); ++i) {
    first = std::min(first, readings[i].at);
    last = std::max(last, readings[i].at);
    for (std::size_t k = i + 1; k < readings.size(); ++k) {
      const double run = readings[k].at - readings[i].at;
      if (run != 0.0)
        lost.push_back((in_millimetres(readings[i].depth) - in_millimetres(readings[k].depth)) /
                       run);
    }
  }
  if (!(last > first)) return std::nullopt;
  std::sort(lost.begin(), lost.end());
  const double slope = share_of(lost, 0.5);
  // Two readings, each a gauge error out, in opposite directions.
  const double gauge =
      std::sqrt(2.0) * in_millimetres(standard::tread_gauge_error) / (last - first);
  std::vector<double> anchors;
  std::optional<Length> lowest_there;
  for (const Depth& r : readings) {
    anchors.push_back(in_millimetres(r.depth) - slope * (last - r.at));
    if (!(r.at < last)) lowest_there = std::min(lowest_there.value_or(r.depth), r.depth);
  }
  Rate rate;
  rate.per_unit = millimetres(slope);
  rate.low = millimetres(share_of(lost, 0.05) - gauge);
  rate.high = millimetres(share_of(lost, 0.95) + gauge);
  rate.zero = last;
  rate.depth_there = millimetres(median_of(std::move(anchors)));
  rate.from_there = std::min(rate.depth_there, lowest_there.value_or(rate.depth_there));
  return rate;
}

Length depth_at(const Rate& rate, double at) {
  return rate.depth_there - rate.per_unit * (at - rate.zero);
}

bool is_odd(const Rate& rate, const Depth& reading) {
  const Length off = reading.depth - depth_at(rate, reading.at);
  return !(std::fabs(in_millimetres(off)) <= 3.0 * in_millimetres(standard::tread_gauge_error));
}

Until until(const Rate& rate, Length depth) {
  const auto reached = [&](Length per_unit) -> std::optional<double> {
    const Length left = rate.from_there - depth;
    if (left <= millimetres(0.0)) return rate.zero;
    if (!(per_unit > millimetres(0.0))) return std::nullopt;
    return rate.zero + left / per_unit;
  };
  return {reached(rate.high), reached(rate.per_unit), reached(rate.low)};
}

}  // namespace treadwater::wear
