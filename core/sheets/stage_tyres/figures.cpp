#include "core/sheets/stage_tyres/figures.hpp"

#include <cmath>

#include "core/judge/advice.hpp"

namespace treadwater::sheets::stage_tyres {
namespace {

Text note_on_regret(const stage::Plan& plan) {
  const std::string error = write_seconds(seconds(plan.regret_error));
  if (plan.regret_is_bound) return say("At most. Over drawn weathers, give or take #.", {error});
  if (!plan.every_path) return say("Over drawn weathers, give or take #.", {error});
  return Phrase("Hindsight knows the weather, and keeps wear and rules.");
}

}  // namespace

void tell_losses(const judge::StagesCase& stages, AnswerBuilder& answer) {
  const stage::Plan& plan = stages.plan;
  const Sources sources = judge::plan_sources(stages.event);
  const auto tell = [&](const char* id, Phrase label, double lost, Text note) {
    if (std::isfinite(lost))
      answer.figure(id, label, lost, "s", write_seconds(seconds(lost)), sources, std::move(note));
  };
  // What is not solved for is estimated over the sampled paths.
  const bool steady = stages.attitude == stage::Attitude::steady;
  const bool drawn = !plan.every_path;
  const Phrase estimate("An estimate, over drawn weathers.");
  tell("expected_lost", Phrase("Expected loss against the right tyre everywhere"),
       plan.expected_lost, drawn && steady ? estimate : Phrase());
  tell("worst_lost", Phrase("Loss on the worst day"), plan.worst_lost,
       drawn && steady ? Phrase("At most.") : Phrase());
  tell("tail_lost", Phrase("Loss on the worst fifth of days"), plan.tail_lost,
       drawn && !steady ? estimate : Phrase());
  tell("regret", Phrase("Expected loss against hindsight"), plan.regret, note_on_regret(plan));
  tell("largest_regret", Phrase("Most that hindsight could save"), plan.largest_regret,
       drawn ? Phrase("Of the weathers drawn.") : Phrase());
  const Duration right_tyre = seconds(plan.right_tyre_seconds);
  answer.figure("right_tyre", Phrase("All stages on the right tyre"),
                plan.right_tyre_seconds / 60.0, "min", write_minutes(right_tyre),
                {&judge::advice::stage_plan});
}

}  // namespace treadwater::sheets::stage_tyres
