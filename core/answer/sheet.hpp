// The room `answer`: one file per sheet. A sheet describes itself as data (its form) and turns what
// a person typed into an Answer (what the page draws). Nothing here knows JSON or HTML.
//
// To add a sheet: write core/answer/<name>.{hpp,cpp} with a `SheetDescription` and a function
// `Answer(const Input&)`, and add it to the table in sheets.cpp. The page needs no change.
#pragma once

#include <initializer_list>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/quantity/read.hpp"
#include "core/standard/source.hpp"

namespace treadwater::answer {

// ---- the form ----

enum class FieldKind { text, quantity, choice };

struct Choice {
  std::string_view value;
  std::string_view label;
};

struct Field {
  std::string_view id;
  std::string_view label;
  std::string_view hint;
  FieldKind kind = FieldKind::text;
  bool required = false;
  std::string_view initial;  // the value of a form nobody has touched
  std::string_view example;
  std::vector<Choice> choices;              // kind choice
  std::optional<QuantityRequest> quantity;  // kind quantity
  std::vector<std::string_view> units;      // kind quantity: the first is that of a bare number
  std::vector<std::string_view> preferred;  // kind quantity: for metric, uk, us
};

struct Preset {
  std::string_view id;
  std::string_view title;
  std::string_view text;
  std::vector<std::pair<std::string_view, std::string_view>> input;
};

struct SheetDescription {
  std::string_view id;
  std::string_view title;
  std::string_view purpose;
  std::vector<Field> fields;
  Preset example;  // an invented case, answered for a first-time visitor
};

// ---- what a person typed ----

class Input {
 public:
  void set(std::string_view id, std::string text) { texts_.emplace_back(id, std::move(text)); }
  // The text of a field; empty where it was not given. The last one wins.
  std::string_view text(std::string_view id) const;
  const std::vector<std::pair<std::string, std::string>>& all() const { return texts_; }

 private:
  std::vector<std::pair<std::string, std::string>> texts_;
};

// ---- the answer ----

enum class Level { note, care, unfit };

struct Problem {
  std::string field;
  std::string code;
  std::string text;
};

using Sources = std::vector<const Source*>;

// Some sources, lent for the length of a call: a list written out, or one already kept. Sentences
// and sources are handed around as views, and copied once where they are kept: that is much less
// code.
class SomeSources {
 public:
  SomeSources() = default;
  SomeSources(std::initializer_list<const Source*> list) : list_(list) {}
  SomeSources(const Sources& kept) : kept_(&kept) {}
  Sources kept() const { return kept_ != nullptr ? *kept_ : Sources(list_); }

 private:
  std::initializer_list<const Source*> list_;
  const Sources* kept_ = nullptr;
};

struct Limit {
  std::string id;
  std::string label;
  Speed central;
  Speed low;
  Speed high;
  double share_kept = 1.0;  // of the low value, for the hold-to speed
  std::string text;
  std::string why;
  Sources sources;
};

struct HoldTo {
  Speed speed;
  std::string text;
  std::string governed_by;
  std::string why;
};

struct Figure {
  std::string id;
  std::string label;
  double value = 0.0;
  std::string_view unit;
  std::optional<double> low;
  std::optional<double> high;
  std::string text;
  std::string note;
  Sources sources;
};

struct Caution {
  std::string id;
  Level level = Level::note;
  std::string reason;  // a clause for the verdict: "the tread is under the legal minimum"
  std::string text;
  Sources sources;
};

struct Verdict {
  Level level = Level::note;  // note reads "fit"
  std::string text;
};

// A drawing to scale, in millimetres.
struct Box {
  double x = 0.0;
  double y = 0.0;
  double width = 0.0;
  double height = 0.0;
  double radius = 0.0;
  std::string_view role;  // subject, reference
  std::string label;
};

struct Drawing {
  std::string id;
  std::string title;
  std::string text;
  double width = 0.0;
  double height = 0.0;
  std::vector<Box> boxes;
};

// A text with what each stretch of it means, for the picture of a sidewall. The stretches in order
// are the whole text; those between the parts have no meaning.
struct Stretch {
  std::string text;
  std::string meaning;
};

struct Marking {
  std::string id;
  std::string title;
  std::string text;
  std::vector<Stretch> stretches;
};

struct Spoken {
  std::string id;
  std::string title;
  std::string text;
};

struct Answer {
  std::string sheet;
  std::vector<Problem> problems;
  std::optional<Verdict> verdict;
  std::optional<HoldTo> hold_to;
  std::vector<Limit> limits;  // ranked: the governing one first
  std::vector<Figure> figures;
  std::vector<Caution> cautions;  // most serious first
  std::vector<Drawing> drawings;
  std::vector<Marking> markings;
  std::vector<Spoken> spoken;

  bool ok() const { return problems.empty(); }
};

// ---- what every sheet shares ----

// Fields the sheet does not have, each as a problem that names it. `today` is always allowed.
void refuse_unknown_fields(const SheetDescription& sheet, const Input& input, Answer& answer);

const Field& field_of(const SheetDescription& sheet, std::string_view id);

// The quantity, or nothing and a problem. A missing optional field is nothing without a problem.
std::optional<double> stored_quantity_of(const SheetDescription& sheet, const Input& input,
                                         std::string_view id, Answer& answer);
template <class Q>
std::optional<Q> quantity_of(const SheetDescription& sheet, const Input& input, std::string_view id,
                             Answer& answer) {
  if (const auto stored = stored_quantity_of(sheet, input, id, answer)) return Q::stored(*stored);
  return std::nullopt;
}

// The chosen value, the initial one where nothing was given, or nothing and a problem.
std::optional<std::string_view> choice_of(const SheetDescription& sheet, const Input& input,
                                          std::string_view id, Answer& answer);

// Limits are kept ranked, the lowest hold-to speed first; cautions most serious first. Equals stay
// in the order in which they were said.
void add_limit(Answer& answer, Limit limit);
void add_caution(Answer& answer, Caution caution);

// Adds a source that is not there yet; two sources never share an id.
void add_once(Sources& sources, const Source& source);

// The sources an answer uses, each once.
Sources sources_used(const Answer& answer);

extern const std::string_view safety_words;

}  // namespace treadwater::answer
