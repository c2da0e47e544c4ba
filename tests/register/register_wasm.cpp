// The register of checks with the page's own compiler and flags, not part of the page.
#include <emscripten/bind.h>

#include "tests/register/register.hpp"

EMSCRIPTEN_BINDINGS(checks) {
  emscripten::function(
      "judged", +[](const std::string& file) { return treadwater::checks::judged_json(file); });
}
