// The two kinds of words in an answer, as two types: a Phrase is ours and is translated; what a
// person typed is Typed and is never translated.
//
// The room `words`:
//   phrase     Phrase and Typed
//   say        sentences with their gaps filled, plural forms, lists, quotes
//   catalogue  a Phrase's translation
//   problem    what to say of a quantity that cannot be read
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace treadwater {

// A sentence, clause or label of ours, in English, whole, with a # for each gap. The literal is its
// key in the catalogues (web/languages), which are collected by searching for `Phrase(` and `say(`;
// so it can only be made from a literal. If one English text has two meanings, a context and U+0004
// precede it: Phrase("of a road\x04" "wet").
//
// It is one pointer, passed in a register: a module has a thousand of them.
class Phrase {
 public:
  constexpr Phrase() = default;
  template <std::size_t N>
  explicit constexpr Phrase(const char (&literal)[N]) : key_(literal) {}

  constexpr std::string_view key() const { return key_; }  // with its context
  constexpr std::string_view english() const {
    const std::string_view all = key_;
    const std::size_t context = all.find('\x04');
    return context == std::string_view::npos ? all : all.substr(context + 1);
  }
  constexpr bool empty() const { return *key_ == '\0'; }
  constexpr bool operator==(const Phrase& other) const { return key() == other.key(); }

 private:
  const char* key_ = "";
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
