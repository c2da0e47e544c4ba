// What camber does to the contact patch: each figure times its share of the upright one.
//
// Source: prints of one 255/40ZR17 at 30 psi and 1000 lbf, upright, at 2 and at 4 degrees, and the
// stiffness of another at five pressures (measured.hpp); straight lines between. The length grows,
// the width falls only late, and the area at 4 degrees was between 12 % less and 1 % more, least
// under light load at high pressure, when part of the tread leaves the ground.
// Range: 0 to 4 degrees either way; nothing beyond. A cross-ply, with its rounder tread, is said to
// change less (memory; no figure).
#pragma once

#include <optional>

#include "core/quantity/quantity.hpp"

namespace treadwater::patch {

struct CamberShares {
  double stiffness;
  double length;
  double width;
  double area_low;
  double area;
  double area_high;
};

std::optional<CamberShares> camber_shares(double degrees);

}  // namespace treadwater::patch
