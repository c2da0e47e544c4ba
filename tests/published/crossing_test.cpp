// Fords and floods. The standing of each source is in core/water/crossing.cpp.
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

// University of New South Wales against Australian Rainfall and Runoff: 0.15 against 0.3 m2/s.
TEST_CASE("a small car is moved by 15 cm at 1 m/s, the lower of two figures that disagree") {
  CHECK(judged(VehicleKind::small_car, 15, flow(1.0)) == Crossing::unstable);
  CHECK(judged(VehicleKind::small_car, 14, flow(1.0)) == Crossing::do_not_enter);
  CHECK(judged(VehicleKind::small_car, 8, flow(2.0)) == Crossing::unstable);
  CHECK(judged(VehicleKind::four_by_four, 30, flow(1.0)) == Crossing::do_not_enter);
  CHECK(judged(VehicleKind::four_by_four, 45, flow(1.0)) == Crossing::unstable);
  CHECK(judged(VehicleKind::large_car, 30, flow(1.0)) == Crossing::afloat);
  CHECK(judged(VehicleKind::four_by_four, 60, still) == Crossing::afloat);
}

TEST_CASE("10 cm of standing water is the most to enter, and no moving water is") {
  for (const VehicleKind kind : kinds) {
    CHECK(judged(kind, 0, still) == Crossing::dry);
    CHECK(judged(kind, 9.9, still) == Crossing::with_caution);
    CHECK(judged(kind, 10, still) == Crossing::do_not_enter);
    CHECK(judged(kind, 1, flow(0.1)) == Crossing::do_not_enter);
    CHECK(judged(kind, 1, {true, {}}) == Crossing::do_not_enter);
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

// ASTM STP28522S, abstract: up to 300 lb, printed as 135 kg, in puddles to 28.5 mm.
TEST_CASE("a puddle under one side pulled with up to 300 lb") {
  CHECK_THAT(in_newtons(greatest_puddle_drag) / exact::standard_gravity, WithinAbs(135.0, 1.5));
  CHECK_THAT(in_newtons(greatest_puddle_drag), WithinAbs(1334.5, 0.05));
}
