// The sheet `tyre-check`: one tyre, its load, pressure, tread, the water and the road -> whether it
// is fit, how fast it may go, what sets that limit, and what to do.
#include "core/sheets/sheet.hpp"

#include "core/judge/tyre.hpp"
#include "core/sheets/answer_builder.hpp"
#include "core/sheets/tyre_check/fields.hpp"
#include "core/sheets/tyre_check/figures.hpp"
#include "core/words/measure.hpp"

namespace treadwater::sheets::tyre_check {

extern const SheetHead head;
const SheetHead head{
    "tyre-check", Phrase("Check one tyre"),
    Phrase("From what the sidewall, a gauge and a ruler say: is this tyre fit for its load and the "
           "water, and how fast before which limit bites?")};

const SheetDescription& describe() {
  static const SheetDescription sheet{
      head,
      {sheets::describe(fields::units), sheets::describe(size), sheets::describe(load),
       sheets::describe(pressure), sheets::describe(pressure_state), sheets::describe(tread),
       sheets::describe(fields::wetness), sheets::describe(water), sheets::describe(speed),
       sheets::describe(fields::tyre_kind), sheets::describe(fields::surface),
       sheets::describe(fields::place), sheets::describe(date_code)},
      {"example",
       Phrase("An invented case: the Pipit 1.4, a made-up small hatchback, on a wet evening"),
       Phrase("Part-worn tyre, front wheel, a puddle across the lane."),
       {{"size", "205/55 R16 91V"},
        {"load", "430 kg"},
        {"pressure", "2.2 bar"},
        {"tread", "3 mm"},
        {"water", "5 mm"},
        {"date_code", "2322"}}}};
  return sheet;
}

namespace {

judge::TyreCase read(FormReader& form) {
  judge::TyreCase tyre;
  tyre.size = form.read(size);
  tyre.load = form.read(load);
  tyre.gauge = form.read(pressure);
  tyre.hot = form.read(pressure_state);
  tyre.tread = form.read(tread);
  tyre.water = form.road_water(water);
  tyre.intended = form.read(speed);
  tyre.kind = form.read(fields::tyre_kind).value_or(nullptr);
  tyre.surface = form.read(fields::surface).value_or(nullptr);
  tyre.law = form.read(fields::place).value_or(nullptr);
  tyre.age = form.tyre_age(date_code, tyre.size);
  tyre.today = form.today();
  return tyre;
}

// Size and service description come first in the canonical text; for a radio they will do.
std::string without_marks(std::string_view canonical) {
  constexpr std::size_t enough = 24;
  if (canonical.size() <= enough) return std::string(canonical);
  return std::string(canonical.substr(0, canonical.rfind(' ', enough)));
}

std::string name(const judge::TyreCase& tyre, UnitSystem units) {
  std::string named = without_marks(tyre.size->canonical);
  if (tyre.tread) named = say("#, tread #", {named, write_depth(*tyre.tread, units)});
  if (tyre.water && tyre.water->is_wet()) named += ", " + say_water(*tyre.water, units);
  return named;
}

std::string read_out(const judge::TyreCase& tyre, const judge::HoldTo& hold, UnitSystem units) {
  const std::string named = name(tyre, units);
  if (hold.stands_still()) return say("#: #.", {named, in_words(hold, units).text});
  return say("#: hold to #. The limit is #.", {named, say_speed_aloud(hold.speed, units),
                                               within_sentence(label(hold.governing, units))});
}

// If aquaplaning is not what limits it: how far it needs to stop, and what puddles mean.
std::string read_out_beside(const judge::TyreJudged& judged, UnitSystem units) {
  std::string said;
  if (judged.wet_stop)
    said = say_stop_aloud(judged.wet_stop->from, judged.wet_stop->longest, units);
  if (const judge::Limit* puddles = judged.findings.beside())
    said = sentences({said, say_puddles_aloud(*puddles, units)});
  return said;
}

void speak(const judge::TyreCase& tyre, const judge::TyreJudged& judged, AnswerBuilder& answer) {
  const UnitSystem units = answer.units();
  const bool stopped = judged.hold && judged.hold->stands_still();
  const std::string beside = stopped ? std::string() : read_out_beside(judged, units);
  if (judged.hold)
    answer.speak(sentences({read_out(tyre, *judged.hold, units), beside}));
  else if (answer.answer().verdict->level == Level::unfit)
    answer.speak(say("#: #", {name(tyre, units), answer.answer().verdict->text}));
  else if (judged.no_limit && !beside.empty())
    answer.speak(say("#. #", {name(tyre, units), beside}));
}

// The text as typed, laid out with what each part of it means.
Marking explained(const sidewall::Reading& size_read, std::string_view typed) {
  Marking marking{"sidewall", Phrase("What the sidewall says"), size_read.canonical, {}};
  std::size_t at = 0;
  const auto stretch = [&](std::size_t end, Text meaning) {
    if (end > at)
      marking.stretches.push_back({std::string(typed.substr(at, end - at)), std::move(meaning)});
    at = std::max(at, end);
  };
  for (const sidewall::Part& part : size_read.parts) {
    if (part.begin < at || part.end > typed.size()) continue;
    stretch(part.begin, {});
    stretch(part.end, part.meaning);
  }
  stretch(typed.size(), {});
  return marking;
}

}  // namespace

Answer answer(const Input& input) {
  FormReader form(describe(), input);
  AnswerBuilder answer(head.id, form.units());
  const judge::TyreCase tyre = read(form);
  judge::TyreJudged judged = judge::judge_tyre(tyre);
  tell_load(judged.carrying, tyre, answer);
  tell_onsets(judged, tyre, answer);
  if (tyre.size) {
    answer.answer().markings.push_back(explained(*tyre.size, form.text(size)));
    tell_size(*tyre.size, answer);
    if (!tell_patch(tyre, answer)) judged.findings.add(judge::finding::patch_not_given);
  }
  const bool whole = form.ok();
  answer.take_problems(form);
  if (whole) judge::conclude(judged, tyre, answer.units());
  answer.tell(judged.findings);
  if (!whole) return answer.take();
  answer.tell(judged.hold, judged.no_limit);
  answer.conclude(
      judge::verdict(judged.findings, judged.hold),
      {tyre.water && tyre.water->is_known()
           ? Phrase("Fit for this load at this pressure, as far as these readings tell.")
           : Phrase("Fit for this load at this pressure on a dry road, as far as these readings "
                    "tell.")});
  if (tyre.size) speak(tyre, judged, answer);
  return answer.take();
}

}  // namespace treadwater::sheets::tyre_check
