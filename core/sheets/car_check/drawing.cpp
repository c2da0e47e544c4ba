#include "core/sheets/car_check/drawing.hpp"

#include <algorithm>
#include <array>

#include "core/patch/contact.hpp"
#include "core/patch/measured.hpp"
#include "core/patch/rating.hpp"
#include "core/sheets/payment_card.hpp"

namespace treadwater::sheets::car_check {
namespace {

using judge::Corner;
using judge::wheels_on_the_road;

Phrase verdict_on(const judge::Car& car, std::size_t wheel) {
  const auto level = car.level(wheel);
  if (!level) return Phrase("not judged");
  if (*level == Level::unfit) return Phrase("not fit");
  if (wheel == judge::spare_wheel && car.spare().tyre.size->temporary_spare &&
      car.own_level(wheel) != Level::unfit)
    return Phrase("only to reach help");
  return *level == Level::care ? Phrase("care") : Phrase("fit");
}

// Only if the equations were made for it: a belted radial, pressure not far below the formulas'.
std::optional<patch::ContactPatch> patch_of(const Corner& corner) {
  const judge::TyreCase& tyre = corner.tyre;
  if (!corner.has_tyre() || !tyre.gauge || !corner.load || *tyre.gauge < kilopascals(100.0) ||
      tyre.size->construction != sidewall::Construction::radial)
    return std::nullopt;
  const auto size = patch::nominal_size(*tyre.size);
  if (!size) return std::nullopt;
  const auto rated = patch::greatest_load(*tyre.size);
  return patch::contact_patch(*size, *tyre.gauge, *corner.load,
                              rated ? rated->mass : *corner.load / 0.8);
}

using Patches = std::array<patch::ContactPatch, wheels_on_the_road>;

// Grooves at the share measured on one tyre.
constexpr double grooves_share = 0.29;
constexpr int grooves = 4;

void draw_patch(Drawing& drawing, double x, double y, double wide, double high, bool named) {
  drawing.boxes.push_back(payment_card::contact_patch(
      x, y, wide, high, "subject", named ? Text(Phrase("Contact patch")) : Text()));
  const double groove = wide * grooves_share / grooves;
  for (int i = 1; i <= grooves; ++i)
    drawing.boxes.push_back({x + wide * i / (grooves + 1) - groove / 2.0, y, groove, high, 0.0,
                             "detail", named && i == 1 ? Text(Phrase("Groove")) : Text()});
}

// The car moves up the page: the front pair above, the card between left and right.
Drawing drawn(const Patches& patches, Area all, UnitSystem units) {
  constexpr double gap = 24.0;
  double widest = 0.0, longest = 0.0;
  for (const patch::ContactPatch& patch : patches) {
    widest = std::max(widest, in_millimetres(patch.width));
    longest = std::max(longest, in_millimetres(patch.length));
  }
  Drawing drawing;
  drawing.id = "four_patches";
  drawing.title = Phrase("All that touches the road, to scale");
  drawing.text = say(
      "Four contact patches of # in all, beside a payment card. Grooves are drawn at 0.29 of the "
      "area, as measured on one tyre.",
      {write(all, units)});
  drawing.width = 2.0 * widest + payment_card::width + 2.0 * gap;
  drawing.height = 2.0 * longest + gap;
  for (std::size_t wheel = 0; wheel < patches.size(); ++wheel) {
    const double wide = in_millimetres(patches[wheel].width);
    const double high = in_millimetres(patches[wheel].length);
    const double x = wheel % 2 == 0 ? widest - wide : widest + payment_card::width + 2.0 * gap;
    const double y = wheel < 2 ? longest - high : longest + gap;
    draw_patch(drawing, x, y, wide, high, wheel == 0);
  }
  drawing.boxes.push_back(
      payment_card::at(widest + gap, (drawing.height - payment_card::height) / 2.0));
  return drawing;
}

}  // namespace

void tell_beaded_edges(const judge::Car& car, AnswerBuilder& answer) {
  for (std::size_t wheel = 0; wheel < wheels_on_the_road; ++wheel) {
    const auto band = judge::beaded_edge_band(car.corners[wheel]);
    if (!band) continue;
    answer.figure(
        "beaded_edge", say("#: pressure for a beaded edge", {judge::wheel_name(wheel)}),
        in_kilopascals(band->high), "kPa",
        say("# to #", {write(band->low, answer.units()), write(band->high, answer.units())}),
        judge::beaded_edge_sources(),
        Phrase("Schedules of 1909 and 1921, and practice today; they disagree, and its maker comes "
               "first."),
        AnswerBuilder::Band{in_kilopascals(band->low), in_kilopascals(band->high)});
  }
}

void list_corners(const judge::Car& car, AnswerBuilder& answer) {
  const UnitSystem units = answer.units();
  Table table{"corners",
              Phrase("Corner by corner"),
              {},
              {Phrase("Corner"), Phrase("Finding"), Phrase("Tyre"), Phrase("Pressure"),
               Phrase("Least tread"), Phrase("Load")},
              {}};
  for (std::size_t wheel = 0; wheel < judge::all_wheels; ++wheel) {
    const Corner& corner = car.corners[wheel];
    if (!corner.has_tyre()) continue;
    const judge::TyreCase& tyre = corner.tyre;
    table.rows.push_back({judge::wheel_name(wheel), verdict_on(car, wheel), tyre.size->canonical,
                          tyre.gauge ? write(*tyre.gauge, units) : std::string(),
                          tyre.tread ? write_depth(*tyre.tread, units) : std::string(),
                          corner.load ? write(*corner.load, units) : std::string()});
  }
  if (!table.rows.empty()) answer.answer().tables.push_back(std::move(table));
}

void draw_patches(const judge::Car& car, AnswerBuilder& answer) {
  Patches patches;
  Area all;
  for (std::size_t wheel = 0; wheel < wheels_on_the_road; ++wheel) {
    const auto patch = patch_of(car.corners[wheel]);
    if (!patch) return;
    patches[wheel] = *patch;
    all = all + patch->area;
  }
  const UnitSystem units = answer.units();
  answer.answer().drawings.push_back(drawn(patches, all, units));
  answer.figure("patches_area", Phrase("Four contact patches together"), in_square_centimetres(all),
                "cm²", say("about #", {write(all, units)}),
                {&patch::contact_area_source(), &patch::measured_patch_source()});
}

}  // namespace treadwater::sheets::car_check
