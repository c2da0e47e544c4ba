// The same core, built with the page's own flags, with loops that a page never runs: how fast are
// its parts in WebAssembly? sidewall.test.mjs holds the clock.
#include <emscripten/bind.h>

#include <string>
#include <string_view>

#include "core/sidewall/sidewall.hpp"

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

}  // namespace

EMSCRIPTEN_BINDINGS(bench) {
  emscripten::function("readSidewalls", &read_sidewalls);
  emscripten::function("readSidewall", &read_sidewall);
}
