// How legs may end, and what could be had if no set ever wore out.
#include "core/stage/solver.hpp"

#include <algorithm>
#include <cmath>

namespace treadwater::stage {
namespace {

constexpr std::size_t most_endings = 4096;  // of one leg

}  // namespace

int Solver::worn_after(std::size_t leg, std::size_t k, int before, std::size_t stage,
                       std::size_t w) const {
  int more = m_.wear[m_.at(stage, k, w)];
  if (levels_ != 0) {
    const auto legs_stages = static_cast<int>(m_.leg_first[leg + 1] - m_.leg_first[leg]);
    const int levels = levels_ == worst_weather ? 1 : levels_ * legs_stages;
    const int level = std::max(1, (m_.worst(leg, k) + levels - 1) / levels);
    more = (more + level - 1) / level * level;
  }
  return std::min(before + more, m_.worst_to[stage * m_.kinds + k]);
}

void Solver::end_leg(std::size_t leg, std::size_t k, std::size_t from, double step,
                     std::vector<Ending>& out) {
  const bool follow = follow_wear_[k] != 0 && leg + 1 < m_.legs;
  std::vector<Ending> ends{{static_cast<std::uint64_t>(from) << 48, 1.0, 0.0, 0.0}};
  std::vector<Ending> next;
  for (std::size_t stage = m_.leg_first[leg]; stage < m_.leg_first[leg + 1]; ++stage) {
    next.clear();
    for (const Ending& end : ends) {
      for (std::size_t w = 0; w < weathers; ++w) {
        const double chance = m_.follows[stage][end.weather()][w];
        if (!(chance > 0.0)) continue;
        const double seconds = m_.lost[m_.at(stage, k, w)];
        const int worn = follow ? worn_after(leg, k, end.wear(), stage, w) : 0;
        const auto add = [&](std::uint64_t mark, double share, double counted) {
          const std::uint64_t key = static_cast<std::uint64_t>(w) << 48 |
                                    static_cast<std::uint64_t>(worn) << 32 |
                                    // Past the scale endings are kept together, with their mean.
                                    std::min<std::uint64_t>(marks_, end.mark() + mark);
          next.push_back({key, share * end.chance, share * (end.lost + end.chance * counted),
                          end.worst + seconds});
        };
        if (!(step > 0.0)) {
          add(0, chance, seconds);
          continue;
        }
        // A time between two marks is a lottery of both.
        const double below = std::floor(seconds / step + tie);
        const double above = std::max(0.0, seconds / step - below);
        const auto mark = static_cast<std::uint64_t>(below);
        if (above < tie) {
          add(mark, chance, seconds);
        } else {
          add(mark, chance * (1.0 - above), below * step);
          add(mark + 1, chance * above, (below + 1.0) * step);
        }
      }
    }
    std::sort(next.begin(), next.end(),
              [](const Ending& a, const Ending& b) { return a.key < b.key; });
    work_ += next.size() * 20;
    ends.clear();
    for (const Ending& end : next) {
      if (ends.empty() || ends.back().key != end.key) {
        ends.push_back(end);
        continue;
      }
      ends.back().chance += end.chance;
      ends.back().lost += end.lost;
      ends.back().worst = std::max(ends.back().worst, end.worst);
    }
    if (ends.size() > most_endings) {
      too_much_ = true;
      return;
    }
  }
  out.insert(out.end(), ends.begin(), ends.end());
}

void Solver::build(double step, Endings& endings) {
  for (std::size_t leg = 0; leg < m_.legs; ++leg)
    for (std::size_t k = 0; k < m_.kinds; ++k)
      for (std::size_t from = 0; from < weathers; ++from) {
        endings.first.push_back(endings.all.size());
        // The first leg has one state only.
        if (m_.allowed[leg * m_.kinds + k] != 0 && (leg > 0 || from == 0) && !too_much_)
          end_leg(leg, k, from, step, endings.all);
      }
  endings.first.push_back(endings.all.size());
}

// What could be had if no set ever wore out: a bound from below.
void Solver::relax() {
  relaxed_.resize(m_.legs * m_.kinds * weathers);
  relaxed_rest_.resize((m_.legs + 1) * weathers);
  for (std::size_t w = 0; w < weathers; ++w) relaxed_rest_[m_.legs * weathers + w] = {0.0, 0.0};
  for (std::size_t leg = m_.legs; leg-- > 0;)
    for (std::size_t k = 0; k < m_.kinds; ++k)
      for (std::size_t w = 0; w < weathers; ++w) {
        const std::size_t cell = m_.at(leg, k, w);
        const std::size_t last = endings_.first[cell + 1];
        if (endings_.first[cell] == last) continue;
        Value sum{0.0, 0.0};
        for (std::size_t e = endings_.first[cell]; e < last; ++e) {
          const Ending& end = endings_.all[e];
          const Value& rest = relaxed_rest_[(leg + 1) * weathers + end.weather()];
          sum.mean += end.lost + end.chance * rest.mean;
          sum.worst = std::max(sum.worst, end.worst + rest.worst);
        }
        relaxed_[cell] = sum;
        Value& best = relaxed_rest_[leg * weathers + w];
        best.mean = std::min(best.mean, sum.mean);
        best.worst = std::min(best.worst, sum.worst);
      }
}

}  // namespace treadwater::stage
