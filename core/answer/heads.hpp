// What the sheets are called, in the order in which they are offered. The page's first module holds
// one sheet and knows the others by these only.
#pragma once

#include "core/answer/sheet.hpp"

namespace treadwater::answer::heads {

inline constexpr SheetHead tyre_check{
    "tyre-check", "Check one tyre",
    "From what the sidewall, a gauge and a ruler say: is this tyre fit for its load and the water, "
    "and how fast before which limit bites?"};

inline constexpr SheetHead standing_water{"standing-water", "Standing water",
                                          "How deep is it, by a ruler or from the rain, and how "
                                          "fast may each kind of tyre come through?"};

inline constexpr SheetHead car_check{"car-check", "Check a whole car",
                                     "Four corners and a spare: is each tyre fit, do they belong "
                                     "together, and which one sets the speed?"};

inline constexpr SheetHead cold_pressure{
    "cold-pressure", "Set the pressure",
    "What pressure do this load and speed need, and what is a reading worth that was taken hot, in "
    "another place or on another day?"};

inline constexpr SheetHead fitment{
    "fitment", "Another size",
    "Other tyres or wheels on the same car: what changes, and is it enough?"};

inline constexpr SheetHead stopping{"stopping", "Stopping and bends",
                                    "How long is a stop on the road that is there, how fast may I "
                                    "go for what I can see, and what does the bend hold?"};

inline constexpr SheetHead puncture{"puncture", "A soft tyre",
                                    "It is losing air: how long have I got, may it be repaired, "
                                    "and how far do I get on what I have?"};

inline constexpr SheetHead stage_tyres{
    "stage-tyres", "Tyres for the stages",
    "Which set goes on now, and at each halt if it is then dry, damp or wet? What does that cost, "
    "and what would change it?",
    true};

inline constexpr SheetHead field_list{
    "field-list", "A whole field",
    "A list of tyres before a start: which are fit, which are not, and how fast may all of them go "
    "through this water?",
    true, 1024 * 1024};

inline constexpr SheetHead wear_log{
    "wear-log", "Keep a wear log",
    "From tread readings on several days: how fast does each tyre wear, and when is it due?"};

inline constexpr const SheetHead* all[] = {&tyre_check, &standing_water, &car_check, &cold_pressure,
                                           &fitment,    &stopping,       &puncture,  &stage_tyres,
                                           &field_list, &wear_log};

}  // namespace treadwater::answer::heads
