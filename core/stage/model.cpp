#include "core/stage/model.hpp"

#include <algorithm>
#include <cmath>

namespace treadwater::stage {
namespace {

int units(double share) {
  const double u = std::ceil(share * life_units - 1e-6);
  return u < more_than_any_life ? static_cast<int>(u) : more_than_any_life;
}

}  // namespace

Model::Model(const Event& event, bool careful) : stages(event.stages.size()) {
  cut_into_legs(event);
  take_sets(event);
  reckon(event, careful);
}

void Model::cut_into_legs(const Event& event) {
  leg_first.push_back(0);
  for (std::size_t i = 0; i < stages; ++i)
    if (event.stages[i].halt_after >= Halt::tyre_zone || i + 1 == stages)
      leg_first.push_back(i + 1);
  legs = leg_first.size() - 1;
}

void Model::take_sets(const Event& event) {
  std::vector<std::size_t> kind_of_entry;
  for (const TyreSet& set : event.sets) {
    std::size_t k = 0;
    while (k < kind.size() && !(*kind[k] == set.kind)) ++k;
    if (k == kind.size()) kind.push_back(&set.kind);
    kind_of_entry.push_back(k);
  }
  kinds = kind.size();
  for (std::size_t k = 0; k < kinds; ++k) {
    limit.push_back(static_cast<int>(usable_life(*kind[k], event.rules) * life_units + 1e-6));
    for (std::size_t e = 0; e < event.sets.size(); ++e) {
      if (kind_of_entry[e] != k) continue;
      // More sets of a kind than there are legs are no use.
      for (int n = 1; n <= event.sets[e].count && n <= static_cast<int>(legs); ++n) {
        sets.push_back({e, n});
        kind_of.push_back(k);
        worn.push_back(units(event.sets[e].worn));
      }
    }
  }
  if (event.rules.most_sets && static_cast<std::size_t>(*event.rules.most_sets) < sets.size())
    most_used = static_cast<std::size_t>(*event.rules.most_sets);
}

// Time, wear and what is allowed, on each stage for each kind in each weather.
void Model::reckon(const Event& event, bool careful) {
  Follows first;
  first.fill(event.stages[0].chances);
  lost.resize(stages * kinds * weathers);
  wear.resize(lost.size());
  allowed.assign(legs * kinds, 1);
  for (std::size_t i = 0, leg = 0; i < stages; ++i) {
    const Stage& stage = event.stages[i];
    if (leg_first[leg + 1] == i) ++leg;
    follows.push_back(
        i == 0 ? first
               : weather_follows(event.stages[i - 1].chances, stage.chances, event.persistence));
    Stage certain = stage;
    certain.chances = {};
    for (std::size_t k = 0; k < kinds; ++k) {
      int worst_here = 0;
      for (std::size_t w = 0; w < weathers; ++w) {
        lost[at(i, k, w)] = seconds_lost(*kind[k], stage, Weather(w), careful);
        wear[at(i, k, w)] = units(stage::wear(*kind[k], stage, Weather(w)));
        if (stage.chances[w] > 0.0) worst_here = std::max(worst_here, wear[at(i, k, w)]);
      }
      const int before = i == leg_first[leg] ? 0 : worst_to[(i - 1) * kinds + k];
      worst_to.push_back(std::min(more_than_any_life, before + worst_here));
      ruled_in.push_back(refusal(*kind[k], certain, event.rules, false) ? 0 : 1);
      if (refusal(*kind[k], stage, event.rules, careful) || worst_to.back() > limit[k])
        allowed[leg * kinds + k] = 0;
    }
  }
}

}  // namespace treadwater::stage
