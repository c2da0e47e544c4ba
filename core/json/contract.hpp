// The room `json`: the only one that knows JSON. Text in and text out.
//
//   describe(language)          what the sheets are and ask for
//   answer(sheet, input)        the answer to one filled sheet; input is a JSON object of field ->
//                               value, and "language" is one of them
//   learn(language, catalogue)  before either: a JSON object of English sentence -> its counterpart
//                               (core/quantity/language.hpp); web/languages holds some
//
// A value may be a text ("33 psi"), a number (read in the field's first unit), true or false, or
// null (as if not given). Anything else is a problem that names the field. Nothing throws or
// aborts; bad JSON is an answer with a problem. No NaN or infinity is ever written. docs/library.md
// shows both.
#pragma once

#include <string>
#include <string_view>

#include "core/sheets/sheets.hpp"

namespace treadwater::json {

std::string describe(std::string_view language = {});
std::string answer(std::string_view sheet, std::string_view input);
// False where the catalogue is no JSON object; nothing is kept then.
bool learn(std::string_view language, std::string_view catalogue);

// The same with some of the sheets. The others are described by their names alone, with
// "elsewhere": true.
std::string describe(sheets::Sheets sheets, std::string_view language = {});
std::string answer(sheets::Sheets sheets, std::string_view sheet, std::string_view input,
                   Progress progress = nullptr);

}  // namespace treadwater::json
