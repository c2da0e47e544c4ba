// The language in which sentences are said. They are written in English here, whole, with a # for
// each gap; a catalogue gives each its counterpart in another language, whose gaps may be numbered
// (#1 to #9) where they stand in another order. What a catalogue does not know is said in English.
#pragma once

#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace treadwater {

// English sentences, each with its counterpart.
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

// The counterpart of a sentence or phrase, or the phrase itself.
std::string_view worded(std::string_view english);

// A label within a sentence: English takes its capital off, "the limit is load at this pressure";
// the other languages are given sentences that take a label as it stands.
std::string within_sentence(std::string_view label);

// "2.5 bar" with the decimal sign of the language. For quantities: a tyre's size keeps its points.
std::string worded_quantity(std::string_view english);

}  // namespace treadwater
