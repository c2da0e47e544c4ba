// One tyre on one wheel: what its sidewall says and leaves out, its speed symbol, its use; and
// everything together, as every sheet judges a tyre.
#pragma once

#include <optional>

#include "core/judge/hold_to.hpp"
#include "core/judge/pressure.hpp"
#include "core/sidewall/sidewall.hpp"
#include "core/standard/date.hpp"
#include "core/standard/road_surface.hpp"
#include "core/standard/tread_law.hpp"
#include "core/standard/tyre_age.hpp"
#include "core/standard/tyre_kind.hpp"
#include "core/water/estimate.hpp"

namespace treadwater::judge {

// What is known of it. What is not known is not judged; if it matters, its absence is a finding.
struct TyreCase {
  std::optional<sidewall::Reading> size{};
  std::optional<Mass> load{};            // on the wheel
  std::optional<GaugePressure> gauge{};  // as read
  std::optional<bool> hot = false;       // when it was read; nothing if not known
  std::optional<Length> tread{};
  std::optional<Length> water{};
  bool water_asked = true;  // a depth could have been given, and was not
  std::optional<Speed> intended{};
  const standard::TyreKind* kind = nullptr;
  const standard::RoadSurface* surface = nullptr;
  const standard::TreadLaw* law = nullptr;
  std::optional<standard::TyreAge> age{};
  standard::Date today{};
  // For one of many tyres in the same water: its low and central onsets, with less work. The high
  // ends are then the central ones.
  const water::OnsetsInWater* in_water = nullptr;

  // What the pressure may be when cold.
  std::optional<GaugePressure> cold() const;
};

struct TyreJudged {
  Findings findings;
  Carrying carrying;
  std::optional<water::SpeedBand> onset;  // of aquaplaning
  std::optional<HoldTo> hold;             // after conclude()
};

TyreJudged judge_tyre(const TyreCase& tyre);
// The maximum speed, and whether the intended one is above it. Only for a tyre that could be read
// whole.
void conclude(TyreJudged& judged, const TyreCase& tyre, UnitSystem units);

void judge_sidewall(const TyreCase& tyre, Findings& findings);
void judge_speed_symbol(const TyreCase& tyre, Findings& findings);
// Is the intended speed above the symbol's?
void judge_symbol(standard::SpeedSymbol symbol, Speed intended, Findings& findings);
// For marks such as NHS.
bool marked_not_for_road(const sidewall::Reading& tyre);

}  // namespace treadwater::judge
