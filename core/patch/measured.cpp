// Symbols: F load, p inflation pressure, A gross contact area.
#include "core/patch/measured.hpp"

namespace treadwater::patch {
namespace {

constexpr Source measured{"patch-measured", "Footprints and stiffness of two 255/40R17 98W tyres",
                          "one rig after ASTM F870, a personal engineering site", "2021, 2024",
                          Standing::secondary};
constexpr Source fitted{"patch-area-fit", "Contact pressure fitted to 50 footprints of one size",
                        "our fit; 255/40R17 alone, 165 to 250 kPa, 2.2 to 6.2 kN", "",
                        Standing::common_practice};
constexpr Source band{"patch-band", "Our patch against the footprints of two 255/40R17 tyres",
                      "length and area within 15 % of 25 prints; other sizes not measured", "",
                      Standing::common_practice};

constexpr Area square_inches(double v) { return rectangle(inches(1.0), inches(1.0)) * v; }
constexpr Force pounds_force(double v) { return weight(pounds(v)); }

constexpr MeasuredFootprint print(double lbf, double pressure_psi, double length, double width,
                                  double gross, double net) {
  return {pounds_force(lbf),    psi(pressure_psi), 0.0, inches(length), inches(width),
          square_inches(gross), square_inches(net)};
}
constexpr MeasuredFootprint inclined(double degrees, double length, double width, double gross) {
  return {pounds_force(1000.0), psi(30.0),   degrees, inches(length), inches(width),
          square_inches(gross), std::nullopt};
}

constexpr MeasuredFootprint prints[] = {
    print(500, 24, 2.85, 7.44, 18.7, 13.0),  print(500, 26, 2.84, 7.46, 18.4, 13.0),
    print(500, 28, 2.74, 7.41, 17.9, 12.6),  print(500, 30, 2.70, 7.35, 17.3, 12.4),
    print(500, 34, 2.44, 7.18, 16.0, 11.2),  print(800, 24, 3.99, 8.12, 29.6, 20.4),
    print(800, 26, 3.79, 8.06, 28.1, 19.4),  print(800, 28, 3.79, 8.07, 27.7, 19.3),
    print(800, 30, 3.64, 8.06, 26.4, 18.7),  print(800, 34, 3.71, 7.95, 25.5, 18.8),
    print(1000, 24, 4.62, 8.30, 35.9, 25.3), print(1000, 26, 4.42, 8.33, 34.6, 24.3),
    print(1000, 28, 4.21, 8.27, 32.2, 22.8), print(1000, 30, 4.06, 8.25, 30.9, 22.0),
    print(1000, 34, 4.18, 8.16, 30.2, 22.1), print(1200, 24, 5.11, 8.46, 41.6, 29.6),
    print(1200, 26, 5.00, 8.48, 40.5, 29.0), print(1200, 28, 4.90, 8.45, 38.9, 27.9),
    print(1200, 30, 4.60, 8.42, 36.4, 26.2), print(1200, 34, 4.44, 8.42, 34.4, 25.5),
    print(1400, 24, 5.75, 8.60, 47.3, 34.5), print(1400, 26, 5.44, 8.60, 45.1, 33.1),
    print(1400, 28, 5.25, 8.57, 43.6, 31.9), print(1400, 30, 5.03, 8.55, 41.2, 29.9),
    print(1400, 34, 4.83, 8.52, 38.8, 28.8), inclined(2, 4.76, 8.28, 32.2),
    inclined(4, 5.38, 7.84, 29.4),
};

constexpr MeasuredStiffness rate(double pressure_psi, double degrees, double newtons_per_mm) {
  return {psi(pressure_psi), degrees, newtons_per_millimetre(newtons_per_mm)};
}
constexpr MeasuredStiffness rates[] = {
    rate(24, 0, 228.5), rate(24, 2, 217.2), rate(24, 4, 215.6), rate(27, 0, 247.5),
    rate(27, 2, 234.5), rate(27, 4, 231.1), rate(30, 0, 262.5), rate(30, 2, 247.9),
    rate(30, 4, 242.6), rate(33, 0, 277.3), rate(33, 2, 259.9), rate(33, 4, 262.0),
    rate(36, 0, 292.7), rate(36, 2, 276.5), rate(36, 4, 272.7),
};

constexpr double either_way = 0.15;

}  // namespace

Rows<MeasuredFootprint> measured_footprints() { return {std::begin(prints), std::end(prints)}; }
Rows<MeasuredStiffness> measured_stiffnesses() { return {std::begin(rates), std::end(rates)}; }

std::optional<Area> fitted_area_255_40_17(Force load, GaugePressure pressure) {
  const double p = in_kilopascals(pressure);
  const double kilonewtons = in_newtons(load) / 1000.0;
  if (!(p >= 165.0 && p <= 250.0 && kilonewtons >= 2.2 && kilonewtons <= 6.2)) return std::nullopt;
  return square_metres(kilonewtons / (52.6 + 0.660 * p + 6.45 * kilonewtons));
}

LengthBand contact_length_band(const ContactPatch& patch) {
  return {patch.length * (1.0 - either_way), patch.length, patch.length * (1.0 + either_way)};
}

AreaBand contact_area_band(const ContactPatch& patch) {
  return {patch.area * (1.0 - either_way), patch.area, patch.area * (1.0 + either_way)};
}

const Source& measured_patch_source() { return measured; }
const Source& fitted_area_source() { return fitted; }
const Source& patch_band_source() { return band; }

}  // namespace treadwater::patch
