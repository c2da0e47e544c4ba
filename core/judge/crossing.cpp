#include "core/judge/crossing.hpp"

#include <algorithm>

#include "core/judge/advice.hpp"
#include "core/judge/water.hpp"
#include "core/water/measured.hpp"
#include "core/water/onset.hpp"

namespace treadwater::judge {
namespace {

// Our choice: the chance of aquaplaning that is too high.
constexpr double too_often = 0.25;

Finding no_entry(water::Crossing crossing, bool moving) {
  switch (crossing) {
    case water::Crossing::afloat:
      return moving ? finding::afloat_in_moving_water : finding::afloat_in_water;
    case water::Crossing::unstable:
      return moving ? finding::unstable_in_moving_water : finding::unstable_in_water;
    default:
      return moving ? finding::moving_water : finding::too_deep_to_enter;
  }
}

bool judge_entry(const WaterAcross& water, Findings& findings) {
  const auto crossing = water::judge_crossing(water.vehicle, water.depth, water.flow);
  if (crossing == water::Crossing::dry || crossing == water::Crossing::with_caution) return true;
  const bool moving = water.flow.moving;
  findings.add(fixed_limit(moving ? LimitName::moving_water : LimitName::too_deep_to_enter, Speed(),
                           {}, {}, crossing_sources()));
  findings.add(no_entry(crossing, moving), {}, crossing_sources());
  if (!(water.depth > Length())) findings.add(finding::depth_not_known);
  return false;
}

void sort_worst_first(std::vector<TyreThrough>& field, const WaterAcross& water) {
  for (TyreThrough& tyre : field)
    if (const auto onset = water::aquaplaning_onset(tyre.in(water))) tyre.onset = *onset;
  std::stable_sort(field.begin(), field.end(), [](const TyreThrough& a, const TyreThrough& b) {
    return a.onset.low < b.onset.low;
  });
}

void limit_by_worst(const TyreThrough& worst, const WaterAcross& water, Findings& findings) {
  const Value tread = Value::depth(worst.tread);
  Limit limit;
  limit.what = LimitName::aquaplaning_of_worst;
  limit.central = worst.onset.central;
  limit.low = worst.onset.low;
  limit.high = worst.onset.high;
  limit.share_kept = water::hold_to_share;
  limit.shown = Limit::Shown::estimate;
  limit.label = {worst.kind->label, tread};
  limit.why = {Value::water(water.depth), worst.kind->label, tread, worst.onset.low};
  limit.sources = onset_sources();
  limit.sources.push_back(&water.surface->source);
  findings.add(std::move(limit));
}

double greatest_chance(const std::vector<TyreThrough>& field, const WaterAcross& water,
                       const TyreThrough& likeliest, Speed intended) {
  const auto chance = [&](const TyreThrough& tyre) {
    return water::OnsetDraws(tyre.in(water)).chance_of_floating(intended);
  };
  return std::max(chance(field.front()), chance(likeliest));
}

double judge_intended(const std::vector<TyreThrough>& field, const WaterAcross& water,
                      Speed intended, UnitSystem units, Findings& findings) {
  // The tyre with the lowest low end may not be the likeliest to aquaplane at that speed.
  const TyreThrough& likeliest = *std::min_element(
      field.begin(), field.end(),
      [](const TyreThrough& a, const TyreThrough& b) { return a.onset.central < b.onset.central; });
  const double chance = greatest_chance(field, water, likeliest, intended);
  if (intended > field.front().hold_to(units)) {
    const bool past_it = intended > likeliest.onset.central || chance >= too_often;
    findings.add(past_it ? finding::floats_too_often : finding::floats_sometimes,
                 {intended, Value::number(100.0 * chance)}, {&water::estimate_source()});
  }
  return chance;
}

void judge_tyres(const CrossingJudged& judged, const WaterAcross& water, Findings& findings) {
  if (judged.has_slick()) findings.add(finding::slick_in_water, {}, {&water::clearing_source()});
  if (water.depth > deepest_measured) findings.add(finding::beyond_measured_water);
  if (!water.surface->paved) findings.add(finding::unpaved);
}

// Below the onset by the ratio of the published formulas for a wheel that is not turning and one
// that is.
Speed turns_again(const TyreThrough& tyre) {
  return tyre.onset.low *
         (water::spin_up_onset(tyre.pressure) / water::pressure_only_onset(tyre.pressure));
}

void advise(const CrossingJudged& judged, const WaterAcross& water, Findings& findings) {
  if (judged.may_be_entered && !(water.depth > Length()) && !water.may_be_deeper)
    findings.add(finding::no_dynamic_aquaplaning);
  if (!judged.field.empty()) {
    findings.add(finding::standing_water);
    findings.add(finding::when_it_floats, {turns_again(judged.field.front())},
                 {&advice::when_it_floats, &water::spin_up_source()});
    if (water.one_sided)
      findings.add(
          finding::one_sided,
          {Value::number(in_newtons(water::greatest_puddle_drag) / exact::standard_gravity),
           Value::size(water::deepest_puddle_measured, 1)},
          {&water::puddle_drag_source()});
  }
  findings.add(finding::thin_film, {}, {&advice::thin_film, &advice::wet_braking});
}

}  // namespace

water::WetTyre TyreThrough::in(const WaterAcross& water) const {
  return {pressure, tread, kind->groove_credit, width, water.depth, water.surface->texture};
}

Speed TyreThrough::hold_to(UnitSystem units) const {
  return floor_to_five(onset.low * water::hold_to_share, units);
}

TyreThrough worn_road_tyre() {
  return {standard::find_tyre_kind("road"), worn_tread, soft_pressure};
}

bool CrossingJudged::has_slick() const {
  return std::any_of(field.begin(), field.end(),
                     [](const TyreThrough& tyre) { return tyre.is_slick(); });
}

void judge_rain_word(const standard::RainWord& word, Findings& findings) {
  if (!word.high) findings.add(finding::rain_open_ended, {word.low}, {&word.source});
}

void judge_rain(const water::DepthFromRain& rain, Findings& findings) {
  if (rain.reach == water::FilmReach::off_pavement) findings.add(finding::film_off_pavement);
  if (rain.reach == water::FilmReach::beyond)
    findings.add(finding::film_beyond_formulas, {}, film_sources());
  if (rain.film) findings.add(finding::rain_seldom_deep, {}, film_sources());
}

CrossingJudged judge_crossing(const WaterAcross& water, std::vector<TyreThrough> field,
                              std::optional<Speed> intended, UnitSystem units, Findings& findings) {
  CrossingJudged judged;
  judged.may_be_entered = judge_entry(water, findings);
  if (judged.may_be_entered && water.depth > Length() && !field.empty()) {
    judged.field = std::move(field);
    sort_worst_first(judged.field, water);
    limit_by_worst(judged.field.front(), water, findings);
    judge_tyres(judged, water, findings);
    if (intended) judged.chance = judge_intended(judged.field, water, *intended, units, findings);
  }
  advise(judged, water, findings);
  stop_where_no_speed_helps(findings);
  return judged;
}

Sources film_sources() {
  Sources sources;
  for (const water::FilmModel model : water::independent_films)
    add_once(sources, water::film_depth_source(model));
  return sources;
}

Sources crossing_sources() {
  Sources sources{&water::crossing_advice_source()};
  for (const auto& row : water::crossing_figures()) add_once(sources, row.source);
  return sources;
}

}  // namespace treadwater::judge
