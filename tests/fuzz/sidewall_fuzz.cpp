// libFuzzer target for the sidewall reader: any bytes, no crash, and these always hold:
// parts lie within the text, every mark stands somewhere in it, the canonical text reads back to
// itself, a suggested size reads.
//
// Build:  clang++ -std=c++20 -O2 -g1 -fsanitize=fuzzer,address,undefined -I.
//           tests/fuzz/sidewall_fuzz.cpp core/sidewall/*.cpp core/standard/*.cpp
//           core/quantity/*.cpp
// Run:    ASAN_OPTIONS=quarantine_size_mb=1:malloc_context_size=0
//           ./a.out -max_len=400 new tests/fuzz/corpus/sidewall     (new: an empty folder)
#include <algorithm>
#include <cstddef>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <string>
#include <string_view>

#include "tests/support/sidewall_print.hpp"

namespace {

using treadwater::testing::everything;
using treadwater::testing::what_it_is;

void demand(bool held, const char* what, const std::string& a, const std::string& b) {
  if (held) return;
  std::fprintf(stderr, "%s\n--\n%s\n--\n%s\n", what, a.c_str(), b.c_str());
  std::abort();
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const std::string text(reinterpret_cast<const char*>(data), size);
  const auto first = treadwater::sidewall::read(text);
  if (!first) {
    const auto& trouble = first.error();
    demand(!trouble.code.empty() && trouble.text.size() > 20, "a trouble has a sentence", text, "");
    demand(trouble.position <= text.size(), "a trouble stands in the text", text, "");
    if (!trouble.nearest.empty()) {
      demand(bool(treadwater::sidewall::read(trouble.nearest)), "a suggestion reads", text,
             trouble.nearest);
    }
    return 0;
  }
  for (const auto& part : first->parts) {
    demand(part.begin < part.end && part.end <= text.size(), "a part lies within the text", text,
           std::string(part.id));
  }
  for (const auto& mark : first->marks) {
    demand(!mark.meaning.empty(), "a mark has a meaning", text, std::string(mark.id));
    const bool stands_there =
        std::any_of(first->parts.begin(), first->parts.end(),
                    [&](const treadwater::sidewall::Part& part) { return part.id == mark.id; });
    demand(stands_there, "a mark stands in the text", text, std::string(mark.id));
  }
  const auto second = treadwater::sidewall::read(first->canonical);
  demand(bool(second), "the canonical text reads", text, first->canonical);
  demand(what_it_is(*first) == what_it_is(*second), "the canonical text reads the same",
         text + "\n" + what_it_is(*first), what_it_is(*second));
  const auto third = treadwater::sidewall::read(second->canonical);
  demand(third && everything(*third) == everything(*second), "the canonical text is settled",
         everything(*second), third ? everything(*third) : third.error().text);
  return 0;
}
