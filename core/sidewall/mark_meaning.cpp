// What a mark means, in plain words.
#include "core/sidewall/mark_finders.hpp"
#include "core/words/catalogue.hpp"
#include "core/words/say.hpp"

namespace treadwater::sidewall {
namespace {

struct Country {
  int number;
  Phrase name;
};
// Distinguishing numbers of the 1958 Agreement: memory.
constexpr Country countries[] = {
    {1, Phrase("Germany")},
    {2, Phrase("France")},
    {3, Phrase("Italy")},
    {4, Phrase("the Netherlands")},
    {5, Phrase("Sweden")},
    {6, Phrase("Belgium")},
    {7, Phrase("Hungary")},
    {8, Phrase("Czechia")},
    {9, Phrase("Spain")},
    {10, Phrase("Serbia")},
    {11, Phrase("the United Kingdom")},
    {12, Phrase("Austria")},
    {13, Phrase("Luxembourg")},
    {14, Phrase("Switzerland")},
    {16, Phrase("Norway")},
    {17, Phrase("Finland")},
    {18, Phrase("Denmark")},
    {19, Phrase("Romania")},
    {20, Phrase("Poland")},
    {21, Phrase("Portugal")},
    {22, Phrase("Russia")},
    {23, Phrase("Greece")},
    {24, Phrase("Ireland")},
    {25, Phrase("Croatia")},
    {26, Phrase("Slovenia")},
    {27, Phrase("Slovakia")},
    {28, Phrase("Belarus")},
    {29, Phrase("Estonia")},
    {32, Phrase("Latvia")},
    {34, Phrase("Bulgaria")},
    {36, Phrase("Lithuania")},
    {37, Phrase("Türkiye")},
    {43, Phrase("Japan")},
    {45, Phrase("Australia")},
    {46, Phrase("Ukraine")},
    {47, Phrase("South Africa")},
    {48, Phrase("New Zealand")},
    {49, Phrase("Cyprus")},
    {50, Phrase("Malta")},
    {51, Phrase("Korea")},
    {52, Phrase("Malaysia")},
    {53, Phrase("Thailand")},
};

std::string approval_meaning(std::string_view value) {
  int number = 0;
  for (std::size_t i = 1; i < value.size() && is_digit(value[i]); ++i) {
    number = number * 10 + (value[i] - '0');
  }
  const bool eu = value[0] == 'e';
  for (const Country& country : countries) {
    if (country.number == number)
      return say(
          eu ? Phrase("EU type approval, granted in #") : Phrase("UN type approval, granted in #"),
          {country.name});
  }
  return say(eu ? Phrase("EU type approval, granted in country #")
                : Phrase("UN type approval, granted in country #"),
             {std::to_string(number)});
}

std::string emissions_meaning(std::string_view value) {
  std::string words;
  for (const char c : value) {
    const Phrase word = c == 'S'   ? Phrase("rolling sound")
                        : c == 'W' ? Phrase("wet grip")
                        : c == 'R' ? Phrase("rolling resistance")
                                   : Phrase();
    if (!word.empty()) add_item(words, say(word));
  }
  return say("UN R117 approval for #", {words});
}

std::string grades_meaning(std::string_view value) {
  return say(
      "Quality grades #: tread wear in per cent of a control tyre, wet traction (AA best), "
      "temperature (A best)",
      {value});
}

}  // namespace

std::string with_value(std::string_view words, std::string_view value) {
  std::string out;
  out.reserve(words.size() + 2 * value.size());
  for (;;) {
    const std::size_t gap = words.find('#');
    out += words.substr(0, gap);
    if (gap == std::string_view::npos) return out;
    out += value;
    words.remove_prefix(gap + 1);
  }
}

std::string mark_meaning(const MarkRow& row, std::string_view value) {
  if (row.effect == Effect::approval) return approval_meaning(value);
  if (row.find == find_emissions) return emissions_meaning(value);
  if (row.find == find_quality_grades) return grades_meaning(value);
  if (row.effect == Effect::load_range && value.size() == 1) {
    const int ply = ply_rating_of(value[0]);
    if (ply > 0)
      return say("Load range #: strength as of # plies of cotton", {value, std::to_string(ply)});
  }
  return with_value(spoken(row.meaning), value);
}

std::string date_meaning(std::string_view digits) {
  const int week = (digits[0] - '0') * 10 + (digits[1] - '0');
  if (week < 1 || week > 53) return {};
  if (digits.size() == 4)
    return say("Made in week # of 20#", {std::to_string(week), digits.substr(2)});
  const std::string_view year = digits.substr(2, 1);
  return say(
      "Made in week # of a year before 2000 ending in #: three digits do not say the decade (198# "
      "or 199#)",
      {std::to_string(week), year, year, year});
}

int ply_rating_of(char load_range) {
  switch (load_range) {
    case 'A':
      return 2;
    case 'B':
      return 4;
    case 'C':
      return 6;
    case 'D':
      return 8;
    case 'E':
      return 10;
    case 'F':
      return 12;
    case 'G':
      return 14;
    case 'H':
      return 16;
    case 'J':
      return 18;
    case 'L':
      return 20;
    case 'M':
      return 22;
    case 'N':
      return 24;
    default:
      return 0;
  }
}

}  // namespace treadwater::sidewall
