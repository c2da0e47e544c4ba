#include "core/judge/hold_to.hpp"

namespace treadwater::judge {

std::optional<HoldTo> hold_to(const Findings& findings, UnitSystem units) {
  if (findings.limits.empty()) return std::nullopt;
  const Limit& governing = findings.limits.front();
  return HoldTo{floor_to_five(governing.kept(), units), governing};
}

bool HoldTo::in_water() const {
  const std::string_view id = id_of(governing);
  return id == id_of(LimitName::aquaplaning) || id == id_of(finding::slick_in_water) ||
         id == id_of(LimitName::moving_water);
}

void judge_intended_speed(Findings& findings, Speed intended, const HoldTo& hold) {
  if (intended <= hold.speed) return;
  // Above the symbol's speed it is already refused.
  if (id_of(hold.governing) == id_of(LimitName::speed_symbol)) return;
  // The limit exceeded may not be the one that sets the maximum.
  const Limit* passed = &findings.limits.front();
  for (const Limit& limit : findings.limits)
    if (intended <= passed->central && limit.central < intended) passed = &limit;
  Found found(intended > passed->central ? finding::speed_past_limit : finding::speed_above_hold_to,
              {intended}, passed->sources);
  found.about = {*passed};
  findings.add(std::move(found));
}

}  // namespace treadwater::judge
