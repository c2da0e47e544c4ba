// Symbols: ks suspension rate at the wheel, kt tyre rate, mu unsprung mass, I moment of inertia.
#include "core/car/wheel.hpp"

#include <cmath>

namespace treadwater::car {
namespace {

constexpr Source hop{"wheel-hop", "Automotive Chassis Engineering, worked example of wheel hop",
                     "20.63 and 300 kN/m, 40 kg: 14.25 Hz", "", Standing::published};
constexpr Source equivalent{"equivalent-mass", "Turning parts counted as mass, 1 + sum I/(m r^2)",
                            "mechanics, worked out here", "", Standing::common_practice};
constexpr Source inertia_of_tyre{"tyre-inertia", "Data set of a 205/60R15 tyre",
                                 "9.3 kg, 0.736 kg m^2, read in a public simulator", "",
                                 Standing::secondary};
constexpr Source density{"density", "Densities of wheel metals", "not looked up", "",
                         Standing::memory};

}  // namespace

double wheel_hop_hertz(Stiffness suspension, Stiffness tyre, Mass unsprung) {
  constexpr double two_pi = 6.283185307179586;
  return std::sqrt(in_newtons_per_metre(suspension + tyre) / in_kilograms(unsprung)) / two_pi;
}

Speed hop_speed(double hertz, Length pitch) {
  return kilometres_per_hour(3.6 * hertz * in_metres(pitch));
}

Length movement_for(Force force, Stiffness suspension, Stiffness tyre) {
  return metres(in_newtons(force) / in_newtons_per_metre(suspension + tyre));
}

Stiffness ride_rate(Stiffness suspension, Stiffness tyre) {
  return suspension * (tyre / (suspension + tyre));
}

Mass equivalent_mass(Inertia inertia, Length radius) {
  return kilograms(inertia.stored() / (in_metres(radius) * in_metres(radius)));
}

double equivalent_mass_factor(Mass car, Inertia of_all_wheels, Length radius) {
  return 1.0 + equivalent_mass(of_all_wheels, radius) / car;
}

Mass tyre_equivalent_mass(Mass tyre) { return tyre * 0.88; }

double kilograms_a_cubic_metre(Metal metal) {
  constexpr double densities[] = {7850.0, 2680.0, 2700.0, 1800.0};
  return densities[static_cast<int>(metal)];
}

Mass wheel_in(Mass wheel, Metal from, Metal to) {
  return wheel * (kilograms_a_cubic_metre(to) / kilograms_a_cubic_metre(from));
}

const Source& wheel_hop_source() { return hop; }
const Source& equivalent_mass_source() { return equivalent; }
const Source& tyre_inertia_source() { return inertia_of_tyre; }
const Source& density_source() { return density; }

}  // namespace treadwater::car
