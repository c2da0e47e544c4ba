// Rules of the room `air`: repair, getting home, warnings, and what is refused.
#include <limits>

#include "core/air/get_home.hpp"
#include "core/air/leak.hpp"
#include "core/air/natural_loss.hpp"
#include "core/air/odds.hpp"
#include "core/air/repair.hpp"
#include "core/air/warning.hpp"
#include "tests/support/catch.hpp"

using namespace treadwater;
using namespace treadwater::air;
using namespace treadwater::testing;

namespace {

constexpr double not_a_number = std::numeric_limits<double>::quiet_NaN();
constexpr double infinity = std::numeric_limits<double>::infinity();

// A nail hole in the middle of a good 205: a fitter may repair it, by either guide.
Damage nail() {
  Damage d;
  d.from_centre = millimetres(20.0);
  d.hole = millimetres(3.2);
  d.section_width = millimetres(205.0);
  d.tread = millimetres(5.0);
  d.between_outer_grooves = true;
  return d;
}

bool says(const Repair& repair, std::string_view id) {
  for (const Reason* reason : repair.reasons)
    if (reason->id == id) return true;
  return false;
}

void judged(const Damage& d, std::string_view id, Verdict british, Verdict american) {
  const Repair r = repair(d);
  INFO(id);
  CHECK(says(r, id));
  CHECK(r.british == british);
  CHECK(r.american == american);
}

template <class Change>
void after(Change change, std::string_view id, Verdict british, Verdict american) {
  Damage d = nail();
  change(d);
  judged(d, id, british, american);
}

constexpr auto may = Verdict::may;
constexpr auto ask = Verdict::ask;
constexpr auto no = Verdict::no;

}  // namespace

TEST_CASE("a nail hole in the middle of a sound tread may be repaired, from within") {
  judged(nail(), "method", may, may);
  CHECK(repair(nail()).reasons.size() == 1);
}

TEST_CASE("what rules a repair out, and what must be asked") {
  after([](Damage& d) { d.place = Place::sidewall; }, "place", no, no);
  after([](Damage& d) { d.place = Place::shoulder; }, "place", no, no);
  after([](Damage& d) { d.place = Place::bead; }, "place", no, no);
  after([](Damage& d) { d.from_centre = millimetres(-72.0); }, "outside_band", no, may);
  after([](Damage& d) { d.from_centre = millimetres(70.0); }, "edge_of_band", ask, may);
  after([](Damage& d) { d.between_outer_grooves = false; }, "outer_groove", may, no);
  after([](Damage& d) { d.between_outer_grooves.reset(); }, "which_groove", may, ask);
  after([](Damage& d) { d.hole = millimetres(6.1); }, "hole", no, no);
  after([](Damage& d) { d.tread = millimetres(1.5); }, "tread", no, no);
  after([](Damage& d) { d.driven_flat = true; }, "driven_flat", no, no);
  after([](Damage& d) { d.cords_or_cracks = true; }, "cords_or_cracks", no, no);
  after([](Damage& d) { d.self_supporting = true; }, "self_supporting", ask, ask);
  after([](Damage& d) { d.sealant_used = true; }, "sealant", ask, ask);
  after([](Damage& d) { d.age_years = 10.0; }, "too_old", no, no);
  after([](Damage& d) { d.age_years = 7.0; }, "old", ask, ask);
  after([](Damage& d) { d.earlier_repairs = 1; }, "earlier_repair", ask, ask);
}

TEST_CASE("a second repair is refused from speed symbol V up, and asked about below") {
  Damage d = nail();
  d.earlier_repairs = 1;
  using standard::SpeedSymbol;
  for (SpeedSymbol fast :
       {SpeedSymbol::V, SpeedSymbol::W, SpeedSymbol::Y, SpeedSymbol::ZR, SpeedSymbol::VR}) {
    d.symbol = fast;
    CHECK(repair(d).british == no);
  }
  for (SpeedSymbol slow : {SpeedSymbol::Q, SpeedSymbol::T, SpeedSymbol::H}) {
    d.symbol = slow;
    CHECK(repair(d).british == ask);
  }
}

TEST_CASE("a repair is refused where a measure is no number") {
  after([](Damage& d) { d.from_centre = millimetres(not_a_number); }, "outside_band", no, may);
  after([](Damage& d) { d.section_width = millimetres(not_a_number); }, "outside_band", no, may);
  after([](Damage& d) { d.hole = millimetres(not_a_number); }, "hole", no, no);
  after([](Damage& d) { d.tread = millimetres(not_a_number); }, "tread", no, no);
  after([](Damage& d) { d.age_years = not_a_number; }, "too_old", no, no);
}

TEST_CASE("the width of the band steps at 155 and 200 mm of section") {
  const auto share = [](double mm) { return repairable_width(millimetres(mm)) / millimetres(mm); };
  CHECK_THAT(share(155.0), WithinAbs(0.60, 1e-12));
  CHECK_THAT(share(155.1), WithinAbs(0.65, 1e-12));
  CHECK_THAT(share(200.0), WithinAbs(0.65, 1e-12));
  CHECK_THAT(share(200.1), WithinAbs(0.70, 1e-12));
}

TEST_CASE("run-flat sidewalls carry 52 km rather than 80 when fully laden; overload goes nowhere") {
  const auto km = [](double share) {
    return in_kilometres(*get_home(Way::self_supporting, share).distance);
  };
  CHECK_THAT(km(0.65), WithinAbs(80.0, 1e-9));
  CHECK_THAT(km(1.0), WithinAbs(52.0, 1e-9));
  for (Way way : {Way::self_supporting, Way::lubricated, Way::temporary_spare, Way::sealant_kit,
                  Way::plain_flat})
    for (double share : {1.01, not_a_number}) {
      CHECK(get_home(way, share).speed == kilometres_per_hour(0.0));
      CHECK(get_home(way, share).distance == metres(0.0));
    }
  CHECK(get_home(Way::plain_flat, 0.3).speed == kilometres_per_hour(0.0));
  CHECK(get_home(Way::plain_flat, 0.3).id == "plain_flat");
  CHECK(get_home(Way::temporary_spare, 0.3).id == "temporary_spare");
}

TEST_CASE("do not drive under two thirds of the set pressure, nor under 150 kPa") {
  const auto kpa = [](double set) { return in_kilopascals(do_not_drive_below(kilopascals(set))); };
  CHECK_THAT(kpa(800.0), WithinAbs(533.3, 0.05));
  CHECK_THAT(kpa(220.0), WithinAbs(150.0, 1e-9));
  CHECK_THAT(kpa(150.0), WithinAbs(120.0, 1e-9));
}

TEST_CASE("a leak is refused where it makes no sense") {
  const Discharge cd{0.8, 0.8};
  CHECK_FALSE(leak_through(millimetres(0.0), litres(29.2), celsius(20.0), cd));
  CHECK_FALSE(leak_through(millimetres(-1.0), litres(29.2), celsius(20.0), cd));
  CHECK_FALSE(leak_through(millimetres(1.0), litres(0.0), celsius(20.0), cd));
  CHECK_FALSE(leak_through(millimetres(1.0), litres(29.2), kelvin(-1.0), cd));
  CHECK_FALSE(leak_through(millimetres(not_a_number), litres(29.2), celsius(20.0), cd));
  const Leak leak = *leak_through(millimetres(1.0), litres(29.2), celsius(20.0), cd);
  CHECK_FALSE(time_between(leak, kilopascals(220.0), kilopascals(-1.0)));
  CHECK_FALSE(time_between(leak, kilopascals(not_a_number), kilopascals(100.0)));
  CHECK_FALSE(time_between(leak, kilopascals(220.0), kilopascals(not_a_number)));
  CHECK_FALSE(time_between({0.0, 1.0}, kilopascals(220.0), kilopascals(100.0)));
  CHECK_FALSE(pressure_after(leak, kilopascals(220.0), seconds(not_a_number)));
  CHECK_FALSE(leak_curve({not_a_number, not_a_number}, kilopascals(220.0)));
  CHECK(time_between(leak, kilopascals(100.0), kilopascals(150.0))->latest == seconds(0.0));
  CHECK(pressure_after(leak, kilopascals(220.0), seconds(1e9))->high == kilopascals(0.0));
}

TEST_CASE("cooling is not a leak, and a drop within the gauge's error gives none") {
  const GaugeReading hot{kilopascals(250.0), {celsius(60.0)}};
  const GaugeReading cool{carried_over(hot, {celsius(20.0)}), {celsius(20.0)}};
  CHECK(hot.pressure - cool.pressure > kilopascals(40.0));
  CHECK_FALSE(leak_between(hot, cool, minutes(30.0)));
  CHECK(judge_loss(AirHolder::tubeless, hot, cool, minutes(30.0)).kind == LossKind::natural);
  const GaugeReading first{kilopascals(220.0), {celsius(20.0)}};
  const GaugeReading near{kilopascals(211.0), {celsius(20.0)}};
  const GaugeReading far{kilopascals(190.0), {celsius(20.0)}};
  CHECK_FALSE(leak_between(first, near, minutes(10.0)));
  CHECK(leak_between(first, far, minutes(10.0)));
  CHECK(leak_between(first, {kilopascals(0.0), {celsius(20.0)}}, minutes(10.0)));
  CHECK_FALSE(leak_between(first, far, minutes(0.0)));
  CHECK_FALSE(leak_between(first, far, minutes(-10.0)));
  CHECK_FALSE(leak_between(first, {kilopascals(not_a_number), {celsius(20.0)}}, minutes(10.0)));
  CHECK_FALSE(leak_between(first, far, minutes(10.0), kilopascals(-1.0)));
}

TEST_CASE("30 kPa in a day is a leak, in six months it is not; 9 kPa in a day is in doubt") {
  const auto kind = [](double lost, Duration apart) {
    return judge_loss(AirHolder::tubeless, {kilopascals(220.0), {celsius(21.0)}},
                      {kilopascals(220.0 - lost), {celsius(21.0)}}, apart)
        .kind;
  };
  CHECK(kind(30.0, days(1.0)) == LossKind::leak);
  CHECK(kind(30.0, months(6.0)) == LossKind::natural);
  CHECK(kind(9.0, days(1.0)) == LossKind::doubtful);
  CHECK(kind(30.0, days(0.0)) == LossKind::doubtful);
  CHECK(kind(not_a_number, days(1.0)) == LossKind::doubtful);
}

TEST_CASE("a rate or an exposure that is no number counts as a certain puncture") {
  for (double bad : {not_a_number, -1.0, infinity})
    for (int spares : {0, 2}) CHECK(chance_of_more_than(spares, bad) == 1.0);
  CHECK(chance_of_more_than(0, expected_punctures({months(0.0), {}}, months(1.0))) == 1.0);
  CHECK(chance_of_more_than(-1, 0.0) == 1.0);
  CHECK(chance_of_more_than(0, 0.0) == 0.0);
  CHECK(chance_of_more_than(2000000000, 1.0) < 1e-100);
  CHECK(chance_of_more_than(0, 5000.0) == 1.0);
  CHECK(chance_of_more_than(3, 5000.0) == 1.0);
}
