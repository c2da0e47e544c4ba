// Drawings to scale are shown beside a bank card: ISO/IEC 7810 ID-1.
#pragma once

#include "core/sheets/answer.hpp"

namespace treadwater::sheets::payment_card {

inline constexpr double width = 85.60;  // mm
inline constexpr double height = 53.98;
inline constexpr double radius = 3.18;

inline Box at(double x, double y) {
  return {x, y, width, height, radius, "scale", Phrase("Payment card")};
}

// A contact patch of that size, with corners rounded by a fifth.
inline Box contact_patch(double x, double y, double wide, double high, std::string_view role,
                         Text label) {
  return {x, y, wide, high, (wide < high ? wide : high) * 0.2, role, std::move(label)};
}

}  // namespace treadwater::sheets::payment_card
