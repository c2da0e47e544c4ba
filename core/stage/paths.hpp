// Courses of weather through all stages of an event: every one if there are few, otherwise samples
// from a fixed start, the same on every machine. For this room only.
#pragma once

#include <cstddef>
#include <vector>

#include "core/quantity/splitmix.hpp"
#include "core/stage/model.hpp"

namespace treadwater::stage {

class Paths {
 public:
  explicit Paths(const Model& model);
  bool every() const { return every_; }
  std::size_t count() const { return count_; }
  // The weathers of a path, and its chance, which may be 0. Sampled paths come in turn, whatever
  // `n`.
  double path(std::size_t n, std::vector<std::size_t>& weather);

 private:
  double uniform() { return static_cast<double>(draws_.next() >> 11) * 0x1p-53; }
  std::size_t draw(std::size_t stage, const Chances& chances);

  const Model& m_;
  std::vector<std::vector<std::size_t>> possible_;
  bool every_ = true;
  std::size_t count_ = 0;
  SplitMix64 draws_{20260101};
};

}  // namespace treadwater::stage
