// Small things with text that every room needs.
#pragma once

#include <initializer_list>
#include <string>
#include <string_view>

namespace treadwater {

// The parts one after another. Sentences are built with it: a chain of + makes several times as
// much machine code, and the page's module has a budget.
std::string joined(std::initializer_list<std::string_view> parts);

// Adds an item to a list in words: "a, b, c".
void add_item(std::string& list, std::string_view item, std::string_view separator = ", ");

constexpr bool is_digit(char c) { return c >= '0' && c <= '9'; }

// Text safe to repeat inside a sentence: in quotation marks, control characters and broken UTF-8
// out, cut at 40 characters.
std::string in_quotes(std::string_view text);

// White space of every common kind off both ends, and the inner kinds turned into plain spaces.
std::string plain_spaces(std::string_view text);

}  // namespace treadwater
