// Is it enough? What a tyre carries at a pressure and a speed, and what pressure a load needs: the
// one answer for every sheet that judges a tyre.
//
// By the law of load against pressure of its family (load_capacity.hpp; where two could hold, the
// one that asks for more), what is left of the rating at that speed, and the pressure added for it
// (rated_tyre.hpp). A duty with camber or a trailer is asked of pressure_demand.hpp.
// Range: cold pressures from 0 up, speeds up to the symbol's; without a symbol the rating counts
// whole.
#pragma once

#include <optional>
#include <vector>

#include "core/patch/rated_tyre.hpp"
#include "core/patch/rating.hpp"

namespace treadwater::patch {

class Support {
 public:
  // Nothing where the text does not say what pressure its load rating belongs to.
  static std::optional<Support> of(const sidewall::Reading& tyre, Mass greatest,
                                   std::optional<Mass> load);

  const RatedTyre& tyre() const { return tyre_; }
  Mass greatest() const { return tyre_.greatest; }
  GaugePressure reference() const { return tyre_.law.reference; }
  bool two_laws() const { return tyre_.second_law.has_value(); }
  std::optional<standard::SpeedSymbol> symbol() const { return tyre_.symbol; }

  // At low speed: by the first law, and by the stricter where there are two.
  Mass capacity(GaugePressure pressure) const;
  Mass least_capacity(GaugePressure pressure) const;

  // What it may carry at a speed, at any pressure.
  Mass carried_at(Speed speed) const;
  // The cold pressure that a load needs, at low speed and at a speed up to the symbol's.
  GaugePressure needed(Mass load) const;
  GaugePressure needed_at(Mass load, Speed speed) const;
  // The greatest whole km/h, up to `most`, at which this pressure supports the load; 0 where none
  // does.
  Speed speed_supported(Mass load, GaugePressure pressure, Speed most) const;

  // What the figures above rest on.
  std::vector<const Source*> sources() const;

 private:
  Support(const RatedTyre& tyre, const Source* least_from) : tyre_(tyre), least_from_(least_from) {}

  RatedTyre tyre_;
  const Source* least_from_;
};

}  // namespace treadwater::patch
