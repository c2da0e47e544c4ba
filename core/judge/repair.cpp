#include "core/judge/repair.hpp"

#include <algorithm>

#include "core/patch/rating.hpp"

namespace treadwater::judge {
namespace {

air::Damage damage_of(const SoftTyre& tyre) {
  air::Damage damage;
  damage.place = *tyre.place;
  damage.from_centre = tyre.from_centre.value_or(Length());
  damage.hole = tyre.hole.value_or(Length());
  damage.section_width = *tyre.size->section_width;
  damage.tread = tyre.tread.value_or(millimetres(1.6));
  damage.driven_flat = tyre.driven_flat;
  damage.cords_or_cracks = tyre.damaged;
  damage.sealant_used = tyre.sealed;
  damage.self_supporting = tyre.size->run_flat || tyre.help == Help::self_supporting;
  damage.earlier_repairs = tyre.earlier_repairs;
  damage.between_outer_grooves = tyre.between_outer_grooves;
  if (tyre.age) damage.age_years = tyre.age->least_years;
  damage.symbol = patch::speed_symbol(*tyre.size);
  return damage;
}

}  // namespace

std::optional<RepairJudged> judge_repair(const SoftTyre& tyre, Findings& findings) {
  if (!tyre.place || !tyre.size || !tyre.size->section_width) return std::nullopt;
  if (*tyre.place == air::Place::tread && (!tyre.from_centre || !tyre.hole || !tyre.tread)) {
    findings.add(finding::repair_not_judged);
    return std::nullopt;
  }
  RepairJudged judged;
  judged.damage = damage_of(tyre);
  judged.repair = air::repair(judged.damage);
  const auto& reasons = judged.repair.reasons;
  Sources sources{&air::repair_source(), &air::american_repair_source()};
  for (const air::Reason* reason : reasons) add_once(sources, *reason->source);
  const auto against = std::find_if(reasons.begin(), reasons.end(), [](const air::Reason* reason) {
    return reason->verdict == air::Verdict::no;
  });
  if (against != reasons.end())
    findings.add(finding::no_repair, {(*against)->text}, std::move(sources));
  else
    findings.add(finding::may_be_repaired, {}, std::move(sources));
  return judged;
}

}  // namespace treadwater::judge
