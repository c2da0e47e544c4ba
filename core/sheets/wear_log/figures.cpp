#include "core/sheets/wear_log/figures.hpp"

#include <algorithm>

#include "core/words/measure.hpp"

namespace treadwater::sheets::wear_log {
namespace {

constexpr double far_away = 10.0 * wear::days_a_year;  // no date is given beyond this
constexpr double road_units = 10000.0;                 // the distance a rate is given for

// A rate over so much of its unit.
void tell_rate(const char* id, Text label, const wear::Rate& rate, double over, const char* unit,
               AnswerBuilder& answer) {
  const auto lost = [&](Length per_unit) { return std::max(per_unit * over, Length()); };
  const auto text = [&](Length length) { return write_worn(length, answer.units()); };
  const Length central = lost(rate.per_unit), low = lost(rate.low), high = lost(rate.high);
  answer.figure(id, std::move(label), in_millimetres(central), unit,
                say("# (# to #)", {text(central), text(low), text(high)}), {&wear::slope_source()},
                Phrase("The band is ours: the spread of the readings and the gauge's error."),
                AnswerBuilder::Band{in_millimetres(low), in_millimetres(high)});
}

void tell_rates(const judge::LoggedTyre& tyre, const wear::Wear& wear, AnswerBuilder& answer) {
  const UnitSystem units = answer.units();
  if (wear.by_day)
    tell_rate("rate_by_time", say("#: wear a year", {tyre.name()}), *wear.by_day, wear::days_a_year,
              "mm/year", answer);
  if (!wear.by_distance) return;
  tell_rate(
      "rate_by_distance",
      say(by_road_unit(units, Phrase("#: wear in 10 000 km"), Phrase("#: wear in 10 000 miles")),
          {tyre.name()}),
      *wear.by_distance, road_units * in_kilometres(road_unit(units)), "mm/10 000 km", answer);
}

std::string month_or_later(const std::optional<double>& day, double now) {
  if (!day || *day >= now + far_away) return say("years away");
  const std::string month = say_month_of(static_cast<long>(*day));
  return *day < now ? say("# (past)", {month}) : month;
}

// By distance alone, where the readings are of one day; nothing if it never comes down.
std::optional<std::string> how_far_until(const wear::Rate& rate, Length depth, UnitSystem units) {
  const wear::Until far = wear::until(rate, depth);
  if (!far.central || !far.earliest) return std::nullopt;
  const auto more = [&](double kilometre) {
    return in_road_units(kilometres(kilometre - rate.zero), units);
  };
  return say("about # more, # at least",
             {say_road_distance(significant(more(*far.central), 2), units),
              significant(more(*far.earliest), 2)});
}

// By day, and by distance if known.
std::string when_it_is_down(const wear::Wear& wear, Length depth, double now, UnitSystem units) {
  const wear::Until by_day = wear::until(*wear.by_day, depth);
  const std::string central = month_or_later(by_day.central, now);
  const std::string earliest = month_or_later(by_day.earliest, now);
  const wear::Until far = wear.by_distance ? wear::until(*wear.by_distance, depth) : wear::Until();
  if (!far.central || !far.earliest) return say("#, from # on", {central, earliest});
  const auto more = [&](double kilometre) {
    return in_road_units(kilometres(kilometre - wear.by_distance->zero), units);
  };
  return say("#, from # on; about # more, # at least",
             {central, earliest, say_road_distance(significant(more(*far.central), 2), units),
              significant(more(*far.earliest), 2)});
}

void tell_until(const judge::LoggedTyre& tyre, const wear::Wear& wear,
                const judge::DepthAhead& ahead, double now, AnswerBuilder& answer) {
  if (wear.by_day->from_there <= ahead.depth) return;
  const UnitSystem units = answer.units();
  const auto day = wear::until(*wear.by_day, ahead.depth).central;
  answer.figure("until", say("#: down to #", {tyre.name(), write_depth(ahead.depth, units)}),
                (day ? *day - now : far_away) / wear::days_a_month, "months",
                when_it_is_down(wear, ahead.depth, now, units),
                {ahead.source, &wear::slope_source()});
}

void tell_distance_until(const judge::LoggedTyre& tyre, const wear::Rate& rate,
                         const judge::DepthAhead& ahead, AnswerBuilder& answer) {
  const UnitSystem units = answer.units();
  const auto text = how_far_until(rate, ahead.depth, units);
  if (!text || rate.from_there <= ahead.depth) return;
  const double at = *wear::until(rate, ahead.depth).central;
  answer.figure("until_distance",
                say("#: down to #", {tyre.name(), write_depth(ahead.depth, units)}), at - rate.zero,
                "km", *text, {ahead.source, &wear::slope_source()});
}

}  // namespace

void tell_wear(const judge::LoggedTyre& tyre, const wear::Wear& wear, const standard::TreadLaw* law,
               standard::Date today, AnswerBuilder& answer) {
  tell_rates(tyre, wear, answer);
  if (law == nullptr) return;
  if (!wear.by_day && wear.by_distance)
    for (const judge::DepthAhead& ahead : judge::depths_ahead(*law))
      tell_distance_until(tyre, *wear.by_distance, ahead, answer);
  if (!wear.by_day || !(wear.by_day->per_unit > Length())) return;
  const auto now = static_cast<double>(standard::days_since_1970(today));
  for (const judge::DepthAhead& ahead : judge::depths_ahead(*law))
    tell_until(tyre, wear, ahead, now, answer);
}

}  // namespace treadwater::sheets::wear_log
