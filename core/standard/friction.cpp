#include "core/standard/friction.hpp"

namespace treadwater::standard {
namespace {

constexpr Source noon{"friction-noon", "R. Noon, Engineering Analysis of Vehicular Accidents",
                      "average friction by surface, read as quoted", "1994", Standing::secondary};
constexpr Source trade{"friction-trade", "A tyre wholesaler's article on tyre adhesion",
                       "dry and wet by surface; where its figures come from is not said", "",
                       Standing::secondary};
constexpr Source kentucky{
    "friction-kentucky", "Kentucky Transportation Research Program, report 178",
    "clean dry pavement 0.6 to 0.8, whatever its texture", "", Standing::published};
constexpr Source wong{"friction-wong", "J. Y. Wong, Theory of Ground Vehicles",
                      "table 1.3, peak values, read as quoted", "", Standing::secondary};
constexpr Source wong_more{"friction-wong-more", "J. Y. Wong, Theory of Ground Vehicles",
                           "table 1.3, sliding values, gravel, snow and ice, not seen in print", "",
                           Standing::memory};
constexpr Source fricke{"friction-fricke", "Traffic Accident Investigation Manual, topic 862",
                        "sliding, under 30 mph; table not seen in print", "", Standing::memory};
constexpr Source handbook_ice{
    "friction-black-ice", "Automotive Handbook, static friction of tyres",
    "black ice 0.1 and less, printed for 50 km/h; attribution from memory", "",
    Standing::secondary};
constexpr Source ice_by_cold{"friction-ice-cold", "Ice near 0 °C and at -20 °C, polished snow",
                             "as commonly quoted", "", Standing::memory};
constexpr Source choice{"friction-choice", "Treadwater's own cautious figures for grass",
                        "no other source for dry grass", "2026", Standing::common_practice};

constexpr FrictionSurface surfaces[] = {
    {"asphalt", Phrase("Asphalt, ordinary"), Ground::paved, "asphalt", 1.0},
    {"smooth", Phrase("Asphalt, smooth or polished"), Ground::paved, "smooth", 0.9},
    {"concrete", Phrase("Concrete"), Ground::paved, "concrete", 1.0},
    {"surface-dressing", Phrase("Surface dressing (chippings)"), Ground::paved, "surface-dressing",
     1.0},
    {"porous", Phrase("Porous (open-graded) asphalt"), Ground::paved, "porous", 1.0},
    {"cobbles", Phrase("Cobbles, setts"), Ground::paved, "smooth", 0.75},
    {"gravel-loose", Phrase("Gravel, loose"), Ground::loose, "", 0.0},
    {"gravel-packed", Phrase("Gravel, packed"), Ground::loose, "", 0.0},
    {"earth", Phrase("Earth"), Ground::loose, "", 0.0},
    {"grass", Phrase("Grass"), Ground::loose, "", 0.0},
    {"snow", Phrase("Packed snow"), Ground::snow, "", 0.0},
    {"ice", Phrase("Ice near 0 °C, black ice"), Ground::ice, "", 0.0},
    {"ice-cold", Phrase("Ice, well below freezing"), Ground::ice, "", 0.0},
};

constexpr bool dry = false;
constexpr bool wet = true;
constexpr FrictionRow rows[] = {
    {"asphalt", dry, 0.6, 0.8, &kentucky},
    {"asphalt", dry, 0.65, 0.65, &noon},
    {"asphalt", wet, 0.50, 0.50, &noon},
    {"asphalt", dry, 0.70, 0.80, &trade},
    {"asphalt", wet, 0.45, 0.55, &trade},
    {"asphalt", dry, 0.8, 0.9, &wong},
    {"asphalt", wet, 0.5, 0.7, &wong},
    {"asphalt", dry, 0.75, 0.75, &wong_more},
    {"asphalt", wet, 0.45, 0.6, &wong_more},
    {"asphalt", dry, 0.80, 1.20, &fricke},  // new
    {"asphalt", wet, 0.50, 0.80, &fricke},
    {"asphalt", dry, 0.60, 0.80, &fricke},  // travelled
    {"asphalt", wet, 0.45, 0.70, &fricke},
    {"smooth", dry, 0.55, 0.75, &fricke},
    {"smooth", wet, 0.45, 0.65, &fricke},
    {"concrete", dry, 0.6, 0.8, &kentucky},
    {"concrete", dry, 0.75, 0.75, &noon},
    {"concrete", wet, 0.60, 0.60, &noon},
    {"concrete", dry, 0.80, 0.90, &trade},
    {"concrete", wet, 0.50, 0.60, &trade},
    {"concrete", dry, 0.8, 0.9, &wong},
    {"concrete", wet, 0.8, 0.8, &wong},
    {"concrete", dry, 0.75, 0.75, &wong_more},
    {"concrete", wet, 0.7, 0.7, &wong_more},
    {"gravel-loose", dry, 0.35, 0.35, &noon},
    {"gravel-loose", dry, 0.40, 0.70, &fricke},
    {"gravel-loose", wet, 0.45, 0.75, &fricke},
    {"gravel-packed", dry, 0.60, 0.70, &trade},  // crushed stone
    {"gravel-packed", wet, 0.40, 0.50, &trade},
    {"gravel-packed", dry, 0.55, 0.60, &wong_more},
    {"gravel-packed", dry, 0.55, 0.85, &fricke},
    {"gravel-packed", wet, 0.40, 0.80, &fricke},
    {"earth", dry, 0.35, 0.35, &noon},
    {"earth", wet, 0.60, 0.65, &noon},  // loose and moist, wheels sinking 5 cm
    {"earth", dry, 0.50, 0.60, &trade},
    {"earth", wet, 0.15, 0.25, &trade},
    {"earth", dry, 0.68, 0.68, &wong},
    {"earth", wet, 0.55, 0.55, &wong},
    {"earth", dry, 0.65, 0.65, &wong_more},
    {"earth", wet, 0.4, 0.5, &wong_more},
    {"grass", dry, 0.30, 0.45, &choice},
    {"grass", wet, 0.15, 0.30, &choice},
    {"grass", wet, 0.20, 0.20, &noon},
    {"snow", dry, 0.20, 0.25, &noon},
    {"snow", dry, 0.25, 0.35, &trade},  // rolled
    {"snow", dry, 0.15, 0.2, &wong_more},
    {"snow", dry, 0.30, 0.55, &fricke},
    {"snow", wet, 0.30, 0.60, &fricke},
    {"snow", dry, 0.20, 0.35, &ice_by_cold},  // polished
    {"ice", dry, 0.05, 0.10, &ice_by_cold},
    {"ice", dry, 0.05, 0.10, &handbook_ice},
    {"ice", wet, 0.05, 0.10, &fricke},
    {"ice-cold", dry, 0.10, 0.15, &noon},
    {"ice-cold", dry, 0.05, 0.15, &trade},
    {"ice-cold", dry, 0.07, 0.1, &wong_more},
    {"ice-cold", dry, 0.10, 0.25, &fricke},
    {"ice-cold", dry, 0.15, 0.25, &ice_by_cold},
};

}  // namespace

Rows<FrictionSurface> friction_surfaces() { return {std::begin(surfaces), std::end(surfaces)}; }

const FrictionSurface* find_friction_surface(std::string_view id) {
  for (const FrictionSurface& surface : friction_surfaces())
    if (surface.id == id) return &surface;
  return nullptr;
}

Rows<FrictionRow> friction_rows() { return {std::begin(rows), std::end(rows)}; }

}  // namespace treadwater::standard
