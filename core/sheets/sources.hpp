// Every source that an answer of the core can name: the one list.
#pragma once

#include "core/judge/finding.hpp"

namespace treadwater::sheets {

judge::Sources all_sources();

}  // namespace treadwater::sheets
