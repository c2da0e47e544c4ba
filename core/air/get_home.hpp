// How far and how fast after a puncture.
//
// Each way takes the lower of the printed figures, and half of an unprinted one; the maker's
// handbook, the spare's sidewall and the kit's label come first if they say less. Sources and
// standing: see get_home.cpp. Range: cars and light vans. Bends, potholes, heat and load all
// shorten these distances; only the load is taken into account.
#pragma once

#include <optional>
#include <string_view>

#include "core/quantity/quantity.hpp"
#include "core/standard/source.hpp"
#include "core/words/phrase.hpp"

namespace treadwater::air {

enum class Way {
  self_supporting,  // run-flat sidewalls, RF in the size; without air
  lubricated,       // early run-flat with lubricant inside, whose vapour keeps it off the rim
  temporary_spare,  // T before the size
  sealant_kit,      // hole in the tread, 6 mm at most
  plain_flat,       // no air, no help: stop now
};

struct GetHome {
  std::string_view id;
  Speed speed;                            // maximum; zero: stop now
  std::optional<Length> distance;         // to rely on; no limit is printed for a temporary spare
  std::optional<Length> claimed;          // the furthest printed or claimed
  std::optional<GaugePressure> pressure;  // to be set, or kept up by the tyre itself
  int at_once;                            // how many wheels of a car may be so
  Phrase words;
  const Source* source;
};

// Load on that wheel against the tyre's rating. Self-supporting tyres are tested at 65 % of it:
// above that the distance shrinks in proportion (ours). Above 1, or if it is not a number, the tyre
// is overloaded: speed and distance are zero.
GetHome get_home(Way way, double share_of_rated_load);

// The largest hole that kits are said to seal.
inline constexpr Length sealable_hole = millimetres(6.0);

const Source& run_flat_load_source();

}  // namespace treadwater::air
