// A letter typed for the digit that looks like it, or the other way round.
#include <string>
#include <vector>

#include "tests/support/catch.hpp"
#include "tests/support/sidewall_print.hpp"

using namespace treadwater;
using namespace treadwater::testing;

namespace {

// Sizes in common use, of every family, written from memory.
constexpr const char* sizes[] = {
    "205/55 R16 91V",
    "195/65R15 91H",
    "225/45R17 94W XL",
    "205/55ZR16 (94Y)",
    "185/80-15",
    "175/70 SR 13",
    "165 SR 13",
    "165 R 13",
    "155HR15",
    "185R14C 102/100R",
    "145-10 68S",
    "P215/65R15 95H",
    "LT235/85R16 120/116R",
    "ST225/70R15",
    "T125/80 D15 95M",
    "31x10.50 R15 LT 109S",
    "195/75 R16 C 107/105R",
    "225/75R16CP 116R",
    "8.25-20 10PR",
    "11 R 22.5 148/145L",
    "315/80 R22.5 156/150L",
    "5.20-13",
    "5.60-15",
    "6.00-16",
    "6.40/6.50-13",
    "FR78-15",
    "E70VR15",
    "190/65HR390 89H",
    "165HR400",
    "200/580 R15",
    "9.2/20.0-13",
    "815x105",
    "30x3 1/2",
    "120/70ZR17 M/C (58W)",
    "180/55 ZR 17 M/C (73W)",
    "120/90-18 65S",
    "3.00S18 4PR",
    "MT90B16 72H",
    "245/70R16 111/109S",
    "285/30ZR20 99Y",
    "HL275/35R22 107Y",
    "2 1/4-17",
};

std::string look_alikes_of(char c) {
  switch (c) {
    case '0':
      return "Oo";
    case '1':
      return "Il";
    case '2':
      return "Zz";
    case '5':
      return "Ss";
    case '8':
      return "B";
    case 'O':
      return "0";
    case 'I':
    case 'L':
      return "1";
    case 'Z':
      return "2";
    case 'S':
      return "5";
    case 'B':
      return "8";
    default:
      return "";
  }
}

// The tyre without the marks: what its size and service description say.
std::string size_and_service(const sidewall::Reading& r) {
  const std::string all = what_it_is(r);
  std::string out;
  for (std::size_t at = 0; at < all.size();) {
    const std::size_t end = all.find('\n', at);
    const std::string line = all.substr(at, end - at);
    for (const char* kept : {"family", "width", "aspect", "construction", "rim", "outer", "service",
                             "second service", "size symbol"})
      if (line.rfind(std::string(kept) + ": ", 0) == 0) out += line + "\n";
    at = end + 1;
  }
  return out;
}

}  // namespace

TEST_CASE("no one-letter look-alike of a size reads as another size") {
  int tried = 0;
  int asked = 0;
  for (const std::string size : sizes) {
    const auto meant = sidewall::read(size);
    REQUIRE(meant);
    for (std::size_t at = 0; at < size.size(); ++at) {
      for (const char letter : look_alikes_of(size[at])) {
        std::string slip = size;
        slip[at] = letter;
        INFO(size << " -> " << slip);
        const auto got = sidewall::read(slip);
        ++tried;
        if (!got) {
          asked += got.error().nearest == meant->canonical;
          continue;
        }
        CAPTURE(got->canonical);
        // Four digits of a week and a year are a date code: 1095 for 109S leaves the index unsaid.
        if (!got->date_code.empty() && !got->service) continue;
        CHECK(size_and_service(*got) == size_and_service(*meant));
      }
    }
  }
  CHECK(tried > 300);
  CHECK(asked > tried * 8 / 10);  // most are asked after, the rest refused
}

TEST_CASE("a look-alike is asked after in the words of the problem") {
  struct Row {
    const char* text;
    const char* nearest;
  };
  static const Row rows[] = {
      {"2O5/55 R16 91V", "205/55 R16 91V"},
      {"I95/65R15", "195/65 R15"},
      {"205/S5 R16", "205/55 R16"},
      {"Z25/45 R17", "225/45 R17"},
      {"18SR14C", "185 R14 C"},
      {"205/55 R16 9IV", "205/55 R16 91V"},
      {"205/55 R16 9lV", "205/55 R16 91V"},
      {"2O5/SS RI6", "205/55 R16"},
      {"2B5/30ZR20", "285/30 ZR20"},
      {"195/75 R16 C I07/105R", "195/75 R16 C 107/105R"},
  };
  for (const Row& row : rows) {
    INFO(row.text);
    const auto got = sidewall::read(row.text);
    REQUIRE_FALSE(got);
    CHECK(got.error().code == "look_alike");
    CHECK(got.error().nearest == row.nearest);
    CHECK_THAT(got.error().text, ContainsSubstring("O and 0"));
  }
}

TEST_CASE("a size does not start inside a word") {
  for (const char* text : {"Q5/55 R16", "205q5/55 R16", "A95/65R15",
                           "2\xD0\x9E"
                           "5/55 R16"}) {
    INFO(text);
    CHECK_FALSE(sidewall::read(text));
  }
  for (const char* text : {"TYRE205/55R16", "2x205/55 R16",
                           "\xE8\xBD\xAE\xE8\x83\x8E"
                           "205/55R16",
                           "*205/55 R16"}) {
    INFO(text);
    const auto got = sidewall::read(text);
    REQUIRE(got);
    CHECK(got->canonical == "205/55 R16");
  }
}

TEST_CASE("words of tread patterns with look-alikes in them are no slips") {
  for (const char* text : {"205/55 R16 91V Sport 5 S1", "205/55 R16 91V P7", "205/55 R16 91V Z35",
                           "205/55 R16 91V 4S", "205/55 R16 94W BMW X1 2018", "205/55 R16 B250"}) {
    INFO(text);
    CHECK(sidewall::read(text));
  }
}
