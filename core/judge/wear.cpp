#include "core/judge/wear.hpp"

#include <utility>

#include "core/judge/advice.hpp"
#include "core/judge/age.hpp"
#include "core/judge/tread.hpp"

namespace treadwater::judge {
namespace {

using car::Corner;
using wear::days_a_month;

// An older reading says little about today: ours.
constexpr long still_good_days = 183;
// A date this near calls for frequent measuring: ours.
constexpr double soon = 3.0 * days_a_month;
// With fewer readings it is impossible to say which is odd.
constexpr std::size_t enough_to_be_odd = 4;
// Two tyres on one axle, or one behind the other, that differ by more than this are worth
// mentioning.
constexpr Length uneven_pair = millimetres(1.5);

void judge_rise(const LoggedTyre& tyre, const wear::Rise& rise, Findings& findings) {
  if (rise.at == 0) return;
  const wear::Log& log = tyre.log;
  const long day = log.readings()[rise.at].day;
  findings.add(day != log.last_day() ? finding::tread_rose_and_stayed : finding::tread_rose_once,
               {tyre.name(), Value::depth(log.least_of(day)), Value::month(day),
                Value::depth(rise.before), Value::earlier_readings(rise.at)});
}

void judge_odometer(const LoggedTyre& tyre, const wear::RunsBack& back, Findings& findings) {
  const auto day = [](const wear::Reading& reading) {
    return standard::write_iso_date(standard::date_of(reading.day));
  };
  findings.add(finding::odometer_back,
               {tyre.name(), Value::odometer(*back.low.odometer), day(back.low),
                Value::odometer(*back.high.odometer), day(back.high)});
}

void judge_latest(const LoggedTyre& tyre, const standard::TreadLaw& law, Findings& findings) {
  const Length latest = tyre.log.latest();
  const Value now = Value::depth(latest);
  const Value least = Value::depth(law.least);
  switch (clearance(latest, law.least)) {
    case Clearance::under:
      return findings.add(finding::logged_tread_law, {tyre.name(), now, law.place, least},
                          {&law.source});
    case Clearance::at:
      return findings.add(finding::logged_tread_at_law, {tyre.name(), now, least, law.place},
                          {&law.source});
    case Clearance::clear:
      break;
  }
  if (latest <= low_tread)
    findings.add(finding::logged_tread_low, {tyre.name(), now}, {&advice::low_tread});
}

Finding winter_finding(bool any_tyre, const WinterClearance& winter) {
  const bool under = winter.tread == Clearance::under;
  if (!winter.in_season)
    return any_tyre ? finding::logged_winter_any_tyre_later : finding::logged_winter_tyre_later;
  if (any_tyre)
    return under ? finding::logged_winter_any_tyre_under : finding::logged_winter_any_tyre_at;
  return under ? finding::logged_winter_tyre_under : finding::logged_winter_tyre_at;
}

// What the winter law requires of any tyre, and of a winter tyre if this is one. Below the law's
// ordinary minimum, that finding is enough.
void judge_winter(const LoggedTyre& tyre, const standard::TreadLaw& law, standard::Date today,
                  Findings& findings) {
  const Length latest = tyre.log.latest();
  const auto winter = winter_clearance(law, latest, false, today);
  if (!winter || winter->tread == Clearance::clear || latest < law.least) return;
  findings.add(winter_finding(law.winter->any_tyre, *winter),
               {tyre.name(), law.place, Value::depth(winter->least), law.winter->words,
                Value::depth(latest), standard::write_iso_date(today)},
               {&*law.winter_source});
}

// A tyre is at least as old as its oldest reading.
void judge_log_age(const LoggedTyre& tyre, long today, Findings& findings) {
  const wear::Log& log = tyre.log;
  const long since = log.readings()[log.last_rise(wear::another_tyre).at].day;
  judge_age(tyre.name(), static_cast<double>(today - since) / wear::days_a_year, findings);
  if (today - log.last_day() > still_good_days)
    findings.add(finding::old_reading, {tyre.name(), Value::month(log.last_day())});
}

// A reading against the days, or the distances.
using ReadAs = std::optional<wear::Depth> (*)(const wear::Reading&);

std::optional<wear::Depth> by_day(const wear::Reading& reading) {
  return wear::Depth{static_cast<double>(reading.day), reading.depth};
}

std::optional<wear::Depth> by_distance(const wear::Reading& reading) {
  if (!reading.odometer) return std::nullopt;
  return wear::Depth{in_kilometres(*reading.odometer), reading.depth};
}

void judge_odd(const LoggedTyre& tyre, const std::vector<wear::Reading>& readings,
               const wear::Rate& rate, ReadAs read_as, Findings& findings) {
  if (readings.size() < enough_to_be_odd) return;
  for (const wear::Reading& reading : readings) {
    const auto depth = read_as(reading);
    if (!depth || !wear::is_odd(rate, *depth)) continue;
    const bool low_last =
        !(depth->at < rate.zero) && reading.depth < wear::depth_at(rate, depth->at);
    findings.add(low_last ? finding::odd_low_last : finding::odd_reading,
                 {tyre.name(), Value::depth(reading.depth), Value::month(reading.day)});
  }
}

void judge_rate(const LoggedTyre& tyre, const std::vector<wear::Reading>& readings,
                const wear::Rate& rate, ReadAs read_as, Findings& findings) {
  judge_odd(tyre, readings, rate, read_as, findings);
  if (!(rate.per_unit > Length()))
    findings.add(finding::no_wear_seen, {tyre.name()});
  else if (!(rate.low > Length()))
    findings.add(finding::wear_not_certain, {tyre.name()});
}

// Is it down to the legal depth by now, or soon?
void judge_due(const LoggedTyre& tyre, const wear::Rate& by_day, const DepthAhead& ahead, long day,
               Findings& findings) {
  const wear::Until until = wear::until(by_day, ahead.depth);
  if (!ahead.by_law || !until.earliest || by_day.from_there <= ahead.depth) return;
  const auto add = [&](Finding what, double when) {
    findings.add(what,
                 {tyre.name(), Value::depth(ahead.depth), Value::month(static_cast<long>(when))},
                 {ahead.source});
  };
  const auto now = static_cast<double>(day);
  if (until.central && *until.central < now)
    add(finding::law_passed, *until.central);
  else if (*until.earliest < now)
    add(finding::law_perhaps_passed, *until.earliest);
  else if (*until.earliest < now + soon)
    add(finding::law_soon, *until.earliest);
}

}  // namespace

std::array<DepthAhead, 2> depths_ahead(const standard::TreadLaw& law) {
  const DepthAhead least{law.least, &law.source, true};
  if (law.winter && law.winter->any_tyre)
    return {{{law.winter->least_radial, &*law.winter_source, true}, least}};
  return {{{low_tread, &advice::low_tread, false}, least}};
}

wear::Wear judge_log(const LoggedTyre& tyre, const standard::TreadLaw* law, standard::Date today,
                     Findings& findings) {
  const long day = standard::days_since_1970(today);
  wear::Wear wear = wear::wear_of(tyre.log);
  judge_rise(tyre, wear.rise, findings);
  if (wear.runs_back) judge_odometer(tyre, *wear.runs_back, findings);
  if (law != nullptr) {
    judge_latest(tyre, *law, findings);
    judge_winter(tyre, *law, today, findings);
  }
  judge_log_age(tyre, day, findings);
  if (!wear.by_day) {
    findings.add(wear.by_distance ? finding::one_day : finding::one_reading, {tyre.name()});
    if (wear.by_distance) judge_rate(tyre, wear.counted, *wear.by_distance, by_distance, findings);
    return wear;
  }
  judge_rate(tyre, wear.counted, *wear.by_day, by_day, findings);
  if (law != nullptr && wear.by_day->per_unit > Length())
    for (const DepthAhead& ahead : depths_ahead(*law))
      judge_due(tyre, *wear.by_day, ahead, day, findings);
  return wear;
}

void judge_pairs(const std::vector<LoggedTyre>& tyres, Findings& findings) {
  const auto find = [&](Corner corner) -> const LoggedTyre* {
    for (const LoggedTyre& tyre : tyres)
      if (tyre.corner == corner) return &tyre;
    return nullptr;
  };
  const auto pair = [&](Corner one, Corner other, Finding uneven) {
    const LoggedTyre *deeper = find(one), *lower = find(other);
    if (deeper == nullptr || lower == nullptr) return;
    if (deeper->log.latest() < lower->log.latest()) std::swap(deeper, lower);
    const Length gap = deeper->log.latest() - lower->log.latest();
    if (gap < uneven_pair) return;
    findings.add(uneven, {lower->name(), Value::worn(gap), deeper->name()},
                 {&advice::tread_differences});
  };
  pair(Corner::front_left, Corner::front_right, finding::unevenly_worn_across);
  pair(Corner::rear_left, Corner::rear_right, finding::unevenly_worn_across);
  pair(Corner::front_left, Corner::rear_left, finding::unevenly_worn_along);
  pair(Corner::front_right, Corner::rear_right, finding::unevenly_worn_along);
}

}  // namespace treadwater::judge
