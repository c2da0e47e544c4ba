// Axle loads from the kerb mass, its split, people and luggage: levers about the axles.
//
// Common practice, no source: a person of 75 kg (as car papers count the driver), and where things
// sit, as a share of the wheelbase behind the front axle: front seats 0.5, rear seats 0.9, roof
// 0.5, boot 1.15, tow ball 1.35. Somewhat further back than in most saloons, so that the rear
// tyres, usually the overloaded ones, do not look better than they are. A weighbridge comes first.
// Range: a split between 0 and 1, nothing negative; outside it nothing is returned. Left and right
// are taken as equal.
#pragma once

#include <optional>

#include "core/quantity/quantity.hpp"
#include "core/standard/source.hpp"

namespace treadwater::car {

struct CarLoad {
  Mass kerb;
  double front_share = 0.0;     // of the kerb mass, 0 to 1
  bool driver_in_kerb = false;  // whether the kerb mass counts a driver
  int front_people = 1;
  int rear_people = 0;
  Mass person = kilograms(75.0);
  Mass boot;
  Mass roof;
  Mass tow_ball;
};

struct AxleLoads {
  Mass front;
  Mass rear;
  Mass total() const { return front + rear; }
};

std::optional<AxleLoads> axle_loads(const CarLoad& car);
const Source& axle_load_source();

}  // namespace treadwater::car
