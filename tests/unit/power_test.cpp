// Powers and random numbers that are the same everywhere.
#include "core/quantity/power.hpp"

#include <cmath>

#include "core/quantity/splitmix.hpp"
#include "tests/support/catch.hpp"

using namespace treadwater;
using namespace treadwater::testing;

TEST_CASE("log2_of and exp2_of agree with the C library to 1e-13") {
  double worst_log = 0.0;
  double worst_exp = 0.0;
  SplitMix64 stream(7);
  for (int i = 0; i < 200000; ++i) {
    const double y = -60.0 + 120.0 * static_cast<double>(stream.next() >> 11) / 9007199254740992.0;
    const double x = std::exp2(y);
    worst_log = std::max(worst_log, std::fabs(log2_of(x) - std::log2(x)));
    worst_exp = std::max(worst_exp, std::fabs(exp2_of(y) / x - 1.0));
  }
  CHECK(worst_log < 1e-13);
  CHECK(worst_exp < 1e-13);
}

TEST_CASE("power agrees with the C library to 1e-13 at the exponents in use") {
  double worst = 0.0;
  SplitMix64 stream(11);
  for (int i = 0; i < 50000; ++i) {
    const double x =
        std::exp2(-20.0 + 30.0 * static_cast<double>(stream.next() >> 11) / 9007199254740992.0);
    for (const double y : {0.04, 0.06, 0.14, 0.3, 2.0 / 3.0, -2.0 / 3.0, -4.0 / 3.0, -0.259, 0.6})
      worst = std::max(worst, std::fabs(power(x, y) / std::pow(x, y) - 1.0));
  }
  CHECK(worst < 1e-13);
}

TEST_CASE("whole powers of two are exact, and the ends are held") {
  for (int n = -60; n <= 60; ++n) {
    CHECK(exp2_of(n) == std::ldexp(1.0, n));
    CHECK(log2_of(std::ldexp(1.0, n)) == n);
  }
  CHECK(power(0.0, 0.3) == 0.0);
  CHECK(power(-1.0, 0.3) == 0.0);
  CHECK(std::isnan(power(std::nan(""), 0.3)));
  CHECK(exp2_of(5000.0) == std::ldexp(1.0, 1000));
  CHECK(exp2_of(std::nan("")) == std::ldexp(1.0, -1000));
}

// The five numbers printed for this start in many places.
TEST_CASE("SplitMix64 from 1234567") {
  SplitMix64 stream(1234567);
  for (const std::uint64_t expected :
       {6457827717110365317ULL, 3203168211198807973ULL, 9817491932198370423ULL,
        4593380528125082431ULL, 16408922859458223821ULL})
    CHECK(stream.next() == expected);
}
