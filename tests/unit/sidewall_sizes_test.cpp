// Sizes as they are moulded, written and sold beyond the plain ones; and those that are not read.
#include <string>

#include "tests/support/catch.hpp"
#include "tests/support/sidewall_print.hpp"

using namespace treadwater;
using namespace treadwater::testing;

namespace {

struct Example {
  const char* text;
  const char* expected;
};

template <std::size_t n>
void check(const Example (&examples)[n]) {
  for (const Example& example : examples) {
    INFO(example.text);
    CHECK(summary(example.text) == example.expected);
    const auto got = sidewall::read(example.text);
    REQUIRE(got);
    const auto again = sidewall::read(got->canonical);
    REQUIRE(again);
    CHECK(what_it_is(*again) == what_it_is(*got));
  }
}

std::string aloud(const char* text) {
  std::string out;
  const auto got = sidewall::read(text);
  if (!got) return out;
  for (const auto& sentence : got->assumed) out += sentence + "\n";
  for (const auto& sentence : got->unsaid) out += sentence + "\n";
  return out;
}

}  // namespace

TEST_CASE("an x before the rim is read, and does not settle the construction") {
  static const Example rows[] = {
      {"185x16", "metric car tyre without series | S 185 a 82 d 16"},
      {"165x13 78S", "metric car tyre without series | S 165 a 82 d 13 78S"},
      {"185/60x13", "metric car tyre | S 185 a 60 d 13"},
      {"90/90x19", "metric motor-cycle tyre | S 90 a 90 d 19"},
      {"600\xC3\x97"
       "13",
       "inch-size tyre | S 152.4 cross-ply d 13"},
  };
  check(rows);
  CHECK_THAT(aloud("185x16"), ContainsSubstring("The x does not settle the construction"));
  CHECK_THAT(aloud("185/60x13"), ContainsSubstring("The construction is not marked"));
  CHECK_FALSE(sidewall::read("205/55 x 4"));  // four tyres
}

TEST_CASE("a size in inches may be moulded without its point, and is read aloud") {
  static const Example rows[] = {
      {"750-16", "truck tyre in inches | S 190.5 cross-ply d 16"},
      {"825-20", "truck tyre in inches | S 209.55 cross-ply d 20"},
      {"900-20 14PR", "truck tyre in inches | S 228.6 cross-ply d 20 14PR"},
      {"1000-20", "truck tyre in inches | S 254 cross-ply d 20"},
      {"1100-20", "truck tyre in inches | S 279.4 cross-ply d 20"},
      {"520-13", "inch-size tyre | S 132.08 cross-ply d 13"},
      {"300-18", "motor-cycle tyre in inches | S 76.2 cross-ply d 18"},
      {"450M-13", "inch-size tyre | S 114.3 cross-ply d 13"},
  };
  check(rows);
  CHECK_THAT(aloud("825-20"), ContainsSubstring("was read as 8.25-20"));
  CHECK(summary("165-13") == "metric car tyre without series | S 165 a 82 cross-ply d 13");
}

TEST_CASE("van sizes without a series, widths in centimetres and three slashes are read") {
  static const Example rows[] = {
      {"155 R13 LT", "light commercial tyre | S 155 a 82 radial d 13 LT"},
      {"155R12 88/86N LT 8PR", "light commercial tyre | S 155 a 82 radial d 12 88/86N LT 8PR"},
      {"17x400", "tyre for a rim in millimetres | S 170 d 15.748"},
      {"32/10/15", "flotation tyre | S 254 d 15 D 812.8"},
      {"205/55ZR16 94(Y)", "metric car tyre | S 205 a 55 radial d 16 ZR 94Y+"},
  };
  check(rows);
  CHECK_THAT(aloud("17x400"), ContainsSubstring("centimetres"));
  CHECK_THAT(aloud("32/10/15"), ContainsSubstring("inches"));
  CHECK_FALSE(sidewall::read("28/10/15"));  // a day
}

TEST_CASE("the triangle after a date code is passed over") {
  CHECK(sidewall::read("205/55 R16 91V DOT 249\xE2\x97\x81")->date_code == "249");
}

TEST_CASE("farm sizes are all refused, by name") {
  for (const char* text : {"13.6-28", "12.4-28 10PR", "16.9R34", "18.4-38", "480/70R34",
                           "320/85R24 122A8", "11.2-24", "9.5-24", "405/70R24", "520/85R42"}) {
    INFO(text);
    const auto got = sidewall::read(text);
    REQUIRE_FALSE(got);
    CHECK(got.error().code == "farm_tyre");
    CHECK(got.error().nearest.empty());
  }
  for (const char* text : {"10.5-20", "14.5-20 MPT", "12.00-24", "11 R 24.5", "305/40R24",
                           "365/80R20 152K", "8.5R17.5"}) {
    INFO(text);
    CHECK(sidewall::read(text));
  }
}

TEST_CASE("what is suggested is not plainly another tyre") {
  for (const char* text : {"1825-20", "1477-20", "16.9R34"}) {
    INFO(text);
    const auto got = sidewall::read(text);
    REQUIRE_FALSE(got);
    CAPTURE(got.error().nearest);
    CHECK(got.error().nearest.empty());
  }
}

TEST_CASE("a truck's load index needs a truck's rim or volume") {
  struct Row {
    const char* text;
    const char* nearest;
  };
  static const Row rows[] = {
      {"205/55 R16 191V", "205/55 R16 91V"},
      {"205/55 R16 140V", "205/55 R16"},
      {"195/65 R15 191T", "195/65 R15 91T"},
      {"245/70 R17 130V", "245/70 R17"},
      {"165 R13 179S", "165 R13 79S"},
      {"205/65 R16 C 207/205T", "205/65 R16 C"},
      {"3.00-18 147P", "3.00-18"},
      {"5.60-15 178S", "5.60-15 78S"},
      {"205/55 R16 191V truck", "205/55 R16 91V"},
      {"FR78-15 194S", "FR78-15 94S"},
  };
  for (const Row& row : rows) {
    INFO(row.text);
    const auto got = sidewall::read(row.text);
    REQUIRE_FALSE(got);
    CHECK(got.error().code == "load_index_too_high");
    CHECK(got.error().nearest == row.nearest);
  }
  for (const char* text :
       {"365/80R20 152K", "255/100R16 128K", "275/80R20 134K", "315/80 R22.5 156/150L",
        "205/65R17.5 132/130J", "8.25R15 143/141J", "10.00 R 20 146/143L", "7.50R15 135/133J",
        "LT315/75R16 127/124Q", "LT295/70R17 128Q", "ST235/80R16 129/125L", "7.50R16C 122/120L",
        "225/75R16C 121/120R", "37x13.50R20 LT 127Q"}) {
    INFO(text);
    CHECK(sidewall::read(text));
  }
}
