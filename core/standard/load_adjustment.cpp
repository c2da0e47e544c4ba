// Symbols: f share of the load left by camber.
#include "core/standard/load_adjustment.hpp"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <iterator>

#include "core/quantity/power.hpp"
#include "core/standard/speed_load.hpp"

namespace treadwater::standard {
namespace {

constexpr Source camber{"camber-load", "Camber: 100 % of the load to 2 degrees, 90 % at 4",
                        "printed for speeds over 210 km/h in an Austrian tyre page", "",
                        Standing::secondary};
constexpr Source camber_pressure{"camber-pressure", "Pressure rise for camber, factor^-1.25",
                                 "2.1 to 14.1 % between 2 and 4 degrees; not seen in print", "",
                                 Standing::memory};
constexpr Source towing{"towing", "Regulation (EU) 458/2011, Annex II 5.2 (now UN R142)",
                        "quoted in full in German: rear C1 tyres 15 % over, 100 km/h, 20 kPa more",
                        "2011", Standing::secondary};
constexpr Source trailer{"trailer-100", "German tyre trade guideline 195, trailers to 100 km/h",
                         "car tyres 110 % with 0.2 bar more, C tyres 105 %", "",
                         Standing::secondary};
constexpr Source us_trailer{"trailer-us", "Speed of special trailer tyres without a symbol",
                            "The Tire and Rim Association, quoted in a users' forum", "",
                            Standing::secondary};
constexpr Source twins{"twinned-car-tyres", "Two car tyres twinned carry 1.85 times one",
                       "a German trailer maker's load index page", "", Standing::secondary};
constexpr Source on_truck{"us-car-tyre-on-truck", "FMVSS 120 S5.1.2: load rating divided by 1.10",
                          "quoted in an interpretation by the agency", "1976", Standing::secondary};
constexpr Source low_speed{"low-speed-load", "UN R30, car tyres at 60 km/h and less",
                           "percentages not seen in print", "", Standing::memory};
constexpr Source commercial{"speed-load-commercial", "UN R54 Annex 8, load against speed",
                            "annex not seen; 105 % at 100 km/h printed for C tyres", "",
                            Standing::memory};
constexpr Source motorcycle{"speed-load-motorcycle", "UN R75 Annex 8, V and W", "not seen in print",
                            "", Standing::memory};
constexpr Source measuring{"motorcycle-measuring", "ISO 5751-2, clause 5.2",
                           "measuring pressures of motor-cycle tyres", "2010", Standing::published};

// Quarters of a per cent above the load index's mass, at 0, 5, 10 ... km/h.
constexpr std::int16_t heavy[] = {600, 440, 320, 260, 200, 140, 100, 76, 60, 52, 48, 44, 40, 34,
                                  28,  22,  16,  12,  8,   4,   0,   0,  0,  0,  0,  0,  0};
constexpr std::int16_t light[] = {440, 360, 300, 240, 200, 168, 140, 116, 100, 88, 80, 70, 60,
                                  54,  50,  44,  40,  34,  30,  26,  20,  15,  10, 5,  0};

// Where a symbol of load index 122 and more leaves the common column, and its cells from there.
struct Tail {
  SpeedSymbol symbol;
  int from;  // row
  int rows;
  std::int16_t cells[8];
};
constexpr Tail tails[] = {
    {SpeedSymbol::F, 13, 8, {30, 20, 10, 0, -12, -24, -40, -60}},
    {SpeedSymbol::G, 17, 6, {8, 0, -10, -20, -32, -52}},
    {SpeedSymbol::J, 21, 4, {-8, -16, -28, -48}},
    {SpeedSymbol::K, 23, 2, {-12, -28}},
    {SpeedSymbol::L, 25, 0, {}},
    {SpeedSymbol::M, 27, 0, {}},
};
// Up to 121: half a per cent less for every km/h above the symbol's speed, to these rows.
struct Reach {
  SpeedSymbol symbol;
  int last;
};
constexpr Reach reaches[] = {
    {SpeedSymbol::L, 28}, {SpeedSymbol::M, 30}, {SpeedSymbol::N, 32}, {SpeedSymbol::P, 32}};

std::optional<double> quarters(SpeedSymbol symbol, bool is_heavy, int row) {
  if (is_heavy) {
    for (const Tail& t : tails)
      if (t.symbol == symbol && row < t.from + t.rows)
        return row < t.from ? heavy[row] : t.cells[row - t.from];
    return std::nullopt;
  }
  for (const Reach& r : reaches)
    if (r.symbol == symbol && row <= r.last) {
      if (row < static_cast<int>(std::size(light))) return light[row];
      return -2.0 * std::max(0.0, 5.0 * row - in_kilometres_per_hour(speed_row(symbol).speed));
    }
  return std::nullopt;
}

constexpr bool running(Speed v) {
  return v >= kilometres_per_hour(0.0) && v <= kilometres_per_hour(500.0);
}

}  // namespace

std::optional<double> camber_load_factor(double degrees, Speed car_top_speed) {
  const double tilt = std::fabs(degrees);
  const bool very_fast = !(car_top_speed <= kilometres_per_hour(270.0));
  if (!(tilt <= (very_fast ? 3.0 : 4.0))) return std::nullopt;
  return 1.0 - 0.05 * std::max(0.0, tilt - 2.0);
}

std::optional<double> camber_pressure_factor(double degrees, Speed car_top_speed) {
  const auto f = camber_load_factor(degrees, car_top_speed);
  return f ? std::optional<double>(power(*f, -1.25)) : std::nullopt;
}

Allowance towing_rear_tyre() {
  return {115.0, kilometres_per_hour(100.0), kilopascals(20.0), &towing};
}
Allowance car_tyre_on_trailer() {
  return {110.0, kilometres_per_hour(100.0), kilopascals(20.0), &trailer};
}
Allowance commercial_tyre_on_trailer() {
  return {105.0, kilometres_per_hour(100.0), kilopascals(0.0), &trailer};
}

std::optional<Allowance> us_trailer_tyre(Speed speed) {
  const Allowance steps[] = {{100.0, miles_per_hour(65.0), psi(0.0), &us_trailer},
                             {100.0, miles_per_hour(75.0), psi(10.0), &us_trailer},
                             {90.0, miles_per_hour(85.0), psi(10.0), &us_trailer}};
  for (const Allowance& step : steps)
    if (speed <= step.at_most) return step;
  return std::nullopt;
}

std::optional<double> low_speed_percent(Speed not_over) {
  if (!running(not_over)) return std::nullopt;
  constexpr struct {
    double kmh, percent;
  } rows[] = {{25, 142}, {30, 135}, {40, 125}, {50, 115}, {60, 110}};
  for (const auto& row : rows)
    if (in_kilometres_per_hour(not_over) <= row.kmh) return row.percent;
  return 100.0;
}

std::optional<double> commercial_percent(int load_index, SpeedSymbol symbol, Speed speed) {
  if (!running(speed)) return std::nullopt;
  const int row = static_cast<int>(std::ceil(in_kilometres_per_hour(speed) / 5.0));
  const auto change = quarters(symbol, load_index >= 122, row);
  return change ? std::optional<double>(100.0 + *change / 4.0) : std::nullopt;
}

std::optional<double> motorcycle_percent(SpeedSymbol symbol, Speed speed) {
  if (!running(speed) || speed > speed_row(symbol).speed) return std::nullopt;
  const double kmh = in_kilometres_per_hour(speed);
  if (symbol == SpeedSymbol::V) return 100.0 - 5.0 * std::ceil(std::max(0.0, kmh - 210.0) / 10.0);
  if (symbol == SpeedSymbol::W && kmh > 240.0)
    return kmh <= 250.0 ? 95.0 : kmh <= 260.0 ? 85.0 : 75.0;
  return 100.0;
}

std::optional<double> percent_at_speed(Vehicle vehicle, SpeedSymbol symbol, Speed speed) {
  const auto percent = load_percent(symbol, speed);
  if (vehicle == Vehicle::car || !percent) return percent;
  const auto own = motorcycle_percent(symbol, speed);
  return own ? std::optional<double>(std::min(*percent, *own)) : std::nullopt;
}

GaugePressure motorcycle_measuring_pressure(MotorcycleLoad load, SpeedSymbol symbol) {
  const Speed speed = speed_row(symbol).speed;
  if (load == MotorcycleLoad::light) return kilopascals(175.0);
  if (load == MotorcycleLoad::normal)
    return kilopascals(speed <= speed_row(SpeedSymbol::S).speed ? 225.0 : 280.0);
  return kilopascals(speed <= speed_row(SpeedSymbol::P).speed ? 280.0 : 330.0);
}

const Source& camber_source() { return camber; }
const Source& camber_pressure_source() { return camber_pressure; }
const Source& twinned_car_tyres_source() { return twins; }
const Source& us_car_tyre_on_truck_source() { return on_truck; }
const Source& low_speed_source() { return low_speed; }
const Source& commercial_source() { return commercial; }
const Source& motorcycle_source() { return motorcycle; }
const Source& motorcycle_measuring_source() { return measuring; }

}  // namespace treadwater::standard
