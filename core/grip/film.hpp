// Loss of grip to water on a paved road for old or hard tyres, by depth, tread and speed: thin-film
// (viscous) loss first, long before a tyre aquaplanes, then more and more as water builds up under
// the tread. Modern tyres follow stop_law.hpp.
//
// A handbook prints static friction on good concrete or tarmac for a new tyre and one worn to 1.6
// mm, at 50, 90 and 130 km/h, dry and in 0.2, 1 and 2 mm of water. It describes older tyres. Modern
// ones braked far better in published tests, most of all when new. So the share of dry grip that
// water leaves has
//   low      the handbook's wet figures over its dry one (a new tyre's: no credit for worn rubber
//            in the dry), in straight lines between; a film under 0.1 mm counts double, one of 0.1
//            to 0.2 mm as 0.2; between 1.6 and 8 mm of tread most of the gain comes late (15 % of
//            it at 3 mm); below 1.6 mm it falls to 0.4 of the worn figure, where nothing was
//            measured
//   high     (1 - d) (1 - film/1 mm (V / 100 km/h)^2 / c), fitted over the braking tests: d 0.02
//            new and 0.2 at 1.6 mm, reached at 0.2 mm of film, c 16 and 4 (2 at least); 60 % of
//            the gain between 1.6 and 8 mm is there at 3 mm
//   central  half-way between them in ratio: the square root of their product
//
// Range: 0 to 130 km/h, film 0 to 2 mm, tread 0 to 8 mm. Beyond that, the lines are extended and
// end at zero; tread over 8 mm counts as 8, speed over 300 km/h as 300. Below 50 km/h they run to
// the thin-film figure at rest. Aquaplaning is for the room `water`: above its onset no share here
// can be trusted. A negative film, speed or tread, or NaN, leaves nothing.
#pragma once

#include "core/quantity/quantity.hpp"
#include "core/standard/source.hpp"

namespace treadwater::grip {

struct FrictionBand {
  double low = 0.0;
  double central = 0.0;
  double high = 0.0;
};

// The square root of their product; zero where low is.
double half_way(double low, double high);

// The handbook's own table: new at 8 mm, worn at 1.6, straight lines between printed cells.
double handbook_friction(Speed speed, Length tread, Length film);
inline constexpr Source handbook_source{
    "grip-handbook", "Automotive Handbook, static friction of tyres on good concrete or tarmac",
    "figures read once, their columns placed and the book named from memory", "",
    Standing::secondary};

// The share of its dry grip that a tyre keeps.
FrictionBand share_kept(Speed speed, Length tread, Length film);
inline constexpr Source film_share_source{
    "grip-film", "Treadwater's own band for grip lost to water (docs/method.md)",
    "low from the handbook, high over the braking tests; no outside source", "2026",
    Standing::common_practice};
// 80 and 120 km/h, 1 mm of water, tread 8, 3 and 1.6 mm.
inline constexpr Source braking_test_source{
    "grip-braking-test", "A tyre maker's press release of 30 September 2019 on a magazine's test",
    "stops from 80 and 120 km/h in the wet, new, 3 mm and 1.6 mm; depth of water from a second "
    "text",
    "2019", Standing::secondary};

}  // namespace treadwater::grip
