// A whole car: each tyre judged by itself, and all of them together. Axles, left and right, wear
// across a tread, the spare, the beaded edge, the car's top speed. The load on each wheel is in
// car_load.
#pragma once

#include <array>
#include <optional>

#include "core/judge/tyre.hpp"
#include "core/patch/beaded_edge.hpp"

namespace treadwater::judge {

// The wheels of a car: the four on the road, left before right, then the spare.
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
  bool given = false;  // was anything entered for it?
  bool whole = false;  // and could all of it be read?
  std::optional<Mass> load{};
  TyreCase tyre{};  // as judged; its tread is the lowest of the three
  std::optional<Length> inner{};
  std::optional<Length> centre{};
  std::optional<Length> outer{};
  // Findings on the tyre alone; nothing if too little is known of it.
  std::optional<TyreJudged> judged{};

  bool has_tyre() const { return given && tyre.size; }
  bool may_be_judged() const { return has_tyre() && tyre.gauge && tyre.tread && load; }
};

struct Car {
  std::array<Corner, all_wheels> corners{};
  std::optional<Speed> top_speed{};

  const Corner& spare() const { return corners[spare_wheel]; }
  // The verdict on one tyre alone, if there is one: as a tyre to drive on, and as it counts for the
  // car, which is not on its spare.
  std::optional<Level> own_level(std::size_t wheel) const;
  std::optional<Level> level(std::size_t wheel) const;
};

// Across each tread.
void judge_wear(const Car& car, Findings& findings);
// Each tyre by itself: a finding on several of them is given once, with the wheels named, and of
// the same limit on several road wheels the lowest counts.
void judge_corners(Car& car, UnitSystem units, Findings& findings);
// All of them together.
void judge_together(const Car& car, Findings& findings);
// No speed is known of a car if none is known of one of its tyres.
void conclude(const Car& car, Findings& findings);

// For a beaded edge, held on its rim by pressure alone, the pressures in the schedules, by the
// section and twice the wheel's load.
std::optional<patch::PressureBand> beaded_edge_band(const Corner& corner);
const Sources& beaded_edge_sources();

}  // namespace treadwater::judge
