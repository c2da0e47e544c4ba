#include "core/sheets/standing_water/charts.hpp"

#include <algorithm>
#include <cmath>

#include "core/sheets/standing_water/figures.hpp"

namespace treadwater::sheets::standing_water {
namespace {

using judge::Onset;
using judge::TyreThrough;
using judge::WaterAcross;

Axis speed_axis(UnitSystem units) {
  return {Phrase("Speed"), std::string(shown(Speed(), units).unit)};
}
Axis water_axis(UnitSystem units) {
  return {Phrase("Depth of water"), std::string(shown_water(Length(), units).unit)};
}
Axis tread_axis(UnitSystem units) {
  return {Phrase("Tread depth"), std::string(shown_depth(Length(), units).unit)};
}

// Films evenly spaced over the depths drawn: up to half as much again as there is, at least 10 mm;
// on a road that is only wet up to 4 mm.
std::vector<Length> films_to_draw(Length depth, int steps) {
  const Length deepest =
      depth < water::puddle ? millimetres(4.0)
                            : std::min(millimetres(60.0), std::max(millimetres(10.0), depth * 1.5));
  std::vector<Length> films;
  for (int step = 1; step <= steps; ++step)
    films.push_back(deepest * (step / static_cast<double>(steps)));
  return films;
}

Text write_onset(Speed onset, UnitSystem units) {
  const auto speed = water::told(onset);
  return speed ? Text(write(*speed, units)) : Text(Phrase("none"));
}

std::string say_range_of_water(const water::Water& water, UnitSystem units) {
  return say("# to #", {write_water(water.shallow(), units), write_water(water.deep(), units)});
}

// With its band, and a row of the table for every other depth.
void draw_worst(const TyreThrough& worst, const WaterAcross& water,
                const std::vector<Length>& films, UnitSystem units, Chart& chart) {
  Series series{"subject", name(worst, units), {}, {}, {}, {}};
  for (std::size_t i = 0; i < films.size(); ++i) {
    water::WetTyre tyre = worst.on(*water.surface);
    tyre.film = films[i];
    const auto onset = water::aquaplaning_onset(tyre);
    if (!onset) continue;
    series.x.push_back(shown_water(films[i], units).value);
    series.y.push_back(shown(drawn(onset->central), units).value);
    series.low.push_back(shown(drawn(onset->low), units).value);
    series.high.push_back(shown(drawn(onset->high), units).value);
    if (i % 2 == 1 || i == 0)
      chart.table.rows.push_back({write_water(films[i], units), write_onset(onset->low, units),
                                  write_onset(onset->central, units),
                                  write_onset(onset->high, units)});
  }
  chart.series.push_back(std::move(series));
}

void draw_other(const water::WetTyre& tyre, Text label, const std::vector<Length>& films,
                UnitSystem units, Chart& chart) {
  Series series{"reference", std::move(label), {}, {}, {}, {}};
  const std::vector<Speed> onsets = water::onset_map(tyre, {tyre.tread}, films);
  for (std::size_t i = 0; i < onsets.size(); ++i) {
    series.x.push_back(shown_water(films[i], units).value);
    series.y.push_back(shown(drawn(onsets[i]), units).value);
  }
  chart.series.push_back(std::move(series));
}

ChartMark you_are_here(double x, double y) { return {x, y, Phrase("You are here")}; }

}  // namespace

Chart onset_by_depth(const TyreThrough& worst, const WaterAcross& water, UnitSystem units) {
  Chart chart;
  chart.id = "onset";
  chart.title = Phrase("Where it floats, by depth of water");
  chart.text = say("The worst tyre here (#) with its band, and others of the same pressure.",
                   {name(worst, units)});
  chart.x = water_axis(units);
  chart.y = speed_axis(units);
  chart.table.columns = {Phrase("Water"), Phrase("Low"), Phrase("Estimate"), Phrase("High")};
  const std::vector<Length> films = films_to_draw(water.depth(), 6);
  draw_worst(worst, water, films, units, chart);
  const struct {
    Text label;
    Length tread;
    double credit;
  } others[] = {{Phrase("New, 8 mm"), millimetres(8.0), 1.0},
                {std::string("3 mm"), millimetres(3.0), 1.0},
                {std::string("1.6 mm"), millimetres(1.6), 1.0},
                {Phrase("Slick"), Length(), 0.0}};
  for (const auto& other : others) {
    water::WetTyre tyre = worst.on(*water.surface);
    tyre.tread = other.tread;
    tyre.groove_credit = other.credit;
    draw_other(tyre, other.label, films, units, chart);
  }
  chart.marks = {you_are_here(shown_water(worst.onset->tyre.film.middle(), units).value,
                              shown(drawn(worst.onset->band.central), units).value)};
  return chart;
}

std::optional<Chart> chance_by_speed(const TyreThrough& worst, std::optional<Speed> intended,
                                     UnitSystem units) {
  const Onset& onset = *worst.onset;
  const water::OnsetDraws draws(onset.tyre);
  if (!water::told(draws.at_share(0.0))) return std::nullopt;  // none aquaplanes
  Chart chart;
  chart.id = "chance";
  chart.title = Phrase("Chance of floating, by speed");
  chart.text = say("The share of 20 160 draws in which the worst tyre here floats in #.",
                   {onset.by_word ? say_range_of_water(onset.tyre.film, units)
                                  : write_water(onset.tyre.film.deep(), units)});
  chart.x = speed_axis(units);
  chart.y = {Phrase("Chance"), std::string("%")};
  chart.table.columns = {Phrase("Speed"), Phrase("Chance")};
  const auto percent = [&](Speed speed) { return 100.0 * draws.chance_of_floating(speed); };
  const auto in_fives = [&](double share) {
    return shown(drawn(draws.at_share(share)), units).value / 5.0;
  };
  Series series{"subject", name(worst, units), {}, {}, {}, {}};
  const double last = 5.0 * std::ceil(in_fives(1.0));
  for (double v = 5.0 * std::floor(in_fives(0.0)); v <= last; v += 2.5) {
    const Speed speed = speed_shown_as(v, units);
    series.x.push_back(v);
    series.y.push_back(percent(speed));
    if (std::fmod(v, 10.0) == 0.0)
      chart.table.rows.push_back({write(speed, units), say("# %", {fixed(percent(speed), 0)})});
  }
  chart.series.push_back(std::move(series));
  if (intended)
    chart.marks = {
        {shown(*intended, units).value, percent(*intended), Phrase("The speed you intend")}};
  return chart;
}

Map tread_against_water(const TyreThrough& worst, const WaterAcross& water, UnitSystem units) {
  Map map;
  map.id = "tread_and_water";
  map.title = Phrase("Tread against water");
  map.text = Phrase(
      "Our central estimate of the onset for this kind of tyre at this pressure; the hold-to speed "
      "is lower.");
  map.x = water_axis(units);
  map.y = tread_axis(units);
  map.value = speed_axis(units);
  const std::vector<Length> films = films_to_draw(water.depth(), 24);
  std::vector<Length> treads;
  for (int i = 0; i <= 16; ++i) treads.push_back(millimetres(0.5 * i));
  for (const Length film : films) map.xs.push_back(shown_water(film, units).value);
  for (const Length tread : treads) map.ys.push_back(shown_depth(tread, units).value);
  const std::vector<Speed> onsets = water::onset_map(worst.on(*water.surface), treads, films);
  for (std::size_t row = 0; row < treads.size(); ++row) {
    map.values.emplace_back();
    for (std::size_t column = 0; column < films.size(); ++column)
      map.values.back().push_back(
          std::floor(shown(drawn(onsets[row * films.size() + column]), units).value));
  }
  map.marks = {you_are_here(shown_water(worst.onset->tyre.film.middle(), units).value,
                            shown_depth(worst.tread, units).value)};
  return map;
}

}  // namespace treadwater::sheets::standing_water
