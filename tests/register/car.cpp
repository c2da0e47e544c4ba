// What holds between the tyres of one car; another size; wheels.
#include "core/car/fitment.hpp"
#include "core/car/rules.hpp"
#include "core/car/wheel.hpp"
#include "tests/register/register.hpp"

namespace treadwater::checks {
namespace {

using namespace car;

sidewall::Construction construction(Asked& in, const char* name) {
  const std::string text = in.text(name);
  if (text == "cross-ply") return sidewall::Construction::cross_ply;
  if (text == "bias-belted") return sidewall::Construction::bias_belted;
  if (text != "radial") in.fail("no such construction: ", text);
  return sidewall::Construction::radial;
}

FitmentChange change(Asked& in) {
  return fitment_change(
      {in.size("size"), false, in.of<Length>("rim"), in.of<Length>("offset")},
      {in.size("new size"), false, in.of<Length>("new rim"), in.of<Length>("new offset")});
}

Stiffness suspension(Asked& in) { return in.of<Stiffness>("suspension"); }
Stiffness tyre(Asked& in) { return in.of<Stiffness>("tyre"); }

Metal metal(Asked& in) {
  const std::string name = in.text("metal");
  if (name == "cast aluminium") return Metal::cast_aluminium;
  if (name == "forged aluminium") return Metal::forged_aluminium;
  if (name == "magnesium") return Metal::magnesium;
  if (name != "steel") in.fail("no such metal: ", name);
  return Metal::steel;
}

constexpr Check checks[] = {
    {"constructions may be mixed",
     [](Asked& in) {
       return in.answer(may_be_mixed(construction(in, "front"), construction(in, "rear")));
     }},
    {"top speed with its tolerance",
     [](Asked& in) {
       return in.answer(speed_with_tolerance(in.of<Speed>("speed"), in.yes("European approval")));
     }},
    {"turns a mile of a circumference",
     [](Asked& in) {
       return in.answer(turns_per_kilometre(in.of<Length>("circumference")) * kmh_per_mph);
     }},
    {"another size, circumference", [](Asked& in) { return in.answer(change(in).circumference); }},
    {"another size, engine speed times circumference",
     [](Asked& in) { return in.answer(change(in).engine_speed() * change(in).circumference); }},
    {"another size, diameter", [](Asked& in) { return in.answer(change(in).diameter); }},
    {"another size, ride height", [](Asked& in) { return in.answer(change(in).ride_height); }},
    {"another size, section width", [](Asked& in) { return in.answer(change(in).section_width); }},
    {"another size, inward", [](Asked& in) { return in.answer(change(in).inward); }},
    {"another size, outward", [](Asked& in) { return in.answer(change(in).outward); }},
    {"another size, outward less inward",
     [](Asked& in) { return in.answer(change(in).outward - change(in).inward); }},
    {"another size, outward and inward less section width",
     [](Asked& in) {
       const FitmentChange c = change(in);
       return in.answer(c.outward + c.inward - c.section_width);
     }},
    {"wheel hop, hertz",
     [](Asked& in) {
       return in.answer(wheel_hop_hertz(suspension(in), tyre(in), in.of<Mass>("unsprung")));
     }},
    {"wheel hop, speed",
     [](Asked& in) { return in.answer(hop_speed(in.number("hertz"), in.of<Length>("pitch"))); }},
    {"wheel hop, movement",
     [](Asked& in) {
       return in.answer(movement_for(in.of<Force>("force"), suspension(in), tyre(in)));
     }},
    {"ride rate", [](Asked& in) { return in.answer(ride_rate(suspension(in), tyre(in))); }},
    {"equivalent mass, factor",
     [](Asked& in) {
       return in.answer(equivalent_mass_factor(in.of<Mass>("car"),
                                               4.0 * in.of<Inertia>("inertia of a wheel"),
                                               in.of<Length>("radius")));
     }},
    {"equivalent mass",
     [](Asked& in) {
       return in.answer(equivalent_mass(in.of<Inertia>("inertia"), in.of<Length>("radius")));
     }},
    {"equivalent mass of a tyre",
     [](Asked& in) { return in.answer(tyre_equivalent_mass(in.of<Mass>("tyre"))); }},
    {"density of a wheel",
     [](Asked& in) {
       return in.answer(kilograms_per_cubic_metre(kilograms_a_cubic_metre(metal(in))));
     }},
    {"steel wheel in another metal",
     [](Asked& in) {
       return in.answer(wheel_in(in.of<Mass>("steel wheel"), Metal::steel, metal(in)));
     }},
};

}  // namespace

Checks car_checks() { return {std::begin(checks), std::end(checks)}; }

}  // namespace treadwater::checks
