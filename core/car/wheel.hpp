// What the mass of a wheel does: unsprung mass, rotating inertia, wheel hop, other materials.
//
// Mechanics; sources and standing in wheel.cpp. Ranges: every stiffness, mass and radius above 0;
// the caller ensures it.
#pragma once

#include "core/quantity/quantity.hpp"
#include "core/standard/source.hpp"

namespace treadwater::car {

using Inertia = Quantity<struct InertiaKind>;  // kilogram square metres
constexpr Inertia kilogram_square_metres(double v) { return Inertia::stored(v); }

// f = sqrt((ks + kt)/mu) / (2 pi), hertz: the wheel between suspension and tyre. Published example:
// 20.63 and 300 kN/m, 40 kg: 14.25 Hz.
double wheel_hop_hertz(Stiffness suspension, Stiffness tyre, Mass unsprung);
// The speed at which bumps this far apart excite it.
Speed hop_speed(double hertz, Length pitch);
// The wheel movement that takes this much off the force on the road: if all of it, the tyre leaves
// the road.
Length movement_for(Force force, Stiffness suspension, Stiffness tyre);
// Suspension and tyre in series, what the body rides on.
Stiffness ride_rate(Stiffness suspension, Stiffness tyre);
const Source& wheel_hop_source();

// I/r^2: what a turning wheel adds to its mass when the car speeds up or brakes.
Mass equivalent_mass(Inertia inertia, Length radius);
// 1 + sum of I/(m r^2).
double equivalent_mass_factor(Mass car, Inertia of_all_wheels, Length radius);
// A tyre adds 0.88 of its mass, by one published set of tyre data (9.3 kg, 0.736 kg m^2, 0.30 m).
Mass tyre_equivalent_mass(Mass tyre);
const Source& equivalent_mass_source();
const Source& tyre_inertia_source();

// The same wheel cast in another metal, by density alone: the least it could weigh. Real wheels in
// light metals are thicker.
enum class Metal { steel, cast_aluminium, forged_aluminium, magnesium };
double kilograms_a_cubic_metre(Metal metal);
Mass wheel_in(Mass wheel, Metal from, Metal to);
const Source& density_source();

}  // namespace treadwater::car
