#include "tests/register/register.hpp"

#include "tests/support/catch.hpp"
#include "tests/support/register_tables.hpp"

// tests/register does the same natively and in WebAssembly; here a change of the core is noticed
// before the page is built.
TEST_CASE("every outside check of the register agrees with the native core") {
  for (const auto& room : treadwater::testing::register_rooms(TREADWATER_ROOT)) {
    CHECK_FALSE(room.rows.empty());
    for (const auto& row : room.rows) {
      INFO(room.name << ": " << row.entry << " (" << row.inputs << "), " << row.check << ", printed "
                     << row.printed << " " << row.unit << " " << row.error);
      CHECK(row.agrees);
    }
  }
}
