// A fingerprint of a list of numbers: the same only when every bit of every number is.
#pragma once

#include <cstdint>
#include <cstring>
#include <string>
#include <vector>

namespace treadwater::testing {

// FNV-1a, 64 bits, over the bytes of each number, lowest first; in hexadecimal.
inline std::string fingerprint(const std::vector<double>& numbers) {
  std::uint64_t hash = 0xCBF29CE484222325;
  for (const double number : numbers) {
    std::uint64_t bits;
    std::memcpy(&bits, &number, sizeof bits);
    for (int i = 0; i < 64; i += 8) hash = (hash ^ ((bits >> i) & 0xFF)) * 0x100000001B3;
  }
  std::string text(16, '0');
  for (std::size_t i = text.size(); i-- > 0; hash >>= 4) text[i] = "0123456789abcdef"[hash & 15];
  return text;
}

}  // namespace treadwater::testing
