#include "core/patch/inclined.hpp"

#include <algorithm>
#include <cmath>

namespace treadwater::patch {
namespace {

double between(double degrees, double at_two, double at_four) {
  return degrees <= 2.0 ? 1.0 + (at_two - 1.0) * degrees / 2.0
                        : at_two + (at_four - at_two) * (degrees - 2.0) / 2.0;
}

}  // namespace

std::optional<CamberShares> camber_shares(double degrees) {
  const double tilt = std::fabs(degrees);
  if (!(tilt <= 4.0)) return std::nullopt;
  CamberShares shares;
  shares.stiffness = between(tilt, 0.945, 0.935);
  shares.length = between(tilt, 4.76 / 4.06, 5.38 / 4.06);
  shares.width = between(tilt, 8.28 / 8.25, 7.84 / 8.25);
  shares.area = between(tilt, 32.2 / 30.9, 29.4 / 30.9);
  // Only the values at 4 degrees are known: a straight line from upright.
  shares.area_low = 1.0 - 0.12 * tilt / 4.0;
  shares.area_high = std::max(shares.area, 1.0 + 0.01 * tilt / 4.0);
  return shares;
}

}  // namespace treadwater::patch
