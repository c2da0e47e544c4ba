// The charts and the map of the sheet `standing-water`: the worst tyre of the field in its water.
#pragma once

#include <optional>

#include "core/judge/crossing.hpp"
#include "core/sheets/answer.hpp"

namespace treadwater::sheets::standing_water {

Chart onset_by_depth(const judge::TyreThrough& worst, const judge::WaterAcross& water,
                     UnitSystem units);
// Nothing if no tyre of its kind aquaplanes in it at road speeds.
std::optional<Chart> chance_by_speed(const judge::TyreThrough& worst, std::optional<Speed> intended,
                                     UnitSystem units);
Map tread_against_water(const judge::TyreThrough& worst, const judge::WaterAcross& water,
                        UnitSystem units);

}  // namespace treadwater::sheets::standing_water
