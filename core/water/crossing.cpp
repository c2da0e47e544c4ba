#include "core/water/crossing.hpp"

#include <algorithm>

namespace treadwater::water {
namespace {

constexpr Source advice{"crossing-advice",
                        "Motoring club, environment and emergency agency advice on flood water",
                        "10 cm still, none moving; 15 cm stalls, 30 cm floats many, 60 cm most", "",
                        Standing::secondary};
constexpr Source full_scale{
    "crossing-full-scale", "University of New South Wales, full-scale vehicles in flowing water",
    "as reported by the university and an emergency service", "", Standing::secondary};
constexpr Source stability{
    "crossing-stability", "Shand et al., Australian Rainfall and Runoff, vehicle stability",
    "depth x speed and still-water limits; not seen in print", "2011", Standing::memory};
constexpr Source puddle_drag{"puddle-drag", "Hayes, Ivey and Gallaway, ASTM STP28522S",
                             "up to 300 lb in water to 28.5 mm; read in its abstract", "",
                             Standing::published};

using enum VehicleKind;
constexpr Speed metre_a_second = kilometres_per_hour(3.6);

constexpr CrossingFigure figures[] = {
    {{}, metres(0.15), {}, false, "can stall a car or take its footing", advice},
    {{}, metres(0.30), {}, true, "floats or moves many cars", advice},
    {{}, metres(0.60), {}, true, "carries most vehicles away", advice},
    {small_car, metres(0.15), metre_a_second, false, "moved a car of 1.05 t", full_scale},
    {small_car, metres(0.60), {}, true, "floated a car of 1.05 t", full_scale},
    {large_car, metres(0.30), metre_a_second, false, "moved a car of 1.5 t", full_scale},
    {four_by_four, metres(0.45), metre_a_second, false, "made 2.5 t unstable", full_scale},
    {four_by_four, metres(0.95), {}, true, "floated 2.5 t", full_scale},
    {small_car, metres(0.30), {}, false, "limit in still water", stability},
    {large_car, metres(0.40), {}, false, "limit in still water", stability},
    {four_by_four, metres(0.50), {}, false, "limit in still water", stability},
    {small_car, metres(0.30), metre_a_second, false, "limit of depth x speed", stability},
    {large_car, metres(0.45), metre_a_second, false, "limit of depth x speed", stability},
    {four_by_four, metres(0.60), metre_a_second, false, "limit of depth x speed", stability},
};

// The lower of the rows above, in the order of VehicleKind.
struct Stability {
  Length still;
  double depth_times_speed;  // m2/s
  Length afloat;
};
constexpr Stability stabilities[] = {
    {metres(0.15), 0.15, metres(0.30)},
    {metres(0.15), 0.30, metres(0.30)},
    {metres(0.45), 0.45, metres(0.60)},
};

constexpr double unknown_flow = 1.0;  // m/s

double metres_a_second(const Flow& flow) {
  if (!flow.moving) return 0.0;
  return flow.speed ? in_kilometres_per_hour(*flow.speed) / 3.6 : unknown_flow;
}

}  // namespace

CrossingFigures crossing_figures() { return {std::begin(figures), std::end(figures)}; }

CrossingLimits crossing_limits(VehicleKind vehicle, const Flow& flow) {
  const Stability& kind = stabilities[static_cast<int>(vehicle)];
  const double speed = metres_a_second(flow);
  if (speed <= 0.0) return {kind.still, kind.afloat};
  const double stable = kind.depth_times_speed / speed;
  return {stable > 0.0 ? std::min(metres(stable), kind.still) : metres(0.0), kind.afloat};
}

Crossing judge_crossing(VehicleKind vehicle, Length depth, const Flow& flow) {
  if (depth <= metres(0.0) && !flow.moving) return Crossing::dry;
  const CrossingLimits limits = crossing_limits(vehicle, flow);
  if (!(depth < limits.afloat_at)) return Crossing::afloat;
  if (!(depth < limits.stable_to)) return Crossing::unstable;
  if (flow.moving || !(depth < deepest_to_enter)) return Crossing::do_not_enter;
  return Crossing::with_caution;
}

const Source& crossing_advice_source() { return advice; }
const Source& full_scale_source() { return full_scale; }
const Source& stability_source() { return stability; }
const Source& puddle_drag_source() { return puddle_drag; }

}  // namespace treadwater::water
