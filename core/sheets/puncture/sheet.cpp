// The sheet `puncture`: a tyre that is losing air. How long it lasts, whether it may be repaired,
// how far one can get, and the odds of the next one.
#include "core/sheets/sheet.hpp"

#include <algorithm>

#include "core/judge/puncture.hpp"
#include "core/judge/repair.hpp"
#include "core/patch/rating.hpp"
#include "core/sheets/answer_builder.hpp"
#include "core/sheets/puncture/fields.hpp"
#include "core/sheets/puncture/figures.hpp"
#include "core/sheets/puncture/leak_chart.hpp"
#include "core/sheets/puncture/repair_table.hpp"
#include "core/words/measure.hpp"

namespace treadwater::sheets::puncture {

extern const SheetHead head;
const SheetHead head{"puncture", Phrase("A soft tyre"),
                     Phrase("It is losing air: how long have I got, may it be repaired, and how "
                            "far do I get on what I have?")};

const SheetDescription& describe() {
  static const SheetDescription sheet{
      head,
      {sheets::describe(fields::units),
       sheets::describe(size),
       sheets::describe(set),
       sheets::describe(first),
       sheets::describe(first_state),
       sheets::describe(second),
       sheets::describe(second_state),
       sheets::describe(apart),
       sheets::describe(hole),
       sheets::describe(where),
       sheets::describe(from_centre),
       sheets::describe(between_grooves),
       sheets::describe(tread),
       sheets::describe(driven_flat),
       sheets::describe(damage),
       sheets::describe(sealant),
       sheets::describe(repairs),
       sheets::describe(date_code),
       sheets::describe(help),
       sheets::describe(load),
       sheets::describe(way),
       sheets::describe(spares),
       sheets::describe(on),
       sheets::describe(stage_surface),
       sheets::describe(approach),
       sheets::describe(one_in),
       sheets::describe(a_year)},
      {"example",
       Phrase("An invented case: the Pipit 1.4, a made-up small hatchback, a nail in the tread"),
       Phrase("Soft at breakfast, softer twenty minutes later."),
       {{"size", "205/55 R16 91V"},
        {"set", "2.3 bar"},
        {"first", "2.1 bar"},
        {"second", "1.8 bar"},
        {"apart", "20 min"},
        {"hole", "3 mm"},
        {"from_centre", "35 mm"},
        {"between_grooves", "yes"},
        {"tread", "5 mm"},
        {"help", "temporary_spare"},
        {"way", "35 km"},
        {"spares", "0"}}}};
  return sheet;
}

namespace {

judge::SoftTyre read(FormReader& form) {
  judge::SoftTyre tyre;
  tyre.size = form.read(size);
  tyre.load = form.read(load);
  // A pressure that no tyre is set to does not count as the right one.
  const GaugePressure least = tyre.size ? patch::least_pressure_of(*tyre.size, tyre.load).pressure
                                        : patch::least_pressure();
  tyre.set = std::max(form.read(set).value_or(judge::usual_pressure), least);
  tyre.first = form.read(first);
  tyre.second = form.read(second);
  tyre.first_hot = form.read(first_state).value_or(true);
  tyre.second_hot = form.read(second_state).value_or(true);
  tyre.apart = form.read(apart);
  tyre.hole = form.read(hole);
  tyre.place = form.read(where).value_or(std::nullopt);
  tyre.tread = form.read(tread);
  tyre.way = form.read(way);
  tyre.help = form.read(help);
  tyre.driven_flat = form.read(driven_flat).value_or(false);
  tyre.damaged = form.read(damage).value_or(false);
  tyre.sealed = form.read(sealant).value_or(false);
  tyre.age = form.tyre_age(date_code, tyre.size);
  tyre.from_centre = form.read(from_centre);
  tyre.earlier_repairs = static_cast<int>(form.read(repairs).value_or(0.0));
  tyre.between_outer_grooves = form.read(between_grooves);
  if (const auto count = form.read(spares)) tyre.spares = static_cast<int>(*count);
  tyre.on_stage = form.read(on).value_or(false);
  tyre.on_gravel = form.read(stage_surface).value_or(false);
  tyre.approach = form.read(approach);
  return tyre;
}

Odds read_odds(const judge::SoftTyre& tyre, FormReader& form) {
  Odds odds;
  odds.spares = tyre.spares;
  if (const auto time = form.read(one_in)) odds.rate.one_in = months(*time);
  if (const auto distance = form.read(a_year)) odds.rate.a_year = *distance;
  return odds;
}

Phrase care_words(const judge::SoftTyre& tyre, judge::First first, bool may_drive_out) {
  switch (first) {
    case judge::First::change_the_wheel:
      return may_drive_out ? Phrase("Change the wheel, or drive out: #.")
                           : Phrase("Change the wheel first: #.");
    case judge::First::seal_it:
      return Phrase("Seal and inflate it first: #.");
    case judge::First::nothing:
      break;
  }
  return tyre.on_stage ? Phrase("Take care: #.") : Phrase("Only to help: #.");
}

// On a stage "hold" stops the cars.
void read_out(const judge::SoftTyre& tyre, const judge::Verdict& verdict,
              const std::optional<judge::HoldTo>& hold, AnswerBuilder& answer) {
  const std::string& named = tyre.size->canonical;
  if (verdict.level == Level::unfit)
    answer.speak(say("Soft tyre, #: stopped, needs help.", {named}));
  else if (hold && tyre.on_stage)
    answer.speak(
        say("Soft tyre, #: maximum #.", {named, say_speed_aloud(hold->speed, answer.units())}));
  else if (hold)
    answer.speak(say("Soft tyre, #: hold to #, to the nearest help.",
                     {named, say_speed_aloud(hold->speed, answer.units())}));
}

}  // namespace

Answer answer(const Input& input) {
  FormReader form(describe(), input);
  AnswerBuilder answer(head.id, form.units());
  const judge::SoftTyre tyre = read(form);
  const Odds odds = read_odds(tyre, form);
  judge::SoftTyreJudged judged = judge::judge_soft_tyre(tyre);
  if (judged.leak) {
    tell_times(*judged.leak, tyre, answer);
    draw_leak(*judged.leak, tyre.stop_below(), answer);
  }
  if (const auto repair = judge::judge_repair(tyre, judged.findings)) tell_repair(*repair, answer);
  if (const auto home = judge::judge_way_home(tyre, judged)) tell_way_home(*home, answer);
  if (tyre.way) tell_odds(odds, *tyre.way, answer);
  bool may_drive_out = false;
  if (tyre.on_stage) {
    const judge::StageStop stop = judge::judge_stage_stop(tyre, judged);
    may_drive_out = stop.may_drive_out;
    tell_stage_stop(stop, answer);
  } else {
    judge::judge_roadside(judged.findings);
  }
  const bool whole = form.ok();
  answer.take_problems(form);
  answer.tell(judged.findings);
  if (!whole) return answer.take();
  const auto hold = judge::hold_to(judged.findings, answer.units());
  if (hold) answer.tell(*hold);
  const judge::Verdict verdict = judge::verdict(judged.findings, hold);
  answer.conclude(verdict, {Phrase("No leak was found in these readings."),
                            care_words(tyre, judged.first, may_drive_out), Phrase("Stop: #.")});
  read_out(tyre, verdict, hold, answer);
  return answer.take();
}

}  // namespace treadwater::sheets::puncture
