// Published speeds of aquaplaning, reproduced to the printed digit. The standing of each source is
// in core/water/onset.cpp.
#include "core/water/estimate.hpp"
#include "core/water/measured.hpp"
#include "core/water/onset.hpp"
#include "tests/support/catch.hpp"

using namespace treadwater;
using namespace treadwater::water;
using namespace treadwater::testing;

// Worked values of a federal road-safety text that quotes 10.35 sqrt(p), read second-hand twice.
TEST_CASE("NASA TN D-2056: 10.35 sqrt(p) prints 46.3, 51.8 and 56.7 mph at 20, 25 and 30 psi") {
  CHECK_THAT(in_miles_per_hour(pressure_only_onset(psi(20.0))), WithinAbs(46.3, 0.05));
  CHECK_THAT(in_miles_per_hour(pressure_only_onset(psi(25.0))), WithinAbs(51.8, 0.05));
  CHECK_THAT(in_miles_per_hour(pressure_only_onset(psi(30.0))), WithinAbs(56.7, 0.05));
}

// The SI form 6.34 sqrt(p kPa) km/h is printed with the example 220 kPa, 94 km/h.
TEST_CASE("NASA TN D-2056 in SI: 94 km/h at 220 kPa, printed second-hand") {
  CHECK_THAT(in_kilometres_per_hour(pressure_only_onset(kilopascals(220.0))), WithinAbs(94.0, 0.5));
}

// Memory: the form is the pressure law exactly at FAR 0.59, and an empty truck tyre (100 psi,
// FAR 1.4) at 67.19 mph lies inside the 50 to 70 mph that Transportation Research Record 1084
// reports.
TEST_CASE("the footprint form meets the pressure law at a footprint aspect ratio of 0.59") {
  CHECK_THAT(in_miles_per_hour(footprint_onset(psi(30.0), 0.59)), WithinAbs(56.69, 0.005));
  CHECK_THAT(in_miles_per_hour(footprint_onset(psi(100.0), 1.40)), WithinAbs(67.19, 0.005));
  CHECK_THAT(in_miles_per_hour(footprint_onset(psi(32.0), 1.30)), WithinAbs(39.44, 0.005));
}

namespace {
struct Row {
  GaugePressure pressure;
  Length tread, film, texture;
  double speed;
  bool miles;
};
}  // namespace

// Fourteen points worked out by hand from the printed constants in both unit systems, which agree
// to 0.01 km/h. One of them is printed too: 220 kPa, 5 mm, 2 mm of film, "about 88 km/h".
TEST_CASE("FHWA-RD-79-31: the film formula's points, US and metric forms, to 0.01") {
  const auto us = [](double p, double td, double wd, double txd, double mph) {
    return Row{psi(p), thirty_seconds(td), inches(wd), inches(txd), mph, true};
  };
  const auto si = [](double td, double wd, double txd, double kmh) {
    return Row{kilopascals(220.0), millimetres(td), millimetres(wd), millimetres(txd), kmh, false};
  };
  const Row rows[] = {
      us(27, 7, 0.10, 0.038, 53.70), us(24, 2, 0.10, 0.038, 48.88), us(32, 10, 0.05, 0.038, 60.80),
      us(32, 2, 0.05, 0.038, 56.24), us(32, 0, 0.05, 0.038, 52.65), us(32, 5, 0.30, 0.038, 50.91),
      us(32, 8, 0.10, 0.100, 65.17), si(8, 1, 0.7, 95.25),          si(8, 2, 0.7, 90.26),
      si(1.6, 2, 0.7, 83.48),        si(0, 2, 0.7, 78.13),          si(8, 8, 0.7, 84.47),
      si(3, 8, 0.7, 80.32),          si(1.6, 8, 0.7, 78.13),        si(8, 2, 1.5, 100.42),
  };
  for (const Row& row : rows) {
    const Speed v = film_onset({row.pressure, row.tread, row.film, row.texture});
    CHECK_THAT(row.miles ? in_miles_per_hour(v) : in_kilometres_per_hour(v),
               WithinAbs(row.speed, 0.01));
  }
  CHECK_THAT(in_kilometres_per_hour(film_onset(
                 {kilopascals(220.0), millimetres(5.0), millimetres(2.0), millimetres(0.7)})),
             WithinAbs(88.0, 0.5));
}

// The measured rows (core/water/measured.cpp): pressures are not stated, so all plausible ones are
// tried.
TEST_CASE("every measured onset lies between the estimate's low and high") {
  for (double kpa : {200.0, 220.0, 235.0, 250.0, 300.0})
    for (const MeasuredOnset& row : measured_onsets()) {
      INFO(row.id << " at " << kpa << " kPa");
      const auto band = aquaplaning_onset({kilopascals(kpa), row.tread, 1.0,
                                           row.section_width.value_or(millimetres(205.0)), row.film,
                                           millimetres(0.7)});
      REQUIRE(band);
      CHECK(band->low < row.low);
      if (kpa >= 220.0) CHECK(band->high > row.high);
      CHECK(band->low * hold_to_share < row.low);
    }
}

TEST_CASE("the central estimate is within 13 % of the middle of every measured onset at 220 kPa") {
  for (const MeasuredOnset& row : measured_onsets()) {
    const auto band = aquaplaning_onset({kilopascals(220.0), row.tread, 1.0,
                                         row.section_width.value_or(millimetres(205.0)), row.film,
                                         millimetres(0.7)});
    INFO(row.id << " " << in_kilometres_per_hour(band->central));
    CHECK_THAT(band->central / ((row.low + row.high) / 2.0), WithinAbs(1.0, 0.13));
  }
}

// Rows without a depth or a tread of their own, as advice: 72 km/h (45 mph) on 2.5 mm of water; 1.6
// mm of tread critical at 70; "little more than 50 km/h" at 1.6 mm in ruts. The hold-to speed stays
// below.
TEST_CASE("the hold-to speed is below the rules of thumb seen in print") {
  const auto hold = [](double tread, double film) {
    return in_kilometres_per_hour(
        aquaplaning_onset({kilopascals(250.0), millimetres(tread), 1.0, millimetres(205.0),
                           millimetres(film), millimetres(0.7)})
            ->low *
        hold_to_share);
  };
  CHECK(hold(8.0, 2.5) < 72.0);
  CHECK(hold(1.6, 2.0) < 70.0);
  CHECK(hold(1.6, 5.0) < 50.0);
}

TEST_CASE("what the published formulas read too high for a worn tyre is what the estimate is for") {
  // 1.6 mm of tread in 8 mm of water floated at 48.5 km/h.
  CHECK(in_kilometres_per_hour(pressure_only_onset(kilopascals(220.0))) > 1.9 * 48.5);
  CHECK(in_kilometres_per_hour(film_onset({kilopascals(220.0), millimetres(1.6), millimetres(8.0),
                                           millimetres(0.7)})) > 1.6 * 48.5);
}

TEST_CASE("no film, no dynamic aquaplaning") {
  CHECK_FALSE(aquaplaning_onset({kilopascals(220.0), millimetres(3.0), 1.0, millimetres(205.0),
                                 millimetres(0.0), millimetres(0.7)}));
}

TEST_CASE("a slick in any standing water is worse than any tread in any water that was measured") {
  for (double film : {0.5, 1.0, 3.0, 10.0}) {
    const auto slick = aquaplaning_onset({kilopascals(220.0), millimetres(6.0), 0.0,
                                          millimetres(205.0), millimetres(film), millimetres(0.7)});
    for (const MeasuredOnset& row : measured_onsets()) {
      const auto other = aquaplaning_onset(
          {kilopascals(220.0), row.tread, 1.0, millimetres(205.0), row.film, millimetres(0.7)});
      CHECK(slick->low < other->low);
      CHECK(slick->central < other->central);
    }
  }
}
