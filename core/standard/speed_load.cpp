#include "core/standard/speed_load.hpp"

#include <algorithm>

namespace treadwater::standard {
namespace {

constexpr Source load_source{
    "speed-load", "Load percentage above 210, 240 and 270 km/h for V, W and Y",
    "rule of UN R30, printed in Crolla (ed.), Automotive Engineering, fig. 10.1-14", "2009",
    Standing::secondary};
constexpr Source pressure_source{"speed-pressure", "Cold pressure to add for sustained speed",
                                 "Crolla (ed.), Automotive Engineering, p. 291", "2009",
                                 Standing::secondary};

struct Line {
  SpeedSymbol symbol;
  double full_to_kmh;
  double percent_per_kmh;
};

// V 97, 94, 91 at 220, 230, 240; W 95, 90, 85 at 250, 260, 270; Y 95, 90, 85 at 280, 290, 300.
constexpr Line lines[] = {
    {SpeedSymbol::V, 210.0, 0.3},
    {SpeedSymbol::W, 240.0, 0.5},
    {SpeedSymbol::Y, 270.0, 0.5},
};

double ramp(double value, double from, double to, double height) {
  return height * std::clamp((value - from) / (to - from), 0.0, 1.0);
}

}  // namespace

std::optional<double> load_percent(SpeedSymbol symbol, Speed speed) {
  if (!(speed <= speed_row(symbol).speed)) return std::nullopt;
  for (const Line& line : lines)
    if (line.symbol == symbol)
      return 100.0 -
             line.percent_per_kmh * std::max(0.0, in_kilometres_per_hour(speed) - line.full_to_kmh);
  return 100.0;
}

GaugePressure pressure_for_speed(SpeedSymbol symbol, Speed speed) {
  const double kmh = in_kilometres_per_hour(speed);
  const double printed = ramp(kmh, 160.0, 210.0, 30.0);
  if (symbol == SpeedSymbol::W)
    return kilopascals(std::max(printed, ramp(kmh, 190.0, 240.0, 50.0)));
  if (symbol == SpeedSymbol::Y)
    return kilopascals(std::max(printed, ramp(kmh, 220.0, 270.0, 50.0)));
  return kilopascals(printed);
}

const Source& speed_load_source() { return load_source; }
const Source& speed_pressure_source() { return pressure_source; }

}  // namespace treadwater::standard
