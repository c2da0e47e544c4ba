// The languages an answer can be given in. English is in the source; a catalogue gives each phrase
// its translation, whose gaps are numbered (#1 to #9) if their order differs. Anything missing from
// a catalogue is said in English.
//
// Keys are the English text; with a context, the context, U+0004 and the text; of a plural, the
// singular and the plural each as a key of its own. The key "" says when to use the plural: "n > 1"
// or "n != 1".
#pragma once

#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/words/phrase.hpp"

namespace treadwater {

// English phrases, each with its translation.
using Catalogue = std::vector<std::pair<std::string, std::string>>;

// Stores a catalogue under the name that a request will use ("fr"), replacing an earlier one. Not
// while another thread is answering.
void learn(std::string_view language, Catalogue catalogue);

// While it lives, this thread uses the language; English if it was never learnt.
class Speaking {
 public:
  explicit Speaking(std::string_view language);
  ~Speaking();
  Speaking(const Speaking&) = delete;
  Speaking& operator=(const Speaking&) = delete;

 private:
  const void* before_;
};

// The phrase in the current language.
std::string_view spoken(Phrase phrase);

// Is the current language other than English?
bool translating();

// Does this count take the plural, by the rule of the current language?
bool is_plural(double count);

}  // namespace treadwater
