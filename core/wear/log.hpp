// The log of one tyre: its readings by day, the last rise of its tread, an odometer that runs
// backwards, and from when the readings count for a rate (rate.hpp).
//
// Tread does not grow: a rise means another tyre or a wrong reading, and which is not known. So a
// rise is tested by two margins, each on the safe side:
//   more_than_read  for the rate: the least rise that is none of the gauge (two readings, each its
//                   error out, the opposite ways, and the last digits of that). Two tyres taken for
//                   one would seem to wear too slowly.
//   another_tyre    for the age: a rise that no wrong reading is likely to make. An old tyre taken
//                   for another would seem too young.
//
// Units: days since 1 January 1970; the depth as read; rates in tread lost per day and per
// kilometre. The lowest reading of a day counts, as of two grooves. Range: any days; a log of at
// least one reading, except for readings() and add(); NaN never makes a rise. Errors: a rise is
// found if two readings differ by more than the margin, however wrong both may be.
// Source: the gauge's error is standard/instrument.hpp's; both margins are ours.
#pragma once

#include <cstddef>
#include <optional>
#include <vector>

#include "core/quantity/quantity.hpp"
#include "core/standard/instrument.hpp"
#include "core/wear/rate.hpp"

namespace treadwater::wear {

inline constexpr double days_a_year = 365.25;
inline constexpr double days_a_month = days_a_year / 12.0;

inline constexpr Length more_than_read = standard::tread_gauge_error * 2.0 + millimetres(0.05);
inline constexpr Length another_tyre = millimetres(1.0);

struct Reading {
  long day = 0;
  Length depth;
  std::optional<Length> odometer{};
};

// The last time that a day's lowest reading was above the lowest since the previous rise by more
// than a margin.
struct Rise {
  std::size_t at = 0;  // the first reading since; 0 if there was none
  Length before;       // the lowest before it
};

class Log {
 public:
  void add(const Reading& reading);  // after those of its day

  const std::vector<Reading>& readings() const { return readings_; }  // by day
  long first_day() const { return readings_.front().day; }
  long last_day() const { return readings_.back().day; }
  Length least_of(long day) const;
  Length latest() const { return least_of(last_day()); }

  Rise last_rise(Length more_than) const;
  std::vector<Reading> since(const Rise& rise) const;

 private:
  std::vector<Reading> readings_;
};

// On a later day it is lower than before.
struct RunsBack {
  Reading high;
  Reading low;
};
std::optional<RunsBack> odometer_runs_back(const std::vector<Reading>& readings);

// How the tyre that is on now wears.
struct Wear {
  Rise rise;                     // by `more_than_read`
  std::vector<Reading> counted;  // the readings since
  std::optional<RunsBack> runs_back;
  std::optional<Rate> by_day;
  std::optional<Rate> by_distance;  // per kilometre; nothing if the odometer runs backwards
};
Wear wear_of(const Log& log);

}  // namespace treadwater::wear
