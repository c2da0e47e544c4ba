// Water across the road: how deep rain makes it, whether it may be entered at all, and at what
// speed the tyres that must go through it start to aquaplane.
#pragma once

#include <optional>
#include <vector>

#include "core/judge/water.hpp"
#include "core/standard/rain_words.hpp"
#include "core/standard/road_surface.hpp"
#include "core/standard/tyre_kind.hpp"
#include "core/water/crossing.hpp"
#include "core/water/from_rain.hpp"

namespace treadwater::judge {

struct WaterAcross {
  RoadWater given{};
  bool one_sided = false;  // under the wheels of one side only
  water::Flow flow{};
  water::VehicleKind vehicle = water::VehicleKind::small_car;
  const standard::RoadSurface* surface = nullptr;

  // The deepest, above the tops of the texture; 0 if no water stands there.
  Length depth() const;
  bool stands() const { return depth() > Length(); }
};

// One kind of tyre that must go through.
struct TyreThrough {
  const standard::TyreKind* kind = nullptr;
  Length tread{};
  GaugePressure pressure{};
  std::optional<Length> width{};
  std::optional<Onset> onset{};  // once judged, and if water stands there

  bool is_slick() const { return kind->groove_credit == 0.0; }
  bool is_bare() const { return onset && onset->is_bare(); }
  water::WetTyre on(const standard::RoadSurface& surface) const;
  // Nothing if water sets no limit below the road's own.
  std::optional<Speed> hold_to(UnitSystem units) const;
};

// Assumed for every tyre that was not described.
TyreThrough worn_road_tyre();

struct CrossingJudged {
  bool may_be_entered = false;
  // Worst first, with their onsets. None if it may not be entered, or if the road is dry.
  std::vector<TyreThrough> field{};
  std::optional<double> chance{};  // of aquaplaning at the intended speed: the highest in the field

  bool has_bare() const;  // is one of them as good as a slick in this water?
};

void judge_rain_word(const standard::RainWord& word, Findings& findings);
void judge_rain(const water::DepthFromRain& rain, Findings& findings);
CrossingJudged judge_crossing(const WaterAcross& water, std::vector<TyreThrough> field,
                              std::optional<Speed> intended, UnitSystem units, Findings& findings);

Sources film_sources();
Sources crossing_sources();

}  // namespace treadwater::judge
