// Facts of order that must hold for any tyre, over 100 000 random ones each.
#include "core/patch/contact.hpp"
#include "core/patch/load_capacity.hpp"
#include "core/quantity/write.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/property.hpp"
#include "tests/support/sheets.hpp"

using namespace treadwater;
using namespace treadwater::testing;

namespace {

// A number from low to high in steps of a ten-thousandth of the span.
double between(double low, double high) {
  return low + (high - low) * *rc::gen::inRange(0, 10001) / 10000.0;
}

std::string text(double value, const char* unit) { return fixed(value, 4) + unit; }

const char* any_size() {
  return *rc::gen::element("205/55 R16 91V", "195/65 R15 95T XL", "225/40 ZR18 92Y XL",
                           "P205/75R15 97S", "255/35 R19 96W", "T125/80 D15 95M");
}

sheets::Input check_of(const char* size, double load_kg, double pressure_kpa) {
  sheets::Input input;
  input.set("size", size);
  input.set("load", text(load_kg, " kg"));
  input.set("pressure", text(pressure_kpa, " kPa"));
  input.set("tread", "7 mm");
  input.set("today", "2026-11-25");
  return input;
}

Speed limit_of(const sheets::Answer& answer, std::string_view id, Speed sheets::Limit::*side) {
  for (const sheets::Limit& limit : answer.limits)
    if (limit.id == id) return limit.*side;
  return kilometres_per_hour(1e9);
}

}  // namespace

TEST_CASE("more load needs more pressure, and that pressure carries it") {
  CHECK(holds("load law", [] {
    const auto law =
        *rc::gen::element(patch::european_standard_load(), patch::european_extra_load(),
                          patch::p_metric_standard_load(), patch::temporary_spare_law());
    const Mass greatest = kilograms(between(200.0, 1200.0));
    const Mass load = greatest * between(0.05, 1.0);
    const Mass more = load + (greatest - load) * between(0.0, 1.0);
    RC_ASSERT(patch::pressure_needed(law, greatest, load) <=
              patch::pressure_needed(law, greatest, more));
    RC_ASSERT(patch::load_capacity(law, greatest, patch::pressure_needed(law, greatest, load)) >=
              load * (1.0 - 1e-12));
  }));
}

TEST_CASE("more load makes the patch longer and more pressure makes it shorter") {
  CHECK(holds("patch", [] {
    const patch::TyreSize size{millimetres(between(135.0, 345.0)), between(30.0, 82.0),
                               inches(between(12.0, 22.0))};
    const GaugePressure p = kilopascals(between(150.0, 400.0));
    const Mass load = kilograms(between(100.0, 900.0));
    const Mass rated = kilograms(950.0);
    const auto patch = patch::contact_patch(size, p, load, rated);
    RC_ASSERT(patch.length < patch::contact_patch(size, p, load * 1.1, rated).length);
    RC_ASSERT(patch.length > patch::contact_patch(size, p * 1.1, load, rated).length);
    RC_ASSERT(patch.width <= patch::contact_patch(size, p, load * 1.1, rated).width);
  }));
}

TEST_CASE("more load never raises, more pressure never lowers, the speed allowed by load") {
  CHECK(holds(
      "speed by load",
      [] {
        const char* size = any_size();
        const double load = between(100.0, 800.0);
        const double pressure = between(100.0, 420.0);
        const auto none_above = [](const sheets::Answer& worse, const sheets::Answer& better) {
          for (const auto side :
               {&sheets::Limit::low, &sheets::Limit::central, &sheets::Limit::high})
            RC_ASSERT(limit_of(worse, "load_at_pressure", side) <=
                      limit_of(better, "load_at_pressure", side));
        };
        const auto here = testing::tyre_check(check_of(size, load, pressure));
        none_above(testing::tyre_check(check_of(size, load + between(0.0, 100.0), pressure)), here);
        none_above(here, testing::tyre_check(check_of(size, load, pressure + between(0.0, 60.0))));
      },
      20000));
}

TEST_CASE("the hold-to speed is never above the low end of any limit") {
  CHECK(holds(
      "hold-to",
      [] {
        sheets::Input input = check_of(any_size(), between(100.0, 700.0), between(150.0, 350.0));
        input.set("tread", text(between(0.0, 9.0), " mm"));
        input.set("water", text(between(0.0, 60.0), " mm"));
        input.set("units", *rc::gen::element("metric", "uk", "us"));
        const auto answer = testing::tyre_check(input);
        RC_ASSERT(answer.ok());
        RC_ASSERT(bool(answer.hold_to) != bool(answer.no_limit));
        for (const auto& limit : answer.limits) {
          const Speed kept = limit.low * limit.share_kept + kilometres_per_hour(1e-6);
          if (limit.id == "puddles") continue;
          if (answer.hold_to) RC_ASSERT(answer.hold_to->speed <= kept);
          if (answer.no_limit) RC_ASSERT(kept >= kilometres_per_hour(130.0));
          if (answer.no_limit) RC_ASSERT(*answer.no_limit->own <= kept);
        }
      },
      20000));
}
