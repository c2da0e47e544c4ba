#include "core/stage/decision.hpp"

#include <algorithm>
#include <limits>

namespace treadwater::stage {
namespace {

constexpr Source regret_text{"regret", "Anderson et al., An Introduction to Management Science",
                             "eq. 13.1, minimax regret", "", Standing::published};
constexpr Source tail_text{
    "cvar", "Rockafellar and Uryasev, Conditional value-at-risk for general loss distributions",
    "as quoted in two optimisation libraries' manuals", "2002", Standing::secondary};

constexpr double infinity = std::numeric_limits<double>::infinity();

}  // namespace

Judgement judge(const LossTable& table, std::size_t choice, double tail_level) {
  Judgement result;
  const double* loss = &table.loss[choice * table.states];
  const double* chance = table.chance.data();
  result.worst = -infinity;
  for (std::size_t w = 0; w < table.states; ++w) {
    if (!(chance[w] > 0.0)) continue;
    double least = infinity;
    for (std::size_t i = w; i < table.loss.size(); i += table.states)
      least = std::min(least, table.loss[i]);
    const double regret = loss[w] - least;
    result.expected += chance[w] * loss[w];
    result.expected_regret += chance[w] * regret;
    result.largest_regret = std::max(result.largest_regret, regret);
    result.worst = std::max(result.worst, loss[w]);
  }
  // From the worst loss down until the tail is full.
  const double tail = 1.0 - tail_level;
  double filled = 0.0;
  double level = infinity;
  while (filled < tail) {
    double next = -infinity;
    double share = 0.0;
    for (std::size_t w = 0; w < table.states; ++w) {
      if (!(chance[w] > 0.0) || !(loss[w] < level) || loss[w] < next) continue;
      share = loss[w] > next ? chance[w] : share + chance[w];
      next = loss[w];
    }
    // Chances that sum to a little less than 1: the best loss takes the rest.
    if (!(share > 0.0)) break;
    level = next;
    share = std::min(share, tail - filled);
    filled += share;
    result.tail_mean += share * level / tail;
  }
  if (filled < tail) result.tail_mean += (tail - filled) * level / tail;
  return result;
}

const Source& regret_source() { return regret_text; }
const Source& tail_source() { return tail_text; }

}  // namespace treadwater::stage
