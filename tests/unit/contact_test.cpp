// The contact patch against the measured prints (core/patch/measured.hpp), and its balance of
// forces.
#include "core/patch/contact.hpp"

#include <cmath>

#include "core/patch/measured.hpp"
#include "tests/support/catch.hpp"

using namespace treadwater;
using namespace treadwater::patch;
using namespace treadwater::testing;

namespace {

constexpr TyreSize printed{millimetres(255.0), 40.0, inches(17.0)};
constexpr TyreSize usual{millimetres(205.0), 55.0, inches(16.0)};

ContactPatch patch_of(const TyreSize& size, double kpa, double kg) {
  return contact_patch(size, kilopascals(kpa), kilograms(kg), kilograms(615.0));
}

}  // namespace

TEST_CASE("all 25 prints: length and area within 15 %, width within 4, fill no more than 0.97") {
  int count = 0;
  for (const MeasuredFootprint& print : measured_footprints()) {
    if (print.camber_degrees != 0.0) continue;
    const ContactPatch ours = contact_patch(
        printed, print.pressure, kilograms(in_newtons(print.load) / exact::standard_gravity),
        kilograms(750.0));
    INFO(in_newtons(print.load) << " N, " << in_kilopascals(print.pressure) << " kPa");
    CHECK(std::fabs(ours.length / print.length - 1.0) < 0.15);
    CHECK(std::fabs(ours.area / print.gross - 1.0) < 0.15);
    CHECK(std::fabs(ours.width / print.width - 1.0) < 0.04);
    CHECK(ours.area / rectangle(ours.length, ours.width) < 0.97 + 1e-12);
    const LengthBand lengths = contact_length_band(ours);
    const AreaBand areas = contact_area_band(ours);
    CHECK((lengths.low <= print.length && print.length <= lengths.high));
    CHECK((areas.low <= print.gross && print.gross <= areas.high));
    ++count;
  }
  CHECK(count == 25);
}

TEST_CASE("ground pressure is the inflation pressure and the carcass's 25 kPa at rated load") {
  const auto over = [](double kg) {
    return in_kilopascals(patch_of(usual, 230.0, kg).ground_pressure) - 230.0;
  };
  CHECK_THAT(over(615.0), WithinAbs(25.0, 1e-9));
  CHECK_THAT(over(307.5), WithinAbs(12.5, 1e-9));
  CHECK_THAT(over(900.0), WithinAbs(25.0, 1e-9));  // no more for a greater load
}

TEST_CASE("the patch is no shorter than its area asks for, where 0.87 of the law would be") {
  // Soft and fully loaded: by the law alone the fill would be over 1.
  const ContactPatch soft =
      contact_patch(printed, kilopascals(165.0), kilograms(635.0), kilograms(750.0));
  CHECK_THAT(soft.area / rectangle(soft.length, soft.width), WithinAbs(0.97, 1e-12));
  const ContactPatch hard = patch_of(usual, 230.0, 400.0);
  CHECK(hard.area / rectangle(hard.length, hard.width) < 0.97);
  CHECK_THAT(hard.length / contact_length(weight(kilograms(400.0)), hard.stiffness,
                                          overall_diameter(usual) / 2.0),
             WithinAbs(0.87, 1e-12));
}

TEST_CASE("nothing presses: no area, and no number that is none") {
  const ContactPatch patch = patch_of(usual, 0.0, 0.0);
  CHECK(patch.area == Area());
  CHECK(patch.length == Length());
}
