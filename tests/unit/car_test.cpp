// Rules between the tyres of one car.
#include "core/car/axle_load.hpp"
#include "core/car/fitment.hpp"
#include "core/car/rules.hpp"
#include "core/standard/load_index.hpp"
#include "core/standard/speedometer.hpp"
#include "tests/support/catch.hpp"

using namespace treadwater;
using namespace treadwater::car;
using namespace treadwater::testing;
using standard::SpeedSymbol;

namespace {

Speed kmh(double v) { return kilometres_per_hour(v); }
const double not_a_number = std::numeric_limits<double>::quiet_NaN();

AxleMatch match(const char* left, const char* right) {
  return match_on_axle(*sidewall::read(left), *sidewall::read(right));
}

WearPattern wear(double inner, double centre, double outer) {
  return *wear_pattern(millimetres(inner), millimetres(centre), millimetres(outer));
}

}  // namespace

TEST_CASE("one axle: the same size and construction, whatever the service description") {
  CHECK(match("205/55 R16 91V", "205/55 R16 94W XL") == AxleMatch::same);
  CHECK(match("205/55 R16 91V", "205/60 R16 92V") == AxleMatch::different_size);
  CHECK(match("205/55 R16 91V", "195/55 R16 87V") == AxleMatch::different_size);
  CHECK(match("205/55 R16 91V", "205/55 R17 91V") == AxleMatch::different_size);
  CHECK(match("185/80 R14 91T", "185/80-14") == AxleMatch::different_construction);
}

TEST_CASE("80 and 82 series count as the same size") {
  CHECK(match("165/80 R13 83S", "165 R 13 82S") == AxleMatch::same);
  CHECK(match("165/75 R13 81S", "165 R 13 82S") == AxleMatch::different_size);
}

TEST_CASE("pressures of an axle: two gauges' worth, more, a fifth") {
  const auto difference = [](double left, double right) {
    return pressure_difference(kilopascals(left), kilopascals(right));
  };
  CHECK(difference(220, 200) == Difference::none);
  CHECK(difference(200, 221) == Difference::worth_correcting);
  CHECK(difference(220, 176) == Difference::worth_correcting);
  CHECK(difference(175, 220) == Difference::too_great);
  CHECK(difference(100, 79) == Difference::too_great);
  CHECK(difference(not_a_number, 220) == Difference::too_great);
  CHECK(difference(220, not_a_number) == Difference::too_great);
}

TEST_CASE("tread of an axle: 2 mm and 5 mm") {
  const auto difference = [](double left, double right) {
    return tread_difference(millimetres(left), millimetres(right));
  };
  CHECK(difference(7.4, 5.4) == Difference::none);
  CHECK(difference(7.41, 5.4) == Difference::worth_correcting);
  CHECK(difference(5.0, 7.1) == Difference::worth_correcting);
  CHECK(difference(8.0, 3.0) == Difference::worth_correcting);
  CHECK(difference(2.0, 7.1) == Difference::too_great);
  CHECK(difference(2.0, not_a_number) == Difference::too_great);
  CHECK(difference(not_a_number, 2.0) == Difference::too_great);
}

TEST_CASE("the deeper tread belongs at the rear, beyond what gauges may differ by") {
  CHECK(deeper_tread_in_front(millimetres(6.0), millimetres(4.0)));
  CHECK_FALSE(deeper_tread_in_front(millimetres(5.4), millimetres(5.0)));
  CHECK_FALSE(deeper_tread_in_front(millimetres(4.0), millimetres(6.0)));
}

TEST_CASE("wear across a tread: shoulders, centre, one side, both at once, none") {
  CHECK(wear(5.0, 5.4, 5.2).even());
  CHECK(wear(4.0, 6.0, 4.2).under_inflated);
  CHECK(wear(4.0, 6.0, 4.2).alignment == Side::none);
  CHECK(wear(6.0, 4.0, 6.1).over_inflated);
  CHECK(wear(3.0, 5.0, 5.2).alignment == Side::inner);
  CHECK_FALSE(wear(3.0, 5.0, 5.2).under_inflated);
  CHECK(wear(5.5, 5.2, 5.0).alignment == Side::outer);
  CHECK(wear(5.0, 5.2, 5.5).alignment == Side::inner);
  const WearPattern both = wear(2.0, 6.0, 4.0);
  CHECK(both.under_inflated);
  CHECK(both.alignment == Side::inner);
  CHECK_FALSE(wear_pattern(millimetres(not_a_number), millimetres(5.0), millimetres(5.0)));
  CHECK_FALSE(wear_pattern(millimetres(5.0), millimetres(-0.1), millimetres(5.0)));
}

TEST_CASE("speed symbol against the car, with the winter exception from Q up") {
  CHECK(symbol_fit(SpeedSymbol::V, kmh(240), false) == SymbolFit::enough);
  CHECK(symbol_fit(SpeedSymbol::H, kmh(211), false) == SymbolFit::too_low);
  CHECK(symbol_fit(SpeedSymbol::Q, kmh(211), true) == SymbolFit::winter_exception);
  CHECK(symbol_fit(SpeedSymbol::P, kmh(211), true) == SymbolFit::too_low);
  CHECK(symbol_fit(SpeedSymbol::P, kmh(145), true) == SymbolFit::enough);
  CHECK(symbol_fit(SpeedSymbol::Y, kmh(not_a_number), false) == SymbolFit::too_low);
}

TEST_CASE("another tyre's load is judged at the car's top speed") {
  const Mass li91 = *standard::load_of_index(91);
  const auto enough = [&](double asked, double top) {
    return adequacy(li91, standard::Vehicle::car, SpeedSymbol::V, false, kilograms(asked),
                    kmh(top));
  };
  CHECK(enough(600.0, 210.0).load);
  CHECK_FALSE(enough(600.0, 240.0).load);  // 91 % of 615 kg
  CHECK(enough(559.0, 240.0).load);
  CHECK(enough(559.0, 240.0).speed == SymbolFit::enough);
  CHECK(enough(559.0, 250.0).speed == SymbolFit::too_low);
}

TEST_CASE("a motor cycle's tyre is judged by the lower of the two tables") {
  const auto enough = [](standard::Vehicle vehicle) {
    return adequacy(kilograms(236.0), vehicle, SpeedSymbol::V, false, kilograms(205.0), kmh(240));
  };
  CHECK(enough(standard::Vehicle::car).load);               // 91 % is 214 kg
  CHECK_FALSE(enough(standard::Vehicle::motorcycle).load);  // 85 % is 200 kg
}

TEST_CASE("pressure for equal load: 205/55 R16 91 at 220 kPa as 94 XL") {
  const auto p =
      pressure_for_equal_load(patch::european_standard_load(), kilograms(615.0), kilopascals(220.0),
                              patch::european_extra_load(), kilograms(670.0));
  REQUIRE(p);
  CHECK_THAT(in_kilopascals(*p), WithinAbs(229.3, 0.05));
  CHECK_FALSE(pressure_for_equal_load(patch::european_standard_load(), kilograms(615.0),
                                      kilopascals(250.0), patch::european_standard_load(),
                                      kilograms(580.0)));
  CHECK_FALSE(pressure_for_equal_load(patch::european_standard_load(), kilograms(615.0),
                                      kilopascals(140.0), patch::european_standard_load(),
                                      kilograms(670.0)));
}

TEST_CASE("a larger tyre may make a speedometer read low") {
  const Speed shown = kmh(103.0), truth = kmh(101.0);
  CHECK(standard::speedometer_allowed(shown, truth));
  CHECK_FALSE(standard::speedometer_allowed(shown, standard::true_speed_after(truth, 1.03)));
  CHECK(standard::speedometer_allowed(shown, standard::true_speed_after(truth, 0.97)));
}

TEST_CASE("axle loads: everything aboard is on one axle or the other") {
  CarLoad car;
  car.kerb = kilograms(1200.0);
  car.front_share = 0.6;
  car.front_people = 2;
  car.rear_people = 2;
  car.boot = kilograms(60.0);
  const AxleLoads loads = *axle_loads(car);
  CHECK_THAT(in_kilograms(loads.total()), WithinAbs(1200 + 4 * 75 + 60, 1e-9));
  CHECK_THAT(in_kilograms(loads.rear), WithinAbs(480 + 75 + 135 + 69, 1e-9));
  car.driver_in_kerb = true;
  CHECK_THAT(in_kilograms(axle_loads(car)->total()), WithinAbs(1200 + 3 * 75 + 60, 1e-9));
  CarLoad fewer = car;
  fewer.front_people = -1;
  CHECK_FALSE(axle_loads(fewer));
  fewer = car;
  fewer.rear_people = -1;
  CHECK_FALSE(axle_loads(fewer));
}

TEST_CASE("a trailer's nose puts more than its weight on the rear axle and lifts the front") {
  CarLoad car;
  car.kerb = kilograms(1200.0);
  car.front_share = 0.6;
  const AxleLoads alone = *axle_loads(car);
  car.tow_ball = kilograms(75.0);
  const AxleLoads towing = *axle_loads(car);
  CHECK(towing.rear - alone.rear > kilograms(75.0));
  CHECK(towing.front < alone.front);
}

TEST_CASE("axle loads of nonsense are none") {
  CarLoad car;
  CHECK_FALSE(axle_loads(car));
  car.kerb = kilograms(1200.0);
  car.front_share = 1.1;
  CHECK_FALSE(axle_loads(car));
  car.front_share = 0.6;
  car.rear_people = -1;
  CHECK_FALSE(axle_loads(car));
  car.rear_people = 0;
  car.boot = kilograms(not_a_number);
  CHECK_FALSE(axle_loads(car));
}
