// Catch2, whichever of its two generations is installed: version 2 (Debian 12) or 3 (Debian 13).
// Test files include this header and no other of Catch2's, and take what the two name differently
// from treadwater::testing.
#pragma once

#include <string>

#if __has_include(<catch2/catch_all.hpp>)
#include <catch2/catch_all.hpp>
#else
#include <catch2/catch.hpp>
#endif

namespace treadwater::testing {

using Catch::Matchers::EndsWith;
using Catch::Matchers::StartsWith;
using Catch::Matchers::WithinAbs;
using Catch::Matchers::WithinRel;

#if __has_include(<catch2/catch_all.hpp>)
using Catch::Approx;
using Catch::Matchers::ContainsSubstring;
#else
using Catch::Detail::Approx;
inline auto ContainsSubstring(const std::string& part) { return Catch::Matchers::Contains(part); }
#endif

}  // namespace treadwater::testing
