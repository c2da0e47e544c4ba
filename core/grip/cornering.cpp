// Symbols: R radius, mu or f side friction, e bank.
#include "core/grip/cornering.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace treadwater::grip {
namespace {

constexpr double metric_factor = 127.0;  // g x 3.6^2, as road books round it
constexpr double us_factor = 15.0;

struct ComfortRow {
  double mph;
  double friction;
};
constexpr ComfortRow comfort[] = {{20, 0.27}, {30, 0.20}, {40, 0.16}, {50, 0.14},
                                  {55, 0.13}, {60, 0.12}, {65, 0.11}, {70, 0.10}};

std::optional<Speed> root(double square, double to_kmh) {
  if (square <= 0.0) return Speed();
  if (!(square < std::numeric_limits<double>::infinity())) return std::nullopt;
  return kilometres_per_hour(to_kmh * std::sqrt(square));
}

}  // namespace

std::optional<Length> radius_from_chord(Length chord, Length sagitta) {
  const double c = in_metres(chord);
  const double s = in_metres(sagitta);
  if (!(c > 0.0) || !(s > 0.0)) return std::nullopt;
  return metres(c * c / (8.0 * s) + s / 2.0);
}

std::optional<Speed> corner_speed(Length radius, double side_friction, double bank) {
  const double room = 1.0 - side_friction * bank;
  if (!(room > 0.0)) return std::nullopt;
  return root(exact::standard_gravity * in_metres(radius) * (side_friction + bank) / room, 3.6);
}

std::optional<Speed> corner_speed_simple(Length radius, double side_friction, double bank) {
  return root(metric_factor * in_metres(radius) * (side_friction + bank), 1.0);
}

Length design_radius_us(Speed speed, double side_friction, double bank) {
  const double mph = in_miles_per_hour(speed);
  return feet(mph * mph / (us_factor * (bank + side_friction)));
}

Length design_radius_metric(Speed speed, double side_friction, double bank) {
  const double kmh = in_kilometres_per_hour(speed);
  return metres(kmh * kmh / (metric_factor * (bank + side_friction)));
}

double comfortable_side_friction(Speed speed) {
  const double mph = in_miles_per_hour(speed);
  if (mph <= comfort[0].mph) return comfort[0].friction;
  for (int i = 1; i < 8; ++i) {
    const ComfortRow &a = comfort[i - 1], &b = comfort[i];
    if (mph <= b.mph)
      return a.friction + (b.friction - a.friction) * (mph - a.mph) / (b.mph - a.mph);
  }
  return comfort[7].friction;
}

Speed comfortable_corner_speed(Length radius, double bank) {
  // The bend asks for more as the speed rises and comfort allows less: halve the range.
  double low = 0.0, high = 400.0;
  for (int i = 0; i < 40; ++i) {
    const double middle = (low + high) / 2.0;
    const Speed speed = kilometres_per_hour(middle);
    (side_demand(speed, radius, bank) <= comfortable_side_friction(speed) ? low : high) = middle;
  }
  return kilometres_per_hour(low);
}

double side_demand(Speed speed, Length radius, double bank) {
  const double r = in_metres(radius);
  if (!(r > 0.0)) return std::numeric_limits<double>::infinity();
  const double v = in_metres_per_second(speed);
  const double pull = v * v / (exact::standard_gravity * r);
  const double pressed = 1.0 + pull * bank;
  if (!(pressed > 0.0)) return std::numeric_limits<double>::infinity();  // thrown off its wheels
  return (pull - bank) / pressed;
}

double braking_left(double brake_friction, double side_friction, double demand) {
  const double used = demand / side_friction;
  if (!(std::abs(used) < 1.0)) return 0.0;
  return brake_friction * std::sqrt(1.0 - used * used);
}

}  // namespace treadwater::grip
