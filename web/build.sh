#!/bin/sh
# Builds the page into web/dist: the C++ core to WebAssembly, then the page around it; and the core
# alone, for other programs, into build/npm/treadwater.
set -eu
root=$(cd "$(dirname "$0")/.." && pwd)
. "$root/web/setup.sh"

build_module() {
  if [ ! -f "$root/build/wasm/build.ninja" ]; then
    emcmake cmake -S "$root" -B "$root/build/wasm" -G Ninja -DCMAKE_BUILD_TYPE=Release >/dev/null ||
      die "CMake could not set up the WebAssembly build; see its message above."
  fi
  cmake --build "$root/build/wasm" || die "the core did not compile to WebAssembly; see the message above."
}

# The page imports the modules from its own source folder. An identical copy is left alone, so that
# the page is not rebuilt for nothing.
place_module() {
  mkdir -p "$root/web/src/generated"
  for file in treadwater.mjs treadwater.wasm treadwater-first.mjs treadwater-first.wasm; do
    cmp -s "$root/build/wasm/$file" "$root/web/src/generated/$file" ||
      cp "$root/build/wasm/$file" "$root/web/src/generated/$file"
  done
}

make_catalogues() {
  node "$root/web/languages/compile.mjs" || die "the catalogues of web/languages could not be made; see the message above."
}

# The same core for other people's programs, as an npm package. Its types are the page's own
# contract.ts, which holds nothing else.
place_library() {
  mkdir -p "$root/build/npm/treadwater"
  cp -R "$root"/web/npm/* "$root/web/src/generated/languages" "$root/build/wasm/treadwater.mjs" "$root/build/wasm/treadwater.wasm" \
    "$root/LICENSE" "$root/build/npm/treadwater"
  cp "$root/web/src/core/contract.ts" "$root/build/npm/treadwater/contract.d.ts"
}

# Folders count too: removing a file changes only its folder's time.
page_is_up_to_date() {
  [ -f "$root/web/dist/index.html" ] && [ -f "$root/build/page.stamp" ] &&
    [ -z "$(find "$root/web" \( -name node_modules -o -name dist \) -prune -o -newer "$root/build/page.stamp" -print)" ]
}

build_page() {
  if page_is_up_to_date; then
    say "the page is up to date in web/dist"
    return 0
  fi
  (cd "$root/web" && npm run --silent build) || die "the page did not build; see the message above."
  touch "$root/build/page.stamp"
}

need_packages g++ cmake ninja-build emscripten nlohmann-json3-dev libexpected-dev
need_node
need_modules web
build_module
place_module
make_catalogues
place_library
build_page
