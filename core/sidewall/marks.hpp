// Everything moulded on a tyre besides its size and service description: the table of marks.
//
// A row gives the mark's id, its spellings, the one spelling used in a canonical text, its plain
// meaning, what it changes in the Reading, and how it is known. Marks are found anywhere in the
// text. In a spelling ' ' is any short gap or none (space, point, colon, dash), '#' a number and
// '@' a short word that become the mark's value; '|' separates spellings.
#pragma once

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>

#include "core/sidewall/service.hpp"
#include "core/sidewall/text.hpp"
#include "core/standard/source.hpp"
#include "core/words/phrase.hpp"

namespace treadwater::sidewall {

enum class Effect : std::uint8_t {
  none,
  extra_load,
  run_flat,
  camper,
  light_truck,
  motorcycle,
  radial,
  cross_ply,
  bias_belted,
  ply,
  load_range,
  kilopascals,
  psi,
  bar,
  dot,
  date,
  approval,
  competition,
  is_car,  // words a person adds, not moulded: they decide which family is meant
  is_truck,
  by_place,  // found by read.cpp from their position
  label,     // words around the marks that mean nothing by themselves
};

struct MarkRow {
  std::string_view id;
  std::string_view spellings;
  std::string_view canonical;  // empty: said by a field of the Reading, or not repeated
  Phrase meaning;              // '#' stands for the value
  Effect effect = Effect::none;
  Standing standing = Standing::memory;
  std::size_t (*find)(const Text&, std::size_t, Span& value) = nullptr;  // in place of spellings
};

struct MarkTable {
  const MarkRow* rows;
  std::size_t size;
};
MarkTable mark_table();
std::uint8_t mark_row(std::string_view id);  // the first row of that id; it must exist

struct MarkFound {
  std::uint8_t row = 0;
  std::size_t end = nowhere;
  Span value;
  Span date;  // of a DOT code
};

// The mark that begins at `i`, if any.
MarkFound find_mark(const Text& text, std::size_t i);

// XL, TL, M+S ... that people run together with the mark before: is a whole one here?
bool touching_mark_at(const Text& text, std::size_t i);

// `words` with its value for each '#'.
std::string with_value(std::string_view words, std::string_view value);

// Plain words for a mark as read.
std::string mark_meaning(const MarkRow& row, std::string_view value);

// A date code (WWYY, or WWY before 2000) in words, empty if its week is no week.
std::string date_meaning(std::string_view digits);

// Load range letter -> ply rating: A 2, B 4, C 6 ... N 24; 0 for other letters.
int ply_rating_of(char load_range);

}  // namespace treadwater::sidewall
