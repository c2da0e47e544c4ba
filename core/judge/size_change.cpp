#include "core/judge/size_change.hpp"

#include <algorithm>
#include <cmath>

#include "core/air/get_home.hpp"
#include "core/judge/advice.hpp"
#include "core/judge/age.hpp"
#include "core/judge/pressure.hpp"
#include "core/judge/tyre.hpp"
#include "core/standard/instrument.hpp"
#include "core/standard/load_index.hpp"
#include "core/standard/speedometer.hpp"

namespace treadwater::judge {
namespace {

using standard::SpeedSymbol;

constexpr Length close_clearance = millimetres(5.0);
// Further than any usual spacer moves a wheel.
constexpr Length too_far_moved = millimetres(30.0);
constexpr Length rim_may_differ = millimetres(25.4);

// ---- size ----

void judge_own_dimensions(const Fitted& fitted, Findings& findings) {
  if (fitted.tyre && !fitted.size())
    findings.add(finding::height_unknown, {fitted.tyre->canonical});
}

void judge_circumference(double ratio, Findings& findings) {
  const double percent = 100.0 * (ratio - 1.0);
  const double by = std::fabs(percent);
  const car::Difference difference = car::circumference_difference(ratio);
  if (difference == car::Difference::none) return;
  const bool far = difference == car::Difference::too_great;
  const Finding larger = far ? finding::circumference_far_larger : finding::circumference_larger;
  const Finding smaller = far ? finding::circumference_far_smaller : finding::circumference_smaller;
  findings.add(percent > 0.0 ? larger : smaller, {Value::number(by, 1)}, {&advice::size_change});
}

void judge_clearance(const car::FitmentChange& change, Findings& findings) {
  const Length moved = std::max(change.inward, change.outward);
  const Length nearest = std::max(moved, change.ride_height);
  if (moved > too_far_moved)
    findings.add(finding::moved_too_far, {Value::size(moved)}, {&advice::size_change});
  else if (nearest > close_clearance)
    findings.add(finding::clearance, {Value::size(nearest)}, {&advice::size_change});
}

void judge_rim(const patch::TyreSize& size, Length rim, Findings& findings) {
  const Length usual = patch::theoretical_rim_width(size);
  const Length off = std::max(rim - usual, usual - rim);
  if (!(off > rim_may_differ)) return;
  const bool far = off > rim_may_differ * 2.0;
  const Finding narrow = far ? finding::rim_far_too_narrow : finding::rim_narrow;
  const Finding wide = far ? finding::rim_far_too_wide : finding::rim_wide;
  findings.add(rim < usual ? narrow : wide, {Value::rim(usual), Value::rim(rim)},
               {&advice::rim_width, &patch::theoretical_rim_source()});
}

void judge_speedometer(const SizeChangeJudged::Sizes& sizes, Speed shown, Findings& findings) {
  const Sources rule{&standard::speedometer_source()};
  if (sizes.true_if_high > shown)
    findings.add(finding::speedometer_low, {shown, sizes.true_if_high}, rule);
  else if (sizes.true_if_true > shown)
    findings.add(sizes.change.circumference > 1.0 + car::noticeable_change
                     ? finding::speedometer
                     : finding::speedometer_a_little,
                 {shown, sizes.true_if_true}, rule);
  else if (shown > standard::most_shown(sizes.true_if_high))
    findings.add(finding::speedometer_high, {}, rule);
}

SizeChangeJudged::Sizes compared(const SizeChangeCase& change) {
  const Length offset = change.now.offset.value_or(Length());
  SizeChangeJudged::Sizes sizes;
  sizes.now = {*change.now.size(), change.now.cross_ply(), change.now.rim, offset};
  sizes.then = {*change.then.size(), change.then.cross_ply(), change.then.rim,
                change.then.offset.value_or(offset)};
  sizes.change = car::fitment_change(sizes.now, sizes.then);
  const double ratio = sizes.change.circumference;
  sizes.true_if_true = standard::true_speed_after(change.on_dial, ratio);
  sizes.true_if_high = standard::true_speed_after(standard::least_true(change.on_dial), ratio);
  return sizes;
}

void judge_sizes(const SizeChangeCase& change, SizeChangeJudged& judged) {
  const SizeChangeJudged::Sizes sizes = compared(change);
  Findings& findings = judged.findings;
  if (!change.now.offset || !change.then.offset) findings.add(finding::offset_unknown);
  judge_circumference(sizes.change.circumference, findings);
  judge_clearance(sizes.change, findings);
  if (change.then.rim) judge_rim(sizes.then.size, *change.then.rim, findings);
  judge_speedometer(sizes, change.on_dial, findings);
  if (change.now.tyre->rim_diameter != change.then.tyre->rim_diameter)
    findings.add(finding::other_wheel);
  judged.sizes = sizes;
}

// ---- of a kind for that ----

void judge_kind(const sidewall::Reading& now, const sidewall::Reading& then, Findings& findings) {
  const car::Unlike unlike = car::unlike(now, then);
  if (then.temporary_spare)
    findings.add(
        now.temporary_spare ? finding::temporary_spare : finding::temporary_spare_for_a_tyre, {},
        {air::get_home(air::Way::temporary_spare, 0.0).source});
  if (car::for_trailers_only(then) && !car::for_trailers_only(now))
    findings.add(finding::trailer_tyre, {}, {&advice::who_decides});
  if (unlike.vehicle) findings.add(finding::other_vehicle, {}, {&advice::who_decides});
  if (unlike.run_flat) findings.add(finding::other_run_flat, {}, {&car::run_flat_source()});
  if (marked_not_for_road(then)) findings.add(finding::new_one_not_for_road);
}

// ---- strong and fast enough ----

void judge_load(const SizeChangeCase& change, const car::Adequacy& enough, Findings& findings) {
  const Mass greatest = change.then.greatest()->mass;
  const standard::Vehicle vehicle = patch::vehicle_of(*change.then.tyre);
  const auto asked = change.asked_rating();
  const auto now = change.now.greatest();
  if (!asked) findings.add(finding::asked_unknown);
  if (change.load && *change.load > greatest)
    findings.add(overload(*change.load, greatest));
  else if (change.load && *change.load > enough.carried)
    findings.add(finding::overload_at_top_speed,
                 {enough.judged_at, Value::at_most(enough.carried), Value::at_least(*change.load)},
                 sources_of_load_at_speed(vehicle));
  if (!enough.load)
    findings.add(finding::load_too_low,
                 {Value::at_most(enough.carried), Value::at_least(asked.value_or(Mass()))},
                 sources_of_load_at_speed(vehicle));
  else if (change.asked && now && greatest < now->mass)
    findings.add(finding::under_the_tyre_now, {greatest, now->mass},
                 {&standard::load_index_source()});
}

// If the car's speed is not given: no slower than the current tyre.
void judge_symbol_by_tyre_now(std::optional<SpeedSymbol> now, SpeedSymbol then,
                              Findings& findings) {
  // ZR and VR have no upper limit: only the same is sure to be as fast.
  const bool open_ended = now == SpeedSymbol::ZR || now == SpeedSymbol::VR;
  if (!now || (open_ended && now != then)) return findings.add(finding::top_speed_unknown);
  const auto& row = standard::speed_row(then);
  const auto& row_now = standard::speed_row(*now);
  const Sources sources{&standard::speed_symbol_source()};
  if (row.speed < row_now.speed)
    findings.add(finding::symbol_under_the_tyre_now,
                 {std::string(row.letters), row.speed, std::string(row_now.letters), row_now.speed},
                 sources);
  else
    findings.add(finding::symbol_by_the_tyre_now, {}, sources);
}

void judge_symbol_by_car(SpeedSymbol symbol, Speed top_speed, car::SymbolFit fit,
                         Findings& findings) {
  const auto& row = standard::speed_row(symbol);
  if (fit == car::SymbolFit::too_low)
    findings.add(finding::speed_too_low, {std::string(row.letters), row.speed, top_speed},
                 {&standard::speed_symbol_source()});
  if (fit == car::SymbolFit::winter_exception)
    findings.add(finding::new_winter_tyre_slower, {row.speed}, {&car::winter_exception_source()});
}

void judge_adequacy(const SizeChangeCase& change, SizeChangeJudged& judged) {
  Findings& findings = judged.findings;
  const auto greatest = change.then.greatest();
  const auto symbol = change.then.symbol();
  if (!greatest || !symbol) return findings.add(finding::rating_unknown);
  judge_worked_out(*greatest, findings);
  judged.rating = greatest;
  const car::Adequacy enough =
      car::adequacy(greatest->mass, patch::vehicle_of(*change.then.tyre), *symbol,
                    sidewall::has_mark(*change.then.tyre, "three_peak"),
                    change.asked_rating().value_or(Mass()), change.top_speed.value_or(Speed()));
  judge_load(change, enough, findings);
  if (change.top_speed)
    judge_symbol_by_car(*symbol, *change.top_speed, enough.speed, findings);
  else
    judge_symbol_by_tyre_now(change.now.symbol(), *symbol, findings);
  if (change.now.tyre && change.now.tyre->construction && change.then.tyre->construction &&
      change.now.tyre->construction != change.then.tyre->construction)
    findings.add(finding::other_construction, {}, {&car::mixing_source()});
}

// ---- pressure ----

// The new tyre at the current pressure, allowing for the gauge's error.
void judge_pressure(const SizeChangeCase& change, Findings& findings) {
  const auto greatest = change.then.greatest();
  const auto symbol = change.then.symbol();
  if (!change.load || !change.pressure || !greatest || !symbol) return;
  const auto support = patch::Support::of(*change.then.tyre, greatest->mass, change.load);
  if (!support) return;
  const Speed speed =
      std::min(change.top_speed.value_or(Speed()), standard::speed_row(*symbol).speed);
  if (*change.load > support->carried_at(speed)) return;  // overloaded: already said
  const GaugePressure least =
      support->needed_at(*change.load, speed) + standard::pressure_gauge_error;
  if (*change.pressure < least)
    findings.add(
        finding::pressure_low_in_new_one,
        {Value::at_most(*change.pressure), Value::at_least(*change.load), Value::at_least(least)},
        {support->tyre().law.source, &patch::least_pressure_source()});
}

void judge_equal_load(const SizeChangeCase& change, SizeChangeJudged& judged) {
  const auto greatest_now = change.now.greatest();
  const auto greatest_then = change.then.greatest();
  if (!change.pressure || !greatest_now || !greatest_then) return;
  const auto now = patch::laws_of(*change.now.tyre);
  const auto then = patch::laws_of(*change.then.tyre);
  if (!now || !then) return;
  judged.equal_pressure =
      car::pressure_for_equal_load(now->law, greatest_now->mass, *change.pressure,
                                   then->second.value_or(then->law), greatest_then->mass);
  if (!judged.equal_pressure)
    judged.findings.add(finding::no_equal_pressure, {}, laws_of_equal_load(change));
}

}  // namespace

std::optional<patch::TyreSize> Fitted::size() const {
  return tyre ? patch::nominal_size(*tyre) : std::nullopt;
}

std::optional<patch::GreatestLoad> Fitted::greatest() const {
  return tyre ? patch::greatest_load(*tyre) : std::nullopt;
}

std::optional<SpeedSymbol> Fitted::symbol() const {
  return tyre ? patch::speed_symbol(*tyre) : std::nullopt;
}

bool Fitted::cross_ply() const {
  return tyre && tyre->construction != sidewall::Construction::radial;
}

std::optional<Mass> SizeChangeCase::asked_rating() const {
  if (asked) return asked;
  const auto greatest = now.greatest();
  return greatest ? std::optional(greatest->mass) : std::nullopt;
}

Sources laws_of_equal_load(const SizeChangeCase& change) {
  const auto now = patch::laws_of(*change.now.tyre);
  const auto then = patch::laws_of(*change.then.tyre);
  if (!now || !then) return {};
  return {now->law.source, then->law.source, &patch::least_pressure_source()};
}

SizeChangeJudged judge_size_change(const SizeChangeCase& change) {
  SizeChangeJudged judged;
  Findings& findings = judged.findings;
  judge_own_dimensions(change.now, findings);
  judge_own_dimensions(change.then, findings);
  if (change.sizes_known()) judge_sizes(change, judged);
  if (change.now.tyre && change.then.tyre) {
    judge_kind(*change.now.tyre, *change.then.tyre, findings);
    judge_marked_age(change.then.tyre->date_code, change.today, findings);
  }
  if (change.then.tyre) judge_adequacy(change, judged);
  judge_pressure(change, findings);
  judge_equal_load(change, judged);
  findings.add(finding::who_decides, {}, {&advice::who_decides});
  return judged;
}

}  // namespace treadwater::judge
