// May this hole be repaired? By the British standard as summarised, and by the American trade's
// rule.
//
// A hole in the middle band of the tread (60 % of the section width up to 155 mm, 65 % up to 200
// mm, 70 % above), no more than 6 mm across once it has been cleaned out; in the United States
// between the outer grooves and no more than 1/4 in. Never in a shoulder, a sidewall or a bead. BS
// AU 159g itself was not seen: these are its limits as the trade body prints them. A quarter inch
// is taken as 6 mm, 2/32 in of tread as 1.6 mm.
//
// The best answer here is "may be repaired": only a fitter who has taken the tyre off its rim and
// looked inside can say more.
// Range: radial tyres of cars and light vans. Lorry, motorcycle and cross-ply tyres have limits of
// their own. Anything that is not a number counts against repair.
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "core/quantity/quantity.hpp"
#include "core/standard/source.hpp"
#include "core/standard/speed_symbol.hpp"
#include "core/words/phrase.hpp"

namespace treadwater::air {

enum class Place { tread, shoulder, sidewall, bead };

struct Damage {
  Place place = Place::tread;
  Length from_centre;  // of the hole's middle from the middle of the tread, either side
  Length hole;         // greatest width, after cleaning out
  Length section_width;
  Length tread;  // the least left
  bool driven_flat = false;
  bool self_supporting = false;
  bool sealant_used = false;
  bool cords_or_cracks = false;  // visible cord, a bulge, cracks, an old repair that has failed
  int earlier_repairs = 0;
  std::optional<bool> between_outer_grooves;
  std::optional<double> age_years;
  std::optional<standard::SpeedSymbol> symbol;
};

enum class Verdict { may, ask, no };

struct Reason {
  std::string_view id;
  Verdict verdict;
  bool british;
  bool american;
  Phrase text;
  const Source* source;
};

struct Repair {
  Verdict british = Verdict::may;
  Verdict american = Verdict::may;
  std::vector<const Reason*> reasons;  // all that apply; how to repair comes last
};

Repair repair(const Damage& damage);

// The whole width T of the repairable band.
Length repairable_width(Length section_width);

inline constexpr Length repairable_hole = millimetres(6.0);

const Source& repair_source();
const Source& american_repair_source();

}  // namespace treadwater::air
