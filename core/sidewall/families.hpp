// The tables of shapes and families. To add a family: one row in families.cpp, a shape there if
// none fits, and its tests.
//
// A shape is a way of spelling a size; several families share one (205/55 R16 is a car's,
// 120/90-18 a motor cycle's). A family says, from the size and the marks round it, how well it
// fits; the best one wins, and others that fit become candidates.
#pragma once

#include <cstddef>
#include <cstdint>
#include <string_view>

#include "core/sidewall/pattern.hpp"
#include "core/sidewall/service.hpp"
#include "core/sidewall/sidewall.hpp"
#include "core/standard/source.hpp"
#include "core/words/phrase.hpp"

namespace treadwater::sidewall {

enum class Shape : std::uint8_t {
  metric,                  // 205/55 R16
  metric_rim_mm,           // 190/65 HR390
  no_series,               // 165 SR13
  no_series_crossed,       // 165x13
  no_series_rim_mm,        // 165 HR400
  crossed_rim_mm,          // 165x400
  crossed_rim_cm,          // 17x400
  outer_metric,            // 200/580 R15
  outer_dashed,            // 195-620 R420
  flotation,               // 31x10.50 R15
  flotation_slash,         // 31/10.50 R15
  flotation_slashes,       // 32/10/15
  inch,                    // 5.60-15
  inch_pointless,          // 825-20
  inch_crossed,            // 3.50x19
  inch_pointless_crossed,  // 600x16
  inch_fraction,           // 2 1/4-17
  inch_slash,              // 9.2/20.0-13
  us_letter,               // FR78-15
  us_letter_crossed,       // F70x14
  cycle_letter,            // MT90 B16
  outer_mm_crossed,        // 815x105
  outer_in_crossed,        // 30x3 1/2
  loose,                   // 205 55 R16
  compact,                 // 2055516
  count
};

struct ShapeRow {
  Shape shape;
  Shape canonical;  // the shape its canonical text is written in
  bool strong;      // sure enough to count as a second size in one text
  Pattern pattern;
};

const ShapeRow& shape_row(Shape shape);

// What is known of a tyre when its family is chosen.
struct Facts {
  Shape shape = Shape::metric;
  char prefix = 0;         // H(L), L(T), P, S(T), T or 0
  std::int32_t width = 0;  // scaled, mm or inches as the shape has it
  int width_decimals = 0;
  std::int32_t series = 0;  // scaled per cent
  std::int32_t second = 0;  // scaled: the number after the slash or before the x
  int second_decimals = 0;
  std::int32_t rim = 0;   // scaled, code or mm
  char construction = 0;  // R, D, B, -, X or 0
  char size_symbol = 0;
  char letter = 0;  // US load letter, motor-cycle letter
  bool low_section = false;
  bool commercial = false;
  bool camper = false;
  bool light_truck = false;
  bool motorcycle = false;
  bool competition = false;
  bool says_car = false;
  bool says_truck = false;
  int ply = 0;
  char load_range = 0;
  Service service;  // load_index < 0: none

  bool has_service() const { return service.load_index >= 0; }
  bool is_dual() const { return service.twin >= 0; }
  double rim_code() const { return static_cast<double>(rim) / number_scale; }
  double width_number() const { return static_cast<double>(width) / number_scale; }
  double second_number() const { return static_cast<double>(second) / number_scale; }
};

enum class Fit : std::uint8_t { no, possible, likely, sure };

struct FamilyRow {
  Family family;
  Phrase name;
  Fit (*fits)(const Facts&);
  Source source;
};

inline constexpr std::size_t family_count = 19;
const FamilyRow& family_row(std::size_t i);

// Nominal section width of a motor-cycle letter, mm; 0 where the tables disagree.
int cycle_letter_width(char letter);

// A tyre of farm or works machines, which are not read.
bool is_farm_size(const Facts& facts);

// Can a tyre of this size and family not have that load index? Only indices over a car's and a
// van's, from 127 on, are doubted: they need a truck's rim or a truck's volume.
bool is_impossible_index(const Facts& facts, Family family, int load_index);

// What the number after the slash means in a size such as 9.2/20.0-13.
enum class Second : std::uint8_t { series, outer_in, outer_cm, second_width };
Second second_of(const Facts& facts);

}  // namespace treadwater::sidewall
