// The JSON reader's own messages on what it cannot read are seen by nobody: core/json writes ours.
// They are the only user of printf in the modules, which is a fiftieth of the first of them. So here
// is a snprintf that writes nothing, for the page's modules alone.
#include <cstdio>

extern "C" int snprintf(char* text, std::size_t size, const char*, ...) {
  if (size > 0) *text = '\0';
  return 0;
}
