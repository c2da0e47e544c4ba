// The core's formulas by name, for whoever recomputes them: a list of "name argument ..." in, a
// list of values in full out. Quantities go in and out as the number they store (quantity.hpp says
// in which unit); an enumerator as its place; a struct as its members in order. What may be left
// out, and what the core does not give, is "none"; the line "names" gives the names. The same code
// runs natively and in WebAssembly; it is no part of the page.
#pragma once

#include <string>
#include <string_view>

namespace treadwater::oracle {

// One line for each line: values with a space between, 17 digits, or "? why".
std::string evaluate(std::string_view lines);

}  // namespace treadwater::oracle
