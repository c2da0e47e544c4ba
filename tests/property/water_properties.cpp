// Facts of order in water that must hold for any tyre and road. Those that take the whole
// distribution are held over 3 000 random tyres each, the others over 100 000.
#include <algorithm>
#include <cmath>

#include "core/quantity/power.hpp"
#include "core/water/estimate.hpp"
#include "core/water/film.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/property.hpp"

using namespace treadwater;
using namespace treadwater::testing;

namespace {

constexpr int whole_distributions = 3000;

// A number from low to high in steps of a ten-thousandth of the span.
double between(double low, double high) {
  return low + (high - low) * *rc::gen::inRange(0, 10001) / 10000.0;
}

// By ruler, half of the time in thin water, or in a word.
water::Water any_water() {
  using standard::Wetness;
  if (*rc::gen::inRange(0, 4) == 0)
    return water::Water::by_word(
        *rc::gen::element(Wetness::wet, Wetness::downpour, Wetness::standing));
  return millimetres(*rc::gen::inRange(0, 2) == 0 ? between(0.01, 3.5) : between(0.01, 99.0));
}

water::Water deeper(const water::Water& water, Length by) {
  if (water.one_depth()) return water.middle() + by;
  return water::Water::between(water.shallow() + by, water.middle() + by, water.deep() + by);
}

water::WetTyre any_wet_tyre() {
  water::WetTyre tyre;
  tyre.pressure = kilopascals(between(50.0, 800.0));
  tyre.tread = millimetres(between(0.0, 12.0));
  tyre.groove_credit = *rc::gen::element(1.0, 0.5, 0.0);
  if (*rc::gen::inRange(0, 4) != 0) tyre.section_width = millimetres(between(125.0, 355.0));
  tyre.film = any_water();
  tyre.texture = millimetres(between(0.0, 2.0));
  return tyre;
}

water::SpeedBand band_of(const water::WetTyre& tyre) { return *water::aquaplaning_onset(tyre); }

Speed central_of(const water::WetTyre& tyre) {
  return water::onset_map(tyre, {tyre.tread}, {tyre.film.middle()}).front();
}

// One distribution lies wholly at or below the other, so every share of it does, low and high too.
void never_above(const water::OnsetDraws& a, const water::OnsetDraws& b) {
  for (std::size_t i = 0; i < a.sorted_kmh().size(); ++i)
    RC_ASSERT(a.sorted_kmh()[i] <= b.sorted_kmh()[i]);
}

// `worsen` changes a tyre so that it must float no later.
template <class Worsen>
bool worse_is_never_later(const char* what, Worsen worsen) {
  return holds(
      what,
      [&] {
        const water::WetTyre tyre = any_wet_tyre();
        water::WetTyre worse = tyre;
        worsen(worse);
        never_above(water::OnsetDraws(worse), water::OnsetDraws(tyre));
        RC_ASSERT(central_of(worse) <= central_of(tyre));
      },
      whole_distributions);
}

// A step of a reading: often a coarse one, often of a few nanometres.
double step_mm(double most) {
  return *rc::gen::inRange(0, 2) == 0 ? between(0.0, most) : between(0.0, 1e-5);
}

water::RainOnRoad any_road() {
  water::RainOnRoad road;
  road.rain = millimetres_per_hour(between(0.5, 120.0));
  road.path = {metres(between(1.0, 40.0)), between(0.006, 0.1)};
  road.texture = millimetres(between(0.1, 4.0));
  road.pavement = *rc::gen::element(water::Pavement::concrete, water::Pavement::dense_asphalt,
                                    water::Pavement::open_graded_asphalt);
  return road;
}

void never_deeper(const water::RainOnRoad& a, const water::RainOnRoad& b) {
  RC_ASSERT(water::rain_film(a)->low <= water::rain_film(b)->low);
  RC_ASSERT(water::rain_film(a)->central <= water::rain_film(b)->central);
  RC_ASSERT(water::rain_film(a)->high <= water::rain_film(b)->high);
}

}  // namespace

TEST_CASE("low, central and high stand in that order") {
  CHECK(holds(
      "low <= central <= high",
      [] {
        const water::WetTyre tyre = any_wet_tyre();
        const auto band = band_of(tyre);
        RC_ASSERT(band.low > kilometres_per_hour(0.0));
        RC_ASSERT(band.low <= band.central);
        RC_ASSERT(band.central <= band.high);
      },
      whole_distributions));
}

TEST_CASE("less tread never raises the onset") {
  CHECK(worse_is_never_later(
      "tread", [](water::WetTyre& tyre) { tyre.tread = tyre.tread - millimetres(step_mm(4.0)); }));
}

TEST_CASE("more water never raises the onset") {
  CHECK(worse_is_never_later("water", [](water::WetTyre& tyre) {
    tyre.film = deeper(tyre.film, millimetres(step_mm(20.0)));
  }));
}

TEST_CASE("less pressure never raises the onset") {
  CHECK(worse_is_never_later("pressure", [](water::WetTyre& tyre) {
    tyre.pressure = tyre.pressure - kilopascals(*rc::gen::inRange(0, 2) == 0 ? between(0.0, 200.0)
                                                                             : between(0.0, 1e-2));
  }));
}

TEST_CASE("a wider tyre never floats later") {
  CHECK(worse_is_never_later("width", [](water::WetTyre& tyre) {
    if (tyre.section_width) tyre.section_width = *tyre.section_width + millimetres(between(0, 99));
  }));
}

TEST_CASE("fewer grooves never float later") {
  CHECK(worse_is_never_later("credit", [](water::WetTyre& tyre) {
    tyre.groove_credit = tyre.groove_credit * between(0.0, 1.0);
  }));
}

TEST_CASE("a smoother road never floats a tyre later") {
  CHECK(worse_is_never_later("texture", [](water::WetTyre& tyre) {
    tyre.texture = tyre.texture - millimetres(between(0.0, 1.0));
  }));
}

TEST_CASE("all of it worse at once never raises the onset") {
  CHECK(worse_is_never_later("all", [](water::WetTyre& tyre) {
    tyre.tread = tyre.tread - millimetres(step_mm(4.0));
    tyre.film = deeper(tyre.film, millimetres(step_mm(20.0)));
    tyre.pressure = tyre.pressure - kilopascals(between(0.0, 100.0));
  }));
}

TEST_CASE("more speed is never less likely to float, and the chance agrees with the shares") {
  CHECK(holds(
      "chance",
      [] {
        const water::OnsetDraws draws(any_wet_tyre());
        const Speed slow = kilometres_per_hour(between(0.0, 150.0));
        const Speed fast = slow + kilometres_per_hour(between(0.0, 50.0));
        RC_ASSERT(draws.chance_of_floating(slow) <= draws.chance_of_floating(fast));
        RC_ASSERT(draws.chance_of_floating(kilometres_per_hour(0.0)) == 0.0);
        RC_ASSERT(draws.chance_of_floating(draws.at_share(1.0)) == 1.0);
        const Speed low = draws.at_share(0.05);
        if (low < water::no_floating)
          RC_ASSERT(std::fabs(draws.chance_of_floating(low) - 0.05) < 1e-3);
        RC_ASSERT(std::is_sorted(draws.sorted_kmh().begin(), draws.sorted_kmh().end()));
      },
      whole_distributions));
}

TEST_CASE("what is told of a band is a number, and never more of more water") {
  CHECK(holds(
      "told",
      [] {
        const water::WetTyre tyre = any_wet_tyre();
        water::WetTyre worse = tyre;
        worse.film = deeper(tyre.film, millimetres(step_mm(20.0)));
        const auto speed = water::held(band_of(tyre));
        const auto slower = water::held(band_of(worse));
        if (speed) {
          RC_ASSERT(*speed > Speed());
          RC_ASSERT(*speed < water::fastest_on_roads);
          RC_ASSERT(slower.has_value());
          RC_ASSERT(*slower <= *speed);
        }
        const auto high = water::told(band_of(tyre).high);
        if (high) RC_ASSERT(*high <= water::highest_onset_told);
      },
      whole_distributions));
}

TEST_CASE("many tyres in one water have the ends of one tyre alone") {
  CHECK(holds(
      "list",
      [] {
        const water::WetTyre tyre = any_wet_tyre();
        const auto onset = water::OnsetsInWater(tyre.film, tyre.texture).of(tyre);
        RC_ASSERT(onset.low == band_of(tyre).low);
        RC_ASSERT(onset.central == band_of(tyre).central);
      },
      whole_distributions));
}

TEST_CASE("a cell of the map is the central value for its tread and water") {
  CHECK(holds(
      "map",
      [] {
        const water::WetTyre tyre = any_wet_tyre();
        const auto map =
            water::onset_map(tyre, {tyre.tread + millimetres(1.0), tyre.tread},
                             {millimetres(20.0), tyre.film.middle(), millimetres(1.0)});
        RC_ASSERT(map.size() == 6u);
        RC_ASSERT(map[4] == band_of(tyre).central);
      },
      whole_distributions));
}

TEST_CASE("less tread and more water never raise the central value") {
  CHECK(holds("central", [] {
    const water::WetTyre tyre = any_wet_tyre();
    const Length depth = tyre.film.middle();
    const auto map = water::onset_map(tyre, {tyre.tread, tyre.tread - millimetres(step_mm(4.0))},
                                      {depth, depth + millimetres(step_mm(20.0))});
    RC_ASSERT(map[1] <= map[0]);
    RC_ASSERT(map[2] <= map[0]);
    RC_ASSERT(map[3] <= map[1]);
    RC_ASSERT(map[3] <= map[2]);
  }));
}

// What makes the order exact: readings are a nanometre apart or the same.
TEST_CASE("two depths a nanometre apart are told apart by every power in use") {
  CHECK(holds("power", [] {
    const double depth = between(0.0, 1.0) * between(0.0, 1.0) + 1e-5;
    const double deeper = depth + 1.0 / 1073741824.0;
    for (const double exponent : {0.06, 0.3, 2.0 / 3.0}) {
      RC_ASSERT(power(depth, exponent) < power(deeper, exponent));
      RC_ASSERT(power(depth, -exponent) > power(deeper, -exponent));
    }
  }));
}

TEST_CASE("more rain, a longer way and a flatter road never leave less water") {
  CHECK(holds("rain", [] {
    const water::RainOnRoad road = any_road();
    water::RainOnRoad wetter = road;
    wetter.rain = wetter.rain + millimetres_per_hour(between(0.0, 30.0));
    never_deeper(road, wetter);
    water::RainOnRoad longer = road;
    longer.path.length = longer.path.length + metres(between(0.0, 10.0));
    never_deeper(road, longer);
    water::RainOnRoad flatter = road;
    flatter.path.slope = 0.005 + (road.path.slope - 0.005) * between(0.0, 1.0);
    never_deeper(road, flatter);
  }));
}

TEST_CASE("a deeper rut never holds less, and a steeper crossfall never more") {
  CHECK(holds("rut", [] {
    const Length depth = millimetres(between(0.0, 60.0));
    const Length width = millimetres(between(100.0, 1500.0));
    const double fall = between(0.0, 0.1);
    const Length water = water::rut_water(depth, width, fall);
    RC_ASSERT(water >= metres(0.0));
    RC_ASSERT(water <= depth);
    RC_ASSERT(water <= water::rut_water(depth + millimetres(between(0.0, 20.0)), width, fall));
    RC_ASSERT(water >= water::rut_water(depth, width, fall + between(0.0, 0.05)));
  }));
}
