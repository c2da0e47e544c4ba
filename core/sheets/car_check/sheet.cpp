// The sheet `car-check`: four corners and a spare. Each corner is judged as in the check of one
// tyre; this sheet adds what concerns them together: axles, left and right, wear across a tread,
// the spare.
#include "core/sheets/sheet.hpp"

#include "core/judge/car.hpp"
#include "core/sheets/answer_builder.hpp"
#include "core/sheets/car_check/drawing.hpp"
#include "core/sheets/car_check/fields.hpp"
#include "core/sheets/car_check/reading.hpp"
#include "core/words/measure.hpp"

namespace treadwater::sheets::car_check {

extern const SheetHead head;
const SheetHead head{"car-check", Phrase("Check a whole car"),
                     Phrase("Four corners and a spare: is each tyre fit, do they belong together, "
                            "and which one sets the speed?")};

namespace {

Preset example() {
  return {"example",
          Phrase("An invented case: the Pipit 1.4, a made-up small hatchback, before a holiday"),
          Phrase("One soft tyre, one worn on its inner side, and an old spare."),
          {{"front_axle", "820 kg"},
           {"rear_axle", "680 kg"},
           {"top_speed", "185 km/h"},
           {"water", "3 mm"},
           {"corners.0.size", "205/55 R16 91V"},
           {"corners.0.pressure", "2.2 bar"},
           {"corners.0.tread", "5 mm"},
           {"corners.0.tread_inner", "3.6 mm"},
           {"corners.0.tread_outer", "5.1 mm"},
           {"corners.1.size", "205/55 R16 91V"},
           {"corners.1.pressure", "1.7 bar"},
           {"corners.1.tread", "5 mm"},
           {"corners.2.size", "205/55 R16 91V"},
           {"corners.2.pressure", "2.2 bar"},
           {"corners.2.tread", "4 mm"},
           {"corners.3.size", "205/55 R16 91V"},
           {"corners.3.pressure", "2.2 bar"},
           {"corners.3.tread", "4 mm"},
           {"corners.4.size", "T125/80 D15 95M"},
           {"corners.4.pressure", "3.1 bar"},
           {"corners.4.tread", "3 mm"},
           {"corners.4.date_code", "1114"}}};
}

Field describe_corners() {
  std::vector<Phrase> names;
  for (std::size_t wheel = 0; wheel < judge::all_wheels; ++wheel)
    names.push_back(judge::wheel_name(wheel));
  return sheets::describe(
      corners,
      {also(sheets::describe(size), column::size),
       also(sheets::describe(pressure), column::pressure), sheets::describe(pressure_state),
       also(sheets::describe(tread), column::tread),
       also(sheets::describe(tread_inner), "Inner|Inside|Innen|Intérieur"),
       also(sheets::describe(tread_outer), "Outer|Outside|Aussen|Außen|Extérieur"),
       also(sheets::describe(date_code), column::date_code),
       also(sheets::describe(load), column::load)},
      std::move(names));
}

}  // namespace

const SheetDescription& describe() {
  static const SheetDescription sheet{
      head,
      {sheets::describe(fields::units), describe_corners(), sheets::describe(front_axle),
       sheets::describe(rear_axle), sheets::describe(kerb), sheets::describe(front_share),
       sheets::describe(front_people), sheets::describe(rear_people), sheets::describe(boot),
       sheets::describe(roof), sheets::describe(tow_ball), sheets::describe(top_speed),
       sheets::describe(speed), sheets::describe(fields::wetness), sheets::describe(water),
       sheets::describe(fields::tyre_kind), sheets::describe(fields::surface),
       sheets::describe(fields::place)},
      example()};
  return sheet;
}

namespace {

std::string read_out(const judge::HoldTo& hold, const Verdict& verdict, UnitSystem units) {
  const std::string limit = label(hold.governing, units);
  if (hold.stands_still()) return say("Car not fit: #.", {limit});
  const std::string speed = say_speed_aloud(hold.speed, units);
  if (verdict.level == Level::unfit)
    return say("Car: # Not above # until that is put right.", {verdict.text, speed});
  return say("Car: hold to #. The limit is #.", {speed, limit});
}

}  // namespace

Answer answer(const Input& input) {
  FormReader form(describe(), input);
  AnswerBuilder answer(head.id, form.units());
  judge::Findings findings;
  judge::Car car = read_car(form, findings);
  const bool whole = form.ok();
  answer.take_problems(form);

  judge::judge_corners(car, answer.units(), findings);
  judge::judge_together(car, findings);
  std::optional<judge::HoldTo> hold;
  std::optional<judge::NoLimit> none;
  if (whole) {
    judge::conclude(car, findings);
    hold = judge::hold_to(findings, answer.units());
    none = judge::no_limit(findings, answer.units());
  }

  answer.tell(findings);
  tell_beaded_edges(car, answer);
  list_corners(car, answer);
  draw_patches(car, answer);
  if (!whole) return answer.take();
  answer.tell(hold, none);
  answer.conclude(judge::verdict(findings, hold),
                  {Phrase("Fit on all four corners, as far as these readings tell.")});
  const Verdict& verdict = *answer.answer().verdict;
  if (hold)
    answer.speak(read_out(*hold, verdict, answer.units()));
  else if (verdict.level == Level::unfit)
    answer.speak(say("Car: #", {verdict.text}));
  return answer.take();
}

}  // namespace treadwater::sheets::car_check
