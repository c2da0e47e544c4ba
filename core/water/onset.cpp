// Symbols of the sources and ours:
//   p    pressure, psi or kPa      SD   spin-down, per cent      WD, WFT  film, in or mm
//   TD   tread, 1/32 in            TXD  texture, in              FAR      footprint width / length
//   WL   wheel load, N             A    the greater of A1 (water alone), A2 (water and texture)
#include "core/water/onset.hpp"

#include <algorithm>
#include <cmath>

#include "core/quantity/power.hpp"

namespace treadwater::water {
namespace {

constexpr Source pressure_only{
    "onset-pressure", "Horne and Dreher, Phenomena of Pneumatic Tire Hydroplaning, NASA TN D-2056",
    "9 sqrt(p) knots = 10.35 sqrt(p) mph, p in psi; equation read as quoted", "1963",
    Standing::secondary};
constexpr Source spin_up{"onset-spin-up", "NASA TM-85652, spin-up speed of a wheel not turning",
                         "7.7 sqrt(p) knots, p in psi; equation read as quoted", "",
                         Standing::secondary};
constexpr Source footprint{"onset-footprint", "W. B. Horne's footprint form, 7.95 sqrt(p/FAR) mph",
                           "see Transportation Research Record 1084; constant not seen in print",
                           "1984", Standing::memory};
constexpr Source truck{"onset-truck", "D. L. Ivey's truck form, 23.3 p^0.21 (1.4/FAR)^0.5 mph",
                       "constants not seen in print", "1984", Standing::memory};
constexpr Source film_formula{
    "onset-film", "Gallaway et al., Criteria for Minimizing Hydroplaning, FHWA-RD-79-31",
    "spin-down, pressure, tread, film and texture; constants read as quoted", "1979",
    Standing::secondary};
constexpr Source design{"onset-design", "NCHRP 1-29 (PAVDRN), hydroplaning speed of a design car",
                        "constants not seen in print; its 24 psi read in FDOT Design Guidance",
                        "1998", Standing::memory};
constexpr Source smooth_tyre{"onset-smooth-tyre", "Gunaratne et al., FDOT BDK84-977-14",
                             "fit to simulated smooth tyres; constants not seen, units inferred",
                             "2012", Standing::memory};

// The deepest water at which the film formulas were checked against print or tests.
constexpr Length deepest_film = millimetres(10.0);

bool film_in_range(const OnsetConditions& c) {
  return c.film >= thinnest_film() && c.film <= deepest_film && c.texture >= millimetres(0.0);
}

// A smooth tyre, or grooves under water.
bool flooded(const OnsetConditions& c) {
  return c.film >= thinnest_film() && c.film >= c.grooves && c.grooves >= millimetres(0.0);
}

bool between(GaugePressure p, double low_kpa, double high_kpa) {
  return p >= kilopascals(low_kpa) && p <= kilopascals(high_kpa);
}

bool footprint_between(const OnsetConditions& c, double low, double high) {
  return c.footprint_aspect_ratio && *c.footprint_aspect_ratio >= low &&
         *c.footprint_aspect_ratio <= high;
}

std::optional<Speed> where(bool applies, Speed speed) {
  return applies ? std::optional(speed) : std::nullopt;
}

constexpr OnsetModel models[] = {
    {Phrase("Pressure alone"), Phrase("smooth tyre or flooded grooves; 135 to 2000 kPa"),
     pressure_only,
     [](const OnsetConditions& c) {
       return where(flooded(c) && between(c.pressure, 135.0, 2000.0),
                    pressure_only_onset(c.pressure));
     }},
    {Phrase("Wheel locked or not yet turning"),
     Phrase("smooth tyre or flooded grooves; 135 to 2000 kPa"), spin_up,
     [](const OnsetConditions& c) {
       return where(flooded(c) && between(c.pressure, 135.0, 2000.0), spin_up_onset(c.pressure));
     }},
    {Phrase("Pressure and footprint"),
     Phrase("smooth tyre or flooded grooves; 135 to 830 kPa; footprint width / length 0.59 to 1.5"),
     footprint,
     [](const OnsetConditions& c) {
       return where(
           flooded(c) && between(c.pressure, 135.0, 830.0) && footprint_between(c, 0.59, 1.5),
           footprint_onset(c.pressure, c.footprint_aspect_ratio.value_or(1.0)));
     }},
    {Phrase("Truck, pressure and footprint"),
     Phrase("heavy trucks; 410 to 830 kPa; footprint width / length 0.8 to 1.5"), truck,
     [](const OnsetConditions& c) {
       return where(c.heavy_truck && flooded(c) && between(c.pressure, 410.0, 830.0) &&
                        footprint_between(c, 0.8, 1.5),
                    truck_onset(c.pressure, c.footprint_aspect_ratio.value_or(1.0)));
     }},
    {Phrase("Film, tread, texture and pressure"),
     Phrase("cars; film 0.5 to 10 mm; 120 to 280 kPa; tread up to 8.5 mm"), film_formula,
     [](const OnsetConditions& c) {
       return where(!c.heavy_truck && film_in_range(c) && between(c.pressure, 120.0, 280.0) &&
                        c.grooves >= millimetres(0.0) && c.grooves <= millimetres(8.5),
                    film_onset({c.pressure, c.grooves, c.film, c.texture}));
     }},
    {Phrase("Road designer's car"),
     Phrase("cars; film 0.5 to 10 mm; 165 kPa and up; 2.4 mm of tread and up"), design,
     [](const OnsetConditions& c) {
       return where(!c.heavy_truck && film_in_range(c) && c.pressure >= kilopascals(165.0) &&
                        c.grooves >= millimetres(2.4),
                    design_onset(c.film, c.texture));
     }},
    {Phrase("Smooth tyre, load and film"),
     Phrase("smooth tyre or flooded grooves; film 0.5 to 10 mm; 165 to 250 kPa; 2400 to 4800 N"),
     smooth_tyre,
     [](const OnsetConditions& c) {
       const Force load = c.wheel_load.value_or(newtons(0.0));
       return where(flooded(c) && film_in_range(c) && between(c.pressure, 165.0, 250.0) &&
                        load >= newtons(2400.0) && load <= newtons(4800.0),
                    smooth_tyre_onset(load, c.pressure, c.film));
     }},
};

double held_inches(Length l) { return in_inches(std::max(l, thinnest_film())); }

}  // namespace

Speed pressure_only_onset(GaugePressure pressure) {
  return miles_per_hour(10.35 * std::sqrt(in_psi(pressure)));
}

Speed spin_up_onset(GaugePressure pressure) { return knots(7.7 * std::sqrt(in_psi(pressure))); }

Speed footprint_onset(GaugePressure pressure, double footprint_aspect_ratio) {
  return miles_per_hour(7.95 * std::sqrt(in_psi(pressure) / footprint_aspect_ratio));
}

Speed truck_onset(GaugePressure pressure, double footprint_aspect_ratio) {
  return miles_per_hour(23.3 * power(in_psi(pressure), 0.21) *
                        std::sqrt(1.4 / footprint_aspect_ratio));
}

double film_tyre_factor(GaugePressure pressure, Length tread, double spin_down_percent) {
  return power(spin_down_percent, 0.04) * power(in_psi(pressure), 0.3) *
         power(in_thirty_seconds(tread) + 1.0, 0.06);
}

double film_water_factor(Length film, Length texture) {
  const double wd = power(held_inches(film), 0.06);
  const double a1 = 10.409 / wd + 3.507;
  const double a2 = (28.952 / wd - 7.817) * power(in_inches(texture), 0.14);
  return std::max(a1, a2);
}

Speed film_onset(const FilmConditions& c) {
  return miles_per_hour(film_tyre_factor(c.pressure, c.tread, c.spin_down_percent) *
                        film_water_factor(c.film, c.texture));
}

Length thinnest_film() { return millimetres(0.5); }

Speed design_onset(Length film, Length texture) {
  constexpr Length join = inches(0.095);
  if (film < join) return miles_per_hour(26.04 * power(held_inches(film), -0.259));
  return miles_per_hour(3.09 * film_water_factor(film, texture));
}

Speed smooth_tyre_onset(Force wheel_load, GaugePressure pressure, Length film) {
  const double wd = power(in_millimetres(std::max(film, thinnest_film())), 0.06);
  return kilometres_per_hour(power(in_newtons(wheel_load), 0.2) *
                             std::sqrt(in_kilopascals(pressure)) * (0.82 / wd + 0.49));
}

OnsetModels onset_models() { return {std::begin(models), std::end(models)}; }

const Source& pressure_only_source() { return pressure_only; }
const Source& spin_up_source() { return spin_up; }
const Source& footprint_source() { return footprint; }
const Source& truck_source() { return truck; }
const Source& film_source() { return film_formula; }
const Source& design_source() { return design; }
const Source& smooth_tyre_source() { return smooth_tyre; }

}  // namespace treadwater::water
