#include "core/water/estimate.hpp"

#include <algorithm>
#include <cmath>

#include "core/standard/instrument.hpp"
#include "core/water/onset.hpp"

namespace treadwater::water {
namespace {

using standard::pressure_gauge_error;
using standard::ruler_error;
using standard::tread_gauge_error;

constexpr Source source{"onset-estimate", "Treadwater's own estimate (docs/method.md, Water)",
                        "fitted under the measured rows; no outside source", "2026",
                        Standing::common_practice};

constexpr Length new_tread = millimetres(8.0);
constexpr Length worn_tread = millimetres(1.6);
constexpr Length flood_depth_of_grooves = millimetres(8.0);
constexpr Length deepest_measured = millimetres(10.0);
constexpr Length usual_width = millimetres(205.0);
constexpr GaugePressure usual_pressure = kilopascals(220.0);

double line(double x, double x0, double y0, double x1, double y1) {
  return y0 + (y1 - y0) * (x - x0) / (x1 - x0);
}

// c: water cleared against a new tread.
double clearing(Length tread, double bare) {
  const double mm = std::clamp(in_millimetres(tread), 0.0, 8.0);
  if (mm < 1.6) return line(mm, 0.0, bare, 1.6, 0.55);
  if (mm < 3.0) return line(mm, 1.6, 0.55, 3.0, 0.80);
  return line(mm, 3.0, 0.80, 8.0, 1.0);
}

// s: how far a film floods grooves of this flood depth.
double flooding(Length film, Length flood_depth) {
  if (film >= flood_depth) return 1.0;
  return std::pow(film / flood_depth, 2.0 / 3.0);
}

Length flood_depth(Length tread) {
  return flood_depth_of_grooves * std::min(1.0, tread / worn_tread);
}

Speed new_tread_onset(GaugePressure pressure, Length film, Length texture) {
  return film_onset({pressure, new_tread, film, texture});
}

double width_factor(Length section_width) { return std::sqrt(usual_width / section_width); }

double worn_factor(double clears, double flooded) { return 1.0 - (1.0 - clears) * flooded; }

// Bare-tread clearing. Low: the line from 3 to 1.6 mm carried on to nothing. High: no further loss
// below 1.6 mm. Central: half way.
constexpr double bare_low = 0.55 - 1.6 * (0.80 - 0.55) / (3.0 - 1.6);
constexpr double bare_high = 0.55;
constexpr double bare_central = (bare_low + bare_high) / 2.0;

Speed low_onset(const WetTyre& tyre, Length tread_credit) {
  constexpr double scale = 0.88;
  const Length film = std::max(tyre.film, thinnest_film()) + ruler_error;
  const Length tread =
      std::max(millimetres(0.0), std::min(tread_credit, new_tread) - tread_gauge_error);
  const GaugePressure pressure = std::max(kilopascals(10.0), tyre.pressure - pressure_gauge_error);
  const double softness = std::sqrt(std::min(1.0, pressure / usual_pressure));
  const double depth = std::sqrt(std::min(1.0, deepest_measured / film));
  const double width = std::min(1.0, width_factor(tyre.section_width.value_or(millimetres(255.0))));
  const Length texture = std::min(tyre.texture, millimetres(0.7));
  return new_tread_onset(usual_pressure, film, texture) *
         (scale * softness * depth * width *
          worn_factor(clearing(tread, bare_low), flooding(film, flood_depth(tread))));
}

Speed central_onset(const WetTyre& tyre, Length tread) {
  const Length film = std::max(tyre.film, thinnest_film());
  return new_tread_onset(tyre.pressure, film, tyre.texture) *
         (width_factor(tyre.section_width.value_or(usual_width)) *
          worn_factor(clearing(tread, bare_central), flooding(film, flood_depth(tread))));
}

Speed high_onset(const WetTyre& tyre, Length tread_credit) {
  constexpr double scale = 1.10;
  const Length film = std::max(tyre.film - ruler_error, thinnest_film());
  const Length tread = tread_credit + tread_gauge_error;
  const double width = std::max(1.0, width_factor(tyre.section_width.value_or(millimetres(155.0))));
  return new_tread_onset(tyre.pressure + pressure_gauge_error, film, tyre.texture) *
         (scale * width *
          worn_factor(clearing(tread, bare_high), flooding(film, flood_depth_of_grooves)));
}

}  // namespace

std::optional<SpeedBand> aquaplaning_onset(const WetTyre& tyre) {
  if (tyre.film <= millimetres(0.0)) return std::nullopt;
  const Length tread = tyre.tread * tyre.groove_credit;
  return SpeedBand{low_onset(tyre, tread), central_onset(tyre, tread), high_onset(tyre, tread)};
}

const Source& estimate_source() { return source; }

}  // namespace treadwater::water
