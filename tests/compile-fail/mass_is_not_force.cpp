// Kilograms on the scales are not newtons on the road.
#include "core/quantity/quantity.hpp"

using namespace treadwater;

double take(Force f) { return in_newtons(f); }

double use() {
#ifdef SHOULD_FAIL
  return take(kilograms(430.0));
#else
  return take(weight(kilograms(430.0)));
#endif
}
