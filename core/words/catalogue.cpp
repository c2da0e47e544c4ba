#include "core/words/catalogue.hpp"

#include <cstdint>

#include "core/quantity/text.hpp"
#include "core/quantity/write.hpp"

namespace treadwater {
namespace {

struct Language {
  std::string name;
  Catalogue catalogue;
  std::vector<std::uint16_t> places;  // hash to 1 + index; a power of two long, over half empty
};

// Never moved while in use: learning comes between answers.
std::vector<Language>& languages() {
  static std::vector<Language> learnt;
  return learnt;
}

thread_local const Language* language_spoken = nullptr;

// A key's place in `places`, or where it would go.
std::size_t place_of(const Language& language, std::string_view key) {
  const std::size_t last = language.places.size() - 1;
  std::size_t at = hash_of(key) & last;
  while (language.places[at] != 0 && language.catalogue[language.places[at] - 1U].first != key)
    at = (at + 1) & last;
  return at;
}

Language* find(std::string_view name) {
  for (Language& language : languages())
    if (language.name == name) return &language;
  return nullptr;
}

std::string_view counterpart(std::string_view key, std::string_view otherwise) {
  if (language_spoken == nullptr) return otherwise;
  const std::uint16_t found = language_spoken->places[place_of(*language_spoken, key)];
  return found == 0 ? otherwise : std::string_view(language_spoken->catalogue[found - 1U].second);
}

void speak(const Language* language) {
  language_spoken = language;
  // "0,5": the sign between the digits.
  const std::string_view half = spoken(Phrase("0.5"));
  use_decimal_sign(half.size() > 2 ? half.substr(1, half.size() - 2) : ".");
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

Speaking::Speaking(std::string_view language) : before_(language_spoken) { speak(find(language)); }
Speaking::~Speaking() { speak(static_cast<const Language*>(before_)); }

std::string_view spoken(Phrase phrase) {
  if (language_spoken == nullptr || phrase.empty()) return phrase.english();
  return counterpart(phrase.key(), phrase.english());
}

bool translating() { return language_spoken != nullptr; }

bool is_plural(double count) {
  return counterpart("", "n != 1") == "n > 1" ? count > 1.0 : count != 1.0;
}

}  // namespace treadwater
