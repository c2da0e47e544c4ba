// libFuzzer target for reading a quantity: any bytes in any dimension, no crash, and these always
// hold: what is read lies within its bounds, and what is refused has a sentence that names the
// field and never one with a number that is none.
//
// Build:  clang++ -std=c++20 -O2 -g1 -fsanitize=fuzzer,address,undefined -I.
//           tests/fuzz/quantity_fuzz.cpp core/{quantity,words}/*.cpp
// Run:    ./a.out -max_len=200 new tests/fuzz/corpus/quantity     (new: an empty folder)
#include <cmath>
#include <cstddef>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <string>
#include <string_view>

#include "core/quantity/read.hpp"
#include "core/words/problem.hpp"

namespace {

using treadwater::Dimension;
using treadwater::QuantityRequest;

constexpr QuantityRequest requests[] = {
    {Dimension::pressure, "kPa", 0.0, 1000.0, "0 kPa", "1000 kPa", "2.2 bar"},
    {Dimension::mass, "kg", 20.0, 8000.0, "20 kg", "8000 kg", "430 kg"},
    {Dimension::length, "mm", 0.0, 0.025, "0 mm", "25 mm", "3 mm"},
    {Dimension::speed, "km/h", 1.0, 500.0, "1 km/h", "500 km/h", "90 km/h"},
    {Dimension::temperature, "°C", 223.15, 423.15, "-50 °C", "150 °C", "15 °C"},
    {Dimension::force, "N", 0.0, 1e5, "0 N", "100 kN", "4 kN"},
    {Dimension::rain, "mm/h", 0.0, 300.0, "0 mm/h", "300 mm/h", "10 mm/h"},
    {Dimension::time, "min", 0.0, 1e6, "0 s", "11 days", "20 min"},
    {Dimension::number, "%", 0.0, 100.0, "0 %", "100 %", "50"},
};

void demand(bool held, const char* what, const std::string& text) {
  if (held) return;
  std::fprintf(stderr, "%s\n--\n%s\n", what, text.c_str());
  std::abort();
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  if (size == 0) return 0;
  const QuantityRequest& request = requests[data[0] % std::size(requests)];
  const std::string text(reinterpret_cast<const char*>(data) + 1, size - 1);
  const auto read = treadwater::read_stored(text, request);
  if (read) {
    demand(*read >= request.least && *read <= request.most, "what is read is within its bounds",
           text);
    return 0;
  }
  const std::string said = treadwater::say(read.error(), treadwater::Phrase("Field"), request);
  demand(!read.error().code.empty() && said.rfind("Field", 0) == 0 && said.size() > 20,
         "what is refused has a sentence that names the field", text + "\n" + said);
  return 0;
}
