// Powers that are bit for bit the same natively and in WebAssembly.
//
// The C library's pow, log2 and exp2 differ by a last digit from one system to the next, and a
// distribution sorted from them would too. These use only + - * / and floor, which IEEE 754 rounds
// in one way everywhere (the build forbids fused multiply-add).
//
// log2_of: x = 2^k m with m between sqrt(1/2) and sqrt(2), then the series of the inverse
// hyperbolic tangent of (m - 1)/(m + 1), cut where a term falls below 2^-53.
// exp2_of: the nearest whole power of two, then the exponential series of what is left.
//
// Accuracy, tested against the C library: log2_of within 1e-13, exp2_of and power within 1e-13 of
// their value for results from 2^-60 to 2^60.
// Range: normal positive numbers; a base of zero or less gives 0, and NaN NaN. Results outside
// 2^-1000 to 2^1000 are held at those ends.
// Source: the two series are textbook analysis (Abramowitz and Stegun, 4.1.27 and 4.2.1, 1964;
// clauses from memory).
#pragma once

namespace treadwater {

double log2_of(double x);
double exp2_of(double y);

// base to the power of exponent.
double power(double base, double exponent);

}  // namespace treadwater
