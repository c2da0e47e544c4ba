// Load index: the number before the speed symbol, and the mass one tyre may carry at it.
//
// Source: the table of UN R30 and UN R54, read second-hand, see load_index.cpp. Range: 0 to 279.
// Outside the range: nothing is returned. Check: eighty steps of the index are a factor of ten (80
// = 450 kg, 160 = 4500 kg).
#pragma once

#include <optional>

#include "core/quantity/quantity.hpp"
#include "core/standard/source.hpp"

namespace treadwater::standard {

inline constexpr int greatest_load_index = 279;

std::optional<Mass> load_of_index(int load_index);

// The index whose mass is nearest; the smaller one if two are equally near.
int nearest_load_index(Mass load);

const Source& load_index_source();

}  // namespace treadwater::standard
