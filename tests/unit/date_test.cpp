#include "core/standard/date.hpp"

#include "core/standard/tyre_age.hpp"
#include "tests/support/catch.hpp"

using namespace treadwater::standard;
using namespace treadwater::testing;

TEST_CASE("days are counted from 1 January 1970 and back again") {
  CHECK(days_since_1970({1970, 1, 1}) == 0);
  CHECK(days_since_1970({2000, 3, 1}) == 11017);
  for (long days = -200000; days < 200000; days += 17)
    CHECK(days_since_1970(date_of(days)) == days);
}

TEST_CASE("only days of the calendar are read") {
  CHECK(read_iso_date("2024-02-29"));
  CHECK_FALSE(read_iso_date("2023-02-29"));
  CHECK_FALSE(read_iso_date("2023-13-01"));
  CHECK_FALSE(read_iso_date("2023-1-1"));
  CHECK_FALSE(read_iso_date("tomorrow"));
}

TEST_CASE("ISO week 40 of 2019 begins on 30 September (EU register, start of production 40/19)") {
  const Date monday = monday_of_week(2019, 40);
  CHECK(monday.year == 2019);
  CHECK(monday.month == 9);
  CHECK(monday.day == 30);
}

TEST_CASE("a date code tells the age") {
  const Date today{2026, 11, 25};
  CHECK_THAT(read_date_code("4019", today)->least_years, WithinAbs(7.15, 0.01));
  CHECK_THAT(read_date_code("DOT AB12 CDE3 4019", today)->least_years, WithinAbs(7.15, 0.01));
  CHECK(read_date_code("4726", today)->least_years < 0.1);
  CHECK(read_date_code("324", today)->before_2000);
  CHECK(read_date_code("324", today)->year == 1994);
}

TEST_CASE("a date code that cannot be is refused, each in its own way") {
  using Kind = DateCodeProblem::Kind;
  const Date today{2026, 11, 25};
  const auto code = [&](std::string_view text) {
    const auto age = read_date_code(text, today);
    REQUIRE_FALSE(age);
    return age.error().kind;
  };
  CHECK(code("5419") == Kind::no_such_week);
  CHECK(code("0019") == Kind::no_such_week);
  CHECK(code("5026") == Kind::in_the_future);
  CHECK(code("19") == Kind::no_digits);
  CHECK(code("12345") == Kind::no_digits);
  CHECK(code("🛞") == Kind::no_digits);
}
