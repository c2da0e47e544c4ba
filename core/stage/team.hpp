// The cars of a team on the same stages: what goes on first on each, with the same sets in its van.
//
// A car differs from the first, whose lives the event has, by how fast it wears tyres. The volume
// of rubber worn off is in proportion to load and distance (Archard: V = k F s / H, with the same
// rubber and road on every car), and is spread over the tread's width and circumference, so the
// depth goes with
//   (load / load of the first) x (width of the first / width)
//                              x (overall diameter of the first / overall diameter)
// and a life with its inverse. Without both sizes only the load counts; without both loads nothing
// is known. Sliding is assumed to be the same share of the distance: the driver makes more
// difference.
//
// Every car between two that take the same kind of set is assumed to take it too: the choice
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
  std::optional<std::size_t> set;  // of Plan::sets, that goes on first; nothing if none lasts
};

// For each car, at least one; nothing if its wear is not known. `own` is the plan of the first car.
std::vector<std::optional<OnCar>> plan_team(const std::vector<TeamCar>& cars, const Event& event,
                                            const Question& question, const Plan& own);

// Are they from the same entry of Event::sets?
bool same_kind(const Plan& plan, std::optional<std::size_t> a, std::optional<std::size_t> b);

}  // namespace treadwater::stage
