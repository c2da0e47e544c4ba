#include "tests/support/accuracy.hpp"

#include <fstream>
#include <sstream>

#include "tests/support/catch.hpp"

namespace {

std::string file(const char* name) {
  std::ifstream in(std::string(TREADWATER_ROOT "/docs/") + name);
  std::stringstream text;
  text << in.rdbuf();
  return text.str();
}

}  // namespace

TEST_CASE("docs/accuracy.md and its picture are the core's own (if not: run method_tables docs)") {
  using namespace treadwater::testing;
  CHECK(file("accuracy.md") == accuracy_text(register_rooms(TREADWATER_ROOT)));
  CHECK(file("accuracy.svg") == treadwater::testing::onset_picture());
}

TEST_CASE("every measured row lies inside the band, and above the hold-to speed") {
  for (const auto& row : treadwater::testing::onset_rows()) {
    CAPTURE(std::string(row.measured->id));
    CHECK(row.band.low <= row.measured->low);
    CHECK(row.measured->high <= row.band.high);
    CHECK(row.held < row.measured->low);
  }
}
