// What the reader has found in one text, before it is put into words.
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <optional>

#include "core/sidewall/families.hpp"
#include "core/sidewall/marks.hpp"

namespace treadwater::sidewall {

// A size as found: its shape and what each element took.
struct Size {
  Shape shape = Shape::metric;
  std::size_t begin = nowhere;
  std::size_t end = nowhere;
  Hits hits{};
  bool found() const { return begin != nowhere; }
};

const Hit* find_hit(const Size& size, Element element);  // null if missing

struct Seen {
  std::uint8_t row = 0;
  Span place;            // the whole mark
  Span value;            // its value in the text, if it has one
  bool in_code = false;  // a date inside a DOT code
};

inline constexpr std::size_t most_marks = 32;
inline constexpr std::size_t most_leftovers = 16;

struct Tyre {
  Size size;
  Facts facts;
  std::size_t family = 0;  // row
  Fit fit = Fit::no;
  Service second_service;
  bool second_is_unusual = false;
  bool size_twice = false;
  Span bare_index;       // a number that may be a load index
  Span commercial_mark;  // C, CP, LT, M/C: places, for the picture
  Span light_mark;
  Span cycle_mark;
  std::array<Seen, most_marks> marks;  // only the first mark_count are set
  std::size_t mark_count = 0;
  std::array<Span, most_leftovers> leftovers;
  std::size_t leftover_count = 0;
};

// The first size in the text, sure ones before doubtful ones. `miss` may be null.
Size find_size(const Text& text, Miss* miss);
Size find_size_at(const Text& text, std::size_t i, bool strong, Miss* miss);
bool goes_on_from_a_number(const Text& text, std::size_t i);
Facts facts_of(const Size& size);
bool any_family_fits(const Facts& facts);

// The value of a mark, as in the text: capitals, a point for a comma.
std::string mark_value(const Text& text, const Seen& seen);

// How the tyre is spelled as a member of the family.
std::string canonical(const Text& text, const Tyre& tyre, Family family);
std::string canonical_size(const Tyre& tyre, Family family);

// Puts what was found into words.
Reading put_into_words(const Text& text, const Tyre& tyre);

// Reads the text once; false if it cannot be read.
bool reads(const Text& text, Tyre& out);

// The question whether a letter was typed for a digit that looks like it, if changing one makes
// sense of the text. `tyre` is what was read; null if the text could not be read.
std::optional<Trouble> slip_in(const Text& text, const Tyre* tyre);

// A second tyre's width and series, a wheel or an inner tube, where the text holds one. `tyre` is
// what was read; null if the text could not be read.
std::optional<Trouble> other_thing_in(const Text& text, const Tyre* tyre);

// For suggestions: the canonical text of what can be read, nothing otherwise.
std::string canonical_if_it_reads(std::string_view text);

Trouble trouble_without_size(const Text& text);
Trouble trouble_no_family(const Text& text, std::size_t begin, std::size_t end);
Trouble trouble_two_sizes(const Text& text, const Tyre& tyre, const Size& second);
Trouble trouble_impossible_index(const Text& text, const Tyre& tyre);
Trouble trouble_service(const Text& text, const Tyre& tyre, const ServiceRead& service,
                        std::size_t at);

}  // namespace treadwater::sidewall
