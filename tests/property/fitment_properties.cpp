// Facts of order of load, pressure, patch and wheels, over many random tyres.
#include <algorithm>

#include "core/car/axle_load.hpp"
#include "core/car/fitment.hpp"
#include "core/car/wheel.hpp"
#include "core/patch/beaded_edge.hpp"
#include "core/patch/cross_ply.hpp"
#include "core/patch/inclined.hpp"
#include "core/patch/pressure_demand.hpp"
#include "core/standard/load_adjustment.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/property.hpp"

using namespace treadwater;
using namespace treadwater::testing;
using standard::SpeedSymbol;

namespace {

double between(double low, double high) {
  return low + (high - low) * *rc::gen::inRange(0, 10001) / 10000.0;
}

patch::TyreSize any_size() {
  return {millimetres(between(125.0, 355.0)), between(30.0, 82.0), inches(between(12.0, 22.0))};
}

patch::RatedTyre any_tyre() {
  const patch::LoadLaw law = *rc::gen::inRange(0, 2) == 0 ? patch::european_standard_load()
                                                          : patch::p_metric_standard_load();
  patch::RatedTyre tyre{kilograms(between(300.0, 1200.0)),
                        *rc::gen::element(SpeedSymbol::S, SpeedSymbol::H, SpeedSymbol::V,
                                          SpeedSymbol::W, SpeedSymbol::Y),
                        law, std::nullopt};
  if (*rc::gen::inRange(0, 2) == 0) tyre.second_law = patch::european_extra_load();
  return tyre;
}

patch::Duty any_duty(const patch::RatedTyre& tyre) {
  patch::Duty duty;
  duty.load = tyre.greatest * between(0.1, 1.2);
  duty.speed = kilometres_per_hour(between(0.0, 310.0));
  duty.camber_degrees = between(-4.5, 4.5);
  duty.towing_rear = *rc::gen::inRange(0, 2) == 0;
  return duty;
}

// The worse duty needs at least the pressure of the easier one, or none will do.
void asks_no_less(const patch::RatedTyre& tyre, const patch::Duty& easy, const patch::Duty& hard) {
  const auto a = patch::pressure_demand(tyre, easy);
  const auto b = patch::pressure_demand(tyre, hard);
  if (!a) {
    RC_ASSERT(!b);
  } else if (b) {
    RC_ASSERT(b->total() >= a->total() - kilopascals(1e-9));
  }
}

}  // namespace

TEST_CASE("more load asks for more pressure, or for another tyre") {
  CHECK(holds("load", [] {
    const patch::RatedTyre tyre = any_tyre();
    const patch::Duty easy = any_duty(tyre);
    patch::Duty hard = easy;
    hard.load = easy.load * between(1.0, 1.5);
    asks_no_less(tyre, easy, hard);
  }));
}

TEST_CASE("more speed asks for more pressure, or for another tyre") {
  CHECK(holds("speed", [] {
    const patch::RatedTyre tyre = any_tyre();
    const patch::Duty easy = any_duty(tyre);
    patch::Duty hard = easy;
    hard.speed = easy.speed + kilometres_per_hour(between(0.0, 100.0));
    asks_no_less(tyre, easy, hard);
  }));
}

TEST_CASE("more camber asks for more pressure, or for another tyre") {
  CHECK(holds("camber", [] {
    const patch::RatedTyre tyre = any_tyre();
    const patch::Duty easy = any_duty(tyre);
    patch::Duty hard = easy;
    hard.camber_degrees = easy.camber_degrees * between(1.0, 2.0);
    asks_no_less(tyre, easy, hard);
  }));
}

TEST_CASE("a second law never asks for less") {
  CHECK(holds("second law", [] {
    patch::RatedTyre two = any_tyre();
    two.second_law = patch::european_extra_load();
    patch::RatedTyre one = two;
    one.second_law.reset();
    const patch::Duty duty = any_duty(two);
    const auto a = patch::pressure_demand(one, duty);
    const auto b = patch::pressure_demand(two, duty);
    RC_ASSERT(a.has_value() == b.has_value());
    if (a) RC_ASSERT(b->total() >= a->total());
  }));
}

TEST_CASE("more load makes a longer and larger patch, more pressure a shorter one") {
  CHECK(holds("patch", [] {
    const patch::TyreSize size = any_size();
    const Mass rated = kilograms(between(400.0, 1200.0));
    const Mass load = rated * between(0.2, 1.0);
    const GaugePressure pressure = kilopascals(between(150.0, 400.0));
    const auto patch = patch::contact_patch(size, pressure, load, rated);
    const auto heavy = patch::contact_patch(size, pressure, load * between(1.01, 1.5), rated);
    RC_ASSERT(heavy.length > patch.length);
    RC_ASSERT(heavy.area > patch.area);
    RC_ASSERT(heavy.deflection > patch.deflection);
    const auto hard = patch::contact_patch(size, pressure * between(1.01, 1.5), load, rated);
    RC_ASSERT(hard.length < patch.length);
    RC_ASSERT(hard.area < patch.area);
  }));
}

TEST_CASE("camber: longer and softer the more of it, and the area inside its band") {
  CHECK(holds("camber of the patch", [] {
    const double a = between(0.0, 4.0);
    const double b = between(a, 4.0);
    const auto less = *patch::camber_shares(a);
    const auto more = *patch::camber_shares(-b);
    RC_ASSERT(more.length >= less.length);
    RC_ASSERT(more.stiffness <= less.stiffness);
    RC_ASSERT(more.area_low <= more.area);
    RC_ASSERT(more.area <= more.area_high);
  }));
}

TEST_CASE("a cross-ply's band is in order, and grows with the load") {
  CHECK(holds("cross-ply", [] {
    const patch::TyreSize size{millimetres(between(125.0, 225.0)), between(60.0, 100.0),
                               inches(between(12.0, 21.0))};
    const GaugePressure pressure = kilopascals(between(120.0, 400.0));
    const Force load = newtons(between(300.0, 8000.0));
    const auto patch = patch::cross_ply_patch(size, pressure, pressure, load);
    RC_PRE(patch.has_value());
    RC_ASSERT(patch->deflection_low <= patch->deflection_high);
    RC_ASSERT(patch->length_low <= patch->length_high);
    RC_ASSERT(patch->area_low <= patch->area_high);
    const auto heavy = patch::cross_ply_patch(size, pressure, pressure, load * 1.2);
    if (!heavy) return;
    RC_ASSERT(heavy->length_low > patch->length_low);
    RC_ASSERT(heavy->length_high > patch->length_high);
    const auto hard = patch::cross_ply_patch(size, pressure * 1.2, pressure, load);
    RC_ASSERT(hard.has_value());
    RC_ASSERT(hard->length_high < patch->length_high);
  }));
}

TEST_CASE("beaded edge: more load asks for more, and the band is in order") {
  CHECK(holds("beaded edge", [] {
    const Length section = millimetres(between(60.0, 170.0));
    const Mass load = kilograms(between(100.0, 2500.0));
    const auto wheels = *rc::gen::element(patch::Wheels::single, patch::Wheels::twin);
    const auto easy = patch::beaded_edge_pressure(section, load, wheels);
    const auto hard = patch::beaded_edge_pressure(section, load * between(1.0, 1.5), wheels);
    if (!easy) {
      RC_ASSERT(!hard);
    } else {
      RC_ASSERT(easy->low <= easy->high);
      RC_ASSERT(easy->low >= psi(60.0));
      if (hard) {
        RC_ASSERT(hard->low >= easy->low);
        RC_ASSERT(hard->high >= easy->high);
      }
    }
  }));
}

TEST_CASE("commercial and motor-cycle tables: more speed, never more load") {
  CHECK(holds("tables", [] {
    const int index = *rc::gen::inRange(80, 160);
    const auto symbol = *rc::gen::element(
        SpeedSymbol::F, SpeedSymbol::G, SpeedSymbol::J, SpeedSymbol::K, SpeedSymbol::L,
        SpeedSymbol::M, SpeedSymbol::N, SpeedSymbol::P, SpeedSymbol::V, SpeedSymbol::W);
    const Speed slow = kilometres_per_hour(between(0.0, 280.0));
    const Speed fast = slow + kilometres_per_hour(between(0.0, 60.0));
    const double none = -1.0;
    RC_ASSERT(standard::commercial_percent(index, symbol, fast).value_or(none) <=
              standard::commercial_percent(index, symbol, slow).value_or(none));
    RC_ASSERT(standard::motorcycle_percent(symbol, fast).value_or(none) <=
              standard::motorcycle_percent(symbol, slow).value_or(none));
    RC_ASSERT(*standard::low_speed_percent(fast) <= *standard::low_speed_percent(slow));
  }));
}

TEST_CASE("there and back again: fitting the old size undoes every change") {
  CHECK(holds("fitment", [] {
    const car::Wheel a{any_size(), false, millimetres(between(100.0, 300.0)),
                       millimetres(between(-30.0, 60.0))};
    const car::Wheel b{any_size(), false, millimetres(between(100.0, 300.0)),
                       millimetres(between(-30.0, 60.0))};
    const auto there = car::fitment_change(a, b);
    const auto back = car::fitment_change(b, a);
    const auto undone = [](Length x, Length y) {
      RC_ASSERT(std::abs(in_millimetres(x + y)) < 1e-9);
    };
    RC_ASSERT(std::abs(there.circumference * back.circumference - 1.0) < 1e-12);
    undone(there.diameter, back.diameter);
    undone(there.inward, back.inward);
    undone(there.outward, back.outward);
  }));
}

TEST_CASE("equal load: the new tyre at the pressure found carries no less than the old one did") {
  CHECK(holds("equal load", [] {
    const auto law = [] {
      return *rc::gen::inRange(0, 2) == 0 ? patch::european_standard_load()
                                          : patch::european_extra_load();
    };
    const patch::LoadLaw before = law(), after = law();
    const Mass old_mass = kilograms(between(400.0, 900.0));
    const Mass new_mass = kilograms(between(400.0, 900.0));
    const GaugePressure p = kilopascals(between(150.0, 300.0));
    const auto found = car::pressure_for_equal_load(before, old_mass, p, after, new_mass);
    RC_PRE(found.has_value());
    RC_ASSERT(patch::load_capacity(after, new_mass, *found) * 1.000001 >=
              patch::load_capacity(before, old_mass, p));
  }));
}

TEST_CASE("a lighter wheel hops faster; more luggage never unloads the rear axle") {
  CHECK(holds("wheels and luggage", [] {
    const Stiffness ks = newtons_per_millimetre(between(10.0, 60.0));
    const Stiffness kt = newtons_per_millimetre(between(120.0, 400.0));
    const Mass mass = kilograms(between(15.0, 80.0));
    RC_ASSERT(car::wheel_hop_hertz(ks, kt, mass * 0.9) > car::wheel_hop_hertz(ks, kt, mass));
    RC_ASSERT(car::ride_rate(ks, kt) < std::min(ks, kt));
    car::CarLoad load;
    load.kerb = kilograms(between(500.0, 3000.0));
    load.front_share = between(0.3, 0.7);
    load.rear_people = *rc::gen::inRange(0, 4);
    const auto light = *car::axle_loads(load);
    load.boot = kilograms(between(0.0, 200.0));
    const auto heavy = *car::axle_loads(load);
    RC_ASSERT(heavy.rear >= light.rear);
    RC_ASSERT(heavy.total() >= light.total());
  }));
}
