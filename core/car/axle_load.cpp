#include "core/car/axle_load.hpp"

namespace treadwater::car {
namespace {

constexpr Source source{"axle-load", "Axle loads by levers from kerb mass, people and luggage",
                        "75 kg a person and the places of seats and boot are our choice", "",
                        Standing::common_practice};

}  // namespace

std::optional<AxleLoads> axle_loads(const CarLoad& car) {
  const Mass none = kilograms(0.0);
  if (!(car.kerb > none) || !(car.front_share >= 0.0 && car.front_share <= 1.0) ||
      car.front_people < 0 || car.rear_people < 0)
    return std::nullopt;
  const int in_front = car.front_people - (car.driver_in_kerb && car.front_people > 0 ? 1 : 0);
  const struct {
    Mass mass;
    double place;  // 0 over the front axle, 1 over the rear one
  } parts[] = {{car.kerb, 1.0 - car.front_share},
               {car.person * in_front, 0.5},
               {car.person * car.rear_people, 0.9},
               {car.roof, 0.5},
               {car.boot, 1.15},
               {car.tow_ball, 1.35}};
  AxleLoads loads;
  for (const auto& part : parts) {
    if (!(part.mass >= none)) return std::nullopt;
    loads.rear = loads.rear + part.mass * part.place;
    loads.front = loads.front + part.mass * (1.0 - part.place);
  }
  return loads;
}

const Source& axle_load_source() { return source; }

}  // namespace treadwater::car
