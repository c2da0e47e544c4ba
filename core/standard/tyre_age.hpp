// The age of a tyre from its date code: four digits, week then year ("2319" is week 23 of 2019);
// three before the year 2000, whose decade is not known ("324": week 32 of 1994 or 1984).
//
// Source: 64 FR 36807 (four digits, 1999), 49 CFR 574.5. Weeks are counted here as ISO weeks; the
// US rule counts from the first full week and can differ by a week, so ages are given in years and
// months. Range: weeks 1 to 53, not after today. Anything else is a DateCodeProblem.
#pragma once

#include <string>
#include <string_view>
#include <tl/expected.hpp>

#include "core/standard/date.hpp"
#include "core/standard/source.hpp"

namespace treadwater::standard {

struct TyreAge {
  double least_years =
      0.0;  // since the Monday of the coded week, or of its latest possible reading
  bool before_2000 = false;
  int week = 0;
  int year = 0;  // of the latest possible reading
};

struct DateCodeProblem {
  enum class Kind { no_digits, no_such_week, in_the_future };
  Kind kind;
  std::string week;  // no_such_week: as coded
  TyreAge age;       // in_the_future: week and year
};

tl::expected<TyreAge, DateCodeProblem> read_date_code(std::string_view text, Date today);

// Above six years care, above ten not fit: advice of car and tyre makers.
inline constexpr double years_of_care = 6.0;
inline constexpr double years_at_most = 10.0;

const Source& date_code_source();
const Source& age_advice_source();

}  // namespace treadwater::standard
