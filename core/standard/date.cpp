#include "core/standard/date.hpp"

#include <ctime>

#include "core/quantity/text.hpp"

namespace treadwater::standard {
namespace {

int number(std::string_view digits) {
  int n = 0;
  for (char c : digits) n = 10 * n + (c - '0');
  return n;
}

}  // namespace

long days_since_1970(Date date) {
  const int year = date.month <= 2 ? date.year - 1 : date.year;
  const int era = year / 400;
  const int year_of_era = year - era * 400;
  const int day_of_year = (153 * (date.month + (date.month > 2 ? -3 : 9)) + 2) / 5 + date.day - 1;
  const int day_of_era = year_of_era * 365 + year_of_era / 4 - year_of_era / 100 + day_of_year;
  return era * 146097L + day_of_era - 719468L;
}

Date date_of(long days) {
  days += 719468L;
  const long era = days / 146097L;
  const long day_of_era = days - era * 146097L;
  const long year_of_era =
      (day_of_era - day_of_era / 1460 + day_of_era / 36524 - day_of_era / 146096) / 365;
  const long day_of_year = day_of_era - (365 * year_of_era + year_of_era / 4 - year_of_era / 100);
  const long shifted_month = (5 * day_of_year + 2) / 153;
  const int day = static_cast<int>(day_of_year - (153 * shifted_month + 2) / 5 + 1);
  const int month = static_cast<int>(shifted_month < 10 ? shifted_month + 3 : shifted_month - 9);
  const int year = static_cast<int>(year_of_era + era * 400 + (month <= 2 ? 1 : 0));
  return {year, month, day};
}

std::optional<Date> read_iso_date(std::string_view text) {
  if (text.size() != 10 || text[4] != '-' || text[7] != '-') return std::nullopt;
  for (std::size_t i = 0; i < text.size(); ++i)
    if (i != 4 && i != 7 && !is_digit(text[i])) return std::nullopt;
  const Date date{number(text.substr(0, 4)), number(text.substr(5, 2)), number(text.substr(8, 2))};
  if (date.year < 1 || date.month < 1 || date.month > 12 || date.day < 1) return std::nullopt;
  const Date back = date_of(days_since_1970(date));
  if (back.year != date.year || back.month != date.month || back.day != date.day)
    return std::nullopt;
  return date;
}

std::string write_iso_date(Date date) {
  return joined({std::to_string(10000 + date.year).substr(1), "-",
                 std::to_string(100 + date.month).substr(1), "-",
                 std::to_string(100 + date.day).substr(1)});
}

Date monday_of_week(int year, int week) {
  // 4 January is always in week 1; 1 January 1970 was a Thursday.
  const long fourth = days_since_1970({year, 1, 4});
  const long weekday = ((fourth + 3) % 7 + 7) % 7;  // Monday 0
  return date_of(fourth - weekday + 7L * (week - 1));
}

Date today_by_the_clock() {
  return date_of(static_cast<long>(static_cast<long long>(std::time(nullptr)) / 86400));
}

}  // namespace treadwater::standard
