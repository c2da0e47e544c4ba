// The contact patch of a cross-ply tyre, as a wide band: two remembered sources contradict each
// other, and no measured pair of a cross-ply and a radial was found.
//
//   soft end   Smiley and Horne, "Mechanical properties of pneumatic tires with special
//              reference to modern aircraft tires", 1958: load, length and area against
//              deflection. Formulas from memory; made for aircraft tyres.
//   stiff end  a cross-ply is said to be 10 to 20 % stiffer than a radial of its size, with a
//              rounder patch (memory, weak): the radial's stiffness (contact.hpp) times 1.2,
//              its length, its width, and the fill of an ellipse.
// Range: pressure above 0, load above 0, deflection up to a third of the section height; nothing
// outside. Never used for a verdict.
#pragma once

#include <optional>

#include "core/patch/contact.hpp"
#include "core/patch/measured.hpp"

namespace treadwater::patch {

// F = (p + 0.08 pr) w sqrt(w d) f(x), x = deflection/w; f = 0.96 x + 0.216 x^2/C up to x = 10 C/3,
// 2.4 (x - C) beyond; C = 0.03. `rated` is the tyre's rated pressure.
struct CrossPly {
  Length section_width;
  Length overall_diameter;
  GaugePressure pressure;
  GaugePressure rated;
};
Force cross_ply_load(const CrossPly& tyre, Length deflection);
Length cross_ply_deflection(const CrossPly& tyre, Force load);  // the inverse
Length cross_ply_length(const CrossPly& tyre,
                        Length deflection);                    // 1.7 d sqrt(x - x^2), x = defl/d
Area cross_ply_area(const CrossPly& tyre, Length deflection);  // 2.3 defl sqrt(w d)

struct CrossPlyPatch {
  Length deflection_low, deflection_high;
  Length length_low, length_high;
  Area area_low, area_high;
};
std::optional<CrossPlyPatch> cross_ply_patch(const TyreSize& size, GaugePressure pressure,
                                             GaugePressure rated, Force load);

const Source& cross_ply_source();
const Source& cross_ply_stiffness_source();

}  // namespace treadwater::patch
