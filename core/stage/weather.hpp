// Weather on the stages ahead: chances of each kind, and how one stage depends on the last.
//
// The room `stage`: which set of tyres to put on for the stages ahead.
//   weather    chances per stage, and the chain that ties them
//   set_kind   kinds of tyre in trade words, with their pace and their life
//   event      stages, halts, rules and the sets in the van; what forbids a set
//   decision   expected loss, regret and the mean of the worst tail
//   plan       what to put on now, and what at each halt
//   team       the same for the other cars of a team
// Below the plan, for this room only: model (the event in plain numbers), solver, paths (courses of
// weather), hindsight, walk (its figures), swing (what would change it), plan_problems.
//
// "Weather" is the state of the road when the car runs the stage, whatever falls from the sky.
#pragma once

#include <array>
#include <cstddef>
#include <string_view>

#include "core/standard/source.hpp"
#include "core/words/phrase.hpp"

namespace treadwater::stage {

enum class Weather : unsigned char { dry, damp, wet, standing_water, snow, ice };
inline constexpr std::size_t weathers = 6;

Phrase weather_name(Weather w);  // "dry", "standing water"

constexpr std::size_t index(Weather w) { return static_cast<std::size_t>(w); }

// One chance for each weather, in the order of the enumeration; they sum to 1.
using Chances = std::array<double, weathers>;

// follows[i][j]: the chance of weather j on the next stage when weather i was seen on the last.
using Follows = std::array<Chances, weathers>;

// Follows = s M + (1 - s) N, with s the persistence, 0 to 1.
//   N  the next stage by its own chances, whatever was seen: N[i][j] = next_j
//   M  the same weather as on the last stage as often as both stages' chances allow: weather i
//      stays with chance min(1, next_i / last_i); what cannot stay goes to the weathers that are
//      likelier on the next stage than on the last, in proportion to how much likelier
// The next stage's chances come out exactly as given, at every s. At 0 stages are independent; at 1
// they are tied as closely as their chances allow; with the same chances on both, s is the
// correlation of any weather with itself. A weather that cannot have been seen (last_i = 0) is
// followed by N. No stage but the last one seen counts: the weather is a Markov chain.
// Our own model; no source. Range: chances that sum to 1, s in 0 to 1.
Follows weather_follows(const Chances& last, const Chances& next, double persistence);
const Source& persistence_source();

// The chance of a wet road: wet and standing water together.
double wet_chance(const Chances& chances);
// The same chances with another chance of a wet road, 0 to 1: wet and standing water keep their
// proportion, and so do the others. If one side was zero, it becomes wet, or dry.
Chances with_wet_chance(const Chances& chances, double wet);

}  // namespace treadwater::stage
