#include "core/air/repair.hpp"

#include <algorithm>
#include <cmath>

#include "core/standard/instrument.hpp"

namespace treadwater::air {
namespace {

constexpr Source british{"repair-gb", "BS AU 159g, repair of tyres, as the trade body prints it",
                         "middle 60, 65 or 70 % of the section, 6 mm at most", "2013",
                         Standing::secondary};
constexpr Source american{"repair-us", "US tyre makers' and fitters' repair rule, as quoted",
                          "1/4 in, between the outer grooves, 2/32 in of tread, plug and patch", "",
                          Standing::secondary};
constexpr Source count{"repair-count", "Fitters' pages: V and above, one repair only",
                       "attributed to BS AU 159; issue not stated", "", Standing::secondary};
constexpr Source age{"repair-age",
                     "Consumer advice quoting NHTSA: some car makers six years, some tyre makers "
                     "ten at most",
                     "the spare included", "2013", Standing::secondary};
constexpr Source maker{"repair-maker", "Ask the tyre maker after sealant or on a run-flat tyre",
                       "handbooks and fitters' pages", "", Standing::secondary};

struct Rule {
  Reason reason;
  bool (*applies)(const Damage&);
};

double off_centre_mm(const Damage& d) { return std::abs(in_millimetres(d.from_centre)); }
double half_band_mm(const Damage& d) {
  return in_millimetres(repairable_width(d.section_width)) / 2.0;
}
bool in_band(const Damage& d, double to_spare_mm) {
  return off_centre_mm(d) + to_spare_mm <= half_band_mm(d);
}
bool one_repair_only(standard::SpeedSymbol symbol) { return symbol >= standard::SpeedSymbol::V; }

constexpr Rule rules[] = {
    {{"place", Verdict::no, true, true,
      Phrase("The hole is outside the tread. A shoulder, a sidewall or a bead is never repaired."),
      &british},
     [](const Damage& d) { return d.place != Place::tread; }},
    {{"outside_band", Verdict::no, true, false,
      Phrase("The hole lies outside the middle band of the tread that may be repaired."), &british},
     [](const Damage& d) { return d.place == Place::tread && !in_band(d, 0.0); }},
    {{"edge_of_band", Verdict::ask, true, false,
      Phrase(
          "The hole lies at the edge of the band that may be repaired. A fitter must measure it."),
      &british},
     [](const Damage& d) {
       return d.place == Place::tread && in_band(d, 0.0) &&
              !in_band(d, in_millimetres(d.hole / 2.0 + standard::ruler_error));
     }},
    {{"outer_groove", Verdict::no, false, true,
      Phrase("The hole lies outside the outer grooves of the tread."), &american},
     [](const Damage& d) { return d.between_outer_grooves == false; }},
    {{"which_groove", Verdict::ask, false, true,
      Phrase("See whether the hole lies between the two outer grooves."), &american},
     [](const Damage& d) { return !d.between_outer_grooves && d.place == Place::tread; }},
    {{"hole", Verdict::no, true, true, Phrase("The hole is wider than 6 mm."), &british},
     [](const Damage& d) { return !(d.hole >= metres(0.0) && d.hole <= repairable_hole); }},
    {{"tread", Verdict::no, true, true, Phrase("The tread is under 1.6 mm: the tyre is worn out."),
      &british},
     [](const Damage& d) { return !(d.tread >= millimetres(1.6)); }},
    {{"driven_flat", Verdict::no, true, true,
      Phrase("It was driven flat. That crushes the inside of the sidewall, where nobody sees it."),
      &british},
     [](const Damage& d) { return d.driven_flat; }},
    {{"cords_or_cracks", Verdict::no, true, true,
      Phrase("Cord in sight, a bulge, cracks or a failed repair: the tyre is past repair."),
      &british},
     [](const Damage& d) { return d.cords_or_cracks; }},
    {{"self_supporting", Verdict::ask, true, true,
      Phrase("A run-flat tyre: its maker says whether it may be repaired."), &maker},
     [](const Damage& d) { return d.self_supporting; }},
    {{"sealant", Verdict::ask, true, true,
      Phrase("Sealant is inside. Tell the fitter; the maker may refuse a repair."), &maker},
     [](const Damage& d) { return d.sealant_used; }},
    {{"too_old", Verdict::no, true, true, Phrase("The tyre is ten years old or more."), &age},
     [](const Damage& d) { return d.age_years && !(*d.age_years < 10.0); }},
    {{"old", Verdict::ask, true, true,
      Phrase("The tyre is over six years old. Is it worth a repair?"), &age},
     [](const Damage& d) { return d.age_years && *d.age_years >= 6.0 && *d.age_years < 10.0; }},
    {{"second_repair", Verdict::no, true, false,
      Phrase("A tyre of speed symbol V and above is repaired once only."), &count},
     [](const Damage& d) {
       return d.earlier_repairs > 0 && d.symbol && one_repair_only(*d.symbol);
     }},
    {{"earlier_repair", Verdict::ask, true, true,
      Phrase(
          "It has been repaired before. Repairs must not touch, and V and above allows one only."),
      &american},
     [](const Damage& d) { return d.earlier_repairs > 0; }},
    {{"method", Verdict::may, true, true,
      Phrase("A fitter must take it off the rim, look inside, and plug and patch it from within. A "
             "plug "
             "alone, a patch alone or a tube is no repair."),
      &british},
     [](const Damage&) { return true; }},
};

}  // namespace

Repair repair(const Damage& damage) {
  Repair result;
  for (const Rule& rule : rules) {
    if (!rule.applies(damage)) continue;
    const Reason& reason = rule.reason;
    if (reason.british) result.british = std::max(result.british, reason.verdict);
    if (reason.american) result.american = std::max(result.american, reason.verdict);
    result.reasons.push_back(&reason);
  }
  return result;
}

Length repairable_width(Length section_width) {
  return section_width * (section_width <= millimetres(155.0)   ? 0.60
                          : section_width <= millimetres(200.0) ? 0.65
                                                                : 0.70);
}

const Source& repair_source() { return british; }
const Source& american_repair_source() { return american; }

}  // namespace treadwater::air
