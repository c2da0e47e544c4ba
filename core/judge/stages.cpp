#include "core/judge/stages.hpp"

#include <algorithm>
#include <cmath>

#include "core/judge/advice.hpp"
#include "core/judge/water.hpp"
#include "core/quantity/text.hpp"
#include "core/stage/decision.hpp"
#include "core/standard/instrument.hpp"
#include "core/standard/road_surface.hpp"
#include "core/water/crossing.hpp"
#include "core/words/measure.hpp"

namespace treadwater::judge {
namespace {

using stage::Weather;

// If nothing else is known of the tyres that go into standing water.
constexpr GaugePressure soft_stage_pressure = kilopascals(180.0);
constexpr Length widest_unknown = millimetres(255.0);  // water/estimate.hpp
constexpr double likelier_than_not = 0.5;
constexpr double seldom = 0.1;
constexpr double cut_by_hand = 0.5;  // of the credit of moulded grooves

// The names of some stages, as a list.
class Names {
 public:
  explicit Names(const StagesCase& stages) : stages_(stages) {}
  void add(std::size_t stage) { add_item(list_, stages_.stages[stage]); }
  bool empty() const { return list_.empty(); }
  operator Value() const { return {list_}; }

 private:
  const StagesCase& stages_;
  std::string list_;
};

bool may_be_on(const StagesCase& stages, std::size_t stage, std::size_t entry) {
  for (std::size_t s = 0; s < stages.sets.size(); ++s)
    if (stages.entry(s) == entry && stages.plan.at(stage, s).on > 0.0) return true;
  return false;
}

bool may_be_run(const StagesCase& stages, std::size_t entry) {
  for (std::size_t s = 0; s < stages.sets.size(); ++s)
    if (stages.entry(s) == entry && stages.plan.used[s] > 0.0) return true;
  return false;
}

// ---- weather, air, rules ----

void judge_weather_given(const StagesCase& stages, Findings& findings) {
  Names without(stages);
  for (const std::size_t stage : stages.without_weather) without.add(stage);
  if (!without.empty()) findings.add(finding::weather_assumed, {without});
}

// A set that may be on in weather in which its pace is not safe: never called fit without saying
// so.
void judge_pace(const StagesCase& stages, std::size_t set, Findings& findings) {
  const std::vector<stage::Stage>& all = stages.event.stages;
  bool in[stage::weathers] = {};
  std::optional<std::size_t> where;
  const auto unsafe = [&](std::size_t stage) { return stages.plan.at(stage, set).unsafe; };
  for (std::size_t i = 0; i < all.size(); ++i) {
    if (!(stages.plan.at(i, set).on > 0.0)) continue;
    for (std::size_t w = 0; w < stage::weathers; ++w) {
      if (!(all[i].chances[w] > 0.0) || stage::safe_in(stages.kind(set), all[i], Weather(w)))
        continue;
      in[w] = true;
      if (!where || unsafe(i) > unsafe(*where)) where = i;
    }
  }
  if (!where) return;
  std::string weathers;
  for (std::size_t w = 0; w < stage::weathers; ++w)
    if (in[w]) add_item(weathers, say(stage::weather_name(Weather(w))));
  findings.add(unsafe(*where) >= likelier_than_not ? finding::unsafe_weather_likely
                                                   : finding::unsafe_weather,
               {Value::kind(stages.sets[set]), weathers, stages.stages[*where],
                Value::chance(unsafe(*where))},
               {stages.kind(set).pace_known});
}

void judge_window(const StagesCase& stages, std::size_t entry, Findings& findings) {
  const stage::SetKind& kind = stages.event.sets[entry].kind;
  Names cold(stages), hot(stages);
  for (std::size_t i = 0; i < stages.event.stages.size(); ++i) {
    const auto& air = stages.event.stages[i].air;
    if (!air || !may_be_on(stages, i, entry)) continue;
    if (*air < kind.coolest) cold.add(i);
    if (*air > kind.hottest) hot.add(i);
  }
  if (!cold.empty())
    findings.add(finding::cold_tyres, {kind.label, kind.coolest, cold}, {kind.window_known});
  if (!hot.empty())
    findings.add(finding::hot_tyres, {kind.label, kind.hottest, hot}, {kind.window_known});
}

void judge_air(const StagesCase& stages, Findings& findings) {
  for (std::size_t e = 0; e < stages.event.sets.size(); ++e) judge_window(stages, e, findings);
  Names unknown(stages);
  for (std::size_t i = 0; i < stages.event.stages.size(); ++i)
    if (!stages.event.stages[i].air) unknown.add(i);
  if (!unknown.empty()) findings.add(finding::air_unknown, {unknown});
}

void judge_rules(const StagesCase& stages, Findings& findings) {
  const stage::Rules& rules = stages.event.rules;
  if (rules.road_sections) findings.add(finding::approval_mark, {}, {&advice::officials});
  for (std::size_t e = 0; e < stages.event.sets.size(); ++e) {
    const stage::SetKind& kind = stages.event.sets[e].kind;
    if (may_be_run(stages, e) && 1.0 - kind.land_high < rules.least_grooves - 1e-9)
      findings.add(finding::grooves, {kind.label, Value::number(100.0 * rules.least_grooves)},
                   {kind.land_known});
  }
}

// ---- standing water ----

// Aquaplanes as a slick, a cut slick or a moulded tyre.
double groove_credit(const stage::SetKind& kind) {
  return kind.slick() ? 0.0 : kind.moulded ? 1.0 : cut_by_hand;
}

const standard::RoadSurface* road_of(const stage::Stage& stage) {
  return standard::find_road_surface(stage.gravel > 0.0 ? "loose" : "asphalt");
}

void judge_likeliest(const StagesCase& stages, const Floating& one, GaugePressure pressure,
                     Findings& findings) {
  Values values{stages.stages[one.stage], Value::water(*stages.water[one.stage]),
                stages.sets[one.set], one.from, pressure};
  if (!one.slick) values.push_back(Value::hold_to(one.hold_to));
  Sources sources = onset_sources();
  sources.push_back(&road_of(stages.event.stages[one.stage])->source);
  findings.add(one.slick ? finding::slick_on_stage : finding::water_on_stage, std::move(values),
               std::move(sources));
}

double chance_of_water(const stage::Stage& stage) {
  return stage.chances[stage::index(Weather::standing_water)];
}

void judge_not_measured(const StagesCase& stages, Findings& findings) {
  Names not_measured(stages);
  double most = 0.0;
  for (std::size_t i = 0; i < stages.event.stages.size(); ++i) {
    const double chance = chance_of_water(stages.event.stages[i]);
    if (stages.has_water(i) || !(chance > 0.0)) continue;
    not_measured.add(i);
    most = std::max(most, chance);
  }
  if (!not_measured.empty())
    findings.add(most < seldom ? finding::rare_water_not_measured : finding::water_not_measured,
                 {not_measured});
}

void judge_how_known(const StagesCase& stages, const std::vector<Floating>& afloat,
                     Findings& findings) {
  if (afloat.empty()) return;
  const Sources sources{&water::estimate_source()};
  const auto on_any = [&](auto&& is) { return std::any_of(afloat.begin(), afloat.end(), is); };
  if (stages.cars.empty() || std::any_of(stages.cars.begin(), stages.cars.end(),
                                         [](const CarOnStages& car) { return !car.pressure; }))
    findings.add(finding::pressure_assumed_on_stages, {soft_stage_pressure});
  if (on_any([&](const Floating& one) { return *stages.water[one.stage] > deepest_measured; }))
    findings.add(finding::beyond_measured_water_on_stage, {}, sources);
  if (on_any([&](const Floating& one) { return stages.event.stages[one.stage].gravel > 0.0; }))
    findings.add(finding::loose_water, {}, sources);
}

std::vector<Floating> judge_water_on_stages(const StagesCase& stages, UnitSystem units,
                                            Findings& findings) {
  std::vector<Floating> afloat;
  const CarOnStages car = first_afloat(stages.cars);
  for (std::size_t i = 0; i < stages.event.stages.size(); ++i) {
    if (!stages.has_water(i)) continue;
    const Text& name = stages.stages[i];
    if (!(chance_of_water(stages.event.stages[i]) > 0.0))
      findings.add(finding::water_not_in_chances, {name});
    if (*stages.water[i] >= water::deepest_to_enter) {
      findings.add(finding::deep_water_on_stage, {name, Value::water(*stages.water[i])},
                   {&advice::deep_water});
      continue;
    }
    const std::size_t likely = stages.plan.likeliest_on(i);
    for (std::size_t s = 0; s < stages.sets.size(); ++s) {
      if (s != likely && stages.plan.at(i, s).on < hardly_ever) continue;
      const auto one = floating(stages, i, s, car, units);
      if (!one) continue;
      afloat.push_back(*one);
      if (s == likely) judge_likeliest(stages, *one, *car.pressure, findings);
    }
  }
  judge_not_measured(stages, findings);
  judge_how_known(stages, afloat, findings);
  return afloat;
}

// ---- a team ----

void judge_team(const StagesCase& stages, Findings& findings) {
  if (stages.cars.size() < 2) return;
  std::string others;
  for (std::size_t i = 0; i < stages.cars.size(); ++i)
    if (const auto& on = stages.on_cars[i];
        on && !stage::same_kind(stages.plan, on->set, stages.first()))
      add_item(others, stages.cars[i].name);
  const Sources sources{&stage::wear_by_load_source()};
  if (others.empty())
    findings.add(finding::team_alike, {}, sources);
  else
    findings.add(finding::team_differs, {others}, sources);
}

// ---- what would change it, and how exact it is ----

void judge_swing(const StagesCase& stages, Findings& findings) {
  const stage::Plan& plan = stages.plan;
  const auto add = [&](Finding what, Values values) {
    Found found{what, std::move(values), {&advice::stage_plan}};
    if (!plan.swing_complete) found.remark = finding::swing_cut_short;
    findings.add(std::move(found));
  };
  if (plan.swing) {
    const stage::Swing& swing = *plan.swing;
    Values values{stages.stages[swing.stage], Value::number(100.0 * swing.wet_then),
                  Value::number(100.0 * swing.wet_now)};
    if (swing.set) values.push_back(stages.sets[*swing.set]);
    add(swing.set ? finding::swing_to_set : finding::swing_to_none, std::move(values));
  } else if (plan.first.size() > 1) {
    add(finding::no_swing, {});
  }
  if (!plan.air_swing) return;
  const stage::AirSwing& swing = *plan.air_swing;
  const TemperatureDifference by = kelvin_difference(std::fabs(swing.kelvins));
  const bool colder = swing.kelvins < 0.0;
  if (swing.set)
    add(colder ? finding::colder_to_set : finding::warmer_to_set, {by, stages.sets[*swing.set]});
  else
    add(colder ? finding::colder_to_none : finding::warmer_to_none, {by});
}

void judge_exactness(const StagesCase& stages, Findings& findings) {
  const Sources own{&advice::stage_plan};
  if (stages.plan.wear_levels != 0) findings.add(finding::wear_rounded, {}, own);
  if (!stages.plan.every_path) findings.add(finding::paths_drawn, {}, own);
  if (stages.attitude == stage::Attitude::steady)
    findings.add(finding::time_step, {Value::seconds_lost(seconds(stages.plan.time_step))},
                 {&stage::tail_source()});
}

}  // namespace

bool StagesCase::has_water(std::size_t stage) const {
  return water[stage] && *water[stage] > Length();
}

std::optional<std::size_t> StagesCase::deepest_stage() const {
  std::optional<std::size_t> deepest;
  for (std::size_t i = 0; i < water.size(); ++i)
    if (has_water(i) && *water[i] < water::deepest_to_enter &&
        (!deepest || *water[i] > *water[*deepest]))
      deepest = i;
  return deepest;
}

Sources plan_sources(const stage::Event& event) {
  Sources sources{&advice::stage_plan, &stage::persistence_source()};
  for (const stage::TyreSet& set : event.sets)
    for (const Source* source : {set.kind.pace_known, set.kind.life_known, set.kind.window_known})
      if (source != nullptr) add_once(sources, *source);
  return sources;
}

std::optional<Floating> floating(const StagesCase& stages, std::size_t stage, std::size_t set,
                                 const CarOnStages& car, UnitSystem units) {
  const standard::RoadSurface* road = road_of(stages.event.stages[stage]);
  if (road == nullptr || !stages.has_water(stage)) return std::nullopt;
  const stage::SetKind& kind = stages.kind(set);
  const water::WetTyre tyre{car.pressure.value_or(soft_stage_pressure),
                            stage::tread_left(kind, stages.plan.at(stage, set).most_worn),
                            groove_credit(kind),
                            car.width,
                            *stages.water[stage],
                            road->texture};
  const auto onset = water::aquaplaning_onset(tyre);
  if (!onset || !water::held(*onset)) return std::nullopt;
  return Floating{stage, set, onset->low, floor_to_five(*water::held(*onset), units),
                  water::counts_as_slick(tyre)};
}

CarOnStages first_afloat(const std::vector<CarOnStages>& cars) {
  CarOnStages worst;
  for (const CarOnStages& car : cars) {
    const GaugePressure p = car.pressure.value_or(soft_stage_pressure);
    if (!worst.pressure || p < *worst.pressure) worst.pressure = p;
    if (car.width && (!worst.width || *car.width > *worst.width)) worst.width = car.width;
  }
  // An unknown width is assumed to be at most this.
  for (const CarOnStages& car : cars)
    if (!car.width && worst.width && *worst.width < widest_unknown) worst.width.reset();
  if (!worst.pressure) worst.pressure = soft_stage_pressure;
  return worst;
}

void judge_set_tread(const stage::SetKind& kind, Length tread, Findings& findings) {
  if (kind.slick())
    findings.add(finding::slick_tread);
  else if (tread > kind.new_tread + standard::tread_gauge_error)
    findings.add(finding::tread_above_new,
                 {kind.label, Value::depth(tread), Value::depth(kind.new_tread)});
}

std::vector<Floating> judge_stages(const StagesCase& stages, UnitSystem units, Findings& findings) {
  findings.add(finding::why_this_set, {stages.kind(stages.first()).why},
               plan_sources(stages.event));
  judge_weather_given(stages, findings);
  for (std::size_t s = 0; s < stages.sets.size(); ++s) judge_pace(stages, s, findings);
  judge_air(stages, findings);
  judge_rules(stages, findings);
  std::vector<Floating> afloat = judge_water_on_stages(stages, units, findings);
  judge_team(stages, findings);
  judge_swing(stages, findings);
  judge_exactness(stages, findings);
  findings.add(finding::officials_decide, {}, {&advice::officials});
  return afloat;
}

}  // namespace treadwater::judge
