// The register of outside checks: what some paper, rule, table or trade says, beside what the core
// says. The figures are data, one JSON file a room (README.md here tells the format); one .cpp a
// room maps the names of checks onto functions of the core. The same code runs natively and in
// WebAssembly (register.test.mjs), and writes docs/accuracy.md.
#pragma once

#include <iterator>
#include <nlohmann/json.hpp>
#include <optional>
#include <string>
#include <string_view>
#include <type_traits>
#include <variant>
#include <vector>

#include "core/patch/geometry.hpp"
#include "core/quantity/quantity.hpp"
#include "core/standard/source.hpp"
#include "core/standard/speed_symbol.hpp"

namespace treadwater::checks {

using Json = nlohmann::ordered_json;

struct Band {
  double low;
  double high;
};
using Value = std::variant<double, std::string, Band>;

// The size of one unit in what a quantity stores; nothing where the unit is not one of its kind.
template <class Q>
std::optional<double> stored_of(std::string_view unit, double value);

// What a check is asked: its inputs by name, "20 psi" or 1.3, and the unit it is to answer in. What
// is missing or cannot be read is kept as an error, and so is an input that nobody read.
class Asked {
 public:
  Asked(const Json& inputs, std::string unit) : inputs_(inputs), unit_(std::move(unit)) {}

  bool has(std::string_view name) const { return inputs_.contains(name); }
  double number(std::string_view name);
  std::string text(std::string_view name);
  bool yes(std::string_view name) { return has(name) && text(name) == "yes"; }
  std::vector<double> numbers(std::string_view name);
  patch::TyreSize size(std::string_view name);  // "205/55-16"
  standard::SpeedSymbol symbol(std::string_view name);

  template <class Q>
  Q of(std::string_view name) {
    const auto [value, unit] = quantity(name);
    const auto stored = stored_of<Q>(unit, value);
    if (!stored) fail("no such unit for it: ", name);
    return Q::stored(stored.value_or(0.0));
  }
  template <class Q>
  Q of(std::string_view name, Q otherwise) {
    return has(name) ? of<Q>(name) : otherwise;
  }

  template <class Q>
  double in_unit(Q q) {
    if constexpr (std::is_same_v<Q, Temperature>) {
      if (unit_ == "°C") return in_celsius(q);
    }
    const auto one = stored_of<Q>(unit_, 1.0);
    if (!one) fail("no such unit for the answer: ", unit_);
    return q.stored() / one.value_or(1.0);
  }
  Value answer(double v) const { return v; }
  Value answer(bool v) const { return std::string(v ? "yes" : "no"); }
  Value answer(std::string_view v) const { return std::string(v); }
  template <class Q>
  requires requires(Q q) { q.stored(); }
  Value answer(Q q) { return in_unit(q); }
  template <class T>
  Value answer(const std::optional<T>& v) {
    return v ? answer(*v) : Value(std::string("none"));
  }
  template <class Q>
  Value answer(Q low, Q high) {
    return Band{in_unit(low), in_unit(high)};
  }

  void fail(std::string_view what, std::string_view name);
  std::string error() const;

 private:
  struct NumberAndUnit {
    double value;
    std::string unit;
  };
  NumberAndUnit quantity(std::string_view name);
  const Json* find(std::string_view name);

  const Json& inputs_;
  std::string unit_;
  std::string error_;
  std::vector<std::string> read_;
};

struct Check {
  std::string_view name;
  Value (*ask)(Asked& in);
};

struct Checks {
  const Check* first;
  const Check* last;
  const Check* begin() const { return first; }
  const Check* end() const { return last; }
};

Checks quantity_checks();
Checks standard_checks();
Checks sidewall_checks();
Checks patch_checks();
Checks water_checks();
Checks grip_checks();
Checks air_checks();
Checks car_checks();
Checks stage_checks();

// How the core's answer is held against the printed figure.
enum class Compare {
  equal,     // within the tolerance; a text, word for word
  inside,    // the printed figure lies inside the core's band
  at_least,  // the core's is no lower, nor higher by more than a tolerance where one is given
  at_most,   // the same turned round
};

struct Row {
  std::string entry;   // what is checked, in a sentence
  std::string inputs;  // of this row, in words
  Source source;
  bool worked_out = false;  // by hand, from what the source prints
  std::string check;
  std::string printed;
  std::string unit;
  Compare compare = Compare::equal;
  Value ours;
  double difference = 0.0;  // ours less printed; of a band, how far outside it the printed one lies
  double tolerance = 0.0;
  std::string why;  // the tolerance is not half the last printed digit
  bool agrees = false;
  std::string error;  // the register itself is wrong here
};

struct Room {
  std::string name;
  std::string title;
  std::vector<Row> rows;
};

// Everything in one room's file, judged. A file that cannot be read is one row with an error.
Room judged(std::string_view file);

// The same as JSON, a line a row: {"room", "rows": [...]}. Numbers in full, so that two builds can
// be held against each other to the last bit.
std::string judged_json(std::string_view file);

// The checks that exist, so that one that nobody asks is noticed.
std::vector<std::string_view> names_of_checks();

}  // namespace treadwater::checks
