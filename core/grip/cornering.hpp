// Cornering at a given side friction, and what is left for the brakes in a bend.
//
// Bank is the tangent of the road's fall towards the inside of the bend; a road that falls outwards
// has a negative one. The car is a point: no roll, no weight transfer, and a tall vehicle may tip
// over before it slides. NaN gives an empty answer or nothing left.
#pragma once

#include <optional>

#include "core/quantity/quantity.hpp"
#include "core/standard/source.hpp"

namespace treadwater::grip {

// Radius of an arc from a chord and the greatest distance between the two: c^2/(8 s) + s/2. Empty
// where there is no such arc (no sagitta is a straight road).
std::optional<Length> radius_from_chord(Length chord, Length sagitta);

// v = sqrt(g R (mu + e) / (1 - mu e)). Zero if the bank throws the car outwards harder than the
// friction holds it; empty if no speed is too high (a wall of death) or an input is not a number.
std::optional<Speed> corner_speed(Length radius, double side_friction, double bank);

// V = sqrt(127 R (mu + e)), km/h and m: the same without the denominator, as road books print it.
std::optional<Speed> corner_speed_simple(Length radius, double side_friction, double bank);

inline constexpr Source cornering_source{
    "grip-cornering", "Mechanics: v^2 = g R (mu + e) / (1 - mu e)", "", "", Standing::secondary};

// Radius that road designers give a bend: V^2 / (15 (e + f)) ft, mph; V^2 / (127 (e + f)) m, km/h.
Length design_radius_us(Speed speed, double side_friction, double bank);
Length design_radius_metric(Speed speed, double side_friction, double bank);

// Side friction that passengers find comfortable, AASHTO, printed for 20 to 70 mph; constant
// beyond. It is not grip: tyres have far more on a dry road, less on ice.
double comfortable_side_friction(Speed speed);
inline constexpr Source comfort_source{
    "grip-comfort", "AASHTO design side friction, as printed in a highway engineering handbook",
    "table 2.6, 20 to 70 mph", "", Standing::secondary};
// The highest speed at which a bend needs no more than that. Zero if there is none.
Speed comfortable_corner_speed(Length radius, double bank);

// Side friction that a bend needs at this speed; below zero the car would slide inwards. Infinite
// for a radius of zero or less, and for a bend that throws the car off its bank whatever the
// friction.
double side_demand(Speed speed, Length radius, double bank);

// Friction left for braking while the bend needs `demand`, on an ellipse through the two peaks:
// mu_x sqrt(1 - (demand / mu_y)^2). Nothing if the bend needs all of it.
double braking_left(double brake_friction, double side_friction, double demand);
inline constexpr Source ellipse_source{"grip-ellipse", "Friction ellipse",
                                       "common model of braking and cornering together", "",
                                       Standing::common_practice};

// Side peak over braking peak of a published 205/60 R15 tyre data set, 0.8784 / 1.0422.
inline constexpr double side_share = 0.8784 / 1.0422;
inline constexpr Source side_share_source{
    "grip-side-share", "205/60 R15 tyre data set in a public simulator",
    "peak factors PDY1 0.8784 and PDX1 1.0422", "", Standing::secondary};

}  // namespace treadwater::grip
