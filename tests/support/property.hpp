// A property held over many random inputs, as one line in a Catch2 test:
//
//   TEST_CASE("more tread never lowers the onset") {
//     CHECK(holds("more tread never lowers the onset", [](...generated values...) { RC_ASSERT(...);
//     }));
//   }
//
// The inputs are random, yet the same at every run, so that a red run can be repeated. Other
// inputs: RC_PARAMS="seed=7" (and max_success=1000000 for a longer hunt), as rapidcheck documents
// it. The counter-example, shrunk, is printed.
#pragma once

#include <rapidcheck.h>

#include <cstdlib>
#include <iostream>
#include <string>
#include <utility>

namespace treadwater::testing {

inline constexpr int default_runs = 100000;

template <class Testable>
bool holds(const std::string& description, Testable&& testable, int runs = default_runs) {
  rc::detail::TestParams params;
  if (std::getenv("RC_PARAMS") != nullptr) {
    params = rc::detail::configuration().testParams;
  } else {
    params.seed = 20260101;
    params.maxSuccess = runs;
  }
  rc::detail::TestMetadata about;
  about.id = description;
  about.description = description;
  const rc::detail::TestResult result =
      rc::detail::checkTestable(std::forward<Testable>(testable), about, params);
  const bool held = result.template is<rc::detail::SuccessResult>();
  if (!held) {
    std::cerr << description << ":\n";
    rc::detail::printResultMessage(result, std::cerr);
    std::cerr << '\n';
  }
  return held;
}

}  // namespace treadwater::testing
