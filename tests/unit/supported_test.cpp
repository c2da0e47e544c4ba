#include "core/patch/supported.hpp"

#include "core/patch/rated_tyre.hpp"
#include "core/standard/speed_load.hpp"
#include "tests/support/catch.hpp"

using namespace treadwater;
using namespace treadwater::patch;
using namespace treadwater::testing;

namespace {

// 615 kg at 250 kPa, to 240 km/h.
Support family_car(std::optional<Mass> load = {}) {
  return *Support::of(*sidewall::read("205/55 R16 91V"), kilograms(615.0), load);
}

}  // namespace

TEST_CASE("a standard load tyre carries its rating at 250 kPa, and (p / 250)^0.8 of it below") {
  const Support tyre = family_car();
  CHECK(tyre.reference() == kilopascals(250.0));
  CHECK_FALSE(tyre.two_laws());
  CHECK_THAT(in_kilograms(tyre.capacity(kilopascals(250.0))), WithinAbs(615.0, 1e-9));
  CHECK_THAT(in_kilograms(tyre.capacity(kilopascals(200.0))),
             WithinAbs(615.0 * std::pow(0.8, 0.8), 1e-9));
  CHECK(tyre.least_capacity(kilopascals(200.0)) == tyre.capacity(kilopascals(200.0)));
}

TEST_CASE(
    "the pressure that is needed carries the load, and never lies under the least of its kind") {
  const Support tyre = family_car();
  const GaugePressure needed = tyre.needed(kilograms(500.0));
  CHECK_THAT(in_kilograms(tyre.capacity(needed)), WithinAbs(500.0, 1e-6));
  CHECK(tyre.needed(kilograms(100.0)) == least_pressure());
}

TEST_CASE("speed asks for pressure above 160 km/h and takes of the rating above 210") {
  const Support tyre = family_car();
  const Mass load = kilograms(500.0);
  const auto at = [&](double kmh) { return tyre.needed_at(load, kilometres_per_hour(kmh)); };
  CHECK(at(160.0) == tyre.needed(load));
  CHECK_THAT(in_kilopascals(at(210.0) - tyre.needed(load)), WithinAbs(30.0, 1e-9));
  CHECK(tyre.carried_at(kilometres_per_hour(210.0)) == kilograms(615.0));
  CHECK_THAT(in_kilograms(tyre.carried_at(kilometres_per_hour(240.0))),
             WithinAbs(615.0 * 0.91, 1e-9));
}

TEST_CASE("the speed supported is the last whole km/h at which the pressure still does") {
  const Support tyre = family_car();
  const Mass load = kilograms(500.0);
  const Speed most = kilometres_per_hour(240.0);
  const GaugePressure middle = tyre.needed(load) + kilopascals(15.0);
  const Speed at = tyre.speed_supported(load, middle, most);
  CHECK(in_kilometres_per_hour(at) == 185.0);  // half of the rise from 160 to 210
  CHECK(tyre.needed_at(load, at) <= middle);
  CHECK(tyre.speed_supported(load, tyre.needed(load) - kilopascals(1.0), most) == Speed());
  CHECK(tyre.speed_supported(kilograms(700.0), kilopascals(400.0), most) == Speed());
  CHECK(tyre.speed_supported(load, kilopascals(400.0), kilometres_per_hour(120.0)) ==
        kilometres_per_hour(120.0));
}

TEST_CASE("without a symbol the rating counts whole at any speed") {
  const Support tyre = *Support::of(*sidewall::read("P205/75R15"), kilograms(650.0), {});
  CHECK_FALSE(tyre.symbol());
  CHECK(tyre.two_laws());
  CHECK(tyre.carried_at(kilometres_per_hour(300.0)) == kilograms(650.0));
  CHECK(tyre.needed_at(kilograms(500.0), kilometres_per_hour(300.0)) ==
        tyre.needed(kilograms(500.0)));
  CHECK(tyre.least_capacity(kilopascals(180.0)) <= tyre.capacity(kilopascals(180.0)));
}

TEST_CASE("a rated tyre: nothing above its symbol, and of two laws the one that asks for more") {
  RatedTyre tyre{kilograms(615.0), standard::SpeedSymbol::V, european_standard_load(),
                 std::nullopt};
  CHECK_FALSE(rating_at(tyre, kilometres_per_hour(241.0)));
  CHECK(rating_at(tyre, kilometres_per_hour(200.0)) == kilograms(615.0));
  const GaugePressure one = pressure_for_load(tyre, tyre.greatest, kilograms(500.0));
  tyre.second_law = p_metric_standard_load();
  const GaugePressure both = pressure_for_load(tyre, tyre.greatest, kilograms(500.0));
  CHECK(both >= one);
  tyre.least = kilopascals(400.0);
  CHECK(pressure_for_load(tyre, tyre.greatest, kilograms(500.0)) == kilopascals(400.0));
}

TEST_CASE("what a support rests on: its law, its least pressure, and a second law once") {
  CHECK(family_car().sources().size() == 2);
  CHECK(Support::of(*sidewall::read("P205/75R15"), kilograms(650.0), {})->sources().size() == 3);
}
