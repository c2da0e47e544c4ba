#include "core/judge/crossing.hpp"

#include <algorithm>

#include "core/judge/advice.hpp"
#include "core/water/onset.hpp"

namespace treadwater::judge {
namespace {

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
  const auto crossing = water::judge_crossing(water.vehicle, water.depth(), water.flow);
  if (crossing == water::Crossing::dry || crossing == water::Crossing::with_caution) return true;
  const bool moving = water.flow.moving;
  findings.add(fixed_limit(moving ? LimitName::moving_water : LimitName::too_deep_to_enter, Speed(),
                           {}, {}, crossing_sources()));
  findings.add(no_entry(crossing, moving), {}, crossing_sources());
  if (!water.stands()) findings.add(finding::depth_not_known);
  return false;
}

// The first to aquaplane in front; those that do not, at the end.
void sort_worst_first(std::vector<TyreThrough>& field, const WaterAcross& water) {
  for (TyreThrough& tyre : field) tyre.onset = onset_on(water.given, tyre.on(*water.surface));
  std::stable_sort(field.begin(), field.end(), [](const TyreThrough& a, const TyreThrough& b) {
    return a.onset && b.onset && a.onset->band.low < b.onset->band.low;
  });
}

WetCase wet_case(const CrossingJudged& judged, const WaterAcross& water,
                 const std::optional<Speed>& intended) {
  const TyreThrough& worst = judged.field.front();
  WetCase wet;
  wet.water = water.given;
  wet.surface = water.surface;
  wet.tyre = worst.on(*water.surface);
  wet.onset = worst.onset;
  wet.slick = std::any_of(judged.field.begin(), judged.field.end(),
                          [](const TyreThrough& tyre) { return tyre.is_slick(); });
  wet.bare = judged.has_bare();
  wet.is_worst = true;
  wet.named = {worst.kind->label, Value::depth(worst.tread)};
  wet.intended = intended;
  return wet;
}

// The tyre with the lowest low end may not be the likeliest to aquaplane at that speed.
double judge_intended(const std::vector<TyreThrough>& field, Speed intended, UnitSystem units,
                      Findings& findings) {
  double chance = 0.0;
  Speed central = water::no_floating;
  for (const TyreThrough& tyre : field) {
    chance = std::max(chance, chance_of_floating(*tyre.onset, intended));
    central = std::min(central, tyre.onset->band.central);
  }
  if (intended > floor_to_five(field.front().onset->band.low * water::hold_to_share, units))
    judge_speed_in_water(intended, intended > central, chance, findings);
  return chance;
}

// Below the onset by the ratio of the published formulas for a wheel that is not turning and one
// that is.
Speed turns_again(const TyreThrough& tyre) {
  return tyre.onset->band.low *
         (water::spin_up_onset(tyre.pressure) / water::pressure_only_onset(tyre.pressure));
}

void advise(const CrossingJudged& judged, const WaterAcross& water, Findings& findings) {
  if (judged.field.empty() || !judged.field.front().onset) return;
  const TyreThrough& worst = judged.field.front();
  if (worst.onset->held())
    findings.add(finding::when_it_floats, {turns_again(worst)},
                 {&advice::when_it_floats, &water::spin_up_source()});
  if (water.one_sided)
    findings.add(finding::one_sided,
                 {Value::number(in_newtons(water::greatest_puddle_drag) / exact::standard_gravity),
                  Value::size(water::deepest_puddle_measured, 1)},
                 {&water::puddle_drag_source()});
}

}  // namespace

Length WaterAcross::depth() const {
  const Length film = given.film();
  return film > standard::wetness_word(standard::Wetness::damp).deep ? film : Length();
}

water::WetTyre TyreThrough::on(const standard::RoadSurface& surface) const {
  return {pressure, tread, kind->groove_credit, width, {}, surface.texture};
}

std::optional<Speed> TyreThrough::hold_to(UnitSystem units) const {
  const auto held = onset ? onset->held() : std::nullopt;
  return held ? std::optional(floor_to_five(*held, units)) : std::nullopt;
}

TyreThrough worn_road_tyre() {
  return {standard::find_tyre_kind("road"), worn_tread, soft_pressure};
}

bool CrossingJudged::has_bare() const {
  return std::any_of(field.begin(), field.end(),
                     [](const TyreThrough& tyre) { return tyre.is_bare(); });
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
  if (judged.may_be_entered && water.given.is_wet() && !field.empty()) {
    judged.field = std::move(field);
    sort_worst_first(judged.field, water);
    judge_wet_road(wet_case(judged, water, intended), findings);
    if (intended && judged.field.front().onset)
      judged.chance = judge_intended(judged.field, *intended, units, findings);
  }
  advise(judged, water, findings);
  if (water.given.may_be_deeper && findings.lowest() == nullptr) findings.no_speed = true;
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
