// Symbols: t time lost, x way to the finish. A change loses t1 to t2 whatever x is, driving out u1
// x to u2 x. Driving out is certainly the quicker below t1/u2, a change certainly above t2/u1: 10
// and 12 km on tarmac.
#include <algorithm>
#include <cmath>

#include "core/grip/stopping.hpp"
#include "core/judge/puncture.hpp"

namespace treadwater::judge {
namespace {

// In steps that can be paced out.
constexpr double triangle_step_m = 10.0;

// Further than the rule's least where a driver needs more to stop: by road design's sight distance.
Length triangle(const SoftTyre& tyre) {
  const Length sight =
      tyre.approach ? grip::sight_distance_metric(*tyre.approach) : air::least_triangle;
  return std::max(air::least_triangle,
                  metres(triangle_step_m * std::ceil(in_metres(sight) / triangle_step_m)));
}

air::TimeLost by_driving_out(Length way) {
  const double far = in_kilometres(way);
  return {air::lost_a_kilometre.least * far, air::lost_a_kilometre.most * far};
}

Values seconds_of(const air::TimeLost& lost) {
  return {Value::number(in_seconds(lost.least)), Value::number(in_seconds(lost.most))};
}

Finding quicker(const air::TimeLost& change, const air::TimeLost& drive_out) {
  return drive_out.least > change.most   ? finding::stage_change
         : drive_out.most < change.least ? finding::stage_drive_out
                                         : finding::stage_even;
}

void compare_on_gravel(Length way, Values values, StageStop& stop, Findings& findings) {
  const Sources sources{&air::wheel_change_source(), &air::change_or_drive_source()};
  stop.may_drive_out = way < air::gravel_change_from;
  if (stop.may_drive_out) {
    findings.add(finding::stage_near_on_gravel, values, sources);
  } else {
    values.push_back(Value::way_at_most(air::gravel_change_from));
    findings.add(finding::stage_change_on_gravel, values, sources);
  }
}

void compare(const SoftTyre& tyre, StageStop& stop, Findings& findings) {
  Values values = seconds_of(*stop.change);
  if (!tyre.way) {
    stop.may_drive_out = true;
    findings.add(finding::stage_way_unknown, values, {&air::wheel_change_source()});
  } else if (tyre.on_gravel) {
    compare_on_gravel(*tyre.way, std::move(values), stop, findings);
  } else {
    stop.drive_out = by_driving_out(*tyre.way);
    for (const Value& value : seconds_of(*stop.drive_out)) values.push_back(value);
    const Finding found = quicker(*stop.change, *stop.drive_out);
    stop.may_drive_out = found != finding::stage_change;
    findings.add(found, values,
                 {&air::wheel_change_source(), &air::drive_out_source(),
                  &air::change_or_drive_source(), &air::four_wheels_source()});
  }
}

void judge_spares(const SoftTyre& tyre, StageStop& stop, Findings& findings) {
  if (!tyre.spares) return;
  stop.spares_left = std::max(0, *tyre.spares - 1);
  if (*stop.spares_left == 0) findings.add(finding::stage_last_spare);
}

}  // namespace

StageStop judge_stage_stop(const SoftTyre& tyre, SoftTyreJudged& judged) {
  StageStop stop;
  stop.triangle = triangle(tyre);
  Sources sources{&air::stage_triangle_source()};
  if (tyre.approach) sources.push_back(&grip::sight_distance_source);
  judged.findings.add(finding::at_the_stage, {Value::distance(stop.triangle)}, sources);
  if (!tyre.comes_off()) {
    judged.findings.add(finding::stage_no_spare);
  } else if (judged.carried != CarriedBy::nothing &&
             (judged.first == First::change_the_wheel || !tyre.latest())) {
    stop.change = air::lost_by_change;
    compare(tyre, stop, judged.findings);
    judge_spares(tyre, stop, judged.findings);
  }
  return stop;
}

}  // namespace treadwater::judge
