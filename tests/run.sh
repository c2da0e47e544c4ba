#!/bin/sh
# Installs what the tests need, builds the core natively and the page, and runs every test.
# The last line is "N passed, M failed"; the exit code is 0 only when all passed and no kind of test
# was found empty.
set -eu
root=$(cd "$(dirname "$0")/.." && pwd)
. "$root/web/setup.sh"

logs="$root/build/logs"
total_passed=0
total_failed=0
total_skipped=0
summary=

# count KIND PASSED FAILED SKIPPED: adds one kind's result to the sum. None at all is a failure: a
# run that found nothing to run must not look green.
count() {
  if [ $(($2 + $3 + $4)) -eq 0 ]; then
    set -- "$1 (no tests found)" 0 1 0
  fi
  total_passed=$((total_passed + $2))
  total_failed=$((total_failed + $3))
  total_skipped=$((total_skipped + $4))
  summary="$summary$(printf '  %-34s %5d passed %5d failed %5d skipped' "$@")
"
}

build_native() {
  if [ ! -f "$root/build/native/build.ninja" ]; then
    cmake -S "$root" -B "$root/build/native" -G Ninja -DTREADWATER_DEVELOPER=ON \
      -DCMAKE_BUILD_TYPE=None -DCMAKE_CXX_FLAGS="-O1 -g1 -D_GLIBCXX_ASSERTIONS" >/dev/null ||
      die "CMake could not set up the native build; see its message above."
  fi
  cmake --build "$root/build/native" || die "the core or its tests did not compile; see the message above."
}

# The core once more, by another compiler: for tests/parity.
build_clang() {
  if [ ! -f "$root/build/clang/build.ninja" ]; then
    cmake -S "$root" -B "$root/build/clang" -G Ninja -DCMAKE_CXX_COMPILER=clang++ \
      -DCMAKE_BUILD_TYPE=None -DCMAKE_CXX_FLAGS="-O2" >/dev/null ||
      die "CMake could not set up the build with clang++; see its message above."
  fi
  cmake --build "$root/build/clang" --target parity_native ||
    die "the core did not compile with clang++; see the message above."
}

# The closing lines of Catch2's report, which versions 2 and 3 write alike:
#   All tests passed (12 assertions in 3 test cases)
#   test cases: 5 | 4 passed | 1 failed
catch_counts() {
  awk '
    /^All tests passed/ { for (i = 1; i < NF; i++) if ($i == "in") passed += $(i + 1) }
    /^test cases:/ {
      n = split($0, part, "|")
      for (i = 2; i <= n; i++) {
        split(part[i], word, " ")
        if (part[i] ~ /passed|failed as expected/) passed += word[1]
        else if (part[i] ~ /failed/) failed += word[1]
        else if (part[i] ~ /skipped/) skipped += word[1]
      }
    }
    END { print passed + 0, failed + 0, skipped + 0 }' "$1"
}

# run_catch FOLDER: one executable of Catch2 tests.
run_catch() {
  say "tests/$1"
  log="$logs/$1.log"
  status=0
  if [ -x "$root/build/native/bin/$1_tests" ]; then
    "$root/build/native/bin/$1_tests" >"$log" 2>&1 || status=$?
  else
    echo "no test executable" >"$log"
  fi
  cat "$log"
  # shellcheck disable=SC2046 # three numbers
  set -- "$1" $(catch_counts "$log")
  if [ "$status" -ne 0 ] && [ "$3" -eq 0 ]; then
    say "tests/$1 stopped before its end (exit code $status)"
    set -- "$1 (stopped before its end)" "$2" 1 "$4"
  fi
  count "$@"
}

compiles() {
  "${CXX:-c++}" -std=c++20 -fsyntax-only -I "$root" -isystem "$root/build/native/headers" "$@" 2>"$logs/compile.log"
}

# Each file in compile-fail must compile as it stands, and must be refused with -DSHOULD_FAIL: the
# first shows that the second fails for the reason meant.
run_compile_fail() {
  say "tests/compile-fail"
  passed=0
  failed=0
  for file in "$root"/tests/compile-fail/*.cpp; do
    [ -f "$file" ] || continue
    if ! compiles "$file"; then
      say "FAILED: $file does not compile even without its mistake"
      cat "$logs/compile.log"
      failed=$((failed + 1))
    elif compiles -DSHOULD_FAIL "$file"; then
      say "FAILED: $file compiles with its mistake"
      failed=$((failed + 1))
    else
      passed=$((passed + 1))
    fi
  done
  count compile-fail "$passed" "$failed" 0
}

# The closing lines of Node's TAP report: "# pass 3", "# fail 0", "# cancelled 0", "# skipped 0".
node_counts() {
  awk '
    /^# pass / { passed = $3 }
    /^# (fail|cancelled) / { failed += $3 }
    /^# (skipped|todo) / { skipped += $3 }
    END { print passed + 0, failed + 0, skipped + 0 }' "$1"
}

# run_node FOLDER: Node's own test runner over a folder, one file after another, so that a browser
# or a stopwatch has the machine to itself.
run_node() {
  say "tests/$1"
  log="$logs/$1.tap"
  rm -f "$log"
  status=0
  folder=$1
  set --
  for file in "$root/tests/$folder"/*.test.mjs; do
    [ ! -f "$file" ] || set -- "$@" "$file"
  done
  if [ $# -eq 0 ]; then
    count "$folder" 0 0 0
    return 0
  fi
  node --test --test-concurrency=1 --test-reporter=spec --test-reporter-destination=stdout \
    --test-reporter=tap --test-reporter-destination="$log" "$@" </dev/null || status=$?
  # shellcheck disable=SC2046 # three numbers
  set -- "$folder" $(node_counts "$log")
  if [ "$status" -ne 0 ] && [ "$3" -eq 0 ]; then
    set -- "$1 (stopped before its end)" "$2" 1 "$4"
  fi
  count "$@"
}

need_browser() {
  [ -n "${CHROMIUM:-}" ] || [ -x /usr/bin/chromium ] || need_packages chromium
}

need_packages g++ clang cmake ninja-build catch2 librapidcheck-dev nlohmann-json3-dev libexpected-dev
need_browser
mkdir -p "$logs"
build_native
build_clang
sh "$root/web/build.sh"
need_node
need_modules tests

run_catch unit
run_catch property
run_compile_fail
run_node structure
run_node wasm
run_node register
run_node parity
run_node languages
run_node oracle
run_node solver
run_node package
run_node browser
run_node budget
run_node speed

echo
say "all tests, by kind:"
printf '%s' "$summary"
# How the outside checks are known, as the register's test counts them.
[ ! -f "$logs/register.tap" ] ||
  sed -n 's/^# \(register: .*\)/\1/p; s/^# \( .* worked out .*\)/\1/p' "$logs/register.tap"
[ "$total_skipped" -eq 0 ] || say "$total_skipped skipped"
echo "$total_passed passed, $total_failed failed"
[ "$total_failed" -eq 0 ]
