// An event in the plain numbers that the planner works with.
//
// For this room only. Units: seconds; wear in units of a life (`life_units`), rounded up.
#pragma once

#include <cstddef>
#include <limits>
#include <vector>

#include "core/stage/event.hpp"
#include "core/stage/plan.hpp"

namespace treadwater::stage {

inline constexpr int life_units = 30000;
inline constexpr int more_than_any_life = 1 << 20;
inline constexpr double infinity = std::numeric_limits<double>::infinity();

struct Model {
  explicit Model(const Event& event, bool careful);

  std::size_t stages = 0;
  std::size_t legs = 0;
  std::size_t kinds = 0;
  std::vector<std::size_t> leg_first;  // legs + 1 of them
  std::vector<const SetKind*> kind;    // owned by the event
  std::vector<Follows> follows;        // by stage; the first stage's rows are all the same
  std::vector<double> lost;            // at(stage, kind, weather); infinite: not to be used
  std::vector<int> wear;               // the same
  std::vector<int> worst_to;         // stage, kind: wear since the leg began, in its worst weather
  std::vector<char> allowed;         // leg, kind: in any weather deemed possible, by a new set
  std::vector<char> ruled_in;        // stage, kind: by the rules and the ground alone
  std::vector<int> limit;            // kind
  std::vector<CarriedSet> sets;      // kind by kind
  std::vector<std::size_t> kind_of;  // set
  std::vector<int> worn;             // set, at the start
  std::size_t most_used = 0;         // different sets that may be run; 0: no limit

  std::size_t at(std::size_t stage, std::size_t k, std::size_t w) const {
    return (stage * kinds + k) * weathers + w;
  }
  int worst(std::size_t leg, std::size_t k) const {
    return worst_to[(leg_first[leg + 1] - 1) * kinds + k];
  }

 private:
  void cut_into_legs(const Event& event);
  void take_sets(const Event& event);
  void reckon(const Event& event, bool careful);
};

}  // namespace treadwater::stage
