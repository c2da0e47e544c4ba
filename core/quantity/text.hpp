// Small things with text that every room needs.
#pragma once

#include <cstddef>
#include <initializer_list>
#include <string>
#include <string_view>

namespace treadwater {

// A sentence with its gaps filled: filled("# on a tyre rated for #.", {"430 kg", "400 kg"}). Each #
// takes the next value; one too many takes nothing. Sentences are built with it: whole, as a reader
// meets them, so that they can be said in another language (language.hpp), and in a fraction of the
// machine code that a chain of + makes. Values that are phrases are said in it too.
std::string filled(std::string_view sentence, std::initializer_list<std::string_view> values);

// The parts one after another.
std::string joined(std::initializer_list<std::string_view> parts);

// Adds an item to a list in words: "a, b, c".
void add_item(std::string& list, std::string_view item, std::string_view separator = ", ");

// Length in bytes of the well-formed UTF-8 character at the front of a text that is not empty; 0
// where it is broken.
std::size_t utf8_length(std::string_view text);

constexpr bool is_digit(char c) { return c >= '0' && c <= '9'; }

// "cut slick" in the language spoken, as a sentence begins: "Cut slick". A letter beyond ASCII
// stays as it is.
std::string at_head(std::string_view phrase);

// Text safe to repeat inside a sentence: in quotation marks, control characters and broken UTF-8
// out, cut at 40 characters.
std::string in_quotes(std::string_view text);

// White space of every common kind off both ends, and the inner kinds turned into plain spaces.
std::string plain_spaces(std::string_view text);

}  // namespace treadwater
