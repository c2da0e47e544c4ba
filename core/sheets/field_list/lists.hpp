// The lists of the sheet `field-list`: what could not be read, the field worst first, and one for
// the scrutineer.
#pragma once

#include "core/sheets/answer_builder.hpp"
#include "core/sheets/field_list/field.hpp"

namespace treadwater::sheets::field_list {

void list_rows(const Field& field, AnswerBuilder& answer);

}  // namespace treadwater::sheets::field_list
