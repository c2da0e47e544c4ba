// The minimum legal tread on a light vehicle, by place, and the deeper one required of a winter
// tyre in winter. Data in tread_law.cpp, each row with its clause.
//
// Range: cars, and goods vehicles and trailers to 3500 kg. Heavier vehicles, motorcycles and mopeds
// have other rules and are not in this table. "elsewhere" is a rule of caution, not a law.
#pragma once

#include <optional>
#include <string_view>

#include "core/quantity/quantity.hpp"
#include "core/standard/source.hpp"
#include "core/words/phrase.hpp"

namespace treadwater::standard {

struct MonthDay {
  int month;
  int day;
};

struct WinterRule {
  Length least_radial;
  Length least_cross_ply;
  MonthDay from;
  MonthDay to;
  bool only_in_winter_conditions;   // the road, not the calendar alone, decides
  bool else_counts_as_summer_tyre;  // below the depth it may still serve as a summer tyre
  bool any_tyre;                    // required of every tyre in season, not only of winter tyres
  Phrase words;
};

struct TreadLaw {
  std::string_view id;  // "GB"
  Phrase place;         // "Great Britain"
  Length least;
  Phrase where_measured;
  bool in_the_middle;  // of the tread; otherwise its shoulders count too
  Source source;
  std::optional<WinterRule> winter;
  std::optional<Source> winter_source;
};

struct TreadLaws {
  const TreadLaw* first;
  const TreadLaw* last;
  const TreadLaw* begin() const { return first; }
  const TreadLaw* end() const { return last; }
};

TreadLaws tread_laws();
const TreadLaw* find_tread_law(std::string_view id);  // null where there is none

// Is the day inside the rule's season? Seasons run over the new year.
bool in_season(const WinterRule& rule, MonthDay day);

}  // namespace treadwater::standard
