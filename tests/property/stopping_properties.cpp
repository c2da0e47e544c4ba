// Facts of order that the sheet `stopping` must keep on any road.

#include "core/quantity/write.hpp"
#include "core/standard/friction.hpp"
#include "core/water/estimate.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/property.hpp"
#include "tests/support/sheets.hpp"

using namespace treadwater;
using namespace treadwater::testing;

namespace {

// Each answer weighs thousands of draws of the onset of floating.
constexpr int runs = 5000;

double between(double low, double high) {
  return low + (high - low) * *rc::gen::inRange(0, 1001) / 1000.0;
}

struct Case {
  const char* tyre =
      *rc::gen::element("road", "winter", "studded", "gravel", "wet", "cut-slick", "slick");
  std::string_view surface = (standard::friction_surfaces().begin() + *rc::gen::inRange(0, 13))->id;
  double speed = between(5.0, 200.0);                                             // km/h
  double water = *rc::gen::element(0.0, between(0.1, 3.0), between(0.1, 120.0));  // mm
  double tread = between(0.0, 9.0);                                               // mm
  double grade = between(-15.0, 15.0);                                            // %
  double seen = between(5.0, 400.0);                                              // m
  double radius = between(10.0, 800.0);                                           // m
  double reaction = between(0.3, 4.0);                                            // s

  // By a ruler; or by a word, which comes in its place or beside it.
  sheets::Answer ask(const char* word = nullptr, bool both = false) const {
    const auto text = [](double value, const char* unit) { return fixed(value, 6) + unit; };
    sheets::Input input;
    input.set("tyre_kind", tyre);
    input.set("surface", std::string(surface));
    input.set("speed", text(speed, " km/h"));
    if (word != nullptr) input.set("wetness", word);
    if (word == nullptr || both) input.set("water", text(water, " mm"));
    input.set("tread", text(tread, " mm"));
    input.set("grade", text(grade, ""));
    input.set("seen", text(seen, " m"));
    input.set("radius", text(radius, " m"));
    input.set("reaction", text(reaction, " s"));
    input.set("today", "2026-11-25");
    return testing::stopping(input);
  }
  Speed held() const { return *testing::told_speed(ask()); }
};

}  // namespace

TEST_CASE("nothing that makes the road worse raises the hold-to speed") {
  CHECK(holds(
      "worse roads",
      [] {
        Case one;
        const Speed before = one.held();
        Case worse = one;
        switch (*rc::gen::inRange(0, 6)) {
          case 0:
            worse.water += between(0.0, 5.0);
            break;
          case 1:
            worse.tread -= between(0.0, worse.tread);
            break;
          case 2:
            worse.grade -= between(0.0, 10.0);
            break;
          case 3:
            worse.seen -= between(0.0, worse.seen - 1.0);
            break;
          case 4:
            worse.radius -= between(0.0, worse.radius - 5.0);
            break;
          default:
            worse.reaction += between(0.0, 2.0);
        }
        RC_ASSERT(worse.held() <= before);
      },
      runs));
}

TEST_CASE("of two words for water the wetter is never better, and a word dries no road") {
  CHECK(holds(
      "words",
      [] {
        constexpr const char* words[] = {"dry", "damp", "wet", "downpour", "standing"};
        const Case one;
        const int wetter = *rc::gen::inRange(1, 5);
        const sheets::Answer drier = one.ask(words[*rc::gen::inRange(0, wetter)]);
        const sheets::Answer wet = one.ask(words[wetter]);
        RC_ASSERT(*testing::told_speed(wet) <= *testing::told_speed(drier));
        RC_ASSERT(wet.verdict->level >= drier.verdict->level);
        RC_ASSERT(*testing::told_speed(one.ask(words[wetter], true)) <=
                  *testing::told_speed(one.ask()));
      },
      runs));
}

TEST_CASE("a car at the speed to hold to is not unfit for it") {
  CHECK(holds(
      "held",
      [] {
        Case one;
        const Speed held = std::min(one.held(), kilometres_per_hour(130.0));
        RC_PRE(held > kilometres_per_hour(1.0));
        one.speed = in_kilometres_per_hour(held);
        RC_ASSERT(one.ask().verdict->level < sheets::Level::unfit);
      },
      runs));
}

TEST_CASE("the hold-to speed is under the low end of every limit, and the verdict goes by it") {
  CHECK(holds(
      "limits",
      [] {
        const Case one;
        const sheets::Answer answer = one.ask();
        RC_ASSERT(answer.ok());
        for (const sheets::Limit& limit : answer.limits) {
          RC_ASSERT(limit.low <= limit.central);
          RC_ASSERT(limit.central <= limit.high);
          if (limit.id != "puddles" && answer.hold_to)
            RC_ASSERT(answer.hold_to->speed <=
                      limit.low * limit.share_kept + kilometres_per_hour(1e-6));
        }
        const Speed held = *testing::told_speed(answer);
        RC_ASSERT(held < kilometres_per_hour(130.0) || answer.no_limit);
        if (kilometres_per_hour(one.speed) > held + kilometres_per_hour(1e-3))
          RC_ASSERT(answer.verdict->level != sheets::Level::note);
      },
      runs));
}

TEST_CASE("figures stand in the order low, central, high, and the charts in that order too") {
  CHECK(holds(
      "order",
      [] {
        const sheets::Answer answer = Case().ask();
        for (const sheets::Figure& figure : answer.figures) {
          if (figure.low) RC_ASSERT(*figure.low <= figure.value);
          if (figure.high) RC_ASSERT(figure.value <= *figure.high);
        }
        for (const sheets::Chart& chart : answer.charts) {
          const sheets::Series& own = chart.series.front();
          for (std::size_t i = 0; i < own.low.size(); ++i) {
            RC_ASSERT(!(own.low[i] > own.y[i]));  // a gap is no number
            RC_ASSERT(!(own.y[i] > own.high[i]));
          }
        }
      },
      runs));
}
