// The first choice, and following the plan from it.
#include "core/stage/solver.hpp"

#include <algorithm>
#include <cmath>

namespace treadwater::stage {

std::vector<FirstChoice> Solver::first_choices(const Question& question) {
  attitude_ = question.attitude;
  State root{0, 0, {}};
  for (std::size_t s = 0; s < m_.sets.size(); ++s)
    root.codes[s] = static_cast<std::uint16_t>(m_.worn[s]);
  settle(0, root.codes);
  find(root);
  const Candidates list = candidates(root, aim_of_attitude());
  std::vector<First> first;
  for (std::size_t c = 0; c < list.count && !too_much_; ++c) {
    const Value v = try_set(root, list.set[c], aim_of_attitude());
    if (v.mean < infinity)
      first.push_back({list.set[c], v, aim_of_attitude() == least_mean ? v.mean : v.worst, 0});
  }
  if (attitude_ == Attitude::steady && !first.empty() && !too_much_) judge_tails(first, question);
  if (first.empty() || too_much_) return {};

  rank(first);
  std::vector<FirstChoice> choices;
  for (const First& f : first) {
    first_ = f.place;
    choices.push_back({choose(start(), 0, 0), f.loss, f.loss - first[0].loss});
  }
  first_ = first[0].place;
  planned_ = first[0].value;
  threshold_ = first[0].threshold;
  return choices;
}

// Best first: by the loss, then by the worst case for the average, the mean for the others.
void Solver::rank(std::vector<First>& first) const {
  const auto second = [&](const First& f) {
    return attitude_ == Attitude::average ? f.value.worst : f.value.mean;
  };
  for (std::size_t i = 1; i < first.size(); ++i)
    for (std::size_t j = i; j > 0 && better({first[j].loss, second(first[j])},
                                            {first[j - 1].loss, second(first[j - 1])}, least_mean);
         --j)
      std::swap(first[j], first[j - 1]);
}

// ---- following it ----

Solver::Course Solver::start() const {
  Course course;
  for (const int worn : m_.worn) course.codes.push_back(static_cast<std::uint16_t>(worn));
  course.used.assign(m_.sets.size(), 0);
  course.fitted = m_.sets.size();
  return course;
}

std::size_t Solver::choose(const Course& course, std::size_t leg, std::size_t seen) {
  State state{static_cast<std::uint8_t>(leg), static_cast<std::uint8_t>(seen), {}};
  std::size_t used = 0;
  for (std::size_t s = 0; s < m_.sets.size(); ++s) {
    state.codes[s] = course.codes[s];
    if (m_.most_used > 0 && course.used[s] != 0) {
      state.codes[s] |= used_bit;
      ++used;
    }
  }
  const Codes bare = state.codes;
  settle(leg, state.codes);
  const std::size_t chosen = leg > 0 ? best_in(state, course.lost) : first_;
  // Any set of the kind whose wear comes to the same: rather the one on the car, then one run
  // before.
  const std::size_t k = m_.kind_of[chosen];
  const bool full = m_.most_used > 0 && used >= m_.most_used;
  std::size_t best = m_.sets.size();
  int best_rank = 0;
  for (std::size_t s = 0; s < m_.sets.size(); ++s) {
    if (m_.kind_of[s] != k || settled(leg, k, bare[s], full) != state.codes[chosen]) continue;
    const int rank = s == course.fitted ? 3 : course.used[s] != 0 ? 2 : 1;
    if (rank > best_rank) best = s, best_rank = rank;
  }
  return best;
}

// What goes on in a state that the plan has come to, with so much time lost.
std::size_t Solver::best_in(const State& state, double lost) {
  const std::size_t node = find(state);
  value(node, aim_of_attitude());
  const double in_hand = static_cast<double>(threshold_) * step_ - lost;
  if (attitude_ != Attitude::steady || in_hand < -tie)
    return nodes_[node].choice[aim_of_attitude()];
  const auto mark = static_cast<std::size_t>(std::max(0.0, std::floor(in_hand / step_ + tie)));
  return tails_[tail(node)].choice[mark];
}

Solved solve(const Event& event, const Question& question, int wear_levels, std::uint64_t& work,
             std::size_t marks) {
  const Model model(event, question.attitude == Attitude::safe);
  Solver solver(model, wear_levels, marks);
  Solved solved{solver.first_choices(question), solver.too_much()};
  work += solver.work() + 20000U;
  return solved;
}

}  // namespace treadwater::stage
