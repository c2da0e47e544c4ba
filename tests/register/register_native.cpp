// register_native FILE...: each room's file judged by the native core, a line a file; the last line
// is the list of the checks there are.
#include <fstream>
#include <iostream>
#include <sstream>

#include "tests/register/register.hpp"

int main(int argc, char** argv) {
  for (int i = 1; i < argc; ++i) {
    std::ifstream in(argv[i]);
    std::stringstream text;
    text << in.rdbuf();
    std::cout << treadwater::checks::judged_json(text.str()) << '\n';
  }
  treadwater::checks::Json names = treadwater::checks::Json::array();
  for (std::string_view name : treadwater::checks::names_of_checks()) names.push_back(name);
  std::cout << names.dump() << '\n';
}
