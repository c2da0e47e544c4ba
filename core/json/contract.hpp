// The room `json`: the only one that knows JSON. Text in and text out.
//
//   describe(language)          the sheets and their fields
//   answer(sheet, input)        the answer to one filled-in sheet; input is a JSON object of
//                               field -> value, "language" among them
//   learn(language, catalogue)  before either: a JSON object of English sentence -> translation
//                               (core/words/catalogue.hpp), made from the PO files in
//                               web/languages
//
// A value may be text ("33 psi"), a number (in the field's first unit), true or false, or null (as
// if not given). Anything else is a problem that names the field. Nothing throws or aborts; bad
// JSON is an answer with a problem. No NaN or infinity is ever written. docs/library.md has
// examples.
#pragma once

#include <string>
#include <string_view>

#include "core/sheets/sheets.hpp"

namespace treadwater::json {

std::string describe(std::string_view language = {});
std::string answer(std::string_view sheet, std::string_view input);
// False if the catalogue is not a JSON object; nothing is stored then.
bool learn(std::string_view language, std::string_view catalogue);

// The same with some of the sheets. The others are described by name only, with "elsewhere": true.
std::string describe(sheets::Sheets sheets, std::string_view language = {});
std::string answer(sheets::Sheets sheets, std::string_view sheet, std::string_view input,
                   Progress progress = nullptr);

}  // namespace treadwater::json
