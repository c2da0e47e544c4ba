// Reads lines of {"sheet": ..., "input": {...}} and prints one answer a line, so that the same
// inputs can be put to the native core and to the WebAssembly (parity.test.mjs).
#include <iostream>
#include <nlohmann/json.hpp>
#include <string>

#include "core/json/contract.hpp"

int main() {
  std::ios::sync_with_stdio(false);
  std::cout << treadwater::json::describe() << '\n';
  for (std::string line; std::getline(std::cin, line);) {
    const auto asked = nlohmann::ordered_json::parse(line, nullptr, false);
    if (!asked.is_object() || !asked.contains("sheet") || !asked["sheet"].is_string()) return 1;
    std::cout << treadwater::json::answer(asked["sheet"].get<std::string>(), asked["input"].dump())
              << '\n';
  }
}
