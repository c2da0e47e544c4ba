// The same formulas with the page's own compiler and flags, not part of the page.
#include <emscripten/bind.h>

#include "tests/oracle/formulas.hpp"

EMSCRIPTEN_BINDINGS(oracle) {
  emscripten::function(
      "evaluate", +[](const std::string& lines) { return treadwater::oracle::evaluate(lines); });
}
