#include "core/words/measure.hpp"

#include <cmath>

#include "core/words/say.hpp"

namespace treadwater {
namespace {

using Digits = std::string (*)(double value, int digits);

std::string duration(Duration time, Digits digits) {
  const double seconds = in_seconds(time);
  if (seconds < 90.0) return digits(seconds, 2) + " s";
  if (seconds < 5400.0) return digits(seconds / 60.0, 2) + " min";
  if (seconds < 2.0 * 86400.0) return digits(seconds / 3600.0, 2) + " h";
  return say("# days", {digits(seconds / 86400.0, 2)});
}

std::string road_distance(Length way, UnitSystem units, Digits digits) {
  return say_road_distance(digits(in_road_units(way, units), 2), units);
}

}  // namespace

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

std::string say_distance_band(Length central, Length shortest, Length longest, UnitSystem units) {
  return say("# (# to #)",
             {write_estimated_distance(central, units), write_estimated_number(shortest, units),
              write_longest_distance(longest, units)});
}

Phrase by_road_unit(UnitSystem units, Phrase in_kilometres, Phrase in_miles) {
  return units == UnitSystem::metric ? in_kilometres : in_miles;
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

Phrase turns_on_the_road(UnitSystem units) {
  return units == UnitSystem::metric ? Phrase("Turns a kilometre") : Phrase("Turns a mile");
}

std::string say_road_distance(Length way, UnitSystem units) {
  return road_distance(way, units, significant);
}

std::string say_road_distance_at_most(Length way, UnitSystem units) {
  return road_distance(way, units, significant_at_most);
}

std::string say_road_distance_at_least(Length way, UnitSystem units) {
  return road_distance(way, units, significant_at_least);
}

std::string say_odometer(Length way, UnitSystem units) {
  const double whole = std::round(in_road_units(way, units));
  const std::string number = fixed(whole, 0);
  return units == UnitSystem::metric ? number + " km"
                                     : plural("# mile", "# miles", whole, {number});
}

std::string say_duration(Duration time) { return duration(time, significant); }
std::string say_duration_at_most(Duration time) { return duration(time, significant_at_most); }

std::string say_month(int month, int year) {
  constexpr Phrase names[] = {Phrase("January"), Phrase("February"), Phrase("March"),
                              Phrase("April"),   Phrase("May"),      Phrase("June"),
                              Phrase("July"),    Phrase("August"),   Phrase("September"),
                              Phrase("October"), Phrase("November"), Phrase("December")};
  return say("# #", {names[month - 1], std::to_string(year)});
}

std::string say_stage_length(Length l, UnitSystem units) {
  return say_road_distance(trimmed(in_road_units(l, units), 1), units);
}

std::string say_chance(double chance) {
  if (chance > 0.0 && chance < hardly_ever) return say("under 1 %");
  if (chance < 1.0 - 1e-9 && chance > 1.0 - hardly_ever) return say("over 99 %");
  return write_share(chance);
}

}  // namespace treadwater
