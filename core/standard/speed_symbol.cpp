#include "core/standard/speed_symbol.hpp"

namespace treadwater::standard {
namespace {

constexpr Source source{"speed-symbol", "Speed category symbols (UN R30, UN R54)",
                        "read in handbooks and reports of the rule; clause not seen", "",
                        Standing::secondary};

constexpr SpeedSymbolRow row(SpeedSymbol symbol, std::string_view letters, double kmh,
                             Standing standing = Standing::secondary) {
  return {symbol, letters, kilometres_per_hour(kmh), standing};
}

// F to Y, A8 and B: read in several public handbooks and pages of UN R54. A1 to A7, C, D, E and VR:
// from memory. One public list prints K 109, L 121 and Q 159, which are roundings through mph.
constexpr SpeedSymbolRow rows[] = {
    row(SpeedSymbol::A1, "A1", 5, Standing::memory),
    row(SpeedSymbol::A2, "A2", 10, Standing::memory),
    row(SpeedSymbol::A3, "A3", 15, Standing::memory),
    row(SpeedSymbol::A4, "A4", 20, Standing::memory),
    row(SpeedSymbol::A5, "A5", 25, Standing::memory),
    row(SpeedSymbol::A6, "A6", 30, Standing::memory),
    row(SpeedSymbol::A7, "A7", 35, Standing::memory),
    row(SpeedSymbol::A8, "A8", 40),
    row(SpeedSymbol::B, "B", 50),
    row(SpeedSymbol::C, "C", 60, Standing::memory),
    row(SpeedSymbol::D, "D", 65, Standing::memory),
    row(SpeedSymbol::E, "E", 70, Standing::memory),
    row(SpeedSymbol::F, "F", 80),
    row(SpeedSymbol::G, "G", 90),
    row(SpeedSymbol::J, "J", 100),
    row(SpeedSymbol::K, "K", 110),
    row(SpeedSymbol::L, "L", 120),
    row(SpeedSymbol::M, "M", 130),
    row(SpeedSymbol::N, "N", 140),
    row(SpeedSymbol::P, "P", 150),
    row(SpeedSymbol::Q, "Q", 160),
    row(SpeedSymbol::R, "R", 170),
    row(SpeedSymbol::S, "S", 180),
    row(SpeedSymbol::T, "T", 190),
    row(SpeedSymbol::U, "U", 200),
    row(SpeedSymbol::H, "H", 210),
    row(SpeedSymbol::V, "V", 240),
    row(SpeedSymbol::W, "W", 270),
    row(SpeedSymbol::Y, "Y", 300),
    row(SpeedSymbol::ZR, "ZR", 240),
    row(SpeedSymbol::VR, "VR", 210, Standing::memory),
};

}  // namespace

const SpeedSymbolRow& speed_row(SpeedSymbol symbol) {
  for (const SpeedSymbolRow& r : rows)
    if (r.symbol == symbol) return r;
  return rows[0];  // the slowest: reached only if an enumerator had no row
}

std::optional<SpeedSymbol> find_speed_symbol(std::string_view letters) {
  for (const SpeedSymbolRow& r : rows)
    if (r.letters == letters) return r.symbol;
  return std::nullopt;
}

const Source& speed_symbol_source() { return source; }

}  // namespace treadwater::standard
