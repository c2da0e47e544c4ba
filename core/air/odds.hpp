// The odds of a puncture: Poisson. Punctures come one by one, independently, at a steady rate.
//
// Common practice, no source: about one in 18 months of driving, a hole of about 3.2 mm (1/8 in) in
// the crown, mostly from a nail without a head. Over a distance the rate needs a year's driving:
// 12 000 km unless the driver says otherwise. The caller can change all of it. Rough stages and
// sharp gravel are worse by an unpublished factor.
// Range: exposure 0 and up. A rate or exposure that is negative or not a number counts as a certain
// puncture.
#pragma once

#include "core/quantity/quantity.hpp"
#include "core/standard/source.hpp"

namespace treadwater::air {

struct PunctureRate {
  Duration one_in = months(18.0);
  Length a_year = kilometres(12000.0);
};

inline constexpr Length usual_hole = inches(0.125);

// The mean number of punctures.
double expected_punctures(const PunctureRate& rate, Duration time);
double expected_punctures(const PunctureRate& rate, Length distance);

// The chance of more punctures than spares: of being stranded. From 0 to 1.
double chance_of_more_than(int spares, double expected);

const Source& puncture_rate_source();

}  // namespace treadwater::air
