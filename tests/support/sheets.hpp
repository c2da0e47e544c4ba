// Asks a sheet straight, without JSON.
#pragma once

#include <optional>

#include "core/sheets/sheets.hpp"

namespace treadwater::testing {

inline sheets::Answer ask_sheet(std::string_view id, const sheets::Input& input) {
  return sheets::find_sheet(sheets::all_sheets(), id)->answer(input);
}
inline sheets::Answer tyre_check(const sheets::Input& input) {
  return ask_sheet("tyre-check", input);
}
inline sheets::Answer stopping(const sheets::Input& input) { return ask_sheet("stopping", input); }
inline sheets::Answer field_list(const sheets::Input& input) {
  return ask_sheet("field-list", input);
}

// The maximum speed; above every number if nothing limits it below the road's own limit; nothing if
// none is known.
inline std::optional<Speed> told_speed(const sheets::Answer& answer) {
  if (answer.hold_to) return answer.hold_to->speed;
  const bool unfit = answer.verdict && answer.verdict->level == sheets::Level::unfit;
  if (answer.no_limit || (unfit && !answer.limits.empty())) return kilometres_per_hour(1e9);
  return std::nullopt;
}

}  // namespace treadwater::testing
