// The room `json`: the only one that knows JSON. Two functions, text in and text out.
//
//   describe()             what the sheets are and ask for
//   answer(sheet, input)   the answer to one filled sheet; input is a JSON object of field -> value
//
// A value may be a text ("33 psi"), a number (read in the field's first unit), true or false, or
// null (as if not given). Anything else is a problem that names the field. Nothing throws or
// aborts; bad JSON is an answer with a problem. No NaN or infinity is ever written. docs/library.md
// shows both.
#pragma once

#include <string>
#include <string_view>

#include "core/answer/sheets.hpp"

namespace treadwater::json {

std::string describe();
std::string answer(std::string_view sheet, std::string_view input);

// The same with some of the sheets. The others are described by their names alone, with
// "elsewhere": true.
std::string describe(answer::Sheets sheets);
std::string answer(answer::Sheets sheets, std::string_view sheet, std::string_view input,
                   Progress progress = nullptr);

}  // namespace treadwater::json
