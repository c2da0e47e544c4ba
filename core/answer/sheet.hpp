// The room `answer`: one file per sheet. A sheet describes itself as data (its form) and turns what
// a person typed into an Answer (what the page draws). Nothing here knows JSON or HTML.
//
// To add a sheet: write core/answer/<name>.{hpp,cpp} (and <name>_form.cpp) with a
// `SheetDescription` and a function `Answer(const Input&)`, and add it to the table in sheets.cpp.
// heads.hpp names it, teller.hpp reads fields and says things, form.hpp makes fields. The page
// needs no change.
#pragma once

#include <initializer_list>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/quantity/progress.hpp"
#include "core/quantity/read.hpp"
#include "core/standard/source.hpp"

namespace treadwater::answer {

// ---- the form ----

enum class FieldKind { text, quantity, choice, yes_no, date, list };

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
  std::vector<Field> fields;                // kind list: those of one row
  std::vector<std::string_view> row_names;  // kind list: if given, there are these rows and no more
  std::size_t most_rows = 0;                // kind list: no more than these are read
  std::vector<std::string_view> also;       // what else its column is called in people's own tables
};

// Values under their fields' ids; in a list under their paths ("corners.0.load"), row by row.
struct Preset {
  std::string_view id;
  std::string_view title;
  std::string_view text;
  std::vector<std::pair<std::string_view, std::string_view>> input;
};

struct SheetHead {
  std::string_view id;  // part of every link anybody has kept
  std::string_view title;
  std::string_view purpose;
  bool long_work = false;  // an answer can take longer than a person should wait for a keystroke
  std::size_t longest_input = 64 * 1024;  // bytes of JSON
};

struct SheetDescription {
  SheetHead head;
  std::vector<Field> fields;
  Preset example;  // an invented case, answered for a first-time visitor
};

// ---- what a person typed ----

// A field of a list has a path: "corners.0.load" is the load in the first row.
class Input {
 public:
  void set(std::string_view path, std::string text) { texts_.emplace_back(path, std::move(text)); }
  void set_rows(std::string_view list, std::size_t count) { rows_.emplace_back(list, count); }
  // The text of a field; empty where it was not given. The last one wins.
  std::string_view text(std::string_view path) const;
  std::size_t rows(std::string_view list) const;
  const std::vector<std::pair<std::string, std::string>>& all() const { return texts_; }
  const std::vector<std::pair<std::string, std::size_t>>& lists() const { return rows_; }
  // Who is told how far a long answer has come.
  Progress progress = nullptr;

 private:
  std::vector<std::pair<std::string, std::string>> texts_;
  std::vector<std::pair<std::string, std::size_t>> rows_;
};

// "corners.0.load"
std::string row_path(std::string_view list, std::size_t row, std::string_view field);

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
  // subject, reference, detail, or scale: a thing of known size that everybody carries
  std::string_view role;
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

// The first cell of a row names it. `picked_by` is a column whose few different words
// the rows of a long table may be picked by.
struct Table {
  std::string id;
  std::string title;
  std::string text;
  std::vector<std::string> columns;
  std::vector<std::vector<std::string>> rows;
  std::string picked_by{};
};

// Charts are in the person's units: their numbers are only drawn.
struct Axis {
  std::string label;
  std::string unit;
};

// A curve; with `low` and `high` as long as `y` it carries a band.
struct Series {
  std::string_view role;  // subject (what was asked about), reference (what it is compared with)
  std::string label;
  std::vector<double> x;
  std::vector<double> y;
  std::vector<double> low;
  std::vector<double> high;
};

struct ChartMark {  // "you are here"
  double x = 0.0;
  double y = 0.0;
  std::string label;
};

struct Chart {
  std::string id;
  std::string title;
  std::string text;  // what the chart shows, in a sentence
  Axis x;
  Axis y;
  std::vector<Series> series;
  std::vector<ChartMark> marks;
  Table table;  // the same as figures, at a few places
};

// A value over two axes: values[row][column] belongs to y[row] and x[column].
struct Map {
  std::string id;
  std::string title;
  std::string text;
  Axis x;
  Axis y;
  Axis value;
  std::vector<double> xs;
  std::vector<double> ys;
  std::vector<std::vector<double>> values;
  std::vector<ChartMark> marks;
};

// What happens in turn: stages with the set that is on, a leak from full to flat. `share` is how
// much of the whole length a step takes; `level` and `text` say how it stands there.
struct Step {
  std::string label;
  std::string text;
  double share = 1.0;
  Level level = Level::note;
};

struct Timeline {
  std::string id;
  std::string title;
  std::string text;
  std::vector<Step> steps;
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
  std::vector<Chart> charts;
  std::vector<Map> maps;
  std::vector<Timeline> timelines;
  std::vector<Table> tables;

  bool ok() const { return problems.empty(); }
};

// ---- what every sheet shares ----

// The field at a path; null where the sheet has none.
const Field* find_field(const SheetDescription& sheet, std::string_view path);

// Fields the sheet does not have, each (of the first 50) as a problem that names it. `today` and
// `language` are
// always allowed.
void refuse_unknown_fields(const SheetDescription& sheet, const Input& input, Answer& answer);

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
