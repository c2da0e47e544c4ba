// What the page may call: three functions, text in and text out. All meaning is in core/json. The
// page begins with a module of the first sheets and goes on with one of all: TREADWATER_SHEETS says
// which. The sheets that take long are in the second, so only there (TREADWATER_TELLS) is an answer
// to be had that tells on its way how far it has come.
#include <emscripten/bind.h>

#include <string>
#include <utility>

#include "core/json/contract.hpp"

namespace {

std::string describe() {
  return treadwater::json::describe(treadwater::sheets::TREADWATER_SHEETS());
}

std::string describe_in(const std::string& language) {
  return treadwater::json::describe(treadwater::sheets::TREADWATER_SHEETS(), language);
}

// Embind knows std::string, not std::string_view.
std::string answer(const std::string& sheet, const std::string& input) {
  return treadwater::json::answer(treadwater::sheets::TREADWATER_SHEETS(), sheet, input);
}

#ifdef TREADWATER_TELLS
// Who hears of the answer that is being worked out; Progress is a plain function.
emscripten::val listener = emscripten::val::undefined();

void tell(double share) { listener(share); }

// The listener is called with the share that is done, 0 to 1. It must not throw, nor ask again.
std::string answer_telling(const std::string& sheet, const std::string& input,
                           emscripten::val told) {
  listener = std::move(told);
  std::string said =
      treadwater::json::answer(treadwater::sheets::TREADWATER_SHEETS(), sheet, input, &tell);
  listener = emscripten::val::undefined();
  return said;
}
#endif
bool learn(const std::string& language, const std::string& catalogue) {
  return treadwater::json::learn(language, catalogue);
}

}  // namespace

EMSCRIPTEN_BINDINGS(treadwater) {
  emscripten::function("describe", &describe);
  emscripten::function("describeIn", &describe_in);
  emscripten::function("learn", &learn);
  emscripten::function("answer", &answer);
#ifdef TREADWATER_TELLS
  emscripten::function("answerTelling", &answer_telling);
#endif
}
