// A letter typed for the digit that looks like it, or the other way round: O and 0, I or l and 1, S
// and 5, Z and 2, B and 8. It is never put right silently: the reader asks whether the text with
// one of them changed was meant.
#include "core/sidewall/tyre.hpp"
#include "core/words/say.hpp"

namespace treadwater::sidewall {
namespace {

// Each try reads the text once more, and a long text is no line that was typed.
constexpr int most_tries = 12;
constexpr std::size_t longest_typed = 100;

char look_alike(char c) {
  constexpr std::string_view from = "OILSZB01528_";
  constexpr std::string_view into = "011528OLSZB.";
  const std::size_t at = from.find(c);
  return at == std::string_view::npos ? '\0' : into[at];
}

constexpr bool within(Span span, std::size_t at) { return at >= span.begin && at < span.end; }

// Does the character belong to something that says what the tyre is?
bool understood(const Tyre& tyre, std::size_t at) {
  const Service& service = tyre.facts.service;
  if (at >= tyre.size.begin && at < tyre.size.end) return true;
  if (within(service.index_span, at) || within(service.twin_span, at) ||
      within(service.symbol_span, at) || within(tyre.light_mark, at)) {
    return true;
  }
  for (std::size_t i = 0; i < tyre.mark_count; ++i) {
    const Seen& seen = tyre.marks[i];
    if (mark_table().rows[seen.row].effect == Effect::ply && within(seen.place, at)) return true;
  }
  return false;
}

// What stands between two spaces.
Span word_round(const Text& text, std::size_t at) {
  std::size_t begin = at;
  std::size_t end = at;
  while (begin > 0 && text.at(begin - 1) != ' ') --begin;
  while (end < text.size() && text.at(end) != ' ') ++end;
  return {begin, end};
}

bool has_digit(const Text& text, Span span) {
  for (std::size_t k = span.begin; k < span.end; ++k) {
    if (is_digit(text.at(k))) return true;
  }
  return false;
}

class Slips {
 public:
  Slips(const Text& seen, const Tyre* read) : text(seen), tyre(read) {}

  std::optional<Trouble> find() {
    if (text.size() > longest_typed || (tyre != nullptr && !anything_odd())) return std::nullopt;
    for (std::size_t at = 0; at < text.size() && tries < most_tries; ++at) {
      if (!may_be_slip(at)) continue;
      std::string other(text.source());
      if (!change(other, at)) continue;
      if (auto trouble = asked(other, at)) return trouble;
    }
    return all_at_once();
  }

 private:
  const Text& text;
  const Tyre* tyre;  // as read; null if the text could not be read
  int tries = 0;

  bool anything_odd() const {
    for (std::size_t i = 0; i < tyre->leftover_count; ++i) {
      if (has_digit(text, tyre->leftovers[i])) return true;
    }
    return false;
  }

  bool may_be_slip(std::size_t at) const {
    const char c = text.at(at);
    if (look_alike(c) == '\0') return false;
    if (tyre == nullptr) {
      if (is_letter(c)) return has_digit(text, word_round(text, at));
      if (c == '_') return is_digit(text.at(at + 1)) && at > 0 && is_digit(text.at(at - 1));
      return is_letter(text.at(at + 1)) || (at > 0 && is_letter(text.at(at - 1)));
    }
    for (std::size_t i = 0; i < tyre->leftover_count; ++i) {
      const Span over = tyre->leftovers[i];
      if (!has_digit(text, over)) continue;
      if (within(over, at)) return true;
      if (at == tyre->size.begin && text.past_space(over.end) == at) return true;  // 165 5R13
    }
    return false;
  }

  bool change(std::string& other, std::size_t at) const {
    char& byte = other[text.byte(at)];
    if (static_cast<unsigned char>(byte) >= 0x80) return false;
    byte = look_alike(text.at(at));
    return true;
  }

  std::optional<Trouble> asked(const std::string& other, std::size_t at) {
    ++tries;
    const Text changed(other);
    Tyre meant;
    if (!reads(changed, meant) || !understood(meant, at)) return std::nullopt;
    if (tyre != nullptr && at == tyre->size.begin && meant.size.begin >= at) return std::nullopt;
    const Span word = word_round(text, at);
    Trouble out;
    out.code = "look_alike";
    out.position = text.byte(at);
    out.text =
        say("# seems to have a letter typed for a digit, or a digit for a letter. Check O and 0, I "
            "and 1, S and 5, Z and 2, B and 8.",
            {text.quote(word.begin, word.end)});
    out.nearest = canonical(changed, meant, family_row(meant.family).family);
    return out;
  }

  // 2O5/SS R16: every letter that stands with digits.
  std::optional<Trouble> all_at_once() {
    std::string other(text.source());
    std::size_t first = nowhere;
    for (std::size_t at = 0; at < text.size(); ++at) {
      if (!is_letter(text.at(at)) || !may_be_slip(at) || !change(other, at)) continue;
      if (first == nowhere) first = at;
    }
    return first == nowhere ? std::nullopt : asked(other, first);
  }
};

}  // namespace

std::optional<Trouble> slip_in(const Text& text, const Tyre* tyre) {
  return Slips(text, tyre).find();
}

}  // namespace treadwater::sidewall
