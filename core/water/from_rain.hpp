// How deep water may stand where nobody has held a ruler: the film that rain leaves on a road, and
// on top of it what a rut or dip holds.
//
// It errs on the deep side. Of a forecast's word the high end is taken, and twice the low one where
// it has none. Of the formulas of film.hpp that are independent of each other the deepest counts; a
// film below the tops of the texture is none. A rut counts as 0.8 m wide, a usual wheel rut.
//
// Range: any rain, way and fall; slopes are ratios (0.02 is 2 %). Outside the reach of the formulas
// (150 mm/h, 1 to 50 m of way, 0.5 to 10 %) the film is that at their nearest end. Less rain, a
// shorter way and steeper ground give less than that. More rain, a longer way and flatter ground
// give more: there, and off the pavement where no formula holds, more may stand than is said here.
//
// Sources: film_depth_source() of each of `independent_films`, rut_source(); the choices named
// above are ours.
#pragma once

#include <optional>

#include "core/standard/rain_words.hpp"
#include "core/standard/road_surface.hpp"
#include "core/water/film.hpp"

namespace treadwater::water {

// Taken where nobody told the way and the fall: our choice.
inline constexpr Length one_lane = metres(3.65);
inline constexpr double usual_crossfall = 0.025;

// Those that rain_film() spans: two fits to one set of tests, one to another, and a theory.
inline constexpr FilmModel independent_films[] = {FilmModel::fhwa, FilmModel::fhwa_earlier_fit,
                                                  FilmModel::road_research, FilmModel::kinematic};

RainIntensity rain_to_reckon_with(const standard::RainWord& word);

struct RoadInRain {
  std::optional<RainIntensity> rain{};
  const standard::RoadSurface* surface = nullptr;  // not asked where there is no rain
  Length way = one_lane;                           // of the water, from the high side to the wheel
  double crossfall = usual_crossfall;
  double grade = 0.0;
  std::optional<Length> rut{};  // below a straight edge
};

enum class FilmReach { no_rain, within, beyond, off_pavement };

struct DepthFromRain {
  Length depth;  // to reckon with, above the tops of the texture
  FilmReach reach = FilmReach::no_rain;
  std::optional<RainOnRoad> asked{};  // what the formulas were asked, within their reach
  std::optional<RainFilm> film{};
  std::optional<Length> in_rut{};

  bool may_be_deeper() const {
    return reach == FilmReach::beyond || reach == FilmReach::off_pavement;
  }
};

DepthFromRain depth_from_rain(const RoadInRain& road);

}  // namespace treadwater::water
