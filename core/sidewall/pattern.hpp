// How a size is spelled, as a pattern that both reads and writes.
//
// A pattern is a string compiled at build time: `{width_mm}/{series} {build}{rim}`. A name in
// braces is an element (list below), `?` makes it optional; anything else must match as written. On
// reading, spaces between any two elements mean nothing; on writing, they go where the pattern has
// them. Elements know their own range, so 205/120 and R99 fail at the element.
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <utility>

#include "core/sidewall/text.hpp"

namespace treadwater::sidewall {

enum class Element : std::uint8_t {
  literal,           // one character, as in the pattern
  prefix,            // HL, P, LT, ST, T
  width_mm,          // 60..800
  width_3,           // the first three digits of a run such as 2055516
  series,            // 20..105
  series_2,          // the next two of such a run
  outer_mm,          // 201..1200, overall diameter in mm
  outer_in,          // 10..60, overall diameter in inches
  width_in,          // 1.5..24, inches
  width_dec,         // 1.5..40, written with the decimals it came with: 9.2, 4.80
  width_hundredths,  // 250..1400, a width in inches without its point: 825
  width_cm,          // 12..25, a width in centimetres
  width_frac,        // 1.5..8, inches, with a fraction
  second_in,         // 1..120, what follows a slash after an inch width: decided later
  low_section,       // L or M after an inch width
  build,             // R, RF, ZR, ZRF, HR, D, B, -, -V, V, SR ...
  cross,             // x between an inch width and its rim
  rim,               // code 4..32, .5 and the like allowed
  rim_mm,            // 315..560 mm
  on_cycle,          // M/C before the rim
  stray,             // a slash, point, dash or x in no pattern, before the construction letter
  gap,               // what people write for the slash: space, dash, point, x
  load_letter,       // A..N: US load letter
  us_build,          // R or B after the US letter
  cycle_letter,      // H, J, L, M, N, P, R, T, U, V after M
};

struct Step {
  Element element = Element::literal;
  char character = 0;  // of a literal
  bool optional = false;
  bool space = false;  // written before it
};

inline constexpr std::size_t longest_pattern = 12;

// Which characters something may begin with: a bit for each capital, one for digits, and so on.
using FirstCharacters = std::uint32_t;
constexpr FirstCharacters any_digit = 1U << 26U;
constexpr FirstCharacters slash_bit = 1U << 27U;
constexpr FirstCharacters dash_bit = 1U << 28U;
constexpr FirstCharacters any_other = 1U << 29U;
constexpr FirstCharacters anything = ~0U;
constexpr FirstCharacters bit_of(char c) {
  if (is_letter(c)) return 1U << static_cast<unsigned>(c - 'A');
  return is_digit(c) ? any_digit : c == '/' ? slash_bit : c == '-' ? dash_bit : any_other;
}

struct Pattern {
  std::array<Step, longest_pattern> steps{};
  std::size_t size = 0;
  FirstCharacters first = 0;   // what it may begin with
  FirstCharacters second = 0;  // what may follow its leading number
};

// Not constexpr: reaching it while a pattern is compiled stops the build.
void this_pattern_is_misspelled();

constexpr Element element_named(std::string_view name) {
  constexpr std::pair<std::string_view, Element> names[] = {
      {"prefix", Element::prefix},
      {"width_mm", Element::width_mm},
      {"width_3", Element::width_3},
      {"series_2", Element::series_2},
      {"width_dec", Element::width_dec},
      {"series", Element::series},
      {"outer_mm", Element::outer_mm},
      {"outer_in", Element::outer_in},
      {"width_in", Element::width_in},
      {"width_hundredths", Element::width_hundredths},
      {"width_cm", Element::width_cm},
      {"width_frac", Element::width_frac},
      {"second_in", Element::second_in},
      {"low_section", Element::low_section},
      {"build", Element::build},
      {"cross", Element::cross},
      {"rim", Element::rim},
      {"rim_mm", Element::rim_mm},
      {"on_cycle", Element::on_cycle},
      {"stray", Element::stray},
      {"gap", Element::gap},
      {"load_letter", Element::load_letter},
      {"us_build", Element::us_build},
      {"cycle_letter", Element::cycle_letter},
  };
  for (const auto& [known, element] : names) {
    if (known == name) return element;
  }
  this_pattern_is_misspelled();
  return Element::literal;
}

constexpr FirstCharacters bits_of(std::string_view characters) {
  FirstCharacters bits = 0;
  for (const char c : characters) bits |= bit_of(c);
  return bits;
}

constexpr FirstCharacters first_of(const Step& step) {
  switch (step.element) {
    case Element::literal:
      return bit_of(step.character);
    case Element::prefix:
      return bits_of("HPLST");
    case Element::low_section:
      return bits_of("LM");
    case Element::load_letter:
      return bits_of("ABCDEFGHJKLMN");
    case Element::us_build:
      return bits_of("RB");
    case Element::cycle_letter:
      return bits_of("HJLMNPRTUV");
    case Element::build:
      return bits_of("QSTUHVZWRDB-");
    case Element::cross:
      return bit_of('X');
    case Element::on_cycle:
      return bit_of('M');
    case Element::stray:
      return bits_of("X/-") | any_other;
    case Element::gap:
    case Element::series_2:
      return anything;  // may take nothing, or share the same number
    default:
      return any_digit;
  }
}

// What may come at step `from`, optional steps skipped.
constexpr FirstCharacters first_from(const Pattern& pattern, std::size_t from) {
  FirstCharacters bits = 0;
  for (std::size_t i = from; i < pattern.size; ++i) {
    bits |= first_of(pattern.steps[i]);
    if (!pattern.steps[i].optional) break;
  }
  return bits;
}

constexpr Pattern pattern(std::string_view spelling) {
  Pattern out;
  bool space = false;
  for (std::size_t i = 0; i < spelling.size(); ++i) {
    if (spelling[i] == ' ') {
      space = true;
      continue;
    }
    Step step;
    step.space = space;
    space = false;
    if (spelling[i] == '{') {
      std::size_t end = i + 1;
      while (spelling[end] != '}') ++end;
      std::string_view name = spelling.substr(i + 1, end - i - 1);
      if (name.back() == '?') {
        step.optional = true;
        name.remove_suffix(1);
      }
      step.element = element_named(name);
      i = end;
    } else {
      step.character = spelling[i];
    }
    if (out.size == longest_pattern) this_pattern_is_misspelled();
    out.steps[out.size++] = step;
  }
  out.first = first_from(out, 0);
  const std::size_t number = out.steps[0].element == Element::prefix ? 1 : 0;
  const bool fraction = out.steps[number].element == Element::width_frac;  // 2 1/4: more number
  out.second = fraction ? anything : first_from(out, number + 1);
  return out;
}

// What an element took from the text.
struct Hit {
  std::int32_t scaled = 0;  // of a number
  std::uint16_t begin = 0;  // characters of the Text; begin == end: an optional element not there
  std::uint16_t end = 0;
  std::int8_t decimals = 0;
  char letter = 0;     // build: R, D, B, -, X or 0; prefix: its first letter; else the letter
  char symbol = 0;     // build: the speed letter in the size, or 0
  bool flat = false;   // build: F after the R
  bool dirty = false;  // something here that the pattern does not have
  bool present = false;
  bool there() const { return present; }
};

using Hits = std::array<Hit, longest_pattern>;

// fits_nothing: a whole size was read, and no family has such numbers.
enum class Why : std::uint8_t { ended, other, too_small, too_large, unfinished, fits_nothing };

// The furthest point that any pattern reached before failing, for the sentence in a Trouble.
struct Miss {
  int depth = -1;            // elements that fitted
  std::size_t position = 0;  // after `fits_nothing`: the end of the size
  Element expected = Element::literal;
  char character = 0;
  Why why = Why::other;
  std::size_t begin = 0;  // of the size
  std::size_t shape = 0;
  Hits hits{};
};

// Reads the pattern at `begin`; returns the end, or `nowhere`. `miss` may be null.
std::size_t match(const Text& text, const Pattern& pattern, std::size_t begin, Hits& hits,
                  Miss* miss, std::size_t shape);

// A number straight after a rim (R1691V) belongs to a service description if there is one.
bool service_stands_at(const Text& text, std::size_t i);

void write(const Pattern& pattern, const Hits& hits, Line& out);

}  // namespace treadwater::sidewall
