// Advice that several sheets give, with where it comes from.
#pragma once

#include <optional>

#include "core/answer/sheet.hpp"
#include "core/patch/rating.hpp"
#include "core/quantity/write.hpp"
#include "core/standard/source.hpp"

namespace treadwater::answer {

const Source& tread_advice();  // 3 mm
std::optional<Caution> caution_of_low_tread(Length tread, UnitSystem units);
const Source& deep_water_advice();   // 10 cm, or moving water
const Source& thin_film_advice();    // grip lost long before a tyre floats
const Source& wet_braking_advice();  // stopping distances at least double
const Source& hot_reading_advice();  // a hot tyre reads 20 to 40 kPa high

// Of a load that was worked out from the size.
std::optional<Caution> caution_of_load_worked_out(const patch::GreatestLoad& load,
                                                  UnitSystem units);
// Where the load is within the tyre's rating, and above what is left of it at that speed.
Caution caution_of_overload_at_speed(Speed speed, Mass load, Mass carried,
                                     standard::Vehicle vehicle, UnitSystem units);
Sources sources_of_load_at_speed(standard::Vehicle vehicle);
// Of a beaded edge too narrow for the tables of cars, which was judged as a car's.
std::optional<Caution> caution_of_narrow_beaded_edge(const sidewall::Reading& tyre,
                                                     UnitSystem units);
// Of marks such as NHS.
std::optional<Caution> caution_of_road_use(const sidewall::Reading& tyre, Level level);

}  // namespace treadwater::answer
