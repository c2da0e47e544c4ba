// What to say of a quantity that cannot be read: the field, what was read, and what to enter.
#pragma once

#include <string>

#include "core/quantity/read.hpp"
#include "core/words/phrase.hpp"

namespace treadwater {

std::string say(const ReadProblem& problem, Phrase label, const QuantityRequest& request);

// "missing" if a field was left empty.
std::string say_missing(Phrase label, std::string_view example);

}  // namespace treadwater
