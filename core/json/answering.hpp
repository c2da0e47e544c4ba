// An answer as JSON.
#pragma once

#include "core/json/writing.hpp"
#include "core/sheets/answer.hpp"

namespace treadwater::json {

Json answer_json(const sheets::Answer& answer);

}  // namespace treadwater::json
