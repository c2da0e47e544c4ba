#include "core/air/odds.hpp"

#include <algorithm>
#include <cmath>

namespace treadwater::air {
namespace {

constexpr Source rate_source{"puncture-rate", "About one puncture in 18 months of driving",
                             "a 3.2 mm hole in the crown; no source", "",
                             Standing::common_practice};

constexpr int most_spares = 100;  // more are counted as so many

}  // namespace

double expected_punctures(const PunctureRate& rate, Duration time) { return time / rate.one_in; }

double expected_punctures(const PunctureRate& rate, Length distance) {
  return expected_punctures(rate, months(12.0) * (distance / rate.a_year));
}

double chance_of_more_than(int spares, double expected) {
  if (spares < 0 || !(expected >= 0.0 && std::isfinite(expected))) return 1.0;
  double term = std::exp(-expected);
  double fewer = 0.0;
  for (int i = 1; i <= std::min(spares, most_spares); ++i) {
    fewer += term;
    term *= expected / i;
  }
  // 1 - (fewer + term), with the first 1 - exp(-expected) kept exact where it is small.
  return spares == 0 ? -std::expm1(-expected) : std::clamp(1.0 - fewer - term, 0.0, 1.0);
}

const Source& puncture_rate_source() { return rate_source; }

}  // namespace treadwater::air
