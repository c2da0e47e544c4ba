// Advice that several sheets give, with where it comes from.
#pragma once

#include "core/standard/source.hpp"

namespace treadwater::answer {

const Source& tread_advice();        // 3 mm
const Source& deep_water_advice();   // 10 cm, or moving water
const Source& thin_film_advice();    // grip lost long before a tyre floats
const Source& wet_braking_advice();  // stopping distances at least double
const Source& hot_reading_advice();  // a hot tyre reads 20 to 40 kPa high

}  // namespace treadwater::answer
