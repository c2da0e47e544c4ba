// Fords and floods: how deep still or moving water may be before a car loses its footing.
//
// The advice comes first: do not enter standing water of 10 cm or more, nor any moving water.
// Behind it are full-scale tests and stability limits; if two disagree the lower is used. They are
// for one vehicle on a firm, level, known bed; a hole, a missing edge or a rising river makes them
// all worthless.
//
// Sources: crossing_figures, each row with its own.
// Range: any depth and speed of flow; water that moves at an unknown speed counts as 1 m/s, and
// slower water as no safer than still. NaN counts as the worst.
#pragma once

#include <iterator>
#include <optional>
#include <string_view>

#include "core/quantity/quantity.hpp"
#include "core/standard/source.hpp"

namespace treadwater::water {

enum class VehicleKind { small_car, large_car, four_by_four };

enum class Crossing {
  dry,           // no water; if it moves it is water, even with no depth given
  with_caution,  // still and under 10 cm: slowly, one at a time, then dry the brakes
  do_not_enter,  // by the advice: 10 cm or more, or moving
  unstable,      // deep enough to stall it or take its footing
  afloat,        // deep enough to float it
};

struct Flow {
  bool moving = false;
  std::optional<Speed> speed;  // of the water, if known
};

// What was published, row by row.
struct CrossingFigure {
  std::optional<VehicleKind> vehicle;  // none: cars in general
  Length depth;
  std::optional<Speed> flow;  // if none: still, or not stated
  bool floats;                // otherwise it moves, stalls or loses its footing
  std::string_view text;
  const Source& source;
};

struct CrossingFigures {
  const CrossingFigure* first;
  const CrossingFigure* last;
  const CrossingFigure* begin() const { return first; }
  const CrossingFigure* end() const { return last; }
};

CrossingFigures crossing_figures();

// The lower of them if they disagree. A four-wheel drive goes by its own figures and those for most
// vehicles, not by those for many cars.
struct CrossingLimits {
  Length stable_to;  // below this it keeps its footing: least of a depth and depth x speed / speed
  Length afloat_at;
};

CrossingLimits crossing_limits(VehicleKind vehicle, const Flow& flow);
Crossing judge_crossing(VehicleKind vehicle, Length depth, const Flow& flow);

// The depth of still water from which the advice is not to enter.
inline constexpr Length deepest_to_enter = millimetres(100.0);

const Source& crossing_advice_source();

// One wheel in a puddle: the drag on one side, which pulls the car that way long before
// aquaplaning. The highest measured, in water up to the depth given.
inline constexpr Force greatest_puddle_drag = newtons(300.0 * exact::newtons_per_pound_force);
inline constexpr Length deepest_puddle_measured = millimetres(28.5);
const Source& puddle_drag_source();

}  // namespace treadwater::water
