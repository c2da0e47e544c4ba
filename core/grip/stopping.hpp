// Stopping at a given friction, and the rules of thumb that drivers are taught.
//
// Grade is rise over run, uphill positive. "Will not stop" (a downhill grade as steep as the
// friction, or no friction at all) is an answer, not an error: the optional is empty. NaN gives an
// empty answer too.
#pragma once

#include <optional>

#include "core/quantity/quantity.hpp"
#include "core/standard/source.hpp"

namespace treadwater::grip {

// What gravity and the brakes take off the speed, m/s^2: g (mu cos th + sin th), th = atan(grade).
// Zero or less: the car does not stop.
double deceleration(double friction, double grade);

// d = v^2 / (2 g (mu cos th + sin th)).
std::optional<Length> braking_distance(Speed speed, double friction, double grade);

// Reaction and braking.
std::optional<Length> stopping_distance(Speed speed, Duration reaction, double friction,
                                        double grade);

// Speed left if the car needs `needed` to stop and has only `room`: v sqrt(1 - room / needed). Zero
// if the room is enough.
Speed speed_left(Speed speed, Length room, Length needed);

// The inverse: the highest speed from which the car stops within what the driver can see. Zero if
// nothing is seen.
std::optional<Speed> speed_to_stop_within(Length seen, Duration reaction, double friction,
                                          double grade);

inline constexpr Source stopping_source{"grip-stopping", "Mechanics: d = v^2 / (2 g (mu + grade))",
                                        "exact in the angle of the road", "", Standing::secondary};

// Reaction to something unexpected: the median driver's, and that of nine drivers in ten. Slow ones
// take up to 2.7 s.
inline constexpr Duration median_reaction = seconds(0.9);
inline constexpr Duration cautious_reaction = seconds(2.5);
inline constexpr Source reaction_source{
    "grip-reaction", "Reaction times of drivers as collected by an accident analyst",
    "median 0.90 s, slow up to 2.7 s, 2.5 s covers about 90 %", "", Standing::secondary};

// A rule's two parts.
struct RuleDistance {
  Length thinking;
  Length braking;
  Length total() const { return thinking + braking; }
};

// United Kingdom, Highway Code rule 126: thinking V ft, braking V^2/20 ft, V in mph. A car on a dry
// road. The printed total is the sum of the two parts, each rounded to a metre. At least double in
// the wet, ten times on ice.
RuleDistance highway_code(Speed speed);
inline constexpr double highway_code_wet = 2.0;
inline constexpr double highway_code_ice = 10.0;
inline constexpr Source highway_code_source{
    "grip-highway-code", "The Highway Code (United Kingdom), rule 126",
    "typical stopping distances and the two-second gap; read in texts that print the rule", "",
    Standing::secondary};

// German driving schools: reaction 3 V/10, braking (V/10)^2, half of that for full braking; m,
// km/h.
enum class Braking { normal, full };
RuleDistance driving_school(Speed speed, Braking braking);
inline constexpr Source driving_school_source{
    "grip-driving-school", "German driving-school rule for reaction and braking distance",
    "read in teaching texts", "", Standing::secondary};

// AASHTO stopping sight distance, before its rounding up: an alert driver's 2.5 s and a
// comfortable 11.2 ft/s^2 (3.4 m/s^2). US form 1.47 V t + 1.075 V^2/a (mph, ft); metric form
// 0.278 V t + 0.039 V^2/a (km/h, m), of which the factors are from memory; on a grade the braking
// term is V^2 / (254 (a/9.81 + G)). Empty if the grade leaves no deceleration.
Length sight_distance_us(Speed speed);
Length sight_distance_metric(Speed speed);
std::optional<Length> sight_distance_on_grade(Speed speed, double grade);
inline constexpr Source sight_distance_source{
    "grip-sight-distance", "AASHTO stopping sight distance",
    "US form and constants as printed by a state road authority; metric factors from memory", "",
    Standing::secondary};

// Gap to the vehicle in front: two seconds, doubled in the wet, ten times on snow or ice.
enum class GapRoad { dry, wet, ice };
Duration following_time(GapRoad road);
Length following_gap(Speed speed, GapRoad road);

}  // namespace treadwater::grip
