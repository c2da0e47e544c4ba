// What pressure to set, cold: for the load, its speed, camber and trailer, and by the placard; what
// that is here for somewhere colder or higher; and what a reading, or a hot pressure that is
// wanted, says beside it.
#pragma once

#include <optional>

#include "core/air/gas_law.hpp"
#include "core/judge/finding.hpp"
#include "core/patch/pressure_demand.hpp"
#include "core/patch/supported.hpp"
#include "core/sidewall/sidewall.hpp"
#include "core/standard/date.hpp"

namespace treadwater::judge {

struct SettingCase {
  std::optional<sidewall::Reading> size{};
  std::optional<Mass> load{};  // on the wheel
  std::optional<Speed> speed{};
  std::optional<GaugePressure> placard{};
  double camber_degrees = 0.0;
  bool towing_rear = false;
  std::optional<GaugePressure> gauge{};  // as read
  Temperature cold_day = celsius(20.0);  // of the air where it stands
  std::optional<Temperature> tyre_now{};
  std::optional<Temperature> stage_day{};  // of the air where it will be driven
  std::optional<Length> height_here{};
  std::optional<Length> height_there{};
  std::optional<GaugePressure> hot_target{};
  std::optional<Temperature> hot_tyre{};
  standard::Date today{};

  bool goes_elsewhere() const { return stage_day || height_there; }
  // Of a cold tyre where it stands, and where it will be driven.
  air::Conditions here() const;
  air::Conditions there() const;
};

// What the load needs at its speed and camber.
struct PressureNeed {
  struct Rated {
    patch::GreatestLoad greatest;
    patch::Support support;
  };
  std::optional<Rated> rated{};  // where the sidewall says enough
  std::optional<patch::PressureDemand> demand{};

  std::optional<GaugePressure> pressure() const;
  // By a gauge that may be out.
  std::optional<GaugePressure> by_a_gauge() const;
};

struct SettingJudged {
  Findings findings{};
  PressureNeed need{};
  std::optional<GaugePressure> set{};       // where it will be driven
  std::optional<GaugePressure> set_here{};  // more, where the air there asks for it
  std::optional<GaugePressure> cold{};      // the reading, carried over to a cold tyre
  bool read_warm = false;
  std::optional<GaugePressure> cold_for_target{};
  std::optional<GaugePressure> hot_at_setting{};
  std::optional<GaugePressure> at_stage{};  // the same air there, cold

  // What the gauge is to show where it stands.
  std::optional<GaugePressure> to_set() const { return set_here ? set_here : set; }
};

PressureNeed judge_need(const SettingCase& setting, Findings& findings);
SettingJudged judge_setting(const SettingCase& setting);
// Of what can be read whole: is the placard known?
void conclude(SettingJudged& judged, const SettingCase& setting);
// Is all that makes it unfit put right by the pressure to set?
bool air_cures(const Findings& findings);

}  // namespace treadwater::judge
