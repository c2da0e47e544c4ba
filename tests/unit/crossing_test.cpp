// Fords and floods: what holds whatever the vehicle and the water. The printed figures are in
// tests/register.
#include "core/water/crossing.hpp"

#include <cmath>

#include "tests/support/catch.hpp"

using namespace treadwater;
using namespace treadwater::water;
using namespace treadwater::testing;

namespace {

constexpr VehicleKind kinds[] = {VehicleKind::small_car, VehicleKind::large_car,
                                 VehicleKind::four_by_four};
constexpr Flow still{};

Flow flow(double metres_a_second) { return {true, kilometres_per_hour(3.6 * metres_a_second)}; }

Crossing judged(VehicleKind kind, double cm, const Flow& f) {
  return judge_crossing(kind, metres(cm / 100.0), f);
}

}  // namespace

TEST_CASE("no limit is above a published figure for that vehicle") {
  for (const CrossingFigure& figure : crossing_figures())
    for (const VehicleKind kind : kinds) {
      INFO(figure.text << " " << in_metres(figure.depth));
      const bool of_most = figure.depth >= metres(0.6);  // "most vehicles", not "many cars"
      if (figure.vehicle ? *figure.vehicle != kind : kind == VehicleKind::four_by_four && !of_most)
        continue;
      const CrossingLimits limits =
          crossing_limits(kind, figure.flow ? Flow{true, figure.flow} : still);
      CHECK((figure.floats ? limits.afloat_at : limits.stable_to) <= figure.depth);
    }
}

TEST_CASE("moving water of unknown speed counts as 1 m/s, and what is not a number as the worst") {
  for (const VehicleKind kind : kinds) {
    CHECK(crossing_limits(kind, {true, {}}).stable_to ==
          crossing_limits(kind, flow(1.0)).stable_to);
    CHECK(crossing_limits(kind, flow(std::nan(""))).stable_to == metres(0.0));
    CHECK(judge_crossing(kind, metres(std::nan("")), still) == Crossing::afloat);
  }
}

TEST_CASE("deeper or faster water is never judged milder") {
  for (const VehicleKind kind : kinds)
    for (double cm = 0.0; cm <= 120.0; cm += 1.0)
      for (double speed = 0.0; speed <= 4.0; speed += 0.25) {
        const auto here = judged(kind, cm, flow(speed));
        CHECK(judged(kind, cm + 1.0, flow(speed)) >= here);
        CHECK(judged(kind, cm, flow(speed + 0.25)) >= here);
        CHECK(judged(kind, cm, still) <= here);
      }
}
