// A bare number has no unit and is no length.
#include "core/quantity/quantity.hpp"

using namespace treadwater;

double take(Length l) { return in_millimetres(l); }

double use() {
#ifdef SHOULD_FAIL
  return take(5.0);
#else
  return take(millimetres(5.0));
#endif
}
