#include "core/stage/walk.hpp"

#include <algorithm>
#include <cmath>

#include "core/stage/decision.hpp"
#include "core/stage/hindsight.hpp"
#include "core/stage/paths.hpp"

namespace treadwater::stage {
namespace {

class Walk {
 public:
  Walk(const Event& event, const Question& question, const Model& model, Solver& solver, Plan& plan)
      : event_(event),
        question_(question),
        model_(model),
        solver_(solver),
        plan_(plan),
        sets_(model.sets.size()),
        paths_(model),
        hindsight_(model),
        weather_(model.stages),
        halts_(model.legs * weathers),
        table_{paths_.count(), std::vector<double>(paths_.count()),
               std::vector<double>(2 * paths_.count())} {
    plan_.every_path = paths_.every();
    plan_.left.assign(model_.stages, {0.0, infinity, 0.0, infinity});
    plan_.used.assign(sets_, 0.0);
    plan_.on.assign(model_.stages * sets_, {});
    for (std::size_t i = 0; i < halts_.size(); ++i)
      halts_[i] = {model_.leg_first[i / weathers] - 1, Weather(i % weathers), 0.0,
                   std::vector<double>(sets_, 0.0), 0};
  }

  void all() {
    for (std::size_t n = 0; n < paths_.count(); ++n) {
      chance_ = paths_.path(n, weather_);
      if (chance_ > 0.0) one(n);
    }
    // What a path has used stays used on all that were not drawn.
    for (std::size_t i = sets_; i < plan_.on.size(); ++i)
      plan_.on[i].most_worn = std::max(plan_.on[i].most_worn, plan_.on[i - sets_].most_worn);
    sum_up_losses();
    sum_up_halts();
  }

 private:
  void one(std::size_t path) {
    Solver::Course course = solver_.start();
    worn_ = model_.worn;
    for (std::size_t leg = 0; leg < model_.legs; ++leg) run(leg, course);
    for (std::size_t s = 0; s < sets_; ++s)
      if (course.used[s] != 0) plan_.used[s] += chance_;
    table_.chance[path] = chance_;
    table_.loss[path] = course.lost;
    // Apart from rounding, hindsight never loses more.
    table_.loss[paths_.count() + path] =
        std::min(course.lost, hindsight_.best(weather_, plan_.regret_is_bound));
  }

  void run(std::size_t leg, Solver::Course& course) {
    const std::size_t seen = leg == 0 ? 0 : weather_[model_.leg_first[leg] - 1];
    const std::size_t s = course.fitted = solver_.choose(course, leg, seen);
    const std::size_t k = model_.kind_of[s];
    AtHalt& halt = halts_[leg * weathers + seen];
    halt.chance += chance_;
    halt.fits[s] += chance_;
    course.used[s] = 1;
    const int before = worn_[s];
    int planned = 0;
    for (std::size_t i = model_.leg_first[leg]; i < model_.leg_first[leg + 1]; ++i) {
      const std::size_t cell = model_.at(i, k, weather_[i]);
      course.lost += model_.lost[cell];
      worn_[s] += model_.wear[cell];
      planned = solver_.worn_after(leg, k, planned, i, weather_[i]);
      after(i, s, before + model_.worst_to[i * model_.kinds + k]);
    }
    course.codes[s] = static_cast<std::uint16_t>(course.codes[s] + planned);
  }

  // How the sets stand after a stage with this one on, which is worn to `worst` where the weather
  // was hard on it.
  void after(std::size_t stage, std::size_t set, int worst) {
    const SetKind& kind = *model_.kind[model_.kind_of[set]];
    const int limit = model_.limit[model_.kind_of[set]];
    const double undriven = event_.drive == Drive::all ? 1.0 : 1.0 / kind.undriven_life;
    const auto left = [&](int now, double share) {
      return (limit - model_.worn[set] - (now - model_.worn[set]) * share) / life_units;
    };
    WearLeft& of = plan_.left[stage];
    of.expected += chance_ * left(worn_[set], 1.0);
    of.least = std::min(of.least, left(worst, 1.0));
    of.undriven_expected += chance_ * left(worn_[set], undriven);
    of.undriven_least = std::min(of.undriven_least, left(worst, undriven));
    SetOnStage& on = plan_.on[stage * sets_ + set];
    on.on += chance_;
    if (!safe_in(kind, event_.stages[stage], Weather(weather_[stage]))) on.unsafe += chance_;
    for (std::size_t other = 0; other < sets_; ++other) {
      SetOnStage& each = plan_.on[stage * sets_ + other];
      each.worn += chance_ * worn_[other] / life_units;
      each.most_worn = std::max(
          each.most_worn, static_cast<double>(other == set ? worst : worn_[other]) / life_units);
    }
  }

  void sum_up_losses() {
    const Judgement judged = judge(table_, 0, question_.tail_level);
    const bool steady = question_.attitude == Attitude::steady;
    const bool solved = !steady && !plan_.every_path;
    plan_.expected_lost = solved ? solver_.planned().mean : judged.expected;
    plan_.worst_lost = plan_.every_path ? judged.worst : solver_.planned().worst;
    plan_.tail_lost = steady && !plan_.every_path ? plan_.first[0].loss : judged.tail_mean;
    plan_.regret = judged.expected_regret;
    plan_.largest_regret = judged.largest_regret;
    if (plan_.every_path) return;
    double square = 0.0;
    for (std::size_t n = 0; n < paths_.count(); ++n) {
      const double regret = table_.loss[n] - table_.loss[paths_.count() + n] - plan_.regret;
      square += regret * regret;
    }
    const auto count = static_cast<double>(paths_.count());
    plan_.regret_error = std::sqrt(square / (count - 1.0) / count);
  }

  // The start is no halt.
  void sum_up_halts() {
    for (std::size_t i = weathers; i < halts_.size(); ++i) {
      AtHalt& halt = halts_[i];
      if (!(halt.chance > 0.0)) continue;
      for (double& share : halt.fits) share /= halt.chance;
      halt.set = static_cast<std::size_t>(std::max_element(halt.fits.begin(), halt.fits.end()) -
                                          halt.fits.begin());
      plan_.halts.push_back(std::move(halt));
    }
  }

  const Event& event_;
  const Question& question_;
  const Model& model_;
  Solver& solver_;
  Plan& plan_;
  std::size_t sets_;
  Paths paths_;
  Hindsight hindsight_;
  std::vector<std::size_t> weather_;  // of the path being walked
  double chance_ = 0.0;               // the same
  std::vector<int> worn_;             // by set, on it
  std::vector<AtHalt> halts_;         // leg, weather seen
  LossTable table_;                   // by path: of the plan, and of hindsight
};

}  // namespace

void walk(const Event& event, const Question& question, const Model& model, Solver& solver,
          Plan& plan) {
  Walk(event, question, model, solver, plan).all();
}

}  // namespace treadwater::stage
