// Says findings and limits: the one place where each is put into words, from the tables
// judge/findings.inc and judge/limits.inc.
#pragma once

#include <algorithm>

#include "core/judge/finding.hpp"
#include "core/judge/hold_to.hpp"
#include "core/judge/water.hpp"
#include "core/sheets/answer.hpp"

namespace treadwater::sheets {

std::string write(const judge::Value& value, UnitSystem units);

// The month of a day counted from 1 January 1970: "May 2026".
std::string say_month_of(long day);

// A clause for the verdict: "the tread is under the legal minimum".
std::string reason(const judge::Found& found, UnitSystem units);
std::string sentence(const judge::Found& found, UnitSystem units);

std::string label(const judge::Limit& limit, UnitSystem units);
// Its speeds: "74 km/h (59 to 85 km/h)".
std::string speeds(const judge::Limit& limit, UnitSystem units);
std::string why(const judge::Limit& limit, UnitSystem units);
// Of an onset of aquaplaning, whose ends may be none: "about 74 km/h (59 to 85 km/h)".
std::string say_onset(const water::SpeedBand& onset, UnitSystem units);
// "wet road", "water 5 mm": whichever of word and depth is the wetter. Empty if neither was given.
std::string say_water(const judge::RoadWater& water, UnitSystem units);
// To read out: how far to stop from a speed, and the speed for ruts and puddles.
std::string say_stop_aloud(Speed from, Length longest, UnitSystem units);
std::string say_puddles_aloud(const judge::Limit& puddles, UnitSystem units);
// One of its ends as a number: no more than what is told.
constexpr Speed drawn(Speed onset) { return std::min(onset, water::highest_onset_told); }

Caution in_words(const judge::Found& found, UnitSystem units);
Limit in_words(const judge::Limit& limit, UnitSystem units);
HoldTo in_words(const judge::HoldTo& hold, UnitSystem units);
NoLimit in_words(const judge::NoLimit& none, UnitSystem units);

}  // namespace treadwater::sheets
