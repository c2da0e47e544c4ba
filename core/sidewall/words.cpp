// From what was gathered to a Reading: values, the parts of the picture, and the plain sentences
// on what the text leaves unsaid and what was assumed.
#include "core/quantity/write.hpp"
#include "core/sidewall/tyre.hpp"
#include "core/standard/load_index.hpp"
#include "core/words/say.hpp"

namespace treadwater::sidewall {
namespace {

using standard::SpeedSymbol;

double number(std::int32_t scaled) { return static_cast<double>(scaled) / number_scale; }

bool width_in_inches(Shape shape) {
  switch (shape) {
    case Shape::flotation:
    case Shape::flotation_slash:
    case Shape::inch:
    case Shape::inch_crossed:
    case Shape::inch_fraction:
    case Shape::inch_slash:
    case Shape::outer_in_crossed:
      return true;
    default:
      return false;
  }
}

bool rim_in_millimetres(Shape shape) {
  return shape == Shape::metric_rim_mm || shape == Shape::no_series_rim_mm ||
         shape == Shape::crossed_rim_mm || shape == Shape::outer_dashed;
}

SpeedSymbol symbol_in_size(char letter) {
  if (letter == 'Z') return SpeedSymbol::ZR;
  if (letter == 'V') return SpeedSymbol::VR;
  const char letters[1] = {letter};
  const auto found = standard::find_speed_symbol(std::string_view(letters, 1));
  return found ? *found : SpeedSymbol::S;
}

struct Writer {
  const Text& text;
  const Tyre& tyre;
  const Facts& facts;
  Reading reading;

  // ---- parts ----

  [[gnu::noinline]] void part(Span span, std::string_view id, std::string&& meaning) {
    if (!span.there()) return;
    reading.parts.push_back(
        {text.byte(span.begin), text.end_byte(span.begin, span.end), id, std::move(meaning)});
  }
  [[gnu::noinline]] void plain_part(Span span, std::string_view id, Phrase meaning) {
    if (span.there()) part(span, id, say(meaning));
  }
  [[gnu::noinline]] static void add(std::vector<std::string>& where, Phrase sentence) {
    where.push_back(say(sentence));
  }

  // In whole numbers, since a sidewall is read a quarter of a million times a second.
  static std::string scaled_text(std::int32_t scaled) {
    std::string text = std::to_string(scaled / 10000);
    std::int32_t rest = scaled % 10000;
    if (rest > 0) text += decimal_sign();
    for (std::int32_t place = 1000; rest > 0; place /= 10) {
      text += static_cast<char>('0' + rest / place);
      rest %= place;
    }
    return text;
  }

  // `sentence` takes the number and its unit: "Section width #".
  static std::string length_words(Phrase sentence, std::int32_t scaled, bool inches_given) {
    const std::string figure = scaled_text(scaled);
    if (!inches_given) return say(sentence, {joined({figure, " mm"})});
    return say(sentence, {joined({figure, " in (", trimmed(number(scaled) * 25.4, 0), " mm)"})});
  }

  static std::string speed_words(SpeedSymbol symbol, bool in_size) {
    const auto& row = standard::speed_row(symbol);
    const bool above = symbol == SpeedSymbol::ZR || symbol == SpeedSymbol::VR;
    return say(in_size ? (above ? Phrase("Speed letter in the size, #: above # km/h")
                                : Phrase("Speed letter in the size, #: up to # km/h"))
                       : (above ? Phrase("Speed symbol #: above # km/h")
                                : Phrase("Speed symbol #: up to # km/h")),
               {row.letters, fixed(in_kilometres_per_hour(row.speed), 0)});
  }

  void size_parts() {
    const Pattern& pattern = shape_row(tyre.size.shape).pattern;
    const bool inch = width_in_inches(tyre.size.shape);
    for (std::size_t i = 0; i < pattern.size; ++i) {
      const Hit& hit = tyre.size.hits[i];
      if (!hit.there()) continue;
      switch (pattern.steps[i].element) {
        case Element::literal:
          if (pattern.steps[i].character == 'M' && is_letter(pattern.steps[i].character)) {
            plain_part({hit.begin, hit.end}, "motorcycle", Phrase("Motor-cycle tyre"));
          }
          break;
        case Element::prefix:
          part({hit.begin, hit.end}, "prefix", prefix_words(hit.letter));
          break;
        case Element::width_mm:
        case Element::width_3:
        case Element::width_in:
        case Element::width_dec:
        case Element::width_frac:
          part({hit.begin, hit.end}, "section_width",
               length_words(Phrase("Section width #"), hit.scaled,
                            inch && second_meaning() != Second::outer_cm));
          break;
        case Element::series:
        case Element::series_2:
          series_part(hit);
          break;
        case Element::second_in:
          second_part(hit);
          break;
        case Element::outer_mm:
          part({hit.begin, hit.end}, "overall_diameter",
               length_words(Phrase("Overall diameter #"), hit.scaled, false));
          break;
        case Element::outer_in:
          part({hit.begin, hit.end}, "overall_diameter",
               length_words(Phrase("Overall diameter #"), hit.scaled, true));
          break;
        case Element::low_section:
          plain_part({hit.begin, hit.end}, "low_section", Phrase("Low section height for its day"));
          break;
        case Element::build:
          build_parts(hit);
          break;
        case Element::us_build:
          part({hit.begin, hit.end}, "construction", construction_words(hit.letter));
          break;
        case Element::rim:
          rim_part(hit);
          break;
        case Element::rim_mm:
          part({hit.begin, hit.end}, "rim_diameter",
               length_words(Phrase("Rim diameter #"), hit.scaled, false));
          break;
        case Element::on_cycle:
          plain_part({hit.begin, hit.end}, "motorcycle", Phrase("Motor-cycle tyre and rim"));
          break;
        case Element::load_letter:
          plain_part({hit.begin, hit.end}, "load_letter",
                     Phrase("Load letter: says load and volume, not width; A least, N most"));
          break;
        case Element::cycle_letter:
          plain_part({hit.begin, hit.end}, "width_letter",
                     Phrase("Width letter of the motor-cycle series"));
          break;
        case Element::cross:
        case Element::stray:
        case Element::gap:
          break;
      }
    }
  }

  Second second_meaning() const {
    return tyre.size.shape == Shape::inch_slash ? second_of(facts) : Second::series;
  }

  static std::string prefix_words(char letter) {
    switch (letter) {
      case 'H':
        return say("HL: high load, more than extra load in the same size");
      case 'P':
        return say("P: car tyre to the North American standard");
      case 'L':
        return say("LT: light-truck tyre");
      case 'S':
        return say("ST: special trailer tyre, for trailers only");
      default:
        return say("T: temporary-use spare");
    }
  }

  static std::string construction_words(char letter) {
    switch (letter) {
      case 'R':
        return say("Radial: cords near 90° to the bead");
      case 'B':
        return say("Bias-belted: a cross-ply body under a belt");
      default:
        return say("Cross-ply (diagonal): cords at about 40° to the centre line");
    }
  }

  void series_part(const Hit& hit) {
    const std::string series = scaled_text(hit.scaled);
    part({hit.begin, hit.end}, "aspect_ratio",
         say("Aspect ratio #: the sidewall is # % of the section width high", {series, series}));
  }

  void second_part(const Hit& hit) {
    switch (second_meaning()) {
      case Second::series:
        return series_part(hit);
      case Second::outer_in:
        return part({hit.begin, hit.end}, "overall_diameter",
                    length_words(Phrase("Overall diameter #"), hit.scaled, true));
      case Second::outer_cm:
        return part({hit.begin, hit.end}, "overall_diameter",
                    length_words(Phrase("Overall diameter #"), hit.scaled * 10, false));
      case Second::second_width:
        return part({hit.begin, hit.end}, "second_width",
                    length_words(Phrase("A second width it may stand for, #"), hit.scaled, true));
    }
  }

  void build_parts(const Hit& hit) {
    std::size_t k = hit.begin;
    const auto letter_part = [&](char c, std::string_view id, std::string meaning) {
      while (k < hit.end && text.at(k) != c) ++k;
      if (k < hit.end) part({k, k + 1}, id, std::move(meaning));
      ++k;
    };
    const bool symbol_last = hit.letter == '-' && text.at(hit.begin) == '-';
    if (hit.symbol != 0 && !symbol_last) {
      letter_part(hit.symbol, "size_symbol", speed_words(symbol_in_size(hit.symbol), true));
    }
    if (hit.letter != 0) letter_part(hit.letter, "construction", construction_words(hit.letter));
    if (hit.flat) {
      letter_part('F', "run_flat", say("F after the R: run-flat, a self-supporting sidewall"));
    }
    if (hit.symbol != 0 && symbol_last) {
      letter_part(hit.symbol, "size_symbol", speed_words(symbol_in_size(hit.symbol), true));
    }
  }

  void rim_part(const Hit& hit) {
    part({hit.begin, hit.end}, "rim_diameter",
         say("Rim diameter code # (# mm)",
             {scaled_text(hit.scaled), scaled_text(hit.scaled / 10 * 254)}));
  }

  // `sentence` takes the index and what it stands for: "Load index #".
  static std::string index_words(Phrase sentence, int index) {
    const std::string figure = std::to_string(index);
    const auto load = standard::load_of_index(index);
    if (!load) return say(sentence, {figure});
    return say(sentence, {say("#: # kg", {figure, trimmed(in_kilograms(*load), 1)})});
  }

  void service_parts(const Service& service, bool second) {
    part(service.index_span, second ? "second_load_index" : "load_index",
         index_words(
             service.twin >= 0 ? Phrase("Load index of a single tyre, #") : Phrase("Load index #"),
             service.load_index));
    if (service.twin >= 0) {
      part(service.twin_span, second ? "second_twin_load_index" : "twin_load_index",
           index_words(Phrase("Load index of each of two tyres side by side, #"), service.twin));
    }
    std::string speed = speed_words(service.symbol, false);
    if (!second && reading.service->above_symbol) {
      speed = say("#; the brackets say more than that: ask the maker", {speed});
    }
    part(service.symbol_span, second ? "second_speed_symbol" : "speed_symbol", std::move(speed));
  }

  // ---- values ----

  void sizes() {
    const Shape shape = tyre.size.shape;
    const Second second = second_meaning();
    const double per_unit = !width_in_inches(shape)      ? 1.0
                            : second == Second::outer_cm ? 10.0
                                                         : 25.4;
    if (facts.width > 0) {
      reading.section_width = per_unit == 25.4 ? inches(number(facts.width))
                                               : millimetres(number(facts.width) * per_unit);
    }
    if (facts.series > 0) reading.aspect_percent = number(facts.series);
    if (facts.rim > 0) {
      reading.rim_diameter =
          rim_in_millimetres(shape) ? millimetres(number(facts.rim)) : inches(number(facts.rim));
    }
    if (facts.second > 0) {
      switch (shape) {
        case Shape::outer_metric:
        case Shape::outer_dashed:
        case Shape::outer_mm_crossed:
          reading.stated_outer_diameter = millimetres(number(facts.second));
          break;
        case Shape::inch_slash:
          if (second == Second::series) reading.aspect_percent = number(facts.second);
          if (second == Second::outer_in) {
            reading.stated_outer_diameter = inches(number(facts.second));
          }
          if (second == Second::outer_cm) {
            reading.stated_outer_diameter = millimetres(number(facts.second) * 10.0);
          }
          break;
        default:
          reading.stated_outer_diameter = inches(number(facts.second));
          break;
      }
    }
    switch (facts.construction) {
      case 'R':
        reading.construction = Construction::radial;
        break;
      case 'B':
        reading.construction = Construction::bias_belted;
        break;
      case 'D':
      case '-':
      case 'X':
        reading.construction = Construction::cross_ply;
        break;
      default:
        break;
    }
    settle_construction();
    if (facts.size_symbol != 0) reading.size_symbol = symbol_in_size(facts.size_symbol);
    if (const Hit* build = find_hit(tyre.size, Element::build)) reading.run_flat = build->flat;
  }

  // In inches no letter means cross-ply (3.00S18). Before a rim in millimetres, and in competition
  // sizes in centimetres, a dash was put for radials too: it says nothing.
  void settle_construction() {
    const Shape shape = tyre.size.shape;
    if (facts.construction == 0 && width_in_inches(shape) && shape != Shape::outer_in_crossed) {
      reading.construction = Construction::cross_ply;
    }
    const bool says_nothing = shape == Shape::metric_rim_mm || shape == Shape::no_series_rim_mm ||
                              shape == Shape::crossed_rim_mm || shape == Shape::outer_metric ||
                              second_meaning() == Second::outer_cm;
    if (says_nothing && (facts.construction == '-' || facts.construction == 'X')) {
      reading.construction.reset();
    }
  }

  ServiceDescription description(const Service& service) const {
    ServiceDescription out;
    out.load_index = service.load_index;
    if (service.twin >= 0) out.twin_load_index = service.twin;
    out.symbol = service.symbol;
    return out;
  }

  void services() {
    if (facts.has_service()) {
      reading.service = description(facts.service);
      const bool may_exceed = facts.size_symbol == 'Z' || facts.size_symbol == 'V';
      reading.service->above_symbol = facts.service.bracketed && may_exceed;
      service_parts(facts.service, false);
    }
    if (tyre.second_service.load_index >= 0) {
      reading.second_service = description(tyre.second_service);
      service_parts(tyre.second_service, true);
      if (!may_have_two()) reading.service = lower_of(*reading.service, *reading.second_service);
    }
  }

  // Truck and van tyres may be marked for a second load at another speed; others have one only.
  bool may_have_two() const {
    return reading.family == Family::truck_inch || reading.family == Family::truck_metric ||
           reading.family == Family::commercial;
  }

  static ServiceDescription lower_of(ServiceDescription one, const ServiceDescription& other) {
    one.load_index = std::min(one.load_index, other.load_index);
    if (standard::speed_row(other.symbol).speed < standard::speed_row(one.symbol).speed)
      one.symbol = other.symbol;
    return one;
  }

  double number_of(const Seen& seen) const {
    return number(decimal_at(text, seen.value.begin).scaled);
  }

  void flags() {
    reading.high_load = facts.prefix == 'H';
    reading.temporary_spare = facts.prefix == 'T';
    reading.commercial = facts.commercial || facts.camper;
    reading.camper = facts.camper;
    reading.light_truck = facts.light_truck || facts.prefix == 'L';
    reading.motorcycle = facts.motorcycle || reading.family == Family::motorcycle_metric ||
                         reading.family == Family::motorcycle_inch ||
                         reading.family == Family::motorcycle_alpha;
    plain_part(tyre.commercial_mark, facts.camper ? "camper" : "commercial",
               facts.camper ? Phrase("CP: commercial tyre for a motor caravan")
                            : Phrase("C: commercial tyre"));
    plain_part(tyre.light_mark, "light_truck", Phrase("LT: light-truck tyre"));
    plain_part(tyre.cycle_mark, "motorcycle", Phrase("Motor-cycle tyre and rim"));
    if (facts.ply > 0) {
      reading.ply_rating = facts.ply;
    } else if (ply_rating_of(facts.load_range) > 0) {
      reading.ply_rating = ply_rating_of(facts.load_range);
    }
  }

  void marks() {
    for (std::size_t i = 0; i < tyre.mark_count; ++i) {
      const Seen& seen = tyre.marks[i];
      const MarkRow& row = mark_table().rows[seen.row];
      std::string value = mark_value(text, seen);
      if (row.effect == Effect::label) {
        plain_part(seen.place, "label", Phrase("A word beside the marks, passed over"));
        continue;
      }
      std::string meaning;
      switch (row.effect) {
        case Effect::extra_load:
          reading.extra_load = true;
          break;
        case Effect::run_flat:
          reading.run_flat = true;
          break;
        case Effect::radial:
          if (!reading.construction || facts.construction == '-' || facts.construction == 'X' ||
              facts.construction == 0) {
            reading.construction = Construction::radial;
          }
          break;
        case Effect::cross_ply:
          if (!reading.construction) reading.construction = Construction::cross_ply;
          break;
        case Effect::bias_belted:
          if (!reading.construction) reading.construction = Construction::bias_belted;
          break;
        case Effect::kilopascals:
          if (!reading.marked_pressure) reading.marked_pressure = kilopascals(number_of(seen));
          break;
        case Effect::psi:
          if (!reading.marked_pressure) reading.marked_pressure = psi(number_of(seen));
          break;
        case Effect::bar:
          if (!reading.marked_pressure) reading.marked_pressure = bars(number_of(seen));
          break;
        case Effect::date:
          meaning = date_words(value, seen.in_code);
          break;
        default:
          break;
      }
      if (meaning.empty()) meaning = mark_meaning(row, value);
      part(seen.place, row.id, std::string(meaning));
      reading.marks.push_back({row.id, std::move(value), std::move(meaning)});
    }
    for (std::size_t i = 0; i < tyre.leftover_count; ++i) {
      const Span span = tyre.leftovers[i];
      std::string value = text.quote(span.begin, span.end);
      plain_part(span, "not_understood", Phrase("Not a mark known here; nothing was made of it"));
      reading.marks.push_back({"not_understood", std::move(value),
                               say("Not a mark known here; nothing was made of it")});
    }
  }

  std::string date_words(const std::string& value, bool in_code) {
    std::string meaning = date_meaning(value);
    if (meaning.empty()) {
      reading.unsaid.push_back(
          say("The date code # has no such week: weeks run from 01 to 53.", {value}));
      return say("A date code whose week is none: weeks run from 01 to 53");
    }
    if (reading.date_code.empty()) reading.date_code = value;
    if (!in_code && value.size() == 4)
      reading.assumed.push_back(say("The four digits # were taken for the date code: #.",
                                    {value, within_sentence(meaning)}));
    return meaning;
  }

  // ---- sentences ----

  bool usually_has_service() const {
    switch (reading.family) {
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

  void say_unsaid() {
    auto& unsaid = reading.unsaid;
    if (!facts.has_service()) {
      if (tyre.bare_index.there()) {
        unsaid.push_back(
            say("No speed symbol stands after #, so it was not taken for the load index.",
                {text.quote(tyre.bare_index.begin, tyre.bare_index.end)}));
      }
      if (reading.size_symbol == SpeedSymbol::ZR) {
        add(unsaid, Phrase("ZR without a service description says only above 240 km/h: ask the "
                           "tyre maker for the "
                           "greatest load and speed."));
      } else if (reading.size_symbol == SpeedSymbol::VR) {
        add(unsaid, Phrase("V in the size without a service description says only above 210 km/h, "
                           "and no load: "
                           "ask the tyre maker."));
      } else if (reading.size_symbol) {
        add(unsaid, Phrase("The load index is not in the text."));
      } else if (usually_has_service()) {
        add(unsaid,
            Phrase(
                "The service description (load index and speed symbol, such as 91V) is not in the "
                "text."));
      } else {
        add(unsaid, Phrase("The text gives no load index and no speed symbol."));
      }
    }
    if (!reading.construction && reading.family == Family::beaded_edge) {
      add(unsaid, Phrase("The construction is not marked."));
    } else if (!reading.construction && (facts.construction == '-' || facts.construction == 'X')) {
      add(unsaid,
          Phrase(
              "The dash does not settle the construction: sizes of this kind were written so for "
              "radial "
              "and cross-ply tyres. Look for RADIAL on the tyre."));
    } else if (!reading.construction) {
      add(unsaid, Phrase("The construction is not marked. Strictly a metric size without R, B or D "
                         "is cross-ply; "
                         "people also leave the R out. Look for RADIAL on the tyre."));
    }
    switch (reading.family) {
      case Family::inch_cross_ply:
      case Family::truck_inch:
        if (!reading.aspect_percent) {
          add(unsaid, Phrase("A size in inches does not give the height of the sidewall: 78 to 98 "
                             "% of the width, "
                             "by age. Measure the overall diameter."));
        }
        break;
      case Family::motorcycle_inch:
        add(unsaid,
            Phrase(
                "A size in inches does not give the height of the sidewall: about as high as wide, "
                "less "
                "for low sections. Measure the overall diameter."));
        break;
      case Family::us_alphanumeric:
        add(unsaid,
            Phrase(
                "The load letter does not give the section width: measure it, or find the maker's "
                "table."));
        break;
      case Family::millimetre_rim:
        if (!reading.aspect_percent) {
          add(unsaid, Phrase("The series is not in the size: measure the overall diameter."));
        }
        break;
      case Family::beaded_edge: {
        const double gap = in_millimetres(*reading.stated_outer_diameter) -
                           2.0 * in_millimetres(*reading.section_width);
        unsaid.push_back(
            say("The bead diameter is not in the size: overall diameter less twice the section "
                "gives about # mm.",
                {trimmed(gap, 0)}));
        break;
      }
      default:
        break;
    }
  }

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

  void say_assumed() {
    auto& assumed = reading.assumed;
    if (dirty()) {
      assumed.push_back(say("The size was read as #, though it is not spelled that way.",
                            {canonical_size(tyre, reading.family)}));
    }
    if (tyre.size_twice)
      add(assumed, Phrase("The size stands in the text twice; it was read once."));
    if (facts.service.bracketed && facts.has_service() && !reading.service->above_symbol) {
      add(assumed, Phrase("The brackets round the service description were passed over: they mean "
                          "more than the "
                          "symbol only on a ZR size."));
    }
    if (reading.family == Family::metric_no_series ||
        (reading.family == Family::commercial && !reading.aspect_percent)) {
      reading.aspect_percent = 82.0;
      add(assumed, Phrase("A metric size without a series has a nominal aspect ratio of 82 % (80 % "
                          "counts as the "
                          "same)."));
    }
    if (reading.family == Family::metric_car && facts.construction == '-' &&
        reading.construction == Construction::cross_ply) {
      add(assumed,
          Phrase(
              "The dash before the rim was read as cross-ply, as it is moulded; if the tyre says "
              "RADIAL, write R."));
    }
    if (reading.family == Family::commercial && !reading.commercial) {
      add(assumed,
          Phrase("Two load indices belong to a commercial tyre; the C or LT is not in the text."));
    }
    if (reading.family == Family::motorcycle_alpha) {
      if (const int width = cycle_letter_width(facts.letter)) {
        reading.section_width = millimetres(width);
        assumed.push_back(
            say("The width letter was taken as a section of about # mm, from tables of equivalent "
                "sizes.",
                {std::to_string(width)}));
      } else {
        add(reading.unsaid, Phrase("The width letter has no agreed width in millimetres."));
      }
    }
    if (reading.family == Family::beaded_edge) {
      add(assumed,
          Phrase(
              "Two numbers with x were read as overall diameter and section. A beaded-edge tyre is "
              "held "
              "on its rim by its pressure alone."));
    }
    if (tyre.size.shape == Shape::inch_slash) {
      switch (second_meaning()) {
        case Second::series:
          add(assumed, Phrase("The number after the slash was read as the aspect ratio."));
          break;
        case Second::outer_in:
          add(assumed, Phrase("The number after the slash was read as the overall diameter in "
                              "inches."));
          break;
        case Second::outer_cm:
          add(assumed, Phrase("Both numbers were read as centimetres: section width and overall "
                              "diameter."));
          break;
        case Second::second_width:
          add(assumed, Phrase("The number after the slash was read as a second section width; the "
                              "overall diameter is not known."));
          break;
      }
    }
    if (facts.is_dual()) {
      const int gap = facts.service.load_index - facts.service.twin;
      if (gap < 0 || gap > 8) {
        add(assumed, Phrase("The first load index is for a single tyre and the second for twins, "
                            "which lies up to "
                            "8 lower as a rule; these two do not. Check them."));
      }
    }
    if (tyre.second_service.load_index >= 0 && !may_have_two()) {
      add(assumed,
          Phrase(
              "Two service descriptions stand in the text; the lower load and speed were used."));
    }
    if (facts.has_service() && tyre.bare_index.there()) {
      reading.unsaid.push_back(say("No speed symbol stands after #.",
                                   {text.quote(tyre.bare_index.begin, tyre.bare_index.end)}));
    }
  }

  void say_candidates() {
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

  Reading write() {
    reading.family = family_row(tyre.family).family;
    reading.canonical = canonical(text, tyre, reading.family);
    reading.parts.reserve(12);
    sizes();
    size_parts();
    services();
    flags();
    marks();
    say_unsaid();
    say_assumed();
    say_candidates();
    sort_parts();
    return std::move(reading);
  }

  void sort_parts() {
    auto& parts = reading.parts;
    for (std::size_t i = 1; i < parts.size(); ++i) {
      for (std::size_t k = i; k > 0 && parts[k].begin < parts[k - 1].begin; --k) {
        std::swap(parts[k], parts[k - 1]);
      }
    }
  }
};

}  // namespace

Reading put_into_words(const Text& text, const Tyre& tyre) {
  return Writer{text, tyre, tyre.facts, {}}.write();
}

Phrase family_name(Family family) {
  for (std::size_t i = 0; i < family_count; ++i) {
    if (family_row(i).family == family) return family_row(i).name;
  }
  return Phrase("tyre");
}

Phrase construction_name(Construction construction) {
  switch (construction) {
    case Construction::radial:
      return Phrase("radial");
    case Construction::cross_ply:
      return Phrase("cross-ply");
    case Construction::bias_belted:
      return Phrase("bias-belted");
  }
  return Phrase("radial");
}

}  // namespace treadwater::sidewall
