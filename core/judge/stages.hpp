// Sets of tyres on the stages ahead: weather and air in which they are unsafe or out of their
// range, the rules, standing water on a stage, a team's cars, and how far the plan can be trusted.
#pragma once

#include <optional>
#include <vector>

#include "core/judge/finding.hpp"
#include "core/quantity/write.hpp"
#include "core/stage/plan.hpp"
#include "core/stage/team.hpp"
#include "core/water/estimate.hpp"

namespace treadwater::judge {

struct CarOnStages {
  Text name{};
  stage::TeamCar wears{};
  std::optional<Length> width{};  // of the section
  std::optional<GaugePressure> pressure{};
};

// A plan, and what else is known of its event.
struct StagesCase {
  const stage::Event& event;
  stage::Attitude attitude;
  const stage::Plan& plan;
  std::vector<Text> stages{};                          // their names
  std::vector<Text> sets{};                            // of Plan::sets, the same
  std::vector<std::size_t> without_weather{};          // stages for which no chances were given
  std::vector<std::optional<Length>> water{};          // standing on each stage, by a ruler
  std::vector<CarOnStages> cars{};                     // of the team; the plan is the first car's
  std::vector<std::optional<stage::OnCar>> on_cars{};  // if there are two or more

  std::size_t first() const { return plan.first.front().set; }  // what goes on now
  std::size_t entry(std::size_t set) const { return plan.sets[set].entry; }
  const stage::SetKind& kind(std::size_t set) const { return event.sets[entry(set)].kind; }
  bool has_water(std::size_t stage) const;
  // The stage with the deepest water that may still be entered.
  std::optional<std::size_t> deepest_stage() const;
};

// The sources behind every figure of a plan.
Sources plan_sources(const stage::Event& event);

// One set in the water on one stage, at the tread it may be worn to by then.
struct Floating {
  std::size_t stage;
  std::size_t set;
  Speed from;  // the low end of the onset
  Speed hold_to;
  bool slick;  // to be changed, whatever its onset
};
std::optional<Floating> floating(const StagesCase& stages, std::size_t stage, std::size_t set,
                                 const CarOnStages& car, UnitSystem units);
// The lowest pressure and the widest tyre of the cars: none of them aquaplanes earlier.
CarOnStages first_afloat(const std::vector<CarOnStages>& cars);

// For a tread measured on a set of this kind.
void judge_set_tread(const stage::SetKind& kind, Length tread, Findings& findings);

// Every set that may be on a stage with water, in the order of the stages.
std::vector<Floating> judge_stages(const StagesCase& stages, UnitSystem units, Findings& findings);

}  // namespace treadwater::judge
