// The sheet `cold-pressure`: the pressure that this load and speed need, and what a reading taken
// hot, in another place or on another day is worth.
#pragma once

#include "core/answer/sheet.hpp"

namespace treadwater::answer {

const SheetDescription& cold_pressure_sheet();
Answer cold_pressure(const Input& input);
Sources cold_pressure_sources();

}  // namespace treadwater::answer
