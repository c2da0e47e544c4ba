#include "core/judge/pressure_setting.hpp"

#include <algorithm>

#include "core/judge/advice.hpp"
#include "core/judge/age.hpp"
#include "core/judge/pressure.hpp"
#include "core/standard/instrument.hpp"

namespace treadwater::judge {
namespace {

using standard::pressure_gauge_error;

// Converting to colder air and back loses the last digits: ignore them.
constexpr GaugePressure rounding = kilopascals(1e-6);
// A reading this much warmer than the air was not taken cold.
constexpr TemperatureDifference warm_by = kelvin_difference(3.0);
// A shortfall there of up to this is not worth acting on.
constexpr GaugePressure little_less = kilopascals(5.0);

AbsolutePressure air_at(const std::optional<Length>& height) {
  return height ? air::outside_at(*height) : air::standard_atmosphere;
}

class Setting {
 public:
  explicit Setting(const SettingCase& setting) : case_(setting) {}

  SettingJudged judge() {
    if (case_.size && case_.load) judged_.need = judge_need(case_, findings_);
    if (case_.size) find_setting();
    find_setting_here();
    if (case_.gauge) judge_reading();
    if (case_.hot_target && case_.hot_tyre) judge_target(*case_.hot_target, *case_.hot_tyre);
    carry_to_stage();
    if (case_.size) {
      judge_most();
      judge_narrow_beaded_edge(*case_.size, findings_);
      judge_marked_age(case_.size->date_code, case_.today, findings_);
    }
    return std::move(judged_);
  }

 private:
  patch::LeastPressure least_of_kind() const { return least_to_set(case_); }
  std::optional<GaugePressure> need() const { return judged_.need.pressure(); }

  // A placard that the load is beyond is not what a reading is held against.
  bool placard_counts() const {
    return case_.placard && !(need() && *case_.placard < *need() - rounding);
  }

  void saw(GaugePressure pressure) { highest_ = std::max(highest_, pressure); }

  // The higher of the placard and what the load needs.
  void find_setting() {
    const auto placard = case_.placard;
    auto& set = judged_.set;
    set = placard;
    if (placard && need() && *placard < *need() - rounding)
      findings_.add(finding::placard_under_need,
                    {Value::at_most(*placard), Value::at_least(*need())},
                    {&advice::placard_first, &patch::least_pressure_source()});
    else if (placard_under_least(case_))
      findings_.add(finding::placard_under_least,
                    {Value::at_most(*placard), Value::at_least(patch::least_pressure())},
                    {&advice::placard_first, &patch::least_pressure_source()});
    if (const auto by_load = judged_.need.by_a_gauge())
      set = std::max(*by_load, placard.value_or(*by_load));
    const patch::LeastPressure kind = least_of_kind();
    if (!set || *set >= kind.pressure) return;
    findings_.add(finding::under_least, {Value::at_most(*set), Value::at_least(kind.pressure)},
                  {kind.from});
    set.reset();
  }

  // What to set where the car is, for the right pressure where it will be driven.
  void find_setting_here() {
    if (!judged_.set || !case_.goes_elsewhere()) return;
    const GaugePressure here = for_there(*judged_.set);
    if (here > *judged_.set + rounding) judged_.set_here = here;
  }
  GaugePressure for_there(GaugePressure set) const {
    return air::carried_over({set, case_.there()}, case_.here());
  }

  // ---- readings ----

  // The reading as it would be cold, where the car is.
  void judge_reading() {
    const air::Conditions here = case_.here();
    const Temperature now = case_.tyre_now.value_or(case_.cold_day);
    const GaugePressure cold =
        std::max(kilopascals(0.0), air::carried_over({*case_.gauge, {now, here.outside}}, here));
    judged_.cold = cold;
    judged_.read_warm = now > case_.cold_day + warm_by;
    if (judged_.read_warm)
      findings_.add(finding::hot_reading_carried_over, {},
                    {&advice::hot_reading, &air::gas_law_source()});
    saw(cold);
    if (case_.size && !judge_too_low(cold)) compare_with_set(cold);
  }

  bool judge_too_low(GaugePressure cold) {
    const patch::LeastPressure kind = least_of_kind();
    const Sources sources{&air::gas_law_source(), kind.from};
    const auto set = judged_.to_set();
    if (need() && cold < *need())
      findings_.add(
          finding::pressure_low_to_set,
          {Value::at_most(cold), *case_.load, Value::at_least(*need()), Value::at_least(*set)},
          sources);
    else if (need() && cold < *judged_.need.by_a_gauge() - rounding)
      findings_.add(finding::pressure_at_least_to_set,
                    {pressure_gauge_error, Value::at_least(*judged_.need.by_a_gauge())});
    else if (!need() && judged_.set && cold < *judged_.set)
      findings_.add(finding::pressure_low_by_placard, {Value::at_most(cold), Value::at_least(*set)},
                    sources);
    else if (!need() && !judged_.set && cold < kind.pressure)
      findings_.add(finding::pressure_under_least,
                    {Value::at_most(cold), Value::at_least(kind.pressure)}, sources);
    else
      return false;
    return true;
  }

  // A calculated pressure is rounded down.
  Value it_has(GaugePressure cold) const {
    return judged_.read_warm ? Value::at_most(cold) : Value(cold);
  }

  void compare_with_set(GaugePressure cold) {
    const auto set = judged_.to_set();
    if (!set) return;
    if (cold < *judged_.set - pressure_gauge_error)
      findings_.add(finding::under_placard, {it_has(cold), *judged_.set}, {&advice::placard_first});
    else if (placard_counts() && cold > *set + noticeably_more)
      findings_.add(finding::over_placard, {it_has(cold), Value::at_least(*set)},
                    {&advice::placard_first, &advice::hot_reading});
  }

  // ---- a target hot pressure: what to set cold for it ----

  void judge_target(GaugePressure target, Temperature at_work) {
    const Sources law{&air::gas_law_source()};
    const air::Conditions hot{at_work, case_.there().outside};
    const GaugePressure cold = air::carried_over({target, hot}, case_.here());
    judged_.cold_for_target = cold;
    saw(cold);
    const GaugePressure lowest = case_.size
                                     ? judged_.need.by_a_gauge().value_or(least_of_kind().pressure)
                                     : patch::least_pressure();
    const auto set = judged_.to_set();
    if (!set) {
      if (cold < lowest - rounding)
        findings_.add(finding::target_too_low, {cold, Value::at_least(lowest)}, law);
      return;
    }
    // The setting is not what the target needs: say how hot it will get anyway.
    const GaugePressure gives = air::carried_over({*set, case_.here()}, hot);
    judged_.hot_at_setting = gives;
    const Values told{target, cold, Value::at_least(*set), gives, at_work};
    if (cold < lowest - rounding && need() && cold >= *need())
      findings_.add(finding::target_near_need,
                    {target, cold, pressure_gauge_error, Value::at_least(*set), gives, at_work},
                    law);
    else if (cold < lowest - rounding)
      findings_.add(finding::target_too_low_not_set, told, law);
    else if (case_.placard && cold < *case_.placard - pressure_gauge_error)
      findings_.add(finding::target_under_placard, told,
                    {&advice::placard_first, &air::gas_law_source()});
    else if (cold > *set + pressure_gauge_error)
      findings_.add(finding::target_over_set, told, law);
  }

  // What the gauge will show for the same air where it will be driven.
  void carry_to_stage() {
    const auto now = judged_.cold ? judged_.cold : judged_.set;
    if (!now || !case_.goes_elsewhere()) return;
    const GaugePressure shown = air::carried_over({*now, case_.here()}, case_.there());
    judged_.at_stage = shown;
    saw(shown);
    if (!judged_.set) return;
    const GaugePressure set = *judged_.set;
    const bool short_of_need = need() && shown < *judged_.need.by_a_gauge() - rounding;
    if (!short_of_need && shown >= set - little_less) return;
    findings_.add(short_of_need ? finding::too_low_at_stage : finding::low_at_stage,
                  {shown, Value::at_least(for_there(set)), Value::at_least(set)},
                  {&air::gas_law_source()});
  }

  // ---- of all that was read and all that is to be set ----

  void judge_most() {
    if (const auto set = judged_.to_set()) saw(*set);
    if (need()) judge_room_under_marking(case_.size->marked_pressure, *need(), findings_);
    judge_highest(*case_.size, highest_, need(), findings_);
  }

  const SettingCase& case_;
  SettingJudged judged_;
  Findings& findings_ = judged_.findings;
  GaugePressure highest_;
};

}  // namespace

air::Conditions SettingCase::here() const { return {cold_day, air_at(height_here)}; }

air::Conditions SettingCase::there() const {
  return {stage_day.value_or(cold_day), air_at(height_there ? height_there : height_here)};
}

SettingJudged judge_setting(const SettingCase& setting) { return Setting(setting).judge(); }

void conclude(SettingJudged& judged, const SettingCase& setting) {
  if (!setting.placard && judged.to_set())
    judged.findings.add(finding::placard_first, {}, {&advice::placard_first});
}

bool air_cures(const Findings& findings) {
  return std::all_of(findings.found.begin(), findings.found.end(), [](const Found& one) {
    return one.level() != Level::unfit || air_cures(one.what);
  });
}

}  // namespace treadwater::judge
