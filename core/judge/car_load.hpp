// What each wheel of a car carries: weighed wheel by wheel or axle by axle, or worked out from its
// masses; and whether these contradict each other.
#pragma once

#include <optional>

#include "core/car/axle_load.hpp"
#include "core/judge/car.hpp"

namespace treadwater::judge {

struct CarLoads {
  std::optional<Mass> front_axle{};
  std::optional<Mass> rear_axle{};
  std::optional<car::CarLoad> masses{};  // where the kerb mass is known
};

// A wheel's own load first, then its axle's half, then what the masses give; of loads that
// contradict each other the greater. The spare is taken to stand in for a rear wheel.
void settle_loads(CarLoads loads, Car& car, Findings& findings);

}  // namespace treadwater::judge
