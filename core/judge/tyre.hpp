// One tyre on one wheel: what its sidewall says and leaves out, its speed symbol, its use; and
// everything together, as every sheet judges a tyre.
#pragma once

#include <optional>

#include "core/judge/hold_to.hpp"
#include "core/judge/pressure.hpp"
#include "core/judge/water.hpp"
#include "core/sidewall/sidewall.hpp"
#include "core/standard/date.hpp"
#include "core/standard/road_surface.hpp"
#include "core/standard/tread_law.hpp"
#include "core/standard/tyre_age.hpp"
#include "core/standard/tyre_kind.hpp"

namespace treadwater::judge {

// What is known of it. What is not known is not judged; if it matters, its absence is a finding.
struct TyreCase {
  std::optional<sidewall::Reading> size{};
  std::optional<Mass> load{};            // on the wheel
  std::optional<GaugePressure> gauge{};  // as read
  std::optional<bool> hot = false;       // when it was read; nothing if not known
  std::optional<Length> tread{};         // the least of it
  std::optional<Length> middle_tread{};  // if it was measured across
  std::optional<RoadWater> water{};      // if it is to be judged in water
  std::optional<Speed> intended{};
  const standard::TyreKind* kind = nullptr;
  const standard::RoadSurface* surface = nullptr;
  const standard::TreadLaw* law = nullptr;
  std::optional<standard::TyreAge> age{};
  standard::Date today{};
  const OnsetsOnRoad* onsets = nullptr;  // if it is one of many

  // What the pressure may be when cold.
  std::optional<GaugePressure> cold() const;
  // For water, if enough is known.
  std::optional<water::WetTyre> in_water() const;
  bool is_slick() const { return kind != nullptr && kind->groove_credit == 0.0; }
};

struct TyreJudged {
  Findings findings;
  Carrying carrying;
  std::optional<Onset> onset{};  // of aquaplaning
  // After conclude().
  std::optional<HoldTo> hold{};
  std::optional<NoLimit> no_limit{};

  // The longest stop on a wet road, reaction included, from a speed that may be driven.
  struct Stop {
    Speed from;
    Length longest;
  };
  std::optional<Stop> wet_stop{};

  bool speed_known() const { return hold || no_limit; }
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
