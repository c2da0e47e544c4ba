// What changes a tyre's maximum load besides speed above 210 km/h (speed_load.hpp): camber, towing,
// trailers, twin wheels, and the tables for commercial and motorcycle tyres.
//
// Loads are per cent of the mass of the load index. Sources and their standing are in
// load_adjustment.cpp, each with its own function here. Three tables are from memory: low speed,
// commercial and motor-cycle. They may lower the load in an answer, never raise it. Range: as given
// at each; outside it, and for NaN, nothing is returned.
#pragma once

#include <optional>

#include "core/standard/speed_symbol.hpp"

namespace treadwater::standard {

// ---- camber ----

// Share of the load at a camber either way: 1 up to 2 degrees, then in line to 0.90 at 4. Printed
// as a further cut above 210 km/h, beside the one for V, W and Y. Nothing beyond 4 degrees, nor
// beyond 3 on a car that exceeds 270 km/h.
std::optional<double> camber_load_factor(double degrees, Speed car_top_speed);
// The factor on the cold pressure instead, at the same load: factor^-1.25. From memory.
std::optional<double> camber_pressure_factor(double degrees, Speed car_top_speed);
const Source& camber_source();
const Source& camber_pressure_source();

// ---- towing and trailers ----

// More load at a lower speed and, in two of them, more pressure than is normal for the tyre.
struct Allowance {
  double percent;
  Speed at_most;
  GaugePressure at_least_more;
  const Source* source;
  constexpr Mass of(Mass rated) const { return rated * (percent / 100.0); }
};
// The rear tyres (class C1) of a car or van with a trailer's load on its coupling, where the
// handbook provides for it.
Allowance towing_rear_tyre();
// On a trailer that never exceeds this speed: a car tyre, and a C tyre of symbol L or higher.
Allowance car_tyre_on_trailer();
Allowance commercial_tyre_on_trailer();

// US trailer tyres (ST) without a speed symbol: 65 mph; to 75 mph with 10 psi more; to 85 mph with
// 10 psi more and a tenth less load.
std::optional<Allowance> us_trailer_tyre(Speed speed);

// An axle: two single tyres, or four twinned ones at the twin load index.
constexpr Mass single_axle(Mass single) { return single * 2.0; }
constexpr Mass twin_axle(Mass twin) { return twin * 4.0; }
// Two car tyres side by side, which have no twin index, carry 1.85 times one.
inline constexpr double twinned_car_tyres = 1.85;
const Source& twinned_car_tyres_source();
// US: the rating of a car tyre on a truck, bus, trailer or multi-purpose vehicle is divided by
// this.
inline constexpr double us_car_tyre_on_truck_divisor = 1.10;
const Source& us_car_tyre_on_truck_source();

// ---- tables from memory ----

// Car tyres held to 60, 50, 40, 30, 25 km/h: 110, 115, 125, 135, 142; 100 above 60.
std::optional<double> low_speed_percent(Speed not_over);
const Source& low_speed_source();

// UN R54 Annex 8: symbols F to M from load index 122, L to P up to 121. Between rows 5 km/h apart
// the next row applies. The table goes on above a symbol's own speed, where the load falls fast;
// this tool never uses that part. Nothing past a column's last row, or for other symbols.
std::optional<double> commercial_percent(int load_index, SpeedSymbol symbol, Speed speed);
const Source& commercial_source();

// UN R75: V 95, 90, 85 at 220, 230, 240; W 95, 85, 75 at 250, 260, 270; between rows the next row.
// Other symbols 100 up to their speed; nothing above it.
std::optional<double> motorcycle_percent(SpeedSymbol symbol, Speed speed);
const Source& motorcycle_source();

// Per cent of the load index's mass that a tyre of this vehicle may carry at this speed: the cars'
// table (speed_load.hpp), and for a motorcycle's the lower of that and its own. Nothing above the
// symbol's speed.
enum class Vehicle { car, motorcycle };
std::optional<double> percent_at_speed(Vehicle vehicle, SpeedSymbol symbol, Speed speed);

// ---- motor-cycle measuring pressures ----

// Pressures at which sizes are measured; not riding pressures. ISO 5751-2 5.2.
enum class MotorcycleLoad { light, normal, extra };
GaugePressure motorcycle_measuring_pressure(MotorcycleLoad load, SpeedSymbol symbol);
const Source& motorcycle_measuring_source();

}  // namespace treadwater::standard
