// The distribution of the onset is the same on every machine, to the last bit.
#include "core/water/estimate.hpp"

#include <cmath>

#include "tests/support/catch.hpp"
#include "tests/support/fingerprint.hpp"

using namespace treadwater;
using namespace treadwater::water;
using namespace treadwater::testing;

TEST_CASE("20 160 draws, bit for bit as in WebAssembly (tests/speed/water.test.mjs)") {
  const auto draws_in = [](double film_mm) {
    return OnsetDraws({kilopascals(220.0), millimetres(3.0), 1.0, millimetres(205.0),
                       millimetres(film_mm), millimetres(0.7)})
        .sorted_kmh();
  };
  CHECK(draws_in(5.0).size() == 20160);
  CHECK(fingerprint(draws_in(5.0)) == "c2ab03e7f0681422");
  CHECK(fingerprint(draws_in(1.0)) == "f16b51820b7eed40");
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

TEST_CASE("many tyres in one water: the low and the central speed bit for bit as for one tyre") {
  const Water waters[] = {millimetres(0.2),
                          millimetres(1.0),
                          millimetres(2.0),
                          millimetres(3.5),
                          millimetres(9.5),
                          millimetres(60.0),
                          Water::by_word(standard::Wetness::wet),
                          Water::by_word(standard::Wetness::standing)};
  for (const Water& depths : waters)
    for (const double texture : {0.3, 0.7, 2.0}) {
      const OnsetsInWater water(depths, millimetres(texture));
      for (const double kpa : {0.0, 90.0, 150.0, 220.0, 235.5, 310.0})
        for (const double tread : {0.0, 0.1, 0.9, 1.6, 2.3, 3.0, 5.5, 8.0, 11.0})
          for (const double credit : {1.0, 0.5, 0.0})
            for (const double width : {0.0, 125.0, 205.0, 305.0}) {
              const WetTyre tyre{
                  kilopascals(kpa), millimetres(tread),
                  credit,           width > 0.0 ? std::optional(millimetres(width)) : std::nullopt,
                  depths,           millimetres(texture)};
              const SpeedBand band = *aquaplaning_onset(tyre);
              const OnsetsInWater::Onset onset = water.of(tyre);
              REQUIRE(onset.low.stored() == band.low.stored());
              REQUIRE(onset.central.stored() == band.central.stored());
            }
    }
}

TEST_CASE("many tyres in one water: what is no number counts as the worst, as for one tyre") {
  const double nan = std::nan("");
  const OnsetsInWater water(millimetres(5.0), millimetres(0.7));
  WetTyre tyre{kilopascals(nan), millimetres(nan), 1.0,
               std::nullopt,     millimetres(5.0), millimetres(0.7)};
  CHECK(water.of(tyre).low.stored() == aquaplaning_onset(tyre)->low.stored());
}
