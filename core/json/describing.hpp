// A sheet's form as JSON.
#pragma once

#include "core/json/writing.hpp"
#include "core/sheets/sheets.hpp"

namespace treadwater::json {

// One that is not among `sheets` is described by name only, with "elsewhere": true.
Json sheet_json(sheets::Sheets sheets, const sheets::SheetHead& head);
Json way_json(const sheets::Way& way);

}  // namespace treadwater::json
