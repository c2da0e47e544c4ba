#include "core/sheets/tyre_check/figures.hpp"

#include <algorithm>

#include "core/judge/water.hpp"
#include "core/patch/contact.hpp"
#include "core/patch/geometry.hpp"
#include "core/sheets/payment_card.hpp"
#include "core/standard/load_index.hpp"
#include "core/standard/speed_load.hpp"
#include "core/water/onset.hpp"
#include "core/words/measure.hpp"

namespace treadwater::sheets::tyre_check {
namespace {

// Only if the equations were made for it: a belted radial, pressure not far below the formulas'.
std::optional<patch::ContactPatch> patch_of(const judge::TyreCase& tyre) {
  const auto size = tyre.size ? patch::nominal_size(*tyre.size) : std::nullopt;
  if (!size || !tyre.load || !tyre.gauge || *tyre.gauge < kilopascals(100.0)) return std::nullopt;
  if (tyre.size->construction != sidewall::Construction::radial || tyre.size->motorcycle)
    return std::nullopt;
  const auto rated = tyre.size->service ? standard::load_of_index(tyre.size->service->load_index)
                                        : std::optional<Mass>();
  return patch::contact_patch(*size, *tyre.gauge, *tyre.load, rated.value_or(*tyre.load / 0.8));
}

void tell_published_onsets(const judge::TyreCase& tyre, Length film, AnswerBuilder& answer) {
  if (!tyre.cold()) return;
  const GaugePressure cold = *tyre.cold();
  const auto tell = [&](const char* id, Phrase label, Speed v, judge::SomeSources sources,
                        Phrase note) {
    answer.figure(id, label, in_kilometres_per_hour(v), "km/h", write(v, answer.units()), sources,
                  note);
  };
  tell("onset_pressure_only", Phrase("Onset by pressure alone"), water::pressure_only_onset(cold),
       {&water::pressure_only_source()},
       Phrase("A smooth tyre, or water deeper than the grooves. Not a safe speed."));
  if (const auto patch = patch_of(tyre))
    tell("onset_footprint", Phrase("Onset by pressure and footprint"),
         water::footprint_onset(cold, patch->aspect_ratio), {&water::footprint_source()},
         Phrase("Flooded, worn tyre; made for trucks. Not a safe speed."));
  if (tyre.tread && tyre.surface != nullptr)
    tell("onset_film", Phrase("Onset by film, tread, texture and pressure"),
         water::film_onset(
             {cold, *tyre.tread * tyre.kind->groove_credit, film, tyre.surface->texture}),
         {&water::film_source(), &tyre.surface->source},
         Phrase("Made on tyres of the 1970s; reads up to 61 % too high for worn ones. Not a safe "
                "speed."));
}

// Everything that touches the road, beside a bank card.
void draw(const patch::ContactPatch& patch, AnswerBuilder& answer) {
  constexpr double gap = 12.0;
  const UnitSystem units = answer.units();
  const double width = in_millimetres(patch.width);
  const double length = in_millimetres(patch.length);
  Drawing drawing;
  drawing.id = "contact_patch";
  drawing.title = Phrase("Contact patch, to scale");
  drawing.text = say(
      "All that touches the road is about # wide and # long, #, drawn beside a payment card. The "
      "car moves up the page.",
      {write_size(patch.width, units), write_size(patch.length, units), write(patch.area, units)});
  drawing.width = width + gap + payment_card::width;
  drawing.height = std::max(length, payment_card::height);
  drawing.boxes = {payment_card::contact_patch(0.0, drawing.height - length, width, length,
                                               "subject", Phrase("Contact patch")),
                   payment_card::at(width + gap, drawing.height - payment_card::height)};
  answer.answer().drawings.push_back(std::move(drawing));
}

}  // namespace

void tell_load(const judge::Carrying& carrying, const judge::TyreCase& tyre,
               AnswerBuilder& answer) {
  if (!carrying.greatest) return;
  const UnitSystem units = answer.units();
  const patch::GreatestLoad& greatest = *carrying.greatest;
  const std::string index = std::to_string(greatest.index);
  answer.figure(
      "load_rating",
      say(greatest.worked_out ? Phrase("Load rating worked out from the size (index #)")
                              : Phrase("Load rating (index #)"),
          {index}),
      in_kilograms(greatest.sure), "kg", write(greatest.sure, units),
      {greatest.worked_out ? &patch::p_metric_capacity_source() : &standard::load_index_source()});
  if (!carrying.support) return;
  const patch::Support& support = *carrying.support;
  if (const auto cold = tyre.cold()) {
    const Mass capacity = support.capacity(*cold);
    const Mass least = support.least_capacity(*cold);
    Text note;
    std::optional<AnswerBuilder::Band> band;
    if (support.two_laws()) {
      band = {in_kilograms(least), in_kilograms(capacity)};
      note = say("Another law gives # here; the lower is what this check goes by.",
                 {write(least, units)});
    }
    answer.figure("load_capacity", Phrase("Load it can carry at this pressure"),
                  in_kilograms(capacity), "kg", write(capacity, units), support.sources(), note,
                  band);
  }
  if (!carrying.needed) return;
  Sources sources = support.sources();
  if (carrying.more_for_speed) sources.push_back(&standard::speed_pressure_source());
  answer.figure("pressure_needed", Phrase("Least cold pressure for this load"),
                in_kilopascals(*carrying.needed), "kPa", write_at_least(*carrying.needed, units),
                std::move(sources),
                Phrase("The vehicle's placard comes first; it is often higher, for handling and "
                       "speed."));
}

void tell_onsets(const judge::TyreJudged& judged, const judge::TyreCase& tyre,
                 AnswerBuilder& answer) {
  if (!judged.onset) return;
  tell_published_onsets(tyre, judged.onset->tyre.film.middle(), answer);
  const water::SpeedBand& onset = judged.onset->band;
  Sources sources = judge::onset_sources();
  sources.push_back(&tyre.surface->source);
  answer.figure("onset_estimate", Phrase("Our estimate of the onset"),
                in_kilometres_per_hour(drawn(onset.central)), "km/h",
                say_onset(onset, answer.units()), std::move(sources),
                Phrase("Ours: the film formula, worn down as measured tyres are."),
                AnswerBuilder::Band{in_kilometres_per_hour(drawn(onset.low)),
                                    in_kilometres_per_hour(drawn(onset.high))});
}

void tell_size(const sidewall::Reading& read, AnswerBuilder& answer) {
  const auto diameter = patch::overall_diameter(read);
  const auto size = patch::nominal_size(read);
  if (!diameter) return;
  const UnitSystem units = answer.units();
  if (!size || read.stated_outer_diameter) {
    answer.figure("overall_diameter", Phrase("Overall diameter"), in_millimetres(*diameter), "mm",
                  write_size(*diameter, units, 1), {&patch::overall_diameter_source()},
                  Phrase("As the size itself states it."));
    return;
  }
  const auto length = [&](const char* id, Phrase label, const patch::LengthBand& band, int decimals,
                          judge::SomeSources sources, Phrase note) {
    answer.figure(id, label, in_millimetres(band.nominal), "mm",
                  write_size(band.nominal, units, decimals), sources,
                  say(note, {write_size(band.low, units), write_size(band.high, units)}),
                  AnswerBuilder::Band{in_millimetres(band.low), in_millimetres(band.high)});
  };
  const bool cross_ply = read.construction != sidewall::Construction::radial;
  length("overall_diameter", Phrase("Overall diameter"),
         patch::overall_diameter_band(*size, cross_ply), 1,
         {&patch::overall_diameter_source(), &patch::size_tolerance_source()},
         Phrase("Nominal, unloaded; a real tyre from # to #."));
  length("rolling_circumference", Phrase("Rolling circumference"),
         patch::rolling_circumference(*size, cross_ply), 0,
         {&patch::rolling_circumference_source()},
         Phrase("From # to # by what is printed and measured."));
  const Length rim = patch::theoretical_rim_width(*size);
  const Length wider = rim + inches(0.5);
  answer.figure(
      "theoretical_rim", Phrase("Rim width the nominal section belongs to"), in_millimetres(rim),
      "mm", write_size(rim, units),
      {&patch::theoretical_rim_source(), &patch::section_on_rim_source()},
      say("Every half inch of rim more or less is # of section. The tyre maker's own "
          "measuring rim comes first.",
          {write_size(patch::section_width_on_rim(*size, wider, rim) - size->section_width, units,
                      1)}));
}

bool tell_patch(const judge::TyreCase& tyre, AnswerBuilder& answer) {
  const auto found = patch_of(tyre);
  if (!found)
    return !tyre.load || !tyre.gauge || tyre.size->construction == sidewall::Construction::radial;
  const UnitSystem units = answer.units();
  const patch::ContactPatch& p = *found;
  const auto tell = [&](const char* id, Phrase label, double value, const char* unit, TextView text,
                        judge::SomeSources sources, Phrase note = {},
                        std::optional<AnswerBuilder::Band> band = {}) {
    answer.figure(id, label, value, unit, text, sources, note, band);
  };
  const double deflection = in_millimetres(p.deflection);
  const double length = in_millimetres(p.length);
  const double area = in_square_centimetres(p.area);
  const double pressure = in_kilopascals(p.ground_pressure);
  using Band = AnswerBuilder::Band;
  tell("deflection", Phrase("Deflection under the load"), deflection, "mm",
       write_size(p.deflection, units), {&patch::stiffness_source()},
       Phrase("Provisional: the stiffness constants are from memory."),
       Band{0.895 * deflection, 1.08 * deflection});
  tell("patch_length", Phrase("Contact length"), length, "mm", write_size(p.length, units),
       {&patch::contact_length_source(), &patch::stiffness_source()},
       Phrase("Against 25 prints of one tyre it reads 3 % short to 14 % long. Provisional."),
       Band{length / 1.15, 1.15 * length});
  tell("patch_width", Phrase("Contact width"), in_millimetres(p.width), "mm",
       write_size(p.width, units), {&patch::contact_width_source()});
  tell("patch_area", Phrase("Gross contact area"), area, "cm²",
       say("about #", {write(p.area, units)}), {&patch::contact_area_source()},
       Phrase("Against 25 prints of one tyre it reads 12 % small to 9 % large."),
       Band{area / 1.15, 1.15 * area});
  tell("footprint_aspect", Phrase("Footprint width / length"), p.aspect_ratio, "",
       significant(p.aspect_ratio, 2), {&patch::contact_length_source()});
  tell("ground_pressure", Phrase("Mean ground pressure"), pressure, "kPa",
       write(p.ground_pressure, units), {&patch::contact_area_source()},
       Phrase("The load over the gross area."), Band{pressure / 1.15, 1.15 * pressure});
  draw(p, answer);
  return true;
}

}  // namespace treadwater::sheets::tyre_check
