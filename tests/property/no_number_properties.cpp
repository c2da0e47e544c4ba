// A NaN never passes a comparison: whichever reading is no number, the answer is nothing, or the
// worst there is. Over random cases with one reading spoilt in each.
#include <cmath>
#include <limits>

#include "core/air/get_home.hpp"
#include "core/air/leak.hpp"
#include "core/air/natural_loss.hpp"
#include "core/air/odds.hpp"
#include "core/air/repair.hpp"
#include "core/car/axle_load.hpp"
#include "core/car/fitment.hpp"
#include "core/car/rules.hpp"
#include "core/grip/cornering.hpp"
#include "core/grip/limits.hpp"
#include "core/grip/stopping.hpp"
#include "core/patch/beaded_edge.hpp"
#include "core/patch/cross_ply.hpp"
#include "core/patch/inclined.hpp"
#include "core/patch/measured.hpp"
#include "core/patch/pressure_demand.hpp"
#include "core/standard/load_adjustment.hpp"
#include "core/standard/speed_load.hpp"
#include "core/standard/speedometer.hpp"
#include "core/water/crossing.hpp"
#include "core/water/estimate.hpp"
#include "core/water/film.hpp"
#include "core/water/onset.hpp"
#include "core/wear/rate.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/property.hpp"

using namespace treadwater;
using namespace treadwater::testing;
using standard::SpeedSymbol;

namespace {

constexpr int runs = 20000;
constexpr double none = std::numeric_limits<double>::quiet_NaN();

double between(double low, double high) {
  return low + (high - low) * *rc::gen::inRange(0, 1001) / 1000.0;
}

// Hands out readings of which one, known beforehand, is no number.
class Readings {
 public:
  explicit Readings(int count) : spoilt_(*rc::gen::inRange(0, count)) {}
  double from(double low, double high) {
    const double value = between(low, high);
    return given_++ == spoilt_ ? none : value;
  }

 private:
  int spoilt_;
  int given_ = 0;
};

SpeedSymbol any_symbol() {
  return *rc::gen::element(SpeedSymbol::L, SpeedSymbol::T, SpeedSymbol::H, SpeedSymbol::V,
                           SpeedSymbol::W, SpeedSymbol::Y, SpeedSymbol::ZR);
}

}  // namespace

TEST_CASE("no number: load, speed, camber and pressure") {
  CHECK(holds(
      "patch and standard",
      [] {
        Readings r(4);
        const patch::RatedTyre tyre{kilograms(r.from(300.0, 900.0)), any_symbol(),
                                    patch::european_standard_load(), std::nullopt};
        patch::Duty duty{kilograms(r.from(50.0, 300.0)), kilometres_per_hour(r.from(0.0, 130.0)),
                         r.from(-2.0, 2.0), kilometres_per_hour(0.0), *rc::gen::arbitrary<bool>()};
        RC_ASSERT(!patch::pressure_demand(tyre, duty));

        Readings two(2);
        const double degrees = two.from(3.1, 4.0);  // below that the top speed does not matter
        const Speed top = kilometres_per_hour(two.from(0.0, 250.0));
        RC_ASSERT(!standard::camber_load_factor(degrees, top));
        RC_ASSERT(!standard::camber_pressure_factor(degrees, top));

        const Speed no_speed = kilometres_per_hour(none);
        RC_ASSERT(!standard::load_percent(any_symbol(), no_speed));
        RC_ASSERT(!standard::low_speed_percent(no_speed));
        RC_ASSERT(!standard::commercial_percent(110, any_symbol(), no_speed));
        RC_ASSERT(!standard::motorcycle_percent(any_symbol(), no_speed));
        RC_ASSERT(!standard::us_trailer_tyre(no_speed));
        RC_ASSERT(!standard::speedometer_allowed(no_speed, kilometres_per_hour(50.0)));
        RC_ASSERT(!standard::speedometer_allowed(kilometres_per_hour(50.0), no_speed));

        Readings three(3);
        const Mass greatest = kilograms(three.from(300.0, 900.0));
        const GaugePressure p = kilopascals(three.from(150.0, 300.0));
        const Mass load = kilograms(three.from(100.0, 300.0));
        const auto law = patch::european_extra_load();
        RC_ASSERT(!(patch::load_capacity(law, greatest, p) >= load));
        RC_ASSERT(!(p >= patch::pressure_needed(law, greatest, load)));
        RC_ASSERT(!car::pressure_for_equal_load(law, greatest, p, law, load));
      },
      runs));
}

TEST_CASE("no number: old tyres and contact") {
  CHECK(holds(
      "beaded edge, camber, cross-ply",
      [] {
        Readings r(2);
        const Length section = millimetres(r.from(90.0, 135.0));
        const Mass axle = kilograms(r.from(500.0, 1500.0));
        const auto wheels = *rc::gen::element(patch::Wheels::single, patch::Wheels::twin);
        RC_ASSERT(!patch::beaded_edge_1921(section, axle, wheels));
        RC_ASSERT(!patch::beaded_edge_pressure(section, axle, wheels));
        RC_ASSERT(!patch::beaded_edge_1909(millimetres(none)));
        RC_ASSERT(!patch::straight_side_1921(kilograms(none)));
        RC_ASSERT(!patch::beaded_edge_load_today(millimetres(none)));
        RC_ASSERT(!patch::camber_shares(none));
        Readings print(2);
        const Force load = newtons(print.from(2500.0, 6000.0));
        RC_ASSERT(!patch::fitted_area_255_40_17(load, kilopascals(print.from(170.0, 240.0))));
        Readings cross(6);
        const patch::TyreSize size{millimetres(cross.from(140.0, 170.0)), cross.from(75.0, 85.0),
                                   inches(cross.from(12.0, 15.0))};
        const GaugePressure p = kilopascals(cross.from(140.0, 250.0));
        const GaugePressure rated = kilopascals(cross.from(140.0, 250.0));
        RC_ASSERT(!patch::cross_ply_patch(size, p, rated, newtons(cross.from(500.0, 2000.0))));
      },
      runs));
}

TEST_CASE("no number: water") {
  CHECK(holds(
      "film, onset, crossing",
      [] {
        Readings r(4);
        water::RainOnRoad road;
        road.rain = millimetres_per_hour(r.from(1.0, 100.0));
        road.path = {metres(r.from(2.0, 40.0)), r.from(0.006, 0.09)};
        road.texture = millimetres(r.from(0.2, 3.0));
        for (int model = 0; model < 7; ++model)
          RC_ASSERT(!water::film_depth(static_cast<water::FilmModel>(model), road));
        RC_ASSERT(!water::rain_film(road));

        Readings o(6);
        water::OnsetConditions c;
        c.pressure = kilopascals(o.from(150.0, 270.0));
        c.grooves = millimetres(o.from(0.0, 8.0));
        c.film = millimetres(o.from(0.6, 9.0));
        c.texture = millimetres(o.from(0.0, 2.0));
        c.footprint_aspect_ratio = o.from(0.6, 1.4);
        c.wheel_load = newtons(o.from(2500.0, 4500.0));
        for (const auto& model : water::onset_models()) {
          const auto onset = model.onset(c);
          if (onset)
            RC_ASSERT(in_kilometres_per_hour(*onset) > 0.0);  // it does not ask for that one
        }

        const auto vehicle =
            *rc::gen::element(water::VehicleKind::small_car, water::VehicleKind::large_car,
                              water::VehicleKind::four_by_four);
        RC_ASSERT(water::judge_crossing(vehicle, millimetres(none), {}) == water::Crossing::afloat);
        // A flow of no known speed is the flow that is taken where none is known.
        const Length depth = millimetres(between(1.0, 800.0));
        RC_ASSERT(water::judge_crossing(vehicle, depth, {true, kilometres_per_hour(none)}) >=
                  water::judge_crossing(vehicle, depth, {true, std::nullopt}));

        // The onset of a tyre with a reading that is none is no later than with any reading at all.
        Readings t(5);
        water::WetTyre tyre;
        tyre.pressure = kilopascals(t.from(100.0, 300.0));
        tyre.tread = millimetres(t.from(0.0, 9.0));
        tyre.film = millimetres(t.from(0.5, 20.0));
        tyre.texture = millimetres(t.from(0.0, 2.0));
        tyre.section_width = millimetres(t.from(135.0, 300.0));
        const auto band = water::aquaplaning_onset(tyre);
        if (!band) return;
        RC_ASSERT(band->low > Speed() && band->low <= band->central && band->low <= band->high);
        water::WetTyre worst = tyre;
        if (std::isnan(worst.pressure.stored())) worst.pressure = kilopascals(0.0);
        if (std::isnan(worst.tread.stored())) worst.tread = millimetres(0.0);
        if (std::isnan(worst.film.deep().stored())) worst.film = metres(1.0);
        if (std::isnan(worst.texture.stored())) worst.texture = millimetres(0.0);
        if (std::isnan(worst.section_width->stored())) worst.section_width = millimetres(300.0);
        RC_ASSERT(band->low <= water::aquaplaning_onset(worst)->low);
      },
      2000));
}

TEST_CASE("no number: friction, stops and bends") {
  CHECK(holds(
      "grip",
      [] {
        Readings r(3);
        grip::GripCase c;
        c.tread = millimetres(r.from(0.0, 8.0));
        c.film = millimetres(r.from(0.0, 3.0));
        const Speed v = kilometres_per_hour(r.from(5.0, 150.0));
        const auto band = grip::Grip(c).at(v);
        RC_ASSERT(band.low == 0.0);
        RC_ASSERT(band.central == 0.0);
        RC_ASSERT(band.high == 0.0);
        RC_ASSERT(!grip::stopping_band(c, v, seconds(1.0), {}).shortest);

        Readings s(3);
        const Speed from = kilometres_per_hour(s.from(5.0, 150.0));
        const double mu = s.from(0.3, 1.0), grade = s.from(-0.05, 0.05);
        RC_ASSERT(!grip::braking_distance(from, mu, grade));
        Readings w(4);
        const Speed going = kilometres_per_hour(w.from(5.0, 150.0));
        const Duration reaction = seconds(w.from(0.5, 2.5));
        const double hold = w.from(0.3, 1.0);
        RC_ASSERT(!grip::stopping_distance(going, reaction, hold, w.from(-0.05, 0.05)));
        Readings b(3);
        const Length radius = metres(b.from(10.0, 300.0));
        const double side = b.from(0.3, 1.0);
        RC_ASSERT(!grip::corner_speed(radius, side, b.from(-0.05, 0.05)));
        Readings l(3);
        const double x = l.from(0.3, 1.0), y = l.from(0.3, 1.0);
        RC_ASSERT(!(grip::braking_left(x, y, l.from(0.0, 0.2)) > 0.0));
      },
      runs));
}

TEST_CASE("no number: air") {
  CHECK(holds(
      "leaks, losses, repair, odds",
      [] {
        Readings r(3);
        const Length hole = millimetres(r.from(0.1, 5.0));
        const Volume cavity = litres(r.from(10.0, 60.0));
        RC_ASSERT(!air::leak_through(hole, cavity, celsius(r.from(-20.0, 60.0)), air::any_hole));
        const air::Leak leak{1e-3, 2e-3};
        Readings t(3);
        const GaugePressure now = kilopascals(t.from(100.0, 300.0));
        const GaugePressure then = kilopascals(t.from(0.0, 99.0));
        RC_ASSERT(!air::time_between(leak, now, then, kilopascals_absolute(t.from(60.0, 105.0))));
        Readings m(3);
        const air::GaugeReading first{kilopascals(m.from(200.0, 300.0)), {celsius(20.0)}};
        const air::GaugeReading second{kilopascals(m.from(0.0, 150.0)), {celsius(20.0)}};
        const Duration apart = seconds(m.from(60.0, 6e5));
        RC_ASSERT(!air::leak_between(first, second, apart));
        RC_ASSERT(air::judge_loss(air::AirHolder::tubeless, first, second, apart).kind ==
                  air::LossKind::doubtful);
        RC_ASSERT(air::chance_of_more_than(*rc::gen::inRange(0, 5), none) == 1.0);
        const auto way = *rc::gen::element(air::Way::self_supporting, air::Way::plain_flat);
        RC_ASSERT(air::get_home(way, none).speed == kilometres_per_hour(0.0));

        Readings d(4);
        air::Damage damage;
        damage.from_centre = millimetres(d.from(0.0, 20.0));
        damage.hole = millimetres(d.from(0.5, 5.0));
        damage.section_width = millimetres(d.from(155.0, 255.0));
        damage.tread = millimetres(d.from(2.0, 8.0));
        const auto repair = air::repair(damage);
        RC_ASSERT(repair.british != air::Verdict::may);
      },
      runs));
}

TEST_CASE("no number: one car's tyres") {
  CHECK(holds(
      "car",
      [] {
        Readings p(2);
        const GaugePressure left = kilopascals(p.from(200.0, 205.0));
        RC_ASSERT(car::pressure_difference(left, kilopascals(p.from(200.0, 205.0))) !=
                  car::Difference::none);
        Readings t(2);
        const Length shallow = millimetres(t.from(5.0, 5.5));
        RC_ASSERT(car::tread_difference(shallow, millimetres(t.from(5.0, 5.5))) !=
                  car::Difference::none);
        Readings w(3);
        const Length inner = millimetres(w.from(4.0, 4.2)), centre = millimetres(w.from(4.0, 4.2));
        RC_ASSERT(!car::wear_pattern(inner, centre, millimetres(w.from(4.0, 4.2))));
        RC_ASSERT(car::symbol_fit(any_symbol(), kilometres_per_hour(none), true) !=
                  car::SymbolFit::enough);
        Readings a(3);
        const Mass greatest = kilograms(a.from(600.0, 700.0)),
                   asked = kilograms(a.from(300.0, 400.0));
        const auto fit = car::adequacy(greatest, standard::Vehicle::car, SpeedSymbol::Y, false,
                                       asked, kilometres_per_hour(a.from(100.0, 150.0)));
        RC_ASSERT(!fit.load || fit.speed == car::SymbolFit::too_low);
        Readings l(4);
        car::CarLoad load;
        load.kerb = kilograms(l.from(500.0, 2000.0));
        load.front_share = l.from(0.3, 0.7);
        load.boot = kilograms(l.from(0.0, 100.0));
        load.roof = kilograms(l.from(0.0, 100.0));
        RC_ASSERT(!car::axle_loads(load));
        Readings e(4);
        std::vector<wear::Depth> readings;
        for (int i = 0; i < 2; ++i) {
          const double at = e.from(100.0 * i, 100.0 * i + 50.0);
          readings.push_back({at, millimetres(e.from(2.0, 8.0))});
        }
        RC_ASSERT(!wear::rate_of(readings));
      },
      runs));
}
