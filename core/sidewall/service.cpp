#include "core/sidewall/service.hpp"

#include "core/sidewall/marks.hpp"
#include "core/sidewall/pattern.hpp"

namespace treadwater::sidewall {
namespace {

// Letters that no speed symbol uses (there is no I, O or X; Z is only in ZR).
constexpr bool never_a_symbol(char c) { return c == 'I' || c == 'O' || c == 'X' || c == 'Z'; }

bool ends_here(const Text& text, std::size_t i) {
  const char c = text.at(i);
  const bool joins = c == '.' || c == '+' || c == '&' || c == '/';
  if (joins && is_letter(text.at(text.past_space(i + 1)))) return false;  // P.S.I., M+S, M/C
  return !is_word(c) || touching_mark_at(text, i);
}

}  // namespace

ServiceRead read_service(const Text& text, std::size_t i) {
  ServiceRead out;
  Service& service = out.service;
  std::size_t k = i;
  const char bracket = text.at(k);
  service.bracketed = bracket == '(' || bracket == '[';
  if (service.bracketed) k = text.past_space(k + 1);

  const Number index = integer_at(text, k);
  if (index.end == nowhere || index.digits > 3 || text.at(k) == '0' ||
      index.whole() < least_load_index)
    return out;
  service.load_index = index.whole();
  service.index_span = {k, index.end};
  k = index.end;

  const std::size_t mark = text.past_space(k);
  if (text.at(mark) == '/' || text.at(mark) == '-') {
    const std::size_t second = text.past_space(mark + 1);
    const Number twin = integer_at(text, second);
    if ((twin.digits == 2 || twin.digits == 3) && text.at(second) != '0') {
      service.twin = twin.whole();
      service.twin_span = {second, twin.end};
      k = twin.end;
    }
  }

  std::size_t letter = text.past_space(k);
  out.touching = letter == k;
  const bool opens = text.at(letter) == '(' || text.at(letter) == '[';
  if (opens && !service.bracketed) {  // 94(Y)
    service.bracketed = true;
    letter = text.past_space(letter + 1);
  }
  const char c = text.at(letter);
  if (!is_letter(c)) return out;
  std::size_t end = letter + 1;
  char symbol[2] = {c, 0};
  std::size_t length = 1;
  if (c == 'A' && text.at(end) >= '1' && text.at(end) <= '8') {
    symbol[1] = text.at(end);
    length = 2;
    ++end;
  }
  service.symbol_span = {letter, end};
  if (service.bracketed) {
    const std::size_t close = text.past_space(end);
    if (text.at(close) != ')' && text.at(close) != ']') return out;
    end = close + 1;
  } else if (!ends_here(text, end)) {
    return out;
  }

  if (never_a_symbol(c)) {
    if (out.touching) out.state = ServiceState::no_such_symbol;
    out.end = end;
    return out;
  }
  const auto found = standard::find_speed_symbol(std::string_view(symbol, length));
  if (!found) return out;
  service.symbol = *found;
  out.end = end;
  if (service.load_index > standard::greatest_load_index ||
      service.twin > standard::greatest_load_index) {
    if (out.touching) out.state = ServiceState::no_such_index;
    return out;
  }
  out.state = ServiceState::read;
  return out;
}

// 91 or 154/150 with no speed symbol after it.
std::size_t bare_index_end(const Text& text, std::size_t i) {
  const Number first = integer_at(text, i);
  if (first.digits < 2 || first.digits > 3 || text.at(i) == '0' ||
      first.whole() < least_load_index || first.whole() > standard::greatest_load_index) {
    return nowhere;
  }
  std::size_t end = first.end;
  if (text.at(end) == '/') {
    const Number second = integer_at(text, end + 1);
    if ((second.digits == 2 || second.digits == 3) && text.at(end + 1) != '0') end = second.end;
  }
  const char next = text.at(end);
  if (is_word(next) || ((next == '-' || next == '/') && is_word(text.at(end + 1)))) return nowhere;
  if ((text.at(end) == '.' || text.at(end) == ',') && is_digit(text.at(end + 1))) return nowhere;
  return end;
}

bool service_stands_at(const Text& text, std::size_t i) {
  const ServiceRead got = read_service(text, i);
  return got.state == ServiceState::read && got.touching;
}

}  // namespace treadwater::sidewall
