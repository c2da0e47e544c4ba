// From a sidewall to what the tyre is rated for: its maximum load, its speed symbol, and the
// formulas of load and pressure for its family.
//
// Sources: those of the load index, the speed symbol and load_capacity.hpp. Range: what the text
// says; what it leaves out is nothing, never a guess. A P-metric size without a load index is
// calculated by the equation of its standard, and marked so. If two formulas could apply, or one is
// known from memory only, both are given and the one that needs more pressure counts.
#pragma once

#include <optional>

#include "core/patch/beaded_edge.hpp"
#include "core/patch/load_capacity.hpp"
#include "core/sidewall/sidewall.hpp"
#include "core/standard/load_adjustment.hpp"

namespace treadwater::patch {

struct Laws {
  LoadLaw law;
  // P-metric: the European formula with the same reference pressure. Tyres with their pressure
  // moulded on: the straight line. It needs more, and the higher counts.
  std::optional<LoadLaw> second;
};

// The load index against the P-metric equation for the size, at the standard pressure. Standard
// tyres of 50 common sizes are at 0.99 to 1.08, extra-load ones of 30 at 1.11 to 1.19, high-load
// ones about a tenth above those. Below series 50 both are less by 0.0065 a unit of series: with
// that added, standard ones of 32 more sizes are at 1.00 to 1.07, extra-load ones at 1.12 to 1.19.
// Nothing outside car tyres of series 30 to 80.
enum class IndexFits { standard, extra_load, no_tyre };
std::optional<IndexFits> index_fits(const sidewall::Reading& tyre);
const Source& index_fits_source();

// Nothing if the pressure of the load rating is not in the text: it is then moulded beside the load
// on the tyre.
std::optional<Laws> laws_of(const sidewall::Reading& tyre);

struct GreatestLoad {
  Mass mass;
  int index = 0;
  Mass sure;                 // as `mass`, but not up to a load in the part that is not sure
  bool under_index = false;  // P or LT without MAX LOAD: the last 1.5 % of the index is not sure
  bool near_index = false;   // and the load is in that part: `mass` is the load
  bool worked_out = false;   // from the dimensions, for lack of an index
  bool marked = false;       // MAX LOAD on the sidewall is below the index's, and counts
};
std::optional<GreatestLoad> greatest_load(const sidewall::Reading& tyre,
                                          std::optional<Mass> load = {});
const Source& under_index_source();

// The service description's, or the letter in the size.
std::optional<standard::SpeedSymbol> speed_symbol(const sidewall::Reading& tyre);

// No tyre of this kind is set to less, or driven with less, whatever it carries: the minimum of the
// formulas, and for a beaded edge its own by the load on the wheel (marked M/C: a motorcycle's).
LeastPressure least_pressure_of(const sidewall::Reading& tyre, std::optional<Mass> load);

// Whose table of load against speed applies.
standard::Vehicle vehicle_of(const sidewall::Reading& tyre);

}  // namespace treadwater::patch
