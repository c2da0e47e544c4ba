// Facts of order that every sheet must keep: what makes a case worse never raises the speed to hold
// to, never betters the verdict, and never lowers the pressure that is needed.
#include <cmath>
#include <limits>
#include <string>
#include <vector>

#include "core/quantity/write.hpp"
#include "tests/support/catch.hpp"
#include "tests/support/property.hpp"
#include "tests/support/sheets.hpp"

using namespace treadwater;
using namespace treadwater::testing;

namespace {

double between(double low, double high) {
  return low + (high - low) * *rc::gen::inRange(0, 1001) / 1000.0;
}

// A field of a sheet that may be anything from low to high, and which way is the worse one: 1 more,
// -1 less, 0 neither.
struct Field {
  std::string path;
  double low;
  double high;
  const char* unit;
  int worse;
};

struct Kind {
  const char* sheet;
  std::vector<Field> fields;
  std::vector<std::pair<const char*, std::vector<const char*>>> choices;  // one of them
  bool verdict;  // that no change for the worse betters it, beside the speed
  int runs;
};

using Texts = std::vector<std::pair<std::string, std::string>>;

sheets::Answer ask(const sheets::Sheet& sheet, const Texts& given) {
  sheets::Input input;
  std::vector<std::pair<std::string, std::size_t>> rows;
  const auto count = [&rows](const std::string& path) {
    const std::size_t dot = path.find('.');
    if (dot == std::string::npos) return;
    const std::string list = path.substr(0, dot);
    const auto row = static_cast<std::size_t>(std::stoi(path.substr(dot + 1))) + 1;
    for (auto& known : rows)
      if (known.first == list) {
        known.second = std::max(known.second, row);
        return;
      }
    rows.emplace_back(list, row);
  };
  for (const auto& preset : sheet.describe().example.input) {
    input.set(preset.first, std::string(preset.second));
    count(std::string(preset.first));
  }
  input.set("today", "2026-11-25");
  for (const auto& [path, text] : given) {
    input.set(path, text);
    count(path);
  }
  for (const auto& [list, n] : rows) input.set_rows(list, n);
  return sheet.answer(input);
}

// In km/h: none where the verdict is "not fit", above everything where nothing limits.
double speed_of(const sheets::Answer& a) {
  if (a.hold_to) return in_kilometres_per_hour(a.hold_to->speed);
  return a.verdict && a.verdict->level == sheets::Level::unfit
             ? 0.0
             : std::numeric_limits<double>::infinity();
}

double pressure_of(const sheets::Answer& a) {
  for (const sheets::Figure& figure : a.figures)
    if (figure.id == "pressure_needed") return figure.value;
  return std::numeric_limits<double>::infinity();  // none will do
}

void worse_is_never_better(const Kind& kind) {
  const sheets::Sheet* sheet = sheets::find_sheet(sheets::all_sheets(), kind.sheet);
  RC_ASSERT(sheet != nullptr);
  std::vector<double> values;
  for (const Field& field : kind.fields) values.push_back(between(field.low, field.high));
  Texts chosen;
  for (const auto& [path, some] : kind.choices)
    chosen.emplace_back(path, some[*rc::gen::inRange<std::size_t>(0, some.size())]);
  const auto texts = [&] {
    Texts all = chosen;
    for (std::size_t i = 0; i < values.size(); ++i)
      all.emplace_back(kind.fields[i].path, fixed(values[i], 4) + kind.fields[i].unit);
    return all;
  };
  const Texts before = texts();
  std::size_t changed = 0;
  do changed = *rc::gen::inRange<std::size_t>(0, values.size());
  while (kind.fields[changed].worse == 0);
  const Field& field = kind.fields[changed];
  values[changed] =
      field.worse > 0 ? between(values[changed], field.high) : between(field.low, values[changed]);
  const Texts after = texts();
  for (std::size_t i = 0; i < after.size(); ++i)
    RC_LOG() << after[i].first << " " << before[i].second << " -> " << after[i].second << "\n";
  const sheets::Answer good = ask(*sheet, before);
  const sheets::Answer bad = ask(*sheet, after);
  for (const auto* a : {&good, &bad})
    for (const auto& problem : a->problems)
      RC_LOG() << problem.field << " " << problem.text.str() << "\n";
  RC_ASSERT(good.ok());
  RC_ASSERT(bad.ok());
  RC_LOG() << good.verdict->text.str() << "\n" << bad.verdict->text.str() << "\n";
  RC_ASSERT(speed_of(bad) <= speed_of(good) + 1e-9);
  if (kind.verdict) RC_ASSERT(bad.verdict->level >= good.verdict->level);
  // A load that no pressure carries has no figure.
  RC_ASSERT(pressure_of(bad) >= pressure_of(good) - 1e-9);
}

bool holds_for(const Kind& kind) {
  return holds(
      kind.sheet, [&kind] { worse_is_never_better(kind); }, kind.runs);
}

const std::vector<const char*> any_tyre = {"road", "winter",    "studded", "gravel",
                                           "wet",  "cut-slick", "slick"};
const std::vector<const char*> any_units = {"metric", "uk", "us"};

}  // namespace

TEST_CASE("tyre-check: more load or water, less tread or pressure is never better") {
  CHECK(holds_for({"tyre-check",
                   {{"load", 100.0, 900.0, " kg", 1},
                    {"pressure", 100.0, 350.0, " kPa", -1},
                    {"tread", 0.0, 9.0, " mm", -1},
                    {"water", 0.0, 120.0, " mm", 1},
                    {"speed", 20.0, 250.0, " km/h", 1}},
                   {{"size",
                     {"205/55 R16 91V", "195/65 R15 95T XL", "225/40 ZR18 92Y XL", "P205/75R15 97S",
                      "T125/80 D15 95M", "165 SR 13"}},
                    {"tyre_kind", any_tyre},
                    {"units", any_units},
                    {"pressure_state", {"cold", "hot"}},
                    {"surface", {"asphalt", "smooth", "porous", "loose"}}},
                   true,
                   3000}));
}

TEST_CASE("standing-water: deeper, longer, wider, balder, softer is never better") {
  CHECK(holds_for({"standing-water",
                   {{"depth", 0.0, 250.0, " mm", 1},
                    {"tyres.0.tread", 0.0, 9.0, " mm", -1},
                    {"tyres.0.pressure", 60.0, 350.0, " kPa", -1},
                    {"tyres.0.width", 125.0, 325.0, " mm", 1},
                    {"tyres.1.tread", 0.0, 9.0, " mm", -1},
                    {"speed", 10.0, 160.0, " km/h", 1}},
                   {{"tyres.0.tyre_kind", any_tyre},
                    {"tyres.1.tyre_kind", any_tyre},
                    {"vehicle", {"small", "large", "four-wheel"}},
                    {"moving", {"no", "yes"}},
                    {"units", any_units}},
                   true,
                   1000}));
}

TEST_CASE("standing-water: more rain, a longer way, a flatter road, a deeper rut is never better") {
  CHECK(holds_for({"standing-water",
                   {{"rain", 0.0, 300.0, " mm/h", 1},
                    {"path", 1.0, 200.0, " m", 1},
                    {"crossfall", 0.0, 15.0, "", -1},
                    {"grade", 0.0, 25.0, "", 0},
                    {"rut", 0.0, 60.0, " mm", 1},
                    {"tyres.0.tread", 0.0, 9.0, " mm", -1}},
                   {{"depth", {""}}, {"surface", {"asphalt", "smooth", "concrete", "loose"}}},
                   true,
                   1000}));
}

TEST_CASE("car-check: a worse corner or axle, or deeper water, never raises the speed") {
  CHECK(holds_for({"car-check",
                   {{"front_axle", 300.0, 1300.0, " kg", 1},
                    {"rear_axle", 300.0, 1300.0, " kg", 1},
                    {"water", 0.0, 120.0, " mm", 1},
                    {"corners.0.pressure", 120.0, 300.0, " kPa", -1},
                    {"corners.1.tread", 0.0, 9.0, " mm", -1},
                    {"corners.2.tread", 0.0, 9.0, " mm", -1},
                    {"corners.3.pressure", 120.0, 300.0, " kPa", -1}},
                   {{"corners.0.tread_inner", {""}},
                    {"corners.0.tread_outer", {""}},
                    {"tyre_kind", any_tyre},
                    {"units", any_units}},
                   false,  // a softer tyre may match the other one of its axle
                   700}));
}

TEST_CASE("cold-pressure: more load, speed or camber never lowers the pressure needed") {
  CHECK(holds_for({"cold-pressure",
                   {{"load", 100.0, 750.0, " kg", 1},
                    {"speed", 20.0, 260.0, " km/h", 1},
                    {"camber", 0.0, 4.0, "", 1}},
                   {{"size",
                     {"205/55 R16 91V", "225/45 R17 94W XL", "P205/75R15 97S", "245/40 R18 97Y",
                      "195/75 R16 C 107/105R 475 kPa", "LT235/85R16 120/116R 550 kPa"}},
                    {"placard", {""}},
                    {"gauge", {"", "2.3 bar"}},
                    {"units", any_units}},
                   true,
                   3000}));
}

TEST_CASE("fitment: a faster car or a heavier wheel load never betters the verdict") {
  CHECK(holds_for(
      {"fitment",
       {{"top_speed", 80.0, 300.0, " km/h", 1}, {"load", 150.0, 800.0, " kg", 1}},
       {{"new_size", {"205/55 R16 91V", "195/65 R15 91T", "205/55 R16 94W XL", "185/65 R15 88H"}},
        {"units", any_units}},
       true,
       3000}));
}

TEST_CASE("puncture: a heavier load, a greater loss or a larger hole is never better") {
  CHECK(holds_for(
      {"puncture",
       {{"load", 100.0, 800.0, " kg", 1},
        {"second", 0.0, 200.0, " kPa", -1},
        {"hole", 0.5, 12.0, " mm", 1},
        {"from_centre", 0.0, 110.0, " mm", 1},
        {"way", 0.0, 300.0, " km", 1}},
       {{"help", {"plain_flat", "self_supporting", "lubricated", "temporary_spare", "sealant_kit"}},
        {"units", any_units}},
       true,
       3000}));
}

TEST_CASE("field-list: a worse tyre of the list, or deeper water, never raises the speed") {
  CHECK(holds_for({"field-list",
                   {{"water", 0.0, 120.0, " mm", 1},
                    {"rows.0.load", 100.0, 900.0, " kg", 1},
                    {"rows.1.tread", 0.0, 9.0, " mm", -1},
                    {"rows.2.pressure", 100.0, 350.0, " kPa", -1},
                    {"rows.3.tread", 0.0, 9.0, " mm", -1}},
                   {{"rows.1.tyre_kind", any_tyre}, {"units", any_units}},
                   true,
                   700}));
}

TEST_CASE("wear-log: less tread at the last reading never betters the verdict") {
  CHECK(holds_for(
      {"wear-log",
       {{"readings.2.depth", 0.5, 6.0, " mm", -1}, {"readings.4.depth", 0.5, 7.0, " mm", -1}},
       {{"units", any_units}},
       true,
       5000}));
}

TEST_CASE("stage-tyres: deeper water on a stage never betters the verdict") {
  CHECK(holds_for(
      {"stage-tyres",
       {{"stages.3.water", 0.0, 180.0, " mm", 1}, {"cars.0.load", 150.0, 600.0, " kg", 1}},
       {{"attitude", {"average", "steady"}}},
       true,
       100}));
}
