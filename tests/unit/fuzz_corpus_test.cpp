// Everything the fuzzer once found interesting, read again: see tests/fuzz, whose targets stop the
// program where something that must hold does not.
#include <cstdint>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>

#include "tests/support/catch.hpp"

extern "C" int fuzz_sidewall(const std::uint8_t* data, std::size_t size);
extern "C" int fuzz_quantity(const std::uint8_t* data, std::size_t size);
extern "C" int fuzz_answer(const std::uint8_t* data, std::size_t size);

namespace {

int replay(const char* corpus, int (*target)(const std::uint8_t*, std::size_t)) {
  int texts = 0;
  for (const auto& entry : std::filesystem::directory_iterator(
           std::string(TREADWATER_ROOT "/tests/fuzz/corpus/") + corpus)) {
    std::ifstream in(entry.path(), std::ios::binary);
    const std::string bytes{std::istreambuf_iterator<char>(in), {}};
    INFO(entry.path().string());
    CHECK(target(reinterpret_cast<const std::uint8_t*>(bytes.data()), bytes.size()) == 0);
    ++texts;
  }
  return texts;
}

}  // namespace

TEST_CASE("the fuzzer's corpus of sidewall texts still holds what must hold") {
  CHECK(replay("sidewall", fuzz_sidewall) > 20);
}

TEST_CASE("the fuzzer's corpus of quantities still holds what must hold") {
  CHECK(replay("quantity", fuzz_quantity) > 20);
}

TEST_CASE("the fuzzer's corpus of answers still holds what must hold") {
  CHECK(replay("answer", fuzz_answer) > 20);
}
