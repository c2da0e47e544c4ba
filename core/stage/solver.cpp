#include "core/stage/solver.hpp"

#include <algorithm>
#include <cmath>

namespace treadwater::stage {

Solver::Solver(const Model& model, int wear_levels, std::size_t marks)
    : m_(model), levels_(wear_levels), marks_(marks) {
  const std::size_t cells = m_.legs * m_.kinds;
  rest_all_.resize(cells);
  rest_least_.resize(cells);
  for (std::size_t k = 0; k < m_.kinds; ++k) {
    int all = 0;
    int least = more_than_any_life;
    for (std::size_t leg = m_.legs; leg-- > 0;) {
      if (m_.allowed[leg * m_.kinds + k] != 0) {
        all += m_.worst(leg, k);
        least = std::min(least, m_.worst(leg, k));
      }
      rest_all_[leg * m_.kinds + k] = all;
      rest_least_[leg * m_.kinds + k] = least;
    }
  }
  follow_wear_.assign(m_.kinds, 0);
  for (std::size_t s = 0; s < m_.sets.size(); ++s)
    if (m_.worn[s] + rest_all_[m_.kind_of[s]] > m_.limit[m_.kind_of[s]])
      follow_wear_[m_.kind_of[s]] = 1;
  build(0.0, endings_);
  relax();
  table_.assign(1024, 0);
}

// ---- states ----

// One set's wear, as far as it matters from this leg on. `full`: no further set may be run.
std::uint16_t Solver::settled(std::size_t leg, std::size_t k, std::uint16_t code, bool full) const {
  const auto used = static_cast<std::uint16_t>(code & used_bit);
  std::uint16_t wear = code & wear_bits;
  const int least = rest_least_[leg * m_.kinds + k];
  if (wear != done) {
    if (least == more_than_any_life || (full && used == 0))
      wear = done;
    else if (wear == lasts || wear + rest_all_[leg * m_.kinds + k] <= m_.limit[k])
      wear = lasts;
    else if (wear + least > m_.limit[k])
      wear = done;
  }
  return static_cast<std::uint16_t>(used | wear);
}

void Solver::settle(std::size_t leg, Codes& codes) const {
  const std::size_t count = m_.sets.size();
  std::size_t used = 0;
  for (std::size_t s = 0; s < count; ++s) used += (codes[s] & used_bit) != 0 ? 1U : 0U;
  const bool full = m_.most_used > 0 && used >= m_.most_used;
  for (std::size_t s = 0; s < count; ++s) codes[s] = settled(leg, m_.kind_of[s], codes[s], full);
  for (std::size_t s = 0; s < count; ++s) {
    // A set that lasts makes the others of its kind unnecessary, but a fresh one does not replace
    // one already run if the rules count them.
    if ((codes[s] & wear_bits) == lasts)
      for (std::size_t t = 0; t < count; ++t)
        if (t != s && m_.kind_of[t] == m_.kind_of[s] &&
            (codes[t] & used_bit) <= (codes[s] & used_bit))
          codes[t] |= done;
    for (std::size_t t = s; t > 0 && m_.kind_of[t - 1] == m_.kind_of[t] && codes[t] < codes[t - 1];
         --t)
      std::swap(codes[t], codes[t - 1]);
  }
}

Solver::State Solver::after(const State& state, std::size_t set, const Ending& ending) const {
  State next{static_cast<std::uint8_t>(state.leg + 1), static_cast<std::uint8_t>(ending.weather()),
             state.codes};
  std::uint16_t& code = next.codes[set];
  if ((code & wear_bits) != lasts) code = static_cast<std::uint16_t>(code + ending.wear());
  if (m_.most_used > 0) code |= used_bit;
  settle(next.leg, next.codes);
  return next;
}

std::size_t Solver::find(const State& state) {
  const auto hash = [&](const State& s) {
    std::uint32_t h = s.leg * 8U + s.weather;
    for (const std::uint16_t code : s.codes) h = (h ^ code) * 0x9E3779B1U, h ^= h >> 15;
    return h;
  };
  const auto place = [&](const State& s) {
    std::size_t i = hash(s) & (table_.size() - 1);
    while (table_[i] != 0 && !(nodes_[table_[i] - 1].state == s)) i = (i + 1) & (table_.size() - 1);
    return i;
  };
  std::size_t i = place(state);
  if (table_[i] != 0) return table_[i] - 1;
  if (nodes_.size() >= (attitude_ == Attitude::steady ? most().tails : most().nodes)) {
    too_much_ = true;
    return 0;
  }
  nodes_.push_back({state, {}, {no_choice, no_choice}, {false, false}, 0});
  table_[i] = static_cast<std::uint32_t>(nodes_.size());
  const std::size_t found = nodes_.size() - 1;
  if (nodes_.size() * 2 > table_.size()) {
    table_.assign(table_.size() * 2, 0);
    for (std::size_t n = 0; n < nodes_.size(); ++n)
      table_[place(nodes_[n].state)] = static_cast<std::uint32_t>(n + 1);
  }
  return found;
}

Solver::Candidates Solver::candidates(const State& state, Aim aim) const {
  Candidates list;
  const auto bound = [&](std::size_t set) {
    const Value& v = relaxed_[m_.at(state.leg, m_.kind_of[set], state.weather)];
    return aim == least_mean ? v.mean : v.worst;
  };
  for (std::size_t s = 0; s < m_.sets.size(); ++s) {
    const std::size_t k = m_.kind_of[s];
    const int wear = state.codes[s] & wear_bits;
    if (wear == done || m_.allowed[state.leg * m_.kinds + k] == 0) continue;
    if (wear != lasts && wear + m_.worst(state.leg, k) > m_.limit[k]) continue;
    if (s > 0 && m_.kind_of[s - 1] == k && state.codes[s - 1] == state.codes[s]) continue;
    std::size_t i = list.count++;
    for (; i > 0 && bound(s) < bound(list.set[i - 1]); --i) list.set[i] = list.set[i - 1];
    list.set[i] = static_cast<std::uint8_t>(s);
  }
  return list;
}

// ---- the average and the safe ----

bool Solver::better(const Value& a, const Value& b, Aim aim) const {
  const double a1 = aim == least_mean ? a.mean : a.worst;
  const double b1 = aim == least_mean ? b.mean : b.worst;
  if (a1 < b1 - tie) return true;
  if (!(a1 <= b1 + tie)) return false;
  return aim == least_mean ? a.worst < b.worst - tie : a.mean < b.mean - tie;
}

Solver::Value Solver::try_set(const State& state, std::size_t set, Aim aim) {
  const std::size_t cell = m_.at(state.leg, m_.kind_of[set], state.weather);
  Value sum{0.0, 0.0};
  for (std::size_t e = endings_.first[cell]; e < endings_.first[cell + 1]; ++e) {
    const Ending end = endings_.all[e];
    Value rest{0.0, 0.0};
    if (state.leg + 1U < m_.legs) rest = value(find(after(state, set, end)), aim);
    work_ += 20;
    if (!(rest.mean < infinity)) return {};
    sum.mean += end.lost + end.chance * rest.mean;
    sum.worst = std::max(sum.worst, end.worst + rest.worst);
  }
  return sum;
}

Solver::Value Solver::value(std::size_t node, Aim aim) {
  if (too_much_) return {};
  if (nodes_[node].solved[aim]) return nodes_[node].value[aim];
  const State state = nodes_[node].state;
  const Candidates list = candidates(state, aim);
  Value best;
  std::uint8_t choice = no_choice;
  for (std::size_t i = 0; i < list.count; ++i) {
    const std::size_t set = list.set[i];
    if (choice != no_choice) {
      const Value& bound = relaxed_[m_.at(state.leg, m_.kind_of[set], state.weather)];
      if (aim == least_mean ? bound.mean > best.mean + tie : bound.worst > best.worst + tie) break;
    }
    const Value v = try_set(state, set, aim);
    if (!better(v, best, aim)) continue;
    best = v;
    choice = list.set[i];
  }
  Node& n = nodes_[node];
  n.value[aim] = best;
  n.choice[aim] = choice;
  n.solved[aim] = true;
  return best;
}

}  // namespace treadwater::stage
