// Speed symbols: the letter after the load index, and the speed it stands for.
//
// Source: the category symbols of UN R30 and UN R54, as found: see speed_symbol.cpp, each row.
// Range: A1..A8, B..G, J..N, P..U, H, V, W, Y. There is no I, O or X; H is between U and V. Outside
// the range find_speed_symbol returns nothing.
#pragma once

#include <optional>
#include <string_view>

#include "core/quantity/quantity.hpp"
#include "core/standard/source.hpp"

namespace treadwater::standard {

enum class SpeedSymbol {
  A1,
  A2,
  A3,
  A4,
  A5,
  A6,
  A7,
  A8,
  B,
  C,
  D,
  E,
  F,
  G,
  J,
  K,
  L,
  M,
  N,
  P,
  Q,
  R,
  S,
  T,
  U,
  H,
  V,
  W,
  Y,
  ZR,  // in a size, without a service description: above 240 km/h, no ceiling known
  VR,  // old, in a size: above 210 km/h
};

struct SpeedSymbolRow {
  SpeedSymbol symbol;
  std::string_view letters;  // "A1", "H", "ZR"
  Speed speed;               // maximum speed; for ZR and VR the speed certainly allowed
  Standing standing;
};

// The row of a symbol; every enumerator has one.
const SpeedSymbolRow& speed_row(SpeedSymbol symbol);

// "V" -> V. Case as moulded (upper). Nothing for letters that are not a symbol.
std::optional<SpeedSymbol> find_speed_symbol(std::string_view letters);

const Source& speed_symbol_source();

}  // namespace treadwater::standard
