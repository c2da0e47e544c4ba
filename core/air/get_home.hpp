// How far, and how fast, without the tyre one set out on.
//
// Each way keeps the lower of what is printed, and half of what is only said; the maker's handbook,
// the sidewall of the spare and the label of the kit come first, where they say less. Sources and
// standing: see get_home.cpp. Range: cars and light vans. Bends, potholes, heat and load all
// shorten these distances; only the load is reckoned with.
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
  Speed speed;                            // hold to it; zero: stop now
  std::optional<Length> distance;         // to count on; a temporary spare has no limit in print
  std::optional<Length> claimed;          // the furthest that anybody prints or says
  std::optional<GaugePressure> pressure;  // to be set, or kept up by itself
  int at_once;                            // how many wheels of a car may be so
  Phrase words;
  const Source* source;
};

// Load on that wheel against the tyre's rating. Self-supporting tyres are proved at 65 % of it:
// from there up the distance shrinks in proportion (ours). Above 1, or where it is no number,
// the tyre is overloaded: speed and distance are zero.
GetHome get_home(Way way, double share_of_rated_load);

// The largest hole a kit is said to close.
inline constexpr Length sealable_hole = millimetres(6.0);

const Source& run_flat_load_source();

}  // namespace treadwater::air
