// The stage plan against every policy there is, on events small enough to write them all down; and
// facts of order on events of usual size.
#include <algorithm>
#include <cmath>

#include "core/stage/plan.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/property.hpp"
#include "tests/support/stage_events.hpp"

using namespace treadwater;
using namespace treadwater::stage;
using namespace treadwater::testing;

namespace {

constexpr double infinity = std::numeric_limits<double>::infinity();

int whole(int low, int high) { return *rc::gen::inRange(low, high + 1); }

// ---- every policy ----

// Written apart from the core: paths, policies and wear in full, nothing merged. A policy names a
// set for every leg and every history of weather before it.
struct EveryPolicy {
  const Event& event;
  std::vector<std::size_t> weathers_there;  // that occur at all
  std::vector<const TyreSet*> sets;
  std::vector<std::size_t> starts;  // first stage of each leg

  explicit EveryPolicy(const Event& e, std::vector<std::size_t> w) : event(e), weathers_there(w) {
    for (const TyreSet& set : event.sets)
      for (int n = 0; n < set.count; ++n) sets.push_back(&set);
    starts.push_back(0);
    for (std::size_t i = 0; i + 1 < event.stages.size(); ++i)
      if (event.stages[i].halt_after >= Halt::tyre_zone) starts.push_back(i + 1);
  }

  std::size_t histories(std::size_t stages) const {
    std::size_t count = 1;
    for (std::size_t i = 0; i < stages; ++i) count *= weathers_there.size();
    return count;
  }
  std::size_t points() const {
    std::size_t count = 0;
    for (const std::size_t start : starts) count += histories(start);
    return count;
  }
  bool small() const {
    return std::pow(static_cast<double>(sets.size()), static_cast<double>(points())) < 70000.0;
  }

  double km(std::size_t i) const { return in_metres(event.stages[i].length) / 1000.0; }
  double loss(const TyreSet& set, std::size_t i, std::size_t w) const {
    return km(i) * 40.0 * (set.kind.pace[0][w].low - 1.0);
  }
  double wears(const TyreSet& set, std::size_t i, std::size_t w) const {
    return 1000.0 * km(i) / in_metres(set.kind.life[0][wetness(Weather(w))]);
  }
  double chance_of(const std::vector<std::size_t>& path) const {
    double chance = event.stages[0].chances[path[0]];
    for (std::size_t i = 1; i < path.size(); ++i)
      chance *= weather_follows(event.stages[i - 1].chances, event.stages[i].chances,
                                event.persistence)[path[i - 1]][path[i]];
    return chance;
  }
  std::size_t leg_end(std::size_t leg) const {
    return leg + 1 < starts.size() ? starts[leg + 1] : event.stages.size();
  }

  // For each first set: the best that any policy does.
  struct Best {
    double mean = infinity;
    double worst = infinity;
    double tail = infinity;
  };
  std::vector<Best> best(double level) const {
    const std::size_t stages = event.stages.size();
    struct Path {
      std::vector<std::size_t> weather;
      std::vector<std::size_t> point;  // of the policy, for each leg
      double chance;
    };
    std::vector<Path> paths;
    for (std::size_t n = 0; n < histories(stages); ++n) {
      Path path{std::vector<std::size_t>(stages), {}, 0.0};
      std::size_t rest = n;
      for (auto& w : path.weather) {
        w = weathers_there[rest % weathers_there.size()];
        rest /= weathers_there.size();
      }
      std::size_t offset = 0;
      for (const std::size_t start : starts) {
        path.point.push_back(offset + n % histories(start));
        offset += histories(start);
      }
      path.chance = chance_of(path.weather);
      if (path.chance > 0.0) paths.push_back(path);
    }
    std::vector<Best> results(sets.size());
    std::vector<std::size_t> policy(points(), 0);
    std::vector<std::pair<double, double>> outcome;
    while (true) {
      outcome.clear();
      bool possible = true;
      for (const Path& path : paths) {
        std::vector<double> worn;
        for (const TyreSet* set : sets) worn.push_back(set->worn);
        std::vector<bool> run(sets.size());
        double lost = 0.0;
        for (std::size_t leg = 0; leg < starts.size() && possible; ++leg) {
          const std::size_t s = policy[path.point[leg]];
          run[s] = true;
          double fear = worn[s];
          for (std::size_t i = starts[leg]; i < leg_end(leg); ++i) {
            double most = 0.0;
            for (const std::size_t w : weathers_there)
              if (event.stages[i].chances[w] > 0.0) most = std::max(most, wears(*sets[s], i, w));
            fear += most;
            worn[s] += wears(*sets[s], i, path.weather[i]);
            lost += loss(*sets[s], i, path.weather[i]);
          }
          possible = fear <= 1.0 + 1e-9;
        }
        if (event.rules.most_sets &&
            std::count(run.begin(), run.end(), true) > *event.rules.most_sets)
          possible = false;
        if (!possible) break;
        outcome.push_back({lost, path.chance});
      }
      if (possible) {
        std::sort(outcome.rbegin(), outcome.rend());
        double mean = 0.0, tail = 0.0, left = 1.0 - level;
        for (const auto& [lost, chance] : outcome) {
          mean += lost * chance;
          tail += lost * std::min(left, chance) / (1.0 - level);
          left -= std::min(left, chance);
        }
        Best& b = results[policy[0]];
        b.mean = std::min(b.mean, mean);
        b.worst = std::min(b.worst, outcome[0].first);
        b.tail = std::min(b.tail, tail);
      }
      std::size_t digit = 0;
      while (digit < policy.size() && ++policy[digit] == sets.size()) policy[digit++] = 0;
      if (digit == policy.size()) return results;
    }
  }

  // Expected time lost by somebody who knows each path's weather.
  double hindsight() const {
    double expected = 0.0;
    for (std::size_t n = 0; n < histories(event.stages.size()); ++n) {
      std::vector<std::size_t> path;
      for (std::size_t i = 0, rest = n; i < event.stages.size(); ++i) {
        path.push_back(weathers_there[rest % weathers_there.size()]);
        rest /= weathers_there.size();
      }
      double least = infinity;
      std::vector<std::size_t> of_leg(starts.size(), 0);
      for (bool more = true; more;) {
        std::vector<double> worn;
        for (const TyreSet* set : sets) worn.push_back(set->worn);
        std::vector<bool> run(sets.size());
        double lost = 0.0;
        for (std::size_t leg = 0; leg < starts.size(); ++leg)
          for (std::size_t i = starts[leg]; i < leg_end(leg); ++i) {
            worn[of_leg[leg]] += wears(*sets[of_leg[leg]], i, path[i]);
            run[of_leg[leg]] = true;
            lost += loss(*sets[of_leg[leg]], i, path[i]);
          }
        const bool lasts = *std::max_element(worn.begin(), worn.end()) <= 1.0 + 1e-9;
        const bool allowed = !event.rules.most_sets ||
                             std::count(run.begin(), run.end(), true) <= *event.rules.most_sets;
        if (lasts && allowed) least = std::min(least, lost);
        std::size_t digit = 0;
        while (digit < of_leg.size() && ++of_leg[digit] == sets.size()) of_leg[digit++] = 0;
        more = digit < of_leg.size();
      }
      const double chance = chance_of(path);
      if (chance > 0.0) expected += chance * least;
    }
    return expected;
  }
};

// Whole seconds, and lives that divide into the solver's units.
Event small_event(std::vector<std::size_t>& weathers_there) {
  weathers_there = {0, 1, 2};
  if (whole(0, 2) > 0) weathers_there.pop_back();
  const auto chances = [&] {
    Chances c{};
    int sum = 0;
    std::vector<int> parts;
    for (std::size_t i = 0; i < weathers_there.size(); ++i) sum += parts.emplace_back(whole(0, 4));
    if (sum == 0) sum = parts[0] = 1;
    for (std::size_t i = 0; i < weathers_there.size(); ++i)
      c[weathers_there[i]] = static_cast<double>(parts[i]) / sum;
    return c;
  };
  Event event;
  static const std::string_view ids[] = {"a", "b", "c"};
  std::vector<SetKind> kinds;
  const int kind_count = whole(1, 3);
  for (int k = 0; k < kind_count; ++k) {
    const double life = *rc::gen::element(20.0, 25.0, 30.0, 60.0, 100.0);
    kinds.push_back(plain_kind(
        ids[k], {whole(0, 20) / 5.0, whole(0, 20) / 5.0, whole(0, 20) / 5.0, 0.0, 0.0, 0.0}, life,
        life * *rc::gen::element(1.0, 2.0)));
  }
  const int set_count = whole(1, 3);
  for (int s = 0; s < set_count; ++s)
    event.sets.push_back({kinds[static_cast<std::size_t>(whole(0, kind_count - 1))], 1,
                          *rc::gen::element(0.0, 0.0, 0.25, 0.5)});
  const int stage_count = whole(1, 4);
  for (int i = 0; i < stage_count; ++i)
    event.stages.push_back(
        plain_stage(5.0 * whole(1, 3), chances(),
                    *rc::gen::element(Halt::none, Halt::service, Halt::tyre_zone, Halt::regroup)));
  event.persistence = whole(0, 4) / 4.0;
  if (whole(0, 2) == 0) event.rules.most_sets = whole(1, 2);
  return event;
}

double with_attitude(const Event& event, Attitude attitude) {
  const auto answer = plan(event, {attitude, 0.8, false});
  return answer ? answer->first[0].loss : infinity;
}

// ---- events of usual size ----

Chances any_chances(std::size_t kinds_of_weather) {
  Chances c{};
  double sum = 0.0;
  for (std::size_t w = 0; w < kinds_of_weather; ++w) sum += c[w] = whole(0, 5);
  if (!(sum > 0.0)) sum = c[0] = 1.0;
  for (double& chance : c) chance /= sum;
  return c;
}

Event usual_event(int most_stages_there) {
  Event event;
  const auto kinds_of_weather = static_cast<std::size_t>(whole(1, 6));
  const int stages = whole(1, most_stages_there);
  for (int i = 0; i < stages; ++i) {
    Stage stage = plain_stage(whole(4, 25), any_chances(kinds_of_weather));
    stage.gravel = whole(0, 3) == 0 ? 0.3 : 0.0;
    stage.abrasion = whole(5, 15) / 10.0;
    if (whole(0, 2) == 0) stage.halt_after = Halt::service;
    event.stages.push_back(stage);
  }
  const int entries = whole(1, 4);
  for (int s = 0; s < entries; ++s)
    event.sets.push_back(
        {set_kind(static_cast<std::size_t>(whole(0, 10))), whole(1, 2), whole(0, 5) / 10.0});
  event.sets.push_back({*find_set_kind("all-weather"), 2, 0.0});
  event.persistence = whole(0, 10) / 10.0;
  return event;
}

}  // namespace

TEST_CASE("on small events the plan is the best of all policies, for every attitude") {
  int solved = 0, unsolved = 0;
  CHECK(holds(
      "the best of all policies",
      [&] {
        std::vector<std::size_t> there;
        const Event event = small_event(there);
        const EveryPolicy every(event, there);
        RC_PRE(every.small());
        const double level = *rc::gen::element(0.0, 0.5, 0.8, 0.9);
        const auto truth = every.best(level);
        for (const Attitude attitude : {Attitude::average, Attitude::steady, Attitude::safe}) {
          const auto of = [&](const EveryPolicy::Best& b) {
            return attitude == Attitude::average  ? b.mean
                   : attitude == Attitude::steady ? b.tail
                                                  : b.worst;
          };
          double best = infinity;
          for (const auto& b : truth) best = std::min(best, of(b));
          const auto answer = plan(event, {attitude, level, false});
          RC_ASSERT(answer.has_value() == (best < infinity));
          (answer ? solved : unsolved) += 1;
          if (!answer) continue;
          RC_ASSERT(answer->wear_levels == 0);
          RC_ASSERT(answer->every_path);
          RC_ASSERT(std::fabs(answer->first[0].loss - best) < 1e-6);
          // Each first choice is worth what the best policy that begins with it is worth.
          for (const FirstChoice& f : answer->first) {
            const CarriedSet& set = answer->sets[f.set];
            RC_ASSERT(std::fabs(f.loss - of(truth[set.entry])) < 1e-6);
            RC_ASSERT(std::fabs(f.regret - (f.loss - best)) < 1e-6);
          }
          // The plan as walked does what was promised.
          RC_ASSERT(std::fabs((attitude == Attitude::average  ? answer->expected_lost
                               : attitude == Attitude::steady ? answer->tail_lost
                                                              : answer->worst_lost) -
                              best) < 1e-6);
          RC_ASSERT(std::fabs(answer->expected_lost - answer->regret - every.hindsight()) < 1e-6);
          for (const WearLeft& left : answer->left) {
            RC_ASSERT(left.least >= -1e-9);
            RC_ASSERT(left.expected >= left.least - 1e-9);
          }
        }
      },
      3000));
  // The test must meet both.
  CHECK(solved > 2000);
  CHECK(unsolved > 500);
}

TEST_CASE("the weather chain keeps each stage's chances, at any persistence") {
  CHECK(holds("the chain keeps the chances", [] {
    const Chances last = any_chances(6);
    const Chances next = any_chances(6);
    const Follows follows = weather_follows(last, next, whole(0, 10) / 10.0);
    for (std::size_t j = 0; j < weathers; ++j) {
      double came = 0.0;
      double row = 0.0;
      for (std::size_t i = 0; i < weathers; ++i) {
        came += last[i] * follows[i][j];
        row += follows[j][i];
        RC_ASSERT(follows[j][i] >= 0.0);
        // What cannot be does not come.
        RC_ASSERT(next[i] > 0.0 || follows[j][i] == 0.0);
      }
      RC_ASSERT(std::fabs(came - next[j]) < 1e-12);
      RC_ASSERT(std::fabs(row - 1.0) < 1e-12);
    }
  }));
}

TEST_CASE("another set in the van never makes the best plan worse") {
  CHECK(holds(
      "another set never makes it worse",
      [] {
        const Event event = usual_event(8);
        Event more = event;
        more.sets.push_back({set_kind(static_cast<std::size_t>(whole(0, 10))), 1, 0.0});
        for (const Attitude attitude : {Attitude::average, Attitude::safe}) {
          const auto before = plan(event, {attitude, 0.8, false});
          const auto after = plan(more, {attitude, 0.8, false});
          if (!before) continue;
          RC_ASSERT(after.has_value());
          if (before->wear_levels == 0 && after->wear_levels == 0)
            RC_ASSERT(after->first[0].loss <= before->first[0].loss + 1e-6);
        }
      },
      400));
}

TEST_CASE("a halt more never makes the best plan worse") {
  CHECK(holds(
      "a halt more never makes it worse",
      [] {
        const Event event = usual_event(6);
        Event more = event;
        more.stages[static_cast<std::size_t>(whole(0, static_cast<int>(event.stages.size()) - 1))]
            .halt_after = Halt::tyre_zone;
        for (const Attitude attitude : {Attitude::average, Attitude::safe}) {
          const double before = with_attitude(event, attitude);
          RC_ASSERT(with_attitude(more, attitude) <= before + 1e-6);
        }
      },
      400));
}

TEST_CASE("a better forecast of the first stages never costs time on average") {
  CHECK(holds(
      "a better forecast never costs time",
      [] {
        // One stage's chances are a mixture of two forecasts, one of which will be known.
        Event event = usual_event(6);
        event.persistence = 0.0;
        Stage& stage = event.stages[static_cast<std::size_t>(
            whole(0, static_cast<int>(event.stages.size()) - 1))];
        const Chances one = any_chances(6);
        const Chances other = any_chances(6);
        const double share = whole(1, 9) / 10.0;
        for (std::size_t w = 0; w < weathers; ++w)
          stage.chances[w] = share * one[w] + (1.0 - share) * other[w];
        const double unknown = with_attitude(event, Attitude::average);
        RC_PRE(unknown < infinity);
        stage.chances = one;
        const double with_one = with_attitude(event, Attitude::average);
        stage.chances = other;
        const double with_other = with_attitude(event, Attitude::average);
        RC_ASSERT(share * with_one + (1.0 - share) * with_other <= unknown + 1e-6);
      },
      400));
}

TEST_CASE("no plan wears a set past its limit, whatever the weather") {
  CHECK(holds(
      "no plan wears a set out",
      [] {
        Event event = usual_event(8);
        if (whole(0, 1) == 0) event.rules.least_tread = millimetres(whole(0, 4));
        if (whole(0, 1) == 0) event.rules.most_sets = whole(1, 3);
        event.drive = *rc::gen::element(Drive::front, Drive::rear, Drive::all);
        const Attitude attitude =
            *rc::gen::element(Attitude::average, Attitude::steady, Attitude::safe);
        const auto answer = plan(event, {attitude, 0.8, false});
        RC_PRE(answer.has_value());
        for (const WearLeft& left : answer->left) {
          RC_ASSERT(left.least >= -1e-9);
          RC_ASSERT(left.expected >= left.least - 1e-9);
          RC_ASSERT(left.undriven_least >= left.least - 1e-9);
        }
        const std::size_t sets = answer->sets.size();
        for (std::size_t i = 0; i < event.stages.size(); ++i) {
          double on = 0.0;
          for (std::size_t s = 0; s < sets; ++s) {
            const SetOnStage& of = answer->on[i * sets + s];
            const TyreSet& set = event.sets[answer->sets[s].entry];
            on += of.on;
            RC_ASSERT(of.unsafe <= of.on + 1e-9);
            RC_ASSERT(of.on <= answer->used[s] + 1e-9);
            RC_ASSERT(of.worn <= of.most_worn + 1e-9);
            RC_ASSERT(of.on == 0.0 || of.most_worn <= usable_life(set.kind, event.rules) + 1e-9);
          }
          RC_ASSERT(std::fabs(on - 1.0) < 1e-6);
        }
        RC_ASSERT(answer->regret >= 0.0);
        RC_ASSERT(std::isfinite(answer->expected_lost));
        RC_ASSERT(answer->worst_lost >= answer->expected_lost - 1e-6 || !answer->every_path);
        RC_ASSERT(answer->worst_lost >= answer->tail_lost - 1e-6 || !answer->every_path);
        double shares = 0.0;
        for (const AtHalt& halt : answer->halts) {
          double sum = 0.0;
          for (const double share : halt.fits) sum += share;
          RC_ASSERT(std::fabs(sum - 1.0) < 1e-9);
          shares += halt.chance;
        }
        RC_ASSERT(std::fabs(shares - std::round(shares)) < 1e-6);
      },
      400));
}

TEST_CASE("the steady plan's tail is no worse than the average plan's, within the scale") {
  CHECK(holds(
      "the steady tail is least",
      [] {
        const Event event = usual_event(5);
        const auto steady = plan(event, {Attitude::steady, 0.8, false});
        const auto average = plan(event, {Attitude::average, 0.8, false});
        RC_ASSERT(steady.has_value() == average.has_value());
        RC_PRE(steady.has_value());  // alone: the macro evaluates both sides of an &&
        RC_PRE(steady->every_path);
        const double slack = 2.0 * steady->time_step;
        RC_ASSERT(steady->tail_lost <= average->tail_lost + slack);
        RC_ASSERT(average->expected_lost <= steady->expected_lost + 1e-6);
        // What is promised is never flattered, and close.
        RC_ASSERT(steady->first[0].loss <= average->tail_lost + slack);
        RC_ASSERT(steady->first[0].loss >= steady->tail_lost - slack);
      },
      400));
}

TEST_CASE("what is said to change the first choice does change it") {
  int changed = 0, colder_or_warmer = 0;
  CHECK(holds(
      "what changes the choice",
      [&] {
        Event event = usual_event(6);
        for (Stage& stage : event.stages) stage.air = celsius(whole(-10, 35));
        const Question question{*rc::gen::element(Attitude::average, Attitude::steady), 0.8, true};
        const auto now = plan(event, question);
        if (!now) return;
        const auto kind = [&](const Plan& p) {
          return event.sets[p.sets[p.first[0].set].entry].kind.id;
        };
        const auto differs = [&](const Event& then) {
          const auto other = plan(then, {question.attitude, question.tail_level, false});
          return !other || kind(*other) != kind(*now);
        };
        if (now->swing) {
          ++changed;
          Event then = event;
          Chances& chances = then.stages[now->swing->stage].chances;
          chances = with_wet_chance(chances, now->swing->wet_then);
          RC_ASSERT(differs(then));
        }
        if (now->air_swing) {
          ++colder_or_warmer;
          Event then = event;
          for (Stage& stage : then.stages)
            stage.air = celsius(in_celsius(*stage.air) + now->air_swing->kelvins);
          RC_ASSERT(differs(then));
        }
        // Where every change was looked at and none did it, none does.
        if (now->swing || !now->swing_complete || now->first.size() < 2) return;
        for (std::size_t i = 0; i < event.stages.size(); ++i)
          for (const double wet : {0.0, 1.0}) {
            Event then = event;
            then.stages[i].chances = with_wet_chance(event.stages[i].chances, wet);
            RC_ASSERT(!differs(then));
          }
      },
      1000));
  CHECK(changed > 100);
  CHECK(colder_or_warmer > 20);
}
