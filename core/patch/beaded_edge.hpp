// Pressures for beaded-edge (clincher) tyres, held on the rim by pressure alone.
//
//   1909  a pressure for each section, 3.5 to 5.5 in, straight lines between (trade paper; the
//         smallest size is blank in the copy read and follows from its text).
//   1921  a pressure for a load on each section, from a car maker's table of cable cord tyres; the
//         columns were parsed from a run-on line, and whether beaded or straight-sided is not said.
//         Straight lines between its loads; a section between two rows goes by the smaller one.
//   now   at least 60 psi on a car (trade pages); up to 65 psi is common practice, with no source.
// They disagree: the band covers all that apply, and the high end is the one to use. A tyre made
// today is lighter: its maker's table comes first. An 820x120 is said to carry 585 lb at 75 psi or
// 300 kg at 60 psi, where 1921 printed 610 kg at 70. Range: cars; sections 88 to 160 mm. Outside,
// or above the highest load of 1921, nothing.
#pragma once

#include <optional>

#include "core/quantity/quantity.hpp"
#include "core/standard/source.hpp"

namespace treadwater::patch {

enum class Wheels { single, twin };

struct PressureBand {
  GaugePressure low;
  GaugePressure high;
};

// The minimum pressure for driving on a car's: the low end of the band, at the highest load of 1921
// if the load is higher or not a number; 60 psi for a section in none of the tables.
struct LeastPressure {
  GaugePressure pressure;
  const Source* from;  // what it comes from
};
LeastPressure beaded_edge_least(Length section, Mass axle_load);

std::optional<GaugePressure> beaded_edge_1909(Length section);
std::optional<GaugePressure> beaded_edge_1921(Length section, Mass axle_load, Wheels wheels);
std::optional<PressureBand> beaded_edge_pressure(Length section, Mass axle_load, Wheels wheels);

// The lowest load quoted for a tyre of this section made today; for 120 mm only.
std::optional<Mass> beaded_edge_load_today(Length section);

// Motorcycles of about 1913: 32 to 40 psi.
PressureBand beaded_edge_motorcycle();
// A narrower section is in no car table: it may be a motorcycle's.
inline constexpr Length narrowest_of_cars = millimetres(88.0);

// Straight-sided cord tyres of 1921, by the car's mass from 40 hundredweight: 55, 60 from 45, 65
// above 55.
std::optional<GaugePressure> straight_side_1921(Mass car);

// The diameter over the beads: overall less two sections.
constexpr Length beaded_edge_rim(Length overall_diameter, Length section) {
  return overall_diameter - 2.0 * section;
}

const Source& beaded_edge_1909_source();
const Source& beaded_edge_1921_source();
const Source& beaded_edge_least_source();
const Source& beaded_edge_practice_source();
const Source& beaded_edge_today_source();
const Source& beaded_edge_motorcycle_source();

}  // namespace treadwater::patch
