// Symbols of the sources and ours:
//   WD, D, d, WFT  depth of water    L  flow path    S, N    slope, and the N of one in N
//   TXD, T, MTD    texture           I  rain         n       Manning's roughness
#include "core/water/film.hpp"

#include <algorithm>
#include <cmath>

#include "core/quantity/power.hpp"

namespace treadwater::water {
namespace {

enum class Units { us, metric, percent, centimetres };

// depth = factor TXD^texture L^path I^rain / S^slope, in the source's units.
struct Fit {
  double factor;
  double texture;
  double path;
  double rain;
  double slope;
  Units units;
  Source source;
};

// In the order of FilmModel. The kinematic form, (n L I / (36.1 S^0.5))^0.6, has its factor from n.
constexpr Fit fits[] = {
    {0.00338,
     0.11,
     0.43,
     0.59,
     0.42,
     Units::us,
     {"rain-fhwa", "Gallaway et al., Criteria for Minimizing Hydroplaning, FHWA-RD-79-31",
      "equation 16, water depth from rain; constants read as quoted", "1979", Standing::secondary}},
    {0.01485,
     0.11,
     0.43,
     0.59,
     0.42,
     Units::metric,
     {"rain-fhwa-metric", "The water depth of FHWA-RD-79-31 in metric units",
      "constant read as quoted", "1979", Standing::secondary}},
    {0.103,
     0.11,
     0.43,
     0.59,
     0.42,
     Units::percent,
     {"rain-fhwa-percent", "The water depth of FHWA-RD-79-31 with the slope in per cent",
      "as road designers in Australia and New Zealand use it; not seen in print", "2006",
      Standing::memory}},
    {0.003726,
     0.125,
     0.519,
     0.562,
     0.364,
     Units::us,
     {"rain-fhwa-earlier", "Gallaway et al., an earlier fit to the same tests", "not seen in print",
      "1971-1979", Standing::memory}},
    {0.015,
     0.0,
     0.5,
     0.5,
     0.2,
     Units::centimetres,
     {"rain-road-research", "Ross and Russam, Road Research Laboratory report LR 236",
      "not seen in print; depth from the base of the texture", "1968", Standing::memory}},
    {0.046,
     0.0,
     0.5,
     0.5,
     0.2,
     Units::metric,
     {"rain-road-research-metric", "The depth of LR 236 in metric units",
      "as a South African drainage manual has it; not seen in print", "", Standing::memory}},
    {0.0,
     0.0,
     0.6,
     0.6,
     0.3,
     Units::metric,
     {"rain-kinematic", "NCHRP 1-29 (PAVDRN), kinematic sheet flow after Manning",
      "equation from memory; roughness read in FDOT Design Guidance", "1998", Standing::memory}},
};

constexpr Source rut{"rut-water", "Water in a rut of parabolic section, by its geometry",
                     "our own; no formula found in print", "2026", Standing::common_practice};

const Fit& fit_of(FilmModel model) { return fits[static_cast<int>(model)]; }

double roughness(Pavement pavement) {
  switch (pavement) {
    case Pavement::concrete:
      return 0.031;
    case Pavement::dense_asphalt:
      return 0.0327;
    case Pavement::open_graded_asphalt:
      break;
  }
  return 0.0355;
}

bool in_range(const RainOnRoad& road) {
  return road.rain >= least_rain && road.rain <= most_rain && road.path.length >= shortest_path &&
         road.path.length <= longest_path && road.path.slope >= flattest &&
         road.path.slope <= steepest && road.texture >= millimetres(0.1) &&
         road.texture <= millimetres(4.0);
}

// The depth of the fit before any texture is taken off.
Length full_depth(const Fit& fit, double factor, const RainOnRoad& road) {
  const auto depth = [&](double texture, double path, double rain, double slope) {
    return factor * power(texture, fit.texture) * power(path, fit.path) * power(rain, fit.rain) /
           power(slope, fit.slope);
  };
  const double texture = in_millimetres(road.texture);
  const double path = in_metres(road.path.length);
  const double rain = in_millimetres_per_hour(road.rain);
  const double slope = road.path.slope;
  switch (fit.units) {
    case Units::us:
      return inches(depth(in_inches(road.texture), path / exact::metres_per_foot,
                          in_inches_per_hour(road.rain), slope));
    case Units::percent:
      return millimetres(depth(texture, path, rain, 100.0 * slope));
    case Units::centimetres:
      return millimetres(10.0 * depth(texture / 10.0, path, rain / 10.0, slope));
    case Units::metric:
      break;
  }
  return millimetres(depth(texture, path, rain, slope));
}

}  // namespace

FlowPath flow_path(Length width, double crossfall, double gradient) {
  const double slope = std::sqrt(crossfall * crossfall + gradient * gradient);
  return {width * (slope / std::fabs(crossfall)), slope};
}

std::optional<Length> film_depth(FilmModel model, const RainOnRoad& road) {
  if (!in_range(road)) return std::nullopt;
  const Fit& fit = fit_of(model);
  const double factor =
      model == FilmModel::kinematic ? power(roughness(road.pavement) / 36.1, 0.6) : fit.factor;
  return full_depth(fit, factor, road) - road.texture;
}

const Source& film_depth_source(FilmModel model) { return fit_of(model).source; }

std::optional<RainFilm> rain_film(const RainOnRoad& road) {
  const auto central = film_depth(FilmModel::fhwa, road);
  if (!central) return std::nullopt;
  RainFilm film{*central, *central, *central};
  for (const FilmModel model :
       {FilmModel::fhwa_earlier_fit, FilmModel::road_research, FilmModel::kinematic})
    if (const auto depth = film_depth(model, road)) {
      film.low = std::min(film.low, *depth);
      film.high = std::max(film.high, *depth);
    }
  return film;
}

Length rut_water(Length rut_depth, Length rut_width, double crossfall) {
  if (rut_depth <= metres(0.0)) return metres(0.0);
  const double kept = 1.0 - std::fabs(crossfall) * (rut_width / rut_depth) / 4.0;
  return kept <= 0.0 ? metres(0.0) : rut_depth * (kept * kept);
}

const Source& rut_source() { return rut; }

}  // namespace treadwater::water
