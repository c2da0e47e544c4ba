// Facts of order that must hold for any case: surface, tyre, rubber, tread, water, speed and road.
#include <limits>

#include "core/grip/cornering.hpp"
#include "core/grip/limits.hpp"
#include "core/grip/skid.hpp"
#include "core/grip/stopping.hpp"
#include "core/standard/wetness.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/property.hpp"

using namespace treadwater;
using namespace treadwater::grip;
using namespace treadwater::testing;

namespace {

// A stop in a bend takes some hundred evaluations; friction alone takes one.
constexpr int stops = 10000;

double between(double low, double high) {
  return low + (high - low) * *rc::gen::inRange(0, 10001) / 10000.0;
}

template <class Row>
const Row* any_of(standard::Rows<Row> rows) {
  return rows.begin() + *rc::gen::inRange<std::ptrdiff_t>(0, rows.end() - rows.begin());
}

double any_film() { return *rc::gen::inRange(0, 2) == 0 ? between(0.0, 0.5) : between(0.0, 12.0); }

// As the room `water` gives it: the deeper the lower, in that order, some sides without an end.
SpeedBand any_onset() {
  const double low = between(5.0, 150.0);
  const double central = low + between(0.0, 60.0);
  const double high = central + between(0.0, 60.0);
  const bool endless = *rc::gen::inRange(0, 3) == 0;
  return {kilometres_per_hour(low), kilometres_per_hour(central),
          kilometres_per_hour(endless ? std::numeric_limits<double>::infinity() : high)};
}

GripCase any_case() {
  GripCase c;
  c.surface = any_of(standard::friction_surfaces());
  c.tyre = find_tyre_grip(
      *rc::gen::element("road", "winter", "studded", "gravel", "wet", "cut-slick", "slick"));
  if (*rc::gen::inRange(0, 2) == 0) c.rubber = any_of(rubbers());
  if (*rc::gen::inRange(0, 2) == 0) c.tread_heat = celsius(between(-20.0, 160.0));
  c.tread = millimetres(between(0.0, 10.0));
  c.film = millimetres(any_film());
  c.road = static_cast<RoadGrip>(*rc::gen::inRange(0, 4));
  c.old_or_hard = *rc::gen::inRange(0, 4) == 0;
  if (*rc::gen::inRange(0, 2) == 0) c.onset = any_onset();
  return c;
}

GripCase wet_asphalt() {
  GripCase c;
  c.tread = millimetres(between(0.0, 10.0));
  c.film = millimetres(any_film());
  c.onset = any_onset();
  return c;
}

Road any_road() {
  Road road;
  road.grade = between(-0.2, 0.2);
  if (*rc::gen::inRange(0, 3) == 0) {
    road.radius = metres(between(10.0, 500.0));
    road.bank = between(-0.1, 0.1);
  }
  return road;
}

Speed any_speed(double fastest = 200.0) { return kilometres_per_hour(between(0.0, fastest)); }

void never_above(const FrictionBand& a, const FrictionBand& b) {
  constexpr double rounding = 1e-12;
  RC_ASSERT(a.low <= b.low + rounding);
  RC_ASSERT(a.central <= b.central + rounding);
  RC_ASSERT(a.high <= b.high + rounding);
}

// "Will not stop" is longer than any distance.
bool no_longer(const std::optional<Length>& a, const std::optional<Length>& b) {
  return !b || (a && *a <= *b + metres(1e-9));
}

void never_longer(const DistanceBand& a, const DistanceBand& b) {
  RC_ASSERT(no_longer(a.shortest, b.shortest));
  RC_ASSERT(no_longer(a.central, b.central));
  RC_ASSERT(no_longer(a.longest, b.longest));
}

DistanceBand stop(const GripCase& c, Speed v, const Road& road) {
  return stopping_band(c, v, seconds(1.0), road);
}

}  // namespace

TEST_CASE("friction: low, central and high stand in that order, from nothing to 2") {
  CHECK(holds("low <= central <= high", [] {
    const FrictionBand band = Grip(any_case()).at(any_speed(400.0));
    RC_ASSERT(band.low >= 0.0);
    RC_ASSERT(band.low <= band.central + 1e-12);
    RC_ASSERT(band.central <= band.high + 1e-12);
    RC_ASSERT(band.high < 2.0);
  }));
}

TEST_CASE("friction: dry >= damp >= wet >= standing water") {
  CHECK(holds("wetness", [] {
    GripCase c = any_case();
    const Speed v = any_speed();
    c.film = Length();
    FrictionBand last = Grip(c).at(v);
    for (const standard::WetnessWord& word : standard::wetness_words) {
      c.film = word.deep;
      const FrictionBand band = Grip(c).at(v);
      never_above(band, last);
      last = band;
    }
  }));
}

TEST_CASE("friction: more water never helps") {
  CHECK(holds("water", [] {
    GripCase c = any_case();
    const Speed v = any_speed();
    const FrictionBand shallow = Grip(c).at(v);
    c.film = c.film + millimetres(between(0.0, 5.0));
    never_above(Grip(c).at(v), shallow);
  }));
}

TEST_CASE("friction: more tread never harms") {
  CHECK(holds("tread", [] {
    GripCase c = any_case();
    const Speed v = any_speed();
    const FrictionBand worn = Grip(c).at(v);
    c.tread = c.tread + millimetres(between(0.0, 4.0));
    never_above(worn, Grip(c).at(v));
  }));
}

TEST_CASE("friction: more speed never helps") {
  CHECK(holds("speed", [] {
    const Grip grip(any_case());
    const Speed v = any_speed();
    never_above(grip.at(v + any_speed(100.0)), grip.at(v));
  }));
}

TEST_CASE("friction: rougher texture never harms in the wet") {
  CHECK(holds("texture", [] {
    const Length texture = millimetres(between(0.0, 2.0));
    const Speed v = any_speed();
    const TextureShare smooth = texture_share(texture, v);
    const TextureShare rough = texture_share(texture + millimetres(between(0.0, 1.0)), v);
    RC_ASSERT(smooth.low <= rough.low + 1e-12);
    RC_ASSERT(smooth.high <= rough.high + 1e-12);
    RC_ASSERT(smooth.low <= smooth.high);
  }));
}

TEST_CASE("share kept in water: none is above one, and deeper water leaves no more") {
  CHECK(holds("film", [] {
    const Speed v = any_speed();
    const Length tread = millimetres(between(0.0, 10.0));
    const Length film = millimetres(any_film());
    const FrictionBand thin = share_kept(v, tread, film);
    RC_ASSERT(thin.high <= 1.0);
    never_above(share_kept(v, tread, film + millimetres(between(0.0, 3.0))), thin);
  }));
}

TEST_CASE("stops: shortest, central and longest stand in that order") {
  CHECK(holds(
      "order",
      [] {
        const DistanceBand band = stop(any_case(), any_speed(), any_road());
        RC_ASSERT(no_longer(band.shortest, band.central));
        RC_ASSERT(no_longer(band.central, band.longest));
      },
      stops));
}

TEST_CASE("stops: less speed never lengthens one") {
  CHECK(holds(
      "speed",
      [] {
        const GripCase c = any_case();
        const Road road = any_road();
        const Speed v = any_speed();
        never_longer(stop(c, v, road), stop(c, v + any_speed(50.0), road));
      },
      stops));
}

TEST_CASE("stops: more tread never lengthens one, deeper water never shortens one") {
  CHECK(holds(
      "tread and water",
      [] {
        GripCase c = any_case();
        const Road road = any_road();
        const Speed v = any_speed();
        const DistanceBand before = stop(c, v, road);
        GripCase better = c;
        better.tread = better.tread + millimetres(between(0.0, 4.0));
        never_longer(stop(better, v, road), before);
        c.film = c.film + millimetres(between(0.0, 4.0));
        never_longer(before, stop(c, v, road));
      },
      stops));
}

TEST_CASE("stops: uphill never lengthens one, a bend never shortens one") {
  CHECK(holds(
      "road",
      [] {
        const GripCase c = any_case();
        const Speed v = any_speed();
        Road road = any_road();
        Road steeper = road;
        steeper.grade += between(0.0, 0.2);
        never_longer(stop(c, v, steeper), stop(c, v, road));
        Road straight = road;
        straight.radius.reset();
        never_longer(stop(c, v, straight), stop(c, v, road));
      },
      stops));
}

TEST_CASE("stops: a road that is told has a band inside the one of a road that is not") {
  CHECK(holds(
      "road told",
      [] {
        GripCase c = any_case();
        const Road road = any_road();
        const Speed v = any_speed();
        c.road = RoadGrip::not_told;
        const FrictionBand unasked = Grip(c).at(v);
        const DistanceBand any = stop(c, v, road);
        c.road = *rc::gen::element(RoadGrip::grippy, RoadGrip::ordinary, RoadGrip::polished);
        const FrictionBand asked = Grip(c).at(v);
        const DistanceBand band = stop(c, v, road);
        RC_ASSERT(asked.low >= unasked.low - 1e-12);
        RC_ASSERT(asked.high <= unasked.high + 1e-12);
        RC_ASSERT(no_longer(any.shortest, band.shortest));
        RC_ASSERT(no_longer(band.longest, any.longest));
      },
      stops));
}

TEST_CASE("stops: an earlier onset, old or hard tyres never shorten one") {
  CHECK(holds(
      "onset and age",
      [] {
        GripCase c = any_case();
        const Road road = any_road();
        const Speed v = any_speed();
        c.onset = any_onset();
        c.old_or_hard = false;
        const DistanceBand before = stop(c, v, road);
        GripCase old = c;
        old.old_or_hard = true;
        never_longer(before, stop(old, v, road));
        const double share = between(0.3, 1.0);
        c.onset = SpeedBand{c.onset->low * share, c.onset->central * share, c.onset->high * share};
        never_longer(before, stop(c, v, road));
      },
      stops));
}

TEST_CASE("stops: no side's is told at or above where its grip is gone") {
  CHECK(holds(
      "gone",
      [] {
        GripCase c = wet_asphalt();
        c.film = c.film + millimetres(0.001);
        const Speed v = any_speed();
        const DistanceBand band = braking_band(c, v, Speed(), any_road());
        const SpeedBand gone = grip_gone_at(c.tread, c.film, c.onset);
        RC_ASSERT(!band.shortest || (v < gone.high && v < c.onset->high));
        RC_ASSERT(!band.central || (v < gone.central && v < c.onset->central));
        RC_ASSERT(!band.longest || (v < gone.low && v < c.onset->central));
        if (c.film >= millimetres(3.0)) RC_ASSERT(!band.longest || v < c.onset->low);
      },
      stops));
}

TEST_CASE("stops: in closed form as long as in steps of a hundredth of a km/h") {
  CHECK(holds(
      "steps",
      [] {
        GripCase c = wet_asphalt();
        const double grade = between(-0.1, 0.1);
        const Grip grip(c);
        const Speed v = kilometres_per_hour(between(1.0, 130.0));
        const auto whole = braking_band(c, v, Speed(), {grade, {}, 0.0}).central;
        if (!whole) return;
        double metres_braked = 0.0;
        const int steps = static_cast<int>(in_kilometres_per_hour(v) * 100.0) + 1;
        const Speed step = v / steps;
        for (int i = 0; i < steps; ++i) {
          const double mu = grip.at(step * (i + 0.5)).central;
          const double from = in_metres_per_second(step) * (i + 1.0);
          const double to = in_metres_per_second(step) * i;
          metres_braked += (from * from - to * to) / (2.0 * deceleration(mu, grade));
        }
        RC_ASSERT(std::abs(metres_braked / in_metres(*whole) - 1.0) < 1e-4);
      },
      1000));
}

TEST_CASE("from the speed for a seen distance the car stops within it, and not from much more") {
  CHECK(holds(
      "inverse",
      [] {
        const GripCase c = any_case();
        const Road road = any_road();
        const Length seen = metres(between(1.0, 400.0));
        const SpeedBand band = seen_distance_speed(c, seen, seconds(1.0), road);
        RC_ASSERT(band.low <= band.central);
        RC_ASSERT(band.central <= band.high);
        const auto longest = stop(c, band.low, road).longest;
        RC_ASSERT(longest.has_value());
        RC_ASSERT(*longest <= seen + metres(1e-6));
        const auto more = stop(c, band.low + kilometres_per_hour(0.01), road).longest;
        RC_ASSERT((!more || *more > seen));  // captured whole: || must not look at both
      },
      stops));
}

TEST_CASE("speed left: more room, more grip never leave more of it") {
  CHECK(holds(
      "left",
      [] {
        const GripCase c = any_case();
        Road road = any_road();
        road.grade = std::max(0.0, road.grade);
        const Speed v = any_speed();
        const Length room = metres(between(0.0, 100.0));
        const SpeedBand less = speed_left_band(c, v, room, road);
        const SpeedBand more = speed_left_band(c, v, room + metres(between(0.0, 50.0)), road);
        const Speed rounding = kilometres_per_hour(1e-6);
        RC_ASSERT(less.low <= less.central + rounding);
        RC_ASSERT(less.central <= less.high + rounding);
        RC_ASSERT(less.high <= v + rounding);
        RC_ASSERT(more.low <= less.low + rounding);
        RC_ASSERT(more.high <= less.high + rounding);
      },
      stops));
}

TEST_CASE("bends: a wider one, a drier one, a better banked one is never slower") {
  CHECK(holds(
      "corner",
      [] {
        GripCase c = any_case();
        const Length radius = metres(between(5.0, 800.0));
        const double bank = between(-0.1, 0.1);
        const SpeedBand band = corner_speed_band(c, radius, bank);
        RC_ASSERT(band.low <= band.central && band.central <= band.high);
        const Speed rounding = kilometres_per_hour(1e-5);
        RC_ASSERT(band.low <=
                  corner_speed_band(c, radius + metres(between(0.0, 100.0)), bank).low + rounding);
        RC_ASSERT(band.low <=
                  corner_speed_band(c, radius, bank + between(0.0, 0.1)).low + rounding);
        c.film = c.film + millimetres(between(0.0, 3.0));
        RC_ASSERT(corner_speed_band(c, radius, bank).low <= band.low + rounding);
      },
      stops));
}

TEST_CASE("constant friction: more grip, less speed, less downhill never lengthen a stop") {
  CHECK(holds("constant", [] {
    const double mu = between(0.0, 1.5), grade = between(-0.3, 0.3);
    const Speed v = any_speed();
    const auto base = stopping_distance(v, seconds(1.0), mu, grade);
    RC_ASSERT(base.has_value() == (mu + grade > 0.0));
    RC_ASSERT(no_longer(stopping_distance(v, seconds(1.0), mu + between(0.0, 0.5), grade), base));
    RC_ASSERT(no_longer(stopping_distance(v * between(0.0, 1.0), seconds(1.0), mu, grade), base));
    RC_ASSERT(no_longer(stopping_distance(v, seconds(1.0), mu, grade + between(0.0, 0.05)), base));
  }));
}

TEST_CASE("the bend's speed asks for just the side friction there is") {
  CHECK(holds("demand", [] {
    const double mu = between(0.05, 1.2), bank = between(-0.04, 0.2);
    const Length radius = metres(between(5.0, 1000.0));
    const auto v = corner_speed(radius, mu, bank);
    RC_ASSERT(v.has_value());
    RC_ASSERT(std::abs(side_demand(*v, radius, bank) - mu) < 1e-9);
    RC_ASSERT(braking_left(mu, mu, side_demand(*v * 0.9, radius, bank)) >= 0.0);
  }));
}
