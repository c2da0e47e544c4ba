// The text as the matchers see it: one plain character for each moulded character.
//
// Letters become capitals; every kind of blank (tab, no-break, narrow no-break, thin ...) becomes
// one space, runs of them too; every multiplication sign becomes 'X'; every dash '-'; full-width
// letters and digits become plain ones; fractions such as ½ one private character. Anything else
// that is not ASCII becomes `foreign`, and so does each byte of invalid UTF-8. Each character
// remembers the byte it came from, so that every answer can point into the user's own text.
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>

#include "core/quantity/text.hpp"

namespace treadwater::sidewall {

inline constexpr std::size_t longest_text = 400;  // bytes
inline constexpr std::size_t nowhere = static_cast<std::size_t>(-1);

inline constexpr char foreign = '\x01';
inline constexpr char half = '\x02';
inline constexpr char quarter = '\x03';
inline constexpr char three_quarters = '\x04';

constexpr bool is_letter(char c) { return c >= 'A' && c <= 'Z'; }
constexpr bool is_word(char c) { return is_digit(c) || is_letter(c) || c == foreign; }

class Text {
 public:
  explicit Text(std::string_view source);  // source.size() <= longest_text

  std::size_t size() const { return size_; }
  // The character at `i`; past the end a zero.
  char at(std::size_t i) const { return i < size_ ? characters_[i] : '\0'; }
  // Byte offset in the source of character `i`; at the end, the source's size.
  std::size_t byte(std::size_t i) const { return i < size_ ? bytes_[i] : source_.size(); }
  std::size_t end_byte(std::size_t begin, std::size_t end) const;  // end of the last character read
  std::string_view source() const { return source_; }

  // First position at or after `i` that is not a space.
  std::size_t past_space(std::size_t i) const { return at(i) == ' ' ? i + 1 : i; }
  // Is `word` (capitals) at `i`?
  bool starts(std::size_t i, std::string_view word) const;
  // The source between two characters, trimmed, with anything unprintable shown as '?'.
  std::string quote(std::size_t begin, std::size_t end) const;

 private:
  void put(char c, std::size_t byte);

  std::string_view source_;
  std::size_t size_ = 0;
  std::array<char, longest_text> characters_;
  std::array<std::uint16_t, longest_text> bytes_;
};

// A number as read: value x 10 000 so that 1/16 and .25 stay whole.
inline constexpr std::int32_t number_scale = 10000;

struct Number {
  std::size_t end = nowhere;  // nowhere: no number here
  std::int32_t scaled = 0;
  int digits = 0;         // before the point
  int decimals = 0;       // after it
  bool fraction = false;  // 3 1/2
  std::int32_t whole() const { return scaled / number_scale; }
};

Number integer_at(const Text& text, std::size_t i);   // the whole run of digits, at most 6
Number decimal_at(const Text& text, std::size_t i);   // point or comma, at most 4 decimals
Number fraction_at(const Text& text, std::size_t i);  // 3, 3.5, 3 1/2, 3-1/2, 3½

// The end of the word or decimal number at `i`.
std::size_t token_end(const Text& text, std::size_t i);

// A short line of text on the stack, copied to the heap once: a size, or the meaning of one part.
// The longest is below 100 bytes; anything more is dropped.
class Line {
 public:
  Line& add(char c) {
    if (size_ < characters_.size()) characters_[size_++] = c;
    return *this;
  }
  Line& add(std::string_view text);
  Line& add_number(std::int32_t value);                         // 205
  Line& add_scaled(std::int32_t scaled, int decimals_min = 0);  // 10.5, 10.50, 22.5
  Line& add_fraction(std::int32_t scaled);                      // 3 1/2
  bool empty() const { return size_ == 0; }
  std::string_view view() const { return {characters_.data(), size_}; }
  std::string text() const { return std::string(characters_.data(), size_); }

 private:
  std::array<char, 200> characters_;
  std::size_t size_ = 0;
};

}  // namespace treadwater::sidewall
