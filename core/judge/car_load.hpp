// The load on each wheel of a car: weighed by wheel or axle, or calculated from the masses; and
// whether these contradict each other.
#pragma once

#include <optional>

#include "core/car/axle_load.hpp"
#include "core/judge/car.hpp"

namespace treadwater::judge {

struct CarLoads {
  std::optional<Mass> front_axle{};
  std::optional<Mass> rear_axle{};
  std::optional<car::CarLoad> masses{};  // if the kerb mass is known
};

// A wheel's own load first, then its axle's half, then what the masses give; if loads contradict
// each other, the greater. The spare counts as a rear wheel.
void settle_loads(CarLoads loads, Car& car, Findings& findings);

}  // namespace treadwater::judge
