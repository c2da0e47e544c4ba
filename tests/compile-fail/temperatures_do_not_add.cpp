// Two temperatures do not add; a temperature and a difference do.
#include "core/quantity/quantity.hpp"

using namespace treadwater;

Temperature use() {
#ifdef SHOULD_FAIL
  return celsius(20.0) + celsius(40.0);
#else
  return celsius(20.0) + kelvin_difference(40.0);
#endif
}
