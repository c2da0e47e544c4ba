// Age: above six years care, above ten not fit, the spare included.
#pragma once

#include <string_view>

#include "core/judge/finding.hpp"
#include "core/standard/tyre_age.hpp"

namespace treadwater::judge {

// With the week of manufacture.
void judge_age(const standard::TyreAge& age, standard::Date today, Findings& findings);
// By years alone.
void judge_age(double years, Findings& findings);
// For one of several tyres, by its name and years alone.
void judge_age(const Text& tyre, double years, Findings& findings);
// By the week in a sidewall text, if it has one.
void judge_marked_age(std::string_view date_code, standard::Date today, Findings& findings);

}  // namespace treadwater::judge
