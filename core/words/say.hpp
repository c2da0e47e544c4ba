// Says a phrase in the reader's language, with its gaps filled. Sentences are whole in the source,
// as the reader sees them, so that each language can use its own order.
#pragma once

#include <initializer_list>
#include <string>
#include <string_view>
#include <vector>

#include "core/words/phrase.hpp"

namespace treadwater {

// What a person reads: already translated, written in figures, or typed. It is never looked up
// again, and never made from a bare literal, which would not be translated.
class Text {
 public:
  Text() = default;
  Text(const Text&);
  Text(Text&&) noexcept;
  Text& operator=(const Text&);
  Text& operator=(Text&&) noexcept;
  ~Text();
  Text(Phrase ours);
  Text(const Typed& theirs) : text_(theirs.text()) {}
  Text(std::string written) : text_(std::move(written)) {}
  template <std::size_t N>
  explicit Text(const char (&)[N]) = delete;

  const std::string& str() const { return text_; }
  operator std::string_view() const { return text_; }
  operator const std::string&() const { return text_; }
  bool empty() const { return text_.empty(); }
  bool operator==(const Text&) const = default;
  friend bool operator==(const Text& text, std::string_view other) { return text.text_ == other; }

 private:
  std::string text_;
};

// A text lent for the length of a call: to fill a gap, or to be copied.
class TextView {
 public:
  TextView() = default;
  TextView(Phrase ours);
  TextView(const Typed& theirs) : text_(theirs.text()) {}
  TextView(const Text& text) : text_(text) {}
  TextView(const std::string& written) : text_(written) {}
  TextView(std::string_view written)
      : text_(written) {}  // a symbol or a code, the same in any language
  template <std::size_t N>
  explicit TextView(const char (&)[N]) = delete;

  std::string_view text() const { return text_; }
  Text kept() const { return std::string(text_); }

 private:
  std::string_view text_;
};

using Gaps = std::initializer_list<TextView>;

// say("# on a tyre rated for #.", {"430 kg", "400 kg"}): each # takes the next value, #1 to #9 the
// value of that number; a gap too many stays empty.
std::string say(Phrase sentence, const TextView* values, std::size_t count);
inline std::string say(Phrase sentence, Gaps values = {}) {
  return say(sentence, values.begin(), values.size());
}
template <std::size_t N>
std::string say(const char (&sentence)[N], Gaps values = {}) {
  return say(Phrase(sentence), values.begin(), values.size());
}

// plural("# stage", "# stages", n, {…}): by the language's own plural rule.
std::string plural(Phrase one, Phrase other, double count, Gaps values);
template <std::size_t N, std::size_t M>
std::string plural(const char (&one)[N], const char (&other)[M], double count, Gaps values) {
  return plural(Phrase(one), Phrase(other), count, values);
}

// A label within a sentence: English drops its capital, "the limit is load at this pressure"; the
// other languages have sentences that take a label unchanged.
std::string within_sentence(std::string_view label);

// "cut slick" at the start of a sentence: "Cut slick". A non-ASCII letter stays as it is.
std::string at_head(std::string_view text);

// What a person typed, in the quotation marks of the language.
std::string in_quotes(std::string_view typed);

// "2.5 bar" with the language's decimal sign, "4 degrees" with its word. For quantities: a tyre
// size keeps its points.
std::string quantity_in_words(std::string_view english);

// "a, b, or c" as alternatives, of up to `most`; a list that ends in "or".
std::string alternatives(const std::vector<std::string>& items);

// Whole sentences one after another, with a space between them; empty ones are skipped.
std::string sentences(std::initializer_list<std::string_view> said);

}  // namespace treadwater
