// Rain to a film of water, and the speed at which a tyre floats on it.
#include <cmath>

#include "core/quantity/power.hpp"
#include "core/quantity/write.hpp"
#include "core/water/crossing.hpp"
#include "core/water/estimate.hpp"
#include "core/water/film.hpp"
#include "core/water/measured.hpp"
#include "core/water/onset.hpp"
#include "tests/register/register.hpp"

namespace treadwater::checks {
namespace {

using namespace water;

GaugePressure pressure(Asked& in) { return in.of<GaugePressure>("pressure"); }

Speed film_onset_of(Asked& in) {
  return film_onset(
      {pressure(in), in.of<Length>("tread"), in.of<Length>("film"), in.of<Length>("texture")});
}

RainOnRoad road(Asked& in) {
  RainOnRoad r;
  r.rain = in.of<RainIntensity>("rain");
  r.path = {in.of<Length>("path"), in.number("slope")};
  r.texture = in.of<Length>("texture");
  return r;
}

FilmModel film_model(Asked& in) {
  const std::string name = in.text("model");
  if (name == "FHWA, 1979") return FilmModel::fhwa;
  if (name == "FHWA, metric") return FilmModel::fhwa_metric;
  if (name == "FHWA, slope in per cent") return FilmModel::fhwa_percent;
  if (name == "FHWA, earlier") return FilmModel::fhwa_earlier_fit;
  if (name == "LR 236") return FilmModel::road_research;
  if (name == "LR 236, metric") return FilmModel::road_research_metric;
  if (name != "kinematic") in.fail("no such model: ", name);
  return FilmModel::kinematic;
}

WetTyre wet_tyre(Asked& in) {
  WetTyre tyre;
  tyre.pressure = pressure(in);
  tyre.tread = in.of<Length>("tread");
  tyre.section_width = in.of<Length>("width", millimetres(205.0));
  tyre.film = in.of<Length>("film");
  if (in.has("film to"))  // a range of depths, as of a word
    tyre.film = Water::between(tyre.film.deep(), tyre.film.deep(), in.of<Length>("film to"));
  tyre.texture = millimetres(0.7);
  return tyre;
}

SpeedBand onset(Asked& in) {
  const auto band = aquaplaning_onset(wet_tyre(in));
  if (!band) in.fail("no onset", "");
  return band.value_or(SpeedBand{});
}

// What a speed with this coefficient of the root of a pressure in psi stands for in
// p = 1/2 rho C V^2, with 1000 kg/m3.
double lift_coefficient(Speed at_one_psi) {
  const double v = in_kilometres_per_hour(at_one_psi) / 3.6;
  return 2.0 * in_kilopascals(psi(1.0)) / (v * v);
}

VehicleKind vehicle(Asked& in) {
  const std::string name = in.text("vehicle");
  if (name == "small car") return VehicleKind::small_car;
  if (name == "large car") return VehicleKind::large_car;
  if (name != "4x4") in.fail("no such vehicle: ", name);
  return VehicleKind::four_by_four;
}

Flow flow(Asked& in) {
  if (!in.has("flow")) return {};
  if (in.text("flow") == "unknown") return {true, {}};
  return {true, in.of<Speed>("flow")};
}

std::string_view in_words(Crossing c) {
  switch (c) {
    case Crossing::dry:
      return "dry";
    case Crossing::with_caution:
      return "with caution";
    case Crossing::do_not_enter:
      return "do not enter";
    case Crossing::unstable:
      return "unstable";
    case Crossing::afloat:
      return "afloat";
  }
  return "unknown";
}

constexpr Check checks[] = {
    // Published onset models.
    {"onset, pressure alone",
     [](Asked& in) { return in.answer(pressure_only_onset(pressure(in))); }},
    {"9 knots times the root of the pressure",
     [](Asked& in) { return in.answer(knots(9.0 * std::sqrt(in_psi(pressure(in))))); }},
    {"onset, wheel locked", [](Asked& in) { return in.answer(spin_up_onset(pressure(in))); }},
    {"onset, wheel locked, over the root of the pressure in psi",
     [](Asked& in) {
       const GaugePressure p = pressure(in);
       return in.answer(spin_up_onset(p) / std::sqrt(in_psi(p)));
     }},
    {"onset, wheel locked, over the root of the pressure in kPa",
     [](Asked& in) {
       const GaugePressure p = pressure(in);
       return in.answer(spin_up_onset(p) / std::sqrt(in_kilopascals(p)));
     }},
    {"onset, wheel locked over rolling",
     [](Asked& in) {
       const GaugePressure p = pressure(in);
       return in.answer(spin_up_onset(p) / knots(9.0 * std::sqrt(in_psi(p))));
     }},
    {"lift coefficient",
     [](Asked& in) { return in.answer(lift_coefficient(in.of<Speed>("speed"))); }},
    {"onset, footprint",
     [](Asked& in) { return in.answer(footprint_onset(pressure(in), in.number("FAR"))); }},
    {"onset, truck",
     [](Asked& in) { return in.answer(truck_onset(pressure(in), in.number("FAR"))); }},
    {"onset, film", [](Asked& in) { return in.answer(film_onset_of(in)); }},
    {"onset, film, over that at full tread",
     [](Asked& in) {
       const Speed at_full = film_onset(
           {pressure(in), millimetres(8.0), in.of<Length>("film"), in.of<Length>("texture")});
       return in.answer(film_onset_of(in) / at_full);
     }},
    {"factor of water and texture",
     [](Asked& in) {
       return in.answer(film_water_factor(in.of<Length>("film"), in.of<Length>("texture")));
     }},
    {"onset, design car",
     [](Asked& in) {
       return in.answer(design_onset(in.of<Length>("film"), in.of<Length>("texture")));
     }},
    {"design car, branch for thin films",
     [](Asked& in) {
       return in.answer(miles_per_hour(26.04 * power(in_inches(in.of<Length>("film")), -0.259)));
     }},
    {"design car, branch for deep films",
     [](Asked& in) {
       return in.answer(miles_per_hour(
           3.09 * film_water_factor(in.of<Length>("film"), in.of<Length>("texture"))));
     }},
    {"onset, smooth tyre",
     [](Asked& in) {
       return in.answer(
           smooth_tyre_onset(in.of<Force>("load"), pressure(in), in.of<Length>("film")));
     }},
    {"onset, pressure alone, off a measured speed",
     [](Asked& in) {
       const Speed measured = in.of<Speed>("measured");
       return in.answer(100.0 * (pressure_only_onset(pressure(in)) / measured - 1.0));
     }},
    {"onset, film, off a measured speed",
     [](Asked& in) {
       const Speed measured = in.of<Speed>("measured");
       return in.answer(100.0 * (film_onset_of(in) / measured - 1.0));
     }},
    // The estimate.
    {"water cleared by the grooves",
     [](Asked& in) { return in.answer(clearing(in.of<Length>("tread"), in.number("bare"))); }},
    {"estimate, band",
     [](Asked& in) {
       const SpeedBand band = onset(in);
       return in.answer(band.low, band.high);
     }},
    {"estimate, low", [](Asked& in) { return in.answer(onset(in).low); }},
    {"estimate, central", [](Asked& in) { return in.answer(onset(in).central); }},
    {"estimate, speed to hold to before it is rounded down",
     [](Asked& in) { return in.answer(onset(in).low * hold_to_share); }},
    {"estimate, share of draws that float",
     [](Asked& in) {
       return in.answer(OnsetDraws(wet_tyre(in)).chance_of_floating(in.of<Speed>("speed")));
     }},
    {"estimate, at this speed by the central value",
     [](Asked& in) {
       const Speed central = onset(in).central;
       const Speed speed = in.of<Speed>("speed");
       const bool afloat = floats_at_road_speed(central) && central < speed;
       return in.answer(std::string_view(afloat ? "afloat" : "not afloat"));
     }},
    // Rain.
    {"film of rain", [](Asked& in) { return in.answer(film_depth(film_model(in), road(in))); }},
    {"film of rain from the base of the texture",
     [](Asked& in) {
       const RainOnRoad r = road(in);
       const auto film = film_depth(film_model(in), r);
       return in.answer(film.value_or(metres(0.0)) + r.texture);
     }},
    // Fords.
    {"crossing",
     [](Asked& in) {
       return in.answer(in_words(judge_crossing(vehicle(in), in.of<Length>("depth"), flow(in))));
     }},
    {"crossing, stable to",
     [](Asked& in) { return in.answer(crossing_limits(vehicle(in), flow(in)).stable_to); }},
    {"crossing, afloat at",
     [](Asked& in) { return in.answer(crossing_limits(vehicle(in), flow(in)).afloat_at); }},
    {"deepest water to enter", [](Asked& in) { return in.answer(deepest_to_enter); }},
    {"greatest drag of a puddle", [](Asked& in) { return in.answer(greatest_puddle_drag); }},
    {"deepest puddle measured", [](Asked& in) { return in.answer(deepest_puddle_measured); }},
};

}  // namespace

Checks water_checks() { return {std::begin(checks), std::end(checks)}; }

}  // namespace treadwater::checks
