// Whole pasted lines: spacing, case, order, marks, and what cannot be read.
#include <string>

#include "tests/support/catch.hpp"
#include "tests/support/sidewall_print.hpp"

using namespace treadwater;
using namespace treadwater::testing;

namespace {

const sidewall::Mark* find(const sidewall::Reading& reading, const std::string& id) {
  for (const auto& mark : reading.marks) {
    if (mark.id == id) return &mark;
  }
  return nullptr;
}

std::string all(const std::vector<std::string>& sentences) {
  std::string out;
  for (const auto& sentence : sentences) out += sentence + "\n";
  return out;
}

}  // namespace

TEST_CASE("spacing, case and order do not matter") {
  const std::string expected = what_it_is(*sidewall::read("205/55 R16 91V XL M+S"));
  REQUIRE_THAT(expected, ContainsSubstring("mark: m_s"));
  for (const char* text :
       {"205/55R16 91V XL M+S", "205/55r16 91v xl m+s", "  205 / 55  R 16   91 V   XL  M + S ",
        "M+S XL 91V 205/55R16", "XL 205/55 R16 M&S 91V", "205/55R16XL 91V M.S",
        "205/55\xC2\xA0R16\xE2\x80\xAF"
        "91V\tXL\nM+S",
        "205/55 R16 91VXL (M+S)", "205/55 R16, 91V, extra load, m/s", "205/55R1691V XL M+S",
        "\xEF\xBC\x92\xEF\xBC\x90\xEF\xBC\x95/55 R16 91V XL M+S", "205/55-R16 91V XL M+S",
        "205/55/R16 91V XL M+S", "205 55 R16 91V XL M+S", "20555R16 91V XL M+S",
        "205/55 R-16 91V XL M+S", "205/55 R16\" 91V XL M+S", "205/55 R16 205/55 R16 91V XL M+S"}) {
    INFO(text);
    const auto reading = sidewall::read(text);
    REQUIRE(reading);
    CHECK(what_it_is(*reading) == expected);
  }
}

TEST_CASE("a size that is not spelled as moulded is read aloud") {
  for (const char* text :
       {"195/55/R16 85V", "245/55/18", "2055516", "205 55 16 91V", "205-55-16"}) {
    INFO(text);
    const auto reading = sidewall::read(text);
    REQUIRE(reading);
    CHECK_THAT(all(reading->assumed), ContainsSubstring("was read as"));
  }
}

TEST_CASE("marks are found wherever they stand") {
  const auto reading = sidewall::read(
      "e4 0212345 205/55 R16 91V outside tubeless DOT 4B9K 1XXX 2319 treadwear 400 traction AA "
      "temperature A M+S 3PMSF rotation S2WR2 TWI max load 615 kg (1356 lbs) 350 kPa 51 PSI");
  REQUIRE(reading);
  for (const char* id :
       {"approval", "outside", "tubeless", "tin", "date_code", "treadwear", "traction",
        "temperature", "m_s", "three_peak", "rotation", "r117", "wear_indicator", "max_load",
        "load_lb", "marked_pressure", "marked_pressure_psi"}) {
    INFO(id);
    CHECK(find(*reading, id) != nullptr);
  }
  CHECK(find(*reading, "not_understood") == nullptr);
  CHECK(reading->date_code == "2319");
  CHECK(find(*reading, "date_code")->meaning == "Made in week 23 of 2019");
  CHECK(find(*reading, "approval")->value == "e4 0212345");
  CHECK(find(*reading, "traction")->value == "AA");
  REQUIRE(reading->marked_pressure);
  CHECK(in_kilopascals(*reading->marked_pressure) == 350.0);
}

TEST_CASE("every mark that is reported stands in the text") {
  const std::string text = "P205/55R16 89H TT nhs regroovable LOAD RANGE B 4PR racing inside";
  const auto reading = sidewall::read(text);
  REQUIRE(reading);
  CHECK(reading->marks.size() == 7);
  for (const auto& part : reading->parts) {
    CHECK(part.begin < part.end);
    CHECK(part.end <= text.size());
  }
}

TEST_CASE("trailing RF means reinforced, RF before the rim means run flat") {
  CHECK(sidewall::read("205/55 RF16 91W")->run_flat);
  CHECK_FALSE(sidewall::read("205/55 RF16 91W")->extra_load);
  CHECK(sidewall::read("205/55 R16 RF 91W")->extra_load);
  CHECK_FALSE(sidewall::read("205/55 R16 RF 91W")->run_flat);
}

TEST_CASE("date codes read as week and year, and say when they cannot") {
  CHECK(sidewall::read("205/55 R16 DOT 2319")->date_code == "2319");
  CHECK(sidewall::read("205/55 R16 DOT EJ3J FEH 4019")->date_code == "4019");
  CHECK(sidewall::read("205/55 R16 DOTEJ3JFEH4019")->date_code == "4019");
  CHECK(sidewall::read("205/55 R16 DOT EJ3J FEH 5320")->date_code == "5320");

  CHECK(sidewall::read("205/55 R16 DOT 4Y7A 1234 0120")->date_code == "0120");

  const auto bare = sidewall::read("205/55 R16 91V 2319");
  REQUIRE(bare);
  CHECK(bare->date_code == "2319");
  CHECK_THAT(all(bare->assumed), ContainsSubstring("2319"));

  const auto old = sidewall::read("165 SR 13 DOT EJ3J FEH 324");
  REQUIRE(old);
  CHECK(old->date_code == "324");
  CHECK_THAT(find(*old, "date_code")->meaning, ContainsSubstring("1984 or 1994"));

  const auto wrong = sidewall::read("205/55 R16 DOT EJ3J FEH 5419");
  REQUIRE(wrong);
  CHECK(wrong->date_code.empty());
  CHECK_THAT(all(wrong->unsaid), ContainsSubstring("5419"));
}

TEST_CASE("words that are not understood are shown") {
  const auto reading = sidewall::read("205/55 R16 91V Purple Elephant 7");
  REQUIRE(reading);
  REQUIRE(find(*reading, "not_understood") != nullptr);
  CHECK(find(*reading, "not_understood")->value == "Purple Elephant 7");
}

TEST_CASE("what the text does not say is said") {
  CHECK_THAT(all(sidewall::read("205/55 R16")->unsaid), ContainsSubstring("service description"));
  CHECK_THAT(all(sidewall::read("205/55 ZR16")->unsaid), ContainsSubstring("240 km/h"));
  CHECK_THAT(all(sidewall::read("205/55 16 91V")->unsaid), ContainsSubstring("construction"));
  CHECK_THAT(all(sidewall::read("205/55 R16 91")->unsaid), ContainsSubstring("speed symbol"));
  CHECK_THAT(all(sidewall::read("5.60-15")->unsaid), ContainsSubstring("height of the sidewall"));
  CHECK_THAT(all(sidewall::read("FR78-15")->unsaid), ContainsSubstring("section width"));
  CHECK_THAT(all(sidewall::read("245/70R16 113/100S")->assumed), ContainsSubstring("Check them"));
}

TEST_CASE("what cannot be read is told with a place, a reason and a way on") {
  struct Row {
    const char* text;
    const char* code;
    std::size_t position;
    const char* nearest;
  };
  static const Row rows[] = {
      {"", "empty", 0, ""},
      {"   \t ", "only_spaces", 0, ""},
      {"205/55", "incomplete", 6, "205/55 R16"},
      {"205/", "incomplete", 4, "205/55 R16"},
      {"205", "incomplete", 3, "205/55 R16"},
      {"205/55 R", "incomplete", 8, "205/55 R16"},
      {"205/55 R16 99Z", "unknown_speed_symbol", 13, "205/55 R16 99V"},
      {"205/55 R16 91I", "unknown_speed_symbol", 13, "205/55 R16 91J"},
      {"205/55 R16 300V", "unknown_load_index", 11, "205/55 R16"},
      {"205/120 R16", "series_out_of_range", 4, "205/55 R16"},
      {"205/5 R16", "series_out_of_range", 4, "205/55 R16"},
      {"banana", "not_a_size", 0, ""},
      {"\xF0\x9F\x99\x82", "no_letters", 0, ""},
      {"205/55 R1", "rim_incomplete", 8, "205/55 R16"},
      {"205/55 R99", "rim_out_of_range", 8, "205/55 R16"},
      {"9999/55 R16", "width_out_of_range", 0, "205/55 R16"},
      {"521-13", "no_such_family", 0, "5.21-13"},
      {"195/45R16 84V   205/45R16 87V", "two_sizes", 16, "195/45 R16"},
  };
  for (const Row& row : rows) {
    INFO(row.text);
    const auto got = sidewall::read(row.text);
    REQUIRE_FALSE(got);
    CHECK(got.error().code == row.code);
    CHECK(got.error().position == row.position);
    CHECK(got.error().nearest == row.nearest);
    CHECK(got.error().text.size() > 20);
    if (row.nearest[0] != '\0') CHECK(sidewall::read(got.error().nearest));
  }
}

TEST_CASE("texts over 400 bytes are refused, not read in part") {
  const std::string size = "205/55 R16 91V ";
  CHECK(sidewall::read(size + std::string(385, 'x')));
  const auto long_text = sidewall::read(size + std::string(386, 'x'));
  REQUIRE_FALSE(long_text);
  CHECK(long_text.error().code == "too_long");
  CHECK(sidewall::read(std::string(10240, '7')).error().code == "too_long");
}

TEST_CASE("99 itself is an ordinary index, and Z no symbol") {
  const auto got = sidewall::read("205/55 R16 99Z");
  REQUIRE_FALSE(got);
  CHECK_THAT(got.error().text, ContainsSubstring("Z is no speed symbol"));
  CHECK_THAT(got.error().text, ContainsSubstring("99 itself is an ordinary one"));
}

TEST_CASE("bytes that are no text do no harm") {
  CHECK(sidewall::read("205/55 R16 91V \xFF\xC0\x80\xED\xA0\x80"));
  CHECK_FALSE(sidewall::read("\xFF\xFE\x80"));
  CHECK_FALSE(sidewall::read(std::string("\0\0\0", 3)));
}
