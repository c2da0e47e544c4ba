// The positions of a car's wheels, and what every sheet calls them.
#pragma once

#include <string_view>

#include "core/words/phrase.hpp"

namespace treadwater::car {

enum class Corner { front_left, front_right, rear_left, rear_right };

struct CornerRow {
  Corner corner;
  std::string_view id;  // part of links: never renamed
  Phrase name;
};
// In the order of Corner.
inline constexpr CornerRow corners[] = {
    {Corner::front_left, "front-left", Phrase("Front left")},
    {Corner::front_right, "front-right", Phrase("Front right")},
    {Corner::rear_left, "rear-left", Phrase("Rear left")},
    {Corner::rear_right, "rear-right", Phrase("Rear right")},
};

constexpr Phrase name_of(Corner corner) { return corners[static_cast<int>(corner)].name; }

}  // namespace treadwater::car
