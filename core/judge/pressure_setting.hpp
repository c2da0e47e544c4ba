// The cold pressure to set: for the load, speed, camber and trailer, and by the placard; what to
// set here for somewhere colder or higher; and how a reading, or a target hot pressure, compares.
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
  Temperature cold_day = celsius(20.0);  // of the air where the car is
  std::optional<Temperature> tyre_now{};
  std::optional<Temperature> stage_day{};  // of the air where it will be driven
  std::optional<Length> height_here{};
  std::optional<Length> height_there{};
  std::optional<GaugePressure> hot_target{};
  std::optional<Temperature> hot_tyre{};
  standard::Date today{};

  bool goes_elsewhere() const { return stage_day || height_there; }
  // For a cold tyre where the car is, and where it will be driven.
  air::Conditions here() const;
  air::Conditions there() const;
};

// What the load needs at its speed and camber.
struct PressureNeed {
  struct Rated {
    patch::GreatestLoad greatest;
    patch::Support support;
  };
  std::optional<Rated> rated{};  // if the sidewall says enough
  std::optional<patch::PressureDemand> demand{};
  std::optional<GaugePressure> marked{};  // moulded on the tyre

  std::optional<GaugePressure> pressure() const;
  // Allowing for a gauge that may be out.
  std::optional<GaugePressure> by_a_gauge() const;
};

struct SettingJudged {
  Findings findings{};
  PressureNeed need{};
  std::optional<GaugePressure> set{};       // where it will be driven
  std::optional<GaugePressure> set_here{};  // more, if the air there needs it
  std::optional<GaugePressure> cold{};      // the reading, converted to cold
  bool read_warm = false;
  std::optional<GaugePressure> cold_for_target{};
  std::optional<GaugePressure> hot_at_setting{};
  std::optional<GaugePressure> at_stage{};  // the same air there, cold

  // What the gauge should show where the car is.
  std::optional<GaugePressure> to_set() const { return set_here ? set_here : set; }
};

// A car's placard that is below the least we know of for its kind, but not below any car's: it
// comes before a least known from memory.
bool placard_under_least(const SettingCase& setting);
// No tyre of this kind is set to less.
patch::LeastPressure least_to_set(const SettingCase& setting);
PressureNeed judge_need(const SettingCase& setting, Findings& findings);
SettingJudged judge_setting(const SettingCase& setting);
// For a form that could be read whole: is the placard known?
void conclude(SettingJudged& judged, const SettingCase& setting);
// Does the pressure to set cure everything that makes it unfit?
bool air_cures(const Findings& findings);

}  // namespace treadwater::judge
