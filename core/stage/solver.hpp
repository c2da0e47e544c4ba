// The dynamic programme behind plan.hpp: the exact solution of an event in plain numbers.
//
// A state is (leg, weather seen, wear of every set). Wear matters only by which legs a set can
// still run, so a set that lasts all that is left is one state, one that lasts none another, sets
// of a kind are interchangeable, and one that lasts dominates its like: all exact. States are
// solved as they are met, best candidate first; a candidate whose time without any limit on wear is
// no better than the best so far is left out, which changes no result.
//
// solver.cpp has the states and what is best in each; solver_legs.cpp how legs may end;
// solver_steady.cpp the tail of the time lost; solver_first.cpp the first choice, and following it.
//
// For this room only. Units: seconds; wear in units of a life (`life_units`).
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <vector>

#include "core/stage/model.hpp"
#include "core/stage/plan.hpp"

namespace treadwater::stage {

inline constexpr std::size_t most_marks = 256;  // of the steady's scale of times
inline constexpr std::size_t rough_marks = 64;
inline constexpr int wear_levels_tried[] = {0, 4, 2, 1, worst_weather};  // in turn, while too much

using Codes = std::array<std::uint16_t, most_sets>;

class Solver {
 public:
  // wear_levels: see plan.hpp. A solver that met too much says so and must be discarded.
  Solver(const Model& model, int wear_levels, std::size_t marks = most_marks);
  bool too_much() const { return too_much_; }

  // The first choices, best first, with the loss that the attitude minimises; none if there is no
  // plan. Must be called before the rest.
  std::vector<FirstChoice> first_choices(const Question& question);

  // The time lost by the plan of the best first choice. For the steady, `worst` is an upper bound
  // and `mean` that of the plan which is best on average.
  struct Value {
    double mean = infinity;
    double worst = infinity;
  };
  Value planned() const { return planned_; }
  double time_step() const { return step_; }
  std::uint64_t work() const { return work_; }

  // Follows the plan through one course of weather.
  struct Course {
    std::vector<std::uint16_t> codes;  // wear as the plan keeps it, by set
    std::vector<char> used;            // has been run
    std::size_t fitted = 0;
    double lost = 0.0;
  };
  Course start() const;
  std::size_t choose(const Course& course, std::size_t leg, std::size_t seen);
  // Wear of a leg as the plan keeps it: of the leg so far, and one stage more.
  int worn_after(std::size_t leg, std::size_t k, int before, std::size_t stage,
                 std::size_t w) const;

 private:
  // Of a code: whether the set has been run, kept only where the rules limit the sets run; and its
  // wear, or one of two words for it.
  static constexpr std::uint16_t used_bit = 0x8000;
  static constexpr std::uint16_t wear_bits = 0x7FFF;
  static constexpr std::uint16_t lasts = 0x7FFE;  // all legs that are left
  static constexpr std::uint16_t done = 0x7FFF;   // none of them
  static constexpr std::uint8_t no_choice = 0xFF;
  static constexpr double tie = 1e-9;  // seconds

  enum Aim : unsigned char { least_mean, least_worst };
  // One way a leg may end: weather, wear and (for the steady) marks of time lost, with its chance.
  struct Ending {
    std::uint64_t key;
    double chance;
    double lost;   // chance times seconds
    double worst;  // seconds
    std::size_t weather() const { return static_cast<std::size_t>(key >> 48); }
    int wear() const { return static_cast<int>((key >> 32) & 0xFFFF); }
    std::size_t mark() const { return static_cast<std::size_t>(key & 0xFFFFFFFF); }
  };
  struct Endings {
    std::vector<Ending> all;
    std::vector<std::size_t> first;  // by at(leg, kind, weather), and one more
  };
  struct State {
    std::uint8_t leg;
    std::uint8_t weather;
    Codes codes;
    bool operator==(const State&) const = default;
  };
  struct Node {
    State state;
    Value value[2];
    std::uint8_t choice[2];
    bool solved[2];
    std::uint32_t tail;  // 1 + index into tails_, or 0
  };
  struct Tail {
    std::vector<double> excess;  // by mark of the time still in hand
    std::vector<std::uint8_t> choice;
    double worst = 0.0;
  };
  struct Candidates {
    std::uint8_t set[most_sets];
    std::size_t count = 0;
  };

  struct First {
    std::size_t place;  // in the root's codes
    Value value;
    double loss;
    std::size_t threshold;
  };

  // More than these is too much; if wear is already rounded up as far as possible there is nothing
  // left to try, so more is allowed and takes longer.
  struct Most {
    std::size_t nodes, tails;
  };
  Most most() const { return levels_ == worst_weather ? Most{400000, 30000} : Most{60000, 3000}; }

  Aim aim_of_attitude() const { return attitude_ == Attitude::safe ? least_worst : least_mean; }

  void build(double step, Endings& endings);
  void end_leg(std::size_t leg, std::size_t k, std::size_t from, double step,
               std::vector<Ending>& out);
  void relax();
  void relax_tail();
  std::uint16_t settled(std::size_t leg, std::size_t k, std::uint16_t code, bool full) const;
  void settle(std::size_t leg, Codes& codes) const;
  State after(const State& state, std::size_t set, const Ending& ending) const;
  std::size_t find(const State& state);
  Candidates candidates(const State& state, Aim aim) const;
  Value try_set(const State& state, std::size_t set, Aim aim);
  Value value(std::size_t node, Aim aim);
  bool better(const Value& a, const Value& b, Aim aim) const;
  void add_excess(const Ending& ending, double rest, const double* excess,
                  std::vector<double>& sum) const;
  Value try_tail(const State& state, std::size_t set, std::vector<double>& sum);
  std::size_t tail(std::size_t node);
  void mark_times(const std::vector<First>& first, const Question& question);
  void judge_tails(std::vector<First>& first, const Question& question);
  void rank(std::vector<First>& first) const;
  std::size_t best_in(const State& state, double lost);

  const Model& m_;
  int levels_;
  std::size_t marks_;
  bool too_much_ = false;
  std::uint64_t work_ = 0;
  std::vector<char> follow_wear_;           // kind: some set of it may run out
  std::vector<int> rest_all_, rest_least_;  // leg, kind: worst wear of all, of the least leg
  Endings endings_, marked_;
  std::vector<Value> relaxed_;                     // at(leg, kind, weather): without limits on wear
  std::vector<Value> relaxed_rest_;                // leg, weather
  std::vector<std::vector<double>> relaxed_tail_;  // at(leg, kind, weather)
  std::vector<Node> nodes_;
  std::vector<std::uint32_t> table_;  // open addressing; 1 + index into nodes_
  std::vector<Tail> tails_;
  Attitude attitude_ = Attitude::average;
  std::size_t first_ = 0;
  Value planned_;
  double step_ = 0.0;
  std::size_t threshold_ = 0;  // mark of the best t
};

// An event solved for its first choices alone. Adds to `work` what it took.
struct Solved {
  std::vector<FirstChoice> first;
  bool too_much = true;
};
Solved solve(const Event& event, const Question& question, int wear_levels, std::uint64_t& work,
             std::size_t marks = most_marks);

}  // namespace treadwater::stage
