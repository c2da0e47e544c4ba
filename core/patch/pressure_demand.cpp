#include "core/patch/pressure_demand.hpp"

#include <algorithm>

namespace treadwater::patch {
namespace {

Speed top_speed(const Duty& duty) { return std::max(duty.speed, duty.car_top_speed); }

}  // namespace

std::optional<Mass> greatest_load_at(const RatedTyre& tyre, const Duty& duty) {
  const auto rated = rating_at(tyre, duty.speed);
  const auto upright = standard::camber_load_factor(duty.camber_degrees, top_speed(duty));
  if (!rated || !upright || !(tyre.greatest > kilograms(0.0)) ||
      !(duty.car_top_speed >= kilometres_per_hour(0.0)))
    return std::nullopt;
  const bool cut = duty.speed > kilometres_per_hour(210.0);
  return *rated * (cut ? *upright : 1.0);
}

tl::expected<PressureDemand, NoPressure> pressure_demand(const RatedTyre& tyre, const Duty& duty) {
  const auto no = [](NoPressure reason) { return tl::make_unexpected(reason); };
  if (!(duty.load >= kilograms(0.0)) || !(duty.speed >= kilometres_per_hour(0.0)) ||
      !(duty.car_top_speed >= kilometres_per_hour(0.0)) || !(tyre.greatest > kilograms(0.0)))
    return no(NoPressure::not_a_number);

  const auto rated = rating_at(tyre, duty.speed);
  if (!rated) return no(NoPressure::above_symbol);
  const auto greatest = greatest_load_at(tyre, duty);
  const auto camber = standard::camber_pressure_factor(duty.camber_degrees, top_speed(duty));
  if (!greatest || !camber) return no(NoPressure::too_much_camber);

  const bool above_rating = !(duty.load <= *greatest);
  const standard::Allowance tow = standard::towing_rear_tyre();
  if (above_rating && !(duty.towing_rear && duty.load <= tow.of(tyre.greatest)))
    return no(NoPressure::overloaded);
  if (above_rating && duty.speed > tow.at_most) return no(NoPressure::towing_too_fast);

  PressureDemand demand;
  demand.base = pressure_for_load(tyre, *rated, std::min(duty.load, *rated));
  demand.speed = pressure_for_speed(tyre, duty.speed);
  demand.camber = demand.base * (*camber - 1.0);
  if (above_rating) demand.towing = tow.at_least_more;
  return demand;
}

}  // namespace treadwater::patch
