// What a choice is worth under uncertainty, from a table of losses: expected loss, regret against
// hindsight, worst case, and the mean of the worst tail.
//
//   regret    R(a, w) = loss(a, w) - least loss in w over the choices of the table
//             Anderson et al., "An Introduction to Management Science", eq. 13.1, in which payoffs
//             stand where losses stand here (a payoff is a negative loss).
//   CVaR      at a level b: min over t of { t + E[(L - t)+] / (1 - b) }, the mean of the worst
//             1 - b of the chances. Rockafellar and Uryasev, "Conditional value-at-risk for general
//             loss distributions", 2002.
//
// Range: finite losses, chances that sum to 1, level 0 to below 1. Exact.
#pragma once

#include <cstddef>
#include <vector>

#include "core/standard/source.hpp"

namespace treadwater::stage {

struct LossTable {
  std::size_t states;
  std::vector<double> chance;  // of each state
  std::vector<double> loss;    // row by row, one row of states for each choice
};

struct Judgement {
  double expected = 0.0;
  double expected_regret = 0.0;
  double largest_regret = 0.0;
  double tail_mean = 0.0;  // CVaR
  double worst = 0.0;      // over states with a chance above 0
};

Judgement judge(const LossTable& table, std::size_t choice, double tail_level);

const Source& regret_source();
const Source& tail_source();

}  // namespace treadwater::stage
