// Choosing under uncertainty, and what is said of stage tyres.
#include "core/stage/decision.hpp"
#include "core/stage/set_kind.hpp"
#include "tests/register/register.hpp"

namespace treadwater::checks {
namespace {

using namespace stage;

Judgement judgement(Asked& in) {
  LossTable table;
  table.chance = in.numbers("chances");
  table.states = table.chance.size();
  if (in.has("payoffs")) {
    table.loss = in.numbers("payoffs");
    for (double& payoff : table.loss) payoff = -payoff;
  } else {
    table.loss = in.numbers("losses");
  }
  const double choice = in.has("choice") ? in.number("choice") : 1.0;
  const double choices = table.states == 0 ? 0.0
                                           : static_cast<double>(table.loss.size()) /
                                                 static_cast<double>(table.states);
  if (!(choice >= 1.0 && choice <= choices)) {
    in.fail("no such choice", "");
    return {};
  }
  return judge(table, static_cast<std::size_t>(choice - 1.0),
               in.has("level") ? in.number("level") : 0.0);
}

SetKind kind(Asked& in) {
  const auto found = find_set_kind(in.text("kind"));
  if (!found) in.fail("no such kind", "");
  return found.value_or(SetKind{});
}

constexpr Check checks[] = {
    {"largest regret", [](Asked& in) { return in.answer(judgement(in).largest_regret); }},
    {"expected payoff", [](Asked& in) { return in.answer(-judgement(in).expected); }},
    {"mean of the worst tail", [](Asked& in) { return in.answer(judgement(in).tail_mean); }},
    {"life of a stage tyre on dry tarmac",
     [](Asked& in) {
       return in.answer(
           kind(in).life[index(Surface::tarmac)][static_cast<std::size_t>(Wetness::dry)]);
     }},
    {"greatest land of a stage tyre",
     [](Asked& in) { return in.answer(100.0 * kind(in).land_high); }},
    {"least land of a stage tyre", [](Asked& in) { return in.answer(100.0 * kind(in).land_low); }},
    {"coolest air for a stage tyre", [](Asked& in) { return in.answer(kind(in).coolest); }},
    {"hottest air for a stage tyre", [](Asked& in) { return in.answer(kind(in).hottest); }},
};

}  // namespace

Checks stage_checks() { return {std::begin(checks), std::end(checks)}; }

}  // namespace treadwater::checks
