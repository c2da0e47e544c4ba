// The size of a tyre from its nominal dimensions, and how far a real one may differ.
//
// Sources, with their standing in geometry.cpp: definitions of ISO 4223-1 and UN R30; the
// section-width rule of UN R30 6.1.1.1; the ratio of theoretical rim and section, the tolerances
// and the rolling circumference from memory. Range: metric tyres with an aspect ratio, series 25 to
// 100. Outside it the caller gives no figure.
#pragma once

#include <optional>

#include "core/quantity/quantity.hpp"
#include "core/sidewall/sidewall.hpp"
#include "core/standard/source.hpp"

namespace treadwater::patch {

// Nominal size. The aspect ratio is section height over section width, per cent.
struct TyreSize {
  Length section_width;
  double aspect_percent;
  Length rim_diameter;
};

// The nominal size on a sidewall; empty if one of its three numbers is missing.
std::optional<TyreSize> nominal_size(const sidewall::Reading& reading);

struct LengthBand {
  Length low;
  Length nominal;
  Length high;
};

// H = S a/100.
Length section_height(const TyreSize& size);

// D = d + 2 H; a real tyre between d + 2 H x 0.97 and d + 2 H x 1.04 (1.08 for a cross-ply).
Length overall_diameter(const TyreSize& size);
// If the size itself states the diameter, that counts.
std::optional<Length> overall_diameter(const sidewall::Reading& reading);
LengthBand overall_diameter_band(const TyreSize& size, bool cross_ply);

// The rim the nominal width belongs to: x S, x 0.70 down to series 65, 0.75 at 60 to 50, 0.85 at 45
// to 35, 0.90 from 30 down. If the maker states another, that counts.
Length theoretical_rim_width(const TyreSize& size);

// S' = S + 0.4 (A - A1): the section on a rim of width A. Half an inch of rim is 5.08 mm of
// section.
Length section_width_on_rim(const TyreSize& size, Length rim_width, Length usual_rim_width);

// C = 3.05 D for a radial, 2.99 D for the others; measured tyres 3.055 to 3.100,
// so the band runs from 3.03 (2.95) to 3.11. The ends are ours.
LengthBand rolling_circumference(const TyreSize& size, bool cross_ply);

const Source& overall_diameter_source();
const Source& size_tolerance_source();
const Source& theoretical_rim_source();
const Source& section_on_rim_source();
const Source& rolling_circumference_source();

}  // namespace treadwater::patch
