// The age of a tyre from its date code: four digits, week then year ("2319" is week 23 of 2019);
// three before the year 2000, whose decade is not known ("324": week 32 of 1994 or 1984).
//
// Source: 64 FR 36807 (four digits, 1999), 49 CFR 574.5. Weeks are counted here as ISO weeks; the
// US rule counts from the first full week and can differ by a week, so ages are told in years and
// months. Range: weeks 1 to 53, not after today. Anything else is a ReadProblem.
#pragma once

#include <optional>
#include <string_view>
#include <tl/expected.hpp>

#include "core/answer/date.hpp"
#include "core/answer/sheet.hpp"
#include "core/quantity/read.hpp"
#include "core/standard/source.hpp"

namespace treadwater::answer {

struct TyreAge {
  double least_years =
      0.0;  // since the Monday of the coded week, or of its latest possible reading
  bool before_2000 = false;
  int week = 0;
  int year = 0;  // of the latest possible reading
};

tl::expected<TyreAge, ReadProblem> read_date_code(std::string_view text, Date today);

// What an age asks for: care over six years, not fit over ten. `made` is a sentence that is said
// first, with a blank at its end.
std::optional<Caution> caution_of_age(double years, std::string_view made = "");

const Source& date_code_source();
const Source& age_advice_source();

}  // namespace treadwater::answer
