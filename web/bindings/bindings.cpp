// What the page may call: two functions, text in and text out. All meaning is in core/json. The
// page begins with a module of the first sheets and goes on with one of all: TREADWATER_SHEETS says
// which.
#include <emscripten/bind.h>

#include <string>

#include "core/json/contract.hpp"

namespace {

std::string describe() {
  return treadwater::json::describe(treadwater::answer::TREADWATER_SHEETS());
}

// Embind knows std::string, not std::string_view.
std::string answer(const std::string& sheet, const std::string& input) {
  return treadwater::json::answer(treadwater::answer::TREADWATER_SHEETS(), sheet, input);
}

}  // namespace

EMSCRIPTEN_BINDINGS(treadwater) {
  emscripten::function("describe", &describe);
  emscripten::function("answer", &answer);
}
