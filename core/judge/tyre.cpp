#include "core/judge/tyre.hpp"

#include <algorithm>

#include "core/judge/advice.hpp"
#include "core/judge/age.hpp"
#include "core/judge/tread.hpp"
#include "core/judge/water.hpp"
#include "core/patch/rating.hpp"
#include "core/standard/speed_symbol.hpp"

namespace treadwater::judge {
namespace {

using standard::SpeedSymbol;

constexpr Speed of_a_temporary_spare = kilometres_per_hour(80.0);

// By how the symbol is written: in the service description, in brackets, or within the size.
void limit_by_symbol(const sidewall::Reading& tyre, SpeedSymbol symbol, Findings& findings) {
  const auto& row = standard::speed_row(symbol);
  const std::string letters(row.letters);
  const Sources sources{&standard::speed_symbol_source()};
  const auto add = [&](LimitName what, Values why) {
    findings.add(fixed_limit(what, row.speed, {letters}, std::move(why), sources));
  };
  if (symbol == SpeedSymbol::ZR || symbol == SpeedSymbol::VR)
    add(LimitName::speed_symbol_open, {letters, row.speed});
  else if (tyre.service && tyre.service->above_symbol)
    add(LimitName::speed_symbol_above, {row.speed});
  else if (!tyre.service)
    add(LimitName::speed_symbol_in_size, {letters, row.speed});
  else
    add(LimitName::speed_symbol, {letters, row.speed});
}

}  // namespace

std::optional<GaugePressure> TyreCase::cold() const {
  if (!gauge || !hot) return std::nullopt;
  return *hot ? std::max(kilopascals(0.0), *gauge - hot_excess) : *gauge;
}

bool marked_not_for_road(const sidewall::Reading& tyre) {
  return sidewall::has_mark(tyre, "competition") || sidewall::has_mark(tyre, "nhs");
}

void judge_sidewall(const TyreCase& tyre, Findings& findings) {
  const sidewall::Reading& size = *tyre.size;
  for (const std::string& text : size.assumed) findings.add(finding::assumed, {text});
  for (const std::string& text : size.unsaid) findings.add(finding::unsaid, {text});
  if (!size.candidates.empty())
    findings.add(finding::ambiguous_size, {size.canonical, sidewall::family_name(size.family),
                                           Value::either(size.candidates)});
  for (const sidewall::Mark& mark : size.marks)
    if (mark.id == "not_understood")
      findings.add(finding::not_understood, {Value::quoted(mark.value)});
  if (tyre.kind != nullptr && !tyre.kind->competition && marked_not_for_road(size))
    findings.add(finding::marked_not_for_road);
  if (size.run_flat) findings.add(finding::run_flat);
}

void judge_speed_symbol(const TyreCase& tyre, Findings& findings) {
  const auto symbol = patch::speed_symbol(*tyre.size);
  if (tyre.size->temporary_spare) {
    findings.add(fixed_limit(LimitName::temporary_spare, of_a_temporary_spare, {}, {},
                             {&advice::temporary_spare}));
    findings.add(finding::temporary_spare, {}, {&advice::temporary_spare});
  }
  if (symbol)
    limit_by_symbol(*tyre.size, *symbol, findings);
  else if (!tyre.size->temporary_spare)
    findings.add(finding::speed_symbol_unknown, {speed_without_symbol});
  if (symbol && tyre.intended) judge_symbol(*symbol, *tyre.intended, findings);
}

void judge_symbol(SpeedSymbol symbol, Speed intended, Findings& findings) {
  const auto& row = standard::speed_row(symbol);
  if (intended > row.speed)
    findings.add(finding::speed_above_symbol, {intended, std::string(row.letters), row.speed},
                 {&standard::speed_symbol_source()});
}

TyreJudged judge_tyre(const TyreCase& tyre) {
  TyreJudged judged;
  if (tyre.size) {
    judge_sidewall(tyre, judged.findings);
    judge_speed_symbol(tyre, judged.findings);
    judged.carrying = judge_load(tyre, judged.findings);
  }
  judge_hot_reading(tyre, judged.findings);
  judged.onset = judge_water(tyre, judged.findings);
  judge_tread(tyre, judged.findings);
  if (tyre.age) judge_age(*tyre.age, tyre.today, judged.findings);
  return judged;
}

void conclude(TyreJudged& judged, const TyreCase& tyre, UnitSystem units) {
  // Only if a speed would be given anyway.
  if (tyre.size && !tyre.size->temporary_spare && !patch::speed_symbol(*tyre.size) &&
      !judged.findings.limits.empty())
    judged.findings.add(fixed_limit(LimitName::no_speed_symbol, speed_without_symbol, {},
                                    {speed_without_symbol}, {}));
  stop_where_no_speed_helps(judged.findings);
  judged.hold = hold_to(judged.findings, units);
  if (tyre.intended && judged.hold)
    judge_intended_speed(judged.findings, *tyre.intended, *judged.hold);
}

}  // namespace treadwater::judge
