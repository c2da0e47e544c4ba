#include "core/quantity/text.hpp"

#include <cstring>

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

std::string joined(std::initializer_list<std::string_view> parts) {
  std::size_t room = 0;
  for (std::string_view part : parts) room += part.size();
  std::string whole(room, '\0');
  char* at = whole.data();
  for (std::string_view part : parts)
    if (!part.empty()) std::memcpy(at, part.data(), part.size()), at += part.size();
  return whole;
}

void add_item(std::string& list, std::string_view item, std::string_view separator) {
  if (!list.empty()) list += separator;
  list += item;
}

std::string plain_spaces(std::string_view text) {
  // No-break, en to hair, zero-width, line and paragraph, narrow no-break, mathematical and
  // ideographic spaces; byte order mark.
  constexpr std::string_view wide[] = {"\u00A0", "\u2000", "\u2001", "\u2002", "\u2003",
                                       "\u2004", "\u2005", "\u2006", "\u2007", "\u2008",
                                       "\u2009", "\u200A", "\u200B", "\u2028", "\u2029",
                                       "\u202F", "\u205F", "\u3000", "\uFEFF"};
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
