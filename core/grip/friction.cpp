#include "core/grip/friction.hpp"

#include <algorithm>

#include "core/grip/skid.hpp"
#include "core/standard/road_surface.hpp"
#include "core/standard/tyre_kind.hpp"

namespace treadwater::grip {
namespace {

using standard::FrictionRow;
using standard::Ground;

constexpr double old_dry_low = 0.6;
constexpr double old_dry_high = 1.2;
constexpr double handbook_share = 0.9;
constexpr double flooded_mm = 2.0;
constexpr double studded_ice_high = 0.3;  // memory
constexpr double gravel_tyre_high = 0.8;  // memory
constexpr Length new_tread = millimetres(8.0);
constexpr double fastest_kmh = in_kilometres_per_hour(fastest_of_paved_law);

constexpr TyreGrip tyres[] = {
    {"road", "synthetic", 1.0, 1.0, 0.7},    {"winter", "synthetic", 0.85, 1.0, 1.0},
    {"studded", "synthetic", 0.8, 1.0, 1.0}, {"gravel", "synthetic", 0.85, 1.0, 0.7},
    {"wet", "high-grip", 1.0, 1.0, 0.7},     {"cut-slick", "soft-race", 1.0, 0.7, 0.5},
    {"slick", "soft-race", 1.0, 0.5, 0.5},
};

bool is(const TyreGrip& tyre, std::string_view id) { return tyre.id == id; }

void widen(ShareRange& range, const FrictionRow& row) {
  range = {std::min(range.low, row.low), std::max(range.high, row.high)};
}

constexpr ShareRange nothing{1e9, 0.0};

FrictionBand each_less(const FrictionBand& a, const FrictionBand& b) {
  return {std::min(a.low, b.low), std::min(a.central, b.central), std::min(a.high, b.high)};
}

Length texture_of(const GripCase& paved) {
  return standard::find_road_surface(paved.surface->road_surface)->texture;
}

bool is_a_band(const std::optional<SpeedBand>& band) {
  return !band || (band->low >= Speed() && band->central >= Speed() && band->high >= Speed());
}

// No rubber is credited in the low figure, none penalised in the high one.
ShareRange cautious(ShareRange rubber, bool warm) {
  return {std::min(1.0, rubber.low) * (warm ? 1.0 : share_outside_window),
          std::max(1.0, rubber.high)};
}

}  // namespace

const TyreGrip* find_tyre_grip(std::string_view id) {
  for (const TyreGrip& tyre : tyres)
    if (tyre.id == id) return &tyre;
  return nullptr;
}

double groove_credit(const TyreGrip& tyre) {
  return standard::find_tyre_kind(tyre.id)->groove_credit;
}

Grip::Grip(const GripCase& given) : case_(given), tread_(given.tread * groove_credit(*given.tyre)) {
  if (case_.rubber == nullptr) case_.rubber = find_rubber(case_.tyre->rubber);
  const Rubber& rubber = *case_.rubber;
  const Heat heat = heat_of(rubber, case_.tread_heat);
  const bool outside = heat == Heat::cold || heat == Heat::too_hot;
  const bool sure = !outside && !(heat == Heat::unknown && rubber.needs_heat);
  dry_rubber_ = cautious(rubber.dry, sure);
  wet_rubber_ = cautious(rubber.wet, sure);
  wet_rubber_.low = std::min(wet_rubber_.low, dry_rubber_.low);
  if (outside) dry_rubber_.high = wet_rubber_.high = 1.0;

  known_ = case_.film >= Length() && case_.tread >= Length() && is_a_band(case_.onset);
  if (paved()) {
    texture_ = texture_of(case_);
    if (!known_) return;
    const auto law = [&](Side side, double share, double in_dry, double in_wet) {
      const PavedSide one =
          paved_side(side, paved_case(), case_.surface->share * share, in_dry, in_wet);
      at_rest_.*side = one.law.at_rest;
      loss_.*side = one.law.loss;
      dry_part_.*side = one.dry_part;
    };
    const double bare_road = case_.tyre->paved;
    law(&FrictionBand::low, bare_road, dry_rubber_.low, wet_rubber_.low);
    law(&FrictionBand::central, half_way(bare_road, 1.0),
        half_way(dry_rubber_.low, dry_rubber_.high), half_way(wet_rubber_.low, wet_rubber_.high));
    law(&FrictionBand::high, 1.0, dry_rubber_.high, wet_rubber_.high);
    return;
  }
  // Dry ground is no worse than wet: a figure printed for the wet raises the dry one's high end,
  // and one printed for the dry lowers the wet one's low end.
  ShareRange in_dry = nothing, in_wet = nothing, all = nothing;
  for (const FrictionRow& row : standard::friction_rows()) {
    if (row.surface != case_.surface->id) continue;
    widen(row.wet ? in_wet : in_dry, row);
    widen(all, row);
  }
  dry_ = {in_dry.low, all.high};
  wet_ = {all.low, in_wet.high > 0.0 ? in_wet.high : all.high};
}

TextureShare Grip::texture_at(Speed speed) const {
  const double wet = wetness_of(case_.film);
  if (!(wet > 0.0)) return {1.0, 1.0};
  const TextureShare share = texture_share(texture_, speed);
  return {blend(1.0, share.low, wet), blend(1.0, share.high, wet)};
}

std::optional<SquareLaw> Grip::square_law(Side side) const {
  const bool smooth = texture_ < usual_texture && case_.film > Length();
  if (!paved() || case_.old_or_hard || smooth) return std::nullopt;
  return SquareLaw{at_rest_.*side, loss_.*side};
}

Speed Grip::told_to(Side side, double grade) const {
  if (!paved()) return kilometres_per_hour(fastest_kmh);
  if (!known_) return Speed();
  return grip::told_to(side, paved_case(), {at_rest_.*side, loss_.*side}, grade);
}

FrictionBand Grip::on_pavement(Speed speed) const {
  const double kmh = std::min(in_kilometres_per_hour(speed), fastest_kmh);
  const auto left = [&](Side side) {
    return std::max(dry_part_.*side, at_rest_.*side - loss_.*side * (kmh * kmh));
  };
  const TextureShare texture = texture_at(speed);
  const FrictionBand modern{left(&FrictionBand::low) * texture.low,
                            left(&FrictionBand::central) * half_way(texture.high, 1.0),
                            left(&FrictionBand::high)};
  return case_.old_or_hard ? each_less(modern, of_old_tyre(speed)) : modern;
}

FrictionBand Grip::of_old_tyre(Speed speed) const {
  const double share = case_.surface->share;
  const FrictionBand kept = share_kept(speed, tread_, case_.film);
  const double wet = wetness_of(case_.film);
  const double at_speed = handbook_friction(speed, new_tread, Length());

  double low = old_dry_low * at_speed / handbook_friction(Speed(), new_tread, Length());
  if (wet > 0.0) low = std::min(low, handbook_share * at_speed * kept.low);
  low *= share * case_.tyre->paved * blend(dry_rubber_.low, wet_rubber_.low, wet);

  // Even rubber at its best in the wet grips no better there than in the dry.
  const double high =
      old_dry_high * share *
      std::min(dry_rubber_.high, kept.high * blend(dry_rubber_.high, wet_rubber_.high, wet));
  const TextureShare texture = texture_at(speed);
  return {low * texture.low, half_way(low * texture.high, high), high};
}

FrictionBand Grip::off_pavement() const {
  const TyreGrip& tyre = *case_.tyre;
  const Ground ground = case_.surface->ground;
  const double share = ground == Ground::loose ? tyre.loose : tyre.winter;
  const double film = in_millimetres(case_.film);
  const double flooded = std::clamp((film - wet_from_mm) / (flooded_mm - wet_from_mm), 0.0, 1.0);
  double low = share * blend(dry_.low, wet_.low, std::min(1.0, 2.0 * wetness_of(case_.film))) *
               blend(1.0, 0.5, flooded);
  double high = share * blend(dry_.high, wet_.high, wetness_of(case_.film));
  if (ground == Ground::ice && is(tyre, "studded")) {
    low /= studless_on_ice.high;
    high = studded_ice_high;
  }
  if (case_.surface->id.substr(0, 6) == "gravel" && is(tyre, "gravel"))
    high = std::max(high, gravel_tyre_high);
  return {low, half_way(low, high), high};
}

FrictionBand Grip::at(Speed speed) const {
  if (!(speed >= Speed()) || !known_) return {};
  return paved() ? on_pavement(speed) : off_pavement();
}

Friction friction(const GripCase& given, Speed speed) {
  Friction answer{Grip(given).at(speed), {}, {}};
  const auto cite = [&answer](const Source& source) { answer.sources.push_back(&source); };
  const auto unknown = [&answer](Phrase what) {
    if (!what.empty()) answer.unknown.push_back(what);
  };
  const bool paved = given.surface->ground == Ground::paved;
  const bool wet = given.film > Length();
  const Rubber& rubber = given.rubber ? *given.rubber : *find_rubber(given.tyre->rubber);

  for (const FrictionRow& row : standard::friction_rows())
    if (row.surface == given.surface->id &&
        std::find(answer.sources.begin(), answer.sources.end(), row.source) == answer.sources.end())
      cite(*row.source);
  if (paved) {
    cite(dry_grip_source);
    if (given.old_or_hard) cite(handbook_source);
    if (wet) {
      cite(stop_law_source);
      cite(braking_test_source);
      if (given.old_or_hard) cite(film_share_source);
      if (texture_of(given) < usual_texture) {
        cite(skid_source);
        cite(friction_index_source);
      }
    }
    cite(rubber_order_source);
    cite(rubber_range_source);
    if (rubber.needs_heat || given.tread_heat) cite(rubber_heat_source);
    unknown(Phrase(
        "How worn or dirty this stretch of road is: fuel, leaves, mud, or the first rain after a "
        "dry spell can take away far more grip."));
    if (wet && given.road == RoadGrip::not_told)
      unknown(Phrase(
          "What road this is: when wet the grippiest of the tested ones holds nearly twice as much "
          "as the slickest."));
    unknown(heat_caution(rubber, heat_of(rubber, given.tread_heat)));
  } else {
    unknown(Phrase(
        "How this ground changes with speed, tread and depth: the printed figures are for slow "
        "tests, they disagree, and none names the tyre."));
    if (given.surface->ground == Ground::ice)
      unknown(Phrase("How cold the ice is: near 0 °C water lies on it and grip is least."));
    if (given.surface->ground != Ground::ice)
      unknown(Phrase(
          "What lies underneath: on deep loose ground a locked wheel may even stop sooner."));
  }
  if (!is(*given.tyre, "road")) cite(tyre_kind_source);
  if (is(*given.tyre, "studded")) {
    cite(studs_source);
    cite(stud_report_source);
  }
  unknown(
      Phrase("How the car brakes: a locked wheel on a hard road has about 0.85 of the best grip."));
  return answer;
}

}  // namespace treadwater::grip
