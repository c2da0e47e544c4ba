// The room `grip`: friction, stopping and cornering.
//
//   skid.hpp       published laws of wet friction against speed and texture
//   film.hpp       what water takes away, by depth, tread and speed
//   rubber.hpp     rubber and its warmth
//   friction.hpp   (this file) the friction of one case, with its sources and gaps
//   stopping.hpp   stopping at a given friction; the rules that drivers are taught
//   cornering.hpp  cornering at a given friction; braking in a bend
//   limits.hpp     distances and speeds for one case, as a band
//
// The band of a case:
//   paved ground  low: 0.6 in the dry (the lower end of a published range for clean pavement), less
//                 with speed as the handbook's dry figure; in the wet also at most 0.9 of the
//                 handbook's wet one (so that printed figures for an unstated tyre lie above it);
//                 less for smooth texture by the published laws of skid.hpp
//                 high: 1.2 for ordinary rubber, less in water as the best of the braking tests
//   other ground  the least and the most that any table prints for it. No law of speed or tread is
//                 known there. Under standing water the low end falls to half (our choice)
//   central       half-way in ratio
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

enum class Wetness { dry, damp, wet, standing };

// The film that a word stands for: 0, 0.1, 0.5 and 2.5 mm. Our choice: 0.4 mm counts as wet in one
// text, road tests use 0.5 mm, and 2.5 mm is where printed advice on aquaplaning begins.
Length film_of(Wetness wetness);

struct GripCase {
  const standard::FrictionSurface* surface = standard::friction_surfaces().begin();
  const TyreGrip* tyre = find_tyre_grip("road");
  Length tread;
  Length film;                            // water above the tops of the texture; 0 a dry road
  const Rubber* rubber = nullptr;         // if not given, the tyre's usual one
  std::optional<Temperature> tread_heat;  // temperature of the tread, where known
};

// The friction of one case at any speed. A case with a negative number or NaN has no friction at
// all.
class Grip {
 public:
  explicit Grip(const GripCase& grip_case);
  FrictionBand at(Speed speed) const;

 private:
  FrictionBand on_pavement(Speed speed) const;
  FrictionBand off_pavement() const;

  GripCase case_;
  Length tread_;    // credited
  Length texture_;  // paved
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
