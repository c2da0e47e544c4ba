// Age: care over six years, not fit over ten, the spare included.
#pragma once

#include <string_view>

#include "core/judge/finding.hpp"
#include "core/standard/tyre_age.hpp"

namespace treadwater::judge {

// With the week it was made in.
void judge_age(const standard::TyreAge& age, standard::Date today, Findings& findings);
// By years alone.
void judge_age(double years, Findings& findings);
// Of one of several tyres, by its name and years alone.
void judge_age(const Text& tyre, double years, Findings& findings);
// By the week that a sidewall text names, if it names one.
void judge_marked_age(std::string_view date_code, standard::Date today, Findings& findings);

}  // namespace treadwater::judge
