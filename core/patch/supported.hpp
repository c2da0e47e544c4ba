// Is it enough? What a tyre carries at a pressure and speed, and what pressure a load needs: the
// same for every sheet that judges a tyre.
//
// By its family's formula of load and pressure (load_capacity.hpp; if two could apply, the one that
// needs more), what is left of the rating at that speed, and the pressure added for speed
// (rated_tyre.hpp). For camber or a trailer use pressure_demand.hpp.
// Range: cold pressures from 0 up, speeds up to the symbol's; without a symbol the whole rating
// counts.
#pragma once

#include <optional>
#include <vector>

#include "core/patch/rated_tyre.hpp"
#include "core/patch/rating.hpp"

namespace treadwater::patch {

class Support {
 public:
  // Nothing if the text does not give the pressure of its load rating.
  static std::optional<Support> of(const sidewall::Reading& tyre, Mass greatest,
                                   std::optional<Mass> load);

  // The same with another least pressure.
  Support with_least(const LeastPressure& least) const;

  const RatedTyre& tyre() const { return tyre_; }
  Mass greatest() const { return tyre_.greatest; }
  GaugePressure reference() const { return tyre_.law.reference; }
  bool two_laws() const { return tyre_.second_law.has_value(); }
  std::optional<standard::SpeedSymbol> symbol() const { return tyre_.symbol; }

  // At low speed: by the first formula, and by the stricter if there are two.
  Mass capacity(GaugePressure pressure) const;
  Mass least_capacity(GaugePressure pressure) const;

  // What it may carry at a speed, at any pressure.
  Mass carried_at(Speed speed) const;
  // The cold pressure that a load needs, at low speed and at a speed up to the symbol's.
  GaugePressure needed(Mass load) const;
  GaugePressure needed_at(Mass load, Speed speed) const;
  // The highest whole km/h, up to `most`, at which this pressure supports the load; 0 if none does.
  Speed speed_supported(Mass load, GaugePressure pressure, Speed most) const;

  // The sources of the figures above.
  std::vector<const Source*> sources() const;

 private:
  Support(const RatedTyre& tyre, const Source* least_from) : tyre_(tyre), least_from_(least_from) {}

  RatedTyre tyre_;
  const Source* least_from_;
};

}  // namespace treadwater::patch
