// The distribution of the onset is the same on every machine, to the last bit.
#include "core/water/estimate.hpp"

#include <cmath>

#include "tests/support/catch.hpp"
#include "tests/support/fingerprint.hpp"

using namespace treadwater;
using namespace treadwater::water;
using namespace treadwater::testing;

TEST_CASE("20 160 draws, bit for bit as in WebAssembly (tests/speed/water.test.mjs)") {
  const OnsetDraws draws({kilopascals(220.0), millimetres(3.0), 1.0, millimetres(205.0),
                          millimetres(5.0), millimetres(0.7)});
  CHECK(draws.sorted_kmh().size() == 20160);
  CHECK(fingerprint(draws.sorted_kmh()) == "a1b065d05dbcd7c8");
}

TEST_CASE("readings that are not numbers count as the worst") {
  const double nan = std::nan("");
  const WetTyre tyre{kilopascals(220.0), millimetres(3.0), 1.0,
                     millimetres(205.0), millimetres(5.0), millimetres(0.7)};
  const SpeedBand good = *aquaplaning_onset(tyre);
  for (int i = 0; i < 4; ++i) {
    WetTyre bad = tyre;
    if (i == 0) bad.pressure = kilopascals(nan);
    if (i == 1) bad.tread = millimetres(nan);
    if (i == 2) bad.film = millimetres(nan);
    if (i == 3) bad.texture = millimetres(nan);
    const SpeedBand band = *aquaplaning_onset(bad);
    CHECK(band.low > kilometres_per_hour(0.0));
    CHECK(band.low <= good.low);
    CHECK(band.central <= good.central);
    CHECK(band.high <= good.high);
  }
}
