// Calendar arithmetic for the age of a tyre: days since 1 January 1970 and back, and ISO weeks.
// Range: years 1 to 9999 of the Gregorian calendar. Algorithm: the usual count of days from the
// civil calendar (era of 400 years); checked against printed dates in tests/unit/date_test.cpp.
#pragma once

#include <optional>
#include <string>
#include <string_view>

namespace treadwater::standard {

struct Date {
  int year = 1970;
  int month = 1;
  int day = 1;
};

long days_since_1970(Date date);
Date date_of(long days);

// "2026-11-25"; nothing for anything else, or for a day not in the calendar.
std::optional<Date> read_iso_date(std::string_view text);
std::string write_iso_date(Date date);

// The Monday of ISO week 1..53 of the year.
Date monday_of_week(int year, int week);

// What the machine's clock says, UTC.
Date today_by_the_clock();

}  // namespace treadwater::standard
