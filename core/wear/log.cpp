#include "core/wear/log.hpp"

#include <algorithm>

namespace treadwater::wear {

void Log::add(const Reading& reading) {
  const auto later = std::upper_bound(
      readings_.begin(), readings_.end(), reading,
      [](const Reading& one, const Reading& other) { return one.day < other.day; });
  readings_.insert(later, reading);
}

Length Log::least_of(long day) const {
  std::optional<Length> least;
  for (const Reading& reading : readings_)
    if (reading.day == day) least = std::min(least.value_or(reading.depth), reading.depth);
  return least.value_or(Length());
}

Rise Log::last_rise(Length more_than) const {
  Length least = least_of(first_day());
  Rise found{0, least};
  for (std::size_t i = 1; i < readings_.size(); ++i) {
    if (readings_[i].day == readings_[i - 1].day) continue;
    const Length depth = least_of(readings_[i].day);
    if (depth > least + more_than) {
      found = {i, least};
      least = depth;
    }
    least = std::min(least, depth);
  }
  return found;
}

std::vector<Reading> Log::since(const Rise& rise) const {
  return {readings_.begin() + static_cast<std::ptrdiff_t>(rise.at), readings_.end()};
}

std::optional<RunsBack> odometer_runs_back(const std::vector<Reading>& readings) {
  std::optional<Reading> most;
  for (const Reading& reading : readings) {
    if (!reading.odometer) continue;
    if (most && reading.day > most->day && *reading.odometer < *most->odometer)
      return RunsBack{*most, reading};
    if (!most || *reading.odometer > *most->odometer) most = reading;
  }
  return std::nullopt;
}

Wear wear_of(const Log& log) {
  Wear wear;
  wear.rise = log.last_rise(more_than_read);
  wear.counted = log.since(wear.rise);
  std::vector<Depth> days, distances;
  for (const Reading& reading : wear.counted) {
    days.push_back({static_cast<double>(reading.day), reading.depth});
    if (reading.odometer) distances.push_back({in_kilometres(*reading.odometer), reading.depth});
  }
  wear.by_day = rate_of(days);
  wear.runs_back = odometer_runs_back(wear.counted);
  if (!wear.runs_back) wear.by_distance = rate_of(distances);
  return wear;
}

}  // namespace treadwater::wear
