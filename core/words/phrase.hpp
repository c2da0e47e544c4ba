// The two kinds of words in an answer, as two types: a Phrase is ours and is said in the reader's
// language; what a person typed is Typed and is never translated.
//
// The room `words`:
//   phrase     Phrase and Typed
//   say        sentences with their gaps filled, plural forms, lists, quotes
//   catalogue  what a Phrase is in another language
//   problem    what to say of a quantity that does not read
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace treadwater {

// A sentence, clause or label of ours, in English, whole, with a # for each gap. The literal is its
// key in the catalogues (web/languages), which are gathered from the words `Phrase(` and `say(`;
// so it can be made of a literal only. `context` parts two meanings of one English text.
class Phrase {
 public:
  constexpr Phrase() = default;
  template <std::size_t N>
  explicit constexpr Phrase(const char (&english)[N], std::string_view context = {})
      : english_(english, N - 1), context_(context) {}

  constexpr std::string_view english() const { return english_; }
  constexpr std::string_view context() const { return context_; }
  constexpr bool empty() const { return english_.empty(); }
  bool operator==(const Phrase&) const = default;

 private:
  std::string_view english_;
  std::string_view context_;
};

// What a person typed, fit to be repeated: white space folded, control characters and broken UTF-8
// replaced, cut at 40 characters.
class Typed {
 public:
  explicit Typed(std::string_view raw);
  const std::string& text() const { return text_; }
  bool empty() const { return text_.empty(); }

 private:
  std::string text_;
};

}  // namespace treadwater
