#include "core/sidewall/marks.hpp"

#include "core/sidewall/pattern.hpp"
#include "core/words/catalogue.hpp"
#include "core/words/say.hpp"

namespace treadwater::sidewall {
namespace {

constexpr Standing published = Standing::published;
constexpr Standing secondary = Standing::secondary;
constexpr Standing memory = Standing::memory;
constexpr Standing common = Standing::common_practice;

std::size_t find_approval(const Text& text, std::size_t i, Span& value);
std::size_t find_emissions(const Text& text, std::size_t i, Span& value);
std::size_t find_quality_grades(const Text& text, std::size_t i, Span& value);
std::size_t find_date(const Text& text, std::size_t i, Span& value);
std::size_t find_dot(const Text& text, std::size_t i, Span& value);

// Sources: 49 CFR 574.5 (TIN), 49 CFR 575.104 (UTQG), UN R30, R54, R75, R117 (marks and approval),
// ISO 5751-2:2010 (extra load words on motor-cycle tyres), FMVSS 119 and 139 (load range). How each
// row is known stands in its `standing`.
constexpr MarkRow rows[] = {
    // --- numbers that stand where a service description would (found by read.cpp) ---
    {"load_index_alone", "", "#", Phrase("Perhaps the load index #; its speed symbol is missing"),
     Effect::by_place, common},

    // --- what the tyre carries ---
    {"xl", "XL|EXTRA LOAD", "XL",
     Phrase("Extra load: built for a higher pressure and load than a standard tyre of this size"),
     Effect::extra_load, published},
    {"reinforced", "REINFORCED|REINF|RF", "REINF",
     Phrase("Reinforced: the older word for extra load"), Effect::extra_load, secondary},
    {"standard_load", "STANDARD LOAD|STD LOAD|SL", "SL", Phrase("Standard load"), Effect::none,
     memory},
    {"light_load", "LIGHT LOAD|LL", "LL", Phrase("Light load"), Effect::none, memory},
    {"load_range", "LOAD RANGE @|LRG @|LR @", "LOAD RANGE #", Phrase("Load range #"),
     Effect::load_range, secondary},
    {"ply_rating", "# PR|# PLY RATING|# PLY", "#PR",
     Phrase("Ply rating #: strength of the casing as of # plies of cotton, not a count"),
     Effect::ply, secondary},
    {"max_load", "MAX LOAD # KG|MAXIMUM LOAD # KG", "MAX LOAD # kg",
     Phrase("Greatest load of one tyre: # kg"), Effect::none, common},
    {"max_load_lb", "MAX LOAD # LBS|MAX LOAD # LB|MAXIMUM LOAD # LBS|MAXIMUM LOAD # LB",
     "MAX LOAD # lb", Phrase("Greatest load of one tyre: # lb"), Effect::none, common},
    {"load_lb", "# LBS|# LB", "# lb", Phrase("A load of # lb"), Effect::none, common},
    {"load_kg", "# KG", "# kg", Phrase("A load of # kg"), Effect::none, common},
    {"marked_pressure", "# KPA", "# kPa",
     Phrase("Marked pressure # kPa: the cold pressure that goes with the load"),
     Effect::kilopascals, secondary},
    {"marked_pressure_psi", "# PSI|# P.S.I", "# psi",
     Phrase("Marked pressure # psi: the cold pressure that goes with the load"), Effect::psi,
     secondary},
    {"marked_pressure_bar", "# BAR", "# bar",
     Phrase("Marked pressure # bar: the cold pressure that goes with the load"), Effect::bar,
     secondary},
    {"max_pressure",
     "MAX PRESSURE|MAXIMUM PRESSURE|MAX PRESS|MAX INFLATION PRESSURE|MAX INFL PRESS", "MAX PRESS",
     Phrase("The pressure beside it is the greatest allowed, not the one to drive with"),
     Effect::none, common},
    {"max_load_words", "MAX LOAD|MAXIMUM LOAD", "MAX LOAD",
     Phrase("The load beside it is the greatest for one tyre"), Effect::none, common},
    {"commercial", "CP", "",
     Phrase("Camping-car tyre: commercial casing for a laden motor caravan"), Effect::camper,
     memory},
    {"light_truck", "LT", "", Phrase("Light truck"), Effect::light_truck, secondary},
    {"motorcycle", "M/C|MC", "", Phrase("Motor-cycle tyre and rim"), Effect::motorcycle, secondary},

    // --- how it is built ---
    {"run_flat_words", "RUN FLAT|RUNFLAT|RFT|ROF|SSR|SELF SUPPORTING", "RUN FLAT",
     Phrase("Run-flat: the sidewall carries the car for a short way without air"), Effect::run_flat,
     memory},
    {"bias_belted_word", "BIAS BELTED|BELTED BIAS|DIAGONAL BELTED", "BIAS BELTED",
     Phrase("Bias-belted: a cross-ply body under a belt"), Effect::bias_belted, secondary},
    {"steel_belted", "STEEL BELTED RADIAL|STEEL BELTED|STEEL RADIAL", "STEEL BELTED",
     Phrase("The belt is of steel"), Effect::radial, memory},
    {"radial_word", "RADIAL PLY|RADIAL", "RADIAL", Phrase("Radial: cords near 90° to the bead"),
     Effect::radial, published},
    {"cross_ply_word", "CROSS PLY|CROSSPLY|DIAGONAL|BIAS PLY|BIAS", "CROSS PLY",
     Phrase("Cross-ply (diagonal): cords at about 40° to the centre line"), Effect::cross_ply,
     published},
    {"tubeless", "TUBELESS|TUBE LESS|T/L|TL", "TL", Phrase("Tubeless: holds air without a tube"),
     Effect::none, published},
    {"tube_type", "TUBE TYPE|T/T|TT", "TT", Phrase("Tube type: needs an inner tube"), Effect::none,
     published},
    {"regroovable", "REGROOVABLE", "REGROOVABLE",
     Phrase("Regroovable: made to be cut deeper where the law allows it"), Effect::none, memory},
    {"retread", "RETREADED|RETREAD|REMOULD|REMOLD|RECAP", "RETREAD",
     Phrase("Retread: an old casing with a new tread; the age of the casing is another"),
     Effect::none, secondary},
    {"rim_protection", "RIM PROTECTION|FP|MFS|RPB", "RIM PROTECTION",
     Phrase("A rib at the bead shields the rim's edge"), Effect::none, memory},

    // --- what it is for ---
    {"three_peak", "3PMSF|3PMS|3 PMSF|THREE PEAK MOUNTAIN SNOWFLAKE|ALPINE SYMBOL|SNOWFLAKE",
     "3PMSF", Phrase("Three-peak mountain with snowflake: passed the snow grip test of UN R117"),
     Effect::none, secondary},
    {"m_s", "M + S|M & S|M / S|M.S.|M.S|M-S|MUD AND SNOW|MUD & SNOW|MUD SNOW", "M+S",
     Phrase("Mud and snow: the maker's word, with no test behind it"), Effect::none, secondary},
    {"ice_grip", "ICE GRIP", "ICE GRIP", Phrase("Ice grip symbol: passed an ice grip test"),
     Effect::none, memory},
    {"competition",
     "FOR COMPETITION USE ONLY|FOR COMPETITION ONLY|COMPETITION USE ONLY|COMPETITION USE|"
     "FOR RACING USE ONLY|FOR RACING PURPOSES ONLY|RACING USE ONLY|RACING ONLY|COMPETITION ONLY",
     "FOR COMPETITION USE ONLY", Phrase("For competition only: not for the public road"),
     Effect::competition, published},
    {"racing", "RACING", "RACING", Phrase("Racing: ask whether it may be used on the public road"),
     Effect::competition, memory},
    {"nhs", "NOT FOR HIGHWAY USE|NOT FOR HIGHWAY SERVICE|NHS", "NHS",
     Phrase("Not for highway use: not for the public road"), Effect::competition, published},
    {"traction_tread", "ET", "ET", Phrase("Extra tread: a deeper, special tread"), Effect::none,
     memory},
    {"mining", "ML", "ML", Phrase("Mining and logging service"), Effect::none, memory},
    {"multi_purpose", "MPT", "MPT", Phrase("Multi-purpose: road and rough ground"), Effect::none,
     memory},
    {"off_road", "POR", "POR", Phrase("Professional off-road"), Effect::none, memory},
    {"free_rolling", "FRT", "FRT",
     Phrase("Free rolling: for trailer axles, not for driven or steered ones"), Effect::none,
     memory},
    {"mobile_home", "MH", "MH", Phrase("Mobile home trailers only"), Effect::none, memory},
    {"trailer_only", "FOR TRAILER USE ONLY|TRAILER USE ONLY|TRAILER SERVICE ONLY",
     "TRAILER USE ONLY", Phrase("For trailers only"), Effect::none, memory},
    {"temporary_use", "TEMPORARY USE ONLY|FOR TEMPORARY USE ONLY|TEMPORARY USE",
     "TEMPORARY USE ONLY", Phrase("For temporary use only"), Effect::none, secondary},
    {"studdable", "STUDDABLE", "STUDDABLE", Phrase("May be fitted with studs"), Effect::none,
     memory},
    {"studded", "STUDDED", "STUDDED", Phrase("Fitted with studs"), Effect::none, memory},
    {"studless", "STUDLESS", "STUDLESS", Phrase("A winter tread without studs"), Effect::none,
     memory},

    // --- how it is fitted ---
    {"outside", "SIDE FACING OUTWARDS|SIDE FACING OUTWARD|SIDE FACING OUT|OUTSIDE|OUTER", "OUTSIDE",
     Phrase("This side faces outwards"), Effect::none, memory},
    {"inside", "SIDE FACING INWARDS|SIDE FACING INWARD|SIDE FACING IN|INSIDE|INNER", "INSIDE",
     Phrase("This side faces inwards"), Effect::none, memory},
    {"rotation", "ROTATION|DIRECTION OF ROTATION|DIRECTIONAL", "ROTATION",
     Phrase("Directional: must roll the way the arrow points"), Effect::none, memory},
    {"front", "FRONT WHEEL|FRONT", "FRONT", Phrase("For the front wheel"), Effect::none, memory},
    {"rear", "REAR WHEEL|REAR", "REAR", Phrase("For the rear wheel"), Effect::none, memory},
    {"wear_indicator", "TWI", "TWI", Phrase("Tread wear indicator: shows where the wear bars lie"),
     Effect::none, secondary},

    // --- words that people add ---
    {"motorcycle_word", "MOTOR CYCLE|MOTORCYCLE|MOTORBIKE|SCOOTER", "", Phrase("Motor-cycle tyre"),
     Effect::motorcycle, common},
    {"car_word", "PASSENGER CAR|PASSENGER|CAR", "CAR", Phrase("Said to be a car tyre"),
     Effect::is_car, common},
    {"truck_word", "TRUCK|LORRY|BUS", "TRUCK", Phrase("Said to be a truck tyre"), Effect::is_truck,
     common},

    // --- who approved it, and when it was made ---
    {"utqg", "", "UTQG #", Phrase(), Effect::none, secondary, find_quality_grades},
    {"treadwear", "TREADWEAR GRADE #|TREADWEAR #", "TREADWEAR #",
     Phrase("Tread wear grade #: per cent of a control tyre's life on a road course"), Effect::none,
     secondary},
    {"traction", "TRACTION @", "TRACTION #",
     Phrase("Traction grade #: wet braking, AA best, C least"), Effect::none, secondary},
    {"temperature", "TEMPERATURE @|TEMP @", "TEMPERATURE #",
     Phrase("Temperature grade #: heat at speed, A best (over 185 km/h), C least"), Effect::none,
     secondary},
    {"approval", "", "#", Phrase(), Effect::approval, memory, find_approval},
    {"r117", "", "#", Phrase(), Effect::none, memory, find_emissions},
    {"date_code", "", "#", Phrase(), Effect::date, published, find_date},
    {"tin", "DOT", "DOT #", Phrase("United States identification code"), Effect::dot, published,
     find_dot},

    // --- words round the marks ---
    {"label", "TYRE SIZE|TIRE SIZE|TYRES|TIRES|TYRE|TIRE|SIZE|WHEEL|INCH|MARKED|MARKING", "",
     Phrase(), Effect::label, common},
    {"label", "LOAD INDEX|SPEED RATING|SPEED INDEX|SPEED SYMBOL|SERVICE DESCRIPTION", "", Phrase(),
     Effect::label, common},
    {"label", "ADDITIONAL|UTQG|COLD|AT|AND|MAX|SINGLE|DUAL|STD|METRIC", "", Phrase(), Effect::label,
     common},
};

constexpr std::size_t row_count = sizeof(rows) / sizeof(rows[0]);
static_assert(row_count < 256, "rows are numbered in a byte");

// What each row may begin with, so that most rows are passed over at a glance.
constexpr FirstCharacters first_of(const MarkRow& row) {
  if (row.effect == Effect::approval) return bit_of('E');
  if (row.id == "r117") return bit_of('S');
  if (row.id == "utqg") return bit_of('U') | any_digit;
  if (row.effect == Effect::date) return any_digit;
  if (row.effect == Effect::dot) return bit_of('D');
  FirstCharacters bits = 0;
  bool begins = true;
  for (const char c : row.spellings) {
    if (begins) bits |= c == '#' ? any_digit : bit_of(c);
    begins = c == '|';
  }
  return bits;
}

struct FirstTable {
  FirstCharacters bits[row_count] = {};
};

constexpr FirstTable make_first_table() {
  FirstTable table;
  for (std::size_t r = 0; r < row_count; ++r) table.bits[r] = first_of(rows[r]);
  return table;
}

constexpr FirstTable firsts = make_first_table();

constexpr bool is_gap(char c) { return c == ' ' || c == '.' || c == ':' || c == '-' || c == '='; }

// Grades and load ranges: one capital, or AA.
std::size_t short_word(const Text& text, std::size_t i) {
  std::size_t k = i;
  while (is_letter(text.at(k)) && k < i + 2) ++k;
  if (k == i || is_word(text.at(k))) return nowhere;
  return k;
}

bool ends_well(const Text& text, std::size_t end) {
  return !is_word(text.at(end)) || touching_mark_at(text, end);
}

std::size_t match_spelling(const Text& text, std::size_t i, std::string_view spelling,
                           Span& value) {
  std::size_t k = i;
  for (const char c : spelling) {
    if (c == ' ') {
      for (int n = 0; n < 3 && is_gap(text.at(k)); ++n) ++k;
    } else if (c == '#') {
      const Number number = decimal_at(text, k);
      if (number.end == nowhere || number.digits > 5) return nowhere;
      value = {k, number.end};
      k = number.end;
    } else if (c == '@') {
      const std::size_t end = short_word(text, k);
      if (end == nowhere) return nowhere;
      value = {k, end};
      k = end;
    } else if (text.at(k) == c) {
      ++k;
    } else {
      return nowhere;
    }
  }
  return ends_well(text, k) ? k : nowhere;
}

constexpr bool may_begin(std::string_view spelling, char c) {
  const char first = spelling.front();
  return first == '#' ? is_digit(c) : first == c;
}

std::size_t match_row(const Text& text, std::size_t i, const MarkRow& row, Span& value) {
  if (row.find != nullptr) return row.find(text, i, value);
  const char c = text.at(i);
  std::string_view rest = row.spellings;
  if (rest.empty()) return nowhere;
  while (!rest.empty()) {
    const std::size_t bar = rest.find('|');
    const std::string_view spelling = rest.substr(0, bar);
    if (may_begin(spelling, c)) {
      const std::size_t end = match_spelling(text, i, spelling, value);
      if (end != nowhere) return end;
    }
    if (bar == std::string_view::npos) break;
    rest.remove_prefix(bar + 1);
  }
  return nowhere;
}

// E4 or e11 in its circle or rectangle, with the approval number if it stands beside it.
std::size_t find_approval(const Text& text, std::size_t i, Span& value) {
  if (text.at(i) != 'E') return nowhere;
  const Number country = integer_at(text, i + 1);
  if (country.end == nowhere || country.digits > 2 || country.whole() < 1 || country.whole() > 67 ||
      is_letter(text.at(country.end))) {
    return nowhere;
  }
  std::size_t end = country.end;
  std::size_t k = text.at(end) == '-' ? end + 1 : text.past_space(end);
  const auto stands_alone = [&](const Number& number) {
    return !is_word(text.at(number.end)) && text.at(number.end) != '/';
  };
  for (int part = 0; part < 2; ++part) {  // 02 123456 or 0212345, sometimes R-
    const Number number = integer_at(text, k);
    if (number.digits < 2 || number.digits > 8 || (part == 0 && number.digits == 3) ||
        !stands_alone(number)) {
      break;
    }
    if (number.digits < 5 && part == 0) {
      const Number next = integer_at(text, text.past_space(number.end));
      if (number.digits != 2 || next.digits < 4 || next.digits > 8 || !stands_alone(next)) break;
    }
    end = number.end;
    k = text.past_space(end);
    if (number.digits >= 5) break;
  }
  value = {i, end};
  return end;
}

// S, S1, S2 (sound), W (wet grip), R, R1, R2 (rolling resistance) run together: S2WR2.
std::size_t find_emissions(const Text& text, std::size_t i, Span& value) {
  if (text.at(i) != 'S') return nowhere;
  std::size_t k = i + 1;
  const auto stage = [&] {
    if (text.at(k) == '1' || text.at(k) == '2' || text.at(k) == '3') ++k;
  };
  stage();
  if (text.at(k) != 'W') return nowhere;
  ++k;
  stage();
  if (text.at(k) == 'R') {
    ++k;
    stage();
  }
  if (text.at(k) == 'B') ++k;
  if (is_word(text.at(k))) return nowhere;
  value = {i, k};
  return k;
}

// Bare quality grades as dealers write them: UTQG 400 AA A, 400 A B.
std::size_t find_quality_grades(const Text& text, std::size_t i, Span& value) {
  std::size_t k = i;
  if (text.starts(k, "UTQG")) k = text.past_space(k + 4);
  if (text.at(k) == ':') k = text.past_space(k + 1);
  const Number wear = integer_at(text, k);
  if (wear.digits < 2 || wear.digits > 4 || wear.whole() % 20 != 0 || wear.whole() < 60) {
    return nowhere;
  }
  const std::size_t begin = k;
  k = text.past_space(wear.end);
  const auto grade = [](char c) { return c == 'A' || c == 'B' || c == 'C'; };
  if (!grade(text.at(k))) return nowhere;
  k += text.starts(k, "AA") ? 2U : 1U;
  if (text.at(k) != ' ' && text.at(k) != '/') return nowhere;
  ++k;
  if (!grade(text.at(k)) || is_word(text.at(k + 1))) return nowhere;
  value = {begin, k + 1};
  return k + 1;
}

// Four digits alone whose first two are a week.
std::size_t find_date(const Text& text, std::size_t i, Span& value) {
  const Number number = integer_at(text, i);
  if (number.digits != 4 || is_word(text.at(number.end))) return nowhere;
  if ((text.at(number.end) == '.' || text.at(number.end) == ',') &&
      is_digit(text.at(number.end + 1))) {
    return nowhere;
  }
  const std::int32_t week = number.whole() / 100;
  if (week < 1 || week > 53) return nowhere;
  value = {i, number.end};
  return number.end;
}

std::size_t find_dot(const Text& text, std::size_t i, Span&) {
  return text.starts(i, "DOT") ? i + 3 : nowhere;
}

// DOT and up to five groups of at most 13 symbols, the last of which is the date.
void find_identification(const Text& text, MarkFound& found) {
  const std::size_t begin = text.past_space(found.end);
  std::size_t k = begin;
  std::size_t symbols = 0;
  for (int group = 0; group < 6; ++group) {
    std::size_t end = k;
    bool digits = true;
    while (is_digit(text.at(end)) || is_letter(text.at(end))) {
      digits = digits && is_digit(text.at(end));
      ++end;
    }
    const std::size_t length = end - k;
    symbols += length;
    if (length == 0 || symbols > 13 || text.at(end) == '/' || text.at(end) == foreign) return;
    if (text.starts(k, "DOT") || (group > 0 && length > 1 && touching_mark_at(text, k))) return;
    const bool tail4 = length >= 7 && is_digit(text.at(end - 1)) && is_digit(text.at(end - 2)) &&
                       is_digit(text.at(end - 3)) && is_digit(text.at(end - 4));
    const bool last = digits && (length == 4 || length == 3);
    if (last || tail4) {
      const std::size_t size = tail4 || length == 4 ? 4 : 3;
      const std::size_t before = found.date.end - found.date.begin;
      if (size < before) return;
      found.date = {end - size, end};
      found.value = {begin, end};
      found.end = end;
    }
    k = text.past_space(end);
    if (text.at(k) == '-') k = text.past_space(k + 1);
  }
}

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

MarkTable mark_table() { return {rows, row_count}; }

std::uint8_t mark_row(std::string_view id) {
  for (std::uint8_t r = 0; r < row_count; ++r) {
    if (rows[r].id == id) return r;
  }
  return 0;
}

MarkFound find_mark(const Text& text, std::size_t i) {
  const FirstCharacters here = bit_of(text.at(i));
  for (std::uint8_t r = 0; r < row_count; ++r) {
    if ((firsts.bits[r] & here) == 0) continue;
    MarkFound found;
    found.row = r;
    found.end = match_row(text, i, rows[r], found.value);
    if (found.end == nowhere) continue;
    if (rows[r].effect == Effect::dot) {
      const bool glued = is_word(text.at(found.end));  // DOTEJ3JFEH4019
      find_identification(text, found);
      if (glued && !found.date.there()) continue;
    }
    return found;
  }
  return {};
}

bool touching_mark_at(const Text& text, std::size_t i) {
  for (const std::string_view word : {"XL", "TL", "TT", "M+S", "M&S", "RF", "REINF", "EXTRA", "M/C",
                                      "TUBELESS", "RUNFLAT", "3PMSF"}) {
    if (text.starts(i, word) && !is_word(text.at(i + word.size()))) return true;
  }
  return false;
}

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
