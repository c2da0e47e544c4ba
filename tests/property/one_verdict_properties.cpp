// One danger, one verdict: the same tyre in the same water at the same speed is judged alike by
// every sheet that can be asked, and less information never gives a better answer.
#include <cmath>
#include <vector>

#include "core/quantity/write.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/property.hpp"
#include "tests/support/sheets.hpp"

using namespace treadwater;
using namespace treadwater::testing;

namespace {

constexpr int runs = 5000;
constexpr const char* words[] = {"unsaid", "dry", "damp", "wet", "downpour", "standing"};

double between(double low, double high) {
  return low + (high - low) * *rc::gen::inRange(0, 1001) / 1000.0;
}

std::string text(double value, const char* unit) { return fixed(value, 6) + unit; }

// A road tyre at a load that none of its pressures is too low for, so that only water differs.
struct Tyre {
  // In the tread of a third of them the law and advice have a say as well.
  double tread = *rc::gen::element(between(3.3, 9.0), between(3.3, 9.0), between(0.0, 9.0));  // mm
  double pressure = between(230.0, 270.0);                                                    // kPa
  double water = *rc::gen::element(0.0, between(0.0, 3.0), between(0.0, 20.0), between(0.0, 120.0));
  bool by_ruler = *rc::gen::arbitrary<bool>();
  const char* word = words[*rc::gen::inRange(0, 6)];
  double speed = between(5.0, 129.0);  // km/h
  const char* units = *rc::gen::element("metric", "uk", "us");

  bool is_wet() const { return by_ruler || word != words[0]; }

  void common(sheets::Input& input, const std::string& row, const char* depth) const {
    if (by_ruler) input.set(depth, text(water, " mm"));
    input.set("wetness", word);
    input.set("speed", text(speed, " km/h"));
    input.set("units", units);
    input.set("today", "2026-11-25");
    input.set(row + "tread", text(tread, " mm"));
    input.set(row + "pressure", text(pressure, " kPa"));
  }

  sheets::Answer tyre_check() const {
    sheets::Input input;
    common(input, "", "water");
    input.set("size", "205/55 R16 91V");
    input.set("load", "300 kg");
    return ask_sheet("tyre-check", input);
  }
  sheets::Answer car_check() const {
    sheets::Input input;
    input.set_rows("corners", 4);
    for (const char* row : {"corners.0.", "corners.1.", "corners.2.", "corners.3."}) {
      common(input, row, "water");
      input.set(std::string(row) + "size", "205/55 R16 91V");
      input.set(std::string(row) + "load", "300 kg");
    }
    return ask_sheet("car-check", input);
  }
  sheets::Answer field_list() const {
    sheets::Input input;
    input.set_rows("rows", 1);
    common(input, "rows.0.", "water");
    input.set("rows.0.size", "205/55 R16 91V");
    input.set("rows.0.load", "300 kg");
    return ask_sheet("field-list", input);
  }
  sheets::Answer standing_water() const {
    sheets::Input input;
    input.set_rows("tyres", 1);
    common(input, "tyres.0.", "depth");
    input.set("tyres.0.width", "205 mm");
    return ask_sheet("standing-water", input);
  }
  sheets::Answer stopping() const {
    sheets::Input input;
    common(input, "", "water");
    input.set("width", "205 mm");
    return ask_sheet("stopping", input);
  }
};

const sheets::Limit* limit_of(const sheets::Answer& answer, std::string_view id) {
  for (const sheets::Limit& limit : answer.limits)
    if (limit.id == id) return &limit;
  return nullptr;
}

bool has(const sheets::Answer& answer, std::string_view id) {
  for (const sheets::Caution& caution : answer.cautions)
    if (caution.id == id) return true;
  return false;
}

void same_limit(const sheets::Answer& one, const sheets::Answer& other, std::string_view id) {
  const sheets::Limit* a = limit_of(one, id);
  const sheets::Limit* b = limit_of(other, id);
  RC_ASSERT((a == nullptr) == (b == nullptr));
  if (a == nullptr) return;
  // A width of 205 mm typed and one read in a size may differ in their last digit.
  for (const auto side : {&sheets::Limit::low, &sheets::Limit::central, &sheets::Limit::high})
    RC_ASSERT(std::fabs(in_kilometres_per_hour(a->*side - b->*side)) < 1e-9);
}

// What the law or advice says of a worn tread is not asked by every sheet.
void same_water(const sheets::Answer& one, const sheets::Answer& other, const Tyre& tyre) {
  RC_ASSERT(one.ok() && other.ok());
  for (const char* limit : {"aquaplaning", "puddles", "crossing"}) same_limit(one, other, limit);
  for (const char* caution : {"slick_in_water", "standing_water"})
    RC_ASSERT(has(one, caution) == has(other, caution));
  if (tyre.tread < 3.3) return;
  if (limit_of(one, "crossing") == nullptr)
    RC_ASSERT(has(one, "speed_above_hold_to") == has(other, "speed_above_hold_to"));
  RC_ASSERT(told_speed(one) == told_speed(other));
  RC_ASSERT(one.verdict->level == other.verdict->level);
  if (one.hold_to) RC_ASSERT(one.hold_to->governed_by == other.hold_to->governed_by);
}

}  // namespace

TEST_CASE("the same tyre, water and speed: one verdict, limit and speed from every sheet") {
  CHECK(holds(
      "one verdict",
      [] {
        const Tyre tyre;
        RC_PRE(tyre.is_wet());
        const sheets::Answer alone = tyre.tyre_check();
        same_water(alone, tyre.car_check(), tyre);
        same_water(alone, tyre.field_list(), tyre);
        same_water(alone, tyre.standing_water(), tyre);
        const sheets::Answer stop = tyre.stopping();
        // With nothing else asked, a stop has no maximum speed of its own on a road without one.
        if (stop.hold_to || alone.hold_to) same_water(alone, stop, tyre);
      },
      runs));
}

namespace {

// What is moulded on a tyre, one part after another; each may be left out.
struct Sidewall {
  const char* dimensions;
  std::vector<const char*> parts;
};
const Sidewall sidewalls[] = {
    {"205/55 R16", {" 91V"}},
    {"225/45 R17", {" 94W", " XL"}},
    {"195/75 R16C", {" 107/105R", " 475 kPa"}},
    {"215/65 R16C", {" 109/107R", " 450 kPa"}},
    {"P205/75R15", {" 97S"}},
    {"LT235/85R16", {" 120/116R", " LOAD RANGE E"}},
    {"185 R14C", {" 102/100P", " 450 kPa"}},
    {"155 R13", {" 78S"}},
    {"28x3", {}},
};

// Fit, or a speed that may be driven: what less information must never bring about.
bool never_better(const sheets::Answer& less, const sheets::Answer& all) {
  if (!less.ok() || !all.ok()) return true;
  if (less.verdict->level == sheets::Level::note && all.verdict->level != sheets::Level::note)
    return false;
  return !told_speed(less) || (told_speed(all) && *told_speed(less) <= *told_speed(all));
}

}  // namespace

TEST_CASE("less said on the sidewall or of the tyre never makes it fit, nor its speed higher") {
  CHECK(holds(
      "less information",
      [] {
        const Sidewall& wall = sidewalls[*rc::gen::inRange(0, 9)];
        const double load = between(100.0, 1400.0);
        const double pressure = between(100.0, 600.0);
        const double tread = between(0.0, 9.0);
        const double water = between(0.0, 12.0);
        const auto ask = [&](std::size_t without) {
          sheets::Input input;
          std::string size = wall.dimensions;
          for (std::size_t i = 0; i < wall.parts.size(); ++i)
            if (i != without) size += wall.parts[i];
          input.set("size", size);
          input.set("load", text(load, " kg"));
          input.set("pressure", text(pressure, " kPa"));
          input.set("tread", text(tread, " mm"));
          input.set("water", text(water, " mm"));
          input.set("today", "2026-11-25");
          return ask_sheet("tyre-check", input);
        };
        const sheets::Answer all = ask(wall.parts.size());
        for (std::size_t part = 0; part < wall.parts.size(); ++part) {
          RC_LOG() << wall.dimensions << " without" << wall.parts[part];
          RC_ASSERT(never_better(ask(part), all));
        }
      },
      runs));
}

TEST_CASE("a stop or a crossing of a tyre less well described is never told a higher speed") {
  CHECK(holds(
      "less of the tyre",
      [] {
        const double tread = between(3.0, 9.0), pressure = between(200.0, 350.0);
        const double width = between(155.0, 255.0), water = between(0.0, 12.0);
        const char* road = *rc::gen::element("grippy", "ordinary", "polished");
        const char* const left_out[] = {"tread", "pressure", "width", "road"};
        const auto stop = [&](int without) {
          sheets::Input input;
          input.set("speed", "90 km/h");
          input.set("seen", "120 m");
          input.set("water", text(water, " mm"));
          input.set("today", "2026-11-25");
          const std::string values[] = {text(tread, " mm"), text(pressure, " kPa"),
                                        text(width, " mm"), road};
          for (int i = 0; i < 4; ++i)
            if (i != without) input.set(left_out[i], values[i]);
          return ask_sheet("stopping", input);
        };
        const sheets::Answer all = stop(4);
        for (int i = 0; i < 4; ++i) {
          RC_LOG() << left_out[i];
          RC_ASSERT(*told_speed(stop(i)) <= *told_speed(all));
        }
      },
      runs));
}
