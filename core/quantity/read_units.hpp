// The units that people write, and what one of each is in the stored unit of its dimension.
#pragma once

#include <optional>
#include <string_view>

#include "core/quantity/read.hpp"

namespace treadwater {

// A unit as people write it (lower case, no spaces) and what one of it is in the stored unit of its
// dimension: stored = number * scale + offset.
struct Unit {
  std::string_view spelling;
  Dimension dimension;
  double scale;
  double offset = 0.0;
};

std::optional<Unit> find_unit(std::string_view spelling);

}  // namespace treadwater
