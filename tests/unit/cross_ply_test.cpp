// A cross-ply's patch, and patches under camber: inverses, joints and ends. The printed figures are
// in tests/register.
#include "core/patch/cross_ply.hpp"
#include "core/patch/inclined.hpp"
#include "tests/support/catch.hpp"

using namespace treadwater;
using namespace treadwater::patch;
using namespace treadwater::testing;

namespace {

TyreSize size(double width, double aspect, double rim) {
  return {millimetres(width), aspect, inches(rim)};
}
double mm(Length l) { return in_millimetres(l); }

}  // namespace

TEST_CASE("the two branches of the formula meet, and its inverse crosses them") {
  const CrossPly t{millimetres(145), millimetres(620), kilopascals(200), kilopascals(200)};
  for (const double d : {5.0, 14.0, 14.5, 14.6, 20.0})
    CHECK_THAT(mm(cross_ply_deflection(t, cross_ply_load(t, millimetres(d)))), WithinAbs(d, 1e-9));
}

TEST_CASE("a cross-ply's patch is a wide band, and none where nothing is known") {
  const auto patch =
      cross_ply_patch(size(155, 80, 13), kilopascals(180), kilopascals(180), newtons(2500));
  REQUIRE(patch);
  CHECK(patch->length_high / patch->length_low > 1.5);
  CHECK(patch->area_high / patch->area_low > 1.5);
  CHECK_FALSE(cross_ply_patch(size(155, 80, 13), kilopascals(0), kilopascals(180), newtons(2500)));
  CHECK_FALSE(
      cross_ply_patch(size(155, 80, 13), kilopascals(180), kilopascals(180), newtons(9000)));
}

TEST_CASE("no camber takes nothing off a patch, and more than 4 degrees is not known") {
  CHECK(camber_shares(0.0)->length == 1.0);
  CHECK_FALSE(camber_shares(4.1));
}
