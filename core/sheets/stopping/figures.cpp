#include "core/sheets/stopping/figures.hpp"

#include "core/grip/cornering.hpp"
#include "core/words/measure.hpp"

namespace treadwater::sheets::stopping {
namespace {

using judge::StopCase;
using judge::StopJudged;
using Band = AnswerBuilder::Band;

Band in_kmh(const grip::SpeedBand& band) {
  return {in_kilometres_per_hour(band.low), in_kilometres_per_hour(band.high)};
}

Text about(const grip::SpeedBand& band, UnitSystem units) {
  return say("about #", {say_band(band.central, band.low, band.high, units)});
}

void tell_friction(const StopCase& stop, const StopJudged& judged, AnswerBuilder& answer) {
  const grip::FrictionBand& band = judged.friction.band;
  answer.figure(
      "friction", say("Friction at #", {write(stop.speed, answer.units())}), band.central, "",
      say("about # (# to #)", {fixed(band.central, 2), fixed(band.low, 2), fixed(band.high, 2)}),
      judged.friction.sources, Phrase("Braking force over load."), Band{band.low, band.high});
}

void tell_thinking(const StopCase& stop, AnswerBuilder& answer) {
  const UnitSystem units = answer.units();
  const Length thought = travelled(stop.speed, stop.reaction());
  answer.figure(
      "thinking", Phrase("Driven before the brakes bite"), in_metres(thought), "m",
      write_distance(thought, units), {&grip::reaction_source},
      say(stop.reaction_given
              ? Phrase("In # s; nine drivers in ten keep within 2.5. The median driver's # s would "
                       "be #.")
              : Phrase("In # s, which nine drivers in ten keep within. The median driver's # s "
                       "would be #."),
          {trimmed(in_seconds(stop.reaction()), 2), fixed(in_seconds(grip::median_reaction), 1),
           write_distance(travelled(stop.speed, grip::median_reaction), units)}));
}

// Where the car may not stop, no distance is a value.
void tell_distance(const char* id, Phrase label, const grip::DistanceBand& band,
                   AnswerBuilder& answer) {
  if (!band.longest) return;
  answer.figure(id, label, in_metres(*band.central), "m",
                say("about #", {say_distance_band(*band.central, *band.shortest, *band.longest,
                                                  answer.units())}),
                {&grip::limits_source, &grip::stopping_source}, {},
                Band{in_metres(*band.shortest), in_metres(*band.longest)});
}

void tell_obstacle(const StopCase& stop, const StopJudged& judged, AnswerBuilder& answer) {
  if (!judged.left_at_obstacle) return;
  const UnitSystem units = answer.units();
  const grip::SpeedBand& left = *judged.left_at_obstacle;
  answer.figure(
      "speed_left",
      say("Still driven at the obstacle, # away", {write_distance(*stop.obstacle, units)}),
      in_kilometres_per_hour(left.central), "km/h",
      left.high > Speed() ? about(left, units) : Text(Phrase("stopped before it")),
      {&grip::limits_source, &grip::stopping_source, &grip::reaction_source},
      say("The reaction takes its share: # are left to brake in.",
          {write_distance(stop.room_before_obstacle(), units)}),
      in_kmh(left));
}

void tell_braking_left(const StopCase& stop, const grip::Road& road, AnswerBuilder& answer) {
  const double demand = grip::side_demand(stop.speed, *road.radius, road.bank);
  const grip::FrictionBand friction = grip::Grip(stop.grip).at(stop.speed);
  const auto left = [&](double mu) {
    return 100.0 * grip::braking_left(1.0, mu * grip::side_share, demand);
  };
  const double low = left(friction.low), central = left(friction.central),
               high = left(friction.high);
  answer.figure(
      "braking_left",
      say("Left for the brakes in the bend at #", {write(stop.speed, answer.units())}), central,
      "%", say("about # % (# to # %)", {fixed(central, 0), fixed(low, 0), fixed(high, 0)}),
      {&grip::ellipse_source, &grip::side_share_source},
      Phrase("Of what they have on a straight. What the bend takes, the brakes do not have."),
      Band{low, high});
}

void tell_bend(const StopCase& stop, AnswerBuilder& answer) {
  const UnitSystem units = answer.units();
  const grip::Road road = stop.road();
  if (!road.radius) return;
  if (stop.bend.is_paced())
    answer.figure("radius", Phrase("Radius of the bend"), in_metres(*road.radius), "m",
                  write_distance(*road.radius, units), {&grip::cornering_source},
                  Phrase("From the chord and how far the bend stands off it."));
  const Speed comfortable = grip::comfortable_corner_speed(*road.radius, road.bank);
  answer.figure("comfortable", Phrase("Comfortable round it"), in_kilometres_per_hour(comfortable),
                "km/h", write(comfortable, units), {&grip::comfort_source},
                Phrase("What road designers take for passengers; it is no grip."));
  tell_braking_left(stop, road, answer);
}

void compare_with_new(const StopCase& stop, AnswerBuilder& answer) {
  if (!grip::wear_matters(stop.grip)) return;
  if (const auto ratio = grip::worn_stop_ratio(stop.grip, stop.speed))
    answer.figure("worn_ratio", Phrase("Braking, against the same tyre new"), ratio->central, "",
                  say("# times as long (# to #)",
                      {fixed(ratio->central, 2), fixed(ratio->low, 2), fixed(ratio->high, 2)}),
                  {&grip::stop_law_source, &grip::braking_test_source}, {},
                  Band{ratio->low, ratio->high});
  const auto left = grip::speed_where_new_stops(stop.grip, stop.speed, stop.straight());
  if (left && left->central > Speed())
    answer.figure("speed_where_new_stops",
                  Phrase("Still driven where the same tyre new has stopped"),
                  in_kilometres_per_hour(left->central), "km/h", about(*left, answer.units()),
                  {&grip::limits_source, &grip::stop_law_source, &grip::braking_test_source}, {},
                  in_kmh(*left));
}

void tell_gap(const StopCase& stop, AnswerBuilder& answer) {
  const grip::GapRoad road = grip::gap_road(stop.grip);
  const Length gap = grip::following_gap(stop.speed, road);
  answer.figure("gap", Phrase("Gap to the vehicle in front"), in_metres(gap), "m",
                say("#, # s", {write_distance(gap, answer.units()),
                               fixed(in_seconds(grip::following_time(road)), 0)}),
                {&grip::highway_code_source});
}

}  // namespace

void tell_figures(const StopCase& stop, const StopJudged& judged, AnswerBuilder& answer) {
  tell_friction(stop, judged, answer);
  tell_thinking(stop, answer);
  tell_distance("braking", Phrase("Braking, on a straight"), judged.braking, answer);
  tell_distance("stopping", Phrase("Stopping, in all"), judged.stopping, answer);
  tell_obstacle(stop, judged, answer);
  tell_bend(stop, answer);
  compare_with_new(stop, answer);
  tell_gap(stop, answer);
}

}  // namespace treadwater::sheets::stopping
