#include "core/standard/road_surface.hpp"

namespace treadwater::standard {
namespace {

constexpr RoadSurface surfaces[] = {
    {"asphalt",
     Phrase("Asphalt, ordinary"),
     millimetres(0.7),
     true,
     {"texture-asphalt", "Dense asphalt concrete 0.5 to 1.0 mm (PIARC 1987; Sandberg and Ejsmont)",
      "middle of the range", "2002", Standing::secondary}},
    {"smooth",
     Phrase("Asphalt, smooth or polished"),
     millimetres(0.4),
     true,
     {"texture-smooth", "Below the 0.50 mm measured on asphalt concrete (Adv. Radio Sci. 19:165)",
      "a polished road, chosen with caution", "2021", Standing::common_practice}},
    {"concrete",
     Phrase("Concrete"),
     millimetres(0.6),
     true,
     {"texture-concrete", "Specification for the Reinstatement of Openings in Highways",
      "table S2.5", "", Standing::published}},
    {"surface-dressing",
     Phrase("Surface dressing (chippings)"),
     millimetres(1.0),
     true,
     {"texture-dressing", "Specification for the Reinstatement of Openings in Highways",
      "table S2.5", "", Standing::published}},
    {"porous",
     Phrase("Porous (open-graded) asphalt"),
     millimetres(1.5),
     true,
     {"texture-porous", "FDOT Design Guidance, Hydroplaning Risk Analysis", "texture by pavement",
      "", Standing::published}},
    {"loose",
     Phrase("Gravel, earth or grass"),
     millimetres(0.0),
     false,
     {"texture-loose", "No pavement texture; no credit is taken", "", "",
      Standing::common_practice}},
};

}  // namespace

RoadSurfaces road_surfaces() { return {std::begin(surfaces), std::end(surfaces)}; }

const RoadSurface* find_road_surface(std::string_view id) {
  for (const RoadSurface& surface : road_surfaces())
    if (surface.id == id) return &surface;
  return nullptr;
}

}  // namespace treadwater::standard
