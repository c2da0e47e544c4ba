#include "core/judge/pressure.hpp"

#include <algorithm>

#include "core/judge/advice.hpp"
#include "core/judge/tyre.hpp"
#include "core/standard/instrument.hpp"
#include "core/standard/load_index.hpp"
#include "core/standard/speed_load.hpp"

namespace treadwater::judge {
namespace {

using standard::pressure_gauge_error;

constexpr Speed base_pressures_hold_to = kilometres_per_hour(160.0);
// Of what the load needs, and from this pressure on: a patch shorter than it could be.
constexpr double much_more = 1.6;
constexpr GaugePressure much_from = kilopascals(240.0);
// Of the pressure of its load rating; no car maker or load formula needs as much. Our choice.
constexpr double absurd = 1.5;
// 44 psi and 300 kPa are the same marking.
constexpr GaugePressure same_marking = psi(0.5);
// Converting to colder air and back loses the last digits: ignore them.
constexpr GaugePressure rounding = kilopascals(1e-6);

// The formula whose reference is the pressure for its kind: that of its load rating, or the one of
// the highest at which car tyres are rated.
std::optional<patch::LoadLaw> usual_law(const sidewall::Reading& tyre) {
  using sidewall::Family;
  if (const auto laws = patch::laws_of(tyre)) return laws->law;
  const bool car_or_motorcycle = tyre.motorcycle || tyre.family == Family::inch_cross_ply ||
                                 tyre.family == Family::us_alphanumeric ||
                                 tyre.family == Family::overall_diameter;
  return car_or_motorcycle ? std::optional(patch::european_extra_load()) : std::nullopt;
}

// One wheel's load on one tyre at one cold pressure.
class LoadAtPressure {
 public:
  LoadAtPressure(const TyreCase& tyre, const patch::Support& support, Findings& findings)
      : tyre_(tyre), support_(support), load_(*tyre.load), findings_(findings) {
    const auto symbol = support.symbol();
    if (symbol) top_ = standard::speed_row(*symbol).speed;
    // Pressures are judged at the intended speed, or the symbol's if lower.
    const Speed intended = tyre.intended.value_or(Speed());
    speed_ = top_ ? std::min(intended, *top_) : intended;
  }

  // Nothing if no pressure carries it at that speed.
  std::optional<GaugePressure> needed() {
    const Mass carried = support_.carried_at(speed_);
    if (load_ > carried) {
      findings_.add(overload_at_speed(speed_, load_, carried, patch::vehicle_of(*tyre_.size)));
      return std::nullopt;
    }
    return support_.needed_at(load_, speed_);
  }
  bool more_for_speed(GaugePressure needed) const {
    return needed > support_.needed_at(load_, Speed());
  }

  void limit(GaugePressure cold, std::optional<GaugePressure> needed) {
    const Speed most = top_.value_or(speed_without_symbol);
    Limit limit;
    limit.what = LimitName::load_at_pressure;
    limit.central = support_.speed_supported(load_, cold, most);
    const GaugePressure base = support_.needed(load_);
    const GaugePressure out = by_a_gauge(tyre_.size->marked_pressure, base) - base;
    limit.low = support_.speed_supported(load_, std::max(kilopascals(0.0), cold - out), most);
    limit.high = support_.speed_supported(load_, cold + pressure_gauge_error, most);
    limit.shown = limit.low == limit.high ? Limit::Shown::exact : Limit::Shown::band;
    limit.sources = support_.sources();
    if (top_ && in_kilometres_per_hour(*top_) > 210.0)
      add_once(limit.sources, sources_of_load_at_speed(patch::vehicle_of(*tyre_.size)));
    limit.sources.push_back(limit.high > base_pressures_hold_to ? &standard::speed_pressure_source()
                                                                : &advice::base_pressure);
    tell_why(cold, base, limit);
    judge_pressure(cold, base, needed, limit);
    judge_room_under_marking(tyre_.size->marked_pressure, base, findings_);
    findings_.add(std::move(limit));
  }

 private:
  // What stops it may be the gauge's error alone.
  void tell_why(GaugePressure cold, GaugePressure base, Limit& limit) const {
    if (cold >= base && limit.low == Speed()) {
      limit.what = LimitName::load_by_a_gauge;
      limit.why = {load_, Value::at_least(by_a_gauge(tyre_.size->marked_pressure, base)),
                   pressure_gauge_error, Value::at_most(cold)};
      return;
    }
    limit.why = {load_, Value::at_least(base), base_pressures_hold_to,
                 cold < base ? Value::at_most(cold) : Value(cold)};
  }

  void judge_pressure(GaugePressure cold, GaugePressure base, std::optional<GaugePressure> needed,
                      const Limit& limit) {
    const Sources law = support_.sources();
    if (cold < base)
      findings_.add(finding::pressure_low, {Value::at_most(cold), load_, Value::at_least(base)},
                    law);
    else if (limit.low == Speed())
      findings_.add(
          finding::pressure_at_least,
          {pressure_gauge_error, Value::at_least(by_a_gauge(tyre_.size->marked_pressure, base))},
          law);
    else if (needed && cold < *needed)
      findings_.add(finding::pressure_low_for_speed,
                    {*tyre_.intended, Value::at_least(*needed), Value::at_most(cold)},
                    {&standard::speed_pressure_source()});
    if (cold > base * much_more && cold > much_from &&
        cold <= support_.reference() + noticeably_more)
      findings_.add(finding::pressure_high_for_load, {Value::at_least(base)}, law);
  }

  const TyreCase& tyre_;
  const patch::Support& support_;
  Mass load_;
  Findings& findings_;
  std::optional<Speed> top_;
  Speed speed_;
};

void refuse_overload(Mass load, Mass greatest, Findings& findings) {
  Found found = overload(load, greatest);
  findings.add(fixed_limit(LimitName::overload, Speed(), {}, found.values, found.sources));
  findings.add(std::move(found));
}

// A car's beaded edge has no rating, but least pressures by the load, as far as the schedules go.
bool goes_by_schedule(const TyreCase& tyre) {
  const sidewall::Reading& size = *tyre.size;
  return size.family == sidewall::Family::beaded_edge && !size.motorcycle && size.section_width &&
         tyre.load &&
         patch::beaded_edge_pressure(*size.section_width, *tyre.load * 2.0, patch::Wheels::single);
}

// If no formula applies, no load is carried below the minimum pressure of its kind.
void refuse_soft(const TyreCase& tyre, Findings& findings) {
  const patch::LeastPressure least = patch::least_pressure_of(*tyre.size, tyre.load);
  const auto cold = tyre.cold();
  if (!cold || *cold >= least.pressure) return;
  const Values values{Value::at_most(*cold), Value::at_least(least.pressure)};
  findings.add(fixed_limit(LimitName::too_soft, Speed(), {}, values, {least.from}));
  findings.add(finding::pressure_under_least, values, {least.from});
}

}  // namespace

Sources sources_of_load_at_speed(standard::Vehicle vehicle) {
  Sources sources{&standard::load_index_source(), &standard::speed_load_source()};
  if (vehicle == standard::Vehicle::motorcycle) sources.push_back(&standard::motorcycle_source());
  return sources;
}

Found overload(Mass load, Mass greatest) {
  return Found(finding::overload, {Value::at_least(load), Value::at_most(greatest)},
               {&standard::load_index_source()});
}

Found overload_at_speed(Speed speed, Mass load, Mass carried, standard::Vehicle vehicle) {
  return Found(finding::overload_at_speed, {speed, Value::at_most(carried), Value::at_least(load)},
               sources_of_load_at_speed(vehicle));
}

void judge_how_rated(const patch::GreatestLoad& load, Findings& findings) {
  const Sources printed{&patch::under_index_source(), &standard::load_index_source()};
  if (load.near_index)
    findings.add(finding::load_near_index, {Value::at_least(load.mass), std::to_string(load.index)},
                 printed);
  else if (load.under_index)
    findings.add(finding::load_under_index, {Value::at_most(load.mass)}, printed);
  if (load.worked_out)
    findings.add(finding::load_index_assumed, {std::to_string(load.index), load.mass},
                 {&patch::p_metric_capacity_source()});
}

std::optional<patch::GreatestLoad> judge_rating(const sidewall::Reading& tyre,
                                                std::optional<Mass> load, Findings& findings) {
  const auto fits = patch::index_fits(tyre);
  const auto found = patch::greatest_load(tyre, load);
  if (fits == patch::IndexFits::no_tyre)
    findings.add(finding::load_index_wrong, {std::to_string(tyre.service->load_index)},
                 {&patch::index_fits_source()});
  if (fits == patch::IndexFits::extra_load && !tyre.extra_load && !tyre.high_load)
    findings.add(finding::extra_load_assumed, {std::to_string(tyre.service->load_index)},
                 {&patch::index_fits_source()});
  if (found && found->marked)
    findings.add(finding::marked_load_lower, {found->mass, std::to_string(found->index)});
  if (found)
    judge_how_rated(*found, findings);
  else if (!tyre.service)
    findings.add(finding::load_index_unknown);
  return found;
}

Carrying judge_load(const TyreCase& tyre, Findings& findings) {
  Carrying carrying;
  const auto cold = tyre.cold();
  bool judged = false;  // at this pressure
  carrying.greatest = judge_rating(*tyre.size, tyre.load, findings);
  if (carrying.greatest) {
    const Mass greatest = carrying.greatest->mass;
    carrying.support = patch::Support::of(*tyre.size, greatest, tyre.load);
    if (!carrying.support) findings.add(finding::reference_pressure_unknown);
    const bool overloaded = tyre.load && *tyre.load > greatest;
    if (overloaded && (cold || !carrying.support)) refuse_overload(*tyre.load, greatest, findings);
    if (tyre.load && !overloaded && carrying.support) {
      LoadAtPressure at(tyre, *carrying.support, findings);
      carrying.needed = at.needed();
      carrying.more_for_speed = carrying.needed && at.more_for_speed(*carrying.needed);
      if (cold) at.limit(*cold, carrying.needed);
      judged = cold.has_value();
    }
  }
  if (!judged) {
    findings.no_speed = !(cold && goes_by_schedule(tyre));
    refuse_soft(tyre, findings);
  }
  if (cold) judge_highest(*tyre.size, *cold, carrying.needed, findings);
  judge_narrow_beaded_edge(*tyre.size, findings);
  return carrying;
}

GaugePressure by_a_gauge(const std::optional<GaugePressure>& marked, GaugePressure need) {
  const GaugePressure shown = need + pressure_gauge_error;
  return marked && *marked < shown ? std::max(*marked, need) : shown;
}

void judge_room_under_marking(const std::optional<GaugePressure>& marked, GaugePressure need,
                              Findings& findings) {
  if (!marked || need + pressure_gauge_error <= *marked + rounding) return;
  const Sources law{&patch::least_pressure_source()};
  if (need > *marked + rounding)
    findings.add(finding::no_room_under_marking, {Value::at_least(need), *marked}, law);
  else
    findings.add(finding::little_room_under_marking,
                 {Value::at_least(need), *marked, pressure_gauge_error}, law);
}

void judge_highest(const sidewall::Reading& tyre, GaugePressure highest,
                   std::optional<GaugePressure> least, Findings& findings) {
  if (tyre.marked_pressure && highest > *tyre.marked_pressure + same_marking)
    findings.add(finding::above_marking, {highest, *tyre.marked_pressure});
  const auto usual = usual_law(tyre);
  if (!usual) return;
  if (highest > usual->reference * absurd)
    findings.add(finding::pressure_too_high, {highest, usual->reference}, {usual->source});
  else if (highest > usual->reference + noticeably_more &&
           !(least && highest <= *least + pressure_gauge_error + rounding))
    findings.add(finding::pressure_high, {usual->reference}, {usual->source});
}

void judge_hot_reading(const TyreCase& tyre, Findings& findings) {
  if (tyre.hot == true && tyre.gauge)
    findings.add(finding::hot_reading, {*tyre.cold()}, {&advice::hot_reading});
}

void judge_narrow_beaded_edge(const sidewall::Reading& tyre, Findings& findings) {
  if (tyre.family != sidewall::Family::beaded_edge || tyre.motorcycle || !tyre.section_width ||
      *tyre.section_width >= patch::narrowest_of_cars)
    return;
  const patch::PressureBand usual = patch::beaded_edge_motorcycle();
  findings.add(finding::narrow_beaded_edge, {usual.low, usual.high},
               {&patch::beaded_edge_motorcycle_source()});
}

}  // namespace treadwater::judge
