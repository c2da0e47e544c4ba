// The contact patch against published equations and measured tyres.
#include "core/patch/contact.hpp"
#include "tests/support/catch.hpp"

using namespace treadwater;
using namespace treadwater::patch;
using namespace treadwater::testing;

namespace {
TyreSize size(double width, double aspect, double rim) {
  return {millimetres(width), aspect, inches(rim)};
}
}  // namespace

TEST_CASE("overall diameter of 205/55 R16 is 631.9 mm, of 195/65 R15 634.5, of 175/70 R13 575.2") {
  CHECK_THAT(in_millimetres(overall_diameter(size(205, 55, 16))), WithinAbs(631.9, 0.05));
  CHECK_THAT(in_millimetres(overall_diameter(size(195, 65, 15))), WithinAbs(634.5, 0.05));
  CHECK_THAT(in_millimetres(overall_diameter(size(175, 70, 13))), WithinAbs(575.2, 0.05));
}

// Worked out by hand from UN R30 6.1.1.1: 0.4 x 12.7 mm = 5.08 mm of section for half an inch of
// rim.
TEST_CASE("205 on a 7.0 inch rim rather than 6.5 is 210.1 mm wide, on 5.5 inch 194.8 mm") {
  const auto on = [](double rim) {
    return in_millimetres(section_width_on_rim(size(205, 55, 16), inches(rim), inches(6.5)));
  };
  CHECK_THAT(on(7.0), WithinAbs(210.1, 0.05));
  CHECK_THAT(on(5.5), WithinAbs(194.8, 0.05));
}

// A tyre data book gives 881 and 954 turns a mile for 185/70R13 and 185/60R13.
TEST_CASE("the rolling circumference of two tyres in a data book lies in the band") {
  const struct {
    TyreSize size;
    double turns_a_mile;
  } rows[] = {{size(185, 70, 13), 881}, {size(185, 60, 13), 954}};
  for (const auto& row : rows) {
    const auto band = rolling_circumference(row.size, false);
    const Length measured = metres(1609.344 / row.turns_a_mile);
    CHECK(band.low < measured);
    CHECK(measured < band.high);
  }
  CHECK_THAT(in_millimetres(rolling_circumference(size(205, 55, 16), false).nominal),
             WithinAbs(1927.3, 0.05));
}

TEST_CASE("a radial 205/55 R16 may be from 625.1 to 640.9 mm across") {
  const auto band = overall_diameter_band(size(205, 55, 16), false);
  CHECK_THAT(in_millimetres(band.low), WithinAbs(625.1, 0.05));
  CHECK_THAT(in_millimetres(band.high), WithinAbs(640.9, 0.05));
}

// Besselink, Schmeitz, Pacejka (2010), the 205/60R15 data set: unloaded radius 0.3135 m, vertical
// stiffness 209 651.5 N/m. Equation and coefficients read in a public code.
TEST_CASE("contact length of the 205/60R15 data set is 87.4, 131.8, 169.0 mm at 2, 4, 6 kN") {
  const Stiffness cz = Stiffness::stored(209651.5);
  const auto length = [&](double kn) {
    return in_millimetres(contact_length(newtons(1000.0 * kn), cz, millimetres(313.5)));
  };
  CHECK_THAT(length(2), WithinAbs(87.4, 0.05));
  CHECK_THAT(length(4), WithinAbs(131.8, 0.05));
  CHECK_THAT(length(6), WithinAbs(169.0, 0.05));
}

// Worked out by hand from the constants (memory).
TEST_CASE("vertical stiffness by Rhyne's relationship, eight sizes") {
  const struct {
    TyreSize size;
    double kpa, newtons_per_mm;
  } rows[] = {{size(155, 80, 13), 180, 158.5}, {size(175, 70, 14), 200, 188.0},
              {size(205, 60, 15), 220, 226.3}, {size(205, 55, 16), 230, 238.4},
              {size(225, 45, 17), 240, 263.4}, {size(195, 65, 15), 250, 245.7},
              {size(255, 40, 17), 250, 291.6}, {size(215, 65, 16), 300, 311.4}};
  for (const auto& row : rows)
    CHECK_THAT(in_newtons_per_millimetre(vertical_stiffness(row.size, kilopascals(row.kpa))),
               WithinAbs(row.newtons_per_mm, 0.05));
}

// Measured tangent stiffness of a used 255/40R17 98W (a personal engineering site's rig, 2021).
TEST_CASE("vertical stiffness is within 11 % of one measured 255/40R17 from 24 to 36 psi") {
  const struct {
    double psi, measured;
  } rows[] = {{24, 228.5}, {27, 247.5}, {30, 262.5}, {33, 277.3}, {36, 292.7}};
  for (const auto& row : rows)
    CHECK_THAT(in_newtons_per_millimetre(vertical_stiffness(size(255, 40, 17), psi(row.psi))) /
                   row.measured,
               WithinAbs(1.0, 0.11));
}

TEST_CASE("deflection of 205/55 R16 at 230 kPa under 4 kN is 16.8 mm") {
  CHECK_THAT(in_millimetres(deflection(newtons(4000.0),
                                       vertical_stiffness(size(205, 55, 16), kilopascals(230.0)))),
             WithinAbs(16.8, 0.05));
}

// Ink prints of a new 255/40ZR17 98W XL (the same rig, 2024), printed beside each: load lbf,
// pressure psi, length in, width in, gross area sq in. On this square-shouldered tyre length and
// area both read too large, by up to 31 %; the figures' low ends allow for that. Width is within 5
// %.
TEST_CASE("contact patch against 25 measured footprints of a 255/40ZR17") {
  const double psis[] = {24, 26, 28, 30, 34};
  const struct {
    double lbf, length[5], width[5], area[5];
  } rows[] = {{500,
               {2.85, 2.84, 2.74, 2.70, 2.44},
               {7.44, 7.46, 7.41, 7.35, 7.18},
               {18.7, 18.4, 17.9, 17.3, 16.0}},
              {800,
               {3.99, 3.79, 3.79, 3.64, 3.71},
               {8.12, 8.06, 8.07, 8.06, 7.95},
               {29.6, 28.1, 27.7, 26.4, 25.5}},
              {1000,
               {4.62, 4.42, 4.21, 4.06, 4.18},
               {8.30, 8.33, 8.27, 8.25, 8.16},
               {35.9, 34.6, 32.2, 30.9, 30.2}},
              {1200,
               {5.11, 5.00, 4.90, 4.60, 4.44},
               {8.46, 8.48, 8.45, 8.42, 8.42},
               {41.6, 40.5, 38.9, 36.4, 34.4}},
              {1400,
               {5.75, 5.44, 5.25, 5.03, 4.83},
               {8.60, 8.60, 8.57, 8.55, 8.52},
               {47.3, 45.1, 43.6, 41.2, 38.8}}};
  for (const auto& row : rows)
    for (int i = 0; i < 5; ++i) {
      INFO(row.lbf << " lbf, " << psis[i] << " psi");
      const ContactPatch p =
          contact_patch(size(255, 40, 17), psi(psis[i]), pounds(row.lbf), kilograms(750.0));
      CHECK_THAT(in_inches(p.width) / row.width[i], WithinAbs(1.0, 0.05));
      CHECK(in_square_inches(p.area) / row.area[i] > 1.0);
      CHECK(in_square_inches(p.area) / row.area[i] < 1.31);
      CHECK(in_inches(p.length) / row.length[i] > 1.0);
      CHECK(in_inches(p.length) / row.length[i] < 1.32);
    }
}
