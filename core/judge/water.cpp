#include "core/judge/water.hpp"

#include "core/judge/advice.hpp"
#include "core/judge/tyre.hpp"
#include "core/standard/instrument.hpp"
#include "core/water/crossing.hpp"
#include "core/water/measured.hpp"
#include "core/water/onset.hpp"

namespace treadwater::judge {
namespace {

bool is_slick(const standard::TyreKind& kind) { return kind.groove_credit == 0.0; }

void judge_thin_film(const TyreCase& tyre, Findings& findings) {
  if (*tyre.water <= Length()) {
    findings.add(finding::no_dynamic_aquaplaning);
    if (is_slick(*tyre.kind)) findings.add(finding::slick_on_wet);
  }
  findings.add(finding::thin_film, {}, {&advice::thin_film, &advice::wet_braking});
}

std::optional<water::SpeedBand> onset_of(const TyreCase& tyre) {
  const water::WetTyre wet{*tyre.cold(),
                           *tyre.tread,
                           tyre.kind->groove_credit,
                           tyre.size ? tyre.size->section_width : std::optional<Length>(),
                           *tyre.water,
                           tyre.surface->texture};
  if (tyre.in_water == nullptr) return water::aquaplaning_onset(wet);
  const auto onset = tyre.in_water->of(wet);
  return water::SpeedBand{onset.low, onset.central, onset.central};
}

void limit_by_water(const TyreCase& tyre, const water::SpeedBand& onset, Findings& findings) {
  const Length water = *tyre.water;
  Limit limit;
  limit.what = LimitName::aquaplaning;
  limit.central = onset.central;
  limit.low = onset.low;
  limit.high = onset.high;
  limit.share_kept = water::hold_to_share;
  limit.shown = Limit::Shown::estimate;
  limit.sources = onset_sources();
  limit.sources.push_back(&tyre.surface->source);
  limit.why = {Value::water(water), onset.low, Value::water(standard::ruler_error),
               Value::depth(standard::tread_gauge_error), standard::pressure_gauge_error};
  if (water >= water::deepest_to_enter) {
    const Values deepest{Value::water(water::deepest_to_enter)};
    limit.what = LimitName::deep_water;
    limit.central = limit.low = limit.high = Speed();
    limit.shown = Limit::Shown::do_not_enter;
    limit.why = deepest;
    limit.sources.push_back(&advice::deep_water);
    findings.add(finding::deep_water, deepest, {&advice::deep_water});
  } else if (is_slick(*tyre.kind)) {
    findings.add(finding::slick_in_water, {}, {&water::clearing_source()});
  } else if (!tyre.intended) {
    findings.add(finding::standing_water);
  }
  if (water > deepest_measured && water < water::deepest_to_enter)
    findings.add(finding::beyond_measured_water);
  if (!tyre.surface->paved) findings.add(finding::unpaved);
  findings.add(std::move(limit));
}

}  // namespace

const Sources& onset_sources() {
  static const Sources all = [] {
    Sources sources{&water::estimate_source(), &water::film_source(),
                    &water::pressure_only_source(), &water::clearing_source()};
    for (const auto& row : water::measured_onsets()) add_once(sources, row.source);
    return sources;
  }();
  return all;
}

std::optional<water::SpeedBand> judge_water(const TyreCase& tyre, Findings& findings) {
  if (tyre.kind == nullptr) return std::nullopt;
  if (tyre.kind->competition) findings.add(finding::competition_tyre);
  if (!tyre.water) {
    if (tyre.water_asked) findings.add(finding::water_not_given);
    return std::nullopt;
  }
  judge_thin_film(tyre, findings);
  if (*tyre.water <= Length() || !tyre.cold() || !tyre.tread || tyre.surface == nullptr)
    return std::nullopt;
  const auto onset = onset_of(tyre);
  if (onset) limit_by_water(tyre, *onset, findings);
  return onset;
}

}  // namespace treadwater::judge
