#include "core/quantity/read.hpp"

#include <cmath>
#include <cstdlib>
#include <optional>

#include "core/quantity/read_units.hpp"
#include "core/quantity/text.hpp"

namespace treadwater {
namespace {

char lower(char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; }

// Digits of other scripts and full-width characters as plain ones. The zero of each run of ten,
// from the Unicode Character Database (general category Nd; known from memory).
std::string plain_characters(std::string_view text) {
  constexpr std::uint32_t zeros[] = {0x0660, 0x06F0, 0x0966, 0x09E6, 0x0A66, 0x0AE6,
                                     0x0B66, 0x0BE6, 0x0C66, 0x0CE6, 0x0D66, 0x0E50,
                                     0x0ED0, 0x0F20, 0x1040, 0x17E0, 0x1810};
  std::string out;
  while (!text.empty()) {
    const std::size_t length = utf8_length(text);
    char plain = '\0';
    if (length == 2 || length == 3) {
      std::uint32_t code = static_cast<unsigned char>(text[0]) & (length == 2 ? 0x1FU : 0x0FU);
      for (std::size_t i = 1; i < length; ++i)
        code = (code << 6U) | (static_cast<unsigned char>(text[i]) & 0x3FU);
      for (const std::uint32_t zero : zeros)
        if (code >= zero && code < zero + 10) plain = static_cast<char>('0' + (code - zero));
      if (code >= 0xFF01 && code <= 0xFF5E) plain = static_cast<char>(code - 0xFF01 + 0x21);
    }
    if (plain != '\0')
      out += plain;
    else
      out += text.substr(0, length == 0 ? 1 : length);
    text.remove_prefix(length == 0 ? 1 : length);
  }
  return out;
}

// One spelling for characters that people and keyboards use for the same thing.
std::string plain_signs(std::string text) {
  text = plain_characters(text);
  constexpr std::string_view replacements[][2] = {
      {"\u2212", "-"},  {"\u2013", "-"},    {"\u2033", "\""},   {"\u201D", "\""},   {"\u2044", "/"},
      {"\u00B2", "2"},  {"\u00BD", " 1/2"}, {"\u00BC", " 1/4"}, {"\u00BE", " 3/4"}, {"\u00BA", "°"},
      {"\u2103", "°c"}, {"\u2109", "°f"},   {"\u066B", "."},    {"\u066C", ","},
  };
  for (const auto& [from, to] : replacements)
    for (std::size_t at = text.find(from); at != std::string::npos;
         at = text.find(from, at + to.size()))
      text.replace(at, from.size(), to);
  for (char& c : text) c = lower(c);
  return plain_spaces(text);
}

double value_of(const std::string& digits) { return std::strtod(digits.c_str(), nullptr); }

// Walks a text once, front to back.
struct Cursor {
  std::string_view text;
  std::size_t at = 0;

  bool done() const { return at >= text.size(); }
  char peek(std::size_t ahead = 0) const {
    return at + ahead < text.size() ? text[at + ahead] : '\0';
  }
  void skip_spaces() {
    while (peek() == ' ') ++at;
  }

  // Digits with at most one decimal point or comma, and an exponent.
  std::optional<std::string> digits() {
    const std::size_t start = at;
    std::string number;
    bool any = false;
    while (is_digit(peek())) number += peek(), ++at, any = true;
    if ((peek() == '.' || peek() == ',') && (any || is_digit(peek(1)))) {
      number += '.', ++at;
      while (is_digit(peek())) number += peek(), ++at, any = true;
    }
    if (!any) {
      at = start;
      return std::nullopt;
    }
    if (peek() == 'e' &&
        (is_digit(peek(1)) || ((peek(1) == '-' || peek(1) == '+') && is_digit(peek(2))))) {
      number += peek(), ++at;
      number += peek(), ++at;
      while (is_digit(peek())) number += peek(), ++at;
    }
    return number;
  }

  // Digits in groups of three with spaces between, "1 000": the space and its three digits, as
  // often as they come. Not the "1 100/32" of a fraction.
  bool group_follows() const {
    return peek() == ' ' && is_digit(peek(1)) && is_digit(peek(2)) && is_digit(peek(3)) &&
           !is_digit(peek(4)) && peek(4) != '/';
  }
  std::optional<std::string> grouped_digits() {
    auto number = digits();
    if (!number || number->size() > 3 || (*number)[0] == '0' || !group_follows()) return number;
    for (const char c : *number)
      if (!is_digit(c)) return number;
    while (group_follows()) {
      number->append(text.substr(at + 1, 3));
      at += 4;
    }
    if ((peek() == '.' || peek() == ',') && is_digit(peek(1)))
      if (const auto rest = digits()) *number += *rest;
    return number;
  }

  // The number behind a slash; 0 where there is none.
  double after_slash() {
    ++at;
    const auto number = digits();
    return number ? value_of(*number) : 0.0;
  }
};

bool all_digits(std::string_view text) {
  for (char c : text)
    if (!is_digit(c)) return false;
  return !text.empty();
}

// "1,000" and "45.200": one to three digits, and three more behind a point or comma. Half the world
// reads that as thousands.
bool may_be_thousands(const std::string& digits) {
  const std::size_t mark = digits.find('.');
  return mark >= 1 && mark <= 3 && digits[0] != '0' && digits.size() == mark + 4 &&
         all_digits(digits.substr(mark + 1));
}

struct Written {
  double number = 0.0;
  bool fraction = false;
  double denominator = 0.0;
  std::string fraction_text;  // "5/32"
  bool thousands = false;     // may be meant
  std::string unit;           // lower case, without spaces; empty where none was written
};

class Reader {
 public:
  Reader(std::string_view original, const QuantityRequest& request)
      : original_(original), request_(request) {}

  tl::expected<double, ReadProblem> read() {
    if (original_.size() > 200) {
      ReadProblem found = problem("too_long");
      found.length = original_.size();
      return tl::unexpected(std::move(found));
    }
    const std::string text = plain_signs(std::string(original_));
    if (text.empty()) return refused("missing");
    if (const auto time = split_time(text)) return scale(*time);
    const auto written = split(text);
    if (!written) return tl::unexpected(written.error());
    return scale(*written);
  }

 private:
  ReadProblem problem(std::string_view code) const {
    ReadProblem found;
    found.code = code;
    found.written = original_;
    return found;
  }
  tl::unexpected<ReadProblem> refused(std::string_view code) const {
    return tl::unexpected(problem(code));
  }

  tl::expected<Written, ReadProblem> split(const std::string& text) const {
    Cursor cursor{text};
    const bool minus = cursor.peek() == '-';
    if (minus || cursor.peek() == '+') ++cursor.at, cursor.skip_spaces();
    const std::size_t begin = cursor.at;
    const auto first = cursor.grouped_digits();
    if (!first) return refused("no_number");
    Written written;
    written.number = value_of(*first);
    written.thousands = may_be_thousands(*first);

    // "7/32 in" and "1 1/2 in"; "7 /32 in" is a unit, not a fraction, and means the same.
    const std::size_t before = cursor.at;
    cursor.skip_spaces();
    const bool dash = before == cursor.at && cursor.peek() == '-';  // 1-3/16 in
    if (all_digits(*first) && cursor.peek() == '/' && is_digit(cursor.peek(1))) {
      const double denominator = cursor.after_slash();
      if (denominator == 0.0) return refused("bad_fraction");
      written.number /= denominator;
      written.fraction = true;
      written.denominator = denominator;
    } else if (all_digits(*first) && is_digit(cursor.peek(dash ? 1 : 0)) &&
               (dash || before != cursor.at)) {
      Cursor fraction = cursor;
      if (dash) ++fraction.at;
      const auto numerator = fraction.digits();
      if (numerator && all_digits(*numerator) && fraction.peek() == '/' &&
          is_digit(fraction.peek(1))) {
        const double denominator = fraction.after_slash();
        if (denominator == 0.0) return refused("bad_fraction");
        written.number += value_of(*numerator) / denominator;
        written.fraction = true;
        written.denominator = denominator;
        cursor = fraction;
      }
    }
    if (minus) written.number = -written.number;

    if (written.fraction) written.fraction_text = text.substr(begin, cursor.at - begin);
    written.unit = rest_as_unit(cursor);
    drop_ordinal(written);
    // A digit among the letters is a second number, unless the unit itself has one (kg/cm2).
    if (!find_unit(written.unit))
      for (char c : written.unit)
        if (is_digit(c)) return refused("two_numbers");
    return written;
  }

  // What is left, without spaces and without the points of "psi." and "m.p.h.".
  static std::string rest_as_unit(Cursor& cursor) {
    std::string unit;
    for (; !cursor.done(); ++cursor.at) {
      const bool point = cursor.peek() == '.' && !is_digit(cursor.peek(1));
      if (cursor.peek() != ' ' && !point) unit += cursor.peek();
    }
    return unit;
  }

  // "5/32nds" and "5/32 /32 in" are five thirty-seconds of an inch, "3/16ths in" three sixteenths.
  static void drop_ordinal(Written& written) {
    if (!written.fraction) return;
    for (const std::string_view ending : {"nds", "nd", "ths", "th"}) {
      if (written.unit.compare(0, ending.size(), ending) != 0) continue;
      written.unit.erase(0, ending.size());
      if (written.unit.empty() && written.denominator == 32.0) written.unit = "in";
      break;
    }
    const bool twice = written.unit == "/32in" || written.unit == "/32" || written.unit == "/32\"";
    if (twice && written.denominator == 32.0) written.unit = "in";
  }

  // "1 h 20 min": numbers and units of time, each smaller than the one before. Nothing if there is
  // one number only, or anything else.
  std::optional<Written> split_time(const std::string& text) const {
    if (request_.dimension != Dimension::time) return std::nullopt;
    Cursor cursor{text};
    Written written;
    written.unit = "s";
    double last = 0.0;
    int numbers = 0;
    for (; !cursor.done(); ++numbers) {
      cursor.skip_spaces();
      const auto number = cursor.digits();
      if (!number) return std::nullopt;
      std::string spelling;
      for (; !cursor.done() && !is_digit(cursor.peek()); ++cursor.at)
        if (cursor.peek() != ' ' && cursor.peek() != '.') spelling += cursor.peek();
      const auto unit = find_unit(spelling);
      if (!unit || unit->dimension != Dimension::time) return std::nullopt;
      if (numbers > 0 && unit->scale >= last) return std::nullopt;
      last = unit->scale;
      written.number += value_of(*number) * unit->scale;
    }
    return numbers > 1 ? std::optional(written) : std::nullopt;
  }

  // A gauge shows 5/32 of an inch; no one measures 32nds of a millimetre.
  static bool is_inch_fraction(const Written& written) {
    const double d = written.denominator;
    const bool of_an_inch = d == 8.0 || d == 16.0 || d == 32.0 || d == 64.0;
    return of_an_inch && (written.unit == "mm" || written.unit == "cm");
  }

  tl::expected<double, ReadProblem> scale(const Written& written) const {
    if (!std::isfinite(written.number) || std::fabs(written.number) > 1e12)
      return refused("too_large");
    std::string spelling = written.unit;
    if (spelling.empty()) {
      if (written.fraction) return refused("unit_needed");
      for (char c : request_.default_unit)
        if (c != ' ') spelling += lower(c);
    }
    // "7/32 in" is a fraction of an inch, "7 /32 in" and "7/32nds" reach here as a unit.
    auto unit = find_unit(spelling);
    // "12°" of a temperature is in the unit that is asked for.
    const bool bare_degrees = spelling == "°" || spelling == "deg" || spelling == "degrees";
    if (bare_degrees && request_.dimension == Dimension::temperature) {
      spelling.clear();
      for (char c : request_.default_unit)
        if (c != ' ') spelling += lower(c);
      unit = find_unit(spelling);
    }
    ReadProblem found = problem("");
    found.unit = written.unit;
    found.number = written.number;
    const auto refuse = [&](std::string_view code) {
      found.code = code;
      return tl::unexpected(std::move(found));
    };
    if (written.fraction && spelling.front() == '/') {
      found.divides_twice = true;
      return refuse("two_numbers");
    }
    if (is_inch_fraction(written)) {
      found.fraction = written.fraction_text;
      return refuse("inch_fraction");
    }
    if (!unit) return refuse("unknown_unit");
    if (unit->dimension != request_.dimension) {
      found.dimension = unit->dimension;
      return refuse("wrong_dimension");
    }
    double stored = written.number * unit->scale + unit->offset;
    const double more = 1000.0 * written.number * unit->scale + unit->offset;
    if (written.thousands && more >= request_.least && more <= request_.most)
      return refuse("thousands");
    // A bound is inside the range in every unit, whatever the last binary digit.
    for (const double bound : {request_.least, request_.most})
      if (std::fabs(stored - bound) <= 1e-12 * std::fabs(bound)) stored = bound;
    if (stored < request_.least) return refuse("below_range");
    if (stored > request_.most) {
      // A psi reading, typed in a field set to bar.
      constexpr double psi = exact::pascals_per_psi / 1000.0;
      found.meant_psi = written.unit == "bar" && written.number * psi <= request_.most;
      return refuse("above_range");
    }
    return stored;
  }

  std::string_view original_;
  const QuantityRequest& request_;
};

}  // namespace

tl::expected<double, ReadProblem> read_stored(std::string_view text,
                                              const QuantityRequest& request) {
  return Reader(text, request).read();
}

}  // namespace treadwater
