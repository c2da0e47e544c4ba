// Reading what a person writes: "33 psi", "2,3 bar", "7/32 in", "430kg".
//
// One number and one unit, in that order, with or without a space; decimal point or decimal comma;
// upper or lower case; digits of any script; "1 000" with any space; a fraction ("7/32 in", "1-3/16
// in"), and times of two units ("1 h 20 min"). A bare number is read
// in the unit the request names. "1,000" is refused if both one and a thousand would be in range.
// Each error has its own code, with what was read; words/problem.hpp makes a sentence of it.
//
// Range: finite numbers inside the request's bounds. Nothing throws; nothing out of range is
// returned.
#pragma once

#include <string>
#include <string_view>
#include <tl/expected.hpp>

#include "core/quantity/quantity.hpp"
#include "core/quantity/text.hpp"

namespace treadwater {

enum class Dimension {
  pressure,
  mass,
  length,
  speed,
  temperature,
  force,
  rain,    // stored in mm/h
  time,    // stored in seconds
  number,  // a count or a share; "%" may follow it
};

// What is asked for. Bounds are in the stored unit of the dimension's type (see quantity.hpp); the
// texts show the bounds and an example to a person.
struct QuantityRequest {
  Dimension dimension;
  std::string_view default_unit;  // for a bare number: "kg"
  double least;
  double most;
  std::string_view least_text;  // "20 kg"
  std::string_view most_text;   // "8000 kg"
  std::string_view example;     // "430 kg"
};

struct ReadProblem {
  // missing, no_number, two_numbers, bad_fraction, thousands, too_large, unknown_unit,
  // wrong_dimension, unit_needed, inch_fraction, below_range, above_range, too_long
  std::string_view code;
  std::string written;         // as it was given
  std::string unit;            // unknown_unit: lower case, without spaces
  Dimension dimension{};       // wrong_dimension: the unit's
  std::string fraction;        // inch_fraction: "5/32"
  double number = 0.0;         // in the unit written
  std::size_t length = 0;      // too_long: bytes
  bool divides_twice = false;  // two_numbers: a fraction of a fraction
  bool meant_psi = false;      // above_range: in psi the same number would do
};

// The number in the stored unit of the dimension's type.
tl::expected<double, ReadProblem> read_stored(std::string_view text,
                                              const QuantityRequest& request);

// The same as a typed quantity. The caller's type must be the request's dimension.
template <class Q>
tl::expected<Q, ReadProblem> read_quantity(std::string_view text, const QuantityRequest& request) {
  return read_stored(text, request).map([](double stored) { return Q::stored(stored); });
}

}  // namespace treadwater
