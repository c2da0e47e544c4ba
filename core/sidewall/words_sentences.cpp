// What the text leaves out, and what was assumed, in plain sentences.
#include "core/quantity/write.hpp"
#include "core/sidewall/words.hpp"
#include "core/words/say.hpp"

namespace treadwater::sidewall {
namespace {

using standard::SpeedSymbol;

bool usually_has_service(Family family) {
  switch (family) {
    case Family::flotation:
    case Family::special_trailer:
    case Family::us_alphanumeric:
    case Family::inch_cross_ply:
    case Family::beaded_edge:
    case Family::overall_diameter:
    case Family::inch_overall_diameter:
      return false;
    default:
      return true;
  }
}

struct Sentences : Gathered {
  void put() {
    unsaid_service();
    unsaid_construction();
    unsaid_measures();
    assumed_spelling();
    assumed_measures();
    assumed_beaded_edge();
    assumed_after_slash();
    assumed_services();
    candidates();
  }

  [[gnu::noinline]] void unsaid(Phrase sentence) { reading.unsaid.push_back(say(sentence)); }
  [[gnu::noinline]] void assumed(Phrase sentence) { reading.assumed.push_back(say(sentence)); }

  // ---- unsaid ----

  void unsaid_service() {
    if (facts.has_service()) return;
    if (tyre.bare_index.there()) {
      reading.unsaid.push_back(
          say("No speed symbol stands after #, so it was not taken for the load index.",
              {text.quote(tyre.bare_index.begin, tyre.bare_index.end)}));
    }
    if (reading.size_symbol == SpeedSymbol::ZR) {
      unsaid(
          Phrase("ZR without a service description says only above 240 km/h: ask the tyre maker "
                 "for the greatest load and speed."));
    } else if (reading.size_symbol == SpeedSymbol::VR) {
      unsaid(
          Phrase("V in the size without a service description says only above 210 km/h, and no "
                 "load: ask the tyre maker."));
    } else if (reading.size_symbol) {
      unsaid(Phrase("The load index is not in the text."));
    } else if (usually_has_service(reading.family)) {
      unsaid(
          Phrase("The service description (load index and speed symbol, such as 91V) is not in the "
                 "text."));
    } else {
      unsaid(Phrase("The text gives no load index and no speed symbol."));
    }
  }

  void unsaid_construction() {
    if (reading.construction) return;
    if (reading.family == Family::beaded_edge) {
      unsaid(Phrase("The construction is not marked."));
    } else if (facts.construction == 'X') {
      unsaid(
          Phrase("The x does not settle the construction: sizes of this kind were written so for "
                 "radial and cross-ply tyres. Look for RADIAL on the tyre."));
    } else if (facts.construction == '-') {
      unsaid(
          Phrase("The dash does not settle the construction: sizes of this kind were written so "
                 "for radial and cross-ply tyres. Look for RADIAL on the tyre."));
    } else {
      unsaid(
          Phrase("The construction is not marked. Strictly a metric size without R, B or D is "
                 "cross-ply; people also leave the R out. Look for RADIAL on the tyre."));
    }
  }

  void unsaid_measures() {
    switch (reading.family) {
      case Family::inch_cross_ply:
      case Family::truck_inch:
        if (!reading.aspect_percent) {
          unsaid(
              Phrase("A size in inches does not give the height of the sidewall: 78 to 98 % of the "
                     "width, by age. Measure the overall diameter."));
        }
        break;
      case Family::motorcycle_inch:
        unsaid(
            Phrase("A size in inches does not give the height of the sidewall: about as high as "
                   "wide, less for low sections. Measure the overall diameter."));
        break;
      case Family::us_alphanumeric:
        unsaid(
            Phrase("The load letter does not give the section width: measure it, or find the "
                   "maker's table."));
        break;
      case Family::millimetre_rim:
        if (!reading.aspect_percent) {
          unsaid(Phrase("The series is not in the size: measure the overall diameter."));
        }
        break;
      case Family::beaded_edge: {
        const double gap = in_millimetres(*reading.stated_outer_diameter) -
                           2.0 * in_millimetres(*reading.section_width);
        reading.unsaid.push_back(
            say("The bead diameter is not in the size: overall diameter less twice the section "
                "gives about # mm.",
                {trimmed(gap, 0)}));
        break;
      }
      default:
        break;
    }
  }

  // ---- assumed ----

  bool dirty() const {
    const Shape shape = tyre.size.shape;
    if (shape == Shape::loose || shape == Shape::compact || shape == Shape::flotation_slash) {
      return true;
    }
    for (const Hit& hit : tyre.size.hits) {
      if (hit.there() && hit.dirty) return true;
    }
    return false;
  }

  void assumed_spelling() {
    if (dirty()) {
      reading.assumed.push_back(say("The size was read as #, though it is not spelled that way.",
                                    {canonical_size(tyre, reading.family)}));
    }
    if (tyre.size_twice) assumed(Phrase("The size stands in the text twice; it was read once."));
    if (facts.service.bracketed && facts.has_service() && !reading.service->above_symbol) {
      assumed(
          Phrase("The brackets round the service description were passed over: they mean more than "
                 "the symbol only on a ZR size."));
    }
  }

  void assumed_measures() {
    if (tyre.size.shape == Shape::crossed_rim_cm) {
      assumed(Phrase("The number before the x was read as a section width in centimetres."));
    }
    if (tyre.size.shape == Shape::flotation_slashes) {
      assumed(
          Phrase("Three numbers with slashes were read as overall diameter, section width and rim, "
                 "all in inches."));
    }
    if (reading.family == Family::metric_no_series ||
        (reading.family == Family::commercial && !reading.aspect_percent)) {
      reading.aspect_percent = 82.0;
      assumed(
          Phrase("A metric size without a series has a nominal aspect ratio of 82 % (80 % counts "
                 "as the same)."));
    }
    if (reading.family == Family::metric_car && facts.construction == '-' &&
        reading.construction == Construction::cross_ply) {
      assumed(
          Phrase("The dash before the rim was read as cross-ply, as it is moulded; if the tyre "
                 "says RADIAL, write R."));
    }
    if (reading.family == Family::commercial && !reading.commercial && !reading.light_truck) {
      assumed(
          Phrase("Two load indices belong to a commercial tyre; the C or LT is not in the text."));
    }
    if (reading.family != Family::motorcycle_alpha) return;
    if (const int width = cycle_letter_width(facts.letter)) {
      reading.section_width = millimetres(width);
      reading.assumed.push_back(
          say("The width letter was taken as a section of about # mm, from tables of equivalent "
              "sizes.",
              {std::to_string(width)}));
    } else {
      unsaid(Phrase("The width letter has no agreed width in millimetres."));
    }
  }

  void assumed_beaded_edge() {
    if (reading.family == Family::beaded_edge) {
      assumed(
          Phrase("Two numbers with x were read as overall diameter and section. A beaded-edge tyre "
                 "is held on its rim by its pressure alone."));
    }
  }

  void assumed_after_slash() {
    if (tyre.size.shape != Shape::inch_slash) return;
    switch (second_meaning()) {
      case Second::series:
        return assumed(Phrase("The number after the slash was read as the aspect ratio."));
      case Second::outer_in:
        return assumed(
            Phrase("The number after the slash was read as the overall diameter in inches."));
      case Second::outer_cm:
        return assumed(
            Phrase("Both numbers were read as centimetres: section width and overall diameter."));
      case Second::second_width:
        return assumed(
            Phrase("The number after the slash was read as a second section width; the overall "
                   "diameter is not known."));
    }
  }

  void assumed_services() {
    if (facts.is_dual()) {
      const int gap = facts.service.load_index - facts.service.twin;
      if (gap < 0 || gap > 8) {
        assumed(
            Phrase("The first load index is for a single tyre and the second for twins, which lies "
                   "up to 8 lower as a rule; these two do not. Check them."));
      }
    }
    if (tyre.second_service.load_index >= 0 && !may_have_two_services(reading.family)) {
      assumed(Phrase(
          "Two service descriptions stand in the text; the lower load and speed were used."));
    }
    if (facts.has_service() && tyre.bare_index.there()) {
      reading.unsaid.push_back(say("No speed symbol stands after #.",
                                   {text.quote(tyre.bare_index.begin, tyre.bare_index.end)}));
    }
  }

  void candidates() {
    if (tyre.fit == Fit::sure) return;
    bool any = false;
    for (std::size_t f = 0; f < family_count; ++f) {
      if (f == tyre.family || family_row(f).fits(facts) == Fit::no) continue;
      any = true;
      reading.candidates.push_back(
          say("# (#)", {canonical(text, tyre, family_row(f).family), family_row(f).name}));
    }
    if (!any && tyre.fit == Fit::likely) return;
    reading.assumed.push_back(
        say("Nothing in the text says which kind of tyre this is; taken here: #.",
            {family_row(tyre.family).name}));
  }
};

}  // namespace

void put_sentences(const Gathered& gathered) { Sentences{gathered}.put(); }

}  // namespace treadwater::sidewall
