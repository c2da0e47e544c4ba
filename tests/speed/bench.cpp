// The same core, built with the page's own flags, with loops that a page never runs: how fast are
// its parts in WebAssembly? sidewall.test.mjs and water.test.mjs hold the clock.
#include <emscripten/bind.h>

#include <string>
#include <string_view>
#include <vector>

#include "core/air/leak.hpp"
#include "core/sidewall/sidewall.hpp"
#include "core/water/estimate.hpp"
#include "tests/support/fingerprint.hpp"

namespace {

// As people copy them: short and long, tidy and not, and two that cannot be read.
constexpr std::string_view texts[] = {
    "205/55 R16 91V",
    "195/65R15 91H XL M+S",
    "LT235/85R16 120/116R",
    "315/80 R22.5 156/150L (154/150M)",
    "180/55 ZR 17 M/C (73W)",
    "3.00S18 4PR",
    "P215/65R15XL 95H",
    "T145/80D18 103M",
    "165R13C94-93R",
    "31x10.50R15LT",
    "FR78-15",
    "5.60-15",
    "MT90B16 72H",
    "815x105",
    "205/55 r16 91v, extra load, M+S, DOT 4B9K 1XXX 2319 tubeless",
    "195/55/R16 85V",
    "205/55",
    "banana",
};

// Reads all the texts so many times; gives the count of readings.
int read_sidewalls(int rounds) {
  int readings = 0;
  for (int i = 0; i < rounds; ++i)
    for (std::string_view text : texts) {
      const auto reading = treadwater::sidewall::read(text);
      readings += reading || !reading.error().text.empty() ? 1 : 0;
    }
  return readings;
}

bool read_sidewall(const std::string& text) { return treadwater::sidewall::read(text).has_value(); }

treadwater::water::WetTyre wet_tyre(double kpa, double tread_mm, double film_mm) {
  using namespace treadwater;
  return {kilopascals(kpa),   millimetres(tread_mm), 1.0,
          millimetres(205.0), millimetres(film_mm),  millimetres(0.7)};
}

// The band of the onset, km/h: "low", "central" or "high".
double onset_band(double kpa, double tread_mm, double film_mm, const std::string& side) {
  const auto band = *aquaplaning_onset(wet_tyre(kpa, tread_mm, film_mm));
  return (side == "low" ? band.low : side == "high" ? band.high : band.central).stored();
}

// So many tyres in one water, each of a tread and a pressure of its own; gives the sum of their low
// speeds, km/h.
double onsets_in_water(int tyres, double film_mm) {
  using namespace treadwater;
  const water::OnsetsInWater water(millimetres(film_mm), millimetres(0.7));
  double sum = 0.0;
  for (int i = 0; i < tyres; ++i)
    sum += water.of(wet_tyre(180.0 + 0.02 * i, 8.0 * i / tyres, film_mm)).low.stored();
  return sum;
}

// All its draws, as the native unit test has them.
std::string onset_fingerprint(double kpa, double tread_mm, double film_mm) {
  const treadwater::water::OnsetDraws draws(wet_tyre(kpa, tread_mm, film_mm));
  return treadwater::testing::fingerprint(draws.sorted_kmh());
}

// The chance of floating at every km/h from 1 to 120; gives the sum.
double onset_curve(double kpa, double tread_mm, double film_mm) {
  const treadwater::water::OnsetDraws draws(wet_tyre(kpa, tread_mm, film_mm));
  double sum = 0.0;
  for (int kmh = 1; kmh <= 120; ++kmh)
    sum += draws.chance_of_floating(treadwater::kilometres_per_hour(kmh));
  return sum;
}

// A map of so many treads and films, 0 to 8 mm and 0.5 to 10 mm; gives the sum of its
// km/h where it floats.
double onset_map(int side) {
  using namespace treadwater;
  std::vector<Length> treads, films;
  for (int i = 0; i < side; ++i) {
    treads.push_back(millimetres(8.0 * i / (side - 1)));
    films.push_back(millimetres(0.5 + 9.5 * i / (side - 1)));
  }
  double sum = 0.0;
  for (const Speed v : treadwater::water::onset_map(wet_tyre(220.0, 3.0, 5.0), treads, films))
    if (v < treadwater::water::no_floating) sum += v.stored();
  return sum;
}

// So many leak-down curves, each of a hole of its own; gives the sum of their last times, s.
double leak_curves(int count) {
  using namespace treadwater;
  double sum = 0.0;
  for (int i = 0; i < count; ++i) {
    const auto leak =
        air::leak_through(millimetres(0.5 + 0.001 * i), litres(28.0), celsius(15.0), air::any_hole);
    if (!leak) continue;
    if (const auto curve = air::leak_curve(*leak, kilopascals(230.0)))
      sum += in_seconds(curve->back().time.latest);
  }
  return sum;
}

}  // namespace

EMSCRIPTEN_BINDINGS(bench) {
  emscripten::function("readSidewalls", &read_sidewalls);
  emscripten::function("readSidewall", &read_sidewall);
  emscripten::function("onsetBand", &onset_band);
  emscripten::function("onsetFingerprint", &onset_fingerprint);
  emscripten::function("onsetsInWater", &onsets_in_water);
  emscripten::function("onsetCurve", &onset_curve);
  emscripten::function("onsetMap", &onset_map);
  emscripten::function("leakCurves", &leak_curves);
}
