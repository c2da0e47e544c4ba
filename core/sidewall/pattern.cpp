#include "core/sidewall/pattern.hpp"

namespace treadwater::sidewall {
namespace {

constexpr std::int32_t scaled(int n) { return n * number_scale; }

constexpr bool is_point(char c) { return c == '.' || c == ','; }

// Letters once written before the construction letter, or alone, for the speed. S, H, V and Z are
// the printed ones (165SR13, 155HR15, 185VR16, 205/55ZR16); Q, T, U and W are accepted alike.
constexpr bool is_size_speed(char c) {
  return c == 'S' || c == 'H' || c == 'V' || c == 'Z' || c == 'T' || c == 'Q' || c == 'U' ||
         c == 'W';
}

// Those also found without a construction letter: 3.00S18, 5.20 S 14, 120/90 V 18.
constexpr bool stands_alone(char c) { return c == 'S' || c == 'H' || c == 'V'; }

constexpr bool is_construction(char c) { return c == 'R' || c == 'D' || c == 'B'; }

struct Attempt {
  std::size_t end = nowhere;
  Why why = Why::other;
};

Attempt failed(const Text& text, std::size_t i, Why why = Why::other) {
  return {nowhere, i >= text.size() ? Why::ended : why};
}

Attempt take(const Number& number, Hit& hit) {
  hit.scaled = number.scaled;
  hit.decimals = static_cast<std::int8_t>(number.decimals > 100 ? 100 : number.decimals);
  return {number.end, Why::other};
}

Attempt within(const Text& text, std::size_t i, const Number& number, std::int32_t low,
               std::int32_t high, Hit& hit) {
  if (number.end == nowhere) return failed(text, i);
  if (text.at(i) == '0') return {nowhere, Why::too_small};  // nothing on a tyre begins with 0
  if (number.scaled < low) return {nowhere, Why::too_small};
  if (number.scaled > high) return {nowhere, Why::too_large};
  return take(number, hit);
}

// The first `count` digits of a longer run.
Number digits_at(const Text& text, std::size_t i, int count) {
  Number number;
  std::int32_t value = 0;
  for (; number.digits < count && is_digit(text.at(i)); ++i) {
    value = value * 10 + (text.at(i) - '0');
    ++number.digits;
  }
  if (number.digits < count) return Number{};
  number.scaled = scaled(value);
  number.end = i;
  return number;
}

Attempt read_prefix(const Text& text, std::size_t i, Hit& hit) {
  std::size_t end = nowhere;
  if (text.starts(i, "HL") || text.starts(i, "LT") || text.starts(i, "ST")) {
    end = i + 2;
  } else if (text.at(i) == 'P' || text.at(i) == 'T') {
    end = i + 1;
  }
  if (end == nowhere || !is_digit(text.at(text.past_space(end)))) return failed(text, i);
  hit.letter = text.at(i);
  return {end, Why::other};
}

// `attempt` 0 takes the whole run of digits, 1 only two of them (205/5516).
Attempt read_series(const Text& text, std::size_t i, int attempt, Hit& hit) {
  Number number = integer_at(text, i);
  if (number.end == nowhere) return failed(text, i);
  if (attempt == 1) {
    if (number.digits != 4) return {nowhere, Why::too_large};
    number = digits_at(text, i, 2);
    hit.dirty = true;
  }
  if (number.digits < 2) {
    return {nowhere, number.end >= text.size() ? Why::unfinished : Why::too_small};
  }
  return within(text, i, number, scaled(20), scaled(105), hit);
}

Attempt read_rim(const Text& text, std::size_t i, Hit& hit) {
  Number number = integer_at(text, i);
  if (number.end == nowhere) return failed(text, i);
  if (number.digits > 2) {
    // R1691V: the rim takes two digits if what is left is a service description.
    if (number.digits > 5 || !service_stands_at(text, i + 2)) return {nowhere, Why::too_large};
    number = digits_at(text, i, 2);
  } else if (is_point(text.at(number.end)) && is_digit(text.at(number.end + 1)) &&
             !is_digit(text.at(number.end + 2))) {
    const int tenth = text.at(number.end + 1) - '0';
    if (tenth == 5 || tenth == 3 || tenth == 1 || tenth == 0) {
      number.scaled += tenth * (number_scale / 10);
      number.decimals = 1;
      number.end += 2;
    } else if (text.at(number.end) == '.') {
      return {nowhere, Why::other};
    }
  }
  if (number.digits == 1 && number.scaled < scaled(4)) {
    return {nowhere, number.scaled == scaled(0) ? Why::too_small : Why::unfinished};
  }
  return within(text, i, number, scaled(4), scaled(32), hit);
}

// The construction, with the speed letter on either side of it where the size has one.
Attempt read_build(const Text& text, std::size_t i, Hit& hit) {
  std::size_t k = i;
  if (is_size_speed(text.at(k))) {
    const std::size_t next = text.past_space(k + 1);
    const char after = text.at(next);
    if (is_construction(after) || after == '-') {
      hit.symbol = text.at(k);
      k = next;
    } else if (is_digit(after) && stands_alone(text.at(k))) {
      hit.symbol = text.at(k);
      return {k + 1, Why::other};
    } else {
      return failed(text, next);
    }
  }
  const char c = text.at(k);
  if (is_construction(c)) {
    hit.letter = c;
    ++k;
    if (text.at(text.past_space(k)) == 'F' && c == 'R') {
      hit.flat = true;
      k = text.past_space(k) + 1;
    }
    const std::size_t next = text.past_space(k);
    const char after = text.at(next);
    if ((after == '-' || after == '.' || after == '/') &&
        is_digit(text.at(text.past_space(next + 1)))) {
      hit.dirty = true;
      k = next + 1;
    }
    return {k, Why::other};
  }
  if (c == '-') {
    hit.letter = c;
    ++k;
    const std::size_t next = text.past_space(k);
    if (hit.symbol == 0 && is_size_speed(text.at(next)) &&
        is_digit(text.at(text.past_space(next + 1)))) {
      hit.symbol = text.at(next);
      k = next + 1;
    }
    return {k, Why::other};
  }
  return failed(text, i);
}

Attempt read_cycle_mark(const Text& text, std::size_t i) {
  if (text.starts(i, "M/C")) return {i + 3, Why::other};
  if (text.starts(i, "MC")) return {i + 2, Why::other};
  return failed(text, i);
}

// 195/55/R16, 205/55-R16, 245/55/18: a character in no pattern. A dash counts as stray only before
// a construction letter; before a number it is the construction itself.
Attempt read_stray(const Text& text, std::size_t i, Hit& hit) {
  const char c = text.at(i);
  if (c != '/' && c != '-' && c != 'X' && !is_point(c)) return failed(text, i);
  if (c == '-' || c == 'X') {
    const std::size_t letter = text.past_space(i + 1);
    const bool spelled =
        is_construction(text.at(letter)) ||
        (is_size_speed(text.at(letter)) && is_construction(text.at(text.past_space(letter + 1))));
    const Number rim = integer_at(text, letter);  // 185/60x13; a single digit counts tyres
    if (!spelled && (c != 'X' || rim.digits != 2)) return failed(text, i);
  }
  hit.dirty = true;
  return {i + 1, Why::other};
}

Attempt read_gap(const Text& text, std::size_t i, Hit& hit) {
  const char c = text.at(i);
  if (c != '-' && c != 'X' && c != '\\' && c != ':' && c != '_' && !is_point(c)) {
    // A space has been skipped on the way here, or nothing stands between.
    hit.dirty = true;
    return {i, Why::other};
  }
  hit.dirty = true;
  return {i + 1, Why::other};
}

Attempt read_letter(const Text& text, std::size_t i, std::string_view letters, Hit& hit) {
  const char c = text.at(i);
  if (letters.find(c) == std::string_view::npos || c == 0) return failed(text, i);
  hit.letter = c;
  return {i + 1, Why::other};
}

constexpr int attempts(Element element) { return element == Element::series ? 2 : 1; }

Attempt read(const Text& text, std::size_t i, const Step& step, int attempt, Hit& hit) {
  switch (step.element) {
    case Element::literal:
      if (text.at(i) != step.character) return failed(text, i);
      return {i + 1, Why::other};
    case Element::prefix:
      return read_prefix(text, i, hit);
    case Element::width_mm: {
      const Number n = integer_at(text, i);
      return within(text, i, n, scaled(60), scaled(800), hit);
    }
    case Element::width_3: {
      const Number n = integer_at(text, i);
      if (n.digits != 5 && n.digits != 7) return failed(text, i);
      return within(text, i, digits_at(text, i, 3), scaled(60), scaled(800), hit);
    }
    case Element::series_2:
      return within(text, i, digits_at(text, i, 2), scaled(20), scaled(99), hit);
    case Element::series:
      return read_series(text, i, attempt, hit);
    case Element::outer_mm:
      return within(text, i, integer_at(text, i), scaled(201), scaled(1200), hit);
    case Element::outer_in: {
      const Number n = decimal_at(text, i);
      if (n.decimals > 2) return {nowhere, Why::other};
      return within(text, i, n, scaled(10), scaled(60), hit);
    }
    case Element::width_in:
    case Element::width_dec: {
      const Number n = decimal_at(text, i);
      if (n.decimals > 2) return {nowhere, Why::other};
      const int most = step.element == Element::width_dec ? 40 : 24;
      return within(text, i, n, scaled(3) / 2, scaled(most), hit);
    }
    case Element::width_hundredths: {
      const Number n = integer_at(text, i);
      if (n.end == nowhere || n.whole() % 5 != 0) return failed(text, i);
      const Attempt got = within(text, i, n, scaled(250), scaled(1400), hit);
      hit.scaled /= 100;
      hit.decimals = 2;
      hit.dirty = true;
      return got;
    }
    case Element::width_cm:
      return within(text, i, integer_at(text, i), scaled(12), scaled(25), hit);
    case Element::width_frac: {
      const Number n = fraction_at(text, i);
      if (n.decimals > 2 && !n.fraction) return {nowhere, Why::other};
      return within(text, i, n, scaled(3) / 2, scaled(8), hit);
    }
    case Element::second_in: {
      const Number n = decimal_at(text, i);
      if (n.decimals > 2) return {nowhere, Why::other};
      return within(text, i, n, scaled(1), scaled(120), hit);
    }
    case Element::low_section:
      return read_letter(text, i, "LM", hit);
    case Element::build:
      return read_build(text, i, hit);
    case Element::cross:
      if (text.at(i) != 'X') return failed(text, i);
      hit.letter = 'X';
      return {i + 1, Why::other};
    case Element::rim:
      return read_rim(text, i, hit);
    case Element::rim_mm:
      return within(text, i, integer_at(text, i), scaled(315), scaled(560), hit);
    case Element::on_cycle:
      return read_cycle_mark(text, i);
    case Element::stray:
      return read_stray(text, i, hit);
    case Element::gap:
      return read_gap(text, i, hit);
    case Element::load_letter:
      return read_letter(text, i, "ABCDEFGHJKLMN", hit);
    case Element::us_build:  // touching: in 70 J B60-13 the J is a speed symbol
      if (i == 0 || !is_letter(text.at(i - 1))) return failed(text, i);
      return read_letter(text, i, "RB", hit);
    case Element::cycle_letter:
      return read_letter(text, i, "HJLMNPRTUV", hit);
  }
  return {};
}

struct Matcher {
  const Text& text;
  const Pattern& pattern;
  Hits& hits;
  Miss* miss;
  std::size_t begin;
  std::size_t shape;

  void note(std::size_t step, std::size_t position, int depth, Why why) const {
    if (miss == nullptr || depth < miss->depth) return;
    if (depth == miss->depth && position <= miss->position) return;
    miss->depth = depth;
    miss->position = position;
    miss->expected = pattern.steps[step].element;
    miss->character = pattern.steps[step].character;
    miss->why = why;
    miss->begin = begin;
    miss->shape = shape;
    miss->hits = hits;
  }

  std::size_t from(std::size_t step, std::size_t at, int depth) const {
    if (step == pattern.size) return at;
    const Step& now = pattern.steps[step];
    const std::size_t i = step == 0 ? at : text.past_space(at);
    for (int attempt = 0; attempt < attempts(now.element); ++attempt) {
      Hit hit;
      const Attempt got = read(text, i, now, attempt, hit);
      if (got.end == nowhere) {
        if (attempt == 0 && !now.optional) note(step, i, depth, got.why);
        continue;
      }
      hit.begin = static_cast<std::uint16_t>(i);
      hit.end = static_cast<std::uint16_t>(got.end);
      hit.present = true;
      hits[step] = hit;
      const std::size_t end = from(step + 1, got.end, depth + 1);
      if (end != nowhere) return end;
    }
    hits[step] = Hit{};
    if (now.optional) return from(step + 1, at, depth);
    return nowhere;
  }
};

void write_build(const Hit& hit, Line& out) {
  if (hit.letter == '-') {
    out.add('-');
    if (hit.symbol != 0) out.add(hit.symbol);
    return;
  }
  if (hit.symbol != 0) out.add(hit.symbol);
  if (hit.letter != 0) out.add(hit.letter);
  if (hit.flat) out.add('F');
}

}  // namespace

std::size_t match(const Text& text, const Pattern& pattern, std::size_t begin, Hits& hits,
                  Miss* miss, std::size_t shape) {
  return Matcher{text, pattern, hits, miss, begin, shape}.from(0, begin, 0);
}

void write(const Pattern& pattern, const Hits& hits, Line& out) {
  bool space = false;
  for (std::size_t i = 0; i < pattern.size; ++i) {
    const Step& step = pattern.steps[i];
    const Hit& hit = hits[i];
    space = space || step.space;
    if (!hit.there() || step.element == Element::stray || step.element == Element::on_cycle) {
      continue;
    }
    const bool dash = step.element == Element::build && hit.letter == '-';
    if (space && !out.empty() && !dash) out.add(' ');
    space = false;
    switch (step.element) {
      case Element::literal:
        out.add(step.character == 'X' ? 'x' : step.character);
        break;
      case Element::cross:
        out.add('x');
        break;
      case Element::prefix:
        if (hit.letter == 'H')
          out.add("HL ");
        else if (hit.letter == 'L')
          out.add("LT");
        else if (hit.letter == 'S')
          out.add("ST");
        else
          out.add(hit.letter);
        break;
      case Element::width_in:
      case Element::width_hundredths:
        out.add_scaled(hit.scaled, hit.decimals == 0 ? 0 : 2);
        break;
      case Element::width_dec:
      case Element::second_in:
        out.add_scaled(hit.scaled, hit.decimals);
        break;
      case Element::outer_in:
        out.add_scaled(hit.scaled, hit.decimals == 0 ? 0 : 1);
        break;
      case Element::width_frac:
        out.add_fraction(hit.scaled);
        break;
      case Element::width_mm:
      case Element::width_cm:
      case Element::width_3:
      case Element::series:
      case Element::series_2:
      case Element::outer_mm:
      case Element::rim:
      case Element::rim_mm:
        out.add_scaled(hit.scaled, 0);
        break;
      case Element::build:
        write_build(hit, out);
        break;
      case Element::low_section:
      case Element::load_letter:
      case Element::us_build:
      case Element::cycle_letter:
        out.add(hit.letter);
        break;
      case Element::on_cycle:
      case Element::gap:
      case Element::stray:
        break;
    }
  }
}

}  // namespace treadwater::sidewall
