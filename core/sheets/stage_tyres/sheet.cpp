// The sheet `stage-tyres`: the stages ahead with their weather and halts, and the sets in the van
// -> which set goes on now, what to put on at each halt if it is then dry, damp or wet, and what
// that costs compared with hindsight.
#include "core/sheets/sheet.hpp"

#include "core/quantity/text.hpp"
#include "core/sheets/answer_builder.hpp"
#include "core/sheets/stage_tyres/figures.hpp"
#include "core/sheets/stage_tyres/form.hpp"
#include "core/sheets/stage_tyres/tables.hpp"
#include "core/sheets/stage_tyres/timeline.hpp"
#include "core/words/measure.hpp"

namespace treadwater::sheets::stage_tyres {

extern const SheetHead head;
const SheetDescription& describe();

namespace {

judge::StagesCase case_of(const Form& form, const stage::Plan& plan) {
  judge::StagesCase stages{form.event, form.question.attitude, plan};
  stages.stages = form.stage_names;
  for (const stage::CarriedSet& set : plan.sets) stages.sets.push_back(name_of(set, form));
  stages.without_weather = form.without_weather;
  stages.water = form.water;
  stages.cars = form.cars;
  if (form.cars.size() < 2) return stages;
  std::vector<stage::TeamCar> team;
  for (const judge::CarOnStages& car : form.cars) team.push_back(car.wears);
  stages.on_cars = stage::plan_team(team, form.event, form.question, plan);
  return stages;
}

void show(const judge::StagesCase& stages, const std::vector<judge::Floating>& afloat,
          AnswerBuilder& answer) {
  tell_losses(stages, answer);
  tell_halts(stages, answer);
  tell_first_choices(stages, answer);
  tell_sets_to_carry(stages, answer);
  draw_stages(stages, answer);
  tell_wear(stages, answer);
  tell_water(stages, afloat, answer);
  tell_team(stages, answer);
}

// What goes on now, for which stages, and how fast through their water.
std::string read_out(const judge::StagesCase& stages, UnitSystem units) {
  const std::size_t set = stages.first();
  const judge::CarOnStages car = judge::first_afloat(stages.cars);
  std::string names, in_water;
  for (std::size_t i = 0; i < stages.stages.size(); ++i) {
    add_item(names, stages.stages[i]);
    if (const auto one = judge::floating(stages, i, set, car, units))
      in_water =
          sentences({in_water, say("In the water on # hold to #.",
                                   {stages.stages[i], say_hold_to_aloud(one->hold_to, units)})});
    if (stages.event.stages[i].halt_after >= stage::Halt::tyre_zone) break;
  }
  return sentences({say("Fit # for #.", {stages.sets[set], names}), in_water});
}

void conclude(const judge::StagesCase& stages, const judge::Findings& findings,
              AnswerBuilder& answer) {
  const Text& first = stages.sets[stages.first()];
  const judge::Verdict verdict = judge::verdict(findings, std::nullopt);
  answer.conclude(verdict, {say("Fit # now.", {first}),
                            Phrase("Fit # now, with care: #."),
                            Phrase("Not fit as it stands, even with # on: #."),
                            {first}});
  answer.speak(verdict.level == Level::unfit ? answer.answer().verdict->text
                                             : Text(read_out(stages, answer.units())));
}

}  // namespace

Answer answer(const Input& input) {
  FormReader reader(describe(), input);
  AnswerBuilder answer(head.id, reader.units());
  judge::Findings findings;
  const Form form = read(reader, findings);
  std::optional<stage::Plan> plan;
  if (reader.ok()) {
    auto found = stage::plan(form.event, form.question);
    if (found)
      plan = std::move(*found);
    else
      tell(found.error(), form, reader);
  }
  answer.take_problems(reader);
  if (!plan) {
    answer.tell(findings);
    return answer.take();
  }
  const judge::StagesCase stages = case_of(form, *plan);
  const auto afloat = judge::judge_stages(stages, answer.units(), findings);
  show(stages, afloat, answer);
  answer.tell(findings);
  conclude(stages, findings, answer);
  return answer.take();
}

}  // namespace treadwater::sheets::stage_tyres
