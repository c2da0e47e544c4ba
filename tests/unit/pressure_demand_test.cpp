// Pressure for a duty: what changes nothing, and what gets none. The figures are in tests/register.
#include "core/patch/pressure_demand.hpp"

#include <limits>

#include "core/standard/load_adjustment.hpp"
#include "core/standard/load_index.hpp"
#include "tests/support/catch.hpp"

using namespace treadwater;
using namespace treadwater::patch;
using namespace treadwater::testing;
using standard::SpeedSymbol;

namespace {

RatedTyre tyre(int index, SpeedSymbol symbol, LoadLaw law = european_standard_load()) {
  return {*standard::load_of_index(index), symbol, law, std::nullopt};
}
Duty duty(double kg, double kmh) {
  return {kilograms(kg), kilometres_per_hour(kmh), 0.0, {}, false};
}
double total(const RatedTyre& t, const Duty& d) {
  return in_kilopascals(pressure_demand(t, d)->total());
}

}  // namespace

TEST_CASE("full load with camber holds to 210 km/h, where the tyre is rated beyond") {
  Duty d = duty(615.0, 210.0);
  d.camber_degrees = 4.0;
  CHECK(pressure_demand(tyre(91, SpeedSymbol::Y), d));
}

TEST_CASE("what is left of a rating at a speed, by the vehicle's table and the camber") {
  const auto left = [](standard::Vehicle vehicle, double kmh, double camber) {
    RatedTyre t = tyre(58, SpeedSymbol::V);
    t.vehicle = vehicle;
    Duty d = duty(0.0, kmh);
    d.camber_degrees = camber;
    return in_kilograms(greatest_load_at(t, d).value_or(Mass()));
  };
  using standard::Vehicle;
  CHECK_THAT(left(Vehicle::car, 210.0, 4.0), WithinAbs(236.0, 1e-9));
  CHECK_THAT(left(Vehicle::car, 240.0, 0.0), WithinAbs(236.0 * 0.91, 1e-9));
  CHECK_THAT(left(Vehicle::motorcycle, 240.0, 0.0), WithinAbs(236.0 * 0.85, 1e-9));
  CHECK_THAT(left(Vehicle::car, 240.0, 4.0), WithinAbs(236.0 * 0.91 * 0.9, 1e-9));
  CHECK(left(Vehicle::car, 240.1, 0.0) == 0.0);
}

TEST_CASE("towing within the rating changes nothing") {
  const RatedTyre t = tyre(91, SpeedSymbol::H);
  Duty d = duty(600.0, 120.0);
  d.towing_rear = true;
  CHECK_THAT(total(t, d), WithinAbs(total(t, duty(600.0, 120.0)), 1e-9));
}

TEST_CASE("a duty that is not a number gets no pressure") {
  const double nan = std::numeric_limits<double>::quiet_NaN();
  const RatedTyre t = tyre(91, SpeedSymbol::V);
  CHECK(pressure_demand(t, duty(nan, 100.0)).error() == NoPressure::not_a_number);
  CHECK(pressure_demand(t, duty(500.0, nan)).error() == NoPressure::not_a_number);
  Duty d = duty(500.0, 100.0);
  d.camber_degrees = nan;
  CHECK(pressure_demand(t, d).error() == NoPressure::too_much_camber);
}

TEST_CASE("tables from memory say so") {
  CHECK(standard::low_speed_source().standing == Standing::memory);
  CHECK(standard::commercial_source().standing == Standing::memory);
  CHECK(standard::motorcycle_source().standing == Standing::memory);
}
