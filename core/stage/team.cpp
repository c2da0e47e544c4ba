#include "core/stage/team.hpp"

#include <algorithm>

namespace treadwater::stage {
namespace {

constexpr Source archard{"wear-by-load", "J. F. Archard, Contact and Rubbing of Flat Surfaces",
                         "volume worn off by load and way; J. Appl. Phys. 24, 981", "1953",
                         Standing::memory};

// All cars by how fast they wear tyres, each speed once, solved from the ends inward.
class Team {
 public:
  Team(const std::vector<std::optional<double>>& factors, const Event& event,
       const Question& question, const Plan& own)
      : event_(event), question_(question), own_(own) {
    const std::size_t first = own.first.front().set;
    for (const auto& factor : factors)
      if (factor && find(*factor) == nullptr) by_wear_.push_back({*factor, first});
    std::sort(by_wear_.begin(), by_wear_.end(),
              [](const OnCar& a, const OnCar& b) { return a.wear_factor < b.wear_factor; });
  }

  void solve() {
    std::size_t own = 0;
    while (by_wear_[own].wear_factor != 1.0) ++own;
    const std::size_t last = by_wear_.size() - 1;
    if (own > 0) solve(0);
    report(question_.progress, 0.96);
    if (own < last) solve(last);
    report(question_.progress, 0.98);
    solve_between(0, own);
    solve_between(own, last);
    report(question_.progress, 1.0);
  }

  const OnCar* find(double factor) const {
    for (const OnCar& car : by_wear_)
      if (car.wear_factor == factor) return &car;
    return nullptr;
  }

 private:
  void solve_between(std::size_t low, std::size_t high) {
    if (high < low + 2) return;
    if (same_kind(own_, by_wear_[low].set, by_wear_[high].set)) {
      for (std::size_t i = low + 1; i < high; ++i) by_wear_[i].set = by_wear_[low].set;
      return;
    }
    const std::size_t middle = (low + high) / 2;
    solve(middle);
    solve_between(low, middle);
    solve_between(middle, high);
  }

  void solve(std::size_t car) {
    Event event = event_;
    for (TyreSet& set : event.sets)
      for (auto& by_wetness : set.kind.life)
        for (Length& life : by_wetness) life = life / by_wear_[car].wear_factor;
    Question question = question_;
    question.only_first = true;
    question.progress = nullptr;
    const auto found = plan(event, question);
    by_wear_[car].set = found ? std::optional(found->first.front().set) : std::nullopt;
  }

  const Event& event_;
  const Question& question_;
  const Plan& own_;
  std::vector<OnCar> by_wear_;  // slowest first
};

}  // namespace

std::optional<double> wear_factor(const TeamCar& car, const TeamCar& first) {
  if (!car.load || !first.load) return std::nullopt;
  double factor = *car.load / *first.load;
  if (car.size && first.size)
    factor *= first.size->section_width / car.size->section_width *
              (patch::overall_diameter(*first.size) / patch::overall_diameter(*car.size));
  return factor;
}

const Source& wear_by_load_source() { return archard; }

std::vector<std::optional<OnCar>> plan_team(const std::vector<TeamCar>& cars, const Event& event,
                                            const Question& question, const Plan& own) {
  std::vector<std::optional<double>> factors{1.0};
  for (std::size_t i = 1; i < cars.size(); ++i)
    factors.push_back(wear_factor(cars[i], cars.front()));
  Team team(factors, event, question, own);
  team.solve();
  std::vector<std::optional<OnCar>> on;
  for (const auto& factor : factors)
    on.push_back(factor ? std::optional(*team.find(*factor)) : std::nullopt);
  return on;
}

bool same_kind(const Plan& plan, std::optional<std::size_t> a, std::optional<std::size_t> b) {
  return a.has_value() == b.has_value() && (!a || plan.sets[*a].entry == plan.sets[*b].entry);
}

}  // namespace treadwater::stage
