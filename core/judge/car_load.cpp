#include "core/judge/car_load.hpp"

#include <algorithm>

namespace treadwater::judge {
namespace {

// The wheels' sum may be as low as this share of their axle's weighed load.
constexpr double weighed_alike = 0.95;

// Axles against the car's masses.
void settle_axles(CarLoads& loads, Findings& findings) {
  const auto worked_out = loads.masses ? car::axle_loads(*loads.masses) : std::nullopt;
  if (!worked_out) return;
  auto &front = loads.front_axle, &rear = loads.rear_axle;
  if (!front || !rear) {
    front = front.value_or(worked_out->front);
    rear = rear.value_or(worked_out->rear);
    findings.add(finding::axle_loads_worked_out, {*front, *rear}, {&car::axle_load_source()});
  } else if (*front + *rear < loads.masses->kerb) {
    findings.add(finding::axles_contradict_kerb, {*front + *rear, loads.masses->kerb});
    front = std::max(*front, worked_out->front);
    rear = std::max(*rear, worked_out->rear);
  }
}

// Wheels against their axle.
void settle_wheels(std::optional<Mass>& left, std::optional<Mass>& right,
                   const std::optional<Mass>& axle, Findings& findings) {
  if (!left || !right || !axle || !(*left + *right < *axle * weighed_alike)) return;
  findings.add(finding::wheels_contradict_axle, {*left + *right, *axle});
  left = std::max(*left, *axle / 2.0);
  right = std::max(*right, *axle / 2.0);
}

}  // namespace

void settle_loads(CarLoads loads, Car& car, Findings& findings) {
  settle_axles(loads, findings);
  const auto load_of = [&](std::size_t wheel) -> std::optional<Mass>& {
    return car.corners[wheel].load;
  };
  settle_wheels(load_of(0), load_of(1), loads.front_axle, findings);
  settle_wheels(load_of(2), load_of(3), loads.rear_axle, findings);
  for (std::size_t wheel = 0; wheel < all_wheels; ++wheel) {
    const auto& axle = wheel < 2 ? loads.front_axle : loads.rear_axle;
    if (car.corners[wheel].given && !load_of(wheel) && axle) load_of(wheel) = *axle / 2.0;
  }
}

}  // namespace treadwater::judge
