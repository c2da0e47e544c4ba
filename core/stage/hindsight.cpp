#include "core/stage/hindsight.hpp"

#include <algorithm>

namespace treadwater::stage {
namespace {

constexpr int most_steps = 3000;  // of one path

}  // namespace

Hindsight::Hindsight(const Model& model)
    : m_(model),
      lost_(m_.legs * m_.sets.size()),
      wear_(lost_.size()),
      rest_(m_.legs + 1),
      used_(m_.sets.size()) {}

double Hindsight::best(const std::vector<std::size_t>& weather, bool& is_bound) {
  const std::size_t sets = m_.sets.size();
  for (std::size_t leg = m_.legs; leg-- > 0;) {
    double least = infinity;
    for (std::size_t s = 0; s < sets; ++s) {
      double seconds = 0.0;
      int worn = 0;
      const std::size_t k = m_.kind_of[s];
      for (std::size_t i = m_.leg_first[leg]; i < m_.leg_first[leg + 1]; ++i) {
        const std::size_t cell = m_.at(i, k, weather[i]);
        seconds += m_.ruled_in[i * m_.kinds + k] != 0 ? m_.lost[cell] : infinity;
        worn = std::min(worn + m_.wear[cell], 2 * life_units);
      }
      lost_[leg * sets + s] = worn <= m_.limit[k] ? seconds : infinity;
      wear_[leg * sets + s] = worn;
      least = std::min(least, lost_[leg * sets + s]);
    }
    rest_[leg] = least + rest_[leg + 1];
  }
  worn_ = m_.worn;
  std::fill(used_.begin(), used_.end(), 0);
  best_ = infinity;
  steps_ = 0;
  search(0, 0.0, 0);
  if (steps_ <= most_steps) return best_;
  is_bound = true;
  return rest_[0];
}

void Hindsight::search(std::size_t leg, double lost, std::size_t run) {
  if (++steps_ > most_steps || !(lost + rest_[leg] < best_ - 1e-9)) return;
  if (leg == m_.legs) {
    best_ = lost;
    return;
  }
  const std::size_t sets = m_.sets.size();
  const double* seconds = &lost_[leg * sets];
  std::uint8_t order[most_sets];
  std::size_t count = 0;
  for (std::size_t s = 0; s < sets; ++s) {
    const std::size_t k = m_.kind_of[s];
    if (!(seconds[s] < infinity) || worn_[s] + wear_[leg * sets + s] > m_.limit[k]) continue;
    if (m_.most_used > 0 && used_[s] == 0 && run >= m_.most_used) continue;
    if (s > 0 && m_.kind_of[s - 1] == k && worn_[s - 1] == worn_[s] && used_[s - 1] == used_[s])
      continue;
    std::size_t i = count++;
    for (; i > 0 && seconds[s] < seconds[order[i - 1]]; --i) order[i] = order[i - 1];
    order[i] = static_cast<std::uint8_t>(s);
  }
  for (std::size_t i = 0; i < count; ++i) {
    const std::size_t s = order[i];
    worn_[s] += wear_[leg * sets + s];
    ++used_[s];
    search(leg + 1, lost + seconds[s], run + (used_[s] == 1 ? 1 : 0));
    --used_[s];
    worn_[s] -= wear_[leg * sets + s];
  }
}

}  // namespace treadwater::stage
