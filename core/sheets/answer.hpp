// A sheet's answer: structures that the page draws, in the reader's language.
// core/json/answering.cpp writes them, and each kind of block has a renderer in
// web/src/answer/blocks.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/judge/finding.hpp"
#include "core/quantity/quantity.hpp"
#include "core/words/say.hpp"

namespace treadwater::sheets {

using judge::Level;
using judge::Sources;

struct Problem {
  std::string field;
  std::string code;
  Text text;
};

struct Limit {
  std::string id;
  Text label;
  Speed central;
  Speed low;
  Speed high;
  double share_kept = 1.0;  // of the low value, for the maximum speed
  Text text;
  Text why;
  Sources sources;
};

struct HoldTo {
  Speed speed;
  Text text;
  std::string governed_by;
  Text why;
};

// Instead of a maximum speed: nothing limits it below the road's own limit.
struct NoLimit {
  Text text;
  std::optional<Speed> own;  // its own limit, above that
  Text own_text;
};

struct Figure {
  std::string id;
  Text label;
  double value = 0.0;
  std::string_view unit;
  std::optional<double> low;
  std::optional<double> high;
  Text text;
  Text note;
  Sources sources;
};

struct Caution {
  std::string id;
  Level level = Level::note;
  Text text;
  Sources sources;
};

struct Verdict {
  Level level = Level::note;  // note reads "fit"
  Text text;
};

// A drawing to scale, in millimetres.
struct Box {
  double x = 0.0;
  double y = 0.0;
  double width = 0.0;
  double height = 0.0;
  double radius = 0.0;
  // subject, reference, detail, or scale: a familiar object of known size
  std::string_view role;
  Text label;
};

struct Drawing {
  std::string id;
  Text title;
  Text text;
  double width = 0.0;
  double height = 0.0;
  std::vector<Box> boxes;
};

// A text with the meaning of each stretch, for the picture of a sidewall. The stretches in order
// are the whole text; those between the parts have no meaning.
struct Stretch {
  std::string text;
  Text meaning;
};

struct Marking {
  std::string id;
  Text title;
  Text text;
  std::vector<Stretch> stretches;
};

struct Spoken {
  std::string id;
  Text title;
  Text text;
};

// The first cell of a row names it. `picked_by` is a column with few different words, by which the
// rows of a long table may be filtered.
struct Table {
  std::string id;
  Text title;
  Text text;
  std::vector<Text> columns;
  std::vector<std::vector<Text>> rows;
  Text picked_by{};
};

// Charts are in the user's units: their numbers are only drawn.
struct Axis {
  Text label;
  Text unit;
};

// A curve; if `low` and `high` are as long as `y`, it has a band.
struct Series {
  std::string_view role;  // subject (what was asked about), reference (what it is compared with)
  Text label;
  std::vector<double> x;
  std::vector<double> y;
  std::vector<double> low;
  std::vector<double> high;
};

struct ChartMark {  // "you are here"
  double x = 0.0;
  double y = 0.0;
  Text label;
};

struct Chart {
  std::string id;
  Text title;
  Text text;  // what the chart shows, in a sentence
  Axis x;
  Axis y;
  std::vector<Series> series;
  std::vector<ChartMark> marks;
  Table table;  // the same as figures, at a few points
};

// A value over two axes: values[row][column] belongs to y[row] and x[column].
struct Map {
  std::string id;
  Text title;
  Text text;
  Axis x;
  Axis y;
  Axis value;
  std::vector<double> xs;
  std::vector<double> ys;
  std::vector<std::vector<double>> values;
  std::vector<ChartMark> marks;
};

// What happens in order: stages with the set that is on, a leak from full to flat. `share` is a
// step's share of the whole length; `level` and `text` give the state there.
struct Step {
  Text label;
  Text text;
  double share = 1.0;
  Level level = Level::note;
};

struct Timeline {
  std::string id;
  Text title;
  Text text;
  std::vector<Step> steps;
};

struct Answer {
  std::string sheet;
  std::vector<Problem> problems;
  std::optional<Verdict> verdict;
  std::optional<HoldTo> hold_to;
  std::optional<NoLimit> no_limit;
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

// The sources an answer uses, each once.
Sources sources_used(const Answer& answer);

extern const Phrase safety_words;

}  // namespace treadwater::sheets
