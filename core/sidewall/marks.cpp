#include "core/sidewall/marks.hpp"

#include "core/sidewall/mark_finders.hpp"
#include "core/sidewall/pattern.hpp"

namespace treadwater::sidewall {
namespace {

constexpr Standing published = Standing::published;
constexpr Standing secondary = Standing::secondary;
constexpr Standing memory = Standing::memory;
constexpr Standing common = Standing::common_practice;

constexpr MarkRow rows[] = {
#include "core/sidewall/marks.inc"
};

constexpr std::size_t row_count = sizeof(rows) / sizeof(rows[0]);
static_assert(row_count < 256, "rows are numbered in a byte");

// What each row may begin with, so that most rows are skipped at once.
constexpr FirstCharacters first_of(const MarkRow& row) {
  if (row.effect == Effect::approval) return bit_of('E');
  if (row.id == "r117") return bit_of('S');
  if (row.id == "utqg") return bit_of('U') | any_digit;
  if (row.effect == Effect::date) return any_digit;
  if (row.effect == Effect::dot) return bit_of('D');
  FirstCharacters bits = 0;
  bool begins = true;
  for (const char c : row.spellings) {
    if (begins) bits |= c == '#' ? any_digit : bit_of(c);
    begins = c == '|';
  }
  return bits;
}

struct FirstTable {
  FirstCharacters bits[row_count] = {};
};

constexpr FirstTable make_first_table() {
  FirstTable table;
  for (std::size_t r = 0; r < row_count; ++r) table.bits[r] = first_of(rows[r]);
  return table;
}

constexpr FirstTable firsts = make_first_table();

constexpr bool is_gap(char c) { return c == ' ' || c == '.' || c == ':' || c == '-' || c == '='; }

// Grades and load ranges: one capital, or AA.
std::size_t short_word(const Text& text, std::size_t i) {
  std::size_t k = i;
  while (is_letter(text.at(k)) && k < i + 2) ++k;
  if (k == i || is_word(text.at(k))) return nowhere;
  return k;
}

bool ends_well(const Text& text, std::size_t end) {
  return !is_word(text.at(end)) || touching_mark_at(text, end);
}

std::size_t match_spelling(const Text& text, std::size_t i, std::string_view spelling,
                           Span& value) {
  std::size_t k = i;
  for (const char c : spelling) {
    if (c == ' ') {
      for (int n = 0; n < 3 && is_gap(text.at(k)); ++n) ++k;
    } else if (c == '#') {
      const Number number = decimal_at(text, k);
      if (number.end == nowhere || number.digits > 5) return nowhere;
      value = {k, number.end};
      k = number.end;
    } else if (c == '@') {
      const std::size_t end = short_word(text, k);
      if (end == nowhere) return nowhere;
      value = {k, end};
      k = end;
    } else if (text.at(k) == c) {
      ++k;
    } else {
      return nowhere;
    }
  }
  return ends_well(text, k) ? k : nowhere;
}

constexpr bool may_begin(std::string_view spelling, char c) {
  const char first = spelling.front();
  return first == '#' ? is_digit(c) : first == c;
}

std::size_t match_row(const Text& text, std::size_t i, const MarkRow& row, Span& value) {
  if (row.find != nullptr) return row.find(text, i, value);
  const char c = text.at(i);
  std::string_view rest = row.spellings;
  if (rest.empty()) return nowhere;
  while (!rest.empty()) {
    const std::size_t bar = rest.find('|');
    const std::string_view spelling = rest.substr(0, bar);
    if (may_begin(spelling, c)) {
      const std::size_t end = match_spelling(text, i, spelling, value);
      if (end != nowhere) return end;
    }
    if (bar == std::string_view::npos) break;
    rest.remove_prefix(bar + 1);
  }
  return nowhere;
}

}  // namespace

MarkTable mark_table() { return {rows, row_count}; }

std::uint8_t mark_row(std::string_view id) {
  for (std::uint8_t r = 0; r < row_count; ++r) {
    if (rows[r].id == id) return r;
  }
  return 0;
}

MarkFound find_mark(const Text& text, std::size_t i) {
  const FirstCharacters here = bit_of(text.at(i));
  for (std::uint8_t r = 0; r < row_count; ++r) {
    if ((firsts.bits[r] & here) == 0) continue;
    MarkFound found;
    found.row = r;
    found.end = match_row(text, i, rows[r], found.value);
    if (found.end == nowhere) continue;
    if (rows[r].effect == Effect::dot) {
      const bool glued = is_word(text.at(found.end));  // DOTEJ3JFEH4019
      find_identification(text, found);
      if (glued && !found.date.there()) continue;
    }
    return found;
  }
  return {};
}

bool touching_mark_at(const Text& text, std::size_t i) {
  for (const std::string_view word : {"XL", "TL", "TT", "M+S", "M&S", "RF", "REINF", "EXTRA", "M/C",
                                      "TUBELESS", "RUNFLAT", "3PMSF"}) {
    if (text.starts(i, word) && !is_word(text.at(i + word.size()))) return true;
  }
  return false;
}

}  // namespace treadwater::sidewall
