#include "core/quantity/language.hpp"

#include <cstdint>

#include "core/quantity/text.hpp"

namespace treadwater {
namespace {

struct Language {
  std::string name;
  Catalogue catalogue;
  std::vector<std::uint16_t> places;  // hash to 1 + index; a power of two long, over half empty
};

// Never moved while it is spoken: learning comes between answers.
std::vector<Language>& languages() {
  static std::vector<Language> learnt;
  return learnt;
}

thread_local const Language* spoken = nullptr;

// FNV-1a.
std::size_t hash(std::string_view text) {
  std::uint32_t sum = 2166136261U;
  for (char c : text) sum = (sum ^ static_cast<unsigned char>(c)) * 16777619U;
  return sum;
}

// Where a phrase stands in `places`, or would.
std::size_t place_of(const Language& language, std::string_view english) {
  const std::size_t last = language.places.size() - 1;
  std::size_t at = hash(english) & last;
  while (language.places[at] != 0 && language.catalogue[language.places[at] - 1U].first != english)
    at = (at + 1) & last;
  return at;
}

Language* find(std::string_view name) {
  for (Language& language : languages())
    if (language.name == name) return &language;
  return nullptr;
}

}  // namespace

void learn(std::string_view name, Catalogue catalogue) {
  if (find(name) == nullptr) languages().push_back({std::string(name), {}, {}});
  Language& language = *find(name);
  catalogue.resize(catalogue.size() < 30000 ? catalogue.size() : 30000);
  std::size_t size = 16;
  while (size < 2 * catalogue.size()) size *= 2;
  language.catalogue = std::move(catalogue);
  language.places.assign(size, 0);
  for (std::size_t i = 0; i < language.catalogue.size(); ++i)
    language.places[place_of(language, language.catalogue[i].first)] =
        static_cast<std::uint16_t>(i + 1);
}

Speaking::Speaking(std::string_view language) : before_(spoken) { spoken = find(language); }
Speaking::~Speaking() { spoken = static_cast<const Language*>(before_); }

// The empty key of a catalogue is no sentence: it tells the language's rule for plurals.
std::string_view worded(std::string_view english) {
  if (spoken == nullptr || english.empty()) return english;
  const std::uint16_t found = spoken->places[place_of(*spoken, english)];
  return found == 0 ? english : std::string_view(spoken->catalogue[found - 1U].second);
}

std::string within_sentence(std::string_view label) {
  std::string text(worded(label));
  if (spoken == nullptr && !text.empty() && text[0] >= 'A' && text[0] <= 'Z')
    text[0] = static_cast<char>(text[0] - 'A' + 'a');
  return text;
}

std::string worded_quantity(std::string_view english) {
  std::string text;
  for (std::size_t i = 0; i < english.size(); ++i) {
    if (english[i] == '.' && i > 0 && is_digit(english[i - 1]) && i + 1 < english.size() &&
        is_digit(english[i + 1]))
      text += worded(".");
    else
      text += english[i];
  }
  return text;
}

}  // namespace treadwater
