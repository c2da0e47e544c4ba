// strtod of the page's modules: the browser does it (number.js). No other text than a decimal number,
// with or without something after it, is ever asked for, and nobody looks where it ended. Its two
// sisters live in the same file of the C library, which would otherwise come along for them.
#include <cstring>

extern "C" {

double number_at(const char* text);

double strtod(const char* text, char** end) {
  if (end != nullptr) *end = const_cast<char*>(text) + std::strlen(text);
  return number_at(text);
}

float strtof(const char* text, char** end) { return static_cast<float>(strtod(text, end)); }
long double strtold(const char* text, char** end) { return strtod(text, end); }
}
