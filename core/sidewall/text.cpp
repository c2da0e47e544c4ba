#include "core/sidewall/text.hpp"

namespace treadwater::sidewall {
namespace {

struct Rune {
  std::uint32_t code = 0;
  std::size_t bytes = 1;
  bool valid = false;
};

// One code point of UTF-8 (RFC 3629); an invalid byte is a rune of its own.
Rune rune_at(std::string_view s, std::size_t i) {
  const auto byte = [&](std::size_t k) -> std::uint32_t {
    return k < s.size() ? static_cast<unsigned char>(s[k]) : 0U;
  };
  const auto tail = [&](std::size_t k) { return (byte(k) & 0xC0U) == 0x80U; };
  const std::uint32_t a = byte(i);
  if (a < 0x80U) return {a, 1, true};
  if (a >= 0xC2U && a <= 0xDFU && tail(i + 1)) {
    return {((a & 0x1FU) << 6U) | (byte(i + 1) & 0x3FU), 2, true};
  }
  if (a >= 0xE0U && a <= 0xEFU && tail(i + 1) && tail(i + 2)) {
    const std::uint32_t code =
        ((a & 0x0FU) << 12U) | ((byte(i + 1) & 0x3FU) << 6U) | (byte(i + 2) & 0x3FU);
    if (code >= 0x800U && (code < 0xD800U || code > 0xDFFFU)) return {code, 3, true};
  }
  if (a >= 0xF0U && a <= 0xF4U && tail(i + 1) && tail(i + 2) && tail(i + 3)) {
    const std::uint32_t code = ((a & 0x07U) << 18U) | ((byte(i + 1) & 0x3FU) << 12U) |
                               ((byte(i + 2) & 0x3FU) << 6U) | (byte(i + 3) & 0x3FU);
    if (code >= 0x10000U && code <= 0x10FFFFU) return {code, 4, true};
  }
  return {a, 1, false};
}

// Arrows, triangles, stars: the triangle after the date code of the 1990s.
constexpr bool is_symbol(std::uint32_t code) {
  return (code >= 0x2190U && code <= 0x21FFU) || (code >= 0x25A0U && code <= 0x27BFU) ||
         (code >= 0x2B00U && code <= 0x2BFFU);
}

constexpr char nothing = '\x05';  // drawn as nothing: dropped

char plain(std::uint32_t code) {
  if (code >= 'a' && code <= 'z') return static_cast<char>(code - 'a' + 'A');
  if (code == '\t' || code == '\n' || code == '\r' || code == '\v' || code == '\f') return ' ';
  if (code == '"' || code == '\'') return ' ';  // inch marks
  if (code == '*') return 'X';
  if (code < 0x20U || code == 0x7FU) return ' ';  // cannot be seen
  if (code < 0x80U) return static_cast<char>(code);
  if (code >= 0xFF01U && code <= 0xFF5EU) return plain(code - 0xFF01U + 0x21U);  // full width
  if (code >= 0x2000U && code <= 0x200AU) return ' ';
  if (code >= 0x2010U && code <= 0x2015U) return '-';
  if (code >= 0x200BU && code <= 0x200FU) return nothing;
  if (code >= 0x202AU && code <= 0x202EU) return nothing;  // directions of writing
  if (code >= 0x2060U && code <= 0x2069U) return nothing;
  if (code >= 0x2018U && code <= 0x201FU) return ' ';  // curly quotes, typed as inch marks
  switch (code) {
    case 0x00A0U:
    case 0x202FU:
    case 0x205FU:
    case 0x3000U:
    case 0x2028U:
    case 0x2029U:
    case 0x2032U:
    case 0x2033U:
      return ' ';
    case 0x00D7U:
    case 0x2715U:
    case 0x2716U:
    case 0x2A2FU:
    case 0x0445U:
    case 0x0425U:
      return 'X';
    case 0x00B7U:  // raised points
    case 0x2219U:
    case 0x22C5U:
      return '.';
    case 0x2212U:
    case 0xFE63U:
      return '-';
    case 0x2044U:
    case 0x2215U:
      return '/';
    case 0x00BDU:
      return half;
    case 0x00BCU:
      return quarter;
    case 0x00BEU:
      return three_quarters;
    case 0x00ADU:
    case 0xFEFFU:
    case 0xFE0EU:
    case 0xFE0FU:
      return nothing;
    default:
      return is_symbol(code) ? ' ' : foreign;
  }
}

std::int32_t sixteenths_at(const Text& text, std::size_t i, std::size_t& end) {
  const char c = text.at(i);
  if (c == half || c == quarter || c == three_quarters) {
    end = i + 1;
    return c == half ? number_scale / 2 : c == quarter ? number_scale / 4 : 3 * number_scale / 4;
  }
  const Number top = integer_at(text, i);
  if (top.end == nowhere || text.at(top.end) != '/') return 0;
  const Number bottom = integer_at(text, top.end + 1);
  if (bottom.end == nowhere || is_word(text.at(bottom.end))) return 0;
  const std::int32_t n = top.whole();
  const std::int32_t d = bottom.whole();
  if ((d != 2 && d != 4 && d != 8 && d != 16) || n < 1 || n >= d) return 0;
  end = bottom.end;
  return n * (number_scale / d);
}

}  // namespace

Text::Text(std::string_view source) : source_(source) {
  for (std::size_t i = 0; i < source.size() && size_ < longest_text;) {
    const auto c = static_cast<unsigned char>(source[i]);
    if (c < 0x80U) {
      put(plain(c), i);
      ++i;
      continue;
    }
    const Rune rune = rune_at(source, i);
    put(rune.valid ? plain(rune.code) : foreign, i);
    i += rune.bytes;
  }
}

void Text::put(char c, std::size_t byte) {
  if (c == nothing) return;
  if (c == ' ' && size_ > 0 && characters_[size_ - 1] == ' ') return;
  characters_[size_] = c;
  bytes_[size_] = static_cast<std::uint16_t>(byte);
  ++size_;
}

std::size_t Text::end_byte(std::size_t begin, std::size_t end) const {
  if (end <= begin) return byte(begin);
  const std::size_t last = byte(end - 1);
  if (last >= source_.size()) return source_.size();
  return last + rune_at(source_, last).bytes;
}

bool Text::starts(std::size_t i, std::string_view word) const {
  if (i + word.size() > size_) return false;
  for (std::size_t k = 0; k < word.size(); ++k) {
    if (characters_[i + k] != word[k]) return false;
  }
  return true;
}

std::string Text::quote(std::size_t begin, std::size_t end) const {
  while (begin < end && at(begin) == ' ') ++begin;
  while (end > begin && at(end - 1) == ' ') --end;
  std::string out;
  if (begin >= end) return out;
  const std::size_t stop = end_byte(begin, end);
  for (std::size_t i = byte(begin); i < stop;) {
    const Rune rune = rune_at(source_, i);
    const bool printable = rune.valid && rune.code >= 0x20U && rune.code != 0x7FU;
    if (printable) {
      out.append(source_.substr(i, rune.bytes));
    } else {
      out.push_back('?');
    }
    i += rune.bytes;
  }
  return out;
}

Number integer_at(const Text& text, std::size_t i) {
  Number number;
  std::int32_t value = 0;
  while (is_digit(text.at(i))) {
    if (number.digits < 5) value = value * 10 + (text.at(i) - '0');
    ++number.digits;
    ++i;
  }
  if (number.digits == 0) return number;
  number.scaled = value * number_scale;
  if (number.digits > 5) number.scaled = 99999 * number_scale;
  number.end = i;
  return number;
}

Number decimal_at(const Text& text, std::size_t i) {
  Number number = integer_at(text, i);
  if (number.end == nowhere) return number;
  const char point = text.at(number.end);
  if ((point != '.' && point != ',') || !is_digit(text.at(number.end + 1))) return number;
  std::size_t k = number.end + 1;
  std::int32_t place = number_scale / 10;
  while (is_digit(text.at(k))) {
    number.scaled += (text.at(k) - '0') * place;
    place /= 10;
    ++number.decimals;
    ++k;
  }
  number.end = k;
  return number;
}

Number fraction_at(const Text& text, std::size_t i) {
  Number number = decimal_at(text, i);
  if (number.end == nowhere || number.decimals > 0) return number;
  std::size_t k = number.end;
  if (text.at(k) == ' ' || text.at(k) == '-') ++k;
  std::size_t end = k;
  const std::int32_t part = sixteenths_at(text, k, end);
  if (part > 0) {
    number.scaled += part;
    number.decimals = 4;
    number.fraction = true;
    number.end = end;
  }
  return number;
}

// A decimal number is one token: the 91 of 0.91 m is no load index.
std::size_t token_end(const Text& text, std::size_t i) {
  if (const Number number = decimal_at(text, i); number.decimals > 0) i = number.end;
  while (is_word(text.at(i))) ++i;
  return i;
}

Line& Line::add(std::string_view text) {
  for (const char c : text) add(c);
  return *this;
}

Line& Line::add_number(std::int32_t value) {
  char digits[12];
  std::size_t first = sizeof digits;
  const bool negative = value < 0;
  auto left = static_cast<std::uint32_t>(negative ? -value : value);
  do {
    digits[--first] = static_cast<char>('0' + left % 10U);
    left /= 10U;
  } while (left > 0);
  if (negative) digits[--first] = '-';
  return add(std::string_view(digits + first, sizeof digits - first));
}

Line& Line::add_scaled(std::int32_t scaled, int decimals_min) {
  add_number(scaled / number_scale);
  std::int32_t rest = scaled % number_scale;
  if (rest == 0 && decimals_min == 0) return *this;
  add('.');
  std::int32_t place = number_scale / 10;
  int written = 0;
  while ((rest > 0 || written < decimals_min) && place > 0) {
    add(static_cast<char>('0' + rest / place));
    rest %= place;
    place /= 10;
    ++written;
  }
  return *this;
}

Line& Line::add_fraction(std::int32_t scaled) {
  const std::int32_t rest = scaled % number_scale;
  if (rest % (number_scale / 16) != 0) return add_scaled(scaled);  // no sixteenth: exact decimals
  add_number(scaled / number_scale);
  if (rest == 0) return *this;
  std::int32_t top = rest / (number_scale / 16);
  std::int32_t bottom = 16;
  while (top % 2 == 0) {
    top /= 2;
    bottom /= 2;
  }
  return add(' ').add_number(top).add('/').add_number(bottom);
}

}  // namespace treadwater::sidewall
