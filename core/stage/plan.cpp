#include "core/stage/plan.hpp"

#include <algorithm>
#include <cmath>

#include "core/quantity/text.hpp"
#include "core/quantity/write.hpp"
#include "core/stage/decision.hpp"
#include "core/stage/solver.hpp"
#include "core/water/splitmix.hpp"
#include "core/words/say.hpp"

namespace treadwater::stage {
namespace {

constexpr double most_paths = 4096.0;
constexpr std::size_t drawn_paths = 1000;
constexpr int hindsight_steps = 3000;  // of one path
// What looking for the swing may cost, and making sure of what was found.
constexpr std::uint64_t swing_work = 30'000'000;
constexpr std::uint64_t settling_work = 30'000'000;
constexpr std::uint64_t solutions_of_a_search = 150;
constexpr double most_kelvins = 20.0;
constexpr double swing_precision = 0.005;
constexpr int wear_levels_tried[] = {0, 4, 2, 1, worst_weather};

// ---- problems ----

// The first four, as alternatives.
std::string kind_list(const std::vector<Phrase>& names) {
  std::vector<std::string> some;
  for (const Phrase name : names)
    if (some.size() < 4) some.push_back(say(name));
  return alternatives(some);
}

std::string percent(double share) { return say("# %", {significant(100.0 * share, 2)}); }

// A leg that no set in the van may run: why not each kind, and which would do.
Problem no_usable_set(const Event& event, const Model& model, std::size_t leg, bool careful) {
  const std::size_t first = model.leg_first[leg];
  const std::size_t last = model.leg_first[leg + 1] - 1;
  std::string text =
      first == last ? say("Stage #: no set in the van can run it.", {std::to_string(first + 1)})
                    : say("Stages # to # have no tyre change between them, and no set in "
                          "the van can run them all.",
                          {std::to_string(first + 1), std::to_string(last + 1)});
  const auto add = [&](const std::string& sentence) { add_item(text, sentence, " "); };
  std::size_t furthest = first;  // the stage before which some set must come off
  for (std::size_t k = 0; k < model.kinds; ++k) {
    const SetKind& kind = *model.kind[k];
    std::size_t stage = first;
    std::optional<std::string> why;
    for (; stage <= last; ++stage) {
      why = refusal(kind, event.stages[stage], event.rules, careful);
      const int worst = model.worst_to[stage * model.kinds + k];
      if (!why && worst > model.limit[k])
        why = say("worn out by then in the worst weather deemed possible (# of its usable life)",
                  {percent(static_cast<double>(worst) / model.limit[k])});
      if (why) break;
    }
    furthest = std::max(furthest, stage);
    if (why) add(say("#, stage #: #.", {kind.label, std::to_string(stage + 1), *why}));
  }
  std::vector<Phrase> would_do;  // only what is safe there
  for (std::size_t i = 0; i < set_kind_count; ++i) {
    const SetKind kind = set_kind(i);
    double worst = 0.0;
    bool may = true;
    for (std::size_t stage = first; stage <= last && may; ++stage) {
      may = !refusal(kind, event.stages[stage], event.rules, true);
      double here = 0.0;
      for (std::size_t w = 0; w < weathers; ++w)
        if (event.stages[stage].chances[w] > 0.0)
          here = std::max(here, wear(kind, event.stages[stage], Weather(w)));
      worst += here;
    }
    if (may && worst <= usable_life(kind, event.rules)) would_do.push_back(kind.name);
  }
  if (!would_do.empty()) add(say("What would do: #.", {kind_list(would_do)}));
  if (furthest > first) add(say("Or a tyre change after stage #.", {std::to_string(furthest)}));
  if (would_do.empty() && furthest == first)
    add(say(
        "No kind of tyre known here is safe there and allowed: look at its chances and rules."));
  return {"no-usable-set", static_cast<int>(first), -1, text};
}

struct Solved {
  std::vector<FirstChoice> first;
  bool too_much = true;
};
Solved solve(const Event& event, const Question& question, int wear_levels, std::uint64_t& work,
             std::size_t marks = most_marks) {
  const Model model(event, question.attitude == Attitude::safe);
  Solver solver(model, wear_levels, marks);
  Solved solved{solver.first_choices(question), solver.too_much()};
  work += solver.work() + 20000U;
  return solved;
}

bool has_plan(const Event& event, Question question) {
  // The safe refuses more sets; else the attitude makes no difference to what is possible.
  if (question.attitude == Attitude::steady) question.attitude = Attitude::average;
  std::uint64_t work = 0;
  Solved solved;
  for (const int levels : wear_levels_tried)
    if (solved.too_much) solved = solve(event, question, levels, work);
  return !solved.first.empty();
}

// Every leg has a set that could run it, but not one after the other.
Problem no_set_left(const Event& event, const Question& question) {
  std::string text(
      say("The sets in the van do not last: whatever goes on first, no set is left for some "
          "later stage in the worst weather deemed possible."));
  std::vector<Phrase> would_do;
  Event more = event;
  more.sets.push_back({});
  const auto try_kind = [&](const SetKind& kind) {
    more.sets.back() = {kind, 1, 0.0};
    for (const Phrase name : would_do)
      if (name == kind.name) return;
    if (check(more).empty() && has_plan(more, question)) would_do.push_back(kind.name);
  };
  for (const TyreSet& set : event.sets) try_kind(set.kind);
  for (std::size_t i = 0; i < set_kind_count; ++i) try_kind(set_kind(i));
  if (!would_do.empty())
    add_item(text, say("One more set would do: #.", {kind_list(would_do)}), " ");
  if (event.rules.most_sets) {
    more.sets.pop_back();
    ++*more.rules.most_sets;
    if (has_plan(more, question))
      add_item(text, say("Or leave to run # sets.", {std::to_string(*more.rules.most_sets)}), " ");
  }
  return {"no-set-left", -1, -1, text};
}

// ---- paths of weather ----

class Paths {
 public:
  explicit Paths(const Model& model) : m_(model) {
    double count = 1.0;
    for (std::size_t i = 0; i < m_.stages; ++i) {
      std::vector<std::size_t> possible;
      for (std::size_t w = 0; w < weathers; ++w) {
        bool can = false;
        for (const Chances& row : m_.follows[i]) can = can || row[w] > 0.0;
        if (can) possible.push_back(w);
      }
      count *= static_cast<double>(possible.size());
      possible_.push_back(std::move(possible));
    }
    every_ = count <= most_paths;
    count_ = every_ ? static_cast<std::size_t>(count) : drawn_paths;
  }
  bool every() const { return every_; }
  std::size_t count() const { return count_; }
  // The weathers of a path, and its chance, which may be 0.
  double path(std::size_t n, std::vector<std::size_t>& weather) {
    double chance = every_ ? 1.0 : 1.0 / static_cast<double>(drawn_paths);
    std::size_t before = 0;
    for (std::size_t i = 0; i < m_.stages; ++i) {
      const Chances& row = m_.follows[i][before];
      if (every_) {
        before = possible_[i][n % possible_[i].size()];
        n /= possible_[i].size();
        chance *= row[before];
      } else {
        double u = uniform();
        before = possible_[i].back();
        for (const std::size_t w : possible_[i]) {
          u -= row[w];
          if (u < 0.0) {
            before = w;
            break;
          }
        }
        // What rounding left over must still be a weather that can follow.
        for (std::size_t w = weathers; !(row[before] > 0.0);) before = --w;
      }
      weather[i] = before;
    }
    return chance;
  }

 private:
  double uniform() { return static_cast<double>(draws_.next() >> 11) * 0x1p-53; }

  const Model& m_;
  std::vector<std::vector<std::size_t>> possible_;
  bool every_ = true;
  std::size_t count_ = 0;
  water::SplitMix64 draws_{20260101};
};

// The least time lost by somebody who knew the weather of this path. Depth first, cheapest set
// first; stops at the bound that no wear could beat.
class Hindsight {
 public:
  explicit Hindsight(const Model& model)
      : m_(model),
        lost_(m_.legs * m_.sets.size()),
        wear_(lost_.size()),
        rest_(m_.legs + 1),
        used_(m_.sets.size()) {}
  double best(const std::vector<std::size_t>& weather, bool& is_bound) {
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
    if (steps_ <= hindsight_steps) return best_;
    is_bound = true;
    return rest_[0];
  }

 private:
  void search(std::size_t leg, double lost, std::size_t run) {
    if (++steps_ > hindsight_steps || !(lost + rest_[leg] < best_ - 1e-9)) return;
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

  const Model& m_;
  std::vector<double> lost_;
  std::vector<int> wear_;
  std::vector<double> rest_;  // by leg: without any limit on wear
  std::vector<int> worn_;
  std::vector<int> used_;
  double best_ = 0.0;
  int steps_ = 0;
};

// Walks the plan through paths of weather and fills in every figure of it.
void walk(const Event& event, const Question& question, const Model& model, Solver& solver,
          Plan& plan) {
  const std::size_t sets = model.sets.size();
  Paths paths(model);
  Hindsight hindsight(model);
  std::vector<std::size_t> weather(model.stages);
  plan.every_path = paths.every();
  plan.left.assign(model.stages, {0.0, infinity, 0.0, infinity});
  plan.used.assign(sets, 0.0);
  plan.on.assign(model.stages * sets, {});
  std::vector<AtHalt> halts(model.legs * weathers);
  for (std::size_t i = 0; i < halts.size(); ++i)
    halts[i] = {model.leg_first[i / weathers] - 1, Weather(i % weathers), 0.0,
                std::vector<double>(sets, 0.0), 0};
  LossTable table{paths.count(), std::vector<double>(paths.count()),
                  std::vector<double>(2 * paths.count())};

  for (std::size_t n = 0; n < paths.count(); ++n) {
    const double chance = paths.path(n, weather);
    if (!(chance > 0.0)) continue;
    Solver::Course course = solver.start();
    std::vector<int> worn = model.worn;
    for (std::size_t leg = 0; leg < model.legs; ++leg) {
      const std::size_t seen = leg == 0 ? 0 : weather[model.leg_first[leg] - 1];
      const std::size_t s = course.fitted = solver.choose(course, leg, seen);
      const std::size_t k = model.kind_of[s];
      AtHalt& halt = halts[leg * weathers + seen];
      halt.chance += chance;
      halt.fits[s] += chance;
      course.used[s] = 1;
      const int before = worn[s];
      int planned = 0;
      for (std::size_t i = model.leg_first[leg]; i < model.leg_first[leg + 1]; ++i) {
        const std::size_t cell = model.at(i, k, weather[i]);
        course.lost += model.lost[cell];
        worn[s] += model.wear[cell];
        planned = solver.worn_after(leg, k, planned, i, weather[i]);
        const double undriven =
            event.drive == Drive::all ? 1.0 : 1.0 / model.kind[k]->undriven_life;
        const auto left = [&](int now, double share) {
          return (model.limit[k] - model.worn[s] - (now - model.worn[s]) * share) / life_units;
        };
        const int worst = before + model.worst_to[i * model.kinds + k];
        WearLeft& after = plan.left[i];
        after.expected += chance * left(worn[s], 1.0);
        after.least = std::min(after.least, left(worst, 1.0));
        after.undriven_expected += chance * left(worn[s], undriven);
        after.undriven_least = std::min(after.undriven_least, left(worst, undriven));
        SetOnStage& on = plan.on[i * sets + s];
        on.on += chance;
        if (!safe_in(*model.kind[k], event.stages[i], Weather(weather[i]))) on.unsafe += chance;
        for (std::size_t other = 0; other < sets; ++other) {
          SetOnStage& of = plan.on[i * sets + other];
          of.worn += chance * worn[other] / life_units;
          of.most_worn = std::max(
              of.most_worn, static_cast<double>(other == s ? worst : worn[other]) / life_units);
        }
      }
      course.codes[s] = static_cast<std::uint16_t>(course.codes[s] + planned);
    }
    for (std::size_t s = 0; s < sets; ++s)
      if (course.used[s] != 0) plan.used[s] += chance;
    table.chance[n] = chance;
    table.loss[n] = course.lost;
    // Rounding aside, hindsight never loses more.
    table.loss[paths.count() + n] =
        std::min(course.lost, hindsight.best(weather, plan.regret_is_bound));
  }

  // What a path has used stays used on all that were not drawn.
  for (std::size_t i = sets; i < plan.on.size(); ++i)
    plan.on[i].most_worn = std::max(plan.on[i].most_worn, plan.on[i - sets].most_worn);

  const Judgement judged = judge(table, 0, question.tail_level);
  const bool steady = question.attitude == Attitude::steady;
  const bool solved = !steady && !plan.every_path;
  plan.expected_lost = solved ? solver.planned().mean : judged.expected;
  plan.worst_lost = plan.every_path ? judged.worst : solver.planned().worst;
  plan.tail_lost = steady && !plan.every_path ? plan.first[0].loss : judged.tail_mean;
  plan.regret = judged.expected_regret;
  plan.largest_regret = judged.largest_regret;
  if (!plan.every_path) {
    double square = 0.0;
    for (std::size_t n = 0; n < paths.count(); ++n) {
      const double regret = table.loss[n] - table.loss[paths.count() + n] - plan.regret;
      square += regret * regret;
    }
    const auto count = static_cast<double>(paths.count());
    plan.regret_error = std::sqrt(square / (count - 1.0) / count);
  }
  for (std::size_t i = weathers; i < halts.size(); ++i) {
    AtHalt& halt = halts[i];
    if (!(halt.chance > 0.0)) continue;
    for (double& share : halt.fits) share /= halt.chance;
    halt.set = static_cast<std::size_t>(std::max_element(halt.fits.begin(), halt.fits.end()) -
                                        halt.fits.begin());
    plan.halts.push_back(std::move(halt));
  }
}

// ---- the whole ----

// Something that one person may come to know, and how far it can change.
struct Lever {
  enum What { wetter, drier, warmer, colder } what;
  std::size_t stage;
  double far;        // chance, or kelvins
  double precision;  // the same
};

// Looks for the least change that makes another kind of set go on first. Where one solution is soon
// found, every step is exact. Else changes are first judged by plans that round wear up to the
// worst weather, corrected by how far those are off today, and what they find is then looked at
// exactly.
class SwingSearch {
 public:
  // `work` is what the plan itself took to solve.
  SwingSearch(const Event& event, const Question& question, const Model& model, std::uint64_t work,
              Plan& plan)
      : event_(event), question_(question), model_(model), plan_(plan), exact_work_(work) {
    kind_ = model.kind_of[plan.first[0].set];
    now_ = margin(plan.first);
    levels_ = plan.wear_levels;
    if (exact_work_ * solutions_of_a_search <= swing_work || levels_ == worst_weather) return;
    levels_ = worst_weather;
    plan.swing_complete = false;  // a change might do more than it looks
    const Solved rough = solve(event, question, levels_, work_, rough_marks);
    rough_now_ = rough.too_much ? -infinity : margin(rough.first);
  }

  void look() {
    // No plan that always rounds up to the worst weather: nothing to judge the changes by.
    if (!(rough_now_ > -infinity && rough_now_ < infinity)) return;
    std::vector<Lever> wet;
    for (std::size_t i = 0; i < event_.stages.size(); ++i) {
      const double now = wet_chance(event_.stages[i].chances);
      wet.push_back({Lever::wetter, i, 1.0 - now, swing_precision});
      wet.push_back({Lever::drier, i, now, swing_precision});
    }
    if (const auto found = nearest(wet, 0.5, 0.9)) {
      const double now = wet_chance(event_.stages[found->lever.stage].chances);
      const double sign = found->lever.what == Lever::wetter ? 1.0 : -1.0;
      plan_.swing =
          Swing{found->lever.stage, now, std::clamp(now + sign * found->by, 0.0, 1.0), found->set};
    }
    if (const auto found =
            nearest({{Lever::warmer, 0, most_kelvins, 1.0}, {Lever::colder, 0, most_kelvins, 1.0}},
                    0.9, 1.0))
      plan_.air_swing =
          AirSwing{found->lever.what == Lever::warmer ? found->by : -found->by, found->set};
  }

 private:
  struct Found {
    Lever lever;
    double by;
    std::optional<std::size_t> set;
  };

  // By how much the best first choice of another kind is worse; below 0 where one goes on.
  double margin(const std::vector<FirstChoice>& first) const {
    double own = infinity, other = infinity;
    for (const FirstChoice& choice : first) {
      double& least = model_.kind_of[choice.set] == kind_ ? own : other;
      least = std::min(least, choice.loss);
    }
    if (!(own < infinity)) return -infinity;
    const bool same = model_.kind_of[first[0].set] == kind_;
    return same ? std::max(0.0, other - own) : std::min(other - own, -1e-9);
  }

  Event changed(const Lever& lever, double by) const {
    Event event = event_;
    if (lever.what == Lever::warmer || lever.what == Lever::colder) {
      const double kelvins = lever.what == Lever::warmer ? by : -by;
      for (Stage& stage : event.stages)
        if (stage.air)
          stage.air = celsius(std::clamp(in_celsius(*stage.air) + kelvins, -60.0, 60.0));
    } else {
      Chances& chances = event.stages[lever.stage].chances;
      const double wet = wet_chance(chances) + (lever.what == Lever::wetter ? by : -by);
      chances = with_wet_chance(chances, std::clamp(wet, 0.0, 1.0));
    }
    return event;
  }

  bool rough() const { return levels_ != plan_.wear_levels; }
  // One more exact solution would go past what they may cost.
  bool tired() const { return settled_work_ + exact_work_ > settling_work; }

  bool may_change(const Lever& lever, double by) {
    const Solved solved =
        solve(changed(lever, by), question_, levels_, work_, rough() ? rough_marks : most_marks);
    if (solved.too_much) {
      plan_.swing_complete = false;
      return false;
    }
    const double then = margin(solved.first);
    return (rough() ? then - rough_now_ + now_ : then) < 0.0;
  }

  bool changes(const Lever& lever, double by, std::optional<std::size_t>& set) {
    const Solved solved = solve(changed(lever, by), question_, plan_.wear_levels, settled_work_);
    if (solved.too_much) return false;
    std::optional<std::size_t> then;
    if (!solved.first.empty()) then = solved.first[0].set;
    if (then && model_.kind_of[*then] == kind_) return false;
    set = then;
    return true;
  }

  // Tells that the work is done from one share to another.
  std::optional<Found> nearest(const std::vector<Lever>& levers, double from, double to) {
    std::vector<Found> found;
    for (std::size_t i = 0; i < levers.size(); ++i) {
      report(question_.progress,
             from + (to - from) * static_cast<double>(i) / static_cast<double>(levers.size()));
      const Lever& lever = levers[i];
      if (lever.far < lever.precision) continue;
      if (work_ > swing_work) plan_.swing_complete = false;
      if (work_ > swing_work || !may_change(lever, lever.far)) continue;
      double far = lever.far, close = 0.0;
      while (far - close > lever.precision) {
        const double middle = halfway(lever, close, far);
        (may_change(lever, middle) ? far : close) = middle;
      }
      found.push_back({lever, far, {}});
    }
    std::sort(found.begin(), found.end(),
              [](const Found& a, const Found& b) { return a.by < b.by; });
    for (Found& f : found) {
      if (rough() && settled_work_ > 0 && tired()) break;
      if (settle(f)) return f;
    }
    return std::nullopt;
  }

  // Temperatures are looked at in whole kelvins.
  static double halfway(const Lever& lever, double close, double far) {
    const double middle = 0.5 * (close + far);
    return lever.precision < 1.0 ? middle : std::floor(middle);
  }

  // Makes sure of what was found, from where it was looked for outward.
  bool settle(Found& f) {
    const Lever& lever = f.lever;
    double close = 0.0;
    double step = 2.0 * lever.precision;
    while (!changes(lever, f.by, f.set)) {
      if (!rough() || f.by >= lever.far || tired()) return false;
      close = f.by;
      f.by = std::min(lever.far, f.by + step);
      step *= 2.0;
    }
    if (!rough()) return true;
    while (f.by - close > lever.precision && !tired()) {
      const double middle = close > 0.0 ? halfway(lever, close, f.by)
                                        : std::max(halfway(lever, close, f.by), f.by - step);
      std::optional<std::size_t> set;
      if (changes(lever, middle, set))
        f.by = middle, f.set = set;
      else
        close = middle;
    }
    return true;
  }

  const Event& event_;
  const Question& question_;
  const Model& model_;
  Plan& plan_;
  std::uint64_t exact_work_;  // of one solution
  std::size_t kind_ = 0;
  int levels_ = 0;          // by which changes are first judged
  double now_ = 0.0;        // today's margin
  double rough_now_ = 0.0;  // the same, by those plans
  std::uint64_t work_ = 0;
  std::uint64_t settled_work_ = 0;
};

}  // namespace

tl::expected<Plan, std::vector<Problem>> plan(const Event& given, const Question& question) {
  std::vector<Problem> problems = check(given);
  if (!(question.tail_level >= 0.0 && question.tail_level <= 0.99))
    problems.push_back({"tail-level", -1, -1, say("The tail's level must be 0 to 99 %.")});
  if (!problems.empty()) return tl::unexpected(std::move(problems));

  Event event = given;
  for (Stage& stage : event.stages) {
    double sum = 0.0;
    for (const double chance : stage.chances) sum += chance;
    for (double& chance : stage.chances) chance /= sum;
  }
  const bool careful = question.attitude == Attitude::safe;
  const Model model(event, careful);
  for (std::size_t leg = 0; leg < model.legs; ++leg) {
    bool any = false;
    for (std::size_t k = 0; k < model.kinds; ++k)
      any = any || model.allowed[leg * model.kinds + k] != 0;
    if (!any) problems.push_back(no_usable_set(event, model, leg, careful));
  }
  if (!problems.empty()) return tl::unexpected(std::move(problems));

  for (const int wear_levels : wear_levels_tried) {
    Solver solver(model, wear_levels);
    Plan plan;
    plan.first = solver.first_choices(question);
    report(question.progress, 0.3);
    if (solver.too_much()) continue;
    if (plan.first.empty())
      return tl::unexpected(std::vector<Problem>{
          question.only_first
              ? Problem{"no-set-left", -1, -1, say("The sets in the van do not last.")}
              : no_set_left(event, question)});
    plan.sets = model.sets;
    if (question.only_first) return plan;
    plan.wear_levels = wear_levels;
    plan.time_step = solver.time_step();
    const std::uint64_t work = solver.work();
    for (const Stage& stage : event.stages) plan.right_tyre_seconds += right_tyre_seconds(stage);
    walk(event, question, model, solver, plan);
    report(question.progress, 0.5);
    if (question.look_for_swing && plan.first.size() > 1)
      SwingSearch(event, question, model, work, plan).look();
    if (plan.first.size() > 3) plan.first.resize(3);
    return plan;
  }
  return tl::unexpected(std::vector<Problem>{
      {"too-much", -1, -1,
       say("So many sets may wear out in so many ways that the best plan cannot be worked out "
           "here. "
           "Leave out sets you would hardly fit, or ask for fewer halts at a time.")}});
}

}  // namespace treadwater::stage
