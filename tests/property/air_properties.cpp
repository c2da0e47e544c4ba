// Facts of order about the air in a tyre, over random ones.
#include <cmath>

#include "core/air/leak.hpp"
#include "core/air/natural_loss.hpp"
#include "core/air/odds.hpp"
#include "core/air/repair.hpp"
#include "core/air/warning.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/property.hpp"

using namespace treadwater;
using namespace treadwater::air;
using namespace treadwater::testing;

namespace {

// A number from low to high in steps of a ten-thousandth of the span.
double between(double low, double high) {
  return low + (high - low) * *rc::gen::inRange(0, 10001) / 10000.0;
}

struct Punctured {
  Length hole = millimetres(between(0.05, 12.0));
  Volume cavity = litres(between(5.0, 150.0));
  Temperature inside = celsius(between(-30.0, 90.0));
  double discharge = between(0.4, 1.0);
  AbsolutePressure outside = kilopascals_absolute(between(60.0, 105.0));
  GaugePressure now = kilopascals(between(1.0, 900.0));
  GaugePressure then = now * between(0.0, 1.0);

  Leak leak() const { return *leak_through(hole, cavity, inside, {discharge, discharge}); }
  TimeBand time() const { return *time_between(leak(), now, then, outside); }
};

bool close(Duration a, Duration b) {
  return std::abs(in_seconds(a - b)) <= 1e-9 * std::abs(in_seconds(a)) + 1e-12;
}

}  // namespace

TEST_CASE("the time to empty goes with the volume and with 1/d²") {
  CHECK(holds("time goes with V/d²", [] {
    Punctured tyre;
    const TimeBand time = tyre.time();
    const double more = between(0.2, 5.0);
    Punctured larger = tyre;
    larger.cavity = tyre.cavity * more;
    RC_ASSERT(close(larger.time().soonest, time.soonest * more));
    RC_ASSERT(close(larger.time().latest, time.latest * more));
    Punctured wider = tyre;
    wider.hole = tyre.hole * more;
    RC_ASSERT(close(wider.time().soonest * (more * more), time.soonest));
    RC_ASSERT(close(wider.time().latest * (more * more), time.latest));
  }));
}

TEST_CASE("times are finite, never below zero, and the soonest comes first") {
  CHECK(holds("0 <= soonest <= latest", [] {
    const TimeBand time = Punctured{}.time();
    RC_ASSERT(std::isfinite(in_seconds(time.latest)));
    RC_ASSERT(time.soonest >= seconds(0.0));
    RC_ASSERT(time.soonest <= time.latest);
  }));
}

TEST_CASE("a bigger hole never lasts longer, more pressure never leaks down sooner") {
  CHECK(holds("order of hole, pressure and threshold", [] {
    Punctured tyre;
    const TimeBand time = tyre.time();
    Punctured bigger = tyre;
    bigger.hole = tyre.hole * between(1.0, 3.0);
    RC_ASSERT(bigger.time().soonest <= time.soonest);
    RC_ASSERT(bigger.time().latest <= time.latest);
    Punctured harder = tyre;
    harder.now = tyre.now * between(1.0, 2.0);
    RC_ASSERT(harder.time().latest >= time.latest * (1.0 - 1e-12));
    RC_ASSERT(harder.time().soonest >= time.soonest * (1.0 - 1e-12));
    Punctured further = tyre;
    further.then = tyre.then * between(0.0, 1.0);
    RC_ASSERT(further.time().latest >= time.latest);
    RC_ASSERT(further.time().soonest >= time.soonest);
  }));
}

TEST_CASE("the pressure after a time, and the time to a pressure, are each other's inverse") {
  CHECK(holds(
      "there and back",
      [] {
        const Punctured tyre;
        const Leak leak = tyre.leak();
        const TimeBand time = tyre.time();
        const auto late = pressure_after(leak, tyre.now, time.latest, tyre.outside);
        const auto soon = pressure_after(leak, tyre.now, time.soonest, tyre.outside);
        RC_ASSERT(std::abs(in_kilopascals(late->high - tyre.then)) < 1e-6);
        RC_ASSERT(std::abs(in_kilopascals(soon->low - tyre.then)) < 1e-6);
        RC_ASSERT(late->low <= late->high + kilopascals(1e-9));
        RC_ASSERT(late->low >= kilopascals(0.0));
      },
      20000));
}

TEST_CASE("a leak read off two gauge readings is the leak that made them") {
  CHECK(holds("infer the leak", [] {
    const Punctured tyre;
    const Leak leak = tyre.leak();
    const Conditions there{tyre.inside, tyre.outside};
    // What the gauge shows once the air has cooled and the car has gone up or down a hill.
    const Conditions later{celsius(between(-30.0, 90.0)),
                           kilopascals_absolute(between(60.0, 105.0))};
    const GaugeReading seen{carried_over({tyre.then, there}, later), later};
    RC_PRE(tyre.now - tyre.then > kilopascals(0.5));
    RC_PRE(tyre.then > kilopascals(0.01));
    const Duration apart = tyre.time().latest;
    const auto exact = leak_between({tyre.now, there}, seen, apart, kilopascals(0.0));
    RC_ASSERT(exact);
    RC_ASSERT(std::abs(exact->fastest / leak.fastest - 1.0) < 1e-9);
    const auto band = leak_between({tyre.now, there}, seen, apart);
    if (!band) return;
    RC_ASSERT(band->slowest <= leak.slowest);
    RC_ASSERT(band->fastest >= leak.fastest);
  }));
}

TEST_CASE("a leak-down curve falls from now to flat while time goes on") {
  CHECK(holds(
      "order along the curve",
      [] {
        const Punctured tyre;
        const auto curve = leak_curve(tyre.leak(), tyre.now, tyre.outside);
        RC_ASSERT(curve);
        RC_ASSERT(curve->front().time.latest == seconds(0.0));
        RC_ASSERT(std::abs(in_kilopascals(curve->front().pressure - tyre.now)) < 1e-9);
        RC_ASSERT(curve->back().pressure == kilopascals(0.0));
        for (std::size_t i = 1; i < curve->size(); ++i) {
          const LeakPoint& a = (*curve)[i - 1];
          const LeakPoint& b = (*curve)[i];
          RC_ASSERT(b.pressure < a.pressure);
          RC_ASSERT(b.time.soonest > a.time.soonest);
          RC_ASSERT(b.time.latest > a.time.latest);
        }
      },
      20000));
}

TEST_CASE("flow never falls as the pressure inside rises, nor rises with the pressure outside") {
  CHECK(holds("order of flow", [] {
    const Density density = kilograms_per_cubic_metre(between(0.5, 10.0));
    const AbsolutePressure p = kilopascals_absolute(between(50.0, 1000.0));
    const AbsolutePressure out = kilopascals_absolute(between(10.0, 1000.0));
    const double gamma = between(1.05, 1.67);
    const auto flow = [&](AbsolutePressure in, AbsolutePressure outside) {
      return orifice_flow(in, density, outside, square_centimetres(1.0), gamma);
    };
    const MassFlow here = flow(p, out);
    RC_ASSERT(here >= kilograms_per_second(0.0));
    RC_ASSERT(flow(p * between(1.0, 2.0), out) >= here * (1.0 - 1e-12));
    RC_ASSERT(flow(p, out * between(1.0, 2.0)) <= here * (1.0 + 1e-12));
  }));
}

TEST_CASE("air carried over and back is the same air, and warmer air reads higher") {
  CHECK(holds("there and back, and order of warmth", [] {
    const Conditions a{celsius(between(-40.0, 100.0)), outside_at(metres(between(-500.0, 5000.0)))};
    const Conditions b{celsius(between(-40.0, 100.0)), outside_at(metres(between(-500.0, 5000.0)))};
    const GaugePressure p = kilopascals(between(0.0, 900.0));
    const GaugePressure there = carried_over({p, a}, b);
    RC_ASSERT(std::abs(in_kilopascals(carried_over({there, b}, a) - p)) < 1e-9);
    if (b.inside >= a.inside && b.outside <= a.outside) RC_ASSERT(there >= p - kilopascals(1e-9));
    if (b.inside <= a.inside && b.outside >= a.outside) RC_ASSERT(there <= p + kilopascals(1e-9));
  }));
}

TEST_CASE("natural loss grows with warmth and with time; a greater drop is judged no milder") {
  CHECK(holds("order of natural loss", [] {
    const AirHolder holder = *rc::gen::element(AirHolder::tubeless, AirHolder::natural_rubber_tube);
    const Temperature t = celsius(between(-30.0, 60.0));
    const Duration time = days(between(0.01, 400.0));
    const PressureBand loss = natural_loss(holder, t, time);
    RC_ASSERT(loss.low < loss.high);
    RC_ASSERT(natural_loss(holder, t + kelvin_difference(between(0.0, 30.0)), time).high >=
              loss.high);
    RC_ASSERT(natural_loss(holder, t, time * between(1.0, 3.0)).low >= loss.low);
    const GaugePressure now = kilopascals(between(50.0, 400.0));
    const GaugePressure left = now * between(0.0, 1.0);
    const auto kind = [&](GaugePressure second) {
      return judge_loss(holder, {now, {t}}, {second, {t}}, time).kind;
    };
    RC_ASSERT(kind(left * between(0.0, 1.0)) >= kind(left));
  }));
}

TEST_CASE("a chance is from 0 to 1; longer on the road is never safer, more spares never worse") {
  CHECK(holds("order of chances", [] {
    const int spares = *rc::gen::inRange(0, 12);
    const double expected = std::pow(10.0, between(-9.0, 3.5));
    const double chance = chance_of_more_than(spares, expected);
    RC_ASSERT(chance >= 0.0);
    RC_ASSERT(chance <= 1.0);
    RC_ASSERT(chance_of_more_than(spares + 1, expected) <= chance + 1e-12);
    RC_ASSERT(chance_of_more_than(spares, expected * between(1.0, 3.0)) >= chance - 1e-12);
    PunctureRate often{days(between(10.0, 3000.0)), kilometres(between(100.0, 60000.0))};
    const Length trip = kilometres(between(0.0, 3000.0));
    const double here = expected_punctures(often, trip);
    often.one_in = often.one_in * between(0.1, 1.0);
    RC_ASSERT(expected_punctures(often, trip) >= here);
  }));
}

TEST_CASE("a wider, outer, or more worn hole is never judged milder") {
  CHECK(holds(
      "order of repair",
      [] {
        Damage d;
        d.place = *rc::gen::element(Place::tread, Place::shoulder, Place::sidewall, Place::bead);
        d.from_centre = millimetres(between(-200.0, 200.0));
        d.hole = millimetres(between(0.0, 10.0));
        d.section_width = millimetres(between(125.0, 355.0));
        d.tread = millimetres(between(0.0, 9.0));
        d.driven_flat = *rc::gen::arbitrary<bool>();
        d.sealant_used = *rc::gen::arbitrary<bool>();
        d.earlier_repairs = *rc::gen::inRange(0, 3);
        if (*rc::gen::arbitrary<bool>()) d.between_outer_grooves = *rc::gen::arbitrary<bool>();
        if (*rc::gen::arbitrary<bool>()) d.age_years = between(0.0, 15.0);
        if (*rc::gen::arbitrary<bool>())
          d.symbol = *rc::gen::element(standard::SpeedSymbol::T, standard::SpeedSymbol::H,
                                       standard::SpeedSymbol::V, standard::SpeedSymbol::Y);
        const Repair here = repair(d);
        Damage worse = d;
        worse.from_centre = d.from_centre * between(1.0, 2.0);
        worse.hole = d.hole * between(1.0, 2.0);
        worse.tread = d.tread * between(0.0, 1.0);
        ++worse.earlier_repairs;
        if (worse.age_years) *worse.age_years += between(0.0, 5.0);
        RC_ASSERT(repair(worse).british >= here.british);
        RC_ASSERT(repair(worse).american >= here.american);
        RC_ASSERT(!here.reasons.empty());
        if (d.place != Place::tread) {
          RC_ASSERT(here.british == Verdict::no);
          RC_ASSERT(here.american == Verdict::no);
        }
      },
      20000));
}

TEST_CASE("the driving limit is below the set pressure and rises with it") {
  CHECK(holds("order of limits", [] {
    const GaugePressure set = kilopascals(between(1.0, 900.0));
    const GaugePressure more = set * between(1.0, 2.0);
    RC_ASSERT(do_not_drive_below(set) < set);
    RC_ASSERT(do_not_drive_below(more) >= do_not_drive_below(set));
    for (const WarningRule& rule : warning_rules())
      RC_ASSERT(warning_pressure(rule, more) >= warning_pressure(rule, set));
  }));
}
