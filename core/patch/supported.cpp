#include "core/patch/supported.hpp"

#include <algorithm>

#include "core/standard/speed_load.hpp"

namespace treadwater::patch {
namespace {

// The last digits of a sum are nothing.
constexpr GaugePressure rounding = kilopascals(1e-9);

}  // namespace

std::optional<Support> Support::of(const sidewall::Reading& tyre, Mass greatest,
                                   std::optional<Mass> load) {
  const auto laws = laws_of(tyre);
  if (!laws) return std::nullopt;
  Support support;
  support.greatest_ = greatest;
  support.law_ = laws->law;
  support.stricter_ = laws->second;
  support.least_ = least_pressure_of(tyre, load);
  support.symbol_ = speed_symbol(tyre);
  support.vehicle_ = vehicle_of(tyre);
  return support;
}

Mass Support::capacity(GaugePressure pressure) const {
  return load_capacity(law_, greatest_, pressure);
}

Mass Support::least_capacity(GaugePressure pressure) const {
  return load_capacity(stricter_.value_or(law_), greatest_, pressure);
}

double Support::percent_at(Speed speed) const {
  return symbol_ ? standard::percent_at_speed(vehicle_, *symbol_, speed).value_or(0.0) : 100.0;
}

Mass Support::carried_at(Speed speed) const { return greatest_ * (percent_at(speed) / 100.0); }

GaugePressure Support::base(Mass load, double percent) const {
  return std::max(pressure_needed(stricter_.value_or(law_), greatest_ * (percent / 100.0), load),
                  least_.pressure);
}

GaugePressure Support::needed(Mass load) const { return base(load, 100.0); }

GaugePressure Support::needed_at(Mass load, Speed speed) const {
  if (!symbol_) return needed(load);
  return base(load, percent_at(speed)) + standard::pressure_for_speed(*symbol_, speed);
}

Speed Support::speed_supported(Mass load, GaugePressure pressure, Speed most) const {
  const auto supported = [&](int kmh) {
    const Speed v = kilometres_per_hour(kmh);
    return load <= carried_at(v) && pressure + rounding >= needed_at(load, v);
  };
  int good = -1;
  int bad = static_cast<int>(in_kilometres_per_hour(most)) + 1;
  while (bad - good > 1) {
    const int middle = (good + bad) / 2;
    (supported(middle) ? good : bad) = middle;
  }
  return kilometres_per_hour(std::max(0, good));
}

std::vector<const Source*> Support::sources() const {
  std::vector<const Source*> used{law_.source, least_.from};
  if (stricter_ && std::none_of(used.begin(), used.end(), [&](const Source* source) {
        return source->id == stricter_->source->id;
      }))
    used.push_back(stricter_->source);
  return used;
}

}  // namespace treadwater::patch
