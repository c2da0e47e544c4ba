// Water: how wet is the road, does this tyre aquaplane on it, and may it be entered at all?
//
// One judgement for every sheet: the same tyre in the same water at the same speed gets the same
// findings, limits and maximum speed wherever it is asked.
#pragma once

#include <memory>
#include <optional>

#include "core/judge/finding.hpp"
#include "core/quantity/write.hpp"
#include "core/standard/road_surface.hpp"
#include "core/water/estimate.hpp"

namespace treadwater::judge {

// The deepest of any published test, printed as 9.5 mm and 3/8 in; beyond it the estimate is
// extrapolated.
inline constexpr Length deepest_measured = inches(0.375);
// Assumed for a tyre not measured: at the depth of most laws, and soft.
inline constexpr Length worn_tread = millimetres(1.6);
inline constexpr GaugePressure soft_pressure = kilopascals(200.0);

// How wet the road is: a word, a depth, or both. The wetter of them counts.
struct RoadWater {
  std::optional<standard::Wetness> word{};
  std::optional<water::Water> depth{};  // by ruler, or calculated from rain
  bool may_be_deeper = false;           // calculated, and beyond the formulas' range

  bool is_known() const { return word || depth; }
  // Damp too. A ruler that finds nothing says damp, not dry.
  bool is_wet() const;
  // Above the stones, by the deeper of the two and without a ruler's error; a damp road's 0.1 mm.
  Length film() const;
  bool is_too_deep() const;  // to be driven into
};

// Where a tyre starts to aquaplane. Of word and depth each end is that of the wetter.
struct Onset {
  water::WetTyre tyre{};    // in the one in which the low end is lower
  water::SpeedBand band{};  // each may be water::no_floating
  bool by_word = false;
  std::optional<water::Water> other{};  // the one that is not the tyre's, if both have a film

  // The maximum speed before it is rounded; nothing if water sets no limit.
  std::optional<Speed> held() const { return water::held(band); }
  bool is_bare() const;  // as good as a slick in this water? See water::counts_as_slick
};
std::optional<Onset> onset_on(const RoadWater& water, water::WetTyre tyre);

// The same for many tyres in one water on one road, with less work for each. The high ends are then
// the central values. An interface, so that a module which never has many tyres need not hold it.
class OnsetsOnRoad {
 public:
  virtual ~OnsetsOnRoad() = default;
  virtual std::optional<Onset> of(const water::WetTyre& tyre) const = 0;
};
std::unique_ptr<OnsetsOnRoad> onsets_on(const RoadWater& water, Length texture);

// One tyre, or the first to aquaplane of several, on a wet road.
struct WetCase {
  RoadWater water{};
  const standard::RoadSurface* surface = nullptr;
  std::optional<water::WetTyre> tyre{};  // if enough is known of it
  std::optional<Onset> onset{};
  bool slick = false;     // is any of them one, by its kind
  bool bare = false;      // or as good as one in this water?
  bool is_worst = false;  // of several: its limit names it
  Values named{};         // by this
  std::optional<Speed> intended{};
};
void judge_wet_road(const WetCase& wet, Findings& findings);

// Is that speed too likely to aquaplane?
double chance_of_floating(const Onset& onset, Speed speed);
void judge_speed_in_water(const Onset& onset, Speed intended, UnitSystem units, Findings& findings);
// Of several tyres, if the chance is known already.
void judge_speed_in_water(Speed intended, bool above_central, double chance, Findings& findings);

// The sources behind every estimate of the onset: models and measured rows.
const Sources& onset_sources();

}  // namespace treadwater::judge
