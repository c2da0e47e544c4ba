// Symbols of UN R30 and ours: S section_width, H section_height, d rim_diameter, D
// overall_diameter, A rim_width, A1 usual_rim_width, x ratio of theoretical rim and section, C
// rolling_circumference.
#include "core/patch/geometry.hpp"

namespace treadwater::patch {
namespace {

constexpr Source diameter{
    "overall-diameter", "Overall diameter from the nominal size, d + 2 S a/100",
    "definitions of aspect ratio and section height, ISO 4223-1, UN R30", "", Standing::secondary};
constexpr Source tolerance{"size-tolerance", "UN R30, tolerances on section height",
                           "0.97 to 1.04 radial, 1.08 diagonal; not seen in print", "",
                           Standing::memory};
constexpr Source rim{"theoretical-rim", "Theoretical rim, x times the nominal section width",
                     "x by series not seen in print; newer texts leave it to the maker", "",
                     Standing::memory};
constexpr Source on_rim{"section-on-rim", "UN R30 6.1.1.1, S = S1 + K (A - A1), K = 0.4",
                        "as amended, read in a copy of the amendment", "", Standing::published};
constexpr Source rolling{"rolling-circumference", "Rolling circumference C = F D, F = 3.05 or 2.99",
                         "not seen in print; a tyre data book gives 3.055 and 3.10", "",
                         Standing::memory};

}  // namespace

std::optional<TyreSize> nominal_size(const sidewall::Reading& reading) {
  if (!reading.section_width || !reading.aspect_percent || !reading.rim_diameter)
    return std::nullopt;
  return TyreSize{*reading.section_width, *reading.aspect_percent, *reading.rim_diameter};
}

Length section_height(const TyreSize& size) {
  return size.section_width * (size.aspect_percent / 100.0);
}

Length overall_diameter(const TyreSize& size) {
  return size.rim_diameter + 2.0 * section_height(size);
}

std::optional<Length> overall_diameter(const sidewall::Reading& reading) {
  if (reading.stated_outer_diameter) return reading.stated_outer_diameter;
  const auto size = nominal_size(reading);
  return size ? std::optional<Length>(overall_diameter(*size)) : std::nullopt;
}

LengthBand overall_diameter_band(const TyreSize& size, bool cross_ply) {
  const Length both_heights = 2.0 * section_height(size);
  return {size.rim_diameter + both_heights * 0.97, overall_diameter(size),
          size.rim_diameter + both_heights * (cross_ply ? 1.08 : 1.04)};
}

Length theoretical_rim_width(const TyreSize& size) {
  const double series = size.aspect_percent;
  const double x = series > 60.0 ? 0.70 : series > 45.0 ? 0.75 : series > 30.0 ? 0.85 : 0.90;
  return size.section_width * x;
}

Length section_width_on_rim(const TyreSize& size, Length rim_width, Length usual_rim_width) {
  return size.section_width + 0.4 * (rim_width - usual_rim_width);
}

LengthBand rolling_circumference(const TyreSize& size, bool cross_ply) {
  const Length d = overall_diameter(size);
  return {d * (cross_ply ? 2.95 : 3.03), d * (cross_ply ? 2.99 : 3.05), d * 3.11};
}

const Source& overall_diameter_source() { return diameter; }
const Source& size_tolerance_source() { return tolerance; }
const Source& theoretical_rim_source() { return rim; }
const Source& section_on_rim_source() { return on_rim; }
const Source& rolling_circumference_source() { return rolling; }

}  // namespace treadwater::patch
