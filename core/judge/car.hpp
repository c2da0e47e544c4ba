// A whole car: each of its tyres as any tyre is judged, and what holds between them. Axles, left
// and right, wear across a tread, the spare, the beaded edge, the car's top speed. What its wheels
// carry is settled in car_load.
#pragma once

#include <array>
#include <optional>

#include "core/judge/tyre.hpp"
#include "core/patch/beaded_edge.hpp"

namespace treadwater::judge {

// The wheels of a car: the four it stands on, left before right, and then the spare.
inline constexpr std::size_t wheels_on_the_road = 4;
inline constexpr std::size_t spare_wheel = 4;
inline constexpr std::size_t all_wheels = 5;
Phrase wheel_name(std::size_t wheel);

struct Axle {
  std::size_t left;
  std::size_t right;
  Phrase name;  // "front"
};
inline constexpr Axle axles[] = {{0, 1, Phrase("front")}, {2, 3, Phrase("rear")}};

struct Corner {
  bool given = false;  // is anything said of it?
  bool whole = false;  // and could all that was said be read?
  std::optional<Mass> load{};
  TyreCase tyre{};  // as it is judged; its tread is the least of the three
  std::optional<Length> inner{};
  std::optional<Length> centre{};
  std::optional<Length> outer{};
  // What was found of the tyre alone; nothing where too little is known of it.
  std::optional<TyreJudged> judged{};

  bool has_tyre() const { return given && tyre.size; }
  bool may_be_judged() const { return has_tyre() && tyre.gauge && tyre.tread && load; }
  // The verdict on this tyre alone, where there is one.
  std::optional<Level> level() const;
};

struct Car {
  std::array<Corner, all_wheels> corners{};
  std::optional<Speed> top_speed{};

  const Corner& spare() const { return corners[spare_wheel]; }
};

// Across each tread.
void judge_wear(const Car& car, Findings& findings);
// Each tyre by itself: what was found of any of them is told once, with the wheels named, and of
// those on the road the lowest of alike limits counts.
void judge_corners(Car& car, UnitSystem units, Findings& findings);
// What holds between them.
void judge_together(const Car& car, Findings& findings);
// The speed to hold to: none is told of a car of which one tyre has none.
std::optional<HoldTo> hold_car_to(const Car& car, UnitSystem units, Findings& findings);

// The pressures that schedules ask for where the tyre has a beaded edge: held on its rim by
// pressure alone, by the section and twice the wheel's load.
std::optional<patch::PressureBand> beaded_edge_band(const Corner& corner);
const Sources& beaded_edge_sources();

}  // namespace treadwater::judge
