// The fields of a form, as values. The same constant describes the field in the form and reads it,
// so a misspelt field or a wrong dimension does not compile:
//
//   constexpr QuantityField<Mass> load{"load", Phrase("Load on this wheel"), Phrase("…"), required,
//                                      "20 kg", "8000 kg (17 600 lb)", "430 kg", in_mass};
//   sheet.fields = {describe(load), …};                std::optional<Mass> mass = form.read(load);
//
// Ids are part of every saved link: never rename them.
#pragma once

#include <array>
#include <optional>
#include <string_view>
#include <vector>

#include "core/quantity/read.hpp"
#include "core/standard/date.hpp"
#include "core/words/phrase.hpp"

namespace treadwater::sheets {

// ---- a form, as described to the page ----

enum class FieldKind { text, quantity, choice, yes_no, date, list };

struct Choice {
  std::string_view value;
  Phrase label;
};

struct Field {
  std::string_view id;
  Phrase label;
  Phrase hint;
  FieldKind kind = FieldKind::text;
  bool required = false;
  std::string_view initial;  // the value in an untouched form
  std::string_view example;
  std::vector<Choice> choices;              // kind choice
  std::optional<QuantityRequest> quantity;  // kind quantity
  std::vector<std::string_view> units;      // kind quantity: the first is for a bare number
  std::vector<std::string_view> preferred;  // kind quantity: for metric, uk, us
  std::vector<Field> fields;                // kind list: those of one row
  std::vector<Phrase> row_names;            // kind list: if given, there are these rows and no more
  std::size_t most_rows = 0;                // kind list: no more than these are read
  std::vector<std::string_view> also;       // other names for its column in people's own tables
};

// Values under their fields' ids; in a list under their paths ("corners.0.load"), row by row.
struct Preset {
  std::string_view id;
  Phrase title;
  Phrase text;
  std::vector<std::pair<std::string_view, std::string_view>> input;
};

struct SheetHead {
  std::string_view id;  // part of every saved link
  Phrase title;
  Phrase purpose;
  bool long_work = false;  // an answer can take longer than one should wait after a keystroke
  std::size_t longest_input = 64 * 1024;  // bytes of JSON
};

struct SheetDescription {
  SheetHead head;
  std::vector<Field> fields;
  Preset example;  // a made-up case, answered for a first-time visitor
};

// The field at a path; null if the sheet has none.
const Field* find_field(const SheetDescription& sheet, std::string_view path);

// ---- the fields themselves ----

enum Need : bool { optional = false, required = true };

struct AnyField {
  std::string_view id;
  Phrase label;
  Phrase hint;
  Need need = optional;
};

// A bound and its words are one value: "8000 kg (17 600 lb)" is 8000 kg. Temperatures in °C, all
// other units as in the table in field.cpp; what cannot be read does not compile.
struct Bound {
  std::string_view text;
  double stored;
  template <std::size_t N>
  constexpr Bound(const char (&words)[N]) : text(words, N - 1), stored(value_of(text)) {}

 private:
  static constexpr double value_of(std::string_view words);
};

// The units a field offers: the first is for a bare number. `preferred`: the picker's for metric,
// uk and us.
struct Units {
  std::array<std::string_view, 4> offered;
  std::array<std::string_view, 3> preferred;
};
inline constexpr Units in_mass{{"kg", "lb"}, {"kg", "kg", "lb"}};
inline constexpr Units in_pressure{{"kPa", "bar", "psi"}, {"bar", "psi", "psi"}};
inline constexpr Units in_depth{{"mm", "in", "/32 in"}, {"mm", "mm", "/32 in"}};
inline constexpr Units in_water{{"mm", "in"}, {"mm", "mm", "in"}};
inline constexpr Units in_section{{"mm", "in"}, {"mm", "mm", "mm"}};  // of a tyre
inline constexpr Units in_speed{{"km/h", "mph"}, {"km/h", "mph", "mph"}};
inline constexpr Units in_temperature{{"°C", "°F"}, {"°C", "°C", "°F"}};
inline constexpr Units in_metres_of_road{{"m", "ft"}, {"m", "m", "ft"}};
inline constexpr Units in_kilometres_of_road{{"km", "miles"}, {"km", "miles", "miles"}};
inline constexpr Units in_rain{{"mm/h", "in/h"}, {"mm/h", "mm/h", "in/h"}};
inline constexpr Units in_minutes{{"min", "h", "days"}, {"min", "min", "min"}};
inline constexpr Units without_unit{{""}, {""}};

struct AnyQuantityField : AnyField {
  QuantityRequest request;
  Units units;
  constexpr AnyQuantityField(std::string_view name, Phrase words, Phrase help, Need needed,
                             Dimension dimension, Bound least, Bound most, std::string_view example,
                             const Units& in)
      : AnyField{name, words, help, needed},
        request{dimension,  in.offered[0], least.stored, most.stored,
                least.text, most.text,     example},
        units(in) {}
};

template <class Q>
constexpr Dimension dimension_of();
template <>
constexpr Dimension dimension_of<GaugePressure>() {
  return Dimension::pressure;
}
template <>
constexpr Dimension dimension_of<Mass>() {
  return Dimension::mass;
}
template <>
constexpr Dimension dimension_of<Length>() {
  return Dimension::length;
}
template <>
constexpr Dimension dimension_of<Speed>() {
  return Dimension::speed;
}
template <>
constexpr Dimension dimension_of<Temperature>() {
  return Dimension::temperature;
}
template <>
constexpr Dimension dimension_of<RainIntensity>() {
  return Dimension::rain;
}
template <>
constexpr Dimension dimension_of<Duration>() {
  return Dimension::time;
}

template <class Q>
struct QuantityField : AnyQuantityField {
  constexpr QuantityField(std::string_view name, Phrase words, Phrase help, Need needed,
                          Bound least, Bound most, std::string_view example, const Units& in)
      : AnyQuantityField(name, words, help, needed, dimension_of<Q>(), least, most, example, in) {}
};

// A plain number: a count, or a share in per cent.
struct NumberField : AnyQuantityField {
  constexpr NumberField(std::string_view name, Phrase words, Phrase help, Need needed, Bound least,
                        Bound most, std::string_view example)
      : AnyQuantityField(name, words, help, needed, Dimension::number, least, most, example,
                         without_unit) {}
};

struct TextField : AnyField {
  std::string_view example;
  constexpr TextField(std::string_view name, Phrase words, Phrase help = {}, Need needed = optional,
                      std::string_view such_as = {})
      : AnyField{name, words, help, needed}, example(such_as) {}
};
// The text moulded on a tyre.
struct SidewallField : TextField {
  using TextField::TextField;
};

struct YesNoField : AnyField {
  std::string_view initial;  // "yes", "no", or neither
  constexpr YesNoField(std::string_view name, Phrase words, Phrase help, std::string_view at_first)
      : AnyField{name, words, help, optional}, initial(at_first) {}
};

struct DateField : AnyField {
  constexpr DateField(std::string_view name, Phrase words, Phrase help, Need needed)
      : AnyField{name, words, help, needed} {}
};

using Choices = std::vector<Choice> (*)();

struct AnyChoiceField : AnyField {
  Choices choices;
  bool open = false;  // nothing is chosen at first; else the first choice is
  constexpr AnyChoiceField(std::string_view name, Phrase words, Phrase help, Choices of)
      : AnyField{name, words, help, optional}, choices(of) {}
};
// What a choice means: one of the values it stands for.
template <class T>
struct ChoiceField : AnyChoiceField {
  T (*meaning)(std::string_view value);
  constexpr ChoiceField(std::string_view name, Phrase words, Phrase help, Choices of,
                        T (*means)(std::string_view))
      : AnyChoiceField(name, words, help, of), meaning(means) {}
};
// The meaning of a choice that is its own value.
constexpr std::string_view as_it_says(std::string_view value) { return value; }
// The same field, with nothing chosen at first.
template <class T>
constexpr ChoiceField<T> open_at_first(ChoiceField<T> field, Need needed = optional) {
  field.open = true;
  field.need = needed;
  return field;
}

struct ListField : AnyField {  // `label` names one row: "Corner"
  std::size_t most_rows;
  constexpr ListField(std::string_view name, Phrase words, Phrase help, std::size_t most)
      : AnyField{name, words, help, optional}, most_rows(most) {}
};

Field describe(const TextField& field);
Field describe(const AnyQuantityField& field);
Field describe(const AnyChoiceField& field);
Field describe(const YesNoField& field);
Field describe(const DateField& field);
// With `row_names` the rows are fixed: "Front left".
Field describe(const ListField& field, std::vector<Field> fields,
               std::vector<Phrase> row_names = {});
// The field with other names for its column in people's own tables, separated by '|'.
Field also(Field field, std::string_view names);

// ---- bounds in words ----

void not_a_bound();

constexpr double Bound::value_of(std::string_view words) {
  struct Unit {
    std::string_view name;
    double factor;
    double divisor = 1.0;
    double offset = 0.0;
  };
  constexpr Unit units[] = {
      {"", 1.0},           {"%", 1.0},
      {"kg", 1.0},         {"kPa", 1.0},
      {"km/h", 1.0},       {"mm/h", 1.0},
      {"m", 1.0},          {"km", 1000.0},
      {"s", 1.0},          {"min", 60.0},
      {"h", 3600.0},       {"days", 86400.0},
      {"mm", 1.0, 1000.0}, {"°C", 1.0, 1.0, 273.15},
      {"in", 0.0254},      {"degrees", 1.0},
      {"N/mm", 1.0},       {"year", 365.25 * 86400.0},
  };
  std::size_t at = 0;
  const bool minus = !words.empty() && words[0] == '-';
  if (minus) ++at;
  double number = 0.0, scale = 1.0;
  bool point = false, any = false;
  for (; at < words.size(); ++at) {
    const char c = words[at];
    // "12 000": a blank between digits groups them.
    if (c == ' ' && any && !point && at + 3 < words.size() && words[at + 1] >= '0' &&
        words[at + 1] <= '9')
      continue;
    if (c == '.' && !point) {
      point = true;
      continue;
    }
    if (c < '0' || c > '9') break;
    any = true;
    number = number * 10.0 + (c - '0');
    if (point) scale *= 10.0;
  }
  if (at < words.size() && words[at] == ' ') ++at;
  std::size_t end = at;
  while (end < words.size() && words[end] != ' ') ++end;
  const std::string_view name = words.substr(at, end - at);
  for (const Unit& unit : units)
    if (any && unit.name == name)
      return (minus ? -number : number) / scale * unit.factor / unit.divisor + unit.offset;
  not_a_bound();  // not a constant: it does not compile
  return 0.0;
}

}  // namespace treadwater::sheets
