#include "core/judge/hold_to.hpp"

#include "core/water/estimate.hpp"

namespace treadwater::judge {
namespace {

std::optional<HoldTo> lowest(const Findings& findings, UnitSystem units) {
  const Limit* limit = findings.lowest();
  if (limit == nullptr) return std::nullopt;
  return HoldTo{floor_to_five(limit->kept(), units), *limit};
}

bool is_on_the_road(const std::optional<HoldTo>& hold) {
  return hold && hold->governing.kept() < water::fastest_on_roads;
}

}  // namespace

std::optional<HoldTo> hold_to(const Findings& findings, UnitSystem units) {
  auto hold = lowest(findings, units);
  if (!is_on_the_road(hold) || (findings.no_speed && !hold->stands_still())) return std::nullopt;
  return hold;
}

std::optional<NoLimit> no_limit(const Findings& findings, UnitSystem units) {
  auto own = lowest(findings, units);
  if (findings.no_speed || is_on_the_road(own)) return std::nullopt;
  return NoLimit{std::move(own)};
}

bool HoldTo::in_water() const {
  const std::string_view id = id_of(governing);
  return id == id_of(LimitName::aquaplaning) || id == id_of(finding::slick_in_water) ||
         id == id_of(LimitName::moving_water);
}

void judge_intended_speed(Findings& findings, Speed intended, UnitSystem units) {
  const Limit* passed = findings.lowest();
  if (passed == nullptr || intended <= floor_to_five(passed->kept(), units)) return;
  // Above the symbol's speed it is already refused, and so it is in water.
  const auto said = [](const Limit& limit) {
    return id_of(limit) == id_of(LimitName::speed_symbol) ||
           id_of(limit) == id_of(LimitName::aquaplaning);
  };
  // The limit exceeded may not be the one that sets the maximum.
  for (const Limit& limit : findings.limits)
    if (!limit.beside && intended <= passed->central && limit.central < intended) passed = &limit;
  if (said(*passed)) return;
  Found found(intended > passed->central ? finding::speed_past_limit : finding::speed_above_hold_to,
              {intended}, passed->sources);
  found.about = {*passed};
  findings.add(std::move(found));
}

}  // namespace treadwater::judge
