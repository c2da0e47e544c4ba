#include "core/words/say.hpp"

#include <algorithm>
#include <cstring>

#include "core/quantity/text.hpp"
#include "core/quantity/write.hpp"
#include "core/words/catalogue.hpp"

namespace treadwater {
namespace {

// A text put together from parts. Its whole room is reserved at the start: std::string checks for
// room at every part, which takes a fifth of the time of reading a sidewall.
class Parts {
 public:
  explicit Parts(std::size_t room) : text_(room, '\0') {}

  void add(std::string_view part) {
    if (part.empty()) return;
    if (part.size() > text_.size() - used_) text_.resize(used_ + part.size());
    std::memcpy(text_.data() + used_, part.data(), part.size());
    used_ += part.size();
  }

  std::string text() && {
    text_.resize(used_);
    return std::move(text_);
  }

 private:
  std::string text_;
  std::size_t used_ = 0;
};

// At most 40 characters, with nothing in them that a sentence could not hold.
std::string repeatable(std::string_view text) {
  std::string out;
  std::size_t characters = 0;
  while (!text.empty()) {
    if (characters == 40) {
      out += "…";
      break;
    }
    const std::size_t length = utf8_length(text);
    if (length == 0 || static_cast<unsigned char>(text[0]) < 0x20 || text[0] == 0x7F)
      out += length == 0 ? "\uFFFD" : " ";
    else
      out += text.substr(0, length);
    text.remove_prefix(length == 0 ? 1 : length);
    ++characters;
  }
  return out;
}

}  // namespace

Typed::Typed(std::string_view raw) : text_(repeatable(plain_spaces(raw))) {}

// Not inlined: they are called from hundreds of places.
[[gnu::noinline]] Text::Text(const Text&) = default;
[[gnu::noinline]] Text::Text(Text&&) noexcept = default;
[[gnu::noinline]] Text& Text::operator=(const Text&) = default;
[[gnu::noinline]] Text& Text::operator=(Text&&) noexcept = default;
[[gnu::noinline]] Text::~Text() = default;
Text::Text(Phrase ours) : text_(spoken(ours)) {}
TextView::TextView(Phrase ours) : text_(spoken(ours)) {}

std::string say(Phrase sentence, const TextView* values, std::size_t count) {
  std::string_view rest = spoken(sentence);
  std::size_t room = rest.size();
  for (std::size_t i = 0; i < count; ++i) room += values[i].text().size();
  Parts parts(room);
  std::size_t next = 0;
  for (;;) {
    const std::size_t gap = rest.find('#');
    parts.add(rest.substr(0, gap));
    if (gap == std::string_view::npos) return std::move(parts).text();
    rest.remove_prefix(gap + 1);
    std::size_t which = next++;
    if (!rest.empty() && rest[0] >= '1' && rest[0] <= '9' && count > 0) {
      which = static_cast<std::size_t>(rest[0] - '1');
      rest.remove_prefix(1);
    }
    if (which < count) parts.add(values[which].text());
  }
}

std::string plural(Phrase one, Phrase other, double count, Gaps values) {
  return say(is_plural(count) ? other : one, values);
}

std::string within_sentence(std::string_view label) {
  std::string text(label);
  if (!translating() && !text.empty() && text[0] >= 'A' && text[0] <= 'Z')
    text[0] = static_cast<char>(text[0] - 'A' + 'a');
  return text;
}

std::string at_head(std::string_view phrase) {
  std::string text(phrase);
  if (!text.empty() && text[0] >= 'a' && text[0] <= 'z')
    text[0] = static_cast<char>(text[0] - 'a' + 'A');
  return text;
}

std::string in_quotes(std::string_view typed) { return say("“#”", {repeatable(typed)}); }

std::string quantity_in_words(std::string_view english) {
  // Two units are words.
  const auto number_of = [&](std::string_view unit) {
    return english.size() > unit.size() && english.substr(english.size() - unit.size()) == unit
               ? english.substr(0, english.size() - unit.size())
               : std::string_view();
  };
  if (const auto number = number_of(" degrees"); !number.empty()) return say("# degrees", {number});
  if (const auto number = number_of(" year"); !number.empty()) return say("# year", {number});
  std::string text;
  for (std::size_t i = 0; i < english.size(); ++i) {
    if (english[i] == '.' && i > 0 && is_digit(english[i - 1]) && i + 1 < english.size() &&
        is_digit(english[i + 1]))
      text += decimal_sign();
    else
      text += english[i];
  }
  return text;
}

std::string alternatives(const std::vector<std::string>& items) {
  std::string list;
  for (std::size_t i = 0; i < items.size(); ++i)
    if (i > 0 && i + 1 == items.size())
      list = say("# or #", {list, items[i]});
    else
      add_item(list, items[i]);
  return list;
}

std::string sentences(std::initializer_list<std::string_view> said) {
  std::string text;
  for (std::string_view one : said)
    if (!one.empty()) add_item(text, one, " ");
  return text;
}

}  // namespace treadwater
