#include "core/words/measure.hpp"

#include "core/words/say.hpp"

namespace treadwater {

std::string say_range(Speed low, Speed high, UnitSystem units) {
  return say("# to #", {write_number(low, units), write(high, units)});
}

std::string say_band(Speed central, Speed low, Speed high, UnitSystem units) {
  return say("# (#)", {write(central, units), say_range(low, high, units)});
}

std::string say_speed_aloud(Speed v, UnitSystem units) {
  return say(
      units == UnitSystem::metric ? Phrase("# kilometres an hour") : Phrase("# miles an hour"),
      {write_number(v, units)});
}

std::string say_hold_to(Speed v, UnitSystem units) {
  return v > Speed() ? write(v, units) : say("walking pace");
}

std::string say_hold_to_aloud(Speed v, UnitSystem units) {
  return v > Speed() ? say_speed_aloud(v, units) : say("walking pace");
}

std::string say_road_distance(const std::string& number, UnitSystem units) {
  return units == UnitSystem::metric ? number + " km" : say("# miles", {number});
}

std::string say_road_distance(Length l, UnitSystem units) {
  return say_road_distance(trimmed(in_road_units(l, units), 1), units);
}

std::string say_chance(double chance) {
  if (chance > 0.0 && chance < hardly_ever) return say("under 1 %");
  if (chance < 1.0 - 1e-9 && chance > 1.0 - hardly_ever) return say("over 99 %");
  return write_share(chance);
}

std::string say_duration(Duration time) {
  const double seconds = in_seconds(time);
  if (seconds < 90.0) return significant(seconds, 2) + " s";
  if (seconds < 5400.0) return significant(seconds / 60.0, 2) + " min";
  if (seconds < 2.0 * 86400.0) return significant(seconds / 3600.0, 2) + " h";
  return say("# days", {significant(seconds / 86400.0, 2)});
}

}  // namespace treadwater
