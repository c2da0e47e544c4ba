// The least time that could be lost by somebody who knew the weather of all stages and obeys wear
// and rules.
//
// Depth first, cheapest set first; stops at the bound without wear. For this room only.
#pragma once

#include <cstddef>
#include <vector>

#include "core/stage/model.hpp"

namespace treadwater::stage {

class Hindsight {
 public:
  explicit Hindsight(const Model& model);
  // Of one path of weather, s. If it is too much to calculate, the bound, and `is_bound` is set.
  double best(const std::vector<std::size_t>& weather, bool& is_bound);

 private:
  void search(std::size_t leg, double lost, std::size_t run);

  const Model& m_;
  std::vector<double> lost_;
  std::vector<int> wear_;
  std::vector<double> rest_;  // by leg: without any limit on wear
  std::vector<int> worn_;
  std::vector<int> used_;
  double best_ = 0.0;
  int steps_ = 0;
};

}  // namespace treadwater::stage
