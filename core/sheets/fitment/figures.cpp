#include "core/sheets/fitment/figures.hpp"

#include <algorithm>

#include "core/car/wheel.hpp"
#include "core/patch/contact.hpp"
#include "core/sheets/payment_card.hpp"
#include "core/standard/load_index.hpp"
#include "core/standard/speedometer.hpp"
#include "core/words/measure.hpp"

namespace treadwater::sheets::fitment {
namespace {

Length rolling(const car::Wheel& wheel) {
  return patch::rolling_circumference(wheel.size, wheel.cross_ply).nominal;
}

Table before_and_after(const judge::SizeChangeJudged::Sizes& sizes, UnitSystem units) {
  Table table{"sizes",
              Phrase("Before and after"),
              Phrase("Nominal sizes; real tyres differ by some per cent."),
              {Text(), Phrase("Now"), Phrase("New"), Phrase("Change")},
              {}};
  const auto row = [&](Phrase name, Length now, Length then) {
    table.rows.push_back({name, write_size(now, units), write_size(then, units),
                          write_signed_size(then - now, units)});
  };
  row(Phrase("Overall diameter"), patch::overall_diameter(sizes.now.size),
      patch::overall_diameter(sizes.then.size));
  row(Phrase("Section width on its rim"), car::section_width(sizes.now),
      car::section_width(sizes.then));
  row(Phrase("Rolling circumference"), rolling(sizes.now), rolling(sizes.then));
  const auto turns = [&](const car::Wheel& wheel) {
    return car::turns_per_kilometre(rolling(wheel)) / in_road_units(kilometres(1.0), units);
  };
  const double now = turns(sizes.now);
  const double then = turns(sizes.then);
  table.rows.push_back(
      {turns_on_the_road(units), fixed(now, 0), fixed(then, 0), write_signed(then - now, 0)});
  return table;
}

void percent(const char* id, Phrase label, double share, int decimals, Sources sources,
             AnswerBuilder& answer, Phrase note = {}) {
  const double change = 100.0 * (share - 1.0);
  answer.figure(id, label, change, "%", write_signed_percent(change, decimals), std::move(sources),
                note);
}

void tell_speedometer(const judge::SizeChangeJudged::Sizes& sizes, Speed on_dial,
                      AnswerBuilder& answer) {
  const auto speed = [&](const char* id, Text label, Speed v) {
    answer.figure(id, std::move(label), in_kilometres_per_hour(v), "km/h", write(v, answer.units()),
                  {&standard::speedometer_source()});
  };
  speed("true_at_shown", say("At # on the dial, if it was true", {write(on_dial, answer.units())}),
        sizes.true_if_true);
  speed("true_at_shown_high", Phrase("The same, if it read as high as UN R39 allows"),
        sizes.true_if_high);
}

Drawing patch_over_patch(const patch::ContactPatch& now, const patch::ContactPatch& then,
                         UnitSystem units) {
  constexpr double gap = 12.0;
  const double wide = in_millimetres(std::max(now.width, then.width));
  const double high = in_millimetres(std::max(now.length, then.length));
  const auto box = [&](const patch::ContactPatch& p, std::string_view role, Phrase label) {
    const double w = in_millimetres(p.width);
    const double h = in_millimetres(p.length);
    return payment_card::contact_patch((wide - w) / 2.0, (high - h) / 2.0, w, h, role, label);
  };
  Drawing drawing;
  drawing.id = "patches";
  drawing.title = Phrase("Contact patch over contact patch, to scale");
  drawing.text =
      say("The new one # wide and # long, the one now # and #, at the same pressure and load, "
          "beside a payment card.",
          {write_size(then.width, units), write_size(then.length, units),
           write_size(now.width, units), write_size(now.length, units)});
  drawing.width = wide + gap + payment_card::width;
  drawing.height = std::max(high, payment_card::height);
  drawing.boxes = {box(now, "reference", Phrase("Now")), box(then, "subject", Phrase("New")),
                   payment_card::at(wide + gap, drawing.height - payment_card::height)};
  return drawing;
}

void tell_other_metals(Mass of_wheel, AnswerBuilder& answer) {
  const auto cast_in = [&](const char* id, Phrase label, car::Metal metal) {
    const Mass wheel = car::wheel_in(of_wheel, car::Metal::cast_aluminium, metal);
    answer.figure(id, label, in_kilograms(wheel), "kg", write_wheel(wheel),
                  {&car::density_source()},
                  Phrase("By density alone, for half of the mass given; real wheels in light "
                         "metals are thicker."));
  };
  cast_in("in_magnesium", Phrase("A cast aluminium wheel, in magnesium"), car::Metal::magnesium);
  cast_in("in_steel", Phrase("The same in steel"), car::Metal::steel);
}

void tell_wheel_hop(const Wheels& wheels, const judge::SizeChangeCase& change,
                    AnswerBuilder& answer) {
  if (!asks_for_hop(wheels, change) || wheels.too_light()) return;
  const auto hop = [&](const judge::Fitted& fitted, Mass unsprung) {
    return car::wheel_hop_hertz(
        *wheels.suspension, patch::vertical_stiffness(*fitted.size(), *change.pressure), unsprung);
  };
  const double now = hop(change.now, *wheels.unsprung);
  const double then = hop(change.then, *wheels.unsprung + (*wheels.new_mass - *wheels.mass));
  answer.figure("wheel_hop", Phrase("Wheel-hop frequency"), then, "Hz",
                say("# Hz, now # Hz", {fixed(then, 1), fixed(now, 1)}),
                {&car::wheel_hop_source(), &patch::stiffness_source()},
                Phrase("The lower, the more the wheel leaves the road over close bumps."));
}

}  // namespace

bool Wheels::too_light() const {
  return mass && new_mass && unsprung &&
         !(*unsprung > *mass && *unsprung + (*new_mass - *mass) > Mass());
}

bool asks_for_hop(const Wheels& wheels, const judge::SizeChangeCase& change) {
  return wheels.mass && wheels.new_mass && wheels.unsprung && wheels.suspension &&
         change.pressure && change.sizes_known();
}

void tell_sizes(const judge::SizeChangeJudged::Sizes& sizes, Speed on_dial, AnswerBuilder& answer) {
  const UnitSystem units = answer.units();
  const car::FitmentChange& change = sizes.change;
  answer.answer().tables.push_back(before_and_after(sizes, units));
  const Sources geometry{&patch::overall_diameter_source(), &patch::rolling_circumference_source()};
  const Sources width{&patch::section_on_rim_source(), &patch::theoretical_rim_source()};
  const auto length = [&](const char* id, Phrase label, Length by, const Sources& sources) {
    answer.figure(id, label, in_millimetres(by), "mm", write_signed_size(by, units), sources);
  };
  percent("circumference_change", Phrase("Rolling circumference"), change.circumference, 1,
          geometry, answer);
  percent("engine_speed", Phrase("Engine speed at the same road speed"), change.engine_speed(), 1,
          geometry, answer);
  length("ride_height", Phrase("Ride height, and room lost under the arch"), change.ride_height,
         geometry);
  length("section_change", Phrase("Section width"), change.section_width, width);
  length("inward", Phrase("Nearer to the suspension"), change.inward, width);
  length("outward", Phrase("Further out"), change.outward, width);
  tell_speedometer(sizes, on_dial, answer);
}

void tell_ratings(const judge::SizeChangeJudged& judged, const judge::SizeChangeCase& change,
                  AnswerBuilder& answer) {
  const UnitSystem units = answer.units();
  const auto rating = [&](const char* id, Phrase label, Mass mass, Phrase note) {
    answer.figure(id, label, in_kilograms(mass), "kg", write(mass, units),
                  {&standard::load_index_source()}, note);
  };
  if (judged.rating) {
    rating("new_rating", Phrase("Load rating of the new tyre"), judged.rating->sure, {});
    if (const auto asked = change.asked_rating())
      rating("asked_rating", Phrase("Asked of it"), *asked,
             change.asked ? Phrase("By the load index given.") : Phrase("By the tyre now fitted."));
  }
  if (judged.equal_pressure)
    answer.figure("equal_pressure", Phrase("Pressure that carries the same load"),
                  in_kilopascals(*judged.equal_pressure), "kPa",
                  write_at_least(*judged.equal_pressure, units), judge::laws_of_equal_load(change),
                  say("As # in the tyre now. The car maker's figure for the new size comes first.",
                      {write(*change.pressure, units)}));
}

void draw_patches(const judge::SizeChangeCase& change, AnswerBuilder& answer) {
  if (!change.load || !change.pressure || !change.sizes_known() || change.now.cross_ply() ||
      change.then.cross_ply())
    return;
  const auto patch_of = [&](const judge::Fitted& fitted) {
    const auto greatest = fitted.greatest();
    return patch::contact_patch(*fitted.size(), *change.pressure, *change.load,
                                greatest ? greatest->mass : *change.load / 0.8);
  };
  const patch::ContactPatch now = patch_of(change.now);
  const patch::ContactPatch then = patch_of(change.then);
  answer.answer().drawings.push_back(patch_over_patch(now, then, answer.units()));
  percent("area_change", Phrase("Contact area at the same pressure"), then.area / now.area, 0,
          {&patch::contact_area_source(), &patch::contact_width_source(),
           &patch::contact_length_source(), &patch::stiffness_source()},
          answer, Phrase("Provisional: the stiffness constants are from memory."));
}

void weigh(const Wheels& wheels, const judge::SizeChangeCase& change, AnswerBuilder& answer) {
  if (!wheels.mass || !wheels.new_mass) return;
  const Mass more = *wheels.new_mass - *wheels.mass;
  const Mass felt = more + car::tyre_equivalent_mass(more);
  answer.figure("unsprung_change", Phrase("Unsprung mass, each corner"), in_kilograms(more), "kg",
                write_signed_wheel(more), {&car::equivalent_mass_source()});
  answer.figure("equivalent_mass", Phrase("Felt when speeding up or braking, as mass"),
                in_kilograms(felt), "kg", write_signed_wheel(felt),
                {&car::equivalent_mass_source(), &car::tyre_inertia_source()},
                Phrase("If what is added or saved lies as far out as a tyre's."));
  tell_other_metals(*wheels.new_mass * 0.5, answer);
  tell_wheel_hop(wheels, change, answer);
}

}  // namespace treadwater::sheets::fitment
