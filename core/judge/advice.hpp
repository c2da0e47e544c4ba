// What the checks use besides formulas and tables: advice, practice and our own choices, each with
// its source.
#pragma once

#include "core/standard/source.hpp"

namespace treadwater::judge::advice {

inline constexpr Source hot_reading{
    "hot-reading", "Car handbooks and tyre makers: a hot tyre reads 20 to 40 kPa high",
    "never let air out of a hot tyre", "", Standing::secondary};
inline constexpr Source deep_water{
    "deep-water", "Motoring club and environment agency advice on flood water",
    "do not enter more than 10 cm, or moving water", "", Standing::secondary};
inline constexpr Source thin_film{
    "thin-film", "Dunlap et al., Transportation Research Record 584",
    "traction falls at depths well below those needed for hydroplaning", "1976",
    Standing::published};
inline constexpr Source wet_braking{
    "wet-braking", "The Highway Code: stopping distances at least double on a wet road",
    "rule 126 and its notes, as reported", "", Standing::secondary};
inline constexpr Source low_tread{
    "tread-3mm", "Comparative wet braking tests of 3 mm and 1.6 mm tread",
    "about a quarter longer from 50 mph at 1.6 mm", "2003", Standing::secondary};
inline constexpr Source temporary_spare{
    "spare-speed", "Temporary spares: one at a time, 80 km/h, 420 kPa (UN R64)",
    "as printed in handbooks and on sidewalls", "", Standing::secondary};
inline constexpr Source winter_tread{"tread-winter-4mm", "Advice for winter tyres: 4 mm",
                                     "not seen in print", "", Standing::memory};
inline constexpr Source base_pressure{"base-speed", "Base pressures hold to 160 km/h",
                                      "Crolla (ed.), Automotive Engineering, p. 291", "2009",
                                      Standing::secondary};
inline constexpr Source spare_on_board{
    "spare-on-board", "The spare: pressure, age and size",
    "handbooks: check it with the others; six and ten years count for it too", "",
    Standing::common_practice};
inline constexpr Source placard_first{
    "placard-first", "The pressure on the vehicle's placard comes first",
    "handbooks and tyre makers' advice", "", Standing::common_practice};
inline constexpr Source size_change{
    "fitment-change", "How much another size may change",
    "3 % of the circumference and 5 mm want a word, 6 % and 30 mm are too "
    "much: our choice",
    "2026", Standing::common_practice};
inline constexpr Source rim_width{"rim-width",
                                  "How far a rim may differ from the one a size belongs to",
                                  "an inch wants the maker's word, two are too much: our choice",
                                  "2026", Standing::common_practice};
inline constexpr Source who_decides{
    "fitment-approval", "Other sizes: approval, insurer, a qualified fitter",
    "local law and the car maker's list come first", "", Standing::common_practice};
inline constexpr Source roadside{"roadside-stop", "Where to stop and how to change a wheel",
                                 "car handbooks and road codes, in our words", "",
                                 Standing::common_practice};
inline constexpr Source when_it_floats{
    "when-it-floats", "Road codes on aquaplaning",
    "ease off the accelerator, steer straight, do not brake hard", "", Standing::secondary};
inline constexpr Source tread_differences{
    "wear-rotation", "Tread of the four tyres: differences worth acting on",
    "1.5 mm across an axle, deeper tread to the rear", "", Standing::common_practice};
inline constexpr Source stage_plan{
    "stage-plan", "Dynamic programming with recourse at each halt",
    "Treadwater's own model; CVaR after Rockafellar and Uryasev, 2002", "2026",
    Standing::common_practice};
inline constexpr Source officials{"stage-officials", "Whether a stage runs, and at what speed",
                                  "the event's officials and rules decide", "",
                                  Standing::common_practice};
inline constexpr Source own_notes{"stage-own-notes", "The crew's own notes",
                                  "given here; they count before ours", "",
                                  Standing::common_practice};

}  // namespace treadwater::judge::advice
