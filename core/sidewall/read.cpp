// read(): find the size, then everything round it, then choose the family.
#include <algorithm>

#include "core/sidewall/tyre.hpp"
#include "core/words/say.hpp"

namespace treadwater::sidewall {
namespace {

bool same_value(const Text& text, Span a, Span b) {
  if (a.end - a.begin != b.end - b.begin) return false;
  for (std::size_t k = 0; a.begin + k < a.end; ++k) {
    if (text.at(a.begin + k) != text.at(b.begin + k)) return false;
  }
  return true;
}

// The order of the table; of two dates the one in a DOT code first; then by value.
bool comes_before(const Text& text, const Seen& a, const Seen& b) {
  if (a.row != b.row) return a.row < b.row;
  if (a.in_code != b.in_code) return a.in_code;
  std::size_t k = 0;
  while (a.value.begin + k < a.value.end && b.value.begin + k < b.value.end) {
    const char x = text.at(a.value.begin + k);
    const char y = text.at(b.value.begin + k);
    if (x != y) return x < y;
    ++k;
  }
  return a.value.begin + k == a.value.end && b.value.begin + k < b.value.end;
}

bool same(const Service& a, const Service& b) {
  return a.load_index == b.load_index && a.twin == b.twin && a.symbol == b.symbol;
}

class Reader {
 public:
  enum class Outcome {
    read,
    no_size,
    no_family,
    two_sizes,
    bad_service,
    bad_index,
    too_many_marks
  };

  explicit Reader(const Text& seen) : text(seen) {}
  Outcome run();
  Reading reading() const { return put_into_words(text, tyre); }
  const Tyre& read_tyre() const { return tyre; }
  std::string spelled() const { return canonical(text, tyre, family_row(tyre.family).family); }
  Trouble trouble(Outcome outcome) const;

 private:
  const Text& text;
  Tyre tyre;
  Size second_size;
  ServiceRead bad_service;
  std::size_t bad_service_at = nowhere;
  std::size_t leftover_begin = nowhere;
  std::size_t leftover_end = nowhere;
  bool too_many = false;  // marks: more than any tyre carries

  void close_leftover() {
    if (leftover_begin == nowhere) return;
    if (tyre.leftover_count < most_leftovers) {
      tyre.leftovers[tyre.leftover_count++] = {leftover_begin, leftover_end};
    } else {
      tyre.leftovers[most_leftovers - 1].end = static_cast<std::uint16_t>(leftover_end);
    }
    leftover_begin = nowhere;
  }

  void leave_over(std::size_t begin, std::size_t end) {
    if (leftover_begin == nowhere) leftover_begin = begin;
    leftover_end = end;
  }

  // Keeps marks in that order; the same mark twice counts once.
  void add(const Seen& seen) {
    for (std::size_t i = 0; i < tyre.mark_count; ++i) {
      if (tyre.marks[i].row == seen.row && same_value(text, tyre.marks[i].value, seen.value))
        return;
    }
    if (tyre.mark_count == most_marks) {
      too_many = true;
      return;
    }
    std::size_t at = tyre.mark_count++;
    while (at > 0 && comes_before(text, seen, tyre.marks[at - 1])) {
      tyre.marks[at] = tyre.marks[at - 1];
      --at;
    }
    tyre.marks[at] = seen;
  }

  void take_mark(const MarkFound& found, std::size_t begin) {
    const MarkRow& row = mark_table().rows[found.row];
    const Span place{begin, found.end};
    Facts& facts = tyre.facts;
    switch (row.effect) {
      case Effect::camper:
        facts.camper = true;
        tyre.commercial_mark = place;
        return;
      case Effect::light_truck:
        facts.light_truck = true;
        tyre.light_mark = place;
        return;
      case Effect::motorcycle:
        facts.motorcycle = true;
        tyre.cycle_mark = place;
        return;
      case Effect::competition:
        facts.competition = true;
        break;
      case Effect::is_car:
        facts.says_car = true;
        break;
      case Effect::is_truck:
        facts.says_truck = true;
        break;
      case Effect::ply:
        if (facts.ply == 0) facts.ply = integer_at(text, found.value.begin).whole();
        break;
      case Effect::load_range:
        if (facts.load_range == 0) facts.load_range = text.at(found.value.begin);
        break;
      case Effect::dot:
        if (found.date.there()) {
          add({mark_row("date_code"), found.date, found.date, true});
        }
        break;
      default:
        break;
    }
    add({found.row, place, found.value, false});
  }

  // False at a third description: it is left over.
  bool take_service(const Service& service) {
    if (!tyre.facts.has_service()) {
      tyre.facts.service = service;
      return true;
    }
    if (same(tyre.facts.service, service)) return true;
    if (tyre.second_service.load_index >= 0) return same(tyre.second_service, service);
    tyre.second_service = service;
    return true;
  }

  // A single letter after the size: C for commercial, or a load range.
  bool take_letter(std::size_t i, bool direct) {
    const char c = text.at(i);
    if (ply_rating_of(c) == 0) return false;
    const char next = text.at(i + 1);
    // R16C94/93R; but the L of R16 L20/116R is a 1.
    const bool glued_index = direct && c != 'L' && c != 'B' && service_stands_at(text, i + 1);
    if (is_word(next) && !glued_index) return false;
    Facts& facts = tyre.facts;
    const Shape shape = facts.shape;
    const bool has_range = facts.prefix == 'L' || facts.prefix == 'S' || facts.light_truck ||
                           shape == Shape::flotation || shape == Shape::flotation_slash ||
                           shape == Shape::us_letter || shape == Shape::us_letter_crossed;
    if (has_range || (shape == Shape::inch && c != 'C')) {
      if (facts.load_range != 0) return false;
      facts.load_range = c;
      add({mark_row("load_range"), {i, i + 1}, {i, i + 1}, false});
      return true;
    }
    const bool may_be_commercial = shape == Shape::metric || shape == Shape::no_series ||
                                   shape == Shape::no_series_crossed || shape == Shape::inch ||
                                   shape == Shape::loose || shape == Shape::compact;
    if (c != 'C' || !may_be_commercial || facts.commercial) return false;
    facts.commercial = true;
    tyre.commercial_mark = {i, i + 1};
    return true;
  }

  // C on a tyre that says LT later in the text is a load range after all.
  void settle_letter() {
    Facts& facts = tyre.facts;
    if (!facts.commercial || !facts.light_truck) return;
    facts.commercial = false;
    if (facts.load_range == 0) {
      facts.load_range = 'C';
      add({mark_row("load_range"), tyre.commercial_mark, tyre.commercial_mark, false});
    }
    tyre.commercial_mark = {};
  }

  // Of several ply ratings or load ranges the first in the order of the marks counts, wherever they
  // were.
  void settle_strength() {
    tyre.facts.ply = 0;
    tyre.facts.load_range = 0;
    for (std::size_t i = tyre.mark_count; i-- > 0;) {
      const Seen& seen = tyre.marks[i];
      const Effect effect = mark_table().rows[seen.row].effect;
      if (effect == Effect::ply) tyre.facts.ply = integer_at(text, seen.value.begin).whole();
      if (effect == Effect::load_range) tyre.facts.load_range = text.at(seen.value.begin);
    }
  }

  // Reads what begins at `i`, surest first. Returns its end.
  std::size_t step(std::size_t i, std::size_t limit, bool after) {
    const ServiceRead service = read_service(text, i);
    const bool plain =
        service.state == ServiceState::read && service.touching && service.end <= limit;
    if (plain && take_service(service.service)) {  // 91V can be nothing else; 11 R 22.5 can
      close_leftover();
      return service.end;
    }
    if (const MarkFound found = find_mark(text, i); found.end != nowhere && found.end <= limit) {
      close_leftover();
      take_mark(found, i);
      return found.end;
    }
    const bool direct = after && text.past_space(tyre.size.end) == i;
    const bool slashed = after && text.at(tyre.size.end) == '/' && i == tyre.size.end + 1;
    if (after && take_letter(i, direct || slashed)) {
      close_leftover();
      return i + 1;
    }
    if (const Size other = another_size_at(i); other.found()) {
      close_leftover();
      if (same_size(other)) {
        tyre.size_twice = true;
      } else if (!second_size.found()) {
        second_size = other;
      }
      return other.end;
    }
    if (service.state == ServiceState::read && service.end <= limit &&
        (service.touching || !tyre.facts.has_service()) && take_service(service.service)) {
      close_leftover();
      return service.end;
    }
    if (service.state != ServiceState::absent && service.state != ServiceState::read) {
      if (bad_service_at == nowhere) {
        bad_service = service;
        bad_service_at = i;
      }
      leave_over(i, service.end < limit ? service.end : limit);
      return service.end;
    }
    if (after && !tyre.bare_index.there()) {
      const std::size_t end = bare_index_end(text, i);
      if (end != nowhere) {
        close_leftover();
        tyre.bare_index = {i, end};
        return end;
      }
    }
    const std::size_t end = token_end(text, i) > i ? token_end(text, i) : i + 1;
    leave_over(i, end < limit ? end : limit);
    return end;
  }

  // A sure one, or one spelled as loosely as the first: 205 55 R16 225 50 R16.
  Size another_size_at(std::size_t i) const {
    const Size sure = find_size_at(text, i, true, nullptr);
    const Shape shape = tyre.size.shape;
    if (sure.found() || (shape != Shape::loose && shape != Shape::compact)) return sure;
    const Size loose = find_size_at(text, i, false, nullptr);
    return loose.shape == shape ? loose : Size{};
  }

  bool same_size(const Size& other) const {
    const Facts& a = tyre.facts;
    const Facts b = facts_of(other);
    return a.width == b.width && a.series == b.series && a.rim == b.rim && a.second == b.second &&
           a.letter == b.letter;
  }

  void scan(std::size_t from, std::size_t to, bool after) {
    std::size_t i = from;
    while (i < to) {
      const char c = text.at(i);
      const bool opens_service =
          (c == '(' || c == '[') && read_service(text, i).state == ServiceState::read;
      if (!is_word(c) && c != half && c != quarter && c != three_quarters && !opens_service) {
        ++i;
        continue;
      }
      const std::size_t end = step(i, to, after);
      i = end > i ? end : i + 1;
    }
    close_leftover();
  }

  void choose_family() {
    tyre.fit = Fit::no;
    for (std::size_t f = 0; f < family_count; ++f) {
      const Fit fit = family_row(f).fits(tyre.facts);
      if (fit > tyre.fit) {
        tyre.fit = fit;
        tyre.family = f;
        if (fit == Fit::sure) return;
      }
    }
  }
};

Reader::Outcome Reader::run() {
  tyre.size = find_size(text, nullptr);
  if (!tyre.size.found()) return Outcome::no_size;
  tyre.facts = facts_of(tyre.size);
  scan(tyre.size.end, text.size(), true);
  scan(0, tyre.size.begin, false);
  settle_letter();
  settle_strength();
  if (too_many) return Outcome::too_many_marks;
  if (second_size.found()) return Outcome::two_sizes;
  if (!tyre.facts.has_service() && bad_service_at != nowhere) return Outcome::bad_service;
  // Beside a whole service description a lone number says nothing.
  if (tyre.bare_index.there() && tyre.facts.has_service()) {
    leave_over(tyre.bare_index.begin, tyre.bare_index.end);
    close_leftover();
  } else if (tyre.bare_index.there()) {
    add({mark_row("load_index_alone"), tyre.bare_index, tyre.bare_index, false});
  }
  choose_family();
  if (tyre.fit == Fit::no) return Outcome::no_family;
  const Family family = family_row(tyre.family).family;
  return is_impossible_index(tyre.facts, family, tyre.facts.service.load_index) ? Outcome::bad_index
                                                                                : Outcome::read;
}

Trouble plain_trouble(std::string_view code, std::string sentence, std::size_t position) {
  Trouble out;
  out.code = code;
  out.text = sentence;
  out.position = position;
  return out;
}

Trouble Reader::trouble(Outcome outcome) const {
  switch (outcome) {
    case Outcome::two_sizes:
      return trouble_two_sizes(text, tyre, second_size);
    case Outcome::bad_service:
      return trouble_service(text, tyre, bad_service, bad_service_at);
    case Outcome::bad_index:
      return trouble_impossible_index(text, tyre);
    case Outcome::no_family:
      return trouble_no_family(text, tyre.size.begin, tyre.size.end);
    case Outcome::too_many_marks:
      return plain_trouble(
          "too_many_marks",
          say("These are more marks than any tyre carries: copy only the line with the "
              "size, such as 205/55 R16 91V."),
          text.byte(tyre.size.end));
    case Outcome::no_size:
    case Outcome::read:
      break;
  }
  return trouble_without_size(text);
}

}  // namespace

tl::expected<Reading, Trouble> read(std::string_view text) {
  if (text.empty()) {
    return tl::unexpected(plain_trouble(
        "empty",
        say("Nothing to read yet: copy the size from the sidewall, such as 205/55 R16 91V."), 0));
  }
  if (text.size() > longest_text) {
    return tl::unexpected(plain_trouble(
        "too_long",
        say("This is # bytes long and a sidewall is read up to 400: copy only the line with the "
            "size, such as 205/55 R16 91V.",
            {std::to_string(text.size())}),
        longest_text));
  }
  const Text seen(text);
  if (seen.past_space(0) >= seen.size()) {
    return tl::unexpected(plain_trouble(
        "only_spaces",
        say("Only spaces here: copy the size from the sidewall, such as 205/55 R16 91V."), 0));
  }
  Reader reader(seen);
  const Reader::Outcome outcome = reader.run();
  const bool done = outcome == Reader::Outcome::read;
  const Tyre* tyre = done ? &reader.read_tyre() : nullptr;
  if (outcome != Reader::Outcome::two_sizes) {
    if (auto other = other_thing_in(seen, tyre)) return tl::unexpected(std::move(*other));
  }
  if (auto slip = slip_in(seen, tyre)) return tl::unexpected(std::move(*slip));
  if (!done) return tl::unexpected(reader.trouble(outcome));
  return reader.reading();
}

bool reads(const Text& text, Tyre& out) {
  Reader reader(text);
  if (reader.run() != Reader::Outcome::read) return false;
  out = reader.read_tyre();
  return true;
}

std::string canonical_if_it_reads(std::string_view text) {
  if (text.empty() || text.size() > longest_text) return {};
  const Text seen(text);
  Reader reader(seen);
  if (reader.run() != Reader::Outcome::read) return {};
  return reader.spelled();
}

bool has_mark(const Reading& tyre, std::string_view id) {
  return std::any_of(tyre.marks.begin(), tyre.marks.end(),
                     [id](const Mark& mark) { return mark.id == id; });
}

}  // namespace treadwater::sidewall
