// What every sheet's answer is written with: it reads the form's fields, each in a line, and says
// things in the person's units. A sheet derives from it, or holds one.
#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "core/answer/date.hpp"
#include "core/answer/sheet.hpp"
#include "core/answer/tyre_age.hpp"
#include "core/quantity/write.hpp"
#include "core/sidewall/sidewall.hpp"

namespace treadwater::answer {

class Teller {
 public:
  // Refuses fields that the sheet does not have; reads `units` and `today`.
  Teller(const SheetDescription& sheet, const Input& input);

 protected:
  // ---- reading the form; a path is "load", or "tyres.0.load" in a list ----

  template <class Q>
  std::optional<Q> quantity(std::string_view path) {
    if (const auto stored = stored_quantity(path)) return Q::stored(*stored);
    return std::nullopt;
  }
  // The chosen value, the initial one where nothing was given, or nothing and a problem.
  std::optional<std::string_view> choice(std::string_view path);
  // Yes or no; nothing where neither was given, or where it was neither (a problem).
  std::optional<bool> yes_no(std::string_view path);
  // A plain number within the field's bounds, or nothing, with a problem where one was due.
  std::optional<double> number(std::string_view path);
  std::optional<Date> date(std::string_view path);
  std::string_view text(std::string_view path) const { return input_.text(path); }
  bool given(std::string_view path) const;
  // How many rows a list has; more than the most it takes is a problem, and none is read.
  std::size_t rows(std::string_view list);
  // The sidewall text in a field; a problem where it is missing or does not read.
  std::optional<sidewall::Reading> sidewall_text(std::string_view path);

  // By the date code typed into a field and the one in the sidewall text: of two, the older.
  std::optional<TyreAge> tyre_age(std::string_view path,
                                  const std::optional<sidewall::Reading>& tyre);

  void problem(std::string_view path, std::string_view code, std::string_view text);

  // ---- saying things ----

  void caution(const char* id, Level level, std::string_view reason, std::string_view text,
               SomeSources sources = {});
  void figure(const char* id, std::string_view label, double value, const char* unit,
              std::string_view text, SomeSources sources, std::string_view note = {},
              std::optional<double> low = {}, std::optional<double> high = {});
  // A limit without a band; at 0 km/h it reads "not at any speed".
  void fixed_limit(const char* id, std::string_view label, Speed speed, std::string_view why,
                   SomeSources sources);
  void speak(std::string_view text);

  std::string speed_text(Speed v) const { return write(v, units_); }
  // "74 km/h (59 to 85 km/h)"
  std::string band_text(Speed central, Speed low, Speed high) const;
  std::string spoken_speed(Speed v) const;  // "50 kilometres an hour"

  void caution(std::optional<Caution> said);
  // By the week that the sidewall text names.
  void caution_of_marked_age(const sidewall::Reading& tyre);
  // What makes it unfit at any speed becomes a limit, where none of the limits says so already.
  // Does it stand still?
  bool stop_where_no_speed_helps();
  // The hold-to speed from the limit that bites first, if there is any.
  void hold_to();
  // The verdict from the cautions: `fit` where none is worse than a note; the reasons of the worst
  // fill the gap in the others.
  void conclude(std::string_view fit, const char* care = "Fit only with care: #.",
                const char* unfit = "Not fit as it stands: #.");

  const SheetDescription& sheet_;
  const Input& input_;
  Answer answer_;
  UnitSystem units_ = UnitSystem::metric;
  Date today_;

 private:
  const Field& field(std::string_view path) const;
  std::optional<double> stored_quantity(std::string_view path);
  void read_today();
};

}  // namespace treadwater::answer
