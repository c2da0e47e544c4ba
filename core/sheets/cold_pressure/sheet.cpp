// The sheet `cold-pressure`: a tyre, its load and speed, the placard, a reading and where it will
// be driven -> what to set cold here, and what that reading means.
#include "core/sheets/sheet.hpp"

#include "core/judge/pressure_setting.hpp"
#include "core/sheets/answer_builder.hpp"
#include "core/sheets/cold_pressure/charts.hpp"
#include "core/sheets/cold_pressure/fields.hpp"
#include "core/sheets/cold_pressure/figures.hpp"

namespace treadwater::sheets::cold_pressure {

extern const SheetHead head;
const SheetHead head{
    "cold-pressure", Phrase("Set the pressure"),
    Phrase("What pressure do this load and speed need, and what is a reading worth that was taken "
           "hot, in another place or on another day?")};

const SheetDescription& describe() {
  static const SheetDescription sheet{
      head,
      {sheets::describe(fields::units), sheets::describe(size), sheets::describe(load),
       sheets::describe(speed), sheets::describe(placard), sheets::describe(camber),
       sheets::describe(towing), sheets::describe(gauge), sheets::describe(tyre_now),
       sheets::describe(cold_day), sheets::describe(stage_day), sheets::describe(height_here),
       sheets::describe(height_there), sheets::describe(hot_target), sheets::describe(hot_tyre)},
      {"example",
       Phrase("An invented case: the Pipit 1.4, a made-up small hatchback, from the garage to a "
              "cold stage"),
       Phrase("Set warm in the valley, driven cold in the hills."),
       {{"size", "205/55 R16 91V"},
        {"load", "430 kg"},
        {"speed", "130 km/h"},
        {"placard", "2.3 bar"},
        {"gauge", "2.3 bar"},
        {"cold_day", "20 °C"},
        {"stage_day", "-2 °C"},
        {"height_here", "100 m"},
        {"height_there", "900 m"}}}};
  return sheet;
}

namespace {

judge::SettingCase read(FormReader& form) {
  judge::SettingCase setting;
  setting.size = form.read(size);
  setting.load = form.read(load);
  setting.speed = form.read(speed);
  setting.placard = form.read(placard);
  setting.camber_degrees = form.read(camber).value_or(0.0);
  setting.towing_rear = form.read(towing).value_or(false);
  setting.gauge = form.read(gauge);
  setting.cold_day = form.read(cold_day).value_or(setting.cold_day);
  setting.tyre_now = form.read(tyre_now);
  setting.stage_day = form.read(stage_day);
  setting.height_here = form.read(height_here);
  setting.height_there = form.read(height_there);
  setting.hot_target = form.read(hot_target);
  setting.hot_tyre = form.read(hot_tyre);
  setting.today = form.today();
  if (setting.hot_target && !setting.hot_tyre)
    form.problem(hot_tyre, "missing",
                 Phrase("Tyre's temperature at work is missing: without it no cold setting can be "
                        "worked out. Something like 80 °C would do."));
  return setting;
}

VerdictWords words(judge::Level level, const std::optional<std::string>& set) {
  VerdictWords words;
  if (!set) {
    words.fit = Phrase("No pressure can be named.");
    words.care = Phrase("No pressure can be named yet: #.");
    return words;
  }
  words.fit = say("Set # cold.", {*set});
  words.care = Phrase("Set # cold, with care: #.");
  if (level == judge::Level::care) words.values = {*set};
  return words;
}

}  // namespace

Answer answer(const Input& input) {
  FormReader form(describe(), input);
  AnswerBuilder answer(head.id, form.units());
  const judge::SettingCase setting = read(form);
  judge::SettingJudged judged = judge::judge_setting(setting);
  tell_need(judged.need, setting, answer);
  if (setting.load) draw_capacity(judged.need, *setting.load, answer);
  tell_air(judged, setting, answer);
  tell_warnings(judged, setting, answer);
  draw_temperature(judged, setting, answer);
  tell_patches(judged, setting, answer);
  const bool whole = form.ok();
  answer.take_problems(form);
  if (whole) judge::conclude(judged, setting);
  answer.tell(judged.findings);
  if (!whole) return answer.take();
  std::optional<std::string> set;
  if (judged.to_set()) set = write_at_least(*judged.to_set(), answer.units());
  const judge::Verdict verdict = judge::verdict(judged.findings, std::nullopt);
  answer.conclude(verdict, words(verdict.level, set));
  const std::string& name = setting.size->canonical;
  if (verdict.level != judge::Level::unfit) {
    if (set) answer.speak(say("#: set # cold.", {name, *set}));
  } else if (set && judge::air_cures(judged.findings)) {
    answer.speak(say("#: not fit until # is set cold.", {name, *set}));
  } else {
    answer.speak(say("#: #", {name, answer.answer().verdict->text}));
  }
  return answer.take();
}

}  // namespace treadwater::sheets::cold_pressure
