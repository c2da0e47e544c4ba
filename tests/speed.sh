#!/bin/sh
# The table of tests/speed with its native column: builds the core natively as for normal use, in
# build/speed, and the WebAssembly, and prints how long everything takes and how much memory it
# needs.
#
#   sh tests/speed.sh
set -eu
root=$(cd "$(dirname "$0")/.." && pwd)
. "$root/web/setup.sh"

build="$root/build/speed"
need_packages g++ cmake ninja-build catch2 librapidcheck-dev nlohmann-json3-dev libexpected-dev
sh "$root/web/build.sh"
need_node
[ -f "$build/build.ninja" ] || cmake -S "$root" -B "$build" -G Ninja -DCMAKE_BUILD_TYPE=Release >/dev/null
cmake --build "$build" --target speed_native
node "$root/tests/speed/table.test.mjs"
