// Which set to put on now, and which at each halt if it is then dry, damp, wet ...
//
// What is decided: at the start and at each halt where tyres may be changed, one set for all stages
// up to the next such halt (a leg). What is known then: the weather seen on the last stage (the
// chain of weather.hpp forgets what came before), the wear of every set, and, for `steady`, the
// time lost so far. Which set is on the car does not matter: a change costs no time. Solved by
// dynamic programming with recourse, exact over all plans, in these terms:
//
//   average  the least expected time lost
//   steady   the least CVaR at `tail_level` of the time lost over all stages together: the mean of
//            the worst 1 - tail_level of outcomes. For each threshold t on a scale of `time_step`,
//            the least expected excess over t is solved with the time lost as part of the state;
//            the plan is the one of the best t (Rockafellar and Uryasev). A time between two marks
//            of the scale counts as a lottery of both with the same mean, which can only raise the
//            CVaR: exact when all times are on the marks, else never flattered. Of plans equally
//            good in the tail, the least expected time is taken at each halt.
//   safe     the least worst case from every halt on, then the least expected time; with paces at
//            the slow end of their range, and no set that is unsafe in any weather deemed possible
//
// Wear is kept in 30 000ths of a life, rounded up at each stage. A set is put on only if it lasts
// the leg within the rules in any weather deemed possible on its stages (any with a chance above
// 0). If there are too many sets and weathers to follow their wear exactly, `wear_levels` says into
// how many levels a stage's share of its leg's worst wear was rounded up (`worst_weather`: a leg
// always counts as its worst); 0 is exact. So no plan wears a set past its limit, and the loss is
// never flattered: a better plan may exist.
//
// Figures: with at most 4096 paths of weather all are walked, and every figure is exact
// (`every_path`). Otherwise 1000 paths sampled from a fixed start, the same on every machine, give
// the regret, with its standard error, and any other figure that is not solved for; see there.
// Hindsight knows the weather of all stages, and obeys wear and rules in that weather.
//
// Size: 30 stages, 10 legs, 12 sets of any mixture of kinds. Errors: Problems, nothing throws.
#pragma once

#include <optional>
#include <tl/expected.hpp>
#include <vector>

#include "core/quantity/progress.hpp"
#include "core/stage/event.hpp"

namespace treadwater::stage {

enum class Attitude : unsigned char { average, steady, safe };

inline constexpr int worst_weather = -1;

struct Question {
  Attitude attitude = Attitude::average;
  double tail_level = 0.8;  // 0 to 0.99
  bool look_for_swing = true;
  bool only_first = false;  // the first choices only: no path is walked, and no figures given
  Progress progress = nullptr;
};

// A set in the van: which entry of Event::sets, and which of its count.
struct CarriedSet {
  std::size_t entry;
  int number;  // 1 ...
};

// A first choice, with the best that can follow it. The loss is what the attitude minimises, s.
struct FirstChoice {
  std::size_t set;  // index into Plan::sets
  double loss;
  double regret;  // against the best first choice, s
};

// What to put on at a halt if this was the weather on the stage before it.
struct AtHalt {
  std::size_t stage;  // the stage before the halt
  Weather seen;
  double chance;             // of coming to this halt with this weather seen
  std::vector<double> fits;  // for each set, the share of those cases in which it goes on
  std::size_t set;           // the one that goes on most often
};

// One set on one stage.
struct SetOnStage {
  double on = 0.0;      // chance that it is on the car
  double unsafe = 0.0;  // chance that it is on in weather in which its pace is not safe
  // Shares of its life used after the stage, on the driven axle: expected, and in the worst weather
  // deemed possible on the leg, of all the paths walked.
  double worn = 0.0;
  double most_worn = 0.0;
};

// What is left of the set on the car after a stage: shares of a life, down to the least tread.
struct WearLeft {
  double expected;
  double least;  // in the worst weather deemed possible on this leg
  double undriven_expected;
  double undriven_least;
};

// The least change of one stage's chance of a wet road (wet and standing water together) that
// changes which kind of set goes on first. Found by solving again; at most 0.5 % too high. For a
// long event it is searched for in a plan that rounds wear up further, and the result is then
// solved again like the plan itself: it does change the choice, and a smaller change may too.
struct Swing {
  std::size_t stage;
  double wet_now;
  double wet_then;
  std::optional<std::size_t> set;  // what goes on then; nothing if no plan is left
};

// The same for the air, on all stages whose temperature is known: in whole kelvins, up to 20 either
// way.
struct AirSwing {
  double kelvins;  // below 0: colder
  std::optional<std::size_t> set;
};

struct Plan {
  std::vector<CarriedSet> sets;
  std::vector<FirstChoice> first;  // the best and up to two others, of different kinds or wear
  std::vector<AtHalt> halts;
  std::vector<WearLeft> left;  // after each stage
  std::vector<double> used;    // for each set, the chance that it is run at all
  std::vector<SetOnStage> on;  // stage by stage, one for each set

  double right_tyre_seconds = 0.0;  // all stages, always on the right tyre
  // Time lost to that, s. Expected and worst case are exact for the average and the safe; for
  // `steady`, on sampled paths, the expected is an estimate and the worst an upper bound. The tail
  // is what `steady` solves for; for the others, on sampled paths, an estimate.
  double expected_lost = 0.0;
  double tail_lost = 0.0;
  double worst_lost = 0.0;
  double regret = 0.0;          // expected loss against hindsight
  double largest_regret = 0.0;  // over the paths walked
  bool every_path = true;
  double regret_error = 0.0;     // standard error where paths were sampled
  bool regret_is_bound = false;  // some hindsight was too much to calculate: regret is at most this

  double time_step = 0.0;  // steady: the scale of times, s
  int wear_levels = 0;     // 0: wear is exact; `worst_weather`: as if in it

  std::optional<Swing> swing;
  std::optional<AirSwing> air_swing;
  bool swing_complete = true;  // no smaller change does; otherwise the search was cut short

  const SetOnStage& at(std::size_t stage, std::size_t set) const {
    return on[stage * sets.size() + set];
  }
  std::size_t likeliest_on(std::size_t stage) const;  // which set
};

tl::expected<Plan, std::vector<Problem>> plan(const Event& event, const Question& question);

}  // namespace treadwater::stage
