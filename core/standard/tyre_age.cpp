#include "core/standard/tyre_age.hpp"

#include <string>

#include "core/quantity/text.hpp"

namespace treadwater::standard {
namespace {

constexpr Source date_code{"date-code",
                           "Tire Identification and Recordkeeping, 64 FR 36807; 49 CFR 574.5",
                           "week and year of manufacture", "1999", Standing::published};
constexpr Source age_advice{
    "age-advice",
    "Consumer advice quoting NHTSA: some car makers six years, some tyre makers ten at most",
    "the spare included", "2013", Standing::secondary};

// The digits at the end of "DOT 4B9K 1ABC 2319", or of "2319" alone.
std::string trailing_digits(std::string_view text) {
  std::size_t begin = text.size();
  while (begin > 0 && is_digit(text[begin - 1])) --begin;
  return std::string(text.substr(begin));
}

}  // namespace

tl::expected<TyreAge, DateCodeProblem> read_date_code(std::string_view text, Date today) {
  const std::string digits = trailing_digits(plain_spaces(text));
  if (digits.size() != 4 && digits.size() != 3)
    return tl::unexpected(DateCodeProblem{DateCodeProblem::Kind::no_digits, {}, {}});
  TyreAge age;
  age.week = (digits[0] - '0') * 10 + (digits[1] - '0');
  age.before_2000 = digits.size() == 3;
  age.year = age.before_2000 ? 1990 + (digits[2] - '0')
                             : 2000 + (digits[2] - '0') * 10 + (digits[3] - '0');
  if (age.week < 1 || age.week > 53)
    return tl::unexpected(
        DateCodeProblem{DateCodeProblem::Kind::no_such_week, digits.substr(0, 2), {}});
  const long days = days_since_1970(today) - days_since_1970(monday_of_week(age.year, age.week));
  if (days < 0)
    return tl::unexpected(DateCodeProblem{DateCodeProblem::Kind::in_the_future, {}, age});
  age.least_years = static_cast<double>(days) / 365.2425;
  return age;
}

const Source& date_code_source() { return date_code; }
const Source& age_advice_source() { return age_advice; }

}  // namespace treadwater::standard
