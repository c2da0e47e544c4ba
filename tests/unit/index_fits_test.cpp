// Standard or extra load, told by the load index and the size alone: common practice, our own list
// of what tyres of low series are sold as.
#include "core/patch/rating.hpp"
#include "core/sidewall/sidewall.hpp"
#include "tests/support/catch.hpp"

using namespace treadwater;
using patch::IndexFits;

namespace {

struct Sold {
  const char* size;
  int standard;
  int extra_load;
};
constexpr Sold sold[] = {
    {"225/45 R17", 91, 94},  {"225/40 R18", 88, 92},  {"245/40 R18", 93, 97},
    {"235/35 R19", 87, 91},  {"255/35 R19", 92, 96},  {"205/45 R17", 84, 88},
    {"245/45 R18", 96, 100}, {"225/45 R18", 91, 95},  {"275/40 R19", 101, 105},
    {"255/40 R19", 96, 100}, {"235/40 R18", 91, 95},  {"215/45 R17", 87, 91},
    {"225/35 R19", 84, 88},  {"245/45 R17", 95, 99},  {"255/45 R18", 99, 103},
    {"275/35 R19", 96, 100}, {"305/30 R20", 99, 103}, {"265/35 R18", 93, 97},
    {"195/45 R16", 80, 84},  {"215/40 R17", 83, 87},  {"205/40 R17", 80, 84},
    {"235/45 R17", 93, 97},  {"235/45 R18", 94, 98},  {"255/35 R18", 90, 94},
    {"265/30 R19", 89, 93},  {"295/30 R20", 97, 101}, {"245/35 R20", 91, 95},
    {"275/30 R20", 93, 97},  {"285/30 R20", 95, 99},  {"285/35 R20", 100, 104},
    {"215/45 R18", 89, 93},  {"195/40 R17", 77, 81},
};

std::optional<IndexFits> fits(const Sold& row, int index) {
  const auto tyre = sidewall::read(std::string(row.size) + " " + std::to_string(index) + "W");
  REQUIRE(tyre);
  return patch::index_fits(*tyre);
}

}  // namespace

TEST_CASE("an extra-load tyre of series 30 to 45 is known by its index") {
  for (const Sold& row : sold) {
    INFO(row.size);
    CHECK(fits(row, row.standard) == IndexFits::standard);
    CHECK(fits(row, row.extra_load) == IndexFits::extra_load);
    CHECK(fits(row, 126) != IndexFits::standard);
    CHECK_FALSE(sidewall::read(std::string(row.size) + " 191W"));
  }
  CHECK_FALSE(fits({"225/25 R20", 0, 0}, 90));
}
