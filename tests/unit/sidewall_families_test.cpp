// Every family of marking, by real designations.
//
// Sizes in common use, written from memory to try the grammar, not the tyre. Designations that were
// seen are in tests/register/sidewall.json.
#include <string>

#include "core/patch/geometry.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/sidewall_print.hpp"

using namespace treadwater;
using namespace treadwater::testing;

namespace {

struct Example {
  const char* text;
  const char* expected;
};

void check(const Example* begin, const Example* end) {
  for (const Example* example = begin; example != end; ++example) {
    INFO(example->text);
    CHECK(summary(example->text) == example->expected);
  }
}

template <std::size_t n>
void check(const Example (&examples)[n]) {
  check(examples, examples + n);
}

}  // namespace

TEST_CASE("metric car sizes read with every way of marking") {
  static const Example rows[] = {
      {"205/55 R16 91V", "metric car tyre | S 205 a 55 radial d 16 91V"},
      {"205/55R16 94W XL", "metric car tyre | S 205 a 55 radial d 16 94W XL"},
      {"205/55R16 94V EXTRA LOAD", "metric car tyre | S 205 a 55 radial d 16 94V XL"},
      {"205/55R16 94V REINFORCED", "metric car tyre | S 205 a 55 radial d 16 94V XL"},
      {"205/55R16 94V RF", "metric car tyre | S 205 a 55 radial d 16 94V XL"},
      {"205/55RF16 91W", "metric car tyre | S 205 a 55 radial d 16 91W RF"},
      {"205/55ZRF16 91W", "metric car tyre | S 205 a 55 radial d 16 ZR 91W RF"},
      {"205/55ZR16 (94Y)", "metric car tyre | S 205 a 55 radial d 16 ZR 94Y+"},
      {"205/55 ZR16", "metric car tyre | S 205 a 55 radial d 16 ZR"},
      {"275/60R20 115H", "metric car tyre | S 275 a 60 radial d 20 115H"},
      {"175/70 SR 13", "metric car tyre | S 175 a 70 radial d 13 S"},
      {"185/60 HR14", "metric car tyre | S 185 a 60 radial d 14 H"},
      {"205/60 VR15", "metric car tyre | S 205 a 60 radial d 15 VR"},
      {"155/70R19 84Q", "metric car tyre | S 155 a 70 radial d 19 84Q"},
      {"185/80-15", "metric car tyre | S 185 a 80 cross-ply d 15"},
      {"185/80 D15", "metric car tyre | S 185 a 80 cross-ply d 15"},
      {"255/50B17", "metric car tyre | S 255 a 50 bias-belted d 17"},
      {"HL275/35R22 107Y", "metric car tyre | S 275 a 35 radial d 22 107Y HL"},
  };
  check(rows);
}

TEST_CASE("metric sizes without a series are taken as 82 per cent, aloud") {
  static const Example rows[] = {
      {"165 R 13", "metric car tyre without series | S 165 a 82 radial d 13"},
      {"165 SR 13", "metric car tyre without series | S 165 a 82 radial d 13 S"},
      {"155HR15", "metric car tyre without series | S 155 a 82 radial d 15 H"},
      {"185VR16", "metric car tyre without series | S 185 a 82 radial d 16 VR"},
      {"145-10 68S", "metric car tyre without series | S 145 a 82 cross-ply d 10 68S"},
      {"205R16 104S", "metric car tyre without series | S 205 a 82 radial d 16 104S"},
  };
  check(rows);
  const auto reading = sidewall::read("165 R 13");
  REQUIRE(reading);
  REQUIRE(reading->assumed.size() == 1);
  CHECK_THAT(reading->assumed[0], ContainsSubstring("82 %"));
}

TEST_CASE("P, LT, ST and T sizes keep their letters apart from metric ones") {
  static const Example rows[] = {
      {"P215/65R15XL 95H", "P-metric car tyre | S 215 a 65 radial d 15 95H XL"},
      {"P205/75R15", "P-metric car tyre | S 205 a 75 radial d 15"},
      {"P225/65R17", "P-metric car tyre | S 225 a 65 radial d 17"},
      {"p 205/75 d14", "P-metric car tyre | S 205 a 75 cross-ply d 14"},
      {"P205/60HR15 90H", "P-metric car tyre | S 205 a 60 radial d 15 H 90H"},
      {"LT235/85R16C", "light-truck metric tyre | S 235 a 85 radial d 16 LT 6PR"},
      {"LT245/75R16/E 120/116S",
       "light-truck metric tyre | S 245 a 75 radial d 16 120/116S LT 10PR"},
      {"LT265/70R17 121/118S LRE",
       "light-truck metric tyre | S 265 a 70 radial d 17 121/118S LT 10PR"},
      {"235/85R16 LT 120/116Q", "light-truck metric tyre | S 235 a 85 radial d 16 120/116Q LT"},
      {"ST225/70R15", "special trailer tyre | S 225 a 70 radial d 15"},
      {"ST205/75D14 C", "special trailer tyre | S 205 a 75 cross-ply d 14 6PR"},
      {"ST225/75R15/D", "special trailer tyre | S 225 a 75 radial d 15 8PR"},
      {"ST235/80R16 LOAD RANGE E 124/120M",
       "special trailer tyre | S 235 a 80 radial d 16 124/120M 10PR"},
      {"T125/80 D15", "temporary-use spare tyre | S 125 a 80 cross-ply d 15"},
      {"T125/80 D15 95M", "temporary-use spare tyre | S 125 a 80 cross-ply d 15 95M"},
      {"T 155/90 R 17 112M", "temporary-use spare tyre | S 155 a 90 radial d 17 112M"},
  };
  check(rows);
}

TEST_CASE("flotation sizes give the overall diameter in inches") {
  static const Example rows[] = {
      {"31x10.5 R15 LT", "flotation tyre | S 266.7 radial d 15 D 787.4 LT"},
      {"31X10.50R15LT/C 109S", "flotation tyre | S 266.7 radial d 15 D 787.4 109S LT 6PR"},
      {"LT31x10.50R15", "flotation tyre | S 266.7 radial d 15 D 787.4 LT"},
      {"37x13.50R26LT", "flotation tyre | S 342.9 radial d 26 D 939.8 LT"},
      {"31 x 10.50 - 15 LT 6PR", "flotation tyre | S 266.7 cross-ply d 15 D 787.4 LT 6PR"},
      {"31/10.50R15 109Q", "flotation tyre | S 266.7 radial d 15 D 787.4 109Q"},
      {"35×12,50 R 17 LT 121Q", "flotation tyre | S 317.5 radial d 17 D 889 121Q LT"},
      {"25x8-12", "flotation tyre | S 203.2 cross-ply d 12 D 635"},
  };
  check(rows);
}

TEST_CASE("commercial sizes carry C and a second index for twins") {
  static const Example rows[] = {
      {"195/75 R16 C 107/105R", "light commercial tyre | S 195 a 75 radial d 16 107/105R C"},
      {"195/80R15 C 106R", "light commercial tyre | S 195 a 80 radial d 15 106R C"},
      {"165R13C94-93R", "light commercial tyre | S 165 a 82 radial d 13 94/93R C"},
      {"165R13C 94/93R", "light commercial tyre | S 165 a 82 radial d 13 94/93R C"},
      {"225/75R16CP 116R", "light commercial tyre | S 225 a 75 radial d 16 116R CP"},
      {"215/60R17C 109/107T (104H)",
       "light commercial tyre | S 215 a 60 radial d 17 109/107T then 104H C"},
      {"225/75R16C 122/120R", "light commercial tyre | S 225 a 75 radial d 16 122/120R C"},
      {"195/55R10C 98/96N", "light commercial tyre | S 195 a 55 radial d 10 98/96N C"},
  };
  check(rows);
}

TEST_CASE("two indices without C or LT are taken for a commercial tyre, aloud") {
  const auto reading = sidewall::read("225/75R16 118/116R");
  REQUIRE(reading);
  CHECK(reading->family == sidewall::Family::commercial);
  CHECK_FALSE(reading->commercial);
  REQUIRE_FALSE(reading->assumed.empty());
}

TEST_CASE("truck sizes read in inches and in millimetres") {
  static const Example rows[] = {
      {"5.00R12 83/81P", "truck tyre in inches | S 127 radial d 12 83/81P"},
      {"8.25-20 10PR", "truck tyre in inches | S 209.55 cross-ply d 20 10PR"},
      {"10.00 R 20 146/143L", "truck tyre in inches | S 254 radial d 20 146/143L"},
      {"11 R 22.5 148/145L", "truck tyre in inches | S 279.4 radial d 22.5 148/145L"},
      {"11R22,5 148/145 L", "truck tyre in inches | S 279.4 radial d 22.5 148/145L"},
      {"7.50R16C 122/120L", "truck tyre in inches | S 190.5 radial d 16 122/120L C"},
      {"6.50R16C 108/107N", "truck tyre in inches | S 165.1 radial d 16 108/107N C"},
      {"7.50-16 LT 8PR", "truck tyre in inches | S 190.5 cross-ply d 16 LT 8PR"},
      {"9.5R17.5 129/127M", "truck tyre in inches | S 241.3 radial d 17.5 129/127M"},
      {"7-14.5", "truck tyre in inches | S 177.8 cross-ply d 14.5"},
      {"315/80 R22.5 156/150L (154/150M)",
       "metric truck tyre | S 315 a 80 radial d 22.5 156/150L then 154/150M"},
      {"315/80R22.5 156/150L 154/150M",
       "metric truck tyre | S 315 a 80 radial d 22.5 156/150L then 154/150M"},
      {"205/75R17.5 124/122M", "metric truck tyre | S 205 a 75 radial d 17.5 124/122M"},
      {"385/65R22.5 160K", "metric truck tyre | S 385 a 65 radial d 22.5 160K"},
      {"295/60 R22.5 TL", "metric truck tyre | S 295 a 60 radial d 22.5"},
      {"365/80R20 152K", "metric truck tyre | S 365 a 80 radial d 20 152K"},
  };
  check(rows);
}

TEST_CASE("cross-ply sizes in inches leave the height of the sidewall unsaid") {
  static const Example rows[] = {
      {"5.20-13", "inch-size tyre | S 132.08 cross-ply d 13"},
      {"5.20 S 14", "inch-size tyre | S 132.08 cross-ply d 14 S"},
      {"6.00-16", "inch-size tyre | S 152.4 cross-ply d 16"},
      {"5.60L-15", "inch-size tyre | S 142.24 cross-ply d 15"},
      {"5,60-15", "inch-size tyre | S 142.24 cross-ply d 15"},
      {"6.40/6.50-13", "inch-size tyre | S 162.56 cross-ply d 13"},
      {"6.70-15 6PR", "inch-size tyre | S 170.18 cross-ply d 15 6PR"},
      {"4.80/4.00-8", "inch-size tyre | S 121.92 cross-ply d 8"},
      {"6.00H16", "inch-size tyre | S 152.4 cross-ply d 16 H"},
      {"10.0/75-15.3", "inch-size tyre | S 254 a 75 cross-ply d 15.3"},
  };
  check(rows);
  const auto reading = sidewall::read("5.20-13");
  REQUIRE(reading);
  CHECK_FALSE(patch::overall_diameter(*reading));
}

TEST_CASE("US alphanumeric sizes give load letter, series and rim, no width") {
  static const Example rows[] = {
      {"F78-14", "US alphanumeric tyre a 78 cross-ply d 14"},
      {"FR70-14", "US alphanumeric tyre a 70 radial d 14"},
      {"CR78-15", "US alphanumeric tyre a 78 radial d 15"},
      {"E70VR15", "US alphanumeric tyre a 70 radial d 15 VR"},
      {"ER70VR15", "US alphanumeric tyre a 70 radial d 15 VR"},
      {"G 60 - 15", "US alphanumeric tyre a 60 cross-ply d 15"},
      {"F70x14", "US alphanumeric tyre a 70 cross-ply d 14"},
      {"LR78-15", "US alphanumeric tyre a 78 radial d 15"},
  };
  check(rows);
}

TEST_CASE("rims in millimetres are not multiplied by 25.4") {
  static const Example rows[] = {
      {"190/65 R 390", "tyre for a rim in millimetres | S 190 a 65 radial d 15.3543"},
      {"190/65HR390 89H", "tyre for a rim in millimetres | S 190 a 65 radial d 15.3543 H 89H"},
      {"220/55 VR 390", "tyre for a rim in millimetres | S 220 a 55 radial d 15.3543 VR"},
      {"165R400", "tyre for a rim in millimetres | S 165 radial d 15.748"},
      {"125-400", "tyre for a rim in millimetres | S 125 d 15.748"},
  };
  check(rows);
}

TEST_CASE("a number over 200 after the slash is the overall diameter in millimetres") {
  static const Example rows[] = {
      {"200/580 R15", "competition tyre by overall diameter | S 200 radial d 15 D 580"},
      {"240/640R18", "competition tyre by overall diameter | S 240 radial d 18 D 640"},
      {"20/65-18", "competition tyre by overall diameter | S 200 d 18 D 650"},
      {"9.2/20.0-13",
       "competition tyre in inches by overall diameter | S 233.68 cross-ply d 13 D 508"},
      {"8.2/22.0-15",
       "competition tyre in inches by overall diameter | S 208.28 cross-ply d 15 D 558.8"},
  };
  check(rows);
}

TEST_CASE("beaded-edge sizes give overall diameter and section") {
  static const Example rows[] = {
      {"815x105", "tyre by overall diameter and section | S 105 D 815"},
      {"880 x 120", "tyre by overall diameter and section | S 120 D 880"},
      {"30x3 1/2", "tyre by overall diameter and section | S 88.9 D 762"},
      {"30x3½", "tyre by overall diameter and section | S 88.9 D 762"},
      {"30 X 3-1/2", "tyre by overall diameter and section | S 88.9 D 762"},
      {"30x3.5", "tyre by overall diameter and section | S 88.9 D 762"},
      {"28x3", "tyre by overall diameter and section | S 76.2 D 711.2"},
  };
  check(rows);
  const auto reading = sidewall::read("815x105");
  REQUIRE(reading);
  std::string unsaid;
  for (const auto& sentence : reading->unsaid) unsaid += sentence;
  CHECK_THAT(unsaid, ContainsSubstring("605 mm"));
}

TEST_CASE("motor-cycle sizes read in their three ways") {
  static const Example rows[] = {
      {"120/70ZR17M/C(58W)", "metric motor-cycle tyre | S 120 a 70 radial d 17 ZR 58W+"},
      {"120/90-V18", "metric motor-cycle tyre | S 120 a 90 cross-ply d 18 VR"},
      {"110/80 17 54H", "metric motor-cycle tyre | S 110 a 80 d 17 54H"},
      {"90/90-21 54S", "metric motor-cycle tyre | S 90 a 90 cross-ply d 21 54S"},
      {"80/100-21 51M", "metric motor-cycle tyre | S 80 a 100 cross-ply d 21 51M"},
      {"130/90B16 M/C 73H REINF", "metric motor-cycle tyre | S 130 a 90 bias-belted d 16 73H XL"},
      {"160/60R17 69H", "metric motor-cycle tyre | S 160 a 60 radial d 17 69H"},
      {"190/50 ZR M/C 17 (73W) TL", "metric motor-cycle tyre | S 190 a 50 radial d 17 ZR 73W+"},
      {"130/70-12 62P", "metric motor-cycle tyre | S 130 a 70 cross-ply d 12 62P"},
      {"3.50-18", "motor-cycle tyre in inches | S 88.9 cross-ply d 18"},
      {"2.75-21 45P", "motor-cycle tyre in inches | S 69.85 cross-ply d 21 45P"},
      {"3.25H19", "motor-cycle tyre in inches | S 82.55 cross-ply d 19 H"},
      {"3.25x19", "motor-cycle tyre in inches | S 82.55 cross-ply d 19"},
      {"4.00-18 64H", "motor-cycle tyre in inches | S 101.6 cross-ply d 18 64H"},
      {"3.50-10 51J", "motor-cycle tyre in inches | S 88.9 cross-ply d 10 51J"},
      {"2 1/4-17", "motor-cycle tyre in inches | S 57.15 cross-ply d 17"},
      {"2\xC2\xBE-16", "motor-cycle tyre in inches | S 69.85 cross-ply d 16"},
      {"MH90-21", "alphanumeric motor-cycle tyre | S 80 a 90 cross-ply d 21"},
      {"MT9016", "alphanumeric motor-cycle tyre | S 130 a 90 d 16"},
      {"MU85B16 M/C 77H", "alphanumeric motor-cycle tyre | S 140 a 85 bias-belted d 16 77H"},
  };
  check(rows);
}

TEST_CASE("where two kinds of tyre share a size, both are named") {
  for (const char* text : {"120/90-18 65S", "185/80-15", "6.00-16", "4.50-19", "4.00-19"}) {
    INFO(text);
    const auto reading = sidewall::read(text);
    REQUIRE(reading);
    CHECK_FALSE(reading->candidates.empty());
    CHECK_FALSE(reading->assumed.empty());
  }
  // A mark settles it.
  for (const char* text : {"120/90-18 M/C 65S", "205/55 R16 91V", "4.00-19 M/C", "185R14C"}) {
    INFO(text);
    const auto reading = sidewall::read(text);
    REQUIRE(reading);
    CHECK(reading->candidates.empty());
  }
}

TEST_CASE("the overall diameter of 205/55 R16 is 631.9 mm") {
  const auto reading = sidewall::read("205/55 R16 91V");
  REQUIRE(reading);
  const auto diameter = patch::overall_diameter(*reading);
  REQUIRE(diameter);
  CHECK_THAT(in_millimetres(*diameter), WithinAbs(631.9, 1e-9));
}
