// From a sidewall to what the tyre is rated for: its greatest load, its speed symbol, and the laws
// of load against pressure that apply to its family.
//
// Sources: those of the load index, the speed symbol and load_capacity.hpp. Range: what the text
// says; what it does not say is nothing, never a guess. A P-metric size without a load index is
// worked out by the equation of its standard, and says so. Where two laws could hold, or one is
// known from memory only, both are given and the one that asks for more pressure rules.
#pragma once

#include <optional>

#include "core/patch/beaded_edge.hpp"
#include "core/patch/load_capacity.hpp"
#include "core/sidewall/sidewall.hpp"
#include "core/standard/load_adjustment.hpp"

namespace treadwater::patch {

struct Laws {
  LoadLaw law;
  // P-metric: the European law with the same reference pressure. Tyres with their pressure moulded
  // on: the straight line. It asks for more, and the larger rules.
  std::optional<LoadLaw> second;
};

// The load index against the P-metric equation for the size, at the standard pressure. Standard
// tyres of 50 common sizes lie at 0.99 to 1.08, extra-load ones of 30 at 1.11 to 1.19, high-load
// ones some tenth above those. Nothing outside car tyres of series 50 to 80.
enum class IndexFits { standard, extra_load, no_tyre };
std::optional<IndexFits> index_fits(const sidewall::Reading& tyre);
const Source& index_fits_source();

// Nothing where the pressure that the load rating belongs to is not in the text: then it stands
// beside the load on the tyre.
std::optional<Laws> laws_of(const sidewall::Reading& tyre);

struct GreatestLoad {
  Mass mass;
  int index = 0;
  bool worked_out = false;  // from the dimensions, for want of an index
  bool marked = false;      // MAX LOAD on the sidewall is less than the index's, and rules
};
std::optional<GreatestLoad> greatest_load(const sidewall::Reading& tyre);

// The service description's, or the letter in the size.
std::optional<standard::SpeedSymbol> speed_symbol(const sidewall::Reading& tyre);

// No tyre of this kind is set to less, or driven on with less, whatever it carries: the least of
// the laws, and for a beaded edge its own by the load on the wheel (marked M/C: of motor cycles).
LeastPressure least_pressure_of(const sidewall::Reading& tyre, std::optional<Mass> load);

// Whose table of load against speed it goes by.
standard::Vehicle vehicle_of(const sidewall::Reading& tyre);

}  // namespace treadwater::patch
