// The sheet `stopping`: the stop on this road, how fast one may go for what can be seen, and how
// fast the bend can be taken.
#include "core/sheets/sheet.hpp"

#include <algorithm>

#include "core/judge/stopping.hpp"
#include "core/sheets/answer_builder.hpp"
#include "core/sheets/stopping/chart.hpp"
#include "core/sheets/stopping/drawing.hpp"
#include "core/sheets/stopping/fields.hpp"
#include "core/sheets/stopping/figures.hpp"
#include "core/sheets/stopping/rules.hpp"
#include "core/words/measure.hpp"

namespace treadwater::sheets::stopping {

extern const SheetHead head;
const SheetHead head{"stopping", Phrase("Stopping and bends"),
                     Phrase("How long is a stop on the road that is there, how fast may I go for "
                            "what I can see, and what does the bend hold?")};

const SheetDescription& describe() {
  static const SheetDescription sheet{
      head,
      {sheets::describe(fields::units),
       sheets::describe(speed),
       sheets::describe(ground),
       sheets::describe(fields::wetness),
       sheets::describe(depth),
       sheets::describe(road),
       sheets::describe(fields::tyre_kind),
       sheets::describe(tread),
       sheets::describe(old_or_hard),
       sheets::describe(rubber),
       sheets::describe(tread_heat),
       sheets::describe(pressure),
       sheets::describe(width),
       sheets::describe(reaction),
       sheets::describe(grade),
       sheets::describe(seen),
       sheets::describe(obstacle),
       sheets::describe(radius),
       sheets::describe(chord),
       sheets::describe(sagitta),
       sheets::describe(bank)},
      {"example",
       Phrase("An invented case: the Pipit 1.4, a made-up small hatchback, on part-worn tyres in "
              "the rain"),
       Phrase("A wet road, and a queue round the bend."),
       {{"speed", "80 km/h"},
        {"wetness", "wet"},
        {"tread", "3 mm"},
        {"seen", "90 m"},
        {"obstacle", "80 m"},
        {"radius", "160 m"},
        {"bank", "2"}}}};
  return sheet;
}

namespace {

// Where a surface's own name says it, that counts.
grip::RoadGrip grip_of(const standard::FrictionSurface& surface, grip::RoadGrip told) {
  if (surface.id == "concrete") return grip::RoadGrip::polished;
  return surface.id == "asphalt" ? told : grip::RoadGrip::not_told;
}

judge::StopCase read(FormReader& form) {
  judge::StopCase stop;
  grip::GripCase& grip = stop.grip;
  stop.speed = form.read(speed).value_or(Speed());
  grip.surface = form.read(ground).value_or(grip.surface);
  stop.water = form.road_water(depth).value_or(judge::RoadWater{});
  grip.road = grip_of(*grip.surface, form.read(road).value_or(grip::RoadGrip::not_told));
  stop.kind = form.read(fields::tyre_kind).value_or(nullptr);
  if (stop.kind != nullptr) grip.tyre = grip::find_tyre_grip(stop.kind->id);
  const auto measured_tread = form.read(tread);
  stop.tread_given = measured_tread.has_value();
  grip.tread = measured_tread.value_or(judge::usual_tread);
  grip.old_or_hard = form.read(old_or_hard).value_or(false);
  grip.rubber = form.read(rubber).value_or(nullptr);
  if (grip.rubber == nullptr) grip.rubber = grip::find_rubber(grip.tyre->rubber);
  grip.tread_heat = form.read(tread_heat);
  stop.pressure = form.read(pressure);
  stop.width = form.read(width);
  stop.reaction_given = form.read(reaction);
  stop.grade = form.read(grade).value_or(0.0) / 100.0;
  stop.seen = form.read(seen);
  stop.obstacle = form.read(obstacle);
  stop.bend.radius = form.read(radius);
  if (const auto per_cent = form.read(bank)) stop.bend.bank = *per_cent / 100.0;
  stop.bend.chord = form.read(chord);
  stop.bend.sagitta = form.read(sagitta);
  return stop;
}

std::string say_stop(const judge::StopCase& stop, const judge::StopJudged& judged,
                     UnitSystem units) {
  const std::string from = write(stop.speed, units);
  const grip::DistanceBand& whole = judged.stopping;
  if (!judged.braking.shortest) return say("From # it does not stop.", {from});
  if (!whole.longest) return say("From # it may not stop.", {from});
  return say("From # it stops in about #.",
             {from, say_distance_band(*whole.central, *whole.shortest, *whole.longest, units)});
}

VerdictWords verdict_words(const judge::StopCase& stop, const judge::StopJudged& judged,
                           UnitSystem units) {
  VerdictWords words;
  words.care = Phrase("Only with care: #.");
  words.unfit = Phrase("Not like this: #.");
  if (!stop.water.is_too_deep()) words.after = say_stop(stop, judged, units);
  words.fit = judged.findings.lowest() == nullptr
                  ? words.after
                  : Text(sentences({say("Slow enough for what is asked here."), words.after}));
  return words;
}

// Ice is not called dry.
std::string name_of_ground(const judge::StopCase& stop, UnitSystem units) {
  const standard::FrictionSurface& surface = *stop.grip.surface;
  if (stop.is_wet()) return say("#, #", {surface.label, say_water(stop.water, units)});
  return surface.ground == standard::Ground::ice ? say(surface.label)
                                                 : say("#, dry", {surface.label});
}

std::string read_out(const judge::StopCase& stop, const judge::HoldTo& hold, UnitSystem units) {
  const std::string place = name_of_ground(stop, units);
  if (hold.stands_still()) return say("#: do not drive on it.", {place});
  return say("#: hold to #. The limit is #.", {place, say_speed_aloud(hold.speed, units),
                                               within_sentence(label(hold.governing, units))});
}

void tell(const judge::StopCase& stop, const judge::StopJudged& judged, AnswerBuilder& answer) {
  tell_figures(stop, judged, answer);
  tell_rules(stop, answer);
  answer.answer().charts.push_back(stops_by_speed(stop, judged, answer.units()));
  if (auto drawing = stop_to_scale(stop, judged, answer.units()))
    answer.answer().drawings.push_back(std::move(*drawing));
}

// What is said in the rain is distance; a maximum speed only if there is one.
std::string read_out(const judge::StopCase& stop, const judge::StopJudged& judged,
                     UnitSystem units) {
  if (judged.hold) return read_out(stop, *judged.hold, units);
  if (!stop.is_wet() || !judged.stopping.longest) return {};
  return say("#. #", {name_of_ground(stop, units),
                      say_stop_aloud(stop.speed, *judged.stopping.longest, units)});
}

}  // namespace

Answer answer(const Input& input) {
  FormReader form(describe(), input);
  AnswerBuilder answer(head.id, form.units());
  judge::StopCase asked = read(form);
  const bool whole = form.ok();
  answer.take_problems(form);
  if (!whole) return answer.take();
  const judge::StopJudged judged = judge::judge_stop(std::move(asked), answer.units());
  const judge::StopCase& stop = judged.stop;
  const bool too_deep = stop.water.is_too_deep();
  if (!too_deep) tell(stop, judged, answer);
  answer.tell(judged.findings);
  answer.tell(judged.hold, judged.no_limit);
  if (judged.hold && judged.hold->stands_still() && !too_deep)
    answer.answer().hold_to->text = Phrase("Do not drive on it");
  answer.conclude(judge::verdict(judged.findings, judged.hold),
                  verdict_words(stop, judged, answer.units()));
  const std::string spoken = read_out(stop, judged, answer.units());
  if (!spoken.empty()) answer.speak(spoken);
  return answer.take();
}

}  // namespace treadwater::sheets::stopping
