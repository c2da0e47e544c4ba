#include "core/sheets/stopping/chart.hpp"

#include <algorithm>
#include <cmath>
#include <limits>

namespace treadwater::sheets::stopping {
namespace {

using judge::StopCase;
using judge::StopJudged;

struct Steps {
  double step;
  double last;
};

// Up to a quarter above the speed, in round steps of the user's unit.
Steps speeds_to_draw(Speed speed, UnitSystem units) {
  const double wanted = std::max(shown(speed, units).value * 1.25, 40.0);
  const double step = wanted > 150.0 ? 25.0 : 10.0;
  return {step, std::min(step * std::ceil(wanted / step), shown(grip::end_of_model, units).value)};
}

// A braking distance with the reaction on top, as it is drawn and as it is written.
class WithReaction {
 public:
  WithReaction(Length thought, UnitSystem units) : thought_(thought), units_(units) {}

  double drawn(const std::optional<Length>& braking) const {
    return braking ? shown_distance(*braking + thought_, units_).value
                   : std::numeric_limits<double>::quiet_NaN();
  }
  Text estimated(const std::optional<Length>& braking) const {
    if (!braking) return Phrase("will not stop");
    return write_estimated_distance(*braking + thought_, units_);
  }
  Text longest(const std::optional<Length>& braking) const {
    if (!braking) return Phrase("will not stop");
    return write_longest_distance(*braking + thought_, units_);
  }

 private:
  Length thought_;
  UnitSystem units_;
};

void draw_stops(const StopCase& stop, const Steps& steps, UnitSystem units, Chart& chart) {
  const bool compares = grip::wear_matters(stop.grip);
  Series own{"subject", say("This tyre, #", {write_depth(stop.grip.tread, units)}), {}, {}, {}, {}};
  Series unworn{"reference", say("The same tyre new, #", {write_depth(grip::new_tread, units)}),
                {},          {},
                {},          {}};
  grip::BrakingBySpeed braking(stop.grip, stop.straight());
  grip::BrakingBySpeed braking_new(grip::when_new(stop.grip), stop.straight());
  for (double v = steps.step; v <= steps.last; v += steps.step) {
    const Speed speed = speed_shown_as(v, units);
    const WithReaction whole(travelled(speed, stop.reaction()), units);
    const grip::DistanceBand& band = braking.up_to(speed);
    own.x.push_back(v);
    own.y.push_back(whole.drawn(band.central));
    own.low.push_back(whole.drawn(band.shortest));
    own.high.push_back(whole.drawn(band.longest));
    chart.table.rows.push_back({write(speed, units), whole.estimated(band.shortest),
                                whole.estimated(band.central), whole.longest(band.longest)});
    if (!compares) continue;
    const std::optional<Length> fresh = braking_new.up_to(speed).central;
    unworn.x.push_back(v);
    unworn.y.push_back(whole.drawn(fresh));
    chart.table.rows.back().push_back(whole.estimated(fresh));
  }
  chart.series.push_back(std::move(own));
  if (compares) chart.series.push_back(std::move(unworn));
}

}  // namespace

Chart stops_by_speed(const StopCase& stop, const StopJudged& judged, UnitSystem units) {
  Chart chart;
  chart.id = "stops";
  chart.title = Phrase("Stopping, by speed");
  std::string floating;
  if (judged.onset && judged.onset->held())
    floating = say("From # up it may float, and the curve does not hold.",
                   {write(judged.onset->band.low, units)});
  chart.text =
      sentences({say("Reaction and braking on this ground, with the band of its grip."), floating});
  chart.x = {Phrase("Speed"), std::string(shown(stop.speed, units).unit)};
  chart.y = {Phrase("Distance"), std::string(shown_distance(Length(), units).unit)};
  chart.table.columns = {Phrase("Speed"), Phrase("Shortest"), Phrase("About"), Phrase("Longest")};
  if (grip::wear_matters(stop.grip)) chart.table.columns.push_back(Phrase("New"));
  const Steps steps = speeds_to_draw(stop.speed, units);
  draw_stops(stop, steps, units, chart);
  const std::optional<Length>& whole = judged.stopping.central;
  if (stop.seen && whole && *stop.seen < *whole * 2.0) {
    const double sight = shown_distance(*stop.seen, units).value;
    chart.series.insert(chart.series.begin() + 1, {"reference",
                                                   Phrase("What you can see"),
                                                   {steps.step, steps.last},
                                                   {sight, sight},
                                                   {},
                                                   {}});
  }
  if (whole)
    chart.marks = {{shown(stop.speed, units).value, shown_distance(*whole, units).value,
                    Phrase("You are here")}};
  return chart;
}

}  // namespace treadwater::sheets::stopping
