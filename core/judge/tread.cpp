#include "core/judge/tread.hpp"

#include "core/judge/advice.hpp"
#include "core/judge/tyre.hpp"
#include "core/standard/instrument.hpp"

namespace treadwater::judge {
namespace {

using standard::tread_gauge_error;

// New car tyres have some 8 mm, winter ones to 10, off-road ones 12 and more. Common practice.
constexpr Length deepest_usual = millimetres(12.0);
constexpr Length of_a_winter_tyre = millimetres(4.0);
// From this load index up it is seldom a car tyre. Common practice.
constexpr int heavy_load_index = 122;

Finding winter_finding(const standard::WinterRule& rule, bool winter_tyre, bool under) {
  if (!winter_tyre)
    return under ? finding::winter_law_any_tyre_under : finding::winter_law_any_tyre_at;
  if (rule.else_counts_as_summer_tyre)
    return under ? finding::winter_law_else_summer_under : finding::winter_law_else_summer_at;
  return under ? finding::winter_law_winter_tyre_under : finding::winter_law_winter_tyre_at;
}

// If the winter law applies, advice is left out.
bool judge_winter_law(const TyreCase& tyre, Findings& findings) {
  if (!tyre.law->winter || !(tyre.kind->winter || tyre.law->winter->any_tyre)) return false;
  const bool cross_ply = tyre.size && tyre.size->construction == sidewall::Construction::cross_ply;
  const auto winter = winter_clearance(*tyre.law, *tyre.tread, cross_ply, tyre.today);
  if (winter->tread == Clearance::clear) return false;
  const standard::WinterRule& rule = *tyre.law->winter;
  const bool under = winter->in_season && winter->tread == Clearance::under;
  if (winter->in_season || tyre.kind->winter)
    findings.add(winter_finding(rule, tyre.kind->winter, under),
                 {tyre.law->place, Value::depth(winter->least), rule.words,
                  Value::depth(*tyre.tread), standard::write_iso_date(tyre.today)},
                 {&*tyre.law->winter_source});
  return true;
}

// Where the law looks.
Length legal_tread(const TyreCase& tyre) {
  return tyre.law->in_the_middle ? tyre.middle_tread.value_or(*tyre.tread) : *tyre.tread;
}

void judge_shoulder(const TyreCase& tyre, Findings& findings) {
  const standard::TreadLaw& law = *tyre.law;
  if (*tyre.tread < law.least && !(legal_tread(tyre) < law.least))
    findings.add(finding::shoulder_worn,
                 {Value::depth(*tyre.tread), Value::depth(law.least), law.place}, {&law.source});
}

// Is it below the law's depth, or within a gauge's error of it?
bool judge_law(const TyreCase& tyre, Findings& findings) {
  const standard::TreadLaw& law = *tyre.law;
  const Length measured = legal_tread(tyre);
  const Value tread = Value::depth(measured);
  const Value least = Value::depth(law.least);
  const Sources sources{&law.source};
  switch (clearance(measured, law.least)) {
    case Clearance::under:
      findings.add(fixed_limit(LimitName::tread_law, Speed(), {},
                               {law.place, least, law.where_measured}, sources));
      findings.add(finding::tread_law, {tread, law.place, least}, sources);
      return true;
    case Clearance::at:
      findings.add(finding::tread_at_law, {tread, least, law.place}, sources);
      return true;
    case Clearance::clear:
      break;
  }
  return false;
}

}  // namespace

Clearance clearance(Length tread, Length least) {
  if (tread < least) return Clearance::under;
  return tread > least + tread_gauge_error ? Clearance::clear : Clearance::at;
}

std::optional<WinterClearance> winter_clearance(const standard::TreadLaw& law, Length tread,
                                                bool cross_ply, standard::Date today) {
  if (!law.winter) return std::nullopt;
  const Length least = cross_ply ? law.winter->least_cross_ply : law.winter->least_radial;
  return WinterClearance{least, clearance(tread, least),
                         standard::in_season(*law.winter, {today.month, today.day})};
}

bool is_winter_law(Finding finding) {
  return id_of(finding) == id_of(finding::winter_law_winter_tyre_under);
}

void judge_low_tread(Length tread, Findings& findings) {
  if (tread <= low_tread)
    findings.add(finding::tread_low, {Value::depth(low_tread)}, {&advice::low_tread});
}

void judge_tread(const TyreCase& tyre, Findings& findings) {
  if (!tyre.tread) return;
  bool by_law = false;
  if (tyre.law != nullptr && tyre.kind != nullptr) {
    by_law = judge_law(tyre, findings);
    judge_shoulder(tyre, findings);
    if (!judge_winter_law(tyre, findings) && tyre.kind->winter && *tyre.tread < of_a_winter_tyre)
      findings.add(finding::winter_tread, {Value::depth(of_a_winter_tyre)},
                   {&advice::winter_tread});
    if (tyre.size && tyre.size->service && tyre.size->service->load_index >= heavy_load_index &&
        !tyre.size->light_truck)
      findings.add(finding::heavy_vehicle, {}, {&tyre.law->source});
  }
  if (*tyre.tread > deepest_usual)
    findings.add(finding::tread_deep, {Value::depth(*tyre.tread), Value::depth(deepest_usual)});
  if (!by_law) judge_low_tread(*tyre.tread, findings);
}

}  // namespace treadwater::judge
