#include "core/stage/plan.hpp"

#include "core/stage/plan_problems.hpp"
#include "core/stage/solver.hpp"
#include "core/stage/swing.hpp"
#include "core/stage/walk.hpp"
#include "core/words/say.hpp"

namespace treadwater::stage {
namespace {

using Problems = std::vector<Problem>;

Problems problems_of(const Event& event, const Question& question) {
  Problems problems = check(event);
  if (!(question.tail_level >= 0.0 && question.tail_level <= 0.99))
    problems.push_back({"tail-level", -1, -1, say("The tail's level must be 0 to 99 %.")});
  return problems;
}

// The chances of a stage may sum to a little more or less than 1.
Event with_whole_chances(Event event) {
  for (Stage& stage : event.stages) {
    double sum = 0.0;
    for (const double chance : stage.chances) sum += chance;
    for (double& chance : stage.chances) chance /= sum;
  }
  return event;
}

Problems stages_without_set(const Event& event, const Model& model, bool careful) {
  Problems problems;
  for (std::size_t leg = 0; leg < model.legs; ++leg) {
    bool any = false;
    for (std::size_t k = 0; k < model.kinds; ++k)
      any = any || model.allowed[leg * model.kinds + k] != 0;
    if (!any) problems.push_back(no_usable_set(event, model, leg, careful));
  }
  return problems;
}

// All of it, from the first choices on.
Plan followed(std::vector<FirstChoice> first, int wear_levels, const Event& event,
              const Question& question, const Model& model, Solver& solver) {
  Plan plan;
  plan.first = std::move(first);
  plan.sets = model.sets;
  if (question.only_first) return plan;
  plan.wear_levels = wear_levels;
  plan.time_step = solver.time_step();
  const std::uint64_t work = solver.work();
  for (const Stage& stage : event.stages) plan.right_tyre_seconds += right_tyre_seconds(stage);
  walk(event, question, model, solver, plan);
  report(question.progress, 0.5);
  if (question.look_for_swing && plan.first.size() > 1)
    look_for_swing(event, question, model, work, plan);
  if (plan.first.size() > 3) plan.first.resize(3);
  return plan;
}

}  // namespace

std::size_t Plan::likeliest_on(std::size_t stage) const {
  std::size_t best = 0;
  for (std::size_t s = 1; s < sets.size(); ++s)
    if (at(stage, s).on > at(stage, best).on) best = s;
  return best;
}

tl::expected<Plan, std::vector<Problem>> plan(const Event& given, const Question& question) {
  if (Problems problems = problems_of(given, question); !problems.empty())
    return tl::unexpected(std::move(problems));
  const Event event = with_whole_chances(given);
  const bool careful = question.attitude == Attitude::safe;
  const Model model(event, careful);
  if (Problems problems = stages_without_set(event, model, careful); !problems.empty())
    return tl::unexpected(std::move(problems));

  for (const int wear_levels : wear_levels_tried) {
    Solver solver(model, wear_levels);
    std::vector<FirstChoice> first = solver.first_choices(question);
    report(question.progress, 0.3);
    if (solver.too_much()) continue;
    if (!first.empty())
      return followed(std::move(first), wear_levels, event, question, model, solver);
    return tl::unexpected(
        Problems{question.only_first
                     ? Problem{"no-set-left", -1, -1, say("The sets in the van do not last.")}
                     : no_set_left(event, question)});
  }
  return tl::unexpected(Problems{
      {"too-much", -1, -1,
       say("So many sets may wear out in so many ways that the best plan cannot be worked out "
           "here. "
           "Leave out sets you would hardly fit, or ask for fewer halts at a time.")}});
}

}  // namespace treadwater::stage
