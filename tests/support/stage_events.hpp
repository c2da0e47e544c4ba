// Events for the tests of core/stage: plain kinds of tyre whose figures come out whole.
#pragma once

#include "core/stage/event.hpp"

namespace treadwater::testing {

// A tarmac tyre that loses these seconds a kilometre, dry, damp, wet ..., at 90 km/h (40 s/km), and
// lasts this far in the dry and, twice as far, in any wet.
inline stage::SetKind plain_kind(std::string_view id, const stage::Chances& seconds_per_km,
                                 double life_km, double wet_life_km) {
  stage::SetKind kind;
  kind.id = id;
  kind.label = kind.name = Phrase("invented tyre");
  for (std::size_t w = 0; w < stage::weathers; ++w) {
    const double factor = 1.0 + seconds_per_km[w] / 40.0;
    kind.pace[0][w] = kind.pace[1][w] = {factor, factor, true};
  }
  for (auto& life : kind.life) {
    life.fill(metres(1000.0 * wet_life_km));
    life[0] = metres(1000.0 * life_km);
  }
  kind.new_tread = millimetres(8.0);
  kind.least_tread = millimetres(1.6);
  kind.road_legal = true;
  return kind;
}

inline stage::Stage plain_stage(double km, const stage::Chances& chances,
                                stage::Halt halt = stage::Halt::none) {
  stage::Stage stage;
  stage.length = metres(1000.0 * km);
  stage.average = kilometres_per_hour(90.0);
  stage.chances = chances;
  stage.halt_after = halt;
  return stage;
}

}  // namespace treadwater::testing
