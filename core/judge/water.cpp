#include "core/judge/water.hpp"

#include <algorithm>

#include "core/judge/advice.hpp"
#include "core/standard/instrument.hpp"
#include "core/water/crossing.hpp"
#include "core/water/measured.hpp"
#include "core/water/onset.hpp"

namespace treadwater::judge {
namespace {

using standard::Wetness;

// The chance of aquaplaning that is too high. Our choice.
constexpr double too_often = 0.25;

water::Water by_word(const RoadWater& water) {
  return water.word ? water::Water::by_word(*water.word) : water::Water();
}

water::Water by_depth(const RoadWater& water) { return water.depth.value_or(water::Water()); }

void refuse_deep_water(Findings& findings) {
  findings.add(fixed_limit(LimitName::too_deep_to_enter, Speed(), {}, {}, {&advice::deep_water}));
  findings.add(finding::deep_water, {Value::water(water::deepest_to_enter)}, {&advice::deep_water});
}

Limit limit_by(const water::SpeedBand& band, const standard::RoadSurface& surface) {
  Limit limit;
  limit.low = band.low;
  limit.central = band.central;
  limit.high = band.high;
  limit.share_kept = water::hold_to_share;
  limit.shown = Limit::Shown::onset;
  limit.sources = onset_sources();
  limit.sources.push_back(&surface.source);
  return limit;
}

void add_limit(const WetCase& wet, Findings& findings) {
  const Onset& onset = *wet.onset;
  Limit limit = limit_by(onset.band, *wet.surface);
  if (onset.by_word) limit.sources.push_back(&standard::wetness_word(*wet.water.word).source);
  const Value water = Value::water(onset.tyre.film.deep());
  if (wet.is_worst) {
    limit.what = LimitName::aquaplaning_of_worst;
    limit.label = wet.named;
    limit.why = {water};
    limit.why.insert(limit.why.end(), wet.named.begin(), wet.named.end());
    limit.why.push_back(onset.band.low);
  } else if (onset.by_word) {
    limit.what = LimitName::aquaplaning_by_word;
    limit.why = {water, onset.band.low};
  } else {
    limit.what = LimitName::aquaplaning;
    limit.why = {water, onset.band.low, Value::water(onset.tyre.film.reading_error()),
                 Value::depth(standard::tread_gauge_error), standard::pressure_gauge_error};
  }
  findings.add(std::move(limit));
}

// What is said of ruts and puddles beside a road that is only wet.
void add_puddles(const WetCase& wet, Findings& findings) {
  if (wet.bare || wet.slick || !wet.tyre) return;
  if (wet.onset && !water::shallower_than_puddles(wet.onset->tyre.film)) return;
  const water::SpeedBand band = water::onset_in_puddles(*wet.tyre);
  Limit limit = limit_by(band, *wet.surface);
  limit.what = LimitName::puddles;
  limit.beside = true;
  limit.why = {Value::water(water::puddle), band.low};
  findings.add(finding::in_puddles,
               {Value::water(water::puddle), Value::rounded_down(limit.kept())}, limit.sources);
  findings.add(std::move(limit));
}

void judge_slick(const WetCase& wet, Findings& findings) {
  if (wet.bare)
    findings.add(wet.slick ? finding::slick_in_water : finding::bare_in_water, {},
                 {&water::clearing_source()});
  else if (wet.slick)
    findings.add(finding::slick_on_wet);
}

void judge_film(const WetCase& wet, Findings& findings) {
  const Onset& onset = *wet.onset;
  const water::Water& water = onset.tyre.film;
  const bool limits = onset.held().has_value();
  if (limits)
    add_limit(wet, findings);
  else
    findings.add(finding::no_aquaplaning_expected, {Value::water(water.deep())},
                 {&water::estimate_source()});
  // Standing water is always a reason for care; less only if nobody said how fast.
  if (limits && (!wet.intended || !(water.deep() < water::puddle)))
    findings.add(finding::standing_water);
  const auto& ruler = wet.water.depth;
  if (onset.by_word && ruler && ruler->one_depth() && ruler->deep() < water.deep())
    findings.add(finding::wetter_than_measured,
                 {Value::water(water.deep()), Value::water(ruler->deep())});
  if (water.deep() > deepest_measured) findings.add(finding::beyond_measured_water);
  if (!wet.surface->paved) findings.add(finding::unpaved);
}

// Of a word and a depth.
std::optional<Onset> wetter_of(std::optional<Onset> word, std::optional<Onset> depth) {
  if (!word || !depth) return word ? word : depth;
  const bool by_depth = depth->band.low == word->band.low
                            ? word->tyre.film.deep() < depth->tyre.film.deep()
                            : depth->band.low < word->band.low;
  Onset& one = by_depth ? *depth : *word;
  const Onset& other = by_depth ? *word : *depth;
  one.band.central = std::min(one.band.central, other.band.central);
  one.band.high = std::min(one.band.high, other.band.high);
  one.other = other.tyre.film;
  return one;
}

class OfMany : public OnsetsOnRoad {
 public:
  OfMany(const RoadWater& water, Length texture)
      : word_(by_word(water), texture), depth_(by_depth(water), texture) {}

  std::optional<Onset> of(const water::WetTyre& tyre) const override {
    return wetter_of(word_.of(tyre, true), depth_.of(tyre, false));
  }

 private:
  struct InOneWater {
    InOneWater(const water::Water& film, Length texture) : water(film) {
      if (!water.none()) onsets.emplace(water, texture);
    }
    std::optional<Onset> of(water::WetTyre tyre, bool by_word) const {
      if (!onsets) return std::nullopt;
      const auto found = onsets->of(tyre);
      tyre.film = water;
      return Onset{tyre, {found.low, found.central, found.central}, by_word};
    }
    water::Water water;
    std::optional<water::OnsetsInWater> onsets{};
  };

  InOneWater word_;
  InOneWater depth_;
};

std::optional<Onset> onset_in(const water::Water& water, water::WetTyre tyre, bool by_word) {
  tyre.film = water;
  const auto band = water::aquaplaning_onset(tyre);
  return band ? std::optional(Onset{tyre, *band, by_word}) : std::nullopt;
}

}  // namespace

bool RoadWater::is_wet() const { return depth || (word && *word != Wetness::dry); }

Length RoadWater::film() const {
  if (!is_wet()) return Length();
  Length deepest = standard::wetness_word(Wetness::damp).deep;
  if (word) deepest = std::max(deepest, standard::wetness_word(*word).deep);
  if (depth) deepest = std::max(deepest, depth->deep());
  return deepest;
}

bool RoadWater::is_too_deep() const { return film() >= water::deepest_to_enter; }

std::optional<Onset> onset_on(const RoadWater& water, water::WetTyre tyre) {
  return wetter_of(onset_in(by_word(water), tyre, true), onset_in(by_depth(water), tyre, false));
}

std::unique_ptr<OnsetsOnRoad> onsets_on(const RoadWater& water, Length texture) {
  return std::make_unique<OfMany>(water, texture);
}

void judge_wet_road(const WetCase& wet, Findings& findings) {
  if (!wet.water.is_known()) {
    findings.add(finding::water_not_given);
    return;
  }
  if (!wet.water.is_wet()) return;
  if (wet.water.is_too_deep()) {
    refuse_deep_water(findings);
    return;
  }
  if (wet.onset)
    judge_film(wet, findings);
  else if (by_word(wet.water).none() && by_depth(wet.water).none() && !wet.water.may_be_deeper)
    findings.add(finding::no_dynamic_aquaplaning);
  judge_slick(wet, findings);
  add_puddles(wet, findings);
  findings.add(finding::thin_film, {}, {&advice::thin_film, &advice::wet_braking});
}

bool Onset::is_bare() const {
  if (water::counts_as_slick(tyre)) return true;
  if (!other) return false;
  water::WetTyre in_other = tyre;
  in_other.film = *other;
  return water::counts_as_slick(in_other);
}

double chance_of_floating(const Onset& onset, Speed speed) {
  const double chance = water::OnsetDraws(onset.tyre).chance_of_floating(speed);
  if (!onset.other) return chance;
  water::WetTyre tyre = onset.tyre;
  tyre.film = *onset.other;
  return std::max(chance, water::OnsetDraws(tyre).chance_of_floating(speed));
}

void judge_speed_in_water(Speed intended, bool above_central, double chance, Findings& findings) {
  findings.add(
      above_central || chance >= too_often ? finding::floats_too_often : finding::floats_sometimes,
      {intended, Value::number(100.0 * chance)}, {&water::estimate_source()});
}

void judge_speed_in_water(const Onset& onset, Speed intended, UnitSystem units,
                          Findings& findings) {
  if (intended > floor_to_five(onset.band.low * water::hold_to_share, units))
    judge_speed_in_water(intended, intended > onset.band.central,
                         chance_of_floating(onset, intended), findings);
}

const Sources& onset_sources() {
  static const Sources all = [] {
    Sources sources{&water::estimate_source(), &water::film_source(),
                    &water::pressure_only_source(), &water::clearing_source()};
    for (const auto& row : water::measured_onsets()) add_once(sources, row.source);
    return sources;
  }();
  return all;
}

}  // namespace treadwater::judge
