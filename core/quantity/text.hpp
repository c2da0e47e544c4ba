// Small text functions that every room needs.
#pragma once

#include <cstddef>
#include <cstdint>
#include <initializer_list>
#include <string>
#include <string_view>

namespace treadwater {

// The parts one after another.
std::string joined(std::initializer_list<std::string_view> parts);

// Adds an item to a list in words: "a, b, c".
void add_item(std::string& list, std::string_view item, std::string_view separator = ", ");

// FNV-1a.
constexpr std::uint32_t hash_of(std::string_view text) {
  std::uint32_t sum = 2166136261U;
  for (char c : text) sum = (sum ^ static_cast<unsigned char>(c)) * 16777619U;
  return sum;
}

// Length in bytes of the well-formed UTF-8 character at the front of a non-empty text; 0 if it is
// invalid.
std::size_t utf8_length(std::string_view text);

constexpr bool is_digit(char c) { return c >= '0' && c <= '9'; }

// Removes white space of every common kind from both ends, and turns the rest into plain spaces.
std::string plain_spaces(std::string_view text);

}  // namespace treadwater
