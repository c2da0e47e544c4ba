// The least that a page of this make can be: Embind, and JSON in and out, with nothing to say. What is
// above it is the core.
#include <emscripten/bind.h>

#include <nlohmann/json.hpp>
#include <string>

namespace {

std::string answer(const std::string& input) {
  using nlohmann::json;
  const json read = json::parse(input, nullptr, false);
  return json{{"ok", !read.is_discarded()}, {"input", read}}.dump(-1, ' ', false,
                                                                  json::error_handler_t::replace);
}

}  // namespace

EMSCRIPTEN_BINDINGS(smallest) { emscripten::function("answer", &answer); }
