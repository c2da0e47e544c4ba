#include "core/water/from_rain.hpp"

#include <algorithm>

namespace treadwater::water {
namespace {

constexpr Length usual_rut_width = metres(0.8);

void add_film(const RoadInRain& road, DepthFromRain& found) {
  if (!road.surface->paved) {
    found.reach = FilmReach::off_pavement;
    return;
  }
  const FlowPath way = flow_path(road.way, road.crossfall, road.grade);
  // No formula can take an endless path.
  const bool ends = way.length <= longest_path;
  const bool within = *road.rain <= most_rain && ends && way.slope >= flattest;
  found.reach = within ? FilmReach::within : FilmReach::beyond;
  found.asked = RainOnRoad{std::clamp(*road.rain, least_rain, most_rain),
                           {ends ? std::max(way.length, shortest_path) : longest_path,
                            std::clamp(way.slope, flattest, steepest)},
                           road.surface->texture,
                           Pavement::dense_asphalt};
  found.film = rain_film(*found.asked);
  if (found.film) found.depth = std::max(Length(), found.film->high);
}

}  // namespace

RainIntensity rain_to_reckon_with(const standard::RainWord& word) {
  return word.high ? *word.high : word.low * 2.0;
}

Water DepthFromRain::water() const {
  const auto with_rut = [&](Length above) {
    return std::max(Length(), above) + in_rut.value_or(Length());
  };
  if (!film) return Water::by_ruler(depth);
  return Water::between(with_rut(film->low), with_rut(film->central), depth);
}

DepthFromRain depth_from_rain(const RoadInRain& road) {
  DepthFromRain found;
  if (road.rain && *road.rain > RainIntensity()) add_film(road, found);
  if (road.rut) {
    found.in_rut = rut_water(*road.rut, usual_rut_width, road.crossfall);
    found.depth = found.depth + *found.in_rut;
  }
  return found;
}

}  // namespace treadwater::water
