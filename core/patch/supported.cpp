#include "core/patch/supported.hpp"

#include <algorithm>

namespace treadwater::patch {
namespace {

// The last digits of a sum do not count.
constexpr GaugePressure rounding = kilopascals(1e-9);

}  // namespace

std::optional<Support> Support::of(const sidewall::Reading& tyre, Mass greatest,
                                   std::optional<Mass> load) {
  const auto laws = laws_of(tyre);
  if (!laws) return std::nullopt;
  const LeastPressure least = least_pressure_of(tyre, load);
  return Support(
      {greatest, speed_symbol(tyre), laws->law, laws->second, vehicle_of(tyre), least.pressure},
      least.from);
}

Support Support::with_least(const LeastPressure& least) const {
  Support other = *this;
  other.tyre_.least = least.pressure;
  other.least_from_ = least.from;
  return other;
}

Mass Support::capacity(GaugePressure pressure) const {
  return load_capacity(tyre_.law, tyre_.greatest, pressure);
}

Mass Support::least_capacity(GaugePressure pressure) const {
  return load_capacity(tyre_.second_law.value_or(tyre_.law), tyre_.greatest, pressure);
}

Mass Support::carried_at(Speed speed) const { return rating_at(tyre_, speed).value_or(Mass()); }

GaugePressure Support::needed(Mass load) const {
  return pressure_for_load(tyre_, tyre_.greatest, load);
}

GaugePressure Support::needed_at(Mass load, Speed speed) const {
  return pressure_for_load(tyre_, carried_at(speed), load) + pressure_for_speed(tyre_, speed);
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
  std::vector<const Source*> used{tyre_.law.source, least_from_};
  if (tyre_.second_law && std::none_of(used.begin(), used.end(), [&](const Source* source) {
        return source->id == tyre_.second_law->source->id;
      }))
    used.push_back(tyre_.second_law->source);
  return used;
}

}  // namespace treadwater::patch
