// The room `grip`: friction, stopping and cornering.
//
//   stop_law.hpp   how a modern tyre's grip falls with speed on a wet paved road
//   measured.hpp   the stops that were measured
//   skid.hpp       published laws of wet friction against speed and texture
//   film.hpp       what water takes from old or hard tyres, by depth, tread and speed
//   rubber.hpp     rubber and its warmth
//   friction.hpp   (this file) the friction of one case, with its sources and gaps
//   stopping.hpp   stopping at a given friction; the rules that drivers are taught
//   cornering.hpp  cornering at a given friction; braking in a bend
//   limits.hpp     distances and speeds for one case, as a band
//
// The band of a case:
//   paved ground  the law of stop_law.hpp, times the surface's share; from dry to wet in a straight
//                 line over the first 0.2 mm. Less on smooth texture by the published laws of
//                 skid.hpp. Above Vg there is none
//   old or hard   no better than that, and: low 0.6 in the dry (the lower end of a published range
//     tyres       for clean pavement), less with speed as the handbook's dry figure; in the wet at
//                 most 0.9 of the handbook's wet one (so that printed figures for an unstated tyre
//                 lie above it); high 1.2, less in water as film.hpp; central half-way in ratio
//   other ground  the least and the most that any table prints for it. No law of speed or tread is
//                 known there. Under standing water the low end falls to half (our choice)
// More water never raises any of the three; more tread or less speed never lowers them.
//
// Tyre kinds: their shares of these figures are ours, from published words (studs and winter rubber
// grip a bare road less; unstudded winter tyres stop 8 to 15 % short of studded ones on ice) and
// from memory. A slick counts as having no tread, a hand-cut one half of it.
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "core/grip/film.hpp"
#include "core/grip/rubber.hpp"
#include "core/grip/skid.hpp"
#include "core/grip/stop_law.hpp"
#include "core/quantity/quantity.hpp"
#include "core/standard/friction.hpp"
#include "core/standard/source.hpp"
#include "core/words/phrase.hpp"

namespace treadwater::grip {

// The grip of a kind of tyre (standard/tyre_kind.hpp, by its id).
struct TyreGrip {
  std::string_view id;
  std::string_view rubber;
  double paved;   // share of the low figure on paved ground
  double loose;   // share of both figures on gravel, earth and grass
  double winter;  // the same on snow and ice
};
double groove_credit(const TyreGrip& tyre);
const TyreGrip* find_tyre_grip(std::string_view id);  // null where there is none

struct GripCase {
  const standard::FrictionSurface* surface = standard::friction_surfaces().begin();
  const TyreGrip* tyre = find_tyre_grip("road");
  Length tread;
  Length film;                            // water above the tops of the texture; 0 a dry road
  const Rubber* rubber = nullptr;         // if not given, the tyre's usual one
  std::optional<Temperature> tread_heat;  // temperature of the tread, where known
  RoadGrip road = RoadGrip::not_told;     // not asked of a surface whose own name says it (smooth)
  bool old_or_hard = false;               // tyres for which the handbook's figures still hold
  // Of aquaplaning for this tyre in this film, and for the same tyre with its tread new, on paved
  // ground: see grip_gone_at. A side that does not aquaplane is infinite. To be given with any
  // film.
  std::optional<SpeedBand> onset;
  std::optional<SpeedBand> onset_when_new;
};

// The friction of one case at any speed. A case with a negative number or NaN has no friction at
// all.
class Grip {
 public:
  explicit Grip(const GripCase& grip_case);
  FrictionBand at(Speed speed) const;

  // Where all of it is a square law of speed: paved, of usual texture or dry, no old tyre.
  std::optional<SquareLaw> square_law(Side side) const;

  // The highest speed from which a stop is given on this side; 400 km/h off the pavement.
  Speed told_to(Side side, double grade) const;

 private:
  FrictionBand on_pavement(Speed speed) const;
  FrictionBand of_old_tyre(Speed speed) const;
  FrictionBand off_pavement() const;
  TextureShare texture_at(Speed speed) const;
  PavedCase paved_case() const { return {tread_, case_.film, case_.onset, case_.road}; }
  bool paved() const { return case_.surface->ground == standard::Ground::paved; }

  GripCase case_;
  Length tread_;           // credited
  Length texture_;         // paved
  bool known_;             // no number is none, or negative
  FrictionBand at_rest_;   // paved
  FrictionBand dry_part_;  // of it, what is not yet wet
  FrictionBand loss_;      // per (km/h)^2
  ShareRange dry_rubber_{};
  ShareRange wet_rubber_{};
  ShareRange dry_{};  // unpaved: the ends of what is printed
  ShareRange wet_{};
};

struct Friction {
  FrictionBand band;
  std::vector<const Source*> sources;
  std::vector<Phrase> unknown;  // what this figure leaves out, in sentences
};
Friction friction(const GripCase& grip_case, Speed speed);

// How unstudded winter tyres stop on ice compared with studded ones.
inline constexpr ShareRange studless_on_ice{0.85, 0.92};
inline constexpr Source studs_source{
    "grip-studs", "Junge, Lu and Esch, TRB 95-0772, on studded and unstudded winter tyres",
    "unstudded 8 to 15 % short of studded on ice, equal elsewhere; read in a summary", "1995",
    Standing::secondary};
inline constexpr Source stud_report_source{
    "grip-stud-report", "R. R. Scheibe, Studded and Studless Tire Traction, WA-RD 551.1",
    "abstract: studs help on ice near 0 °C and cost grip on bare roads", "2002",
    Standing::published};
inline constexpr Source tyre_kind_source{"grip-tyre-kind", "Shares of grip by kind of tyre",
                                         "our choice, with caution", "2026",
                                         Standing::common_practice};

}  // namespace treadwater::grip
