// Stopping and cornering: inverses and what has no answer. The printed figures are in
// tests/register.
#include "core/grip/cornering.hpp"
#include "core/grip/stopping.hpp"
#include "tests/support/catch.hpp"

using namespace treadwater;
using namespace treadwater::grip;
using namespace treadwater::testing;

namespace {

constexpr Speed kmh(double v) { return kilometres_per_hour(v); }
constexpr Speed mph(double v) { return miles_per_hour(v); }

}  // namespace

TEST_CASE("the speed for a seen distance is the inverse of the stopping distance") {
  for (double v : {5.0, 50.0, 130.0})
    for (double mu : {0.05, 0.4, 1.0})
      for (double grade : {-0.04, 0.0, 0.2}) {
        const Length d = *stopping_distance(kmh(v), seconds(1.5), mu, grade);
        CHECK_THAT(in_kilometres_per_hour(*speed_to_stop_within(d, seconds(1.5), mu, grade)),
                   WithinAbs(v, 1e-9));
      }
}

TEST_CASE("a grade steeper than the grip: will not stop, as a value") {
  CHECK_FALSE(braking_distance(kmh(20), 0.05, -0.05));
  CHECK_FALSE(braking_distance(kmh(20), 0.05, -0.06));
  CHECK(braking_distance(kmh(20), 0.05, -0.04));
  CHECK_FALSE(stopping_distance(kmh(20), seconds(1), 0.0, 0.0));
  CHECK_FALSE(speed_to_stop_within(metres(1000), seconds(1), 0.1, -0.2));
}

TEST_CASE("the comfortable speed asks for just the comfortable friction") {
  const Length radius = design_radius_us(mph(70), 0.10, 0.08);
  const Speed v = comfortable_corner_speed(radius, 0.08);
  CHECK_THAT(side_demand(v, radius, 0.08), WithinAbs(comfortable_side_friction(v), 1e-6));
}
