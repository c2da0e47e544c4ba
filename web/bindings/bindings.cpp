// What the page may call: two functions, text in and text out. All meaning is in core/json.
#include <emscripten/bind.h>

#include <string>

#include "core/json/contract.hpp"

namespace {

// Embind knows std::string, not std::string_view.
std::string answer(const std::string& sheet, const std::string& input) {
  return treadwater::json::answer(sheet, input);
}

}  // namespace

EMSCRIPTEN_BINDINGS(treadwater) {
  emscripten::function("describe", &treadwater::json::describe);
  emscripten::function("answer", &answer);
}
