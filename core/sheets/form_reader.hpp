// Reads a form field by field, each in one line, as the value it means. What cannot be read becomes
// a problem that names the field, what was read and what to enter.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/judge/water.hpp"
#include "core/quantity/write.hpp"
#include "core/sheets/answer.hpp"
#include "core/sheets/field.hpp"
#include "core/sheets/input.hpp"
#include "core/sidewall/sidewall.hpp"
#include "core/standard/date.hpp"
#include "core/standard/tyre_age.hpp"

namespace treadwater::sheets {

class FormReader {
 public:
  // Refuses fields that the sheet does not have; reads `units` and `today`.
  FormReader(const SheetDescription& sheet, const Input& input);

  UnitSystem units() const { return units_; }
  standard::Date today() const { return today_; }
  // Or are they substitutes for what could not be read?
  bool knows_units_and_day() const { return knows_units_and_day_; }
  const Input& input() const { return input_; }
  bool ok() const { return problems_.empty(); }
  const std::vector<Problem>& problems() const { return problems_; }
  // The form no longer has them.
  std::vector<Problem> take_problems() { return std::exchange(problems_, {}); }

  // One row of a list: the same, by the row's own fields.
  class Row {
   public:
    template <class F>
    auto read(const F& field) const {
      return form_.read_at(prefix_, field);
    }
    std::string_view text(const AnyField& field) const { return form_.text_at(prefix_, field); }
    bool given(const AnyField& field) const { return form_.given_at(prefix_, field); }
    std::optional<standard::TyreAge> tyre_age(const TextField& field,
                                              const std::optional<sidewall::Reading>& tyre) const {
      return form_.tyre_age_at(prefix_, field, tyre);
    }
    // Would the field take this value, calculated or read elsewhere? If not, it becomes a problem
    // of the field.
    template <class Q>
    bool takes(const QuantityField<Q>& field, Q value) const {
      return form_.takes_at(prefix_, field, value.stored(), write(value, form_.units_));
    }
    // The text in a field as a name; empty where there is none.
    Typed name(const AnyField& field) const { return Typed(text(field)); }
    void problem(const AnyField& field, std::string_view code, Text text) const {
      form_.problem_at(path(field), code, std::move(text));
    }
    std::string path(const AnyField& field) const { return prefix_ + std::string(field.id); }

   private:
    friend class FormReader;
    Row(FormReader& form, std::string prefix) : form_(form), prefix_(std::move(prefix)) {}
    FormReader& form_;
    std::string prefix_;
  };
  Row row(const ListField& list, std::size_t number);
  // How many rows a list has; too many is a problem, and none is read.
  std::size_t rows(const ListField& list);

  template <class F>
  auto read(const F& field) {
    return read_at({}, field);
  }
  std::string_view text(const AnyField& field) const { return text_at({}, field); }
  bool given(const AnyField& field) const { return given_at({}, field); }
  // By the date code typed into a field and the one in the sidewall text: of two, the older.
  std::optional<standard::TyreAge> tyre_age(const TextField& field,
                                            const std::optional<sidewall::Reading>& tyre) {
    return tyre_age_at({}, field, tyre);
  }

  // How wet the road is, by a word and by a ruler; nothing if one of them cannot be read.
  std::optional<judge::RoadWater> road_water(const QuantityField<Length>& ruler);

  void problem(const AnyField& field, std::string_view code, Text text) {
    problem_at(field.id, code, std::move(text));
  }
  // At a path outside this form's own fields, such as another form's.
  void problem_at(std::string_view path, std::string_view code, Text text);
  // "# is missing. Something like # would do."
  void missing(const AnyField& field, std::string_view example);

 private:
  template <class Q>
  std::optional<Q> read_at(std::string_view prefix, const QuantityField<Q>& field) {
    if (const auto stored = stored_quantity(prefix, field)) return Q::stored(*stored);
    return std::nullopt;
  }
  // Within the field's bounds.
  std::optional<double> read_at(std::string_view prefix, const NumberField& field) {
    return stored_quantity(prefix, field);
  }
  // The chosen value, the initial one if nothing was given, or nothing and a problem.
  template <class T>
  std::optional<T> read_at(std::string_view prefix, const ChoiceField<T>& field) {
    if (const auto value = choice(prefix, field)) return field.meaning(*value);
    return std::nullopt;
  }
  std::optional<bool> read_at(std::string_view prefix, const YesNoField& field);
  std::optional<standard::Date> read_at(std::string_view prefix, const DateField& field);
  // What the sidewall says; a problem if it is missing or cannot be read.
  std::optional<sidewall::Reading> read_at(std::string_view prefix, const SidewallField& field);

  std::string_view text_at(std::string_view prefix, const AnyField& field) const;
  bool given_at(std::string_view prefix, const AnyField& field) const;
  std::optional<double> stored_quantity(std::string_view prefix, const AnyQuantityField& field);
  bool takes_at(std::string_view prefix, const AnyQuantityField& field, double stored,
                std::string written);
  std::optional<std::string_view> choice(std::string_view prefix, const AnyChoiceField& field);
  std::optional<standard::TyreAge> tyre_age_at(std::string_view prefix, const TextField& field,
                                               const std::optional<sidewall::Reading>& tyre);
  void refuse_unknown_fields();
  void read_units_and_day();

  const SheetDescription& sheet_;
  const Input& input_;
  TextsByRow texts_;
  std::vector<Problem> problems_;
  UnitSystem units_ = UnitSystem::metric;
  standard::Date today_;
  bool knows_units_and_day_ = false;
};

}  // namespace treadwater::sheets
