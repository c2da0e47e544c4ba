// What to say of a quantity that does not read: the field, what was read, and what would do.
#pragma once

#include <string>

#include "core/quantity/read.hpp"
#include "core/words/phrase.hpp"

namespace treadwater {

std::string say(const ReadProblem& problem, Phrase label, const QuantityRequest& request);

// "missing" where a field was left empty.
std::string say_missing(Phrase label, std::string_view example);

}  // namespace treadwater
