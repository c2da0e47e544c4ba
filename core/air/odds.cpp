#include "core/air/odds.hpp"

#include <algorithm>
#include <cmath>

namespace treadwater::air {
namespace {

constexpr Source rate_source{"puncture-rate", "About one puncture in 18 months of driving",
                             "a 3.2 mm hole in the crown; no source", "",
                             Standing::common_practice};

constexpr int most_spares = 100;  // more count as this many

}  // namespace

double expected_punctures(const PunctureRate& rate, Duration time) { return time / rate.one_in; }

double expected_punctures(const PunctureRate& rate, Length distance) {
  return expected_punctures(rate, months(12.0) * (distance / rate.a_year));
}

double chance_of_more_than(int spares, double expected) {
  if (spares < 0 || !(expected >= 0.0 && std::isfinite(expected))) return 1.0;
  const int held = std::min(spares, most_spares);
  double term = std::exp(-expected);
  double fewer = 0.0;
  int i = 0;
  while (i <= held) {
    fewer += term;
    term *= expected / ++i;
  }
  if (expected > i) return std::clamp(1.0 - fewer, 0.0, 1.0);
  // The terms fall from here: summing them keeps digits that 1 minus the rest would lose.
  double more = 0.0;
  while (more + term > more) {
    more += term;
    term *= expected / ++i;
  }
  return more;
}

const Source& puncture_rate_source() { return rate_source; }

}  // namespace treadwater::air
