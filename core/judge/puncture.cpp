#include "core/judge/puncture.hpp"

#include "core/air/natural_loss.hpp"
#include "core/air/warning.hpp"
#include "core/judge/advice.hpp"
#include "core/judge/age.hpp"
#include "core/judge/pressure.hpp"
#include "core/judge/tread.hpp"
#include "core/patch/geometry.hpp"
#include "core/patch/supported.hpp"
#include "core/standard/instrument.hpp"
#include "core/standard/tread_law.hpp"

namespace treadwater::judge {
namespace {

using standard::pressure_gauge_error;

// Readings closer together in time than this cannot tell whether it leaks.
constexpr Duration long_enough = minutes(20.0);
// Less time than it takes to find a place and stop: ours.
constexpr Duration too_short = minutes(5.0);
// Of its rating, if the load is not known: the load run-flat tyres are tested at.
constexpr double usual_load_share = 0.65;

// It must not be driven on as it is.
void refuse(Found found, SoftTyreJudged& judged) {
  Limit limit = fixed_limit(LimitName::soft_tyre, Speed(), {}, {}, found.sources);
  limit.found = found;
  judged.findings.add(std::move(found));
  judged.findings.add(std::move(limit));
}

// Nor by any help that drives on it.
void stop(Found found, SoftTyreJudged& judged) {
  judged.carried = CarriedBy::nothing;
  refuse(std::move(found), judged);
}

// ---- the leak ----

bool readings_rise(const SoftTyre& tyre) {
  return tyre.first && tyre.second && *tyre.second > *tyre.first + pressure_gauge_error;
}

std::optional<LeakFound> leak_between_readings(const SoftTyre& tyre, Findings& findings) {
  const air::Conditions same{mild};
  const air::GaugeReading before{*tyre.first, same}, after{*tyre.second, same};
  const auto leak = air::leak_between(before, after, *tyre.apart);
  const Sources loss{&air::natural_loss_source()};
  if (!readings_rise(tyre)) {  // judge_pressure covers that
    const auto judged = air::judge_loss(air::AirHolder::tubeless, before, after, *tyre.apart);
    if (judged.kind == air::LossKind::natural && *tyre.apart >= long_enough)
      findings.add(finding::natural_loss, {}, loss);
    else if (!leak)
      findings.add(finding::leak_not_sure, {}, loss);
  }
  if (!leak) return std::nullopt;
  return LeakFound{*leak, *tyre.second, {&air::leak_down_source(), &air::orifice_source()}};
}

std::optional<LeakFound> leak_through_hole(const SoftTyre& tyre, Findings& findings) {
  const auto size = tyre.size ? patch::nominal_size(*tyre.size) : std::optional<patch::TyreSize>();
  if (!tyre.hole || !size) return std::nullopt;
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
  if (tyre.read_twice() && !tyre.runs_flat() && left->soonest < too_short)
    stop({finding::leaking_fast, soonest, std::move(sources)}, judged);
  else
    judged.findings.add(finding::leaking, soonest, std::move(sources));
}

// ---- what it holds now ----

void judge_pressure(const SoftTyre& tyre, SoftTyreJudged& judged) {
  const auto latest = tyre.latest();
  if (latest && *latest <= tyre.stop_below() && !tyre.runs_flat())
    refuse({finding::too_soft, {*latest}, {&air::do_not_drive_source()}}, judged);
  else if (latest && *latest < tyre.set - pressure_gauge_error)
    judged.findings.add(finding::softer_than_set, {*latest, Value::at_least(tyre.set)});
  if (readings_rise(tyre))
    judged.findings.add(finding::readings_rise, {*tyre.first, *tyre.second},
                        {&air::natural_loss_source()});
  else if (!judged.leak && !tyre.read_twice())
    judged.findings.add(finding::leak_not_judged);
}

// The air carries the load, unless the tyre is made to run flat. A tyre that may be leaking gets no
// allowance for the gauge's error.
void judge_carried_load(const SoftTyre& tyre, SoftTyreJudged& judged) {
  const auto rated = tyre.size ? patch::greatest_load(*tyre.size, tyre.load) : std::nullopt;
  if (!tyre.load || !rated) return;
  judge_how_rated(*rated, judged.findings);
  if (*tyre.load > rated->mass) return stop(overload(*tyre.load, rated->mass), judged);
  const auto latest = tyre.latest();
  const auto support = patch::Support::of(*tyre.size, rated->mass, tyre.load);
  if (!latest || !support || tyre.runs_flat()) return;
  const GaugePressure least = support->needed(*tyre.load) + pressure_gauge_error;
  if (*latest < least)
    stop({finding::pressure_low,
          {*latest, *tyre.load, Value::at_least(least)},
          {&patch::least_pressure_source()}},
         judged);
}

// ---- what makes it unfit even if it holds air ----

void judge_hole(const SoftTyre& tyre, SoftTyreJudged& judged) {
  if (tyre.runs_flat() && tyre.outside_tread())
    stop({finding::hole_in_its_support, {}, {&air::repair_source()}}, judged);
  if (tyre.hole && *tyre.hole > air::repairable_hole && !tyre.runs_flat())
    stop({finding::hole_too_wide, {}, {&air::repair_source()}}, judged);
  else if (!judged.leak && (tyre.hole || tyre.outside_tread()))
    judged.findings.add(finding::hole_holds);
}

// Not by any local law: by the commonest legal minimum.
void judge_worn_out(Length tread, SoftTyreJudged& judged) {
  const standard::TreadLaw& law = *standard::find_tread_law("elsewhere");
  if (tread < law.least)
    stop({finding::tread_law,
          {Value::depth(tread), law.place, Value::depth(law.least)},
          {&law.source}},
         judged);
  else
    judge_low_tread(tread, judged.findings);
}

void judge_the_tyre_itself(const SoftTyre& tyre, SoftTyreJudged& judged) {
  if (tyre.damaged) stop({finding::damage, {}, {&air::repair_source()}}, judged);
  if (tyre.driven_flat && !tyre.runs_flat())
    stop({finding::driven_flat, {}, {&air::repair_source()}}, judged);
  judge_hole(tyre, judged);
  if (tyre.sealed) judged.findings.add(finding::sealant_inside, {}, {&air::repair_source()});
  if (tyre.tread) judge_worn_out(*tyre.tread, judged);
  if (tyre.age) judge_age(tyre.age->least_years, judged.findings);
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

bool SoftTyre::runs_flat() const {
  return help == Help::self_supporting || help == Help::lubricated;
}

GaugePressure SoftTyre::stop_below() const { return air::do_not_drive_below(set); }

SoftTyreJudged judge_soft_tyre(const SoftTyre& tyre) {
  SoftTyreJudged judged;
  if (tyre.runs_flat()) judged.carried = CarriedBy::itself;
  judged.leak = tyre.read_twice() ? leak_between_readings(tyre, judged.findings)
                                  : leak_through_hole(tyre, judged.findings);
  judge_pressure(tyre, judged);
  judge_carried_load(tyre, judged);
  judge_the_tyre_itself(tyre, judged);
  if (judged.leak) judge_time(tyre, *judged.leak, judged);
  return judged;
}

std::optional<WayHome> judge_way_home(const SoftTyre& tyre, SoftTyreJudged& judged) {
  if (tyre.help == Help::full_spare)
    judged.findings.add(finding::full_spare, {}, {&advice::roadside});
  const auto way = tyre.help ? way_by(*tyre.help) : std::nullopt;
  if (!way) return std::nullopt;
  // A tyre that still holds air is driven as such, not yet as a flat one.
  if (way == air::Way::plain_flat && !(tyre.latest() && *tyre.latest() <= tyre.stop_below()))
    return std::nullopt;
  // A tyre that was refused may be driven neither flat nor sealed.
  if (judged.carried == CarriedBy::nothing && way != air::Way::temporary_spare) return std::nullopt;
  const auto rated = tyre.size ? patch::greatest_load(*tyre.size) : std::nullopt;
  WayHome home;
  home.by = air::get_home(*way, tyre.load && rated ? *tyre.load / rated->mass : usual_load_share);
  home.sources = {home.by.source};
  if (way == air::Way::sealant_kit && tyre.outside_tread()) {
    stop({finding::kit_no_use, {home.by.words}, home.sources}, judged);
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
