// An event: its stages and halts, its rules, and the sets of tyres in the van; and what is wrong
// with one, in plain sentences.
//
// Time: a stage takes `length / average` on the right tyre for its weather, whatever that is; the
// extra time that another tyre takes, by its pace, is the time lost. Pace is the middle of its
// range; its slow end if the air is outside the tyre's temperature window, and always for
// Attitude::safe. Wear: a share of the set's life, length x abrasion / life, by the driven axle,
// which wears faster (with four driven wheels, all by the driven figure).
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/quantity/quantity.hpp"
#include "core/stage/set_kind.hpp"
#include "core/stage/weather.hpp"

namespace treadwater::stage {

// Tyres may be changed at a service and in a tyre zone; at a regroup nobody may work on the car.
enum class Halt : unsigned char { none, regroup, tyre_zone, service };

struct Stage {
  Length length;
  Speed average = kilometres_per_hour(80.0);  // on the right tyre
  double gravel = 0.0;                        // share of its length; the rest is tarmac
  double abrasion = 1.0;                      // wear relative to a normal stage, 0.1 to 10
  Roughness roughness = Roughness::smooth;
  std::optional<Temperature> air;
  Chances chances{1.0};
  Halt halt_after = Halt::none;
};

struct TyreSet {
  SetKind kind;  // sets are of the same kind if all of this is the same, a crew's own figures too
  int count = 1;
  double worn = 0.0;  // share of its life used, 0 new
};

struct Rules {
  std::optional<int> most_sets;  // different sets that may be run; of 4 tyres each
  Length least_tread;            // at the end of every stage
  double least_grooves = 0.0;    // share of the tread that must be grooves: 1 - land ratio
  bool no_studs = false;
  bool moulded_only = false;
  bool road_sections = false;  // sets must be legal on the open road
};

enum class Drive : unsigned char { front, rear, all };

struct Event {
  std::vector<Stage> stages;
  std::vector<TyreSet> sets;
  Rules rules;
  Drive drive = Drive::rear;
  double persistence = 0.5;  // weather.hpp; 0 to 1
};

inline constexpr std::size_t most_stages = 30;
inline constexpr std::size_t most_legs = 10;  // runs of stages between tyre changes
inline constexpr std::size_t most_sets = 12;  // in the van

// Why a request cannot be calculated, or cannot be done, and what would help.
struct Problem {
  std::string_view code;  // "chances", "no-usable-set", "no-set-left" ...
  int stage;              // counted from 0; -1 where it is about none
  int set;                // entry of Event::sets, from 0; -1 if about none
  std::string text;
};

// Everything in the event that is not a number, out of range, or too much. NaN is out of range.
std::vector<Problem> check(const Event& event);

// Why a set of this kind may not run a stage, whatever its wear; nothing if it may. `careful` also
// refuses a pace that is not safe in any weather deemed possible there.
// A weather is deemed possible when its chance is above 0.
std::optional<std::string> refusal(const SetKind& kind, const Stage& stage, const Rules& rules,
                                   bool careful);

// The share of its life that a set may have used and still meet the minimum tread; below 0 if the
// rule forbids the kind (a slick has no tread).
double usable_life(const SetKind& kind, const Rules& rules);

// Is its pace safe in this weather on every surface of the stage?
bool safe_in(const SetKind& kind, const Stage& stage, Weather weather);

// Seconds on the right tyre, and seconds lost to it in this weather. Infinite if not to be used.
double right_tyre_seconds(const Stage& stage);
double seconds_lost(const SetKind& kind, const Stage& stage, Weather weather, bool careful);
// Share of the driven axle's life that the stage takes. Infinite if it has no life there.
double wear(const SetKind& kind, const Stage& stage, Weather weather);
// The same in the worst weather deemed possible there.
double worst_wear(const SetKind& kind, const Stage& stage);

}  // namespace treadwater::stage
