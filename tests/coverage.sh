#!/bin/sh
# How much of core/ the native tests cover, in lines and branches: builds the core in
# build/coverage, runs the unit and property tests and the inputs of the parity test, and prints a
# table. Takes some minutes, so it is not part of the test run.
#
#   sh tests/coverage.sh
set -eu
root=$(cd "$(dirname "$0")/.." && pwd)
. "$root/web/setup.sh"

build="$root/build/coverage"
need_packages g++ cmake ninja-build catch2 librapidcheck-dev nlohmann-json3-dev libexpected-dev gcovr
need_node
mkdir -p "$build"
[ -f "$build/build.ninja" ] || cmake -S "$root" -B "$build" -G Ninja -DCMAKE_BUILD_TYPE=None \
  -DCMAKE_CXX_FLAGS="-O0 --coverage -fprofile-abs-path" >/dev/null
cmake --build "$build"
find "$build" -name '*.gcda' -delete

"$build/bin/unit_tests" >"$build/unit.log" || die "the unit tests fail; see $build/unit.log."
"$build/bin/register_native" "$root"/tests/register/*.json >"$build/register.txt"
RC_PARAMS="seed=20260101 max_success=3000" "$build/bin/property_tests" >"$build/property.log" || die "the property tests fail; see $build/property.log."
node "$root/tests/parity/print_inputs.mjs" "$build/bin/parity_native" >"$build/inputs.txt"
"$build/bin/parity_native" <"$build/inputs.txt" >"$build/answers.txt"

# Branches that only an exception would take are left out: the core is built without any.
gcovr --root "$root" --object-directory "$build" --filter "$root/core/" --exclude-throw-branches \
  --exclude-unreachable-branches --fail-under-line 95 --fail-under-branch 85 --txt "$build/lines.txt" --json "$build/coverage.json" --print-summary \
  --html-details "$build/index.html" "$build" | tee "$build/summary.txt"
