// The cars of a team on the same stages: what goes on first on each, with the same sets in its van.
//
// A car differs from the first, whose lives the event has, by how fast it wears tyres. The volume
// of rubber worn off goes with load and way (Archard: V = k F s / H, with the same rubber and road
// on every car), and is spread over the tread's width and circumference, so the depth goes with
//   (load / load of the first) x (width of the first / width)
//                              x (overall diameter of the first / overall diameter)
// and a life with its inverse. Without both sizes the load alone counts; without both loads nothing
// is known. Sliding is taken as the same share of the way: a driver makes more difference.
//
// Between two cars that take the same kind of set, every car is taken to do so: what it takes
// changes with wear in one direction. Range: any loads and sizes; exact but for that.
#pragma once

#include <optional>
#include <vector>

#include "core/patch/geometry.hpp"
#include "core/stage/plan.hpp"

namespace treadwater::stage {

struct TeamCar {
  std::optional<Mass> load{};  // on a driven wheel
  std::optional<patch::TyreSize> size{};
};

// How much faster a tyre wears on it than on the first car.
std::optional<double> wear_factor(const TeamCar& car, const TeamCar& first);
const Source& wear_by_load_source();

struct OnCar {
  double wear_factor;
  std::optional<std::size_t> set;  // of Plan::sets, that goes on first; nothing where none lasts
};

// By car, of at least one; nothing where its wear is not known. `own` is the plan of the first car.
std::vector<std::optional<OnCar>> plan_team(const std::vector<TeamCar>& cars, const Event& event,
                                            const Question& question, const Plan& own);

// Are they of one entry of Event::sets?
bool same_kind(const Plan& plan, std::optional<std::size_t> a, std::optional<std::size_t> b);

}  // namespace treadwater::stage
