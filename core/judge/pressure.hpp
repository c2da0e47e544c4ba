// Pressure: is the load carried at this pressure and speed, and is the pressure itself sensible?
#pragma once

#include <optional>

#include "core/judge/finding.hpp"
#include "core/patch/rating.hpp"
#include "core/patch/supported.hpp"

namespace treadwater::judge {

struct TyreCase;

// A tyre read warm or hot may have this much less when cold (advice: 20 to 40 kPa).
inline constexpr GaugePressure hot_excess = kilopascals(40.0);
// L, the lowest symbol on car and van tyres except spares. Common practice, no source.
inline constexpr Speed speed_without_symbol = kilometres_per_hour(120.0);

// Allowed above the pressure of its load rating, or above what is to be set, without a remark.
inline constexpr GaugePressure noticeably_more = kilopascals(30.0);

// What a gauge that may be out must show for that need: no more than is moulded on the tyre, which
// may leave no room for its error.
GaugePressure by_a_gauge(const std::optional<GaugePressure>& marked, GaugePressure need);
// Is there room for it?
void judge_room_under_marking(const std::optional<GaugePressure>& marked, GaugePressure need,
                              Findings& findings);
// Too much for a tyre of its kind, or for what is moulded on it? `highest` is the highest that it
// has or is to have, cold; `least` what its load needs.
void judge_highest(const sidewall::Reading& tyre, GaugePressure highest,
                   std::optional<GaugePressure> least, Findings& findings);

// Results on the way, for the figures.
struct Carrying {
  std::optional<patch::GreatestLoad> greatest;
  std::optional<patch::Support> support;
  std::optional<GaugePressure> needed;  // cold, at the speed intended
  bool more_for_speed = false;          // than at low speed
};

// The tyre's load rating: by its index, or calculated if it has none.
std::optional<patch::GreatestLoad> judge_rating(const sidewall::Reading& tyre,
                                                std::optional<Mass> load, Findings& findings);
// For a load index calculated from the size, or above what may be moulded on the tyre.
void judge_how_rated(const patch::GreatestLoad& load, Findings& findings);

Carrying judge_load(const TyreCase& tyre, Findings& findings);
void judge_hot_reading(const TyreCase& tyre, Findings& findings);

// Above the tyre's rating: no pressure makes up for that.
Found overload(Mass load, Mass greatest);
// The load is within the tyre's rating, but above what is left of it at that speed.
Found overload_at_speed(Speed speed, Mass load, Mass carried, standard::Vehicle vehicle);
Sources sources_of_load_at_speed(standard::Vehicle vehicle);
// For a beaded edge too narrow for the car tables, judged as a car's.
void judge_narrow_beaded_edge(const sidewall::Reading& tyre, Findings& findings);

}  // namespace treadwater::judge
