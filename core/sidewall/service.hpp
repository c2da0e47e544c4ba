// The service description: load index, perhaps a second one for twins, and the speed symbol.
//
// Form: UN R30 2.28 and 2.29, UN R54 2.27 and 2.28 (known second-hand); both `91V` and `91 V` are
// seen, twins with `/` or `-`, brackets on ZR sizes. Indices from 25 up are accepted: none below
// that (less than 100 kg) is known on a road tyre, and 11 R 22.5 or 20 R 24 would look like one.
#pragma once

#include <cstddef>
#include <cstdint>

#include "core/sidewall/text.hpp"
#include "core/standard/load_index.hpp"
#include "core/standard/speed_symbol.hpp"

namespace treadwater::sidewall {

// A stretch of the Text; empty if there is none.
struct Span {
  std::uint16_t begin = 0;
  std::uint16_t end = 0;
  constexpr Span() = default;
  constexpr Span(std::size_t from, std::size_t to)
      : begin(static_cast<std::uint16_t>(from)), end(static_cast<std::uint16_t>(to)) {}
  constexpr bool there() const { return end > begin; }
};

inline constexpr int least_load_index = 25;

struct Service {
  int load_index = -1;
  int twin = -1;
  standard::SpeedSymbol symbol{};
  bool bracketed = false;
  Span index_span;
  Span twin_span;
  Span symbol_span;
};

enum class ServiceState { absent, read, no_such_symbol, no_such_index };

struct ServiceRead {
  ServiceState state = ServiceState::absent;
  std::size_t end = nowhere;
  bool touching = false;  // no space between the index and the symbol
  Service service;
};

ServiceRead read_service(const Text& text, std::size_t i);

// Where 91 or 154/150 with no speed symbol after it ends; `nowhere` if there is none at `i`.
std::size_t bare_index_end(const Text& text, std::size_t i);

}  // namespace treadwater::sidewall
