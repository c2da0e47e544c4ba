// Finding the size in a text: of all shapes that fit somewhere, the longest at the first place.
#include "core/sidewall/tyre.hpp"

namespace treadwater::sidewall {
namespace {

// Marks that people run together with the size after them; not TL, whose L may be a 1 (Tl25/80).
bool is_word_before_a_size(const Text& text, std::size_t begin, std::size_t end) {
  for (const std::string_view word : {"X", "TT", "RF", "REINF", "TUBELESS", "SIZE", "TYRE", "TIRE",
                                      "FRONT", "REAR", "TYRES", "TIRES"}) {
    if (end - begin == word.size() && text.starts(begin, word)) return true;
  }
  return false;
}

// After letters a size may begin only if they are a whole word of such marks, or of another script:
// the 5/55 of 2O5/55 is no size. 2x205/55 R16 counts tyres.
bool may_begin_after_letters(const Text& text, std::size_t i) {
  std::size_t begin = i;
  bool all_foreign = true;
  while (begin > 0 && is_word(text.at(begin - 1))) {
    --begin;
    all_foreign = all_foreign && text.at(begin) == foreign;
  }
  if (all_foreign) return i - begin > 1;
  const bool count = i - begin == 2 && is_digit(text.at(begin)) && text.at(begin + 1) == 'X';
  return count || is_word_before_a_size(text, begin, i);
}

// A size may begin where a word begins.
bool may_begin(const Text& text, std::size_t i) {
  const char c = text.at(i);
  const char before = i == 0 ? ' ' : text.at(i - 1);
  if (is_letter(c)) return !is_word(before);
  if (!is_digit(c) || is_digit(before)) return false;
  if (is_word(before)) return may_begin_after_letters(text, i);
  const bool after_point = (before == '.' || before == ',') && i >= 2 && is_digit(text.at(i - 2));
  return !after_point;
}

// 165HR4O0, 175/70 5R 13: a letter after the rim that goes on to more digits, and is no mark.
bool goes_on_in_letters(const Text& text, std::size_t end) {
  const char c = text.at(end);
  if (!is_letter(c) || is_letter(text.at(end + 1))) return false;
  if (c == 'R' && is_digit(text.at(text.past_space(end + 1)))) return true;
  if (!is_digit(text.at(end + 1))) return false;
  return find_mark(text, end).end == nowhere && !service_stands_at(text, end + 1);
}

// R22.S, 22_5: what stands for the .5 of a truck's rim must not be passed over.
bool a_half_follows(const Text& text, std::size_t end) {
  const char c = text.at(end);
  const char next = text.at(end + 1);
  if (c == '_') return is_digit(next) && !service_stands_at(text, end + 1);
  return (c == '.' || c == ',') && (is_digit(next) || (next == 'S' && !is_word(text.at(end + 2))));
}

bool ends_well(const Text& text, Shape shape, std::size_t end) {
  const char c = text.at(end);
  if (is_digit(c)) return service_stands_at(text, end);
  if (goes_on_in_letters(text, end)) return false;
  if (a_half_follows(text, end)) return false;
  const std::size_t unit = text.past_space(end);  // 90/88 Q 6PR and 105 H 475 kPa hold no size
  for (const std::string_view word : {"PR", "PLY", "KPA", "PSI", "BAR", "KG", "LB"}) {
    if (text.starts(unit, word)) return false;
  }
  const bool only_an_x = shape == Shape::outer_in_crossed || shape == Shape::inch_pointless_crossed;
  if (only_an_x && is_letter(text.at(end))) return false;  // 15x4T, 815x10S
  if (shape == Shape::outer_mm_crossed || shape == Shape::outer_in_crossed) {
    const std::size_t k = text.past_space(end);
    const char next = text.at(k);
    if ((next == 'X' || next == '-' || next == 'R' || next == '/') &&
        is_digit(text.at(text.past_space(k + 1)))) {
      return false;
    }
  }
  return true;
}

}  // namespace

const Hit* find_hit(const Size& size, Element element) {
  const Pattern& pattern = shape_row(size.shape).pattern;
  for (std::size_t i = 0; i < pattern.size; ++i) {
    if (pattern.steps[i].element == element && size.hits[i].there()) return &size.hits[i];
  }
  return nullptr;
}

Facts facts_of(const Size& size) {
  Facts facts;
  const bool pointless =
      size.shape == Shape::inch_pointless || size.shape == Shape::inch_pointless_crossed;
  facts.shape = pointless ? shape_row(size.shape).canonical : size.shape;
  char us_build = 0;
  const Pattern& pattern = shape_row(size.shape).pattern;
  for (std::size_t i = 0; i < pattern.size; ++i) {
    const Hit& hit = size.hits[i];
    if (!hit.there()) continue;
    switch (pattern.steps[i].element) {
      case Element::prefix:
        facts.prefix = hit.letter;
        break;
      case Element::width_mm:
      case Element::width_3:
      case Element::width_in:
      case Element::width_dec:
      case Element::width_frac:
      case Element::width_hundredths:
        facts.width = hit.scaled;
        facts.width_decimals = hit.decimals;
        break;
      case Element::width_cm:
        facts.width = hit.scaled * 10;
        break;
      case Element::series:
      case Element::series_2:
        facts.series = hit.scaled;
        break;
      case Element::outer_mm:
      case Element::outer_in:
      case Element::second_in:
        facts.second = hit.scaled;
        facts.second_decimals = hit.decimals;
        break;
      case Element::rim:
      case Element::rim_mm:
        facts.rim = hit.scaled;
        break;
      case Element::build:
        facts.construction = hit.letter;
        facts.size_symbol = hit.symbol;
        break;
      case Element::cross:
        facts.construction = 'X';
        break;
      case Element::us_build:
        us_build = hit.letter;
        break;
      case Element::load_letter:
      case Element::cycle_letter:
        facts.letter = hit.letter;
        break;
      case Element::low_section:
        facts.low_section = true;
        break;
      case Element::on_cycle:
        facts.motorcycle = true;
        break;
      case Element::literal:
      case Element::stray:
      case Element::gap:
        break;
    }
  }
  if (us_build != 0) facts.construction = us_build;  // the dash of FR78-15 only parts the numbers
  return facts;
}

bool any_family_fits(const Facts& facts) {
  for (std::size_t i = 0; i < family_count; ++i) {
    if (family_row(i).fits(facts) != Fit::no) return true;
  }
  return false;
}

Size find_size_at(const Text& text, std::size_t i, bool strong, Miss* miss) {
  Size best;
  if (!may_begin(text, i)) return best;
  const FirstCharacters here = bit_of(text.at(i));
  // What follows a leading number rules most shapes out at once; not while looking for the furthest
  // miss, which needs them all.
  FirstCharacters next = anything;
  if (here == any_digit && miss == nullptr) {
    next = bit_of(text.at(text.past_space(decimal_at(text, i).end)));
  }
  Size size;
  size.begin = i;
  for (std::size_t s = 0; s < static_cast<std::size_t>(Shape::count); ++s) {
    const ShapeRow& row = shape_row(static_cast<Shape>(s));
    if (row.strong != strong || (row.pattern.first & here) == 0) continue;
    if ((row.pattern.second & next) == 0) continue;
    size.end = match(text, row.pattern, i, size.hits, miss, s);
    if (size.end == nowhere || !ends_well(text, row.shape, size.end)) continue;
    if (best.found() && size.end <= best.end) continue;
    size.shape = row.shape;
    if (any_family_fits(facts_of(size))) {
      best = size;
    } else if (miss != nullptr && row.strong && miss->why != Why::fits_nothing) {
      miss->why = Why::fits_nothing;
      miss->depth = static_cast<int>(longest_pattern) + 1;  // deeper than any other
      miss->begin = i;
      miss->position = size.end;
    }
  }
  return best;
}

// 120 in 205/120 R16: what follows a number and a slash is no size of its own. A single digit and
// an x before it are a count of tyres: 2 x 205/55 R16.
bool goes_on_from_a_number(const Text& text, std::size_t i) {
  const auto before = [&text](std::size_t k) { return k > 0 && text.at(k - 1) == ' ' ? k - 1 : k; };
  const std::size_t k = before(i);
  if (k == 0 || (text.at(k - 1) != '/' && text.at(k - 1) != 'X')) return false;
  const std::size_t number = before(k - 1);
  if (number == 0) return false;
  if (text.at(k - 1) == '/' && is_letter(text.at(number - 1))) {  // 6.4O/6.50-13
    for (std::size_t w = number; w > 0 && is_word(text.at(w - 1)); --w) {
      if (is_digit(text.at(w - 1))) return true;
    }
    return false;
  }
  if (!is_digit(text.at(number - 1))) return false;
  const bool count = text.at(k - 1) == 'X' && (number == 1 || text.at(number - 2) == ' ');
  return !count;
}

Size find_size(const Text& text, Miss* miss) {
  for (const bool strong : {true, false}) {
    for (std::size_t i = 0; i < text.size(); ++i) {
      if (goes_on_from_a_number(text, i)) continue;
      const Size size = find_size_at(text, i, strong, miss);
      if (size.found()) return size;
    }
  }
  return {};
}

}  // namespace treadwater::sidewall
