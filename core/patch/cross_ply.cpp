// Symbols of the source: F load, p pressure, pr rated pressure, w section width, d overall
// diameter, C the vertical-load constant (0.03 for type I tyres).
#include "core/patch/cross_ply.hpp"

#include <algorithm>
#include <cmath>

namespace treadwater::patch {
namespace {

constexpr Source formulas{"cross-ply-patch", "Smiley and Horne, NACA TN 4110",
                          "load, length and area against deflection; not seen in print", "1958",
                          Standing::memory};
constexpr Source stiffer{"cross-ply-stiffness", "A cross-ply is 10 to 20 % stiffer than a radial",
                         "contradicted by the formulas of 1958", "", Standing::memory};

constexpr double c = 0.03;
constexpr double most_stiffer = 1.2;
constexpr double ellipse = 0.785;

// The source's (p + 0.08 pr) w sqrt(w d).
Force unit_load(const CrossPly& t) {
  const double w = in_metres(t.section_width);
  return newtons(1000.0 * (in_kilopascals(t.pressure) + 0.08 * in_kilopascals(t.rated)) * w *
                 std::sqrt(w * in_metres(t.overall_diameter)));
}

}  // namespace

Force cross_ply_load(const CrossPly& tyre, Length deflection) {
  const double x = deflection / tyre.section_width;
  const double f = x <= 10.0 * c / 3.0 ? 0.96 * x + 0.216 * x * x / c : 2.4 * (x - c);
  return unit_load(tyre) * f;
}

Length cross_ply_deflection(const CrossPly& tyre, Force load) {
  const double f = load / unit_load(tyre);
  // At x = 10 C/3 both branches give 5.6 C.
  const double x = f <= 5.6 * c ? (std::sqrt(0.96 * 0.96 + 4.0 * 0.216 / c * f) - 0.96) * c / 0.432
                                : f / 2.4 + c;
  return tyre.section_width * x;
}

Length cross_ply_length(const CrossPly& tyre, Length deflection) {
  const double x = deflection / tyre.overall_diameter;
  return tyre.overall_diameter * (1.7 * std::sqrt(x - x * x));
}

Area cross_ply_area(const CrossPly& tyre, Length deflection) {
  return rectangle(deflection, metres(std::sqrt(in_metres(tyre.section_width) *
                                                in_metres(tyre.overall_diameter)))) *
         2.3;
}

std::optional<CrossPlyPatch> cross_ply_patch(const TyreSize& size, GaugePressure pressure,
                                             GaugePressure rated, Force load) {
  if (!(pressure > kilopascals(0.0)) || !(rated > kilopascals(0.0)) || !(load > newtons(0.0)))
    return std::nullopt;
  const CrossPly tyre{size.section_width, overall_diameter(size), pressure, rated};
  const Stiffness stiff = vertical_stiffness(size, pressure) * most_stiffer;
  CrossPlyPatch patch;
  patch.deflection_low = deflection(load, stiff);
  patch.deflection_high = cross_ply_deflection(tyre, load);
  if (!(patch.deflection_low > metres(0.0)) ||
      !(patch.deflection_high <= section_height(size) / 3.0))
    return std::nullopt;
  patch.length_low = contact_length(load, stiff, tyre.overall_diameter / 2.0);
  patch.length_high = cross_ply_length(tyre, patch.deflection_high);
  // Under a light load the two areas change places.
  const Area a = rectangle(patch.length_low, contact_width(size, 1.0)) * ellipse;
  const Area b = cross_ply_area(tyre, patch.deflection_high);
  patch.area_low = std::min(a, b);
  patch.area_high = std::max(a, b);
  return patch;
}

const Source& cross_ply_source() { return formulas; }
const Source& cross_ply_stiffness_source() { return stiffer; }

}  // namespace treadwater::patch
