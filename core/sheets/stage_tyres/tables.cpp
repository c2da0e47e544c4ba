#include "core/sheets/stage_tyres/tables.hpp"

#include <array>

#include "core/quantity/text.hpp"
#include "core/words/measure.hpp"

namespace treadwater::sheets::stage_tyres {
namespace {

using stage::Weather;
using Cells = std::vector<Text>;

Text nothing() { return std::string("–"); }

std::string lost(double time) { return write_seconds(seconds(time)); }

// A slick must be changed, whatever its onset.
std::string hold_to(const judge::Floating& one, UnitSystem units) {
  return one.slick ? say("do not enter") : say_hold_to(one.hold_to, units);
}

// ---- at the halts ----

// Runs of stages between two halts at which tyres may be changed: first and last.
struct Leg {
  std::size_t first;
  std::size_t last;
};
std::vector<Leg> legs_of(const stage::Event& event) {
  std::vector<Leg> legs;
  for (std::size_t i = 0, first = 0; i < event.stages.size(); ++i)
    if (event.stages[i].halt_after >= stage::Halt::tyre_zone || i + 1 == event.stages.size()) {
      legs.push_back({first, i});
      first = i + 1;
    }
  return legs;
}

std::string how_far(const stage::Event& event, const Leg& leg, UnitSystem units) {
  Length length;
  for (std::size_t i = leg.first; i <= leg.last; ++i) length = length + event.stages[i].length;
  const std::size_t count = leg.last + 1 - leg.first;
  return plural("# stage, #", "# stages, #", static_cast<double>(count),
                {std::to_string(count), say_stage_length(length, units)});
}

std::string fits(const judge::StagesCase& stages, const stage::AtHalt& halt) {
  std::optional<std::size_t> second;
  for (std::size_t s = 0; s < stages.sets.size(); ++s)
    if (s != halt.set && halt.fits[s] >= hardly_ever &&
        (!second || halt.fits[s] > halt.fits[*second]))
      second = s;
  const Text& first = stages.sets[halt.set];
  return second ? say("#, else #", {first, stages.sets[*second]}) : first.str();
}

// What goes on before a leg, if this was the weather before it.
Text fitted(const judge::StagesCase& stages, const Leg& leg, Weather seen) {
  for (const stage::AtHalt& halt : stages.plan.halts)
    if (halt.stage + 1 == leg.first && halt.seen == seen) return fits(stages, halt);
  return nothing();
}

// ---- a set ----

// Why it does not go on for the first stages, or how it compares.
Text standing_now(const judge::StagesCase& stages, std::size_t set, const Leg& first_leg) {
  const stage::TyreSet& of = stages.event.sets[stages.entry(set)];
  double worst = of.worn;
  for (std::size_t i = first_leg.first; i <= first_leg.last; ++i) {
    const stage::Stage& s = stages.event.stages[i];
    if (const auto why = stage::refusal(of.kind, s, stages.event.rules,
                                        stages.attitude == stage::Attitude::safe))
      return say("#: #", {stages.stages[i], *why});
    worst += stage::worst_wear(of.kind, s);
    if (worst > stage::usable_life(of.kind, stages.event.rules))
      return say("#: worn out by then, if the weather is hard on it", {stages.stages[i]});
  }
  for (const stage::FirstChoice& choice : stages.plan.first)
    if (stages.entry(choice.set) == stages.entry(set)) {
      if (set == stages.first()) return Phrase("goes on");
      return choice.regret > 0.0 ? say("# slower than the best", {lost(choice.regret)})
                                 : say("as good as #", {stages.sets[choice.set]});
    }
  return Phrase("not better than those above");
}

Text goes_on(const judge::StagesCase& stages, std::size_t set) {
  if (set == stages.first()) return Phrase("in any weather");
  if (stages.plan.used[set] > 0.0) return say_chance(stages.plan.used[set]);
  return stages.plan.every_path ? Phrase("never: leave it at home") : Phrase("in no weather drawn");
}

std::string left_of(const stage::SetKind& kind, double worn, UnitSystem units) {
  if (kind.slick()) return write_share(1.0 - worn);
  return write_depth(stage::tread_left(kind, worn), units);
}

}  // namespace

void tell_halts(const judge::StagesCase& stages, AnswerBuilder& answer) {
  std::array<bool, stage::weathers> seen{};
  for (const stage::AtHalt& halt : stages.plan.halts) seen[stage::index(halt.seen)] = true;
  Table table{
      "halts",
      Phrase("What to fit at each halt"),
      Phrase("By the weather of the stage just run. “Else”: where the first is too worn by then, "
             "or the time already lost asks for it."),
      {Phrase("Before"), Phrase("For")},
      {}};
  if (stages.plan.halts.empty()) {
    table.text = Phrase("There is no tyre change after the start.");
    table.columns.emplace_back(Phrase("To fit"));
  }
  for (std::size_t w = 0; w < stage::weathers; ++w)
    if (seen[w]) table.columns.emplace_back(say("If it was #", {stage::weather_name(Weather(w))}));
  for (const Leg& leg : legs_of(stages.event)) {
    Cells row{stages.stages[leg.first], how_far(stages.event, leg, answer.units())};
    if (leg.first == 0) row.resize(table.columns.size(), stages.sets[stages.first()]);
    for (std::size_t w = 0; w < stage::weathers && leg.first > 0; ++w)
      if (seen[w]) row.push_back(fitted(stages, leg, Weather(w)));
    table.rows.push_back(std::move(row));
  }
  answer.answer().tables.push_back(std::move(table));
}

void tell_first_choices(const judge::StagesCase& stages, AnswerBuilder& answer) {
  Table table{"first",
              Phrase("What to fit now"),
              Phrase("What each first choice loses, with the best that can follow."),
              {Phrase("To fit"), Phrase("Loss"), Phrase("Against the best")},
              {}};
  for (const stage::FirstChoice& choice : stages.plan.first)
    table.rows.push_back(
        {stages.sets[choice.set], lost(choice.loss), joined({"+", lost(choice.regret)})});
  answer.answer().tables.push_back(std::move(table));
}

void tell_sets_to_carry(const judge::StagesCase& stages, AnswerBuilder& answer) {
  Table table{
      "carry",
      Phrase("Which sets to carry"),
      Phrase("How likely each set is to go on at all, how it stands for the first stages, and "
             "what it is for."),
      {Phrase("Set"), Phrase("Goes on"), Phrase("Now"), Phrase("For")},
      {}};
  const Leg first_leg = legs_of(stages.event).front();
  for (std::size_t s = 0; s < stages.sets.size(); ++s)
    table.rows.push_back({stages.sets[s], goes_on(stages, s), standing_now(stages, s, first_leg),
                          stages.kind(s).why});
  answer.answer().tables.push_back(std::move(table));
}

void tell_wear(const judge::StagesCase& stages, AnswerBuilder& answer) {
  Table table{
      "wear",
      Phrase("What is left of each set"),
      Phrase("On the driven axle after each stage: expected, and in brackets at worst. A slick in "
             "shares of its life. Sets that never go on stay as they are."),
      {Phrase("After")},
      {}};
  const auto run = [&](std::size_t set) { return stages.plan.used[set] > 0.0; };
  for (std::size_t s = 0; s < stages.sets.size(); ++s)
    if (run(s)) table.columns.push_back(stages.sets[s]);
  for (std::size_t i = 0; i < stages.event.stages.size(); ++i) {
    Cells row{stages.stages[i]};
    for (std::size_t s = 0; s < stages.sets.size(); ++s) {
      if (!run(s)) continue;
      const auto left = [&](double worn) { return left_of(stages.kind(s), worn, answer.units()); };
      const stage::SetOnStage& on = stages.plan.at(i, s);
      row.emplace_back(say("# (#)", {left(on.worn), left(on.most_worn)}));
    }
    table.rows.push_back(std::move(row));
  }
  answer.answer().tables.push_back(std::move(table));
}

void tell_water(const judge::StagesCase& stages, const std::vector<judge::Floating>& afloat,
                AnswerBuilder& answer) {
  if (afloat.empty()) return;
  const UnitSystem units = answer.units();
  Table table{
      "water",
      Phrase("Standing water"),
      Phrase("Where each set that may be on starts to float, worn as it may be by then; at the "
             "lowest pressure and on the widest tyre of the cars."),
      {Phrase("Stage"), Phrase("Set"), Phrase("On"), Phrase("Floats from"), Phrase("Hold to")},
      {}};
  for (const judge::Floating& one : afloat)
    table.rows.push_back({stages.stages[one.stage], stages.sets[one.set],
                          say_chance(stages.plan.at(one.stage, one.set).on), write(one.from, units),
                          hold_to(one, units)});
  answer.answer().tables.push_back(std::move(table));
}

void tell_team(const judge::StagesCase& stages, AnswerBuilder& answer) {
  if (stages.cars.size() < 2) return;
  const UnitSystem units = answer.units();
  Table table{"cars",
              Phrase("The cars of the team"),
              Phrase("Wear and choice against the first car, whose lives these are, each with the "
                     "same sets in its van."),
              {Phrase("Car"), Phrase("Wears"), Phrase("Fit now")},
              {}};
  const auto wet = stages.deepest_stage();
  const std::size_t likely = wet ? stages.plan.likeliest_on(*wet) : 0;
  if (wet) {
    table.text = say(
        "Wear and choice against the first car, whose lives these are, each with the same sets in "
        "its van; and where the # floats in # on #.",
        {stages.sets[likely], write_water(*stages.water[*wet], units), stages.stages[*wet]});
    table.columns.emplace_back(Phrase("Floats from"));
    table.columns.emplace_back(Phrase("Hold to"));
  }
  for (std::size_t i = 0; i < stages.cars.size(); ++i) {
    const auto& on = stages.on_cars[i];
    Cells row{stages.cars[i].name, on ? Text(joined({"× ", fixed(on->wear_factor, 2)})) : nothing(),
              !on       ? Text(Phrase("not known"))
              : on->set ? stages.sets[*on->set]
                        : Text(Phrase("no set lasts"))};
    if (wet)
      if (const auto one = judge::floating(stages, *wet, likely, stages.cars[i], units)) {
        row.emplace_back(write(one->from, units));
        row.emplace_back(hold_to(*one, units));
      }
    row.resize(table.columns.size(), nothing());
    table.rows.push_back(std::move(row));
  }
  answer.answer().tables.push_back(std::move(table));
}

}  // namespace treadwater::sheets::stage_tyres
