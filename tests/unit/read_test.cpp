#include "core/quantity/read.hpp"

#include "core/words/problem.hpp"
#include "core/words/say.hpp"
#include "tests/support/catch.hpp"

using namespace treadwater;
using namespace treadwater::testing;

namespace {

const QuantityRequest pressure{Dimension::pressure, "kPa",    0.0, 1000.0, "0 kPa",
                               "1000 kPa",          "220 kPa"};
const QuantityRequest load{Dimension::mass, "kg", 20.0, 8000.0, "20 kg", "8000 kg", "430 kg"};
const QuantityRequest tread{Dimension::length, "mm", 0.0, 0.025, "0 mm", "25 mm", "3 mm"};
const QuantityRequest speed{Dimension::speed, "km/h", 1.0, 500.0, "1 km/h", "500 km/h", "90 km/h"};
const QuantityRequest air{Dimension::temperature, "°C", 200.0, 350.0, "-70 °C", "70 °C", "15 °C"};

double kpa(std::string_view text) { return read_stored(text, pressure).value_or(-1.0); }
double mm(std::string_view text) { return 1000.0 * read_stored(text, tread).value_or(-1.0); }
double kg(std::string_view text) { return read_stored(text, load).value_or(-1.0); }
double kmh(std::string_view text) { return read_stored(text, speed).value_or(-1.0); }

Phrase label_of(Dimension dimension) {
  switch (dimension) {
    case Dimension::pressure:
      return Phrase("Tyre pressure");
    case Dimension::mass:
      return Phrase("Load");
    case Dimension::length:
      return Phrase("Tread depth");
    case Dimension::speed:
      return Phrase("Speed");
    default:
      return Phrase("Air");
  }
}

std::string code(std::string_view text, const QuantityRequest& request) {
  const auto read = read_stored(text, request);
  return read ? "" : std::string(read.error().code);
}
std::string sentence(std::string_view text, const QuantityRequest& request) {
  const auto read = read_stored(text, request);
  return read ? "" : say(read.error(), label_of(request.dimension), request);
}

}  // namespace

TEST_CASE("what is too much in bar may have been meant in psi") {
  CHECK(sentence("32 bar", pressure) ==
        "Tyre pressure: “32 bar” is more than this can use. Anything from 0 kPa to 1000 kPa would "
        "do. Did you mean 32 psi?");
  CHECK_THAT(sentence("32.5 bar", pressure), ContainsSubstring("Did you mean 32.5 psi?"));
  for (const char* text : {"1600 bar", "1600 kPa", "230 psi", "-1 bar"})
    CHECK_THAT(sentence(text, pressure), !ContainsSubstring("Did you mean"));
}

TEST_CASE("pressures are read as people write them") {
  CHECK_THAT(kpa("33 psi"), WithinAbs(227.527, 0.0005));
  CHECK_THAT(kpa("33PSI"), WithinAbs(227.527, 0.0005));
  CHECK_THAT(kpa("2.3bar"), WithinAbs(230.0, 1e-9));
  CHECK_THAT(kpa("2,3 bar"), WithinAbs(230.0, 1e-9));
  CHECK_THAT(kpa("2.3\u00A0bar"), WithinAbs(230.0, 1e-9));
  CHECK_THAT(kpa("2.3\u202Fbar"), WithinAbs(230.0, 1e-9));
  CHECK(kpa("230 kPa") == 230.0);
  CHECK(kpa("  230  ") == 230.0);
  CHECK(kpa("+230 kpa") == 230.0);
  CHECK_THAT(kpa("0.23 MPa"), WithinAbs(230.0, 1e-9));
  CHECK_THAT(kpa("2.3e2"), WithinAbs(230.0, 1e-9));
  CHECK_THAT(kpa(".5 bar"), WithinAbs(50.0, 1e-9));
}

TEST_CASE("depths are read in millimetres, inches and thirty-seconds") {
  CHECK_THAT(mm("7/32 in"), WithinAbs(5.55625, 1e-9));
  CHECK_THAT(mm("7/32\""), WithinAbs(5.55625, 1e-9));
  CHECK_THAT(mm("7 /32 in"), WithinAbs(5.55625, 1e-9));
  CHECK_THAT(mm("7/32in"), WithinAbs(5.55625, 1e-9));
  CHECK_THAT(mm("6.5 /32 in"), WithinAbs(5.159375, 1e-9));
  CHECK_THAT(mm("7 32nds"), WithinAbs(5.55625, 1e-9));
  CHECK_THAT(mm("4 mm"), WithinAbs(4.0, 1e-9));
  CHECK_THAT(mm("0.4 cm"), WithinAbs(4.0, 1e-9));
  CHECK_THAT(mm("1/4 in"), WithinAbs(6.35, 1e-9));
  CHECK_THAT(mm("½ in"), WithinAbs(12.7, 1e-9));
  const QuantityRequest wide{Dimension::length, "mm", 0.0, 1.0, "0 mm", "1 m", "5 mm"};
  CHECK_THAT(1000.0 * read_stored("3 1/2 in", wide).value_or(-1.0), WithinAbs(88.9, 1e-9));
}

TEST_CASE("loads and speeds are read with either unit") {
  CHECK(kg("430kg") == 430.0);
  CHECK(kg("430") == 430.0);
  CHECK_THAT(kg("948 lb"), WithinAbs(430.006, 0.0005));
  CHECK_THAT(kg("948 lbs"), WithinAbs(430.006, 0.0005));
  CHECK_THAT(kmh("70 mph"), WithinAbs(112.654, 0.0005));
  CHECK(kmh("110 km/h") == 110.0);
  CHECK(kmh("110km/h") == 110.0);
  CHECK(kmh("110 kph") == 110.0);
}

TEST_CASE("temperatures are read as points, below zero too") {
  CHECK_THAT(read_quantity<Temperature>("-5 °C", air).value_or(celsius(99)).stored(),
             WithinAbs(268.15, 1e-9));
  CHECK_THAT(read_quantity<Temperature>("−5", air).value_or(celsius(99)).stored(),
             WithinAbs(268.15, 1e-9));
  CHECK_THAT(read_quantity<Temperature>("59 °F", air).value_or(celsius(99)).stored(),
             WithinAbs(288.15, 1e-9));
}

TEST_CASE("each mistake has its own code") {
  CHECK(code("", pressure) == "missing");
  CHECK(code("   \t\n", pressure) == "missing");
  CHECK(code("banana", pressure) == "no_number");
  CHECK(code("🛞", pressure) == "no_number");
  CHECK(code("bar 2.3", pressure) == "no_number");
  CHECK(code("30 33 psi", pressure) == "two_numbers");
  CHECK(code("2-3 mm", tread) == "two_numbers");
  CHECK(code("3 mm 5", tread) == "two_numbers");
  CHECK(code("2.2.2 bar", pressure) == "two_numbers");
  CHECK(code("7/32", tread) == "unit_needed");
  CHECK(code("7/0 in", tread) == "bad_fraction");
  CHECK(code("33 parsec", pressure) == "unknown_unit");
  CHECK(code("430 kg", pressure) == "wrong_dimension");
  CHECK(code("4000 N", load) == "wrong_dimension");
  CHECK(code("-3 mm", tread) == "below_range");
  CHECK(code("5 kg", load) == "below_range");
  CHECK(code("40 mm", tread) == "above_range");
  CHECK(code("1e999 bar", pressure) == "too_large");
  CHECK(code("99999999999999999999 bar", pressure) == "too_large");
  CHECK(code(std::string(10000, 'x'), pressure) == "too_long");
  CHECK(code("nan", pressure) == "no_number");
  CHECK(code("inf bar", pressure) == "no_number");
  CHECK(code("0x20 psi", pressure) == "two_numbers");
}

TEST_CASE("a sentence names the field, what was read and what would do") {
  CHECK(sentence("-3 mm", tread) ==
        "Tread depth: “-3 mm” is below zero. Anything from 0 mm to 25 mm would do.");
  CHECK(sentence("430 kg", pressure) ==
        "Tyre pressure: “430 kg” is a mass, and a pressure is asked for: use kPa, bar or psi, such "
        "as "
        "220 kPa.");
  CHECK(sentence("1 1/0 kPa", pressure).find("divides by nothing") != std::string::npos);
  CHECK(sentence("1 1/0.005 kPa", pressure).find("divides by nothing") == std::string::npos);
  CHECK(sentence("", load) == "Load is missing. Something like 430 kg would do.");
  CHECK_THAT(sentence("33 parsec", pressure),
             ContainsSubstring("parsec") && ContainsSubstring("kPa, bar or psi"));
}

TEST_CASE("what is repeated in a sentence is short and clean") {
  CHECK(at_head("cut slick") == "Cut slick");
  CHECK(at_head("") == "");
  CHECK(at_head("80 %") == "80 %");
  CHECK(in_quotes("a\nb") == "“a b”");
  CHECK(in_quotes("\xFF\xC3") == "“\uFFFD\uFFFD”");
  const std::string quoted = in_quotes(std::string(500, 'x'));
  CHECK(quoted.size() < 60);
  CHECK_THAT(quoted, EndsWith("…”"));
}

TEST_CASE("a bound counts as inside it, whatever the last binary digit of its unit says") {
  const QuantityRequest tyre{
      Dimension::temperature, "°C", 223.15, 423.15, "-50 °C", "150 °C", "60 °C"};
  for (const char* text : {"-50 °C", "150 °C", "302 °F", "-58 °F"}) CHECK(code(text, tyre) == "");
  CHECK(code("-50.1 °C", tyre) == "below_range");
  CHECK(code("150.1 °C", tyre) == "above_range");
}

TEST_CASE("units are read in full, in the singular and with a full stop") {
  const QuantityRequest time{Dimension::time, "s", 0.0, 1e6, "0 s", "10 d", "20 min"};
  const QuantityRequest way{Dimension::length, "km", 0.0, 1e6, "0 km", "1000 km", "5 km"};
  const auto seconds_of = [&](std::string_view text) {
    return read_stored(text, time).value_or(-1.0);
  };
  CHECK(kpa("33 psi.") == kpa("33 psi"));
  CHECK(kpa("33 p.s.i.") == kpa("33 psi"));
  CHECK(mm("7mm.") == mm("7 mm"));
  CHECK(mm("7 millimetres") == mm("7 mm"));
  CHECK(kg("950 lbs.") == kg("950 lb"));
  CHECK(kmh("70 m.p.h.") == kmh("70 mph"));
  CHECK(seconds_of("20 mins") == 1200.0);
  CHECK(seconds_of("1 hour") == 3600.0);
  CHECK(seconds_of("1 day") == 86400.0);
  CHECK(read_stored("1 mile", way).value_or(-1.0) == 1609.344);
}

TEST_CASE("a time may be written in two units, the larger first") {
  const QuantityRequest time{Dimension::time, "s", 0.0, 1e6, "0 s", "10 d", "20 min"};
  const auto seconds_of = [&](std::string_view text) {
    return read_stored(text, time).value_or(-1.0);
  };
  CHECK(seconds_of("1 h 20 min") == 4800.0);
  CHECK(seconds_of("1h20min") == 4800.0);
  CHECK(seconds_of("2 min. 5 s") == 125.0);
  for (const char* text : {"20 min 1 h", "1 h 20", "1 h 20 kg", "1 h 1 h"}) {
    INFO(text);
    CHECK(code(text, time) != "");
  }
}

TEST_CASE("degrees alone are of the scale that is asked for") {
  const QuantityRequest american{
      Dimension::temperature, "°F", 200.0, 350.0, "-70 °F", "150 °F", "60 °F"};
  CHECK_THAT(read_stored("12°", air).value_or(-1.0), WithinAbs(285.15, 1e-9));
  CHECK_THAT(read_stored("12 degrees", air).value_or(-1.0), WithinAbs(285.15, 1e-9));
  CHECK_THAT(read_stored("59°", american).value_or(-1.0), WithinAbs(288.15, 1e-9));
  CHECK_THAT(read_stored("12 \u2103", air).value_or(-1.0), WithinAbs(285.15, 1e-9));
  CHECK_THAT(read_stored("59\u2109", air).value_or(-1.0), WithinAbs(288.15, 1e-9));
}

TEST_CASE("thousands may be parted by any space") {
  for (const char* space :
       {" ", "\u00A0", "\u2007", "\u2008", "\u2009", "\u200A", "\u202F", "\u205F"}) {
    CAPTURE(space);
    CHECK(kg(std::string("1") + space + "000 kg") == 1000.0);
    CHECK(kg(std::string("1") + space + "000,5" + space + "kg") == 1000.5);
  }
  for (const char* text : {"1 00 kg", "30 33 kg", "1 0000 kg", "1000 000 kg", "0 500 kg"}) {
    INFO(text);
    CHECK(code(text, load) == "two_numbers");
  }
}

TEST_CASE("digits of every script are read") {
  CHECK(kg("\uFF14\uFF13\uFF10 \uFF4B\uFF47") == 430.0);  // full width
  CHECK(kg("\u0664\u0663\u0660 kg") == 430.0);            // Arabic
  CHECK(kg("\u06F4\u06F3\u06F0 kg") == 430.0);            // Persian
  CHECK(kg("\u096A\u0969\u0966 kg") == 430.0);            // Devanagari
  CHECK_THAT(kpa("\u0662\u066B\u0663 bar"), WithinAbs(230.0, 1e-9));
}

TEST_CASE("five thirty-seconds are never a fraction of a millimetre") {
  const QuantityRequest wide{Dimension::length, "mm", 0.0, 1.0, "0 mm", "1 m", "5 mm"};
  for (const char* text : {"5/32 in", "5/32nds", "5/32 nds", "5/32nds in", "5/32 /32 in",
                           "5 /32 in", "5/32\"", "5 32nds"}) {
    INFO(text);
    CHECK_THAT(mm(text), WithinAbs(3.96875, 1e-9));
  }
  for (const char* text : {"5/32 mm", "5/32mm", "0 5/32 mm", "5/32 cm", "3/16 mm"}) {
    INFO(text);
    CHECK(code(text, tread) == "inch_fraction");
  }
  CHECK(sentence("5/32 mm", tread) ==
        "Tread depth: “5/32 mm” is a fraction of a millimetre, and such fractions are of an inch. "
        "Did you mean 5/32 in?");
  CHECK(code("5/32", tread) == "unit_needed");
  CHECK(mm("1/2 mm") == 0.5);
  CHECK_THAT(1000.0 * read_stored("1-3/16 in", wide).value_or(-1.0), WithinAbs(30.1625, 1e-9));
  CHECK_THAT(mm("3/16ths in"), WithinAbs(4.7625, 1e-9));
  CHECK(code("2-3 mm", tread) == "two_numbers");
}
