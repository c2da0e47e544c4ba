// Pressure: is the load carried at this pressure and speed, and is the pressure itself a sane one?
#pragma once

#include <optional>

#include "core/judge/finding.hpp"
#include "core/patch/rating.hpp"
#include "core/patch/supported.hpp"

namespace treadwater::judge {

struct TyreCase;

// A tyre read warm or hot may have so much less when it is cold (advice: 20 to 40 kPa).
inline constexpr GaugePressure hot_excess = kilopascals(40.0);
// L, the lowest symbol on tyres of cars and vans but for spares. Common practice, no source.
inline constexpr Speed speed_without_symbol = kilometres_per_hour(120.0);

// Over the pressure its load rating belongs to, or over what is to be set, before it wants a word.
inline constexpr GaugePressure noticeably_more = kilopascals(30.0);

// What was found on the way, for whoever tells figures.
struct Carrying {
  std::optional<patch::GreatestLoad> greatest;
  std::optional<patch::Support> support;
  std::optional<GaugePressure> needed;  // cold, at the speed intended
  bool more_for_speed = false;          // than at low speed
};

// The tyre's load rating: what its index says, or is worked out for want of one.
std::optional<patch::GreatestLoad> judge_rating(const sidewall::Reading& tyre, Findings& findings);
// Of a load index that had to be worked out from the size.
void judge_worked_out(const patch::GreatestLoad& load, Findings& findings);

Carrying judge_load(const TyreCase& tyre, Findings& findings);
void judge_hot_reading(const TyreCase& tyre, Findings& findings);

// Above the tyre's rating, which no pressure makes up for.
Found overload(Mass load, Mass greatest);
// Where the load is within the tyre's rating, and above what is left of it at that speed.
Found overload_at_speed(Speed speed, Mass load, Mass carried, standard::Vehicle vehicle);
Sources sources_of_load_at_speed(standard::Vehicle vehicle);
// Of a beaded edge too narrow for the tables of cars, which was judged as a car's.
void judge_narrow_beaded_edge(const sidewall::Reading& tyre, Findings& findings);

}  // namespace treadwater::judge
