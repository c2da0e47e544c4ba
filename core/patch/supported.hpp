// Is it enough? What a tyre carries at a pressure and a speed, and what pressure a load needs: the
// one answer for every sheet that judges a tyre.
//
// By the law of load against pressure of its family (load_capacity.hpp; where two could hold, the
// one that asks for more), what is left of the rating at that speed, and the pressure added for it
// (standard/speed_load.hpp). A duty with camber or a trailer is asked of pressure_demand.hpp.
// Range: cold pressures from 0 up, speeds up to the symbol's; without a symbol the rating counts
// whole.
#pragma once

#include <optional>
#include <vector>

#include "core/patch/rating.hpp"

namespace treadwater::patch {

class Support {
 public:
  // Nothing where the text does not say what pressure its load rating belongs to.
  static std::optional<Support> of(const sidewall::Reading& tyre, Mass greatest,
                                   std::optional<Mass> load);

  Mass greatest() const { return greatest_; }
  GaugePressure reference() const { return law_.reference; }
  bool two_laws() const { return stricter_.has_value(); }
  std::optional<standard::SpeedSymbol> symbol() const { return symbol_; }

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
  double percent_at(Speed speed) const;
  GaugePressure base(Mass load, double percent) const;

  Mass greatest_;
  LoadLaw law_;
  std::optional<LoadLaw> stricter_;
  LeastPressure least_;
  std::optional<standard::SpeedSymbol> symbol_;
  standard::Vehicle vehicle_ = standard::Vehicle::car;
};

}  // namespace treadwater::patch
