// The languages an answer can be given in. English stands in the source; a catalogue gives each
// phrase its counterpart, whose gaps may be numbered (#1 to #9) where they stand in another order.
// What a catalogue does not know is said in English.
//
// Keys are the English text; with a context, the context, U+0004 and the text; of a plural, the
// singular and the plural each as a key of its own. The key "" holds when the plural is due: "n >
// 1" or "n != 1".
#pragma once

#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/words/phrase.hpp"

namespace treadwater {

// English phrases, each with its counterpart.
using Catalogue = std::vector<std::pair<std::string, std::string>>;

// Keeps a catalogue under the name that a request will use ("fr"), in place of an earlier one. Not
// while another thread is answering.
void learn(std::string_view language, Catalogue catalogue);

// For as long as it lives, this thread speaks the language; English where it was never learnt.
class Speaking {
 public:
  explicit Speaking(std::string_view language);
  ~Speaking();
  Speaking(const Speaking&) = delete;
  Speaking& operator=(const Speaking&) = delete;

 private:
  const void* before_;
};

// The phrase in the language spoken.
std::string_view spoken(Phrase phrase);

// Is another language than English spoken?
bool translating();

// Is the plural due for so many, by the rule of the language spoken?
bool is_plural(double count);

}  // namespace treadwater
