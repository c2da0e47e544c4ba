// Speeds of aquaplaning: ranges, and what no estimate may say. The printed figures are in
// tests/register.
#include "core/water/onset.hpp"

#include <cmath>

#include "core/water/estimate.hpp"
#include "core/water/measured.hpp"
#include "tests/support/catch.hpp"

using namespace treadwater;
using namespace treadwater::water;
using namespace treadwater::testing;

namespace {

std::optional<Speed> model(const Source& source, const OnsetConditions& conditions) {
  for (const OnsetModel& m : onset_models())
    if (m.source.id == source.id) return m.onset(conditions);
  FAIL("no such model");
  return std::nullopt;
}

}  // namespace

TEST_CASE("a model says nothing outside its range") {
  OnsetConditions car;
  car.pressure = kilopascals(220.0);
  car.grooves = millimetres(5.0);
  car.film = millimetres(3.0);
  car.texture = millimetres(0.7);
  car.footprint_aspect_ratio = 1.0;
  car.wheel_load = newtons(4000.0);

  // Water that the grooves still hold: only the two made for it speak.
  int speak = 0;
  for (const OnsetModel& m : onset_models()) speak += m.onset(car) ? 1 : 0;
  CHECK(speak == 2);
  CHECK(model(film_source(), car) ==
        film_onset({car.pressure, car.grooves, car.film, car.texture}));
  CHECK(model(design_source(), car) == design_onset(car.film, car.texture));

  // Flooded grooves: all but the truck's.
  OnsetConditions flooded = car;
  flooded.film = millimetres(8.0);
  speak = 0;
  for (const OnsetModel& m : onset_models()) speak += m.onset(flooded) ? 1 : 0;
  CHECK(speak == 6);
  CHECK(model(pressure_only_source(), flooded) == pressure_only_onset(car.pressure));
  CHECK(model(spin_up_source(), flooded) == spin_up_onset(car.pressure));
  CHECK(model(footprint_source(), flooded) == footprint_onset(car.pressure, 1.0));
  CHECK(model(smooth_tyre_source(), flooded) ==
        smooth_tyre_onset(newtons(4000.0), car.pressure, flooded.film));
  flooded.footprint_aspect_ratio.reset();
  flooded.wheel_load.reset();
  CHECK_FALSE(model(footprint_source(), flooded));
  CHECK_FALSE(model(smooth_tyre_source(), flooded));

  // Worn out: the design car is not this one.
  OnsetConditions worn = car;
  worn.grooves = millimetres(1.6);
  CHECK_FALSE(model(design_source(), worn));

  OnsetConditions lorry = flooded;
  lorry.pressure = psi(100.0);
  lorry.footprint_aspect_ratio = 1.4;
  CHECK_FALSE(model(truck_source(), lorry));
  lorry.heavy_truck = true;
  CHECK(model(truck_source(), lorry) == truck_onset(lorry.pressure, 1.4));
  CHECK_FALSE(model(film_source(), lorry));

  // Nothing to float on, and what is not a number.
  for (const double mm : {0.0, -1.0, 0.4, std::nan("")}) {
    OnsetConditions none = car;
    none.film = millimetres(mm);
    for (const OnsetModel& m : onset_models()) CHECK_FALSE(m.onset(none));
  }
  OnsetConditions no_pressure = flooded;
  no_pressure.pressure = kilopascals(std::nan(""));
  for (const OnsetModel& m : onset_models()) CHECK_FALSE(m.onset(no_pressure));
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

TEST_CASE("a slick floats before any tread that was measured, in the same water and in less") {
  for (const MeasuredOnset& row : measured_onsets())
    for (const double share : {0.5, 1.0}) {
      const auto with_credit = [&](double credit, Length film) {
        return *aquaplaning_onset(
            {kilopascals(220.0), row.tread, credit, millimetres(205.0), film, millimetres(0.7)});
      };
      const SpeedBand slick = with_credit(0.0, row.film);
      const SpeedBand other = with_credit(1.0, row.film * share);
      CHECK(slick.low < other.low);
      CHECK(slick.central < other.central);
      CHECK(slick.high < other.high);
    }
}

TEST_CASE("a tread that is not a number clears no more than a bare tyre") {
  CHECK(clearing(millimetres(std::nan("")), 0.3) == 0.3);
}
