// Friction of tyres by surface, as printed: each surface, and each table's figures for it.
//
// Friction is braking force over load, a plain number. If a table prints one figure, low and high
// are the same. None of them names the tyre, its tread or the depth of water; most are for below 50
// km/h, some for a locked wheel. Sources disagree: nothing here is averaged or left out for that
// reason.
//
// Paved surfaces refer to a road_surface for their texture and are given as a share of good
// concrete or tarmac, for which a table by speed, tread and water is printed (core/grip/film.hpp).
// The shares are our choice, with caution. Unpaved ground has only these rows.
#pragma once

#include <iterator>
#include <string_view>

#include "core/quantity/quantity.hpp"
#include "core/standard/source.hpp"
#include "core/words/phrase.hpp"

namespace treadwater::standard {

enum class Ground { paved, loose, snow, ice };

struct FrictionSurface {
  std::string_view id;
  Phrase label;
  Ground ground;
  std::string_view road_surface;  // paved: the surface whose texture it has
  double share;                   // paved: of the friction of good concrete or tarmac
};

struct FrictionRow {
  std::string_view surface;
  bool wet;
  double low;
  double high;
  const Source* source;
};

template <class Row>
struct Rows {
  const Row* first;
  const Row* last;
  const Row* begin() const { return first; }
  const Row* end() const { return last; }
};

Rows<FrictionSurface> friction_surfaces();                          // asphalt first
const FrictionSurface* find_friction_surface(std::string_view id);  // null where there is none

Rows<FrictionRow> friction_rows();

}  // namespace treadwater::standard
