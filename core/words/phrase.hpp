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
// key in the catalogues (web/languages), which are gathered from the words `Phrase(` and `say(`; so
// it can be made of a literal only. Where one English text has two meanings, a context and U+0004
// stand before it: Phrase("of a road\x04" "wet").
//
// It is one pointer, which a function takes in a register: there are a thousand of them in a
// module.
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
