#include <fstream>
#include <sstream>

#include "tests/support/catch.hpp"
#include "tests/support/method_tables.hpp"

TEST_CASE("docs/method.md holds the core's own records (if not: run method_tables docs)") {
  std::ifstream in(TREADWATER_ROOT "/docs/method.md");
  std::stringstream text;
  text << in.rdbuf();
  REQUIRE(text.str().find("| onset-film |") != std::string::npos);
  REQUIRE(text.str().find("| A3 |") != std::string::npos);
  CHECK(text.str() == treadwater::testing::with_tables(text.str()));
}
