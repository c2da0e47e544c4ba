// Symbols of the sources and ours: L load, Lmax `greatest`, p `pressure`, pref `law.reference`,
// n `law.exponent`.
#include "core/patch/load_capacity.hpp"

#include <algorithm>
#include <cmath>

#include "core/quantity/power.hpp"

namespace treadwater::patch {
namespace {

// Exponent: P = Pmax (axle load / (2 x greatest tyre load))^1.25 quoted as the European makers'
// formula, with the worked answers 34 and 42 psi, and load scaled by a power of 0.8 in a public
// vehicle-dynamics library. Reference pressures: 2.5 and 2.9 bar in car handbooks.
constexpr Source european{
    "load-pressure-eu", "European load and pressure law, L = Lmax (p/pref)^0.8, 250 and 290 kPa",
    "quoted in handbooks; the makers' manual itself not seen", "", Standing::secondary};
constexpr Source at_marked{"load-pressure-marked",
                           "The same law from the pressure moulded on a commercial tyre",
                           "not seen in print", "", Standing::memory};
constexpr Source spare{"load-pressure-spare",
                       "Temporary spare: 420 kPa; the same law below that pressure",
                       "420 kPa from handbooks, the law below it not seen", "", Standing::memory};
constexpr Source american{
    "load-pressure-us", "P-metric load and pressure, L = Lmax (p/240 kPa)^0.5",
    "The Tire and Rim Association equation, as given in a public FAQ", "2005", Standing::secondary};
constexpr Source light_truck{
    "load-pressure-lt", "LT load and pressure, L = Lmax (p/pref)^0.70",
    "worked out from the table of LT235/85R16 E: 1700, 2205, 2623, 3042 lb at 35, 50, 65, 80 psi",
    "", Standing::secondary};
constexpr Source linear{"load-pressure-linear", "Load in line with pressure, L = Lmax p/pref",
                        "Daws, Tire Society, 2009; the equation as reported by a reader of it",
                        "2009", Standing::secondary};
constexpr Source floor_source{"load-pressure-least",
                              "Least cold pressure of the load laws, 150 kPa", "not seen in print",
                              "", Standing::memory};
constexpr Source dimensions{"p-metric-load", "P-metric load from the dimensions, series 50 to 80",
                            "The Tire and Rim Association equation, as given in a public FAQ",
                            "2005", Standing::secondary};

}  // namespace

LoadLaw european_standard_load() { return {kilopascals(250.0), 0.8, &european}; }
LoadLaw european_extra_load() { return {kilopascals(290.0), 0.8, &european}; }
LoadLaw european_at_marked_pressure(GaugePressure marked) { return {marked, 0.8, &at_marked}; }
LoadLaw temporary_spare_law() { return {kilopascals(420.0), 0.8, &spare}; }
LoadLaw p_metric_standard_load() { return {kilopascals(240.0), 0.5, &american}; }
LoadLaw p_metric_extra_load() { return {kilopascals(280.0), 0.5, &american}; }
LoadLaw light_truck_at_marked_pressure(GaugePressure marked) {
  return {marked, 0.70, &light_truck};
}
LoadLaw linear_at_marked_pressure(GaugePressure marked) { return {marked, 1.0, &linear}; }

GaugePressure least_pressure() { return kilopascals(150.0); }
const Source& least_pressure_source() { return floor_source; }

Mass load_capacity(const LoadLaw& law, Mass greatest, GaugePressure pressure) {
  if (!(pressure >= least_pressure())) return kilograms(0.0);
  return greatest * power(std::min(pressure / law.reference, 1.0), law.exponent);
}

GaugePressure pressure_by_law(const LoadLaw& law, Mass greatest, Mass load) {
  return law.reference * power(load / greatest, 1.0 / law.exponent);
}

GaugePressure pressure_needed(const LoadLaw& law, Mass greatest, Mass load) {
  return std::max(pressure_by_law(law, greatest, load), least_pressure());
}

Mass p_metric_capacity(Length section_width, double aspect_percent, Length rim_diameter,
                       GaugePressure pressure) {
  constexpr double k = 6.67e-5;
  const double sd = (0.34848 + 0.6497 * aspect_percent / 100.0) * in_millimetres(section_width);
  const double dr = std::round(in_millimetres(rim_diameter));
  return kilograms(k * std::sqrt(in_kilopascals(pressure)) * power(sd, 1.39) * (dr + sd));
}

const Source& p_metric_capacity_source() { return dimensions; }

}  // namespace treadwater::patch
