#include "core/water/measured.hpp"

namespace treadwater::water {
namespace {

constexpr Source maker_test{"measured-a",
                            "A tyre maker's test in 8 mm of water, reported by reifenpresse.de",
                            "new, 3 mm and 1.6 mm of tread", "2020", Standing::secondary};
constexpr Source club_test{
    "measured-b", "A motoring club's tests in 7 mm of water, reported by fatmobilityreport.de",
    "8 mm of tread; narrow tyres", "", Standing::secondary};
constexpr Source inspectorate{"measured-g", "DEKRA road safety, advice on aquaplaning",
                              "over 3 mm, and 1.6 mm, in a few millimetres of water", "2018",
                              Standing::published};
constexpr Source consumers{"measured-h", "Consumer Reports, light-truck tyres",
                           "9.5 mm (3/8 in) of water", "2011", Standing::published};
constexpr Source clearing_test{
    "groove-clearing", "A tyre maker's measurement of water cleared, reported by reifenpresse.de",
    "205/55 R16, 9 mm of water, 80 km/h: 1, 0.80, 0.55 at 8, 3, 1.6 mm", "2017",
    Standing::secondary};

constexpr MeasuredOnset row(std::string_view id, double tread_mm, double film_mm, double low_kmh,
                            double high_kmh, std::string_view remark, const Source& source,
                            std::optional<Length> width = std::nullopt) {
  return {id,
          millimetres(tread_mm),
          millimetres(film_mm),
          kilometres_per_hour(low_kmh),
          kilometres_per_hour(high_kmh),
          width,
          remark,
          source};
}

constexpr MeasuredOnset rows[] = {
    row("A1", 8.0, 8.0, 86.0, 86.0, "new", maker_test, millimetres(205.0)),
    row("A2", 3.0, 8.0, 66.9, 66.9, "just under 67", maker_test, millimetres(205.0)),
    row("A3", 1.6, 8.0, 48.0, 48.5, "printed 48.5 and 48", maker_test, millimetres(205.0)),
    row("B1", 8.0, 7.0, 75.0, 85.0, "about 75 to 85", club_test),
    row("B2", 8.0, 7.0, 90.0, 90.0, "155 mm wide: can exceed 90", club_test, millimetres(155.0)),
    row("G1", 3.0, 3.0, 80.0, 80.0, "over 3 mm, a few mm of water: from 80", inspectorate),
    row("G2", 1.6, 3.0, 65.0, 70.0, "a few mm of water", inspectorate),
    row("H1", 8.0, 9.525, 74.0, 92.0, "46 to 57 mph, full tread", consumers),
};

double line(double x, double x0, double y0, double x1, double y1) {
  return y0 + (y1 - y0) * (x - x0) / (x1 - x0);
}

}  // namespace

MeasuredOnsets measured_onsets() { return {std::begin(rows), std::end(rows)}; }

double clearing(Length grooves, double bare) {
  const double mm = in_millimetres(grooves);
  if (!(mm > 0.0)) return bare;
  if (mm < 1.6) return line(mm, 0.0, bare, 1.6, clearing_at_1_6_mm);
  if (mm < 3.0) return line(mm, 1.6, clearing_at_1_6_mm, 3.0, 0.80);
  if (mm < 8.0) return line(mm, 3.0, 0.80, 8.0, 1.0);
  return 1.0;
}

const Source& clearing_source() { return clearing_test; }

}  // namespace treadwater::water
