// A point on the scale is not a step along it: 10 °C is 283.15 K, a rise of 10 K is 10 K.
#include "core/quantity/quantity.hpp"

using namespace treadwater;

TemperatureDifference use() {
#ifdef SHOULD_FAIL
  return celsius(10.0);
#else
  return celsius(30.0) - celsius(20.0);
#endif
}
