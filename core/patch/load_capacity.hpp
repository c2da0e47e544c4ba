// Load and pressure: what a tyre carries at a pressure, and the pressure a load needs.
//
// The formulas:
//   European:  L = Lmax (p / pref)^0.8, pref 250 kPa (standard) or 290 kPa (extra and high load),
//              the pressure on the sidewall for C tyres, 420 kPa for a temporary spare.
//   United States, P-metric:  L = Lmax (p / 240 kPa)^0.5.
//   United States, LT:  L = Lmax (p / pref)^0.70, pref the pressure on the sidewall; the exponent
//   meets the printed table of LT235/85R16 E within 1 %.
// and, for flotation and trailer tyres, whose own exponent was not found, the one that needs the
// most:
//   linear:  L = Lmax p / pref, pref the pressure on the sidewall.
// Sources and standing: see load_capacity.cpp; each LoadLaw carries its own. The European exponent
// and reference pressures are second-hand, the least pressure of 150 kPa is from memory.
//
// Range: least() <= p <= reference. Above the reference a tyre carries no more than Lmax; below 150
// kPa the formulas support no load, and zero is returned. The car's placard and the tyre maker's
// table come before either.
#pragma once

#include "core/quantity/quantity.hpp"
#include "core/standard/source.hpp"

namespace treadwater::patch {

struct LoadLaw {
  GaugePressure reference;
  double exponent;
  const Source* source;
};

LoadLaw european_standard_load();
LoadLaw european_extra_load();
LoadLaw european_at_marked_pressure(GaugePressure marked);
LoadLaw temporary_spare_law();
LoadLaw p_metric_standard_load();
LoadLaw p_metric_extra_load();
LoadLaw light_truck_at_marked_pressure(GaugePressure marked);
LoadLaw linear_at_marked_pressure(GaugePressure marked);

// The lowest cold pressure at which any of the formulas is used.
GaugePressure least_pressure();
const Source& least_pressure_source();

// A pressure that is not a number carries nothing.
Mass load_capacity(const LoadLaw& law, Mass greatest, GaugePressure pressure);

// By the formula alone, however low.
GaugePressure pressure_by_law(const LoadLaw& law, Mass greatest, Mass load);

// Never below least_pressure(). A load above `greatest` gives more than the reference pressure: the
// caller must treat that as overload, not as a pressure to set. NaN gives NaN.
GaugePressure pressure_needed(const LoadLaw& law, Mass greatest, Mass load);

// P-metric capacity from the dimensions, kg, before rounding to the nearest load index:
//   L = K p^0.5 Sd^1.39 (Dr + Sd),  Sd = (0.34848 + 0.6497 A) S,  K = 6.67e-5
// p kPa, S nominal section width mm, A aspect as a fraction, Dr rim diameter in whole mm.
// Range: series 50 to 80. The equation is not meant for others; the caller says so.
Mass p_metric_capacity(Length section_width, double aspect_percent, Length rim_diameter,
                       GaugePressure pressure);
const Source& p_metric_capacity_source();

}  // namespace treadwater::patch
