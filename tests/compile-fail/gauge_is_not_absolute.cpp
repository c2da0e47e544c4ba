// A gauge pressure where an absolute one is meant must not compile: 220 kPa on the gauge is 321 kPa
// absolute, and the gas law needs the latter.
#include "core/quantity/quantity.hpp"

using namespace treadwater;

double twice(AbsolutePressure p) { return 2.0 * in_kilopascals_absolute(p); }

double use() {
#ifdef SHOULD_FAIL
  return twice(kilopascals(220.0));
#else
  return twice(absolute(kilopascals(220.0), kilopascals_absolute(101.325)));
#endif
}
