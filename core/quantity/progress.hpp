// Progress of a long calculation, reported to whoever waits for it.
#pragma once

namespace treadwater {

// Called now and then with the share done, 0 to 1, never falling; null if nobody waits. It is
// called on the calculation's own thread and must not call the core.
using Progress = void (*)(double share);

inline void report(Progress to, double share) {
  if (to != nullptr) to(share);
}

}  // namespace treadwater
