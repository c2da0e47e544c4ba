#include "core/sheets/stopping/drawing.hpp"

#include <algorithm>

#include "core/words/measure.hpp"

namespace treadwater::sheets::stopping {
namespace {

// Bars one under the other, all from the left edge.
class Bars {
 public:
  Bars(Drawing& drawing, double thickness) : drawing_(drawing), thickness_(thickness) {}

  void part(double from, double to, std::string_view role, Text label) {
    drawing_.boxes.push_back(
        {from, drawing_.height, to - from, thickness_, 0.0, role, std::move(label)});
  }
  void end_bar() { drawing_.height += thickness_; }
  // One more, half a bar below the others.
  void bar(double length, std::string_view role, Text label) {
    drawing_.height += thickness_ / 2.0;
    part(0.0, length, role, std::move(label));
    end_bar();
  }

 private:
  Drawing& drawing_;
  double thickness_;
};

std::optional<Length> stop_when_new(const judge::StopCase& stop) {
  if (!grip::wear_matters(stop.grip)) return std::nullopt;
  return grip::stopping_band(grip::when_new(stop.grip), stop.speed, stop.reaction(),
                             stop.straight())
      .central;
}

}  // namespace

std::optional<Drawing> stop_to_scale(const judge::StopCase& stop, const judge::StopJudged& judged,
                                     UnitSystem units) {
  const grip::DistanceBand& whole = judged.stopping;
  if (!whole.longest) return std::nullopt;
  const bool is_short = *whole.longest < metres(50.0);
  const auto drawn = [&](Length l) { return (is_short ? 10.0 : 1.0) * in_metres(l); };  // mm
  Drawing drawing;
  drawing.id = "to_scale";
  drawing.title = say("The stop, to scale 1 : #", {std::to_string(is_short ? 100 : 1000)});
  drawing.text = say("From #, from seeing the need to a standstill: about #.",
                     {write(stop.speed, units),
                      say_distance_band(*whole.central, *whole.shortest, *whole.longest, units)});
  drawing.width = drawn(*whole.longest);
  const double thought = drawn(travelled(stop.speed, stop.reaction()));
  Bars bars(drawing, drawing.width / 14.0);
  bars.part(0.0, thought, "detail", Phrase("Thinking"));
  bars.part(thought, drawn(*whole.central), "subject", Phrase("Braking on this tyre"));
  bars.part(drawn(*whole.central), drawing.width, "reference",
            Phrase("More, with the least grip that fits"));
  bars.end_bar();
  if (const auto unworn = stop_when_new(stop))
    bars.bar(
        drawn(*unworn), "detail",
        say("Below it: the same tyre new, about #", {write_estimated_distance(*unworn, units)}));
  if (stop.seen && *stop.seen < *whole.longest * 2.0) {
    bars.bar(drawn(*stop.seen), "reference",
             say("At the bottom: what you can see, #", {write_distance(*stop.seen, units)}));
    drawing.width = std::max(drawing.width, drawn(*stop.seen));
  }
  return drawing;
}

}  // namespace treadwater::sheets::stopping
