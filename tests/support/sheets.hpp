// Asks a sheet straight, without JSON.
#pragma once

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

}  // namespace treadwater::testing
