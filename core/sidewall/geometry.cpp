#include "core/sidewall/sidewall.hpp"

namespace treadwater::sidewall {

// D = d + 2 S a / 100: UN R30, 2.17 to 2.20. D overall diameter, d rim diameter, S nominal section
// width, a nominal aspect ratio in per cent.
std::optional<Length> overall_diameter(const Reading& reading) {
  if (reading.stated_outer_diameter) return reading.stated_outer_diameter;
  if (!reading.section_width || !reading.aspect_percent || !reading.rim_diameter) {
    return std::nullopt;
  }
  return *reading.rim_diameter + 2.0 * *reading.aspect_percent / 100.0 * *reading.section_width;
}

}  // namespace treadwater::sidewall
