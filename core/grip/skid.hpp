// Published formulas for wet friction against speed and road texture, each in its own units.
//
// Both describe a standard test tyre on a thin film (0.5 mm nominal); neither takes water depth or
// tread. Range: texture above 0 (sand patch, or mean profile depth where a name says so).
#pragma once

#include "core/quantity/quantity.hpp"
#include "core/standard/source.hpp"

namespace treadwater::grip {

// Skid number: 100 times the friction of a locked test wheel (ASTM E274).
//   SN(V) = SN0 exp(-PNG V / 100), V mph;  PNG = 0.157 MTD^-0.47 per cent a mph, MTD in inches;
//   SN0 = 1.32 BPN - 34.9, BPN the pendulum's number.
// Leu and Henry, 1978. Its worked example in Y. H. Huang, Pavement Analysis and Design, 2004, is
// reproduced; the constant 0.157 itself was not seen in print.
double skid_number(double at_zero_speed, double gradient, Speed speed);
double skid_number_at_zero_speed(double skid_number, double gradient, Speed speed);
double skid_gradient(Length texture);
double skid_number_from_pendulum(double pendulum_number);
Length sand_patch_texture(double cubic_inches, Length patch_diameter);
inline constexpr Source skid_source{
    "grip-skid-number", "Leu and Henry, skid number against speed and texture",
    "as in Huang, Pavement Analysis and Design, problem 9.4; 0.157 from memory", "1978",
    Standing::secondary};

// International friction index (PIARC experiment, Wambold et al., 1995; ASTM E1960):
//   F(S) = F60 exp((60 - S) / Sp), S the slip speed in km/h: all of the speed for a locked wheel,
//   about a fifth of it under anti-lock braking.
//   Sp = 14.2 + 89.7 MPD, MPD mean profile depth in mm;  Sp = -11.6 + 113.6 MTD, MTD sand patch in
//   mm. The second is from memory. MTD is estimated as 0.2 mm + 0.8 MPD (ISO 13473).
double index_friction(double at_60, double speed_constant, Speed slip);
double speed_constant_from_profile(Length mean_profile_depth);
double speed_constant_from_sand_patch(Length texture);
Length estimated_sand_patch(Length mean_profile_depth);
Length estimated_profile(Length texture);  // the inverse; never below 0
inline constexpr Source friction_index_source{
    "grip-friction-index", "International friction index (Wambold et al.; ASTM E1960)",
    "friction against slip speed and profile depth; constants read as quoted", "1995",
    Standing::secondary};

// The share that a road with less texture keeps of the wet friction on one of 0.7 mm, at most 1.
// The two formulas differ: low is the smaller of their answers, high the larger. The index is taken
// at a slip speed of a fifth of the speed. No road is credited with more than 1.
inline constexpr Length usual_texture = millimetres(0.7);
struct TextureShare {
  double low;
  double high;
};
TextureShare texture_share(Length texture, Speed speed);

}  // namespace treadwater::grip
