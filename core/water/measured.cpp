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

// ---- further tests ----

using enum OnsetEvidence::Says;

constexpr Source adac24{"measured-n01",
                        "A motoring club's winter tyre test, reported by a tyre shop",
                        "205/55 R16, best of the test", "2024", Standing::secondary};
constexpr Source reif25{"measured-n04", "A winter tyre test, reported by interia",
                        "215/55 R17, best of seven", "2025", Standing::secondary};
constexpr Source tm{"measured-n06", "A motoring magazine's test, told by ls24.fi",
                    "summer tyres, good and worn, in 6 mm", "2017", Standing::secondary};
constexpr Source ria{"measured-n08", "A maker's test ground, reported by auto.ria.com",
                     "begins to float", "", Standing::published};
constexpr Source tuv{"stated-n11", "TUEV Sued, told by taxi-heute.de", "threatens in heavy rain",
                     "", Standing::secondary};
constexpr Source ae12{
    "measured-n12", "Auto Express tyre test of twelve",
    "wet wheel 15 % faster than the dry one; the eleventh worked out from an index", "",
    Standing::published};
constexpr Source ae19{"measured-n14", "Auto Express tyre test of nineteen",
                      "just over 50 mph; the last more than 10 mph lower", "", Standing::published};
constexpr Source cr{"measured-n16", "Consumer Reports, told by a workshop",
                    "half-worn tyres: as slow as 40 mph", "2017", Standing::secondary};
constexpr Source e524{"locked-n17", "Agrawal and Henry, Transportation Research Record 633",
                      "abstract: very low friction of the smooth test tyre, wheel locked", "1977",
                      Standing::published};
constexpr Source bend{"bend-n19", "A tyre maker's press release", "cornering on a pool", "2018",
                      Standing::published};
constexpr Source cartop{"contact-n22", "WEB CARTOP, contact of tyres in 6 mm of water",
                        "half the contact left at 3.5 mm; all but afloat at the bars", "2016",
                        Standing::secondary};
constexpr Source t01{"stop-t01", "A motoring magazine's wet stops, published by a tyre maker",
                     "225/45 R17, 1 mm of water", "2019", Standing::published};
constexpr Source t02{"stop-t02", "A motoring club's wet stops in Japan", "wetted track", "2015",
                     Standing::secondary};
constexpr Source t03{"stop-t03", "A tyre retailer's wet stops in the USA",
                     "205/55 R16, 1.3 to 1.5 mm above the stones", "2007", Standing::secondary};
constexpr Source t04{"stop-t04", "A tyre maker's demonstration in Japan, clicccar.com",
                     "195/65 R15, 2 mm of water", "2015", Standing::published};
constexpr Source t05{"stop-t05", "A tyre maker's chart of wet stops",
                     "worked out from residual speeds", "", Standing::secondary};
constexpr Source mira{"stop-mira", "MIRA, wet stops of four cars from 50 mph",
                      "31.7 m at 3 mm and 39.9 m at 1.6 mm, in 0.5 to 1.5 mm; as quoted", "",
                      Standing::secondary};
constexpr Source t15{"stop-t15", "Auto Express, stops on a flooded track", "50 mph", "",
                     Standing::published};
constexpr Source t19{"stop-t19", "A traffic safety institute's wet stops in Korea", "wetted track",
                     "2011", Standing::secondary};
constexpr Source t20{"stop-t20", "auto motor und sport, told by auto.de",
                     "stops from 150 km/h in rain", "", Standing::secondary};

constexpr OnsetEvidence evidence(std::string_view id, OnsetEvidence::Says says, double tread_mm,
                                 double film_mm, double film_to_mm, double low_kmh, double high_kmh,
                                 std::string_view remark, const Source& source) {
  return {id,
          says,
          millimetres(tread_mm),
          millimetres(film_mm),
          millimetres(film_to_mm),
          kilometres_per_hour(low_kmh),
          kilometres_per_hour(high_kmh),
          {},
          {},
          false,
          remark,
          source};
}
constexpr OnsetEvidence wide(OnsetEvidence row, double mm) {
  row.section_width = millimetres(mm);
  return row;
}
constexpr OnsetEvidence at(OnsetEvidence row, GaugePressure pressure) {
  row.pressure = pressure;
  return row;
}
constexpr OnsetEvidence against_us(OnsetEvidence row) {
  row.contradicts = true;
  return row;
}

constexpr OnsetEvidence further[] = {
    wide(evidence("N01", onset, 8.0, 7.0, 7.0, 84.4, 84.4,
                  "new, best winter tyre; the club's usual water", adac24),
         205.0),
    wide(evidence("N04", onset, 8.0, 3.0, 7.0, 92.4, 92.4,
                  "new, best winter tyre; water not stated", reif25),
         215.0),
    evidence("N06", onset, 8.0, 6.0, 6.0, 80.0, 80.0, "new, a good summer tyre", tm),
    evidence("N07", onset, 3.0, 6.0, 6.0, 70.0, 70.0, "worn, taken as 3 mm; about 70", tm),
    evidence("N08", onset, 8.0, 6.0, 6.0, 79.0, 79.0, "summer tyre", ria),
    evidence("N12", onset, 8.0, 7.0, 7.0, 88.5, 92.0, "new, best of twelve", ae12),
    evidence("N13", onset, 8.0, 7.0, 7.0, 78.7, 82.0, "new, eleventh of twelve", ae12),
    evidence("N14", onset, 8.0, 3.0, 10.0, 80.5, 83.0, "new, best of nineteen; water not stated",
             ae19),
    evidence("N15", onset, 8.0, 3.0, 10.0, 60.0, 64.4,
             "new, last of nineteen, under our band; water not stated", ae19),
    evidence("N16", onset, 4.0, 3.0, 10.0, 64.4, 64.4, "half worn, about 4 mm; water not stated",
             cr),
    evidence("N11", afloat, 1.6, 1.0, 2.0, 50.0, 50.0,
             "threatens in heavy rain, taken as 1 to 2 mm", tuv),
    at(evidence("N17", afloat, 0.0, 1.27, 1.27, 80.5, 80.5, "smooth test tyre, wheel locked", e524),
       kilopascals(165.0)),
    evidence("N19", afloat, 8.0, 3.0, 7.0, 105.0, 105.0, "in a bend; pool not stated", bend),
    evidence("N20", afloat, 5.0, 3.0, 7.0, 100.0, 100.0, "in a bend; pool not stated", bend),
    evidence("N21", afloat, 2.0, 3.0, 7.0, 90.0, 90.0, "in a bend; pool not stated", bend),
    evidence("N23", afloat, 1.6, 6.0, 6.0, 80.0, 80.0, "almost wholly afloat", cartop),
    against_us(evidence("N22", not_afloat, 3.5, 6.0, 6.0, 80.0, 80.0,
                        "about half of its contact left", cartop)),
    wide(evidence("T01 new", not_afloat, 8.0, 1.0, 1.0, 120.0, 120.0, "stopped from this speed",
                  t01),
         225.0),
    wide(evidence("T01 3 mm", not_afloat, 3.0, 1.0, 1.0, 120.0, 120.0, "stopped from this speed",
                  t01),
         225.0),
    wide(evidence("T01 1.6 mm", not_afloat, 1.6, 1.0, 1.0, 120.0, 120.0, "stopped from this speed",
                  t01),
         225.0),
    evidence("T02 7.6 mm", not_afloat, 7.6, 1.0, 1.0, 100.0, 100.0, "stopped; water taken as 1 mm",
             t02),
    evidence("T02 4.7 mm", not_afloat, 4.7, 1.0, 1.0, 100.0, 100.0, "stopped; water taken as 1 mm",
             t02),
    evidence("T02 3.1 mm", not_afloat, 3.1, 1.0, 1.0, 100.0, 100.0, "stopped; water taken as 1 mm",
             t02),
    wide(evidence("T03 new", not_afloat, 8.0, 1.3, 1.5, 112.65, 112.65, "stopped from this speed",
                  t03),
         205.0),
    wide(evidence("T03 3.2 mm", not_afloat, 3.2, 1.3, 1.5, 112.65, 112.65,
                  "stopped from this speed", t03),
         205.0),
    against_us(wide(evidence("T03 1.6 mm", not_afloat, 1.6, 1.3, 1.5, 112.65, 112.65,
                             "stopped from this speed; it proves 111 km/h", t03),
                    205.0)),
    wide(evidence("T04", not_afloat, 1.6, 2.0, 2.0, 80.0, 80.0,
                  "just under 1.6 mm; stopped from this speed", t04),
         195.0),
    evidence("T05 3 mm", not_afloat, 3.0, 1.0, 1.0, 80.0, 80.0, "stopped; water taken as 1 mm",
             t05),
    evidence("T05 1.6 mm", not_afloat, 1.6, 1.0, 1.0, 80.0, 80.0, "stopped; water taken as 1 mm",
             t05),
    evidence("MIRA 3 mm", not_afloat, 3.0, 0.5, 1.5, 80.47, 80.47, "stopped from this speed", mira),
    evidence("MIRA 1.6 mm", not_afloat, 1.6, 0.5, 1.5, 80.47, 80.47, "stopped from this speed",
             mira),
    evidence("T15", not_afloat, 8.0, 3.0, 10.0, 80.47, 80.47, "new, flooded: depth not stated",
             t15),
    evidence("T19 7 mm", not_afloat, 7.0, 1.0, 1.0, 100.0, 100.0, "stopped; water taken as 1 mm",
             t19),
    evidence("T19 1.6 mm", not_afloat, 1.6, 1.0, 1.0, 100.0, 100.0, "stopped; water taken as 1 mm",
             t19),
    evidence("T19 1 mm", not_afloat, 1.0, 1.0, 1.0, 100.0, 100.0, "stopped; water taken as 1 mm",
             t19),
    evidence("T20 new", not_afloat, 8.0, 1.0, 1.0, 150.0, 150.0, "stopped; rain taken as 1 mm",
             t20),
    evidence("T20 2.5 mm", not_afloat, 2.5, 1.0, 1.0, 150.0, 150.0, "stopped; rain taken as 1 mm",
             t20),
};

double line(double x, double x0, double y0, double x1, double y1) {
  return y0 + (y1 - y0) * (x - x0) / (x1 - x0);
}

}  // namespace

MeasuredOnsets measured_onsets() { return {std::begin(rows), std::end(rows)}; }

OnsetEvidences further_onsets() { return {std::begin(further), std::end(further)}; }

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
