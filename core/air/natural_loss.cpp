#include "core/air/natural_loss.hpp"

#include <algorithm>
#include <cmath>

namespace treadwater::air {
namespace {

constexpr Source tubeless{"natural-loss",
                          "Pressure Loss Mechanisms in Pneumatic Tires, Tire Science and "
                          "Technology 13(1), abstract",
                          "0.5 to 1.0 psi a month at 21 °C, about 1.5 at 32 °C", "1985",
                          Standing::published};
constexpr Source tube{"tube-loss", "A newspaper on natural-rubber tubes", "1 to 3 psi a week",
                      "1935", Standing::secondary};

constexpr Temperature mild = celsius(21.0);
constexpr Temperature warm = celsius(32.0);

// Share of the rate at 21 °C: exp(E/R (1/T21 - 1/T)), which doubles at 32 °C.
double warmth(Temperature t) {
  const Temperature held = std::clamp(t, celsius(-20.0), celsius(60.0));
  const double steps = (1.0 / in_kelvin(mild) - 1.0 / in_kelvin(held)) /
                       (1.0 / in_kelvin(mild) - 1.0 / in_kelvin(warm));
  return std::exp2(steps);
}

}  // namespace

PressureBand natural_loss(AirHolder holder, Temperature temperature, Duration time) {
  const bool tubed = holder == AirHolder::natural_rubber_tube;
  const double periods = warmth(temperature) * (time / (tubed ? days(7.0) : months(1.0)));
  return {psi(tubed ? 1.0 : 0.5) * periods, psi(tubed ? 3.0 : 1.0) * periods};
}

GaugePressure after_months(GaugePressure now, double percent_a_month, double months) {
  return now * std::pow(1.0 - percent_a_month / 100.0, months);
}

LossJudgement judge_loss(AirHolder holder, const GaugeReading& first, const GaugeReading& second,
                         Duration apart, GaugePressure error) {
  const GaugePressure lost = first.pressure - carried_over(second, first.conditions);
  const PressureBand natural =
      natural_loss(holder, std::max(first.conditions.inside, second.conditions.inside), apart);
  const LossKind kind = !(apart > seconds(0.0))       ? LossKind::doubtful
                        : lost > natural.high + error ? LossKind::leak
                        : lost <= natural.high        ? LossKind::natural
                                                      : LossKind::doubtful;
  return {kind, lost, natural};
}

const Source& natural_loss_source() { return tubeless; }
const Source& tube_loss_source() { return tube; }

}  // namespace treadwater::air
