#include "core/stage/solver.hpp"

#include <algorithm>
#include <cmath>

namespace treadwater::stage {
namespace {

constexpr std::uint16_t used_bit = 0x8000;  // kept only where the rules limit the sets run
constexpr std::uint16_t lasts = 0x7FFE;     // all legs that are left
constexpr std::uint16_t done = 0x7FFF;      // none of them
constexpr std::uint16_t wear_bits = 0x7FFF;
constexpr std::uint8_t no_choice = 0xFF;
constexpr int never = 1 << 20;  // more wear than any life

constexpr double tie = 1e-9;            // seconds
constexpr std::size_t few_nodes = 500;  // few enough for the whole scale of times
constexpr std::size_t marks_for_many = 100;
// More than these is too much; where wear is rounded up as far as it goes there is nothing left to
// try, so it may be more and take longer.
struct Most {
  std::size_t nodes, tails;
};
constexpr Most usual = {60000, 3000};
constexpr Most at_last = {400000, 30000};
constexpr std::size_t most_endings = 4096;  // of one leg

int units(double share) {
  const double u = std::ceil(share * life_units - 1e-6);
  return u < never ? static_cast<int>(u) : never;
}

}  // namespace

// ---- the event in numbers ----

Model::Model(const Event& event, bool careful) : stages(event.stages.size()) {
  leg_first.push_back(0);
  for (std::size_t i = 0; i < stages; ++i)
    if (event.stages[i].halt_after >= Halt::tyre_zone || i + 1 == stages)
      leg_first.push_back(i + 1);
  legs = leg_first.size() - 1;

  std::vector<std::size_t> kind_of_entry;
  for (const TyreSet& set : event.sets) {
    std::size_t k = 0;
    while (k < kind.size() && !(*kind[k] == set.kind)) ++k;
    if (k == kind.size()) kind.push_back(&set.kind);
    kind_of_entry.push_back(k);
  }
  kinds = kind.size();
  for (std::size_t k = 0; k < kinds; ++k) {
    limit.push_back(static_cast<int>(usable_life(*kind[k], event.rules) * life_units + 1e-6));
    for (std::size_t e = 0; e < event.sets.size(); ++e) {
      if (kind_of_entry[e] != k) continue;
      // No more of a set than there are legs can be of use.
      for (int n = 1; n <= event.sets[e].count && n <= static_cast<int>(legs); ++n) {
        sets.push_back({e, n});
        kind_of.push_back(k);
        worn.push_back(units(event.sets[e].worn));
      }
    }
  }
  if (event.rules.most_sets && static_cast<std::size_t>(*event.rules.most_sets) < sets.size())
    most_used = static_cast<std::size_t>(*event.rules.most_sets);

  Follows first;
  first.fill(event.stages[0].chances);
  lost.resize(stages * kinds * weathers);
  wear.resize(lost.size());
  allowed.assign(legs * kinds, 1);
  for (std::size_t i = 0, leg = 0; i < stages; ++i) {
    const Stage& stage = event.stages[i];
    if (leg_first[leg + 1] == i) ++leg;
    follows.push_back(
        i == 0 ? first
               : weather_follows(event.stages[i - 1].chances, stage.chances, event.persistence));
    Stage certain = stage;
    certain.chances = {};
    for (std::size_t k = 0; k < kinds; ++k) {
      int worst_here = 0;
      for (std::size_t w = 0; w < weathers; ++w) {
        lost[at(i, k, w)] = seconds_lost(*kind[k], stage, Weather(w), careful);
        wear[at(i, k, w)] = units(stage::wear(*kind[k], stage, Weather(w)));
        if (stage.chances[w] > 0.0) worst_here = std::max(worst_here, wear[at(i, k, w)]);
      }
      const int before = i == leg_first[leg] ? 0 : worst_to[(i - 1) * kinds + k];
      worst_to.push_back(std::min(never, before + worst_here));
      ruled_in.push_back(refusal(*kind[k], certain, event.rules, false) ? 0 : 1);
      if (refusal(*kind[k], stage, event.rules, careful) || worst_to.back() > limit[k])
        allowed[leg * kinds + k] = 0;
    }
  }
}

// ---- how legs end ----

Solver::Solver(const Model& model, int wear_levels, std::size_t marks)
    : m_(model), levels_(wear_levels), marks_(marks) {
  const std::size_t cells = m_.legs * m_.kinds;
  rest_all_.resize(cells);
  rest_least_.resize(cells);
  for (std::size_t k = 0; k < m_.kinds; ++k) {
    int all = 0;
    int least = never;
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

// ---- states ----

// One set's wear, as far as it matters from this leg on. `full`: no further set may be run.
std::uint16_t Solver::settled(std::size_t leg, std::size_t k, std::uint16_t code, bool full) const {
  const auto used = static_cast<std::uint16_t>(code & used_bit);
  std::uint16_t wear = code & wear_bits;
  const int least = rest_least_[leg * m_.kinds + k];
  if (wear != done) {
    if (least == never || (full && used == 0))
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
    // A set that lasts makes the others of its kind needless, but a fresh one does not stand for
    // one already run where the rules count them.
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
  const Most& most = levels_ == worst_weather ? at_last : usual;
  if (nodes_.size() >= (attitude_ == Attitude::steady ? most.tails : most.nodes)) {
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

// ---- the steady ----
//
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
  const Most& most = levels_ == worst_weather ? at_last : usual;
  if (tails_.size() >= most.tails || too_much_) {
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

// ---- the first choice ----

// The best t of a choice is no more than its CVaR, and that no more than its worst case, nor than
// its mean over the tail's share, nor than the CVaR of a plan that rounds wear up further, which is
// soon made. A scale up to the third least of these holds the three best.
void Solver::mark_times(const std::vector<First>& first, const Question& question) {
  const double tail_share = 1.0 - question.tail_level;
  double least[3] = {infinity, infinity, infinity};
  State root = nodes_[0].state;
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

std::vector<FirstChoice> Solver::first_choices(const Question& question) {
  attitude_ = question.attitude;
  const Aim aim = attitude_ == Attitude::safe ? least_worst : least_mean;
  State root{0, 0, {}};
  for (std::size_t s = 0; s < m_.sets.size(); ++s)
    root.codes[s] = static_cast<std::uint16_t>(m_.worn[s]);
  settle(0, root.codes);
  find(root);
  const Candidates list = candidates(root, aim);
  std::vector<First> first;
  for (std::size_t c = 0; c < list.count && !too_much_; ++c) {
    const Value v = try_set(root, list.set[c], aim);
    if (v.mean < infinity)
      first.push_back({list.set[c], v, aim == least_mean ? v.mean : v.worst, 0});
  }
  if (attitude_ == Attitude::steady && !first.empty() && !too_much_) {
    const double tail_share = 1.0 - question.tail_level;
    if (!too_much_) mark_times(first, question);
    std::vector<double> sum;
    for (First& f : first) {
      if (too_much_) break;
      f.value = try_tail(root, f.place, sum);
      if (too_much_) break;
      f.loss = infinity;
      for (std::size_t i = 0; i < marks_; ++i) {
        const double tail_mean = static_cast<double>(i) * step_ + sum[i] / tail_share;
        if (tail_mean < f.loss - tie) f.loss = tail_mean, f.threshold = i;
      }
    }
  }
  if (first.empty() || too_much_) return {};

  // Best first: by the loss, then by the worst case for the average, the mean for the others.
  const auto second = [&](const First& f) {
    return attitude_ == Attitude::average ? f.value.worst : f.value.mean;
  };
  for (std::size_t i = 1; i < first.size(); ++i)
    for (std::size_t j = i; j > 0 && better({first[j].loss, second(first[j])},
                                            {first[j - 1].loss, second(first[j - 1])}, least_mean);
         --j)
      std::swap(first[j], first[j - 1]);
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
  std::size_t chosen = first_;
  if (leg > 0) {
    const std::size_t node = find(state);
    const Aim aim = attitude_ == Attitude::safe ? least_worst : least_mean;
    value(node, aim);
    chosen = nodes_[node].choice[aim];
    const double in_hand = static_cast<double>(threshold_) * step_ - course.lost;
    if (attitude_ == Attitude::steady && in_hand >= -tie) {
      const auto mark = static_cast<std::size_t>(std::max(0.0, std::floor(in_hand / step_ + tie)));
      chosen = tails_[tail(node)].choice[mark];
    }
  }
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

}  // namespace treadwater::stage
