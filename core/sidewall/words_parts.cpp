// The parts of the picture, and the marks, each with its meaning.
#include "core/quantity/write.hpp"
#include "core/sidewall/words.hpp"
#include "core/standard/load_index.hpp"
#include "core/words/say.hpp"

namespace treadwater::sidewall {
namespace {

using standard::SpeedSymbol;

// In whole numbers, since a sidewall is read a quarter of a million times a second.
std::string scaled_text(std::int32_t scaled) {
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
std::string length_words(Phrase sentence, std::int32_t scaled, bool inches_given) {
  const std::string figure = scaled_text(scaled);
  if (!inches_given) return say(sentence, {joined({figure, " mm"})});
  return say(sentence, {joined({figure, " in (", trimmed(number(scaled) * 25.4, 0), " mm)"})});
}

std::string speed_words(SpeedSymbol symbol, bool in_size) {
  const auto& row = standard::speed_row(symbol);
  const bool above = symbol == SpeedSymbol::ZR || symbol == SpeedSymbol::VR;
  return say(in_size ? (above ? Phrase("Speed letter in the size, #: above # km/h")
                              : Phrase("Speed letter in the size, #: up to # km/h"))
                     : (above ? Phrase("Speed symbol #: above # km/h")
                              : Phrase("Speed symbol #: up to # km/h")),
             {row.letters, fixed(in_kilometres_per_hour(row.speed), 0)});
}

std::string prefix_words(char letter) {
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

std::string construction_words(char letter) {
  switch (letter) {
    case 'R':
      return say("Radial: cords near 90° to the bead");
    case 'B':
      return say("Bias-belted: a cross-ply body under a belt");
    default:
      return say("Cross-ply (diagonal): cords at about 40° to the centre line");
  }
}

// `sentence` takes the index and what it stands for: "Load index #".
std::string index_words(Phrase sentence, int index) {
  const std::string figure = std::to_string(index);
  const auto load = standard::load_of_index(index);
  if (!load) return say(sentence, {figure});
  return say(sentence, {say("#: # kg", {figure, trimmed(in_kilograms(*load), 1)})});
}

struct Parts : Gathered {
  void put() {
    size_parts();
    if (facts.has_service()) service_parts(facts.service, false);
    if (tyre.second_service.load_index >= 0) service_parts(tyre.second_service, true);
    plain_marks();
    for (std::size_t i = 0; i < tyre.mark_count; ++i) mark(tyre.marks[i]);
    for (std::size_t i = 0; i < tyre.leftover_count; ++i) left_over(tyre.leftovers[i]);
  }

  [[gnu::noinline]] void part(Span span, std::string_view id, std::string&& meaning) {
    if (!span.there()) return;
    reading.parts.push_back(
        {text.byte(span.begin), text.end_byte(span.begin, span.end), id, std::move(meaning)});
  }
  [[gnu::noinline]] void plain_part(Span span, std::string_view id, Phrase meaning) {
    if (span.there()) part(span, id, say(meaning));
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
        case Element::width_hundredths:
          part({hit.begin, hit.end}, "section_width",
               length_words(Phrase("Section width #"), hit.scaled,
                            inch && second_meaning() != Second::outer_cm));
          break;
        case Element::width_cm:
          part({hit.begin, hit.end}, "section_width",
               length_words(Phrase("Section width #"), hit.scaled * 10, false));
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
          plain_part({hit.begin, hit.end}, "low_section",
                     hit.letter == 'M' ? Phrase("The maker's letter for the shape of the section")
                                       : Phrase("Low section height for its day"));
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

  // C, CP, LT and M/C, which stand in fields of the Reading.
  void plain_marks() {
    plain_part(tyre.commercial_mark, facts.camper ? "camper" : "commercial",
               facts.camper ? Phrase("CP: commercial tyre for a motor caravan")
                            : Phrase("C: commercial tyre"));
    plain_part(tyre.light_mark, "light_truck", Phrase("LT: light-truck tyre"));
    plain_part(tyre.cycle_mark, "motorcycle", Phrase("Motor-cycle tyre and rim"));
  }

  void mark(const Seen& seen) {
    const MarkRow& row = mark_table().rows[seen.row];
    std::string value = mark_value(text, seen);
    if (row.effect == Effect::label) {
      plain_part(seen.place, "label", Phrase("A word beside the marks, passed over"));
      return;
    }
    std::string meaning;
    if (row.effect == Effect::date) meaning = date_words(value, seen.in_code);
    if (meaning.empty()) meaning = mark_meaning(row, value);
    part(seen.place, row.id, std::string(meaning));
    reading.marks.push_back({row.id, std::move(value), std::move(meaning)});
  }

  void left_over(Span span) {
    std::string value = text.quote(span.begin, span.end);
    plain_part(span, "not_understood", Phrase("Not a mark known here; nothing was made of it"));
    reading.marks.push_back(
        {"not_understood", std::move(value), say("Not a mark known here; nothing was made of it")});
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
};

}  // namespace

void put_parts(const Gathered& gathered) { Parts{gathered}.put(); }

}  // namespace treadwater::sidewall
