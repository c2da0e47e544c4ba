#include "core/answer/tyre_age.hpp"

#include <string>

namespace treadwater::answer {
namespace {

constexpr Source date_code{"date-code",
                           "Tire Identification and Recordkeeping, 64 FR 36807; 49 CFR 574.5",
                           "week and year of manufacture", "1999", Standing::published};
constexpr Source age_advice{
    "age-advice",
    "Consumer advice quoting NHTSA: some car makers six years, some tyre makers ten at most",
    "the spare included", "2013", Standing::secondary};

constexpr std::string_view would_do =
    "The last four digits of the DOT line would do: 2319 is week 23 of 2019.";

// The digits at the end of "DOT 4B9K 1ABC 2319", or of "2319" alone.
std::string trailing_digits(std::string_view text) {
  std::size_t begin = text.size();
  while (begin > 0 && is_digit(text[begin - 1])) --begin;
  return std::string(text.substr(begin));
}

}  // namespace

tl::expected<TyreAge, ReadProblem> read_date_code(std::string_view text, Date today) {
  const std::string digits = trailing_digits(plain_spaces(text));
  if (digits.size() != 4 && digits.size() != 3)
    return tl::unexpected(ReadProblem{
        "not_a_date_code",
        filled("Date code: # does not end in the three or four digits of a date code. #",
               {in_quotes(text), would_do})});
  TyreAge age;
  age.week = (digits[0] - '0') * 10 + (digits[1] - '0');
  age.before_2000 = digits.size() == 3;
  age.year = age.before_2000 ? 1990 + (digits[2] - '0')
                             : 2000 + (digits[2] - '0') * 10 + (digits[3] - '0');
  if (age.week < 1 || age.week > 53)
    return tl::unexpected(ReadProblem{
        "no_such_week", filled("Date code: # gives week #, and a year has weeks 01 to 53. #",
                               {in_quotes(text), digits.substr(0, 2), would_do})});
  const long days = days_since_1970(today) - days_since_1970(monday_of_week(age.year, age.week));
  if (days < 0)
    return tl::unexpected(ReadProblem{
        "in_the_future",
        filled(
            "Date code: # is week # of #, which is still to come on #. Check the four digits, and "
            "the date of this device.",
            {in_quotes(text), std::to_string(age.week), std::to_string(age.year),
             write_iso_date(today)})});
  age.least_years = static_cast<double>(days) / 365.2425;
  return age;
}

std::optional<Caution> caution_of_age(double years, std::string_view made) {
  const Sources sources{&date_code, &age_advice};
  if (years > 10.0)
    return Caution{
        "over_ten_years", Level::unfit, "it is over ten years old",
        filled("#Makers' advice is not to use a tyre past ten years whatever its tread, the spare "
               "included.",
               {std::string(made)}),
        sources};
  if (years > 6.0)
    return Caution{
        "over_six_years", Level::care, "it is over six years old",
        filled("#From six years on have it looked at every year, inside too; some car makers "
               "replace it now.",
               {std::string(made)}),
        sources};
  return std::nullopt;
}

const Source& date_code_source() { return date_code; }
const Source& age_advice_source() { return age_advice; }

}  // namespace treadwater::answer
