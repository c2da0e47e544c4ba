#include "core/stage/plan_problems.hpp"

#include <algorithm>

#include "core/quantity/text.hpp"
#include "core/quantity/write.hpp"
#include "core/stage/solver.hpp"
#include "core/words/say.hpp"

namespace treadwater::stage {
namespace {

// The first four, as alternatives.
std::string kind_list(const std::vector<Phrase>& names) {
  std::vector<std::string> some;
  for (const Phrase name : names)
    if (some.size() < 4) some.push_back(say(name));
  return alternatives(some);
}

std::string percent(double share) { return significant(100.0 * share, 2) + " %"; }

// The first stage of a leg that a kind in the van may not run, and why; one past the leg where it
// may run all.
struct Stopped {
  std::size_t stage;
  std::optional<std::string> why;
};
Stopped where_stopped(const Event& event, const Model& model, std::size_t leg, std::size_t k,
                      bool careful) {
  const SetKind& kind = *model.kind[k];
  std::size_t stage = model.leg_first[leg];
  for (; stage < model.leg_first[leg + 1]; ++stage) {
    if (auto why = refusal(kind, event.stages[stage], event.rules, careful)) return {stage, why};
    const int worst = model.worst_to[stage * model.kinds + k];
    if (worst > model.limit[k])
      return {stage,
              say("worn out by then in the worst weather deemed possible (# of its usable life)",
                  {percent(static_cast<double>(worst) / model.limit[k])})};
  }
  return {stage, std::nullopt};
}

// May a new set of this kind run all stages of the leg, safely, in any weather deemed possible?
bool would_do(const SetKind& kind, const Event& event, const Model& model, std::size_t leg) {
  double worst = 0.0;
  for (std::size_t stage = model.leg_first[leg]; stage < model.leg_first[leg + 1]; ++stage) {
    if (refusal(kind, event.stages[stage], event.rules, true)) return false;
    worst += worst_wear(kind, event.stages[stage]);
  }
  return worst <= usable_life(kind, event.rules);
}

bool has_plan(const Event& event, Question question) {
  // `safe` refuses more sets; otherwise the attitude makes no difference to what is possible.
  if (question.attitude == Attitude::steady) question.attitude = Attitude::average;
  std::uint64_t work = 0;
  Solved solved;
  for (const int levels : wear_levels_tried)
    if (solved.too_much) solved = solve(event, question, levels, work);
  return !solved.first.empty();
}

}  // namespace

Problem no_usable_set(const Event& event, const Model& model, std::size_t leg, bool careful) {
  const std::size_t first = model.leg_first[leg];
  const std::size_t last = model.leg_first[leg + 1] - 1;
  std::string text =
      first == last ? say("Stage #: no set in the van can run it.", {std::to_string(first + 1)})
                    : say("Stages # to # have no tyre change between them, and no set in "
                          "the van can run them all.",
                          {std::to_string(first + 1), std::to_string(last + 1)});
  const auto add = [&](const std::string& sentence) { add_item(text, sentence, " "); };
  std::size_t furthest = first;  // the stage before which some set must come off
  for (std::size_t k = 0; k < model.kinds; ++k) {
    const Stopped stopped = where_stopped(event, model, leg, k, careful);
    furthest = std::max(furthest, stopped.stage);
    if (stopped.why)
      add(say("#, stage #: #.",
              {model.kind[k]->label, std::to_string(stopped.stage + 1), *stopped.why}));
  }
  std::vector<Phrase> others;
  for (std::size_t i = 0; i < set_kind_count; ++i)
    if (const SetKind kind = set_kind(i); would_do(kind, event, model, leg))
      others.push_back(kind.name);
  if (!others.empty()) add(say("What would do: #.", {kind_list(others)}));
  if (furthest > first) add(say("Or a tyre change after stage #.", {std::to_string(furthest)}));
  if (others.empty() && furthest == first)
    add(say(
        "No kind of tyre known here is safe there and allowed: look at its chances and rules."));
  return {"no-usable-set", static_cast<int>(first), -1, text};
}

Problem no_set_left(const Event& event, const Question& question) {
  std::string text(
      say("The sets in the van do not last: whatever goes on first, no set is left for some "
          "later stage in the worst weather deemed possible."));
  std::vector<Phrase> one_more;
  Event more = event;
  more.sets.push_back({});
  const auto try_kind = [&](const SetKind& kind) {
    more.sets.back() = {kind, 1, 0.0};
    for (const Phrase name : one_more)
      if (name == kind.name) return;
    if (check(more).empty() && has_plan(more, question)) one_more.push_back(kind.name);
  };
  for (const TyreSet& set : event.sets) try_kind(set.kind);
  for (std::size_t i = 0; i < set_kind_count; ++i) try_kind(set_kind(i));
  if (!one_more.empty())
    add_item(text, say("One more set would do: #.", {kind_list(one_more)}), " ");
  if (event.rules.most_sets) {
    more.sets.pop_back();
    ++*more.rules.most_sets;
    if (has_plan(more, question))
      add_item(text, say("Or leave to run # sets.", {std::to_string(*more.rules.most_sets)}), " ");
  }
  return {"no-set-left", -1, -1, text};
}

}  // namespace treadwater::stage
