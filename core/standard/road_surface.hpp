// Road surfaces and the depth of their texture (sand patch, mean texture depth).
//
// The depth is the cautious end of what is printed for the surface; each row cites its source.
// Range: paved surfaces. Loose ones have no texture in this sense: `paved` is false, and a model
// fitted on pavement must say that it is outside its range.
#pragma once

#include <iterator>
#include <string_view>

#include "core/quantity/quantity.hpp"
#include "core/standard/source.hpp"
#include "core/words/phrase.hpp"

namespace treadwater::standard {

struct RoadSurface {
  std::string_view id;
  Phrase label;
  Length texture;
  bool paved;
  Source source;
};

struct RoadSurfaces {
  const RoadSurface* first;
  const RoadSurface* last;
  const RoadSurface* begin() const { return first; }
  const RoadSurface* end() const { return last; }
};

RoadSurfaces road_surfaces();
const RoadSurface* find_road_surface(std::string_view id);  // null where there is none

}  // namespace treadwater::standard
