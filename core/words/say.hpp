// Saying things: a phrase in the reader's language, its gaps filled. Sentences stand in the source
// whole, as a reader meets them, so that each language can order its own.
#pragma once

#include <initializer_list>
#include <string>
#include <string_view>
#include <vector>

#include "core/words/phrase.hpp"

namespace treadwater {

// What a person reads: said already, written in figures, or typed. It is never looked up again, and
// never made of a bare literal, which nobody would have translated.
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

// A text lent for the length of a call: what fills a gap, or is kept by whoever is called.
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
// value of that number; one too many takes nothing.
std::string say(Phrase sentence, const TextView* values, std::size_t count);
inline std::string say(Phrase sentence, Gaps values = {}) {
  return say(sentence, values.begin(), values.size());
}
template <std::size_t N>
std::string say(const char (&sentence)[N], Gaps values = {}) {
  return say(Phrase(sentence), values.begin(), values.size());
}

// plural("# stage", "# stages", n, {…}): by the language's own rule for so many.
std::string plural(Phrase one, Phrase other, double count, Gaps values);
template <std::size_t N, std::size_t M>
std::string plural(const char (&one)[N], const char (&other)[M], double count, Gaps values) {
  return plural(Phrase(one), Phrase(other), count, values);
}

// A label within a sentence: English takes its capital off, "the limit is load at this pressure";
// the other languages are given sentences that take a label as it stands.
std::string within_sentence(std::string_view label);

// "cut slick" as a sentence begins: "Cut slick". A letter beyond ASCII stays as it is.
std::string at_head(std::string_view text);

// What a person typed, in the quotation marks of the language.
std::string in_quotes(std::string_view typed);

// "2.5 bar" with the decimal sign of the language, "4 degrees" with its word. For quantities: a
// tyre's size keeps its points.
std::string quantity_in_words(std::string_view english);

// "a, b, or c" as alternatives, of up to `most`; a list that ends in "or".
std::string alternatives(const std::vector<std::string>& items);

// Whole sentences one after another, with a blank between them; empty ones are passed over.
std::string sentences(std::initializer_list<std::string_view> said);

}  // namespace treadwater
