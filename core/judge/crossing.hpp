// Water across the road: how deep rain makes it, whether it may be entered at all, and at what
// speed the tyres that must go through it start to aquaplane.
#pragma once

#include <optional>
#include <vector>

#include "core/judge/finding.hpp"
#include "core/quantity/write.hpp"
#include "core/standard/rain_words.hpp"
#include "core/standard/road_surface.hpp"
#include "core/standard/tyre_kind.hpp"
#include "core/water/crossing.hpp"
#include "core/water/estimate.hpp"
#include "core/water/from_rain.hpp"

namespace treadwater::judge {

struct WaterAcross {
  Length depth{};              // above the tops of the texture
  bool may_be_deeper = false;  // not measured, and beyond the formulas' range
  bool one_sided = false;      // under the wheels of one side only
  water::Flow flow{};
  water::VehicleKind vehicle = water::VehicleKind::small_car;
  const standard::RoadSurface* surface = nullptr;
};

// One kind of tyre that must go through.
struct TyreThrough {
  const standard::TyreKind* kind = nullptr;
  Length tread{};
  GaugePressure pressure{};
  std::optional<Length> width{};
  water::SpeedBand onset{};  // once judged

  bool is_slick() const { return kind->groove_credit == 0.0; }
  water::WetTyre in(const WaterAcross& water) const;
  Speed hold_to(UnitSystem units) const;
};

// Assumed for every tyre that was not described.
TyreThrough worn_road_tyre();

struct CrossingJudged {
  bool may_be_entered = false;
  // Worst first, with their onsets. None if it may not be entered, or if there is no water.
  std::vector<TyreThrough> field{};
  std::optional<double> chance{};  // of aquaplaning at the intended speed: the highest in the field

  bool has_slick() const;
};

void judge_rain_word(const standard::RainWord& word, Findings& findings);
void judge_rain(const water::DepthFromRain& rain, Findings& findings);
CrossingJudged judge_crossing(const WaterAcross& water, std::vector<TyreThrough> field,
                              std::optional<Speed> intended, UnitSystem units, Findings& findings);

Sources film_sources();
Sources crossing_sources();

}  // namespace treadwater::judge
