#include "core/judge/tyre.hpp"

#include <algorithm>

#include "core/grip/limits.hpp"
#include "core/judge/advice.hpp"
#include "core/judge/age.hpp"
#include "core/judge/stopping.hpp"
#include "core/judge/tread.hpp"
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

std::optional<water::WetTyre> TyreCase::in_water() const {
  if (!cold() || !tread || kind == nullptr || surface == nullptr) return std::nullopt;
  return water::WetTyre{*cold(),
                        *tread,
                        kind->groove_credit,
                        size ? size->section_width : std::optional<Length>(),
                        {},
                        surface->texture};
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

namespace {

std::optional<Onset> judge_water(const TyreCase& tyre, Findings& findings) {
  if (tyre.kind == nullptr) return std::nullopt;
  if (tyre.kind->competition) findings.add(finding::competition_tyre);
  if (!tyre.water) return std::nullopt;
  WetCase wet;
  wet.water = *tyre.water;
  wet.surface = tyre.surface;
  wet.tyre = tyre.in_water();
  if (wet.tyre)
    wet.onset =
        tyre.onsets != nullptr ? tyre.onsets->of(*wet.tyre) : onset_on(*tyre.water, *wet.tyre);
  wet.slick = tyre.is_slick();
  // A slick is one whatever else of it is not known.
  wet.bare = wet.onset ? wet.onset->is_bare()
                       : wet.slick && !(tyre.water->film() < water::least_water_of_slick);
  wet.intended = tyre.intended;
  judge_wet_road(wet, findings);
  return tyre.water->is_too_deep() ? std::nullopt : wet.onset;
}

const standard::FrictionSurface* friction_of(const standard::RoadSurface& road) {
  for (const standard::FrictionSurface& surface : standard::friction_surfaces())
    if (surface.road_surface == road.id) return &surface;
  return nullptr;
}

// Reaction and braking with the least grip that fits, on a straight and level road of usual texture
// that is not known better: what the sheet `stopping` gives as the longest. Nothing for competition
// tyres, whose rubber has to be asked for.
std::optional<Length> longest_wet_stop(const TyreCase& tyre, const std::optional<Onset>& onset,
                                       Speed from) {
  const standard::FrictionSurface* surface = friction_of(*tyre.surface);
  if (surface == nullptr || tyre.surface->texture < grip::usual_texture || tyre.kind->competition)
    return std::nullopt;
  grip::PavedCase paved;
  paved.tread = *tyre.tread * tyre.kind->groove_credit;
  paved.film = tyre.water->film();
  if (onset) paved.onset = for_grip(onset->band);
  constexpr grip::Side low = &grip::FrictionBand::low;
  const double share = surface->share * grip::find_tyre_grip(tyre.kind->id)->paved;
  const grip::SquareLaw law = grip::paved_side(low, paved, share, 1.0, 1.0).law;
  if (from > grip::told_to(low, paved, law, 0.0)) return std::nullopt;
  const auto braking = grip::braked_by(law, from, Speed(), 0.0);
  if (!braking) return std::nullopt;
  return *braking + travelled(from, grip::cautious_reaction);
}

// What a driver can act on if aquaplaning is not what limits the speed: distance and sight.
void judge_wet_stop(TyreJudged& judged, const TyreCase& tyre, UnitSystem units) {
  if (!judged.speed_known() || !tyre.water || !tyre.water->is_wet() || !tyre.in_water()) return;
  Speed from = tyre.intended.value_or(units == UnitSystem::metric ? kilometres_per_hour(80.0)
                                                                  : miles_per_hour(50.0));
  if (judged.hold) from = std::min(from, judged.hold->speed);
  if (judged.no_limit && judged.no_limit->own) from = std::min(from, judged.no_limit->own->speed);
  const auto longest = longest_wet_stop(tyre, judged.onset, from);
  if (!(from > Speed()) || !longest) return;
  judged.wet_stop = TyreJudged::Stop{from, *longest};
  judged.findings.add(finding::wet_stop, {Value::longest_distance(*longest), from},
                      {&grip::limits_source, &grip::stop_law_source});
}

}  // namespace

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
  Findings& findings = judged.findings;
  if (tyre.size && !tyre.size->temporary_spare && !patch::speed_symbol(*tyre.size))
    findings.add(fixed_limit(LimitName::no_speed_symbol, speed_without_symbol, {},
                             {speed_without_symbol}, {}));
  stop_where_no_speed_helps(findings);
  if (tyre.intended && judged.onset)
    judge_speed_in_water(*judged.onset, *tyre.intended, units, findings);
  if (tyre.intended) judge_intended_speed(findings, *tyre.intended, units);
  judged.hold = hold_to(findings, units);
  judged.no_limit = no_limit(findings, units);
  judge_wet_stop(judged, tyre, units);
}

}  // namespace treadwater::judge
