// Evaluates the lines of its input (formulas.hpp).
#include <iostream>
#include <iterator>
#include <string>

#include "tests/oracle/formulas.hpp"

int main() {
  const std::string lines{std::istreambuf_iterator<char>(std::cin), {}};
  std::cout << treadwater::oracle::evaluate(lines);
}
