// What the load needs: the first half of judge/pressure_setting.hpp.
#include <algorithm>

#include "core/air/get_home.hpp"
#include "core/judge/advice.hpp"
#include "core/judge/pressure.hpp"
#include "core/judge/pressure_setting.hpp"
#include "core/judge/tyre.hpp"
#include "core/standard/instrument.hpp"

namespace treadwater::judge {
namespace {

using patch::NoPressure;
using standard::pressure_gauge_error;

// The tables need no extra pressure up to here; see patch/pressure_demand.hpp.
constexpr Speed speed_without_increase = kilometres_per_hour(160.0);

// Cars are placarded from 1.1 bar (from memory): less is a slip of the pen. Our choice.
constexpr GaugePressure lowest_placard = kilopascals(100.0);

// Their pressures are the car maker's to say. Vans, light trucks and trailers have theirs moulded
// on the tyre, and a beaded edge stays on its rim by pressure.
bool of_a_car(const sidewall::Reading& tyre) {
  using sidewall::Family;
  switch (tyre.family) {
    case Family::metric_car:
    case Family::metric_no_series:
    case Family::p_metric:
    case Family::millimetre_rim:
    case Family::inch_cross_ply:
    case Family::us_alphanumeric:
    case Family::overall_diameter:
      return !tyre.motorcycle && !tyre.commercial && !tyre.light_truck;
    default:
      return false;
  }
}

air::GetHome on_a_spare() { return air::get_home(air::Way::temporary_spare, 0.0); }

void judge_spare(const SettingCase& setting, Findings& findings) {
  const air::GetHome spare = on_a_spare();
  const bool too_fast = setting.speed && *setting.speed > spare.speed;
  findings.add(too_fast ? finding::temporary_spare_too_fast : finding::temporary_spare, {},
               {spare.source});
}

// What no pressure makes up for is refused whatever the pressure.
void judge_without_law(const SettingCase& setting, Findings& findings) {
  const auto greatest = patch::greatest_load(*setting.size, setting.load);
  const auto symbol = patch::speed_symbol(*setting.size);
  const standard::Allowance tow = standard::towing_rear_tyre();
  if (greatest) judge_how_rated(*greatest, findings);
  if (greatest && *setting.load > (setting.towing_rear ? tow.of(greatest->mass) : greatest->mass))
    findings.add(overload(*setting.load, greatest->mass));
  if (symbol && setting.speed) judge_symbol(*symbol, *setting.speed, findings);
  findings.add(patch::laws_of(*setting.size) ? finding::no_service_description
                                             : finding::no_pressure_of_rating);
}

void refuse(NoPressure reason, const patch::RatedTyre& tyre, const patch::Duty& duty,
            Findings& findings) {
  const standard::Allowance tow = standard::towing_rear_tyre();
  switch (reason) {
    case NoPressure::overloaded:
      return findings.add(
          duty.load > tyre.greatest
              ? overload(duty.load, tyre.greatest)
              : overload_at_speed(duty.speed, duty.load,
                                  patch::greatest_load_at(tyre, duty).value_or(Mass()),
                                  tyre.vehicle));
    case NoPressure::above_symbol:
      return judge_symbol(*tyre.symbol, duty.speed, findings);
    case NoPressure::too_much_camber:
      return findings.add(finding::too_much_camber, {}, {&standard::camber_source()});
    case NoPressure::towing_too_fast:
      return findings.add(finding::towing_too_fast, {tow.at_most}, {tow.source});
    case NoPressure::not_a_number:
      break;
  }
}

patch::Duty duty_of(const SettingCase& setting, standard::SpeedSymbol symbol) {
  patch::Duty duty;
  duty.load = *setting.load;
  duty.speed = setting.speed.value_or(
      std::min(setting.size->temporary_spare ? on_a_spare().speed : speed_without_increase,
               standard::speed_row(symbol).speed));
  duty.camber_degrees = setting.camber_degrees;
  duty.car_top_speed = duty.speed;
  duty.towing_rear = setting.towing_rear;
  return duty;
}

}  // namespace

std::optional<GaugePressure> PressureNeed::pressure() const {
  return demand ? std::optional(demand->total()) : std::nullopt;
}

std::optional<GaugePressure> PressureNeed::by_a_gauge() const {
  return demand ? std::optional(judge::by_a_gauge(marked, demand->total())) : std::nullopt;
}

bool placard_under_least(const SettingCase& setting) {
  const patch::LeastPressure known = patch::least_pressure_of(*setting.size, setting.load);
  return setting.placard && of_a_car(*setting.size) && *setting.placard < known.pressure &&
         *setting.placard >= lowest_placard;
}

patch::LeastPressure least_to_set(const SettingCase& setting) {
  if (placard_under_least(setting)) return {lowest_placard, &advice::placard_first};
  return patch::least_pressure_of(*setting.size, setting.load);
}

PressureNeed judge_need(const SettingCase& setting, Findings& findings) {
  PressureNeed need;
  const sidewall::Reading& size = *setting.size;
  need.marked = size.marked_pressure;
  if (size.temporary_spare) judge_spare(setting, findings);
  const auto greatest = patch::greatest_load(size, setting.load);
  const auto symbol = patch::speed_symbol(size);
  const auto support = greatest ? patch::Support::of(size, greatest->mass, setting.load)
                                : std::optional<patch::Support>();
  if (!support || !symbol) {
    judge_without_law(setting, findings);
    return need;
  }
  judge_how_rated(*greatest, findings);
  need.rated = PressureNeed::Rated{*greatest, support->with_least(least_to_set(setting))};
  const patch::Support& rated = need.rated->support;
  const patch::Duty duty = duty_of(setting, *symbol);
  if (!setting.speed) findings.add(finding::speed_unknown, {duty.speed});
  const auto demand = patch::pressure_demand(rated.tyre(), duty);
  if (!demand) {
    refuse(demand.error(), rated.tyre(), duty, findings);
    return need;
  }
  need.demand = *demand;
  if (demand->total() > rated.reference() + pressure_gauge_error)
    findings.add(finding::above_reference, {rated.reference()}, rated.sources());
  return need;
}

}  // namespace treadwater::judge
