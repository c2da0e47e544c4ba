#include "core/stage/swing.hpp"

#include <algorithm>
#include <cmath>

namespace treadwater::stage {
namespace {

// The effort allowed for the search, and for confirming its result.
constexpr std::uint64_t swing_work = 30'000'000;
constexpr std::uint64_t settling_work = 30'000'000;
constexpr std::uint64_t solutions_of_a_search = 150;
constexpr double most_kelvins = 20.0;
constexpr double swing_precision = 0.005;

// An input that may turn out differently, and how far it can change.
struct Lever {
  enum What { wetter, drier, warmer, colder } what;
  std::size_t stage;
  double far;        // chance, or kelvins
  double precision;  // the same
};

// Looks for the smallest change that makes another kind of set go on first. If one solution is
// quick, every step is exact. Otherwise changes are first judged by plans that round wear up to the
// worst weather, corrected by their error for today's values, and the result is then checked
// exactly.
class SwingSearch {
 public:
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

  // Reports progress from one share of the work to another.
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

  // Confirms what was found, from the start of the search outward.
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

void look_for_swing(const Event& event, const Question& question, const Model& model,
                    std::uint64_t work, Plan& plan) {
  SwingSearch(event, question, model, work, plan).look();
}

}  // namespace treadwater::stage
