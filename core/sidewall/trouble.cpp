// What to say when a text cannot be read: what was read, where it stopped, what to enter.
#include "core/quantity/write.hpp"
#include "core/sidewall/tyre.hpp"
#include "core/words/say.hpp"

namespace treadwater::sidewall {
namespace {

constexpr Phrase symbols_sentence =
    Phrase("The symbols are A1 to A8, B to G, J to N, P to U, H, V, W and Y.");

// Below it, 250 kg, a car's index is a slip too: common practice.
constexpr int least_of_a_car = 60;

bool reads_as_size(const std::string& spelled) { return !canonical_if_it_reads(spelled).empty(); }

// The word found where something else was expected.
std::string word_at(const Text& text, std::size_t i) {
  std::size_t end = i;
  while (end < text.size() && end < i + 12 && text.at(end) != ' ') ++end;
  return text.quote(i, end);
}

// The 20 of 825-20: completed it would be plainly another tyre.
bool is_rest_of_a_word(const Text& text, std::size_t i) {
  for (; i > 0 && text.at(i - 1) != ' '; --i) {
    if (is_digit(text.at(i - 1))) return true;
  }
  return false;
}

// The size so far, up to the element that failed, with `rest` in place of what follows.
std::string completed(const Text& text, const Miss& miss, std::string_view rest) {
  std::string out;
  if (is_rest_of_a_word(text, miss.begin)) return out;
  for (std::size_t k = miss.begin; k < miss.position; ++k) out.push_back(text.at(k));
  while (!out.empty() && out.back() == ' ') out.pop_back();
  out += rest;
  return reads_as_size(out) ? out : std::string();
}

struct Digits {
  std::size_t begin = nowhere;
  std::size_t end = nowhere;
};

// A number with a slash after it that is no width: 9999/55.
Digits width_out_of_range(const Text& text) {
  for (std::size_t i = 0; i < text.size(); ++i) {
    if (!is_digit(text.at(i)) || (i > 0 && is_digit(text.at(i - 1)))) continue;
    const Number width = integer_at(text, i);
    if (text.at(width.end) != '/') continue;
    const Number series = integer_at(text, width.end + 1);
    if (series.digits != 2 && series.digits != 3) continue;
    if (width.digits >= 3 && (width.whole() > 800 || width.whole() < 60)) return {i, width.end};
    if (width.digits == 2 && width.whole() > 40 && width.whole() < 60) return {i, width.end};
    return {};
  }
  return {};
}

bool has_letter_or_digit(const Text& text) {
  for (std::size_t i = 0; i < text.size(); ++i) {
    if (is_letter(text.at(i)) || is_digit(text.at(i))) return true;
  }
  return false;
}

Trouble make(std::string_view code, std::size_t position, std::string sentence,
             std::string nearest) {
  Trouble out;
  out.code = code;
  out.position = position;
  out.text = std::move(sentence);
  out.nearest = std::move(nearest);
  return out;
}

// Repairs one number: drops a digit, or else puts a usual value in its place.
std::string with_number(const Text& text, const Miss& miss, std::string_view usual) {
  const Number number = integer_at(text, miss.position);
  const std::size_t end = number.end == nowhere ? miss.position : number.end;
  const auto assembled = [&](std::string_view middle) {
    std::string out;
    for (std::size_t k = miss.begin; k < miss.position; ++k) out.push_back(text.at(k));
    out += middle;
    for (std::size_t k = end; k < text.size(); ++k) {
      const char c = text.at(k);
      out.push_back(c > ' ' && c < '\x7f' ? c : ' ');
    }
    while (!out.empty() && out.back() == ' ') out.pop_back();
    return out;
  };
  std::string repaired = assembled(usual);
  if (reads_as_size(repaired)) return repaired;
  return completed(text, miss, usual);
}

Trouble not_a_size(const Text& text) {
  if (!has_letter_or_digit(text)) {
    return make("no_letters", 0,
                say("There is no letter or digit here: copy the size from the sidewall, such as "
                    "205/55 R16 91V."),
                "");
  }
  std::size_t i = text.past_space(0);
  return make("not_a_size", text.byte(i),
              say("No tyre size was found: at the start \"#\" stands, and a size such as 205/55 "
                  "R16, 165 R13, 5.60-15 or 120/70 ZR17 was expected.",
                  {word_at(text, i)}),
              "");
}

Trouble series_trouble(const Text& text, const Miss& miss) {
  const Number number = integer_at(text, miss.position);
  if (number.end == nowhere || miss.why == Why::ended || miss.why == Why::unfinished)
    return make("incomplete", text.byte(miss.position),
                say("After # the aspect ratio is missing or unfinished: two digits such as 55.",
                    {text.quote(miss.begin, miss.position)}),
                canonical_if_it_reads(completed(text, miss, "55 R16")));
  return make("series_out_of_range", text.byte(miss.position),
              say("The number after the slash is #: an aspect ratio lies between 20 and 105, and "
                  "an overall diameter in mm above 200.",
                  {text.quote(miss.position, number.end)}),
              canonical_if_it_reads(with_number(text, miss, "55")));
}

Trouble farm_trouble(const Text& text, std::size_t begin, std::size_t end) {
  return make("farm_tyre", text.byte(begin),
              say("# is the size of a farm or works tyre, and those are not read: only tyres of "
                  "cars, vans, trucks and motorcycles.",
                  {text.quote(begin, end)}),
              "");
}

// Rims over 32 are a farm tractor's: 16.9R34, 480/70R34 (common practice).
bool is_farm_rim(const Miss& miss, const Number& rim) {
  if (rim.digits != 2 || rim.whole() < 33 || rim.whole() > 54) return false;
  Size size;
  size.shape = static_cast<Shape>(miss.shape);
  size.hits = miss.hits;
  const Facts facts = facts_of(size);
  if (size.shape == Shape::metric) return facts.width >= 230 * number_scale;
  return size.shape == Shape::inch && facts.width >= 7 * number_scale;
}

bool is_farm_size_at(const Text& text, std::size_t begin, std::size_t end) {
  Size size;
  for (const Shape shape : {Shape::inch, Shape::metric}) {
    size.shape = shape;
    size.hits = {};
    const std::size_t got = match(text, shape_row(shape).pattern, begin, size.hits, nullptr, 0);
    if (got == end && is_farm_size(facts_of(size))) return true;
  }
  return false;
}

Trouble rim_trouble(const Text& text, const Miss& miss) {
  const Number number = integer_at(text, miss.position);
  const std::string so_far = text.quote(miss.begin, miss.position);
  if (number.end == nowhere) {
    if (miss.position >= text.size()) {
      std::string nearest =
          canonical_if_it_reads(completed(text, miss, miss.depth > 3 ? "16" : " R16"));
      if (nearest.empty()) nearest = canonical_if_it_reads(completed(text, miss, "13"));
      return make("incomplete", text.byte(miss.position),
                  say("After # the text ends: the rim diameter is missing, as in #.",
                      {so_far, nearest.empty() ? "205/55 R16" : nearest}),
                  nearest);
    }
    return make("rim_expected", text.byte(miss.position),
                say("After # the rim diameter was expected, such as R16, but \"#\" stands there.",
                    {so_far, word_at(text, miss.position)}),
                canonical_if_it_reads(completed(text, miss, " R16")));
  }
  if (miss.why == Why::unfinished)
    return make("rim_incomplete", text.byte(miss.position),
                say("The rim diameter # looks unfinished: rims have codes such as 13, 16 or "
                    "22.5.",
                    {text.quote(miss.position, number.end)}),
                canonical_if_it_reads(with_number(text, miss, "16")));
  if (is_farm_rim(miss, number)) return farm_trouble(text, miss.begin, number.end);
  return make("rim_out_of_range", text.byte(miss.position),
              say("The rim diameter reads #: a rim has a code from 4 to 32, or 315 to 560 in "
                  "millimetres.",
                  {text.quote(miss.position, number.end)}),
              canonical_if_it_reads(with_number(text, miss, "16")));
}

// 520-13 is most likely 5.20-13, and 500/525-16 5.00/5.25-16.
std::string with_points(const Text& text, std::size_t begin, std::size_t end) {
  std::string out;
  for (std::size_t k = begin; k < end;) {
    const Number number = integer_at(text, k);
    if (number.end == nowhere) {
      out.push_back(text.at(k++));
      continue;
    }
    for (; k < number.end; ++k) {
      if (number.digits >= 3 && k + 2 == number.end) out.push_back('.');
      out.push_back(text.at(k));
    }
  }
  return out;
}

}  // namespace

Trouble trouble_without_size(const Text& text) {
  if (const Digits width = width_out_of_range(text); width.begin != nowhere) {
    Miss miss;
    miss.begin = width.begin;
    miss.position = width.begin;
    return make("width_out_of_range", text.byte(width.begin),
                say("The section width reads #: a width lies between 60 and 800 mm, or under 24 "
                    "in inches.",
                    {text.quote(width.begin, width.end)}),
                canonical_if_it_reads(with_number(text, miss, "205")));
  }
  Miss miss;
  for (const bool strong : {true, false}) {
    for (std::size_t i = 0; i < text.size(); ++i) {
      // The loose shapes fit almost anything; they would only blur the sentence.
      if (goes_on_from_a_number(text, i)) continue;
      if (strong || miss.depth < 2) static_cast<void>(find_size_at(text, i, strong, &miss));
    }
  }
  if (miss.why == Why::fits_nothing) return trouble_no_family(text, miss.begin, miss.position);
  const bool numbers_only = miss.depth >= 1 && miss.position >= text.size();
  if (miss.depth < 2 && !numbers_only) return not_a_size(text);
  switch (miss.expected) {
    case Element::series:
    case Element::series_2:
    case Element::outer_mm:
      return series_trouble(text, miss);
    case Element::rim:
    case Element::rim_mm:
      return rim_trouble(text, miss);
    default:
      break;
  }
  if (miss.depth < 1) return not_a_size(text);
  return make("incomplete", text.byte(miss.position),
              say("After # more was expected: a size goes on with its aspect ratio and rim, as in "
                  "205/55 R16.",
                  {text.quote(miss.begin, miss.position)}),
              canonical_if_it_reads(completed(text, miss, "/55 R16")));
}

Trouble trouble_no_family(const Text& text, std::size_t begin, std::size_t end) {
  if (is_farm_size_at(text, begin, end)) return farm_trouble(text, begin, end);
  const std::string pointed = with_points(text, begin, end);
  return make("no_such_family", text.byte(begin),
              say("The size # is spelled like one, but no car, truck or motor-cycle tyre goes by "
                  "these numbers and marks together. Farm and works tyres are not read.",
                  {text.quote(begin, end)}),
              canonical_if_it_reads(pointed));
}

Trouble trouble_two_sizes(const Text& text, const Tyre& tyre, const Size& second) {
  Tyre other;
  other.size = second;
  other.facts = facts_of(second);
  const std::size_t first = tyre.size.begin < second.begin ? second.begin : tyre.size.begin;
  return make(
      "two_sizes", text.byte(first),
      say("Two sizes stand in the text, # and #: read one tyre at a time, front and rear "
          "apart.",
          {text.quote(tyre.size.begin, tyre.size.end), text.quote(second.begin, second.end)}),
      canonical_if_it_reads(text.quote(tyre.size.begin, tyre.size.end)));
}

Trouble trouble_impossible_index(const Text& text, const Tyre& tyre) {
  const Service& service = tyre.facts.service;
  const std::string size = canonical_size(tyre, family_row(tyre.family).family);
  const auto load = standard::load_of_index(service.load_index);
  std::string nearest;
  if (service.load_index >= 100 + least_load_index && service.load_index < 200) {  // 191V for 91V
    nearest = size + " " + std::to_string(service.load_index - 100);
    nearest += standard::speed_row(service.symbol).letters;
    if (service.load_index - 100 < least_of_a_car) nearest = size;
  }
  return make("load_index_too_high", text.byte(service.index_span.begin),
              say("The load index # stands for # kg, and no tyre of the size # carries that. Read "
                  "the index again; a car's lies near 91.",
                  {std::to_string(service.load_index),
                   load ? trimmed(in_kilograms(*load), 0) : std::string(), size}),
              canonical_if_it_reads(nearest.empty() ? size : nearest));
}

Trouble trouble_service(const Text& text, const Tyre& tyre, const ServiceRead& got,
                        std::size_t at) {
  const Service& service = got.service;
  const std::string size = text.quote(tyre.size.begin, tyre.size.end);
  const std::string whole = text.quote(at, got.end);
  if (got.state == ServiceState::no_such_symbol) {
    const char letter = text.at(service.symbol_span.begin);
    const std::string_view letters(&letter, 1);
    std::string sentence =
        letter == 'Z'
            ? say("In # the Z is no speed symbol (Z stands only in the size, as in ZR16).", {whole})
            : say("In # the # is no speed symbol.", {whole, letters});
    add_item(sentence, say(symbols_sentence), " ");
    std::string nearest;
    const bool index_known = service.load_index <= standard::greatest_load_index;
    if (index_known) {
      add_item(
          sentence,
          say("The load index # itself is an ordinary one.", {std::to_string(service.load_index)}),
          " ");
      nearest = size;
      nearest.push_back(' ');
      nearest += text.quote(service.index_span.begin, service.symbol_span.begin);
      nearest.push_back(letter == 'I' ? 'J' : letter == 'O' ? 'Q' : 'V');
    }
    return make("unknown_speed_symbol", text.byte(service.symbol_span.begin), std::move(sentence),
                canonical_if_it_reads(nearest.empty() ? size : nearest));
  }
  const bool first = service.load_index > standard::greatest_load_index;
  const Span span = first ? service.index_span : service.twin_span;
  return make("unknown_load_index", text.byte(span.begin),
              say("In # the load index # does not exist: load indices run from 0 to 279, and a "
                  "car's lie near 91.",
                  {whole, std::to_string(first ? service.load_index : service.twin)}),
              canonical_if_it_reads(size));
}

}  // namespace treadwater::sidewall
