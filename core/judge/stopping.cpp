#include "core/judge/stopping.hpp"

#include <algorithm>

#include "core/grip/cornering.hpp"
#include "core/judge/advice.hpp"
#include "core/standard/road_surface.hpp"
#include "core/standard/tread_law.hpp"

namespace treadwater::judge {
namespace {

constexpr Speed end_of_law = kilometres_per_hour(150.0);  // core/grip/stop_law.hpp
constexpr Length longest_stop = metres(1000.0);           // our choice of what still is one

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
  const BendGiven& bend = stop.bend;
  if (!bend.radius_found() && (bend.chord || bend.sagitta || bend.bank))
    findings.add(finding::bend_not_judged);
  if (stop.reaction() < grip::median_reaction)
    findings.add(
        finding::reaction_quick,
        {Value::seconds(stop.reaction()), Value::number(in_seconds(grip::median_reaction), 1)},
        {&grip::reaction_source});
  if (stop.speed > end_of_law)
    findings.add(finding::beyond_tables, {end_of_law},
                 {stop.grip.old_or_hard ? &grip::handbook_source : &grip::stop_law_source});
}

// ---- water ----

const standard::RoadSurface& road_of(const StopCase& stop) {
  return *standard::find_road_surface(is_paved(stop) ? stop.grip.surface->road_surface : "loose");
}

water::WetTyre tyre_of(const StopCase& stop, Length tread) {
  return {stop.pressure.value_or(soft_pressure),
          tread,
          stop.kind->groove_credit,
          stop.width,
          {},
          road_of(stop).texture};
}

// The film it stops in, and from where grip is gone because it aquaplanes.
void complete(StopCase& stop, std::optional<Onset>& onset) {
  stop.grip.film = stop.water.film();
  onset = onset_on(stop.water, tyre_of(stop, stop.grip.tread));
  if (!onset || !is_paved(stop)) return;
  stop.grip.onset = for_grip(onset->band);
  if (grip::wear_matters(stop.grip))
    stop.grip.onset_when_new = for_grip(onset_on(stop.water, tyre_of(stop, grip::new_tread))->band);
}

void judge_water(const StopCase& stop, UnitSystem units, StopJudged& judged) {
  WetCase wet;
  wet.water = stop.water;
  wet.surface = &road_of(stop);
  wet.tyre = tyre_of(stop, stop.grip.tread);
  wet.onset = judged.onset;
  wet.slick = stop.kind->groove_credit == 0.0;
  wet.bare = wet.onset && wet.onset->is_bare();
  wet.intended = stop.speed;
  judge_wet_road(wet, judged.findings);
  if (!judged.onset || stop.water.is_too_deep()) return;
  judge_speed_in_water(*judged.onset, stop.speed, units, judged.findings);
  if (!stop.pressure) judged.findings.add(finding::pressure_assumed, {soft_pressure});
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

void judge_no_stop(const StopCase& stop, const StopJudged& judged, Findings& findings) {
  const Sources sources{&grip::limits_source, &grip::stopping_source};
  const bool never = !judged.braking.shortest;
  const bool steep = grip::deceleration(grip::Grip(stop.grip).at(Speed()).low, stop.grade) <= 0.0;
  if (!steep) {
    Found found(never ? finding::will_not_stop : finding::may_not_stop, {}, sources);
    // Where only aquaplaning may keep it from stopping, how likely that is decides, as in every
    // other sheet.
    grip::GripCase on_its_tyres = stop.grip;
    on_its_tyres.onset.reset();
    if (!never && judged.onset &&
        grip::braking_band(on_its_tyres, stop.speed, Speed(), stop.straight()).longest)
      found.lowered = Level::care;
    findings.add(std::move(found));
    return;
  }
  findings.add(fixed_limit(LimitName::grade, Speed(), {}, {}, sources));
  findings.add(never ? finding::will_not_stop_on_grade : finding::may_not_stop_on_grade, {},
               sources);
}

void judge_braking(const StopCase& stop, StopJudged& judged) {
  judged.braking = grip::braking_band(stop.grip, stop.speed, Speed(), stop.straight());
  judged.stopping = grip::stopping_band(stop.grip, stop.speed, stop.reaction(), stop.straight());
  // Off the pavement the laws of grip know nothing of aquaplaning.
  if (!is_paved(stop) && judged.onset && !(stop.speed < judged.onset->band.low))
    judged.braking.longest = judged.stopping.longest = std::nullopt;
  if (!judged.braking.longest) return judge_no_stop(stop, judged, judged.findings);
  const Length taught = grip::highway_code(stop.speed).braking;
  if (stop.seen || !(*judged.braking.central > taught)) return;
  Found longer(finding::longer_than_taught,
               {Value::estimated_distance(*judged.braking.central), Value::distance(taught)},
               {&grip::limits_source, &grip::highway_code_source});
  // Longer in the wet is expected; a stop that would be longer in the dry too is not.
  grip::GripCase dry = stop.grip;
  dry.film = Length();
  const auto when_dry = grip::braking_band(dry, stop.speed, Speed(), stop.straight()).central;
  if (is_paved(stop) && stop.is_wet() && when_dry && !(*when_dry > taught))
    longer.lowered = Level::note;
  judged.findings.add(std::move(longer));
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
  const Limit* lowest = judged.findings.lowest();
  if (stop.seen || stop.obstacle || (lowest == nullptr && judged.braking.longest)) return;
  const auto band =
      grip::seen_distance_speed(stop.grip, longest_stop, stop.reaction(), stop.straight());
  if (lowest != nullptr && lowest->kept() <= band.low) return;
  judged.findings.add(band_limit(LimitName::stop_at_all, band, {Value::distance(longest_stop)},
                                 {&grip::limits_source, &grip::stopping_source}));
}

void conclude(const StopCase& stop, UnitSystem units, StopJudged& judged) {
  Findings& findings = judged.findings;
  stop_where_no_speed_helps(findings);
  judged.hold = hold_to(findings, units);
  if (findings.lowest() == nullptr)
    findings.add(finding::nothing_limits);
  else if (no_limit(findings, units))
    judged.no_limit = NoLimit{};  // what was asked has no limit of its own
  if (stop.is_wet()) findings.add(finding::wet_road, {}, {&advice::wet_braking});
}

}  // namespace

std::optional<Length> BendGiven::radius_found() const {
  return is_paced() ? grip::radius_from_chord(*chord, *sagitta) : radius;
}

Length StopCase::room_before_obstacle() const {
  return std::max(Length(), *obstacle - travelled(speed, reaction()));
}

grip::SpeedBand for_grip(const water::SpeedBand& onset) {
  return {onset.low, onset.central, onset.high};
}

StopJudged judge_stop(StopCase stop, UnitSystem units) {
  StopJudged judged;
  complete(stop, judged.onset);
  judge_given(stop, judged.findings);
  judge_water(stop, units, judged);
  if (!stop.water.is_too_deep()) {
    judge_friction(stop, judged);
    judge_braking(stop, judged);
    judge_sight(stop, units, judged.findings);
    judge_obstacle(stop, units, judged);
    judge_bend(stop, units, judged.findings);
    judge_stop_at_all(stop, judged);
  }
  conclude(stop, units, judged);
  judged.stop = std::move(stop);
  return judged;
}

}  // namespace treadwater::judge
