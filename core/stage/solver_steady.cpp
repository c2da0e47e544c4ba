// The steady: the tail of the time lost.
#include "core/stage/solver.hpp"

#include <algorithm>
#include <cmath>

namespace treadwater::stage {
namespace {

constexpr std::size_t few_nodes = 500;  // few enough for the whole scale of times
constexpr std::size_t marks_for_many = 100;

}  // namespace

// excess[i]: the least expected (time lost from here on - i steps)+. With less than nothing in hand
// every second counts, and the excess is the least mean plus what is missing.

void Solver::add_excess(const Ending& end, double rest, const double* excess,
                        std::vector<double>& sum) const {
  const std::size_t short_of = std::min(end.mark(), marks_);
  for (std::size_t i = 0; i < short_of; ++i)
    sum[i] += end.lost + end.chance * (rest - static_cast<double>(i) * step_);
  if (excess != nullptr)
    for (std::size_t i = short_of; i < marks_; ++i) sum[i] += end.chance * excess[i - short_of];
}

void Solver::relax_tail() {
  relaxed_tail_.assign(m_.legs * m_.kinds * weathers, {});
  std::vector<std::vector<double>> rest(weathers), here(weathers);
  for (std::size_t leg = m_.legs; leg-- > 0;) {
    for (std::size_t w = 0; w < weathers; ++w) {
      here[w].assign(marks_, infinity);
      for (std::size_t k = 0; k < m_.kinds; ++k) {
        const std::size_t cell = m_.at(leg, k, w);
        std::vector<double>& sum = relaxed_tail_[cell];
        sum.assign(marks_, marked_.first[cell] < marked_.first[cell + 1] ? 0.0 : infinity);
        for (std::size_t e = marked_.first[cell]; e < marked_.first[cell + 1]; ++e) {
          const Ending& end = marked_.all[e];
          const bool last = leg + 1 == m_.legs;
          add_excess(end, relaxed_rest_[(leg + 1) * weathers + end.weather()].mean,
                     last ? nullptr : rest[end.weather()].data(), sum);
          work_ += marks_ / 5;
        }
        for (std::size_t i = 0; i < marks_; ++i) here[w][i] = std::min(here[w][i], sum[i]);
      }
    }
    std::swap(rest, here);
  }
}

Solver::Value Solver::try_tail(const State& state, std::size_t set, std::vector<double>& sum) {
  const std::size_t cell = m_.at(state.leg, m_.kind_of[set], state.weather);
  Value v{0.0, 0.0};
  const bool last = state.leg + 1U == m_.legs;
  sum.assign(marks_, 0.0);
  for (std::size_t e = marked_.first[cell]; e < marked_.first[cell + 1]; ++e) {
    const Ending end = marked_.all[e];
    Value rest{0.0, 0.0};
    const double* excess = nullptr;
    if (!last) {
      const std::size_t node = find(after(state, set, end));
      rest = value(node, least_mean);
      if (!(rest.mean < infinity)) return {};
      const Tail& t = tails_[tail(node)];
      if (too_much_) return {};
      rest.worst = t.worst;
      excess = t.excess.data();
    }
    v.mean += end.lost + end.chance * rest.mean;
    v.worst = std::max(v.worst, end.worst + rest.worst);
    add_excess(end, rest.mean, excess, sum);
    work_ += marks_ / 5;
  }
  return v;
}

std::size_t Solver::tail(std::size_t node) {
  if (nodes_[node].tail != 0) return nodes_[node].tail - 1;
  if (tails_.size() >= most().tails || too_much_) {
    too_much_ = true;
    return 0;
  }
  const State state = nodes_[node].state;
  const Candidates list = candidates(state, least_mean);
  Tail best;
  best.excess.assign(marks_, infinity);
  best.choice.assign(marks_, no_choice);
  std::vector<double> mean(marks_, infinity);
  std::vector<double> sum;
  best.worst = nodes_[node].value[least_mean].worst;
  for (std::size_t c = 0; c < list.count; ++c) {
    const std::size_t cell = m_.at(state.leg, m_.kind_of[list.set[c]], state.weather);
    // Could it win anywhere, if its tyres never wore out?
    const auto wins = [&](double excess, double its_mean, std::size_t i) {
      return excess < best.excess[i] - tie ||
             (excess <= best.excess[i] + tie && its_mean < mean[i] - tie);
    };
    bool may = false;
    for (std::size_t i = 0; i < marks_ && !may; ++i)
      may = wins(relaxed_tail_[cell][i], relaxed_[cell].mean, i);
    if (!may) continue;
    const Value v = try_tail(state, list.set[c], sum);
    if (too_much_) return 0;
    if (!(v.mean < infinity)) continue;
    bool won = false;
    for (std::size_t i = 0; i < marks_; ++i) {
      if (!wins(sum[i], v.mean, i)) continue;
      best.excess[i] = sum[i];
      best.choice[i] = list.set[c];
      mean[i] = v.mean;
      won = true;
    }
    if (won) best.worst = std::max(best.worst, v.worst);
  }
  tails_.push_back(std::move(best));
  nodes_[node].tail = static_cast<std::uint32_t>(tails_.size());
  return tails_.size() - 1;
}

// The best t of a choice is no more than its CVaR, and that no more than its worst case, nor than
// its mean over the tail's share, nor than the CVaR of a plan that rounds wear up further, which is
// soon made. A scale up to the third least of these holds the three best.
void Solver::mark_times(const std::vector<First>& first, const Question& question) {
  const double tail_share = 1.0 - question.tail_level;
  double least[3] = {infinity, infinity, infinity};
  const State root = nodes_[0].state;
  for (const First& f : first) {
    double bound = std::min(f.value.mean / tail_share, try_set(root, f.place, least_worst).worst);
    for (double& l : least)
      if (bound < l) std::swap(bound, l);
  }
  const std::size_t third = std::min<std::size_t>(3, first.size()) - 1;
  double top = least[third];
  const bool many = nodes_.size() > few_nodes;
  if (many && levels_ != worst_weather) {
    Solver rough(m_, worst_weather, rough_marks);
    const std::vector<FirstChoice> choices = rough.first_choices(question);
    if (choices.size() > third) top = std::min(top, choices[third].loss);
    work_ += rough.work();
  }
  constexpr double nice[] = {1.0, 2.0, 5.0};
  double ten = 0.001;
  if (many) marks_ = std::min(marks_, marks_for_many);
  for (std::size_t i = 0; step_ * static_cast<double>(marks_ - 1) < top || i == 0; ++i) {
    if (i > 0 && i % 3 == 0) ten *= 10.0;
    step_ = nice[i % 3] * ten;
  }
  if (many) marks_ = static_cast<std::size_t>(top / step_) + 2;
  build(step_, marked_);
  if (!too_much_) relax_tail();
}

// The tail of each first choice, and the threshold at which it is least.
void Solver::judge_tails(std::vector<First>& first, const Question& question) {
  const double tail_share = 1.0 - question.tail_level;
  mark_times(first, question);
  const State root = nodes_[0].state;
  std::vector<double> sum;
  for (First& f : first) {
    if (too_much_) return;
    f.value = try_tail(root, f.place, sum);
    if (too_much_) return;
    f.loss = infinity;
    for (std::size_t i = 0; i < marks_; ++i) {
      const double tail_mean = static_cast<double>(i) * step_ + sum[i] / tail_share;
      if (tail_mean < f.loss - tie) f.loss = tail_mean, f.threshold = i;
    }
  }
}

}  // namespace treadwater::stage
