// Advice that several sheets give, with where it comes from.
#pragma once

#include <optional>

#include "core/answer/sheet.hpp"
#include "core/quantity/write.hpp"
#include "core/standard/source.hpp"

namespace treadwater::answer {

const Source& tread_advice();  // 3 mm
std::optional<Caution> caution_of_low_tread(Length tread, UnitSystem units);
const Source& deep_water_advice();   // 10 cm, or moving water
const Source& thin_film_advice();    // grip lost long before a tyre floats
const Source& wet_braking_advice();  // stopping distances at least double
const Source& hot_reading_advice();  // a hot tyre reads 20 to 40 kPa high

}  // namespace treadwater::answer
