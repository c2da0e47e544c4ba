// Symbols: SN skid number, SN0 at zero speed, PNG percentage normalised gradient, MTD mean texture
// depth, BPN British pendulum number; F60, Sp the friction and the speed constant of the index.
#include "core/grip/skid.hpp"

#include <algorithm>
#include <cmath>

namespace treadwater::grip {
namespace {

constexpr Length least_texture = millimetres(0.1);
constexpr double slip_under_anti_lock = 0.2;

}  // namespace

double skid_number(double at_zero_speed, double gradient, Speed speed) {
  return at_zero_speed * std::exp(-gradient * in_miles_per_hour(speed) / 100.0);
}

double skid_number_at_zero_speed(double number, double gradient, Speed speed) {
  return skid_number(number, -gradient, speed);
}

double skid_gradient(Length texture) { return 0.157 * std::pow(in_inches(texture), -0.47); }

double skid_number_from_pendulum(double pendulum_number) { return 1.32 * pendulum_number - 34.9; }

Length sand_patch_texture(double cubic_inches, Length patch_diameter) {
  constexpr double pi = 3.14159265358979323846;
  const double d = in_inches(patch_diameter);
  return inches(4.0 * cubic_inches / (pi * d * d));
}

double index_friction(double at_60, double speed_constant, Speed slip) {
  return at_60 * std::exp((60.0 - in_kilometres_per_hour(slip)) / speed_constant);
}

double speed_constant_from_profile(Length mean_profile_depth) {
  return 14.2 + 89.7 * in_millimetres(mean_profile_depth);
}

double speed_constant_from_sand_patch(Length texture) {
  return -11.6 + 113.6 * in_millimetres(texture);
}

Length estimated_sand_patch(Length mean_profile_depth) {
  return millimetres(0.2) + 0.8 * mean_profile_depth;
}

Length estimated_profile(Length texture) {
  return std::max(millimetres(0.0), (texture - millimetres(0.2)) / 0.8);
}

TextureShare texture_share(Length texture, Speed speed) {
  if (texture >= usual_texture) return {1.0, 1.0};
  const Length depth = std::max(texture, least_texture);
  const double by_number = std::exp((skid_gradient(usual_texture) - skid_gradient(depth)) *
                                    in_miles_per_hour(speed) / 100.0);
  const double slip = slip_under_anti_lock * in_kilometres_per_hour(speed);
  const double by_index =
      std::exp(slip / speed_constant_from_profile(estimated_profile(usual_texture)) -
               slip / speed_constant_from_profile(estimated_profile(depth)));
  return {std::min(by_number, by_index), std::max(by_number, by_index)};
}

}  // namespace treadwater::grip
