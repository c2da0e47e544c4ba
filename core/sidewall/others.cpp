// What stands in the text beside a size, or in its place, and is no such tyre: a second tyre's
// width and series, a wheel, an inner tube.
#include "core/sidewall/tyre.hpp"
#include "core/words/say.hpp"

namespace treadwater::sidewall {
namespace {

bool starts_a_number(const Text& text, std::size_t i) {
  if (!is_digit(text.at(i))) return false;
  if (i == 0) return true;
  const char before = text.at(i - 1);
  return !is_word(before) && before != '.' && before != ',' && before != '/';
}

Trouble trouble_at(std::string_view code, const Text& text, Span span, std::string sentence) {
  Trouble out;
  out.code = code;
  out.position = text.byte(span.begin);
  out.text = std::move(sentence);
  return out;
}

// J, JJ, K, T: the letter of a wheel's rim, with nothing but an x or a blank after it.
std::size_t rim_letters_end(const Text& text, std::size_t i) {
  std::size_t k = text.past_space(i);
  const std::size_t first = k;
  while (is_letter(text.at(k)) && text.at(k) != 'X' && k < first + 2) ++k;
  const bool ends = !is_word(text.at(k)) || text.at(k) == 'X';
  return k > first && ends ? k : nowhere;
}

// 15 x 4T, 6 1/2 J x 15: two numbers with an x, one of them with letters of a rim.
Span wheel_at(const Text& text, std::size_t i) {
  const Number first = fraction_at(text, i);
  std::size_t k = first.end;
  const std::size_t letters = rim_letters_end(text, k);
  if (letters != nowhere) k = letters;
  k = text.past_space(k);
  if (text.at(k) != 'X') return {};
  const Number second = fraction_at(text, text.past_space(k + 1));
  if (second.end == nowhere) return {};
  const std::size_t more = letters == nowhere ? rim_letters_end(text, second.end) : second.end;
  if (more == nowhere) return {};
  const std::int32_t width = first.scaled < second.scaled ? first.scaled : second.scaled;
  const std::int32_t rim = first.scaled < second.scaled ? second.scaled : first.scaled;
  if (width > 16 * number_scale || rim < 8 * number_scale || rim > 26 * number_scale) return {};
  return {i, more};
}

// TR13, TR75A: the valves of inner tubes. TR2 to TR8 and TR250 are cars.
Span valve_at(const Text& text, std::size_t i) {
  if (!text.starts(i, "TR") || (i > 0 && is_word(text.at(i - 1)))) return {};
  const std::size_t digits = text.at(i + 2) == '-' ? i + 3 : i + 2;
  const Number number = integer_at(text, digits);
  if ((number.digits != 2 && number.digits != 3) || number.whole() == 250) return {};
  const std::size_t end = is_letter(text.at(number.end)) ? number.end + 1 : number.end;
  return is_word(text.at(end)) ? Span{} : Span{i, end};
}

Span tube_at(const Text& text, std::size_t i) {
  if (i > 0 && is_word(text.at(i - 1))) return {};
  for (const std::string_view word : {"INNER TUBE", "INNERTUBE", "INNER TUBES", "TUBE", "TUBES"}) {
    const std::size_t end = i + word.size();
    if (!text.starts(i, word) || is_word(text.at(end)) || text.starts(end, " TYPE")) continue;
    return text.starts(end, " LESS") ? Span{} : Span{i, end};
  }
  return valve_at(text, i);
}

struct Pair {
  Span span;
  std::int32_t width = 0;
  std::int32_t series = 0;
};

// A width and a series, 255/35. Both end in 0 or 5, and two load indices that do (120/115R) lie
// close together.
Pair pair_at(const Text& text, std::size_t i) {
  const Number width = integer_at(text, i);
  if ((width.digits != 2 && width.digits != 3) || text.at(i) == '0') return {};
  if (text.at(width.end) != '/') return {};
  const Number series = integer_at(text, width.end + 1);
  const std::int32_t w = width.whole();
  const std::int32_t s = series.whole();
  if ((series.digits != 2 && series.digits != 3) || w < 60 || s < 20 || s > 105) return {};
  if (w % 5 != 0 || s % 5 != 0) return {};
  const bool symbol = is_letter(text.at(series.end));
  if (w - s < (symbol ? 20 : 10) && w != s) return {};
  return {{i, series.end}, width.scaled, series.scaled};
}

std::optional<Trouble> second_tyre_in(const Text& text, const Tyre* tyre) {
  Pair first;
  if (tyre != nullptr) {
    first = {{tyre->size.begin, tyre->size.end}, tyre->facts.width, tyre->facts.series};
  }
  for (std::size_t slash = 1; slash < text.size(); ++slash) {
    if (text.at(slash) != '/' || !is_digit(text.at(slash - 1))) continue;
    std::size_t i = slash - 1;
    while (i > 0 && is_digit(text.at(i - 1))) --i;
    if (tyre != nullptr && i >= tyre->size.begin && i < tyre->size.end) continue;
    const char before = i == 0 ? ' ' : text.at(i - 1);
    const bool joined_on = before == 'X' || (before == '/' && tyre == nullptr);
    if (!joined_on && !starts_a_number(text, i)) continue;
    const Pair pair = pair_at(text, i);
    if (!pair.span.there()) continue;
    if (!first.span.there()) {
      first = pair;
      slash = pair.span.end - 1;
      continue;
    }
    if (pair.width == first.width && pair.series == first.series) continue;
    const bool in_order = first.span.begin < pair.span.begin;
    const Span one = in_order ? first.span : pair.span;
    const Span two = in_order ? pair.span : first.span;
    return trouble_at(
        "two_sizes", text, two,
        say("Two sizes stand in the text, # and #: read one tyre at a time, front and rear "
            "apart.",
            {text.quote(one.begin, one.end), text.quote(two.begin, two.end)}));
  }
  return std::nullopt;
}

std::optional<Trouble> wheel_in(const Text& text) {
  for (std::size_t i = 0; i < text.size(); ++i) {
    if (!starts_a_number(text, i)) continue;
    const Span wheel = wheel_at(text, i);
    if (!wheel.there()) continue;
    return trouble_at("wheel", text, wheel,
                      say("# is the size of a wheel. Copy the size from the tyre, such as 205/55 "
                          "R16 91V.",
                          {text.quote(wheel.begin, wheel.end)}));
  }
  return std::nullopt;
}

std::optional<Trouble> tube_in(const Text& text) {
  for (std::size_t i = 0; i < text.size(); ++i) {
    if (!is_letter(text.at(i))) continue;
    const Span tube = tube_at(text, i);
    if (!tube.there()) continue;
    return trouble_at("inner_tube", text, tube,
                      say("This is an inner tube, not a tyre: #. Copy the size from the tyre, such "
                          "as 205/55 R16 91V.",
                          {text.quote(tube.begin, tube.end)}));
  }
  return std::nullopt;
}

}  // namespace

std::optional<Trouble> other_thing_in(const Text& text, const Tyre* tyre) {
  if (auto pair = second_tyre_in(text, tyre)) return pair;
  if (tyre == nullptr) {
    auto wheel = wheel_in(text);
    return wheel ? wheel : tube_in(text);
  }
  // A tyre sold with its tube has a service description or a ply rating.
  if (tyre->facts.has_service() || tyre->facts.ply != 0) return std::nullopt;
  return tube_in(text);
}

}  // namespace treadwater::sidewall
