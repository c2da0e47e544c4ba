// Kinds of competition tyre in trade words: what each is for, its pace and its life.
//
// Pace is a time factor relative to the right tyre for that weather on that surface: 1.00 is the
// right tyre, 1.05 takes 5 % longer. It is a range, low to high. A pace that is not `safe` means
// crawling or worse; a factor of 0 means not to be used there at all.
//
// Life is the distance on stages, at a normal abrasion, from new to the least tread (1.6 mm; for a
// slick, to the end of its rubber), by surface and wetness (damp apart; standing water wears as
// wet, ice as snow), for the driven axle. The other axle lasts `undriven_life` times as long.
//
// How the figures are known: nearly all are ours, cautious and without a source, to be replaced by
// a crew's own; each row says so by its sources. One check value of common practice: a soft stage
// tyre on a driven rear axle lasts about 12 miles (19 km) in the dry. Temperature windows of three
// kinds, and the land ratio of tyres moulded to competition rules, were read second-hand; other
// land ratios are from memory. Temperatures are of the air, as far as the sources say.
//
// Range: cars on closed stages. Nothing here is a speed or a permission.
#pragma once

#include <array>
#include <optional>
#include <string_view>

#include "core/quantity/quantity.hpp"
#include "core/stage/weather.hpp"
#include "core/standard/source.hpp"
#include "core/words/phrase.hpp"

namespace treadwater::stage {

enum class Surface : unsigned char { tarmac, gravel };
inline constexpr std::size_t surfaces = 2;
constexpr std::size_t index(Surface s) { return static_cast<std::size_t>(s); }

// How hard the surface is on a carcass. A tyre is not used where it is rougher than it can stand.
enum class Roughness : unsigned char { smooth, broken, rough };

struct Pace {
  double low = 0.0;
  double high = 0.0;
  bool safe = false;
  bool operator==(const Pace&) const = default;
};

enum class Wetness : unsigned char { dry, damp, wet, snow };
inline constexpr std::size_t wetnesses = 4;
constexpr std::size_t wetness(Weather w) {
  constexpr unsigned char of[weathers] = {0, 1, 2, 2, 3, 3};
  return of[index(w)];
}

struct SetKind {
  std::string_view id;
  Phrase label;
  Phrase name;  // inside a sentence: "soft stage tyre"
  Phrase why;   // its use and its faults, in a sentence or two
  std::array<std::array<Pace, weathers>, surfaces> pace{};
  std::array<std::array<Length, wetnesses>, surfaces> life{};  // driven axle
  double undriven_life = 1.0;                                  // at least 1
  double land_low = 1.0;                                       // share of the contact patch
  double land_high = 1.0;                                      // that is rubber
  Temperature coolest;
  Temperature hottest;
  Length new_tread;    // zero for a slick
  Length least_tread;  // at the end of its life
  Roughness roughest = Roughness::smooth;
  bool studded = false;
  bool moulded = true;      // its grooves were made in the mould: not a slick, nor cut by hand
  bool road_legal = false;  // it is made with an approval mark; look for it on the sidewall
  const Source* pace_known = nullptr;
  const Source* life_known = nullptr;
  const Source* land_known = nullptr;
  const Source* window_known = nullptr;
  bool operator==(const SetKind&) const = default;

  bool slick() const { return !(new_tread > Length()); }
};

inline constexpr std::size_t set_kind_count = 11;
SetKind set_kind(std::size_t i);                            // i < set_kind_count
std::optional<SetKind> find_set_kind(std::string_view id);  // nothing if there is none

// The share of its life that a tyre of this kind has used, from the tread that is left; 0 for a
// slick, whose rubber cannot be judged by its grooves.
double worn(const SetKind& kind, Length left);
// The inverse: the tread left when that share has been used; nothing for a slick.
Length tread_left(const SetKind& kind, double worn);

}  // namespace treadwater::stage
