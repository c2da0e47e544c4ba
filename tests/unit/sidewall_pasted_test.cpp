// What stands beside a size in a pasted line and is no part of it.
#include <string>

#include "tests/support/catch.hpp"
#include "tests/support/sidewall_print.hpp"

using namespace treadwater;
using namespace treadwater::testing;

namespace {

std::string code(const std::string& text) {
  const auto got = sidewall::read(text);
  return got ? "read as " + got->canonical : got.error().code;
}

}  // namespace

TEST_CASE("a load index and a speed symbol never come from a decimal number") {
  for (const char* text : {"205/55 R16 0.91 m", "205/55 R16 2.85 K miles", "205/55 R16 5.50J",
                           "205/55 R16 1,91V", "205/55 R16 6.5J x 16",
                           "205/55 R16 1\xC2\xB7"
                           "85 T"}) {
    INFO(text);
    const auto got = sidewall::read(text);
    REQUIRE(got);
    CHECK_FALSE(got->service);
  }
  const auto rim = sidewall::read("205/55 R16 91V 5.50J");
  REQUIRE(rim);
  CHECK_FALSE(rim->second_service);
  CHECK(summary("205/55 R16, 91V") == "metric car tyre | S 205 a 55 radial d 16 91V");
}

TEST_CASE("a rim of 22.5 is not read as 22") {
  CHECK(sidewall::read("315/80 R22\xC2\xB7"
                       "5")
            ->canonical == "315/80 R22.5");
  for (const char* text : {"315/80 R22.S", "315/80 R22_5", "11 R22,S"}) {
    INFO(text);
    const auto got = sidewall::read(text);
    REQUIRE_FALSE(got);
    CHECK_THAT(got.error().nearest, EndsWith("R22.5"));
  }
}

TEST_CASE("an inch size in two widths is not one in millimetres") {
  const auto got = sidewall::read("500/525-16");
  REQUIRE_FALSE(got);
  CHECK(got.error().nearest == "5.00/5.25-16");
}

TEST_CASE("a wheel and an inner tube are told from a tyre") {
  for (const char* text : {"15 \xC3\x97 4T", "15x4J", "6.5Jx15", "15 x 6 1/2 JJ"}) {
    INFO(text);
    CHECK(code(text) == "wheel");
  }
  for (const char* text : {"ASC 8.25-20 TR15", "ASC 8.25/9.00-20 TR75A", "inner tube 6.00-16"}) {
    INFO(text);
    CHECK(code(text) == "inner_tube");
  }
  for (const char* text :
       {"15 x 4", "165 R15 Triumph TR4", "8.25-20 16PR TR78A", "3.00-18 tube type"}) {
    INFO(text);
    CHECK(sidewall::read(text));
  }
}

TEST_CASE("the tyres of front and rear in one line are not read as one") {
  for (const char* text : {"225/40-255/35 R18", "225/40 255/35 R18", "225/45 & 245/45 R17",
                           "225/40R18 255/35", "F 225/40 R 255/35 R18", "120/70-180/55 ZR17",
                           "225/40/255/35R18", "225/40x255/35R18", "205/55 R16 91V 215/50",
                           "225 45 17 245 40 17", "20555R16 22550R16", "90/90-21 and 130/90"}) {
    INFO(text);
    CHECK(code(text) == "two_sizes");
    CHECK_THAT(sidewall::read(text).error().text, ContainsSubstring("front and rear apart"));
  }
  for (const char* text : {"205/55 R16 205/55", "225/75R16C 120/115R", "245/70R16 113/100S",
                           "2 x 205/55 R16", "315/80 R22.5 156/150L + 154/150 (additional)"}) {
    INFO(text);
    CHECK(sidewall::read(text));
  }
}
