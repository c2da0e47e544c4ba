#include "core/quantity/read.hpp"

#include <cmath>
#include <cstdlib>
#include <optional>

#include "core/quantity/text.hpp"

namespace treadwater {
namespace {

// A unit as people write it (lower case, no spaces) and what one of it is in the stored unit of its
// dimension: stored = number * scale + offset.
struct Unit {
  std::string_view spelling;
  Dimension dimension;
  double scale;
  double offset = 0.0;
};

constexpr double kelvin_at_zero_fahrenheit = exact::kelvin_at_zero_celsius - 32.0 / 1.8;

constexpr Unit units[] = {
    {"kpa", Dimension::pressure, 1.0},
    {"bar", Dimension::pressure, 100.0},
    {"bars", Dimension::pressure, 100.0},
    {"mbar", Dimension::pressure, 0.1},
    {"mpa", Dimension::pressure, 1000.0},
    {"psi", Dimension::pressure, exact::pascals_per_psi / 1000.0},
    {"lb/in2", Dimension::pressure, exact::pascals_per_psi / 1000.0},
    {"lbf/in2", Dimension::pressure, exact::pascals_per_psi / 1000.0},
    {"kg/cm2", Dimension::pressure, exact::standard_gravity * 10.0},
    {"kgf/cm2", Dimension::pressure, exact::standard_gravity * 10.0},
    {"kg", Dimension::mass, 1.0},
    {"kgs", Dimension::mass, 1.0},
    {"kilo", Dimension::mass, 1.0},
    {"kilos", Dimension::mass, 1.0},
    {"t", Dimension::mass, 1000.0},
    {"lb", Dimension::mass, exact::kilograms_per_pound},
    {"lbs", Dimension::mass, exact::kilograms_per_pound},
    {"cwt", Dimension::mass, 112.0 * exact::kilograms_per_pound},
    {"mm", Dimension::length, 0.001},
    {"cm", Dimension::length, 0.01},
    {"m", Dimension::length, 1.0},
    {"in", Dimension::length, exact::metres_per_inch},
    {"inch", Dimension::length, exact::metres_per_inch},
    {"inches", Dimension::length, exact::metres_per_inch},
    {"\"", Dimension::length, exact::metres_per_inch},
    {"/32in", Dimension::length, exact::metres_per_inch / 32.0},
    {"/32", Dimension::length, exact::metres_per_inch / 32.0},
    {"/32\"", Dimension::length, exact::metres_per_inch / 32.0},
    {"/32nds", Dimension::length, exact::metres_per_inch / 32.0},
    {"32nds", Dimension::length, exact::metres_per_inch / 32.0},
    {"ft", Dimension::length, exact::metres_per_foot},
    {"yd", Dimension::length, 3.0 * exact::metres_per_foot},
    {"km", Dimension::length, 1000.0},
    {"mi", Dimension::length, exact::metres_per_mile},
    {"miles", Dimension::length, exact::metres_per_mile},
    {"km/h", Dimension::speed, 1.0},
    {"kmh", Dimension::speed, 1.0},
    {"kph", Dimension::speed, 1.0},
    {"mph", Dimension::speed, kmh_per_mph},
    {"m/s", Dimension::speed, 3.6},
    {"kn", Dimension::speed, exact::metres_per_nautical_mile / 1000.0},
    {"kt", Dimension::speed, exact::metres_per_nautical_mile / 1000.0},
    {"knots", Dimension::speed, exact::metres_per_nautical_mile / 1000.0},
    {"°c", Dimension::temperature, 1.0, exact::kelvin_at_zero_celsius},
    {"c", Dimension::temperature, 1.0, exact::kelvin_at_zero_celsius},
    {"°f", Dimension::temperature, 1.0 / 1.8, kelvin_at_zero_fahrenheit},
    {"f", Dimension::temperature, 1.0 / 1.8, kelvin_at_zero_fahrenheit},
    {"k", Dimension::temperature, 1.0},
    {"n", Dimension::force, 1.0},
    {"lbf", Dimension::force, exact::newtons_per_pound_force},
    {"kgf", Dimension::force, exact::standard_gravity},
    {"mm/h", Dimension::rain, 1.0},
    {"mm/hr", Dimension::rain, 1.0},
    {"in/h", Dimension::rain, exact::metres_per_inch * 1000.0},
    {"in/hr", Dimension::rain, exact::metres_per_inch * 1000.0},
    {"s", Dimension::time, 1.0},
    {"min", Dimension::time, 60.0},
    {"h", Dimension::time, exact::seconds_per_hour},
    {"d", Dimension::time, 24.0 * exact::seconds_per_hour},
    {"days", Dimension::time, 24.0 * exact::seconds_per_hour},
    {"", Dimension::number, 1.0},
    {"%", Dimension::number, 1.0},
    {"°", Dimension::number, 1.0},
    {"deg", Dimension::number, 1.0},
    {"degrees", Dimension::number, 1.0},
};

std::optional<Unit> find_unit(std::string_view spelling) {
  for (const Unit& unit : units)
    if (unit.spelling == spelling) return unit;
  return std::nullopt;
}

char lower(char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; }

// One spelling for characters that people and keyboards use for the same thing.
std::string plain_signs(std::string text) {
  constexpr std::string_view replacements[][2] = {
      {"\u2212", "-"}, {"\u2013", "-"},    {"\u2033", "\""},   {"\u201D", "\""},   {"\u2044", "/"},
      {"\u00B2", "2"}, {"\u00BD", " 1/2"}, {"\u00BC", " 1/4"}, {"\u00BE", " 3/4"}, {"\u00BA", "°"},
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
  bool thousands = false;  // may be meant
  std::string unit;        // lower case, without spaces; empty where none was written
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
    const auto first = cursor.digits();
    if (!first) return refused("no_number");
    Written written;
    written.number = value_of(*first);
    written.thousands = may_be_thousands(*first);

    // "7/32 in" and "1 1/2 in"; "7 /32 in" is a unit, not a fraction, and means the same.
    const std::size_t before = cursor.at;
    cursor.skip_spaces();
    if (all_digits(*first) && cursor.peek() == '/' && is_digit(cursor.peek(1))) {
      const double denominator = cursor.after_slash();
      if (denominator == 0.0) return refused("bad_fraction");
      written.number /= denominator;
      written.fraction = true;
    } else if (all_digits(*first) && is_digit(cursor.peek()) && before != cursor.at) {
      Cursor fraction = cursor;
      const auto numerator = fraction.digits();
      if (numerator && all_digits(*numerator) && fraction.peek() == '/' &&
          is_digit(fraction.peek(1))) {
        const double denominator = fraction.after_slash();
        if (denominator == 0.0) return refused("bad_fraction");
        written.number += value_of(*numerator) / denominator;
        written.fraction = true;
        cursor = fraction;
      }
    }
    if (minus) written.number = -written.number;

    for (; !cursor.done(); ++cursor.at)
      if (cursor.peek() != ' ') written.unit += cursor.peek();
    // A digit among the letters is a second number, unless the unit itself has one (kg/cm2).
    if (!find_unit(written.unit))
      for (char c : written.unit)
        if (is_digit(c)) return refused("two_numbers");
    return written;
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
    const auto unit = find_unit(spelling);
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
