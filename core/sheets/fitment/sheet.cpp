// The sheet `fitment`: the current tyre and wheel, and another -> what changes, and whether it is
// enough.
#include "core/sheets/sheet.hpp"

#include "core/judge/size_change.hpp"
#include "core/sheets/answer_builder.hpp"
#include "core/sheets/fitment/fields.hpp"
#include "core/sheets/fitment/figures.hpp"
#include "core/standard/load_index.hpp"

namespace treadwater::sheets::fitment {

extern const SheetHead head;
const SheetHead head{
    "fitment", Phrase("Another size"),
    Phrase("Other tyres or wheels on the same car: what changes, and is it enough?")};

const SheetDescription& describe() {
  static const SheetDescription sheet{
      head,
      {sheets::describe(fields::units), sheets::describe(size), sheets::describe(new_size),
       sheets::describe(top_speed), sheets::describe(asked_index), sheets::describe(pressure),
       sheets::describe(load), sheets::describe(rim), sheets::describe(new_rim),
       sheets::describe(offset), sheets::describe(new_offset), sheets::describe(wheel_mass),
       sheets::describe(new_wheel_mass), sheets::describe(unsprung),
       sheets::describe(suspension_rate)},
      {"example",
       Phrase("An invented case: larger wheels for the Pipit 1.4, a made-up small hatchback"),
       Phrase("From 15 to 16 inches, a little wider."),
       {{"size", "195/65 R15 91T"},
        {"new_size", "205/55 R16 91V"},
        {"top_speed", "185 km/h"},
        {"pressure", "2.3 bar"},
        {"load", "430 kg"},
        {"rim", "6 in"},
        {"new_rim", "7 in"},
        {"offset", "45 mm"},
        {"new_offset", "40 mm"},
        {"wheel_mass", "16 kg"},
        {"new_wheel_mass", "19 kg"},
        {"unsprung", "40 kg"},
        {"suspension_rate", "20.6"}}}};
  return sheet;
}

namespace {

judge::SizeChangeCase read(FormReader& form) {
  judge::SizeChangeCase change;
  change.now.tyre = form.read(size);
  change.then.tyre = form.read(new_size);
  change.top_speed = form.read(top_speed);
  if (const auto index = form.read(asked_index))
    change.asked = standard::load_of_index(static_cast<int>(*index));
  change.pressure = form.read(pressure);
  change.load = form.read(load);
  change.now.rim = form.read(rim);
  change.then.rim = form.read(new_rim);
  change.now.offset = form.read(offset);
  change.then.offset = form.read(new_offset);
  change.on_dial = round_speed(form.units());
  change.today = form.today();
  return change;
}

Wheels read_wheels(FormReader& form) {
  Wheels wheels;
  wheels.mass = form.read(wheel_mass);
  wheels.new_mass = form.read(new_wheel_mass);
  wheels.unsprung = form.read(unsprung);
  if (const auto rate = form.read(suspension_rate))
    wheels.suspension = newtons_per_millimetre(*rate);
  return wheels;
}

}  // namespace

Answer answer(const Input& input) {
  FormReader form(describe(), input);
  AnswerBuilder answer(head.id, form.units());
  const judge::SizeChangeCase change = read(form);
  const Wheels wheels = read_wheels(form);
  const judge::SizeChangeJudged judged = judge::judge_size_change(change);
  if (judged.sizes) tell_sizes(*judged.sizes, change.on_dial, answer);
  tell_ratings(judged, change, answer);
  draw_patches(change, answer);
  weigh(wheels, change, answer);
  if (asks_for_hop(wheels, change) && wheels.too_light())
    form.problem(
        unsprung, "below_wheel",
        say("Unsprung mass: # is less than the wheel itself weighs, #. With hub, brake "
            "and half the suspension it is more.",
            {write(*wheels.unsprung, answer.units()), write(*wheels.mass, answer.units())}));
  const bool whole = form.ok();
  answer.take_problems(form);
  answer.tell(judged.findings);
  if (whole)
    answer.conclude(judge::verdict(judged.findings, std::nullopt),
                    {Phrase("It fits by these figures; clearance must still be seen on the car."),
                     Phrase("Fit only with care: #."), Phrase("Not to be fitted: #.")});
  return answer.take();
}

}  // namespace treadwater::sheets::fitment
