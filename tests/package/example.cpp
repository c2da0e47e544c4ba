// Reads a sidewall, asks the laws of load and water, and asks a whole sheet for its answer.
#include <cstdio>
#include <string>

#include "core/json/contract.hpp"
#include "core/patch/rating.hpp"
#include "core/water/onset.hpp"

int main() {
  using namespace treadwater;
  const auto tyre = sidewall::read("205/55 R16 91V");
  if (!tyre) return 1;
  const auto greatest = patch::greatest_load(*tyre);
  const auto laws = patch::laws_of(*tyre);
  if (!greatest || !laws) return 1;
  std::printf("%s carries %.0f kg, and 430 kg need %.0f kPa\n", tyre->canonical.c_str(),
              in_kilograms(greatest->mass),
              in_kilopascals(patch::pressure_needed(laws->law, greatest->mass, kilograms(430.0))));
  std::printf("a smooth tyre at 220 kPa floats from %.0f km/h on\n",
              in_kilometres_per_hour(water::pressure_only_onset(kilopascals(220.0))));
  const std::string answer = json::answer(
      "tyre-check",
      R"({"size":"205/55 R16 91V","load":"430 kg","pressure":"220 kPa","tread":"3 mm","water":"5 mm"})");
  std::printf("%s\n", answer.c_str());
  return answer.find("\"ok\":true") == std::string::npos ? 1 : 0;
}
