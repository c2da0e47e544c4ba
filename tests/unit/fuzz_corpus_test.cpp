// Everything the fuzzer once found interesting, read again: see tests/fuzz/sidewall_fuzz.cpp, which
// stops the program where something that must hold does not.
#include <cstdint>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>

#include "tests/support/catch.hpp"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size);

TEST_CASE("the fuzzer's corpus of sidewall texts still holds what must hold") {
  int texts = 0;
  for (const auto& entry :
       std::filesystem::directory_iterator(TREADWATER_ROOT "/tests/fuzz/corpus/sidewall")) {
    std::ifstream in(entry.path(), std::ios::binary);
    const std::string bytes{std::istreambuf_iterator<char>(in), {}};
    INFO(entry.path().string());
    CHECK(LLVMFuzzerTestOneInput(reinterpret_cast<const std::uint8_t*>(bytes.data()),
                                 bytes.size()) == 0);
    ++texts;
  }
  CHECK(texts > 20);
}
