// From a sidewall to what the tyre is rated for: its greatest load, its speed symbol, and the laws
// of load against pressure that apply to its family.
//
// Sources: those of the load index, the speed symbol and load_capacity.hpp. Range: what the text
// says; what it does not say is nothing, never a guess. A P-metric size without a load index is
// worked out by the equation of its standard, and says so.
#pragma once

#include <optional>

#include "core/patch/load_capacity.hpp"
#include "core/sidewall/sidewall.hpp"

namespace treadwater::patch {

struct Laws {
  LoadLaw law;
  // P-metric: the European law with the same reference pressure asks for more, and the larger
  // rules.
  std::optional<LoadLaw> second;
};

// Nothing where the pressure that the load rating belongs to is not in the text: then it stands
// beside the load on the tyre.
std::optional<Laws> laws_of(const sidewall::Reading& tyre);

struct GreatestLoad {
  Mass mass;
  int index = 0;
  bool worked_out = false;  // from the dimensions, for want of an index
};
std::optional<GreatestLoad> greatest_load(const sidewall::Reading& tyre);

// The service description's, or the letter in the size.
std::optional<standard::SpeedSymbol> speed_symbol(const sidewall::Reading& tyre);

}  // namespace treadwater::patch
