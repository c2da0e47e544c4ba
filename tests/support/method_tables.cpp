// method_tables docs: brings the tables of docs/method.md up to date, and writes docs/accuracy.md
// and docs/accuracy.svg, from the core and the register of checks beside that folder.
#include <fstream>
#include <iostream>
#include <sstream>

#include "tests/support/accuracy.hpp"

int main(int argc, char** argv) {
  if (argc != 2) {
    std::cerr << "usage: method_tables docs\n";
    return 2;
  }
  const std::string folder(argv[1]);
  std::ifstream in(folder + "/method.md");
  std::stringstream text;
  text << in.rdbuf();
  if (!in) {
    std::cerr << folder << "/method.md cannot be read\n";
    return 1;
  }
  in.close();
  std::ofstream(folder + "/method.md") << treadwater::testing::with_tables(text.str());
  std::ofstream(folder + "/accuracy.md")
      << treadwater::testing::accuracy_text(treadwater::testing::register_rooms(folder + "/.."));
  std::ofstream(folder + "/accuracy.svg") << treadwater::testing::onset_picture();
}
