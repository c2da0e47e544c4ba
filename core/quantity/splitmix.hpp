// A stream of random numbers that is the same on every machine and in every run.
//
// Source: Steele, Lea and Flood, "Fast splittable pseudorandom number generators", OOPSLA 2014: a
// counter that goes up by the golden ratio's bits, and a mix of it (the finaliser known as
// "variant 13"). Constants from memory, held against the five numbers widely printed for a start
// of 1234567.
// Range: any start; the period is 2^64.
#pragma once

#include <cstdint>

namespace treadwater {

class SplitMix64 {
 public:
  explicit constexpr SplitMix64(std::uint64_t start) : state_(start) {}

  constexpr std::uint64_t next() {
    state_ += 0x9E3779B97F4A7C15;
    std::uint64_t z = state_;
    z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9;
    z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
    return z ^ (z >> 31);
  }

 private:
  std::uint64_t state_;
};

}  // namespace treadwater
