#include "core/judge/puncture.hpp"

#include <algorithm>

#include "core/air/natural_loss.hpp"
#include "core/air/warning.hpp"
#include "core/judge/advice.hpp"
#include "core/judge/age.hpp"
#include "core/judge/pressure.hpp"
#include "core/judge/tread.hpp"
#include "core/patch/geometry.hpp"
#include "core/patch/rating.hpp"
#include "core/patch/supported.hpp"
#include "core/standard/instrument.hpp"
#include "core/standard/tread_law.hpp"

namespace treadwater::judge {
namespace {

using standard::pressure_gauge_error;

// A leak that is not excluded must leave the tyre fit for this long, until it is read again: ours.
constexpr Duration next_reading = days(7.0);
// Readings closer together in time exclude no leak worth telling: ours.
constexpr Duration too_close = minutes(5.0);
// From here on a leak is told by the day.
constexpr Duration told_by_the_day = minutes(180.0);
// Of a tyre just off the road, above its cold pressure: the middle of what handbooks say, and the
// error of that.
constexpr GaugePressure usual_rise = (air::hot_rise.low + air::hot_rise.high) / 2.0;
constexpr GaugePressure rise_error = (air::hot_rise.high - air::hot_rise.low) / 2.0;
// Less time than it takes to find a place and stop: ours.
constexpr Duration too_short = minutes(5.0);
// Of its rating, if the load is not known: the load run-flat tyres are tested at.
constexpr double usual_load_share = 0.65;

// It stops the car, whatever is on board.
void halt(Found found, SoftTyreJudged& judged) {
  Limit limit = fixed_limit(LimitName::soft_tyre, Speed(), {}, {}, found.sources);
  limit.found = found;
  judged.findings.add(std::move(found));
  judged.findings.add(std::move(limit));
}

bool stopped(const SoftTyreJudged& judged) {
  const Limit* lowest = judged.findings.lowest();
  return lowest != nullptr && !(lowest->low > Speed());
}

// What is on board ends it first: the danger remains as a reason to do that.
void put_right(First first, Found found, SoftTyreJudged& judged) {
  if (judged.first != First::change_the_wheel) judged.first = first;
  found.lowered = std::min(found.level(), Level::care);
  judged.findings.add(std::move(found));
}

bool to_be_sealed(const SoftTyre& tyre) {
  return tyre.driven_by() == Help::sealant_kit && !tyre.sealed;
}

// With this air it must not be driven on.
void refuse_air(Found found, const SoftTyre& tyre, SoftTyreJudged& judged) {
  if (tyre.comes_off()) return put_right(First::change_the_wheel, std::move(found), judged);
  if (to_be_sealed(tyre)) return put_right(First::seal_it, std::move(found), judged);
  halt(std::move(found), judged);
}

// Nor with any air, nor by any help that drives on it.
void refuse_tyre(Found found, const SoftTyre& tyre, SoftTyreJudged& judged) {
  if (tyre.comes_off()) return put_right(First::change_the_wheel, std::move(found), judged);
  judged.carried = CarriedBy::nothing;
  halt(std::move(found), judged);
}

// ---- the leak ----

GaugePressure cold(GaugePressure read, bool hot, GaugePressure rise) {
  return hot ? std::max(kilopascals(0.0), read - rise) : read;
}

// Both readings as if cold, and the error of their difference.
struct ColdReadings {
  GaugePressure first;
  GaugePressure second;
  GaugePressure error;
  bool any_hot;

  explicit ColdReadings(const SoftTyre& tyre)
      : first(cold(*tyre.first, tyre.first_hot, usual_rise)),
        second(cold(*tyre.second, tyre.second_hot, usual_rise)),
        error(pressure_gauge_error + rise_error * (tyre.first_hot ? 1.0 : 0.0) +
              rise_error * (tyre.second_hot ? 1.0 : 0.0)),
        any_hot(tyre.first_hot || tyre.second_hot) {}

  bool rise() const { return second > first + error; }
  // What may have been lost without being seen.
  GaugePressure hidden() const { return std::max(kilopascals(0.0), first - second) + error; }
};

bool readings_rise(const SoftTyre& tyre) {
  return tyre.first && tyre.second && ColdReadings(tyre).rise();
}

// How far apart such readings must be to exclude a leak that makes it unfit before the next one.
Duration shows_after(const SoftTyre& tyre, GaugePressure hidden) {
  const GaugePressure room = *tyre.latest() - tyre.stop_below();
  return room > kilopascals(0.0) ? next_reading * (hidden / room) : next_reading;
}

void doubt(const SoftTyre& tyre, const ColdReadings& read, Duration wait, Findings& findings) {
  const Duration apart = *tyre.apart;
  if (apart >= wait) wait = apart * 2.0;  // more was lost than through the rubber
  Sources sources{&air::natural_loss_source()};
  if (read.any_hot) sources.push_back(&air::hot_rise_source());
  const auto in = [&](Duration time) { return Value::at_least(read.hidden() * (time / apart)); };
  if (apart < too_close)
    findings.add(finding::leak_not_sure_at_all, {apart, wait}, sources);
  else if (apart < told_by_the_day)
    findings.add(finding::leak_not_sure, {in(minutes(60.0)), apart, wait}, sources);
  else
    findings.add(finding::leak_not_sure_a_day, {in(days(1.0)), apart, wait}, sources);
}

std::optional<LeakFound> leak_between_readings(const SoftTyre& tyre, Findings& findings) {
  const ColdReadings read(tyre);
  const air::Conditions same{mild};
  const air::GaugeReading before{read.first, same}, after{read.second, same};
  const auto leak = air::leak_between(before, after, *tyre.apart, read.error);
  if (!read.rise()) {  // judge_pressure covers that
    const auto judged =
        air::judge_loss(air::AirHolder::tubeless, before, after, *tyre.apart, read.error);
    const Duration wait = shows_after(tyre, read.hidden());
    if (judged.kind == air::LossKind::natural && *tyre.apart >= wait)
      findings.add(finding::natural_loss,
                   {Value::at_least(read.hidden() * (days(1.0) / *tyre.apart))},
                   {&air::natural_loss_source()});
    else if (!leak)
      doubt(tyre, read, wait, findings);
  }
  if (!leak) return std::nullopt;
  Sources sources{&air::leak_down_source(), &air::orifice_source()};
  if (read.any_hot) sources.push_back(&air::hot_rise_source());
  return LeakFound{*leak, *tyre.latest(), std::move(sources)};
}

std::optional<LeakFound> leak_through_hole(const SoftTyre& tyre, Findings& findings) {
  const auto size = tyre.size ? patch::nominal_size(*tyre.size) : std::optional<patch::TyreSize>();
  if (!tyre.hole || !size || tyre.sealed) return std::nullopt;
  findings.add(finding::open_hole, {}, {&air::discharge_source()});
  const auto leak = air::leak_through(*tyre.hole, air::cavity_volume(*size), mild, air::any_hole);
  if (!leak) return std::nullopt;
  return LeakFound{*leak,
                   tyre.latest().value_or(tyre.set),
                   {&air::leak_down_source(), &air::orifice_source(), &air::discharge_source(),
                    &air::cavity_source(), &air::cavity_fill_source()}};
}

// How long it can be driven on.
void judge_time(const SoftTyre& tyre, const LeakFound& found, SoftTyreJudged& judged) {
  if (!(found.now > tyre.stop_below())) return;
  const auto left = air::time_between(found.leak, found.now, tyre.stop_below());
  if (!left) return;
  Sources sources = found.sources;
  sources.push_back(&air::do_not_drive_source());
  const Values soonest{Value::at_most(left->soonest)};
  if (tyre.runs_flat())
    judged.findings.add(finding::leaking_run_flat, soonest, std::move(sources));
  else if (left->soonest < too_short)
    refuse_air({finding::leaking_fast, soonest, std::move(sources)}, tyre, judged);
  else
    judged.findings.add(finding::leaking, soonest, std::move(sources));
}

// ---- what it holds now ----

bool too_soft(const SoftTyre& tyre) {
  const auto latest = tyre.latest();
  return latest && *latest <= air::do_not_drive_below(tyre.set);
}

// The minimum of its kind, as every sheet has it.
patch::LeastPressure least_of(const SoftTyre& tyre) {
  if (tyre.size) return patch::least_pressure_of(*tyre.size, tyre.load);
  return {patch::least_pressure(), &patch::least_pressure_source()};
}

void judge_what_it_has(const SoftTyre& tyre, GaugePressure latest, SoftTyreJudged& judged) {
  const patch::LeastPressure least = least_of(tyre);
  if (tyre.latest_hot())
    judged.findings.add(finding::hot_reading, {latest}, {&advice::hot_reading});
  if (too_soft(tyre)) {
    if (tyre.runs_flat()) return;  // the way home covers that
    refuse_air({finding::too_soft, {latest}, {&air::do_not_drive_source()}}, tyre, judged);
    if (tyre.sealed) judged.findings.add(finding::sealant_needs_air);
  } else if (latest < least.pressure && !tyre.runs_flat()) {
    refuse_air({finding::pressure_under_least,
                {Value::at_most(latest), Value::at_least(least.pressure)},
                {least.from}},
               tyre, judged);
  } else if (latest < tyre.set - pressure_gauge_error) {
    judged.findings.add(finding::softer_than_set, {latest, Value::at_least(tyre.set)});
  }
}

void judge_pressure(const SoftTyre& tyre, SoftTyreJudged& judged) {
  if (const auto latest = tyre.latest()) judge_what_it_has(tyre, *latest, judged);
  if (readings_rise(tyre)) {
    const ColdReadings read(tyre);
    judged.findings.add(finding::readings_rise, {read.first, read.second},
                        {&air::natural_loss_source()});
  } else if (!judged.leak && !tyre.read_twice() && !too_soft(tyre)) {
    judged.findings.add(finding::leak_not_judged);
  }
}

// The air carries the load, unless the tyre is made to run flat. A tyre that may be leaking gets no
// allowance for the gauge's error.
void judge_carried_load(const SoftTyre& tyre, SoftTyreJudged& judged) {
  const auto rated = tyre.size ? patch::greatest_load(*tyre.size) : std::nullopt;
  if (!tyre.load || !rated) return;
  if (*tyre.load > rated->mass) {  // and so is what takes its place
    judged.carried = CarriedBy::nothing;
    return halt(overload(*tyre.load, rated->mass), judged);
  }
  const auto latest = tyre.latest();
  const auto support = patch::Support::of(*tyre.size, rated->mass, tyre.load);
  if (!latest || !support || tyre.runs_flat()) return;
  const GaugePressure least = support->needed(*tyre.load) + pressure_gauge_error;
  if (*latest < least)
    refuse_air({finding::pressure_low,
                {*latest, *tyre.load, Value::at_least(least)},
                {&patch::least_pressure_source()}},
               tyre, judged);
}

// ---- what makes it unfit even if it holds air ----

void judge_hole(const SoftTyre& tyre, SoftTyreJudged& judged) {
  if (tyre.runs_flat() && tyre.outside_tread())
    refuse_tyre({finding::hole_in_its_support, {}, {&air::repair_source()}}, tyre, judged);
  else if (tyre.place == air::Place::sidewall)
    refuse_tyre({finding::hole_in_sidewall, {}, {&air::repair_source()}}, tyre, judged);
  else if (tyre.hole && *tyre.hole > air::repairable_hole && !tyre.runs_flat())
    refuse_tyre({finding::hole_too_wide, {}, {&air::repair_source()}}, tyre, judged);
  else if (!judged.leak && (tyre.hole || tyre.outside_tread()))
    judged.findings.add(finding::hole_holds);
}

// Not by any local law: by the commonest legal minimum.
void judge_worn_out(const SoftTyre& tyre, Length tread, SoftTyreJudged& judged) {
  const standard::TreadLaw& law = *standard::find_tread_law("elsewhere");
  if (tread < law.least)
    refuse_tyre({finding::tread_law,
                 {Value::depth(tread), law.place, Value::depth(law.least)},
                 {&law.source}},
                tyre, judged);
  else
    judge_low_tread(tread, judged.findings);
}

// Past its age it is unfit, but may take the car to where it is changed.
void judge_its_age(const SoftTyre& tyre, SoftTyreJudged& judged) {
  Findings found;
  judge_age(tyre.age->least_years, found);
  for (Found& one : found.found) {
    if (one.level() == Level::unfit && tyre.comes_off())
      put_right(First::change_the_wheel, std::move(one), judged);
    else
      judged.findings.add(std::move(one));
  }
}

void judge_the_tyre_itself(const SoftTyre& tyre, SoftTyreJudged& judged) {
  if (tyre.damaged) refuse_tyre({finding::damage, {}, {&air::repair_source()}}, tyre, judged);
  if (tyre.driven_flat)
    refuse_tyre({tyre.runs_flat() ? finding::distance_used : finding::driven_flat,
                 {},
                 {&air::repair_source()}},
                tyre, judged);
  judge_hole(tyre, judged);
  if (tyre.sealed) judged.findings.add(finding::sealant_inside, {}, {&air::repair_source()});
  if (tyre.tread) judge_worn_out(tyre, *tyre.tread, judged);
  if (tyre.age) judge_its_age(tyre, judged);
}

void say_what_comes_first(const SoftTyre& tyre, SoftTyreJudged& judged) {
  if (judged.first == First::seal_it)
    judged.findings.add(finding::seal_first);
  else if (judged.first == First::change_the_wheel && !tyre.on_stage)
    judged.findings.add(finding::change_first);
}

// ---- the way home ----

std::optional<air::Way> way_by(Help help) {
  switch (help) {
    case Help::nothing:
      return air::Way::plain_flat;
    case Help::self_supporting:
      return air::Way::self_supporting;
    case Help::lubricated:
      return air::Way::lubricated;
    case Help::temporary_spare:
      return air::Way::temporary_spare;
    case Help::sealant_kit:
      return air::Way::sealant_kit;
    case Help::full_spare:
      break;
  }
  return std::nullopt;
}

void judge_distance(const SoftTyre& tyre, const WayHome& home, Findings& findings) {
  const air::GetHome& by = home.by;
  if (!(by.speed > Speed()))
    findings.add(finding::stop_now, {}, home.sources);
  else if (tyre.way && by.distance && *tyre.way > *by.distance)
    findings.add(finding::too_far,
                 {Value::way_at_least(*tyre.way), Value::way_at_most(*by.distance)}, home.sources);
  else
    findings.add(finding::get_home, {by.speed, by.words}, home.sources);
}

}  // namespace

std::optional<GaugePressure> SoftTyre::latest() const {
  const auto read = second ? second : first;
  if (!read) return std::nullopt;
  return cold(*read, latest_hot(), air::hot_rise.high);
}

std::optional<Help> SoftTyre::driven_by() const {
  if (help != Help::nothing) return help;
  if (on_stage && spares.value_or(0) > 0) return Help::full_spare;
  if (sealed) return Help::sealant_kit;
  return size && size->run_flat ? Help::self_supporting : Help::nothing;
}

bool SoftTyre::comes_off() const {
  const auto by = driven_by();
  return by == Help::full_spare || by == Help::temporary_spare;
}

bool SoftTyre::runs_flat() const {
  const auto by = driven_by();
  return by == Help::self_supporting || by == Help::lubricated;
}

// A beaded edge leaves its rim below its own minimum.
GaugePressure SoftTyre::stop_below() const {
  const GaugePressure usual = air::do_not_drive_below(set);
  const bool by_pressure = size && size->family == sidewall::Family::beaded_edge;
  return by_pressure ? std::max(usual, least_of(*this).pressure) : usual;
}

SoftTyreJudged judge_soft_tyre(const SoftTyre& tyre) {
  SoftTyreJudged judged;
  if (tyre.runs_flat()) judged.carried = CarriedBy::itself;
  judged.leak = tyre.read_twice() ? leak_between_readings(tyre, judged.findings)
                                  : leak_through_hole(tyre, judged.findings);
  judge_pressure(tyre, judged);
  judge_carried_load(tyre, judged);
  judge_the_tyre_itself(tyre, judged);
  if (judged.leak) judge_time(tyre, *judged.leak, judged);
  say_what_comes_first(tyre, judged);
  return judged;
}

std::optional<WayHome> judge_way_home(const SoftTyre& tyre, SoftTyreJudged& judged) {
  const auto help = tyre.driven_by();
  if (help == Help::full_spare && !stopped(judged))
    judged.findings.add(finding::full_spare, {}, {&advice::roadside});
  const auto way = help ? way_by(*help) : std::nullopt;
  if (!way || judged.carried == CarriedBy::nothing) return std::nullopt;
  // A tyre that still holds air is driven as such, not yet as a flat one; one that was refused may
  // be driven neither flat nor sealed.
  if (way == air::Way::plain_flat ? !too_soft(tyre) : stopped(judged)) return std::nullopt;
  const auto rated = tyre.size ? patch::greatest_load(*tyre.size) : std::nullopt;
  WayHome home;
  home.by = air::get_home(*way, tyre.load && rated ? *tyre.load / rated->mass : usual_load_share);
  home.sources = {home.by.source};
  if (way == air::Way::sealant_kit && tyre.outside_tread()) {
    refuse_tyre({finding::kit_no_use, {home.by.words}, home.sources}, tyre, judged);
    return std::nullopt;
  }
  if (way == air::Way::self_supporting) home.sources.push_back(&air::run_flat_load_source());
  judged.findings.add(
      fixed_limit(LimitName::get_home, home.by.speed, {}, {home.by.words}, home.sources));
  judge_distance(tyre, home, judged.findings);
  return home;
}

void judge_roadside(Findings& findings) {
  findings.add(finding::at_the_roadside, {}, {&advice::roadside});
}

}  // namespace treadwater::judge
