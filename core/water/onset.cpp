// Symbols of FHWA-RD-79-31 and ours: SD spin_down_percent, p pressure (psi), TD tread (1/32 in),
// WD film (in), TXD texture (in), A the greater of A1 (water alone) and A2 (water and texture).
#include "core/water/onset.hpp"

#include <algorithm>
#include <cmath>

namespace treadwater::water {
namespace {

constexpr Source pressure_only{
    "onset-pressure", "Horne and Dreher, Phenomena of Pneumatic Tire Hydroplaning, NASA TN D-2056",
    "9 sqrt(p) knots = 10.35 sqrt(p) mph, p in psi; equation read as quoted", "1963",
    Standing::secondary};
constexpr Source footprint{"onset-footprint", "W. B. Horne's footprint form, 7.95 sqrt(p/FAR) mph",
                           "see Transportation Research Record 1084; constant not seen in print",
                           "1984", Standing::memory};
constexpr Source film{"onset-film",
                      "Gallaway et al., Criteria for Minimizing Hydroplaning, FHWA-RD-79-31",
                      "spin-down, pressure, tread, film and texture; constants read as quoted",
                      "1979", Standing::secondary};

}  // namespace

Speed pressure_only_onset(GaugePressure pressure) {
  return miles_per_hour(10.35 * std::sqrt(in_psi(pressure)));
}

Speed footprint_onset(GaugePressure pressure, double footprint_aspect_ratio) {
  return miles_per_hour(7.95 * std::sqrt(in_psi(pressure) / footprint_aspect_ratio));
}

Speed film_onset(const FilmConditions& c) {
  const double wd = std::pow(in_inches(std::max(c.film, thinnest_film())), 0.06);
  const double a1 = 10.409 / wd + 3.507;
  const double a2 = (28.952 / wd - 7.817) * std::pow(in_inches(c.texture), 0.14);
  return miles_per_hour(std::pow(c.spin_down_percent, 0.04) * std::pow(in_psi(c.pressure), 0.3) *
                        std::pow(in_thirty_seconds(c.tread) + 1.0, 0.06) * std::max(a1, a2));
}

Length thinnest_film() { return millimetres(0.5); }

const Source& pressure_only_source() { return pressure_only; }
const Source& footprint_source() { return footprint; }
const Source& film_source() { return film; }

}  // namespace treadwater::water
