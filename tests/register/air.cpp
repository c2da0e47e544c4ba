// The air in a tyre: hot and cold, holes, repair, getting home.
#include <cmath>
#include <numbers>

#include "core/air/gas_law.hpp"
#include "core/air/get_home.hpp"
#include "core/air/leak.hpp"
#include "core/air/natural_loss.hpp"
#include "core/air/odds.hpp"
#include "core/air/repair.hpp"
#include "core/air/warning.hpp"
#include "tests/register/register.hpp"

namespace treadwater::checks {
namespace {

using namespace air;

Area disc(Length d) { return square_metres(std::numbers::pi / 4.0 * in_metres(d) * in_metres(d)); }

Area opening(Asked& in) {
  return in.has("throat") ? in.of<Area>("throat") : disc(in.of<Length>("hole"));
}

MassFlow flow_at(AbsolutePressure inside, Temperature t, Area effective) {
  return orifice_flow(inside, air_density(inside, t), standard_atmosphere, effective);
}

AbsolutePressure inside(Asked& in) {
  return in.has("gauge") ? absolute(in.of<GaugePressure>("gauge"), standard_atmosphere)
                         : in.of<AbsolutePressure>("absolute");
}

// At a gauge pressure or, in textbooks, an absolute one.
GaugePressure gauge_of(Asked& in, const char* name) {
  return in.yes("absolute pressures") ? gauge(in.of<AbsolutePressure>(name), standard_atmosphere)
                                      : in.of<GaugePressure>(name);
}

TimeBand time_to_leak(Asked& in) {
  const double discharge = in.number("discharge");
  const Length hole =
      in.has("throat")
          ? metres(std::sqrt(4.0 / std::numbers::pi * in_square_metres(in.of<Area>("throat"))))
          : in.of<Length>("hole");
  const auto leak = leak_through(hole, in.of<Volume>("cavity"), in.of<Temperature>("temperature"),
                                 {discharge, discharge});
  if (!leak) in.fail("no leak", "");
  const auto time =
      leak ? time_between(*leak, gauge_of(in, "from"), gauge_of(in, "to")) : std::nullopt;
  if (!time) in.fail("no time", "");
  return time.value_or(TimeBand{});
}

GaugePressure warmed(Asked& in) {
  return carried_over({in.of<GaugePressure>("pressure"), {in.of<Temperature>("at")}},
                      {in.of<Temperature>("then")});
}

// The hole that loses a pressure in a time, from the rate at that moment: a drop of 0.02 kPa.
Value hole_of_a_loss(Asked& in) {
  constexpr double drop = 0.02;
  const Temperature t = in.of<Temperature>("temperature");
  const GaugePressure from = in.of<GaugePressure>("from");
  const Duration apart =
      in.of<Duration>("in") * (drop / in_kilopascals(in.of<GaugePressure>("lost")));
  const auto leak =
      leak_between({from, {t}}, {from - kilopascals(drop), {t}}, apart, kilopascals(0.0));
  if (!leak) return in.answer(std::string_view("none"));
  return in.answer(hole_of(leak->fastest, in.of<Volume>("cavity"), t));
}

// The flow is choked above this ratio of pressures: just over it the flow for its inside pressure
// is that far above it, just under it is less.
Value choked_from(Asked& in) {
  const double gamma = in.number("gamma");
  const auto at = [&](double ratio) {
    return in_kilograms_per_second(
               orifice_flow(kilopascals_absolute(100.0 * ratio), kilograms_per_cubic_metre(1.0),
                            kilopascals_absolute(100.0), square_metres(1.0), gamma)) /
           std::sqrt(ratio);
  };
  const double choked = at(10.0);
  double low = 1.0, high = 10.0;
  for (int i = 0; i < 60; ++i) {
    const double middle = (low + high) / 2.0;
    (at(middle) < choked * (1.0 - 1e-13) ? low : high) = middle;
  }
  return in.answer(high);
}

// The worksheet of a vessel that empties in steps of 0.6 s, as its text prints it.
struct Vessel {
  double density = 4.131, kelvin = 288.15, pascals = 50e5, flow = 0.0;
};
Vessel vessel(Asked& in) {
  constexpr double gas_constant = 8314.46 / 2.0, specific_heat = 10000.0, volume = 100.0;
  Vessel v;
  const int step = static_cast<int>(in.number("step"));
  for (int i = 0;; ++i) {
    v.flow = in_kilograms_per_second(
        orifice_flow(kilopascals_absolute(v.pascals / 1000.0), kilograms_per_cubic_metre(v.density),
                     standard_atmosphere, disc(metres(0.1)) * 0.62, 1.427));
    if (i >= step) return v;
    const double lost = v.flow * 0.6 / volume;
    v.kelvin -= v.pascals / (v.density * v.density * specific_heat) * lost;
    v.density -= lost;
    v.pascals = v.density * gas_constant * v.kelvin;
  }
}

PressureBand loss(Asked& in) {
  const AirHolder holder = in.yes("tube") ? AirHolder::natural_rubber_tube : AirHolder::tubeless;
  return natural_loss(holder, in.of<Temperature>("temperature"), in.of<Duration>("in"));
}

GetHome home(Asked& in) {
  const std::string way = in.text("way");
  const double share = in.number("load share");
  if (way == "run-flat sidewalls") return get_home(Way::self_supporting, share);
  if (way == "lubricated run-flat") return get_home(Way::lubricated, share);
  if (way == "temporary spare") return get_home(Way::temporary_spare, share);
  if (way != "sealant kit") in.fail("no such way: ", way);
  return get_home(Way::sealant_kit, share);
}

const WarningRule& rule(Asked& in) {
  const WarningRule* found = find_warning_rule(in.text("rule"));
  if (found == nullptr) in.fail("no such rule", "");
  return found == nullptr ? *warning_rules().begin() : *found;
}

constexpr Check checks[] = {
    // Temperature and altitude.
    {"pressure at another temperature", [](Asked& in) { return in.answer(warmed(in)); }},
    {"pressure gained with the temperature",
     [](Asked& in) { return in.answer(warmed(in) - in.of<GaugePressure>("pressure")); }},
    {"air at an altitude",
     [](Asked& in) { return in.answer(outside_at(in.of<Length>("altitude"))); }},
    // Orifice.
    {"flow through an orifice",
     [](Asked& in) {
       return in.answer(flow_at(inside(in), in.of<Temperature>("temperature"), opening(in)));
     }},
    {"flow through an orifice, over pressure and area",
     [](Asked& in) {
       const AbsolutePressure p = inside(in);
       const double kg_per_s = in_kilograms_per_second(
           flow_at(p, in.of<Temperature>("temperature"), square_metres(1.0)));
       return in.answer(kg_per_s / (1000.0 * in_kilopascals_absolute(p)));
     }},
    {"Fliegner's constant",  // lbm sqrt(°R)/(lbf s)
     [](Asked& in) {
       const double si = in_kilograms_per_second(flow_at(kilopascals_absolute(1000.0),
                                                         kelvin(1.0 / 1.8), square_metres(1.0))) /
                         1e6;
       return in.answer(si * exact::newtons_per_pound_force / exact::kilograms_per_pound);
     }},
    {"choking pressure",
     [](Asked& in) { return in.answer(choking_pressure(standard_atmosphere)); }},
    {"choking, inside over outside",
     [](Asked& in) {
       return in.answer(absolute(choking_pressure(standard_atmosphere), standard_atmosphere) /
                        standard_atmosphere);
     }},
    {"choking, outside over inside",
     [](Asked& in) {
       return in.answer(standard_atmosphere /
                        absolute(choking_pressure(standard_atmosphere), standard_atmosphere));
     }},
    {"flow at choking",
     [](Asked& in) {
       const GaugePressure p = choking_pressure(standard_atmosphere) + in.of<GaugePressure>("more");
       return in.answer(flow_at(absolute(p, standard_atmosphere), in.of<Temperature>("temperature"),
                                opening(in)));
     }},
    {"choked from a ratio of", choked_from},
    {"area of a hole", [](Asked& in) { return in.answer(disc(in.of<Length>("hole"))); }},
    {"vessel, density",
     [](Asked& in) { return in.answer(kilograms_per_cubic_metre(vessel(in).density)); }},
    {"vessel, temperature", [](Asked& in) { return in.answer(kelvin(vessel(in).kelvin)); }},
    {"vessel, pressure",
     [](Asked& in) { return in.answer(kilopascals_absolute(vessel(in).pascals / 1000.0)); }},
    {"vessel, flow", [](Asked& in) { return in.answer(kilograms_per_second(vessel(in).flow)); }},
    // Leaks.
    {"time to leak, isothermal", [](Asked& in) { return in.answer(time_to_leak(in).latest); }},
    {"time to leak, adiabatic", [](Asked& in) { return in.answer(time_to_leak(in).soonest); }},
    {"hole that loses so much", hole_of_a_loss},
    {"cavity",
     [](Asked& in) {
       return in.answer(
           cavity_volume(in.size("size"), in.has("fill") ? in.number("fill") : usual_fill));
     }},
    // Natural loss.
    {"natural loss, least", [](Asked& in) { return in.answer(loss(in).low); }},
    {"natural loss, most", [](Asked& in) { return in.answer(loss(in).high); }},
    {"natural loss, middle",
     [](Asked& in) { return in.answer((loss(in).low + loss(in).high) / 2.0); }},
    {"pressure after months",
     [](Asked& in) {
       return in.answer(after_months(in.of<GaugePressure>("pressure"), in.number("percent a month"),
                                     in.number("months")));
     }},
    // Repair, getting home, warning, odds.
    {"repairable width",
     [](Asked& in) { return in.answer(repairable_width(in.of<Length>("section"))); }},
    {"repairable hole", [](Asked& in) { return in.answer(repairable_hole); }},
    {"sealable hole", [](Asked& in) { return in.answer(sealable_hole); }},
    {"home, speed", [](Asked& in) { return in.answer(home(in).speed); }},
    {"home, distance", [](Asked& in) { return in.answer(home(in).distance); }},
    {"home, distance claimed", [](Asked& in) { return in.answer(home(in).claimed); }},
    {"home, pressure", [](Asked& in) { return in.answer(home(in).pressure); }},
    {"home, wheels at once",
     [](Asked& in) { return in.answer(static_cast<double>(home(in).at_once)); }},
    {"warning pressure",
     [](Asked& in) { return in.answer(warning_pressure(rule(in), in.of<GaugePressure>("set"))); }},
    {"warning within", [](Asked& in) { return in.answer(rule(in).within); }},
    {"punctures to expect",
     [](Asked& in) {
       return in.answer(in.has("distance") ? expected_punctures({}, in.of<Length>("distance"))
                                           : expected_punctures({}, in.of<Duration>("in")));
     }},
    {"chance of more punctures than",
     [](Asked& in) {
       return in.answer(chance_of_more_than(static_cast<int>(in.number("spares")),
                                            expected_punctures({}, in.of<Duration>("in"))));
     }},
};

}  // namespace

Checks air_checks() { return {std::begin(checks), std::end(checks)}; }

}  // namespace treadwater::checks
