// docs/accuracy.md and docs/accuracy.svg: what the core says beside what was measured, with the
// residuals. method_tables writes them; tests/unit/accuracy_test.cpp fails when they are stale.
#pragma once

#include <algorithm>
#include <cmath>
#include <string>
#include <utility>
#include <vector>

#include "core/grip/limits.hpp"
#include "core/grip/measured.hpp"
#include "core/patch/measured.hpp"
#include "core/quantity/text.hpp"
#include "core/quantity/write.hpp"
#include "core/standard/wetness.hpp"
#include "core/water/estimate.hpp"
#include "core/water/measured.hpp"
#include "core/water/onset.hpp"
#include "tests/support/method_tables.hpp"
#include "tests/support/register_tables.hpp"

namespace treadwater::testing {

inline constexpr GaugePressure usual_pressure = kilopascals(220.0);  // no test states its own
inline constexpr Length usual_texture = millimetres(0.7);

inline std::string signed_percent(double ratio) {
  const double percent = 100.0 * (ratio - 1.0);
  return joined({percent < 0.0 ? "−" : "+", fixed(std::fabs(percent), 0), " %"});
}

// ---- water ----

struct OnsetRow {
  const water::MeasuredOnset* measured;
  water::SpeedBand band;
  Speed held;
  std::vector<std::optional<Speed>> models;  // in the order of onset_models()
};

inline std::vector<OnsetRow> onset_rows() {
  std::vector<OnsetRow> rows;
  for (const auto& measured : water::measured_onsets()) {
    const Length width = measured.section_width.value_or(millimetres(205.0));
    OnsetRow row{&measured,
                 *water::aquaplaning_onset(
                     {usual_pressure, measured.tread, 1.0, width, measured.film, usual_texture}),
                 {},
                 {}};
    row.held = floor_to_five(row.band.low * water::hold_to_share, UnitSystem::metric);
    water::OnsetConditions conditions;
    conditions.pressure = usual_pressure;
    conditions.grooves = measured.tread;
    conditions.film = measured.film;
    conditions.texture = usual_texture;
    for (const auto& model : water::onset_models()) row.models.push_back(model.onset(conditions));
    rows.push_back(std::move(row));
  }
  return rows;
}

inline double measured_kmh(const water::MeasuredOnset& row) {
  return (in_kilometres_per_hour(row.low) + in_kilometres_per_hour(row.high)) / 2.0;
}

inline std::string onset_residuals() {
  std::string text = "| row | tread | water | measured | hold to | low | central | high |";
  std::string line = "|---|---|---|---|---|---|---|---|";
  std::vector<std::size_t> shown;  // the models that answer at all
  const auto rows = onset_rows();
  std::size_t at = 0;
  for (const auto& model : water::onset_models()) {
    const bool any = std::any_of(rows.begin(), rows.end(),
                                 [&](const OnsetRow& row) { return row.models[at].has_value(); });
    if (any) {
      shown.push_back(at);
      text += joined({" ", model.label.english(), " |"});
      line += "---|";
    }
    ++at;
  }
  text += "\n" + line + "\n";
  for (const OnsetRow& row : rows) {
    const auto& m = *row.measured;
    const double truth = measured_kmh(m);
    const auto kmh = [](Speed v) { return fixed(in_kilometres_per_hour(v), 0); };
    const auto against = [&](Speed v) {
      return joined({kmh(v), " (", signed_percent(in_kilometres_per_hour(v) / truth), ")"});
    };
    text += joined({"| ", m.id, " | ", write_depth(m.tread, UnitSystem::metric), " | ",
                    write_water(m.film, UnitSystem::metric), " | ",
                    m.low == m.high ? kmh(m.low) : joined({kmh(m.low), " to ", kmh(m.high)}), " | ",
                    kmh(row.held), " | ", against(row.band.low), " | ", against(row.band.central),
                    " | ", against(row.band.high), " |"});
    for (const std::size_t i : shown)
      text += joined({" ", row.models[i] ? against(*row.models[i]) : "out of range", " |"});
    text += "\n";
  }
  return text;
}

// Further tests, and stops.
inline std::string further_residuals() {
  using enum water::OnsetEvidence::Says;
  std::string text =
      "| row | what it says | tread | water | speed | hold to | low | central | high | known |\n"
      "|---|---|---|---|---|---|---|---|---|---|\n";
  const auto kmh = [](Speed v) { return fixed(in_kilometres_per_hour(v), 0); };
  const auto end = [&](Speed v) { return water::told(v) ? kmh(v) : std::string("none"); };
  for (const auto& row : water::further_onsets()) {
    const Length middle = (row.film + row.film_to) / 2.0;
    const water::Water depths = row.film == row.film_to
                                    ? water::Water(row.film)
                                    : water::Water::between(row.film, middle, row.film_to);
    const auto band = *water::aquaplaning_onset(
        {row.pressure.value_or(usual_pressure), row.tread, 1.0,
         row.section_width.value_or(millimetres(205.0)), depths, usual_texture});
    const auto held = water::held(band);
    text += cells(
        {row.id,
         joined({row.says == onset    ? "floats"
                 : row.says == afloat ? "floats, or is said to"
                                      : "not afloat",
                 ": ", row.remark, row.contradicts ? "; **above our central value**" : ""}),
         write_depth(row.tread, UnitSystem::metric),
         row.film == row.film_to ? write_water(row.film, UnitSystem::metric)
                                 : joined({fixed(in_millimetres(row.film), 1), " to ",
                                           fixed(in_millimetres(row.film_to), 1), " mm"}),
         row.low == row.high ? kmh(row.low) : joined({kmh(row.low), " to ", kmh(row.high)}),
         held ? kmh(floor_to_five(*held, UnitSystem::metric)) : std::string("none"), end(band.low),
         end(band.central), end(band.high), standing_name(row.source.standing).english()});
  }
  return text;
}

// What water makes of the maximum speed, by how wet the road is and by tread.
inline std::string maximum_speeds() {
  constexpr double treads[] = {8.0, 5.0, 3.0, 1.6};
  std::vector<std::pair<std::string, water::Water>> waters;
  for (const auto& word : standard::wetness_words)
    if (word.film)
      waters.emplace_back(joined({word.id, ", by word"}), water::Water::by_word(word.wetness));
  for (const double mm : {0.5, 1.0, 2.0, 3.0, 5.0, 8.0, 20.0, 50.0})
    waters.emplace_back(joined({write_water(millimetres(mm), UnitSystem::metric), ", by ruler"}),
                        millimetres(mm));
  std::string text = "| water | 8 mm | 5 mm | 3 mm | 1.6 mm |\n|---|---|---|---|---|\n";
  for (const auto& [name, depths] : waters) {
    std::vector<std::string> row{name};
    for (const double tread : treads) {
      const auto held =
          water::held(*water::aquaplaning_onset({kilopascals(230.0), millimetres(tread), 1.0,
                                                 millimetres(205.0), depths, usual_texture}));
      row.push_back(held
                        ? fixed(in_kilometres_per_hour(floor_to_five(*held, UnitSystem::metric)), 0)
                        : std::string("no limit"));
    }
    text +=
        joined({"| ", row[0], " | ", row[1], " | ", row[2], " | ", row[3], " | ", row[4], " |\n"});
  }
  return text;
}

// One line for each measured row: our band as a bar, the measured range as a block, the published
// models as ticks, the hold-to speed as a triangle.
inline std::string onset_picture() {
  constexpr double left = 190.0, right = 30.0, width = 760.0, pitch = 44.0, top = 70.0;
  constexpr double most = 130.0;
  const auto x = [&](double kmh) { return left + (width - left - right) * kmh / most; };
  const auto rows = onset_rows();
  const double height = top + pitch * static_cast<double>(rows.size()) + 50.0;
  const auto n = [](double v) { return fixed(v, 1); };
  std::string svg = joined(
      {"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 ", n(width), " ", n(height),
       "\" font-family=\"sans-serif\" font-size=\"13\" role=\"img\" aria-label=\"Measured onsets "
       "of "
       "aquaplaning beside the estimate and the published models\">\n",
       "<rect width=\"100%\" height=\"100%\" fill=\"#fff\"/>\n",
       "<text x=\"16\" y=\"24\" font-size=\"15\">Onset of aquaplaning, km/h, at 220 kPa on a "
       "texture "
       "of 0.7 mm</text>\n",
       "<text x=\"16\" y=\"46\">grey bar: our low to high, line: central; black: measured; blue "
       "rings: published models; triangle: hold to</text>\n"});
  for (int kmh = 0; kmh <= 120; kmh += 20) {
    svg += joined({"<line x1=\"", n(x(kmh)), "\" x2=\"", n(x(kmh)), "\" y1=\"", n(top - 8.0),
                   "\" y2=\"", n(height - 34.0), "\" stroke=\"#ddd\"/><text x=\"", n(x(kmh)),
                   "\" y=\"", n(height - 16.0), "\" text-anchor=\"middle\">", std::to_string(kmh),
                   "</text>\n"});
  }
  double y = top + pitch / 2.0;
  for (const OnsetRow& row : rows) {
    const auto at = [&](Speed v) { return x(in_kilometres_per_hour(v)); };
    const auto& m = *row.measured;
    svg += joined({"<text x=\"16\" y=\"", n(y + 4.0), "\">", m.id, ": ",
                   write_depth(m.tread, UnitSystem::metric), " tread, ",
                   write_water(m.film, UnitSystem::metric), " water</text>\n"});
    svg += joined({"<rect x=\"", n(at(row.band.low)), "\" y=\"", n(y - 7.0), "\" width=\"",
                   n(at(row.band.high) - at(row.band.low)),
                   "\" height=\"14\" fill=\"#c9ced1\"/><line x1=\"", n(at(row.band.central)),
                   "\" x2=\"", n(at(row.band.central)), "\" y1=\"", n(y - 10.0), "\" y2=\"",
                   n(y + 10.0), "\" stroke=\"#555\" stroke-width=\"2\"/>\n"});
    for (const auto& model : row.models)
      if (model)
        svg += joined({"<circle cx=\"", n(at(*model)), "\" cy=\"", n(y),
                       "\" r=\"5\" fill=\"none\" stroke=\"#1f5f8b\" stroke-width=\"2\"/>\n"});
    const double from = at(m.low), to = std::max(at(m.high), from + 3.0);
    svg += joined({"<rect x=\"", n(from), "\" y=\"", n(y - 4.0), "\" width=\"", n(to - from),
                   "\" height=\"8\" fill=\"#000\"/>\n"});
    const double held = at(row.held);
    svg += joined({"<path d=\"M", n(held), " ", n(y + 8.0), "l-5 9h10z\" fill=\"#8a3b12\"/>\n"});
    y += pitch;
  }
  return svg + "</svg>\n";
}

// ---- contact patch ----

inline std::string footprint_residuals() {
  std::string text =
      "| load | pressure | length, measured | ours | width, measured | ours | area, measured | "
      "ours "
      "|\n|---|---|---|---|---|---|---|---|\n";
  for (const auto& print : patch::measured_footprints()) {
    if (print.camber_degrees != 0.0) continue;
    const patch::TyreSize size{millimetres(255.0), 40.0, inches(17.0)};
    const auto ours = patch::contact_patch(
        size, print.pressure, kilograms(in_newtons(print.load) / exact::standard_gravity),
        kilograms(750.0));
    const auto mm = [](Length l) { return fixed(in_millimetres(l), 0); };
    const auto cm2 = [](Area a) { return fixed(in_square_centimetres(a), 0); };
    text += cells({joined({fixed(in_newtons(print.load), 0), " N"}),
                   joined({fixed(in_kilopascals(print.pressure), 0), " kPa"}), mm(print.length),
                   joined({mm(ours.length), " (", signed_percent(ours.length / print.length), ")"}),
                   mm(print.width),
                   joined({mm(ours.width), " (", signed_percent(ours.width / print.width), ")"}),
                   cm2(print.gross),
                   joined({cm2(ours.area), " (", signed_percent(ours.area / print.gross), ")"})});
  }
  return text;
}

// ---- wet braking ----

inline Length film_taken(const grip::MeasuredStop& stop) {
  return stop.film.value_or(millimetres(1.0));
}

// The friction at rest with which the law, on its central side, gives the stop as measured.
inline std::string friction_needed(const grip::MeasuredStop& stop) {
  const double share = grip::wet_tread_share(stop.tread);
  const double gone = in_kilometres_per_hour(
      grip::grip_gone_at(stop.tread, film_taken(stop), std::nullopt).central);
  const auto by_law = grip::braked_by({share, share / (gone * gone)}, stop.from, Speed(), 0.0);
  return by_law ? fixed(*by_law / stop.stop, 2) : std::string("none");
}

inline std::string braking_residuals() {
  std::string text =
      "| row | from | tread | water | measured | friction at rest needed | shortest | central | "
      "longest |\n|---|---|---|---|---|---|---|---|---|\n";
  for (const auto& stop : grip::measured_stops()) {
    grip::GripCase wet;
    wet.tread = stop.tread;
    wet.film = film_taken(stop);
    const auto band = grip::braking_band(wet, stop.from, Speed(), {});
    const auto m = [&](const std::optional<Length>& l) {
      return l ? joined({fixed(in_metres(*l), 1), " m (", signed_percent(*l / stop.stop), ")"})
               : std::string("may not stop");
    };
    text += cells({stop.id, joined({fixed(in_kilometres_per_hour(stop.from), 0), " km/h"}),
                   joined({trimmed(in_millimetres(stop.tread), 1), " mm"}),
                   stop.film ? joined({trimmed(in_millimetres(*stop.film), 1), " mm"})
                             : std::string("not stated"),
                   joined({fixed(in_metres(stop.stop), 1), " m"}), friction_needed(stop),
                   m(band.shortest), m(band.central), m(band.longest)});
  }
  return text;
}

inline std::string stop_sources() {
  std::string text;
  const Source* last = nullptr;
  for (const auto& stop : grip::measured_stops()) {
    if (stop.source != last)
      text += joined({"- ", stop.id, " on: ", stop.source->title, ", ", stop.source->clause, "; ",
                      standing_name(stop.source->standing).english(), "\n"});
    last = stop.source;
  }
  return text;
}

inline std::string accuracy_text(const std::vector<checks::Room>& rooms) {
  return joined(
      {"# How near it comes\n\nMade by `method_tables` from the core, its own records and the "
       "register of outside checks (`tests/register`); a test fails when it is stale.\n\n## Every "
       "outside check, by room and standing\n\nA check is one figure that a paper, a rule, a table "
       "or the trade gives, held against what the core answers, natively and in WebAssembly. "
       "*Published* was read in the source itself, *secondary* in a text that quotes it, *memory* "
       "was not seen in print, *common practice* has no source. *Worked out* is a figure reckoned "
       "by hand from what the source prints, and known no better than the source. What is allowed "
       "is half the last printed digit, or the register says what else and why. All that "
       "is checked stands at the end of this page.\n\n",
       register_counts(rooms),
       "\nThe three sections that follow set our estimates against measurements. Percentages are "
       "against the middle of what was measured. **A "
       "published model that reads above a measured onset is unsafe there**: it promises grip at a "
       "speed at which a tyre was floating.\n\n## Water: every published onset model, and ours, "
       "against every measured row\n\nNo test states its pressure; 220 kPa is taken, on a texture "
       "of "
       "0.7 mm. The rows are in `core/water/measured.cpp` with their sources.\n\n",
       onset_residuals(),
       "\n![Measured onsets beside the estimate and the models](accuracy.svg)\n\nWhat to see in "
       "it: "
       "for new tyres in deep water every model is near. For worn tyres (A2, A3, G2) every "
       "published model that answers reads 9 to 95 % too high: its tread term is far too mild, or "
       "it has "
       "none. Our band holds every measured row, and the hold-to speed lies below each. The band "
       "is "
       "wide because the tests differ in what they call the onset and none says its "
       "pressure.\n\n### Further tests, and stops\n\nThe onsets were not fitted to; the rise in "
       "thin water was shaped between the stops. A tyre that stopped a car was in touch with the "
       "road: it says that the onset is higher, and no more. If a depth was not stated, the row "
       "says what was taken; a range is judged like a word's, low at its deep end.\n\n",
       further_residuals(),
       "\n### What comes of it\n\nThe maximum speed in km/h that water sets for a 205/55 R16 at "
       "2.3 bar, cold, by tread. No limit: none below 130 km/h.\n\n",
       maximum_speeds(),
       "\n## Contact patch: 25 prints of one 255/40 R17\n\nFor a rating of 750 kg. The carcass's "
       "share in the area and the factor on the length are taken from these same prints; no other "
       "size was measured. All are within 15 %.\n\n",
       footprint_residuals(),
       "\n## Wet braking: 47 published stops\n\nWhat spreads is the road: each row needs another "
       "friction at rest, and the rows of one test nearly the same (T01, T02, T03, T05, T19 and M "
       "within 5 %, T04 within 8 %). The bands are those of a road that is not told. 40 of the 44 "
       "rows T lie inside; where no depth is stated 1 mm is taken.\n\n",
       braking_residuals(), "\n", stop_sources(),
       "\n## The register, room by room\n\nOne line for each thing checked, with all its figures "
       "up to "
       "four; of more, the one that comes nearest to what is allowed. All are in "
       "`tests/register/*.json`. Ours stands with one digit more than is printed, and the sign of "
       "a "
       "difference says whether ours is higher (+) or lower (−). *Inside*: the printed figure lies "
       "in our band.\n\n",
       register_tables(rooms)});
}

}  // namespace treadwater::testing
