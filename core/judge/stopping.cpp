#include "core/judge/stopping.hpp"

#include <algorithm>

#include "core/grip/cornering.hpp"
#include "core/judge/advice.hpp"
#include "core/judge/water.hpp"
#include "core/standard/road_surface.hpp"
#include "core/standard/tread_law.hpp"
#include "core/water/crossing.hpp"
#include "core/water/measured.hpp"
#include "core/water/onset.hpp"

namespace treadwater::judge {
namespace {

constexpr Speed end_of_tables = kilometres_per_hour(130.0);  // core/grip/film.hpp
constexpr Length longest_stop = metres(1000.0);              // our choice of what still is one
// In a film of this depth the braking tests stopped from 80 and 120 km/h on treads down to 1.6 mm
// (core/grip/film.hpp).
constexpr Length braked_in = millimetres(1.0);

bool is_paved(const StopCase& stop) { return stop.grip.surface->ground == standard::Ground::paved; }

// ---- what was assumed ----

// Whatever it still stops in. A slick has no tread to measure.
void judge_tread(const StopCase& stop, Findings& findings) {
  const standard::TreadLaw& law = *standard::find_tread_law("elsewhere");
  const Length tread = stop.grip.tread;
  if (tread < law.least && grip::groove_credit(*stop.grip.tyre) > 0.0)
    findings.add(finding::tread_under_most_laws, {Value::depth(tread), Value::depth(law.least)},
                 {&law.source});
}

void judge_given(const StopCase& stop, Findings& findings) {
  if (!stop.tread_given) findings.add(finding::tread_assumed, {Value::depth(usual_tread)});
  judge_tread(stop, findings);
  if (stop.by_ruler && *stop.by_ruler < stop.grip.film)
    findings.add(finding::wetter_than_measured,
                 {Value::water(stop.grip.film), Value::water(*stop.by_ruler)});
  const BendGiven& bend = stop.bend;
  if (!bend.radius_found() && (bend.chord || bend.sagitta || bend.bank))
    findings.add(finding::bend_not_judged);
  if (stop.reaction() < grip::median_reaction)
    findings.add(
        finding::reaction_quick,
        {Value::seconds(stop.reaction()), Value::number(in_seconds(grip::median_reaction), 1)},
        {&grip::reaction_source});
  if (stop.speed > end_of_tables)
    findings.add(finding::beyond_tables, {end_of_tables}, {&grip::handbook_source});
}

// ---- water: above the onset of aquaplaning no friction can be trusted ----

void judge_deep_water(Findings& findings) {
  const Values deepest{Value::water(water::deepest_to_enter)};
  const Sources sources{&advice::deep_water};
  Limit limit = fixed_limit(LimitName::deep_water, Speed(), {}, deepest, sources);
  limit.shown = Limit::Shown::do_not_enter;
  findings.add(std::move(limit));
  findings.add(finding::deep_water, deepest, sources);
}

const standard::RoadSurface& road_of(const StopCase& stop) {
  return *standard::find_road_surface(is_paved(stop) ? stop.grip.surface->road_surface : "loose");
}

void limit_by_water(const StopCase& stop, const water::SpeedBand& onset, UnitSystem units,
                    Findings& findings) {
  Limit limit;
  limit.what = LimitName::aquaplaning_as_taken;
  limit.central = onset.central;
  limit.low = onset.low;
  limit.high = onset.high;
  limit.share_kept = water::hold_to_share;
  limit.shown = Limit::Shown::estimate;
  limit.why = {Value::water(stop.grip.film), onset.low};
  limit.sources = {&water::estimate_source(), &water::film_source(), &water::pressure_only_source(),
                   &water::clearing_source(), &road_of(stop).source};
  add_once(limit.sources, onset_sources());
  if (stop.speed > floor_to_five(limit.kept(), units))
    findings.add(stop.speed > onset.central ? finding::floats : finding::may_float,
                 {stop.speed, Value::water(stop.grip.film)}, limit.sources);
  findings.add(std::move(limit));
}

void judge_film(const StopCase& stop, UnitSystem units, StopJudged& judged) {
  // Any film by a ruler is judged, and the same film by a word too. A damp road has none.
  const grip::GripCase& grip = stop.grip;
  if (!(grip.film > grip::film_of(grip::Wetness::damp)) && !(stop.by_ruler > Length())) return;
  const double credit = grip::groove_credit(*grip.tyre);
  judged.onset = water::aquaplaning_onset({stop.pressure.value_or(soft_pressure), grip.tread,
                                           credit, std::nullopt, grip.film, road_of(stop).texture});
  if (!judged.onset) return;
  limit_by_water(stop, *judged.onset, units, judged.findings);
  judged.may_float = stop.speed > judged.onset->low;
  // In a film in which such treads were seen to brake, only if it is likely.
  const bool seen_to_brake = grip.film <= braked_in && !(grip.tread * credit < worn_tread);
  judged.floats = judged.may_float && !(seen_to_brake && stop.speed <= judged.onset->central);
  if (!stop.by_ruler) judged.findings.add(finding::water_assumed, {Value::water(grip.film)});
  if (!stop.pressure) judged.findings.add(finding::pressure_assumed, {soft_pressure});
  if (!is_paved(stop)) judged.findings.add(finding::unpaved_water);
}

// ---- the stop itself ----

void judge_friction(const StopCase& stop, StopJudged& judged) {
  judged.friction = grip::friction(stop.grip, stop.speed);
  const grip::Heat heat = grip::heat_of(*stop.grip.rubber, stop.grip.tread_heat);
  const Phrase warmth = grip::heat_caution(*stop.grip.rubber, heat);
  if (!warmth.empty())
    judged.findings.add(
        heat == grip::Heat::too_hot ? finding::rubber_too_hot : finding::rubber_may_be_cold,
        {warmth}, {&grip::rubber_heat_source});
  std::string unknown;
  for (const Phrase sentence : judged.friction.unknown)
    if (sentence != warmth) unknown = sentences({unknown, say(sentence)});
  judged.findings.add(finding::not_known, {unknown});
}

void judge_no_stop(const StopCase& stop, bool never, Findings& findings) {
  const Sources sources{&grip::limits_source, &grip::stopping_source};
  const bool steep = grip::deceleration(grip::Grip(stop.grip).at(Speed()).low, stop.grade) <= 0.0;
  if (!steep) {
    findings.add(never ? finding::will_not_stop : finding::may_not_stop, {}, sources);
    return;
  }
  findings.add(fixed_limit(LimitName::grade, Speed(), {}, {}, sources));
  findings.add(never ? finding::will_not_stop_on_grade : finding::may_not_stop_on_grade, {},
               sources);
}

void judge_braking(const StopCase& stop, StopJudged& judged) {
  judged.braking = grip::braking_band(stop.grip, stop.speed, Speed(), stop.straight());
  judged.stopping = grip::stopping_band(stop.grip, stop.speed, stop.reaction(), stop.straight());
  if (!judged.braking.longest)
    return judge_no_stop(stop, !judged.braking.shortest, judged.findings);
  const Length taught = grip::highway_code(stop.speed).braking;
  if (!stop.seen && *judged.braking.central > taught)
    judged.findings.add(
        finding::longer_than_taught,
        {Value::estimated_distance(*judged.braking.central), Value::distance(taught)},
        {&grip::limits_source, &grip::highway_code_source});
}

// ---- what there must be room for ----

Limit band_limit(LimitName what, const grip::SpeedBand& band, Values why, Sources sources) {
  Limit limit;
  limit.what = what;
  limit.low = band.low;
  limit.central = band.central;
  limit.high = band.high;
  limit.shown = band.low < grip::end_of_model ? Limit::Shown::band : Limit::Shown::beyond;
  limit.why = std::move(why);
  limit.sources = std::move(sources);
  return limit;
}

// The findings on a speed too high for something: above the speed likely to do, or only above the
// one sure to do; for the second pair no speed is sure to do.
struct TooFast {
  Finding past;
  Finding perhaps;
  Finding past_any;
  Finding perhaps_any;
};
constexpr TooFast for_sight{finding::too_fast_to_see, finding::may_be_too_fast_to_see,
                            finding::no_speed_to_see, finding::may_be_no_speed_to_see};
constexpr TooFast for_bend{finding::too_fast_for_bend, finding::may_be_too_fast_for_bend,
                           finding::no_speed_for_bend, finding::may_be_no_speed_for_bend};
constexpr TooFast for_obstacle{finding::hits_obstacle, finding::may_hit_obstacle,
                               finding::hits_obstacle_at_any_speed,
                               finding::may_hit_obstacle_at_any_speed};

void judge_too_fast(Speed speed, Speed sure, bool past, const TooFast& which,
                    const Sources& sources, Findings& findings) {
  if (!(speed > sure)) return;
  if (sure > Speed())
    findings.add(past ? which.past : which.perhaps, {sure}, sources);
  else
    findings.add(past ? which.past_any : which.perhaps_any, {}, sources);
}

Sources sources_of_seen_stop() {
  return {&grip::limits_source, &grip::stopping_source, &grip::reaction_source};
}

void judge_sight(const StopCase& stop, UnitSystem units, Findings& findings) {
  if (!stop.seen) return;
  const grip::Road road = stop.road();
  const auto band = grip::seen_distance_speed(stop.grip, *stop.seen, stop.reaction(), road);
  findings.add(band_limit(road.radius ? LimitName::seen_distance_in_bend : LimitName::seen_distance,
                          band, {Value::distance(*stop.seen), Value::seconds(stop.reaction())},
                          sources_of_seen_stop()));
  judge_too_fast(stop.speed, floor_to_five(band.low, units), stop.speed > band.central, for_sight,
                 sources_of_seen_stop(), findings);
}

void judge_obstacle(const StopCase& stop, UnitSystem units, StopJudged& judged) {
  if (!stop.obstacle) return;
  judged.left_at_obstacle =
      grip::speed_left_band(stop.grip, stop.speed, stop.room_before_obstacle(), stop.road());
  const auto band =
      grip::seen_distance_speed(stop.grip, *stop.obstacle, stop.reaction(), stop.road());
  judged.findings.add(band_limit(LimitName::obstacle, band,
                                 {Value::distance(*stop.obstacle), Value::seconds(stop.reaction())},
                                 sources_of_seen_stop()));
  judge_too_fast(stop.speed, floor_to_five(band.low, units),
                 judged.left_at_obstacle->central > Speed(), for_obstacle, sources_of_seen_stop(),
                 judged.findings);
}

void judge_bend(const StopCase& stop, UnitSystem units, Findings& findings) {
  const grip::Road road = stop.road();
  if (!road.radius) return;
  const auto band = grip::corner_speed_band(stop.grip, *road.radius, road.bank);
  const Sources sources{&grip::limits_source, &grip::cornering_source, &grip::side_share_source};
  findings.add(band_limit(LimitName::bend, band, {Value::distance(*road.radius)}, sources));
  judge_too_fast(stop.speed, floor_to_five(band.low, units), stop.speed > band.central, for_bend,
                 sources, findings);
}

// The maximum speed is one from which the car stops. A sight distance or an obstacle ensures that.
void judge_stop_at_all(const StopCase& stop, StopJudged& judged) {
  std::vector<Limit>& limits = judged.findings.limits;
  if (stop.seen || stop.obstacle || (limits.empty() && judged.braking.longest)) return;
  const auto band =
      grip::seen_distance_speed(stop.grip, longest_stop, stop.reaction(), stop.straight());
  if (!limits.empty() && limits.front().kept() <= band.low) return;
  judged.findings.add(band_limit(LimitName::stop_at_all, band, {Value::distance(longest_stop)},
                                 {&grip::limits_source, &grip::stopping_source}));
}

void conclude(const StopCase& stop, UnitSystem units, StopJudged& judged) {
  Findings& findings = judged.findings;
  stop_where_no_speed_helps(findings);
  if (findings.limits.empty())
    findings.add(finding::nothing_limits);
  else if (findings.limits.front().kept() > end_of_tables)
    findings.add(
        fixed_limit(LimitName::end_of_tables, end_of_tables, {}, {}, {&grip::handbook_source}));
  judged.hold = hold_to(findings, units);
  if (stop.is_wet()) findings.add(finding::wet_road, {}, {&advice::wet_braking});
}

}  // namespace

std::optional<Length> BendGiven::radius_found() const {
  return is_paced() ? grip::radius_from_chord(*chord, *sagitta) : radius;
}

Length StopCase::room_before_obstacle() const {
  return std::max(Length(), *obstacle - travelled(speed, reaction()));
}

bool StopCase::is_too_deep() const { return grip.film >= water::deepest_to_enter; }

StopJudged judge_stop(const StopCase& stop, UnitSystem units) {
  StopJudged judged;
  judge_given(stop, judged.findings);
  if (stop.is_too_deep()) {
    judge_deep_water(judged.findings);
  } else {
    judge_film(stop, units, judged);
    judge_friction(stop, judged);
    judge_braking(stop, judged);
    judge_sight(stop, units, judged.findings);
    judge_obstacle(stop, units, judged);
    judge_bend(stop, units, judged.findings);
    judge_stop_at_all(stop, judged);
  }
  conclude(stop, units, judged);
  return judged;
}

}  // namespace treadwater::judge
