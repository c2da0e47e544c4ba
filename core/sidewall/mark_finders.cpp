#include "core/sidewall/mark_finders.hpp"

namespace treadwater::sidewall {

// E4 or e11 in its circle or rectangle, with the approval number if it is beside it.
std::size_t find_approval(const Text& text, std::size_t i, Span& value) {
  if (text.at(i) != 'E') return nowhere;
  const Number country = integer_at(text, i + 1);
  if (country.end == nowhere || country.digits > 2 || country.whole() < 1 || country.whole() > 67 ||
      is_letter(text.at(country.end))) {
    return nowhere;
  }
  std::size_t end = country.end;
  std::size_t k = text.at(end) == '-' ? end + 1 : text.past_space(end);
  const auto stands_alone = [&](const Number& number) {
    return !is_word(text.at(number.end)) && text.at(number.end) != '/';
  };
  for (int part = 0; part < 2; ++part) {  // 02 123456 or 0212345, sometimes R-
    const Number number = integer_at(text, k);
    if (number.digits < 2 || number.digits > 8 || (part == 0 && number.digits == 3) ||
        !stands_alone(number)) {
      break;
    }
    if (number.digits < 5 && part == 0) {
      const Number next = integer_at(text, text.past_space(number.end));
      if (number.digits != 2 || next.digits < 4 || next.digits > 8 || !stands_alone(next)) break;
    }
    end = number.end;
    k = text.past_space(end);
    if (number.digits >= 5) break;
  }
  value = {i, end};
  return end;
}

// S, S1, S2 (sound), W (wet grip), R, R1, R2 (rolling resistance) run together: S2WR2.
std::size_t find_emissions(const Text& text, std::size_t i, Span& value) {
  if (text.at(i) != 'S') return nowhere;
  std::size_t k = i + 1;
  const auto stage = [&] {
    if (text.at(k) == '1' || text.at(k) == '2' || text.at(k) == '3') ++k;
  };
  stage();
  if (text.at(k) != 'W') return nowhere;
  ++k;
  stage();
  if (text.at(k) == 'R') {
    ++k;
    stage();
  }
  if (text.at(k) == 'B') ++k;
  if (is_word(text.at(k))) return nowhere;
  value = {i, k};
  return k;
}

// Bare quality grades as dealers write them: UTQG 400 AA A, 400 A B.
std::size_t find_quality_grades(const Text& text, std::size_t i, Span& value) {
  std::size_t k = i;
  if (text.starts(k, "UTQG")) k = text.past_space(k + 4);
  if (text.at(k) == ':') k = text.past_space(k + 1);
  const Number wear = integer_at(text, k);
  if (wear.digits < 2 || wear.digits > 4 || wear.whole() % 20 != 0 || wear.whole() < 60) {
    return nowhere;
  }
  const std::size_t begin = k;
  k = text.past_space(wear.end);
  const auto grade = [](char c) { return c == 'A' || c == 'B' || c == 'C'; };
  if (!grade(text.at(k))) return nowhere;
  k += text.starts(k, "AA") ? 2U : 1U;
  if (text.at(k) != ' ' && text.at(k) != '/') return nowhere;
  ++k;
  if (!grade(text.at(k)) || is_word(text.at(k + 1))) return nowhere;
  value = {begin, k + 1};
  return k + 1;
}

// Four digits alone whose first two are a week.
std::size_t find_date(const Text& text, std::size_t i, Span& value) {
  const Number number = integer_at(text, i);
  if (number.digits != 4 || is_word(text.at(number.end))) return nowhere;
  if (i >= 2 && text.at(i - 1) == '/' && is_digit(text.at(i - 2))) return nowhere;  // 148/1451
  if ((text.at(number.end) == '.' || text.at(number.end) == ',') &&
      is_digit(text.at(number.end + 1))) {
    return nowhere;
  }
  const std::int32_t week = number.whole() / 100;
  if (week < 1 || week > 53) return nowhere;
  value = {i, number.end};
  return number.end;
}

std::size_t find_dot(const Text& text, std::size_t i, Span&) {
  return text.starts(i, "DOT") ? i + 3 : nowhere;
}

// DOT and up to five groups of at most 13 symbols, the last of which is the date.
void find_identification(const Text& text, MarkFound& found) {
  const std::size_t begin = text.past_space(found.end);
  std::size_t k = begin;
  std::size_t symbols = 0;
  for (int group = 0; group < 6; ++group) {
    std::size_t end = k;
    bool digits = true;
    while (is_digit(text.at(end)) || is_letter(text.at(end))) {
      digits = digits && is_digit(text.at(end));
      ++end;
    }
    const std::size_t length = end - k;
    symbols += length;
    if (length == 0 || symbols > 13 || text.at(end) == '/' || text.at(end) == foreign) return;
    if (text.starts(k, "DOT") || (group > 0 && length > 1 && touching_mark_at(text, k))) return;
    const bool tail4 = length >= 7 && is_digit(text.at(end - 1)) && is_digit(text.at(end - 2)) &&
                       is_digit(text.at(end - 3)) && is_digit(text.at(end - 4));
    const bool last = digits && (length == 4 || length == 3);
    if (last || tail4) {
      const std::size_t size = tail4 || length == 4 ? 4 : 3;
      const std::size_t before = found.date.end - found.date.begin;
      if (size < before) return;
      found.date = {end - size, end};
      found.value = {begin, end};
      found.end = end;
    }
    k = text.past_space(end);
    if (text.at(k) == '-') k = text.past_space(k + 1);
  }
}

}  // namespace treadwater::sidewall
