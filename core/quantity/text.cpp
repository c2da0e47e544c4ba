#include "core/quantity/text.hpp"

#include <algorithm>
#include <cstring>
#include <utility>

#include "core/quantity/language.hpp"

namespace treadwater {

std::size_t utf8_length(std::string_view text) {
  const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
  const unsigned char lead = byte(0);
  if (lead < 0x80) return 1;
  const std::size_t length = lead >= 0xF0 && lead < 0xF5   ? 4
                             : lead >= 0xE0 && lead < 0xF0 ? 3
                             : lead >= 0xC2 && lead < 0xE0 ? 2
                                                           : 0;
  if (length == 0 || text.size() < length) return 0;
  for (std::size_t i = 1; i < length; ++i)
    if ((byte(i) & 0xC0) != 0x80) return 0;
  // Longer than needed, half of a pair, or beyond the last character there is.
  if ((lead == 0xE0 && byte(1) < 0xA0) || (lead == 0xED && byte(1) > 0x9F) ||
      (lead == 0xF0 && byte(1) < 0x90) || (lead == 0xF4 && byte(1) > 0x8F))
    return 0;
  return length;
}

namespace {

// A text put together from parts. It has its whole room from the start: std::string asks for every
// part whether there is room for it, which costs a sidewall's reading a fifth of its time.
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

std::size_t size_of(std::initializer_list<std::string_view> parts) {
  std::size_t size = 0;
  for (std::string_view part : parts) size += part.size();
  return size;
}

}  // namespace

std::string filled(std::string_view sentence, std::initializer_list<std::string_view> values) {
  std::string_view rest = worded(sentence);
  const bool numbered = rest.data() != sentence.data();
  Parts parts(rest.size() + size_of(values));
  std::size_t next = 0;
  for (;;) {
    const std::size_t gap = rest.find('#');
    parts.add(rest.substr(0, gap));
    if (gap == std::string_view::npos) return std::move(parts).text();
    rest.remove_prefix(gap + 1);
    std::size_t which = next++;
    if (numbered && !rest.empty() && rest[0] >= '1' && rest[0] <= '9') {
      which = static_cast<std::size_t>(rest[0] - '1');
      rest.remove_prefix(1);
    }
    if (which < values.size()) parts.add(worded(values.begin()[which]));
  }
}

std::string joined(std::initializer_list<std::string_view> parts) {
  Parts whole(size_of(parts));
  for (std::string_view part : parts) whole.add(part);
  return std::move(whole).text();
}

void add_item(std::string& list, std::string_view item, std::string_view separator) {
  if (!list.empty()) list += separator;
  list += item;
}

std::string at_head(std::string_view phrase) {
  std::string text(worded(phrase));
  if (!text.empty() && text[0] >= 'a' && text[0] <= 'z')
    text[0] = static_cast<char>(text[0] - 'a' + 'A');
  return text;
}

std::string in_quotes(std::string_view text) {
  const std::string_view quotes = worded("“#”");
  const std::size_t gap = std::min(quotes.find('#'), quotes.size());
  std::string out(quotes.substr(0, gap));
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
  out += quotes.substr(std::min(gap + 1, quotes.size()));
  return out;
}

std::string plain_spaces(std::string_view text) {
  // No-break, narrow no-break, figure, thin, ideographic and zero-width spaces; byte order mark.
  constexpr std::string_view wide[] = {"\u00A0", "\u202F", "\u2007", "\u2009",
                                       "\u3000", "\u200B", "\uFEFF"};
  std::string out;
  while (!text.empty()) {
    std::size_t length = 1;
    bool space = text[0] == ' ' || (text[0] >= '\t' && text[0] <= '\r');
    if (static_cast<unsigned char>(text[0]) >= 0x80)
      for (std::string_view w : wide)
        if (text.substr(0, w.size()) == w) space = true, length = w.size();
    if (!space)
      out += text[0];
    else if (!out.empty() && out.back() != ' ')
      out += ' ';
    text.remove_prefix(length);
  }
  if (!out.empty() && out.back() == ' ') out.pop_back();
  return out;
}

}  // namespace treadwater
