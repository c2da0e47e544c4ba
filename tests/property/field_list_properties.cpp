// Facts of order of a whole field, over random lists.
#include <algorithm>

#include "core/quantity/write.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/property.hpp"
#include "tests/support/sheets.hpp"

using namespace treadwater;
using namespace treadwater::testing;

namespace {

using Line = std::vector<std::pair<const char*, std::string>>;

std::string number(double low, double high, const char* unit) {
  return fixed(low + (high - low) * *rc::gen::inRange(0, 1001) / 1000.0, 3) + unit;
}

// One line in eight cannot be read.
Line any_line() {
  Line line;
  line.emplace_back("name", std::to_string(*rc::gen::inRange(1, 400)));
  line.emplace_back("size", *rc::gen::element("205/55 R16 91V", "195/65R15 91T", "165 SR 13",
                                              "185/60 R14", "P215/65R15 95S"));
  line.emplace_back("load", number(250.0, 650.0, " kg"));
  line.emplace_back("pressure", number(140.0, 300.0, " kPa"));
  line.emplace_back("tread", number(0.5, 9.0, " mm"));
  line.emplace_back("tyre_kind", *rc::gen::element("road", "winter", "cut-slick", "slick"));
  if (*rc::gen::inRange(0, 8) == 0)
    line[static_cast<std::size_t>(*rc::gen::inRange(1, 6))].second = "banana";
  return line;
}

sheets::Input input_of(const std::vector<Line>& lines, const std::string& water) {
  sheets::Input input;
  input.set("today", "2026-11-25");
  input.set("water", water);
  input.set_rows("rows", lines.size());
  for (std::size_t i = 0; i < lines.size(); ++i)
    for (const auto& cell : lines[i])
      input.set(sheets::row_path("rows", i, cell.first), cell.second);
  return input;
}

// In km/h; above everything where nothing limits.
double speed_of(const sheets::Answer& answer) {
  return answer.hold_to ? in_kilometres_per_hour(answer.hold_to->speed) : 1e9;
}

std::vector<std::vector<std::string>> sorted_rows(const sheets::Answer& answer,
                                                  std::string_view id) {
  for (const sheets::Table& table : answer.tables)
    if (table.id == id) {
      std::vector<std::vector<std::string>> rows;
      for (const auto& row : table.rows) {
        rows.emplace_back();
        for (const Text& cell : row) rows.back().push_back(cell.str());
      }
      std::sort(rows.begin(), rows.end());
      return rows;
    }
  return {};
}

}  // namespace

TEST_CASE("a line more never raises the field's hold-to speed, nor betters its verdict") {
  CHECK(holds(
      "one more",
      [] {
        std::vector<Line> lines;
        const int count = *rc::gen::inRange(1, 9);
        for (int i = 0; i < count; ++i) lines.push_back(any_line());
        const std::string water = number(0.0, 20.0, " mm");
        const auto fewer = testing::field_list(input_of(lines, water));
        lines.push_back(any_line());
        const auto more = testing::field_list(input_of(lines, water));
        // Before, nothing may have been read at all.
        if (fewer.hold_to && more.hold_to) RC_ASSERT(speed_of(more) <= speed_of(fewer));
        if (fewer.verdict) {
          RC_ASSERT(bool(more.verdict));
          RC_ASSERT(more.verdict->level >= fewer.verdict->level);
        }
      },
      3000));
}

TEST_CASE("the order of the lines is without meaning") {
  CHECK(holds(
      "order",
      [] {
        std::vector<Line> lines;
        const int count = *rc::gen::inRange(1, 9);
        for (int i = 0; i < count; ++i) lines.push_back(any_line());
        const std::string water = number(0.0, 20.0, " mm");
        const auto one = testing::field_list(input_of(lines, water));
        std::rotate(lines.begin(), lines.begin() + *rc::gen::inRange(0, count), lines.end());
        if (*rc::gen::arbitrary<bool>()) std::reverse(lines.begin(), lines.end());
        const auto other = testing::field_list(input_of(lines, water));
        RC_ASSERT(one.ok() == other.ok());
        RC_ASSERT(speed_of(one) == speed_of(other));
        RC_ASSERT(bool(one.verdict) == bool(other.verdict));
        if (one.verdict) RC_ASSERT(one.verdict->level == other.verdict->level);
        for (const char* table : {"field", "scrutineer"})
          RC_ASSERT(sorted_rows(one, table) == sorted_rows(other, table));
      },
      3000));
}

TEST_CASE("the field is never fit while a line could not be read") {
  CHECK(holds(
      "unread",
      [] {
        std::vector<Line> lines;
        const int count = *rc::gen::inRange(1, 6);
        for (int i = 0; i < count; ++i) lines.push_back(any_line());
        const auto answer = testing::field_list(input_of(lines, "0"));
        const bool unread = !sorted_rows(answer, "unread").empty();
        if (unread && answer.verdict) RC_ASSERT(answer.verdict->level != sheets::Level::note);
        if (unread && !answer.verdict) RC_ASSERT(!answer.hold_to);
      },
      3000));
}
