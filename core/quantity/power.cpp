#include "core/quantity/power.hpp"

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <cstring>

namespace treadwater {
namespace {

constexpr double ln2 = 0.693147180559945309417;
constexpr std::uint64_t bits_of_sqrt_half = 0x3FE6A09E667F3BCD;

// 1 + q/3 + q^2/5 + ... + q^10/21, for q up to 0.0295.
constexpr double arctanh_terms[] = {1.0 / 21, 1.0 / 19, 1.0 / 17, 1.0 / 15, 1.0 / 13, 1.0 / 11,
                                    1.0 / 9,  1.0 / 7,  1.0 / 5,  1.0 / 3,  1.0};

// 1 + r + r^2/2 + ... + r^13/13!, for r up to 0.347.
constexpr double exponential_terms[] = {1.0 / 6227020800.0,
                                        1.0 / 479001600.0,
                                        1.0 / 39916800.0,
                                        1.0 / 3628800.0,
                                        1.0 / 362880.0,
                                        1.0 / 40320.0,
                                        1.0 / 5040.0,
                                        1.0 / 720.0,
                                        1.0 / 120.0,
                                        1.0 / 24.0,
                                        1.0 / 6.0,
                                        1.0 / 2.0,
                                        1.0,
                                        1.0};

template <std::size_t N>
double polynomial(const double (&terms)[N], double x) {
  double sum = terms[0];
  for (std::size_t i = 1; i < N; ++i) sum = sum * x + terms[i];
  return sum;
}

std::uint64_t bits_of(double x) {
  std::uint64_t bits;
  std::memcpy(&bits, &x, sizeof bits);
  return bits;
}

double from_bits(std::uint64_t bits) {
  double x;
  std::memcpy(&x, &bits, sizeof x);
  return x;
}

}  // namespace

double log2_of(double x) {
  const std::uint64_t bits = bits_of(x);
  const auto k = static_cast<std::int64_t>(bits - bits_of_sqrt_half) >> 52;
  const double m = from_bits(bits - (static_cast<std::uint64_t>(k) << 52));
  const double f = (m - 1.0) / (m + 1.0);
  return static_cast<double>(k) + (2.0 / ln2) * f * polynomial(arctanh_terms, f * f);
}

double exp2_of(double y) {
  const double held = y > -1000.0 ? std::min(y, 1000.0) : -1000.0;
  const double n = std::floor(held + 0.5);
  const double scale =
      from_bits(static_cast<std::uint64_t>(static_cast<std::int64_t>(n) + 1023) << 52);
  return scale * polynomial(exponential_terms, (held - n) * ln2);
}

double power(double base, double exponent) {
  if (!(base > 0.0)) return std::max(base, 0.0);  // NaN stays NaN
  return exp2_of(exponent * log2_of(base));
}

}  // namespace treadwater
