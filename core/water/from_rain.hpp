// How deep water may be where it was not measured: the film that rain leaves on a road, plus what a
// rut or dip holds.
//
// It errs on the deep side. A forecast's word counts at its high end, or twice its low end if it
// has none. Of the independent formulas of film.hpp the deepest counts; a film below the tops of
// the texture counts as none. A rut counts as 0.8 m wide, a usual wheel rut.
//
// Range: any rain, path and slope; slopes are ratios (0.02 is 2 %). Outside the formulas' range
// (150 mm/h, a path of 1 to 50 m, 0.5 to 10 %) the film is that at the nearest end. Less rain, a
// shorter path and a steeper road give less than that. More rain, a longer path and a flatter road
// give more: there, and off the pavement where no formula applies, the water may be deeper than is
// said here.
//
// Sources: film_depth_source() of each of `independent_films`, rut_source(); the choices named
// above are ours.
#pragma once

#include <optional>

#include "core/standard/rain_words.hpp"
#include "core/standard/road_surface.hpp"
#include "core/water/film.hpp"
#include "core/water/water.hpp"

namespace treadwater::water {

// Assumed if path and slope are not given: our choice.
inline constexpr Length one_lane = metres(3.65);
inline constexpr double usual_crossfall = 0.025;

// Those that rain_film() spans: two fits to one set of tests, one to another, and a theory.
inline constexpr FilmModel independent_films[] = {FilmModel::fhwa, FilmModel::fhwa_earlier_fit,
                                                  FilmModel::road_research, FilmModel::kinematic};

RainIntensity rain_to_reckon_with(const standard::RainWord& word);

struct RoadInRain {
  std::optional<RainIntensity> rain{};
  const standard::RoadSurface* surface = nullptr;  // not used if there is no rain
  Length way = one_lane;                           // of the water, from the high side to the wheel
  double crossfall = usual_crossfall;
  double grade = 0.0;
  std::optional<Length> rut{};  // below a straight edge
};

enum class FilmReach { no_rain, within, beyond, off_pavement };

struct DepthFromRain {
  Length depth;  // to allow for, above the tops of the texture
  FilmReach reach = FilmReach::no_rain;
  std::optional<RainOnRoad> asked{};  // what the formulas were given, within their range
  std::optional<RainFilm> film{};
  std::optional<Length> in_rut{};

  // What the formulas span; what a rut holds comes on top.
  Water water() const;
  bool may_be_deeper() const {
    return reach == FilmReach::beyond || reach == FilmReach::off_pavement;
  }
};

DepthFromRain depth_from_rain(const RoadInRain& road);

}  // namespace treadwater::water
