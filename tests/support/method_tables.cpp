// method_tables FILE: brings the tables in docs/method.md up to date.
#include "tests/support/method_tables.hpp"

#include <fstream>
#include <iostream>
#include <sstream>

int main(int argc, char** argv) {
  if (argc != 2) {
    std::cerr << "usage: method_tables docs/method.md\n";
    return 2;
  }
  std::ifstream in(argv[1]);
  std::stringstream text;
  text << in.rdbuf();
  if (!in) {
    std::cerr << argv[1] << " cannot be read\n";
    return 1;
  }
  std::ofstream(argv[1]) << treadwater::testing::with_tables(text.str());
}
