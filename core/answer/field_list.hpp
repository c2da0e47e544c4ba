// The sheet `field-list`: a list of tyres (or of each car's worst one) in one water on one road,
// each judged by the sheet for one tyre -> a verdict and a hold-to speed for the whole field, the
// rows worst first, what could not be read, and a scrutineer's list.
//
// A row that cannot be read is no problem of the whole answer: it is listed with its reason, and
// the field is never called fit while there is one. The hold-to speed is the lowest of all rows;
// one row more never raises it, and the order of rows is without meaning. Range: 5 000 rows.
#pragma once

#include "core/answer/sheet.hpp"

namespace treadwater::answer {

const SheetDescription& field_list_sheet();
Answer field_list(const Input& input);
Sources field_list_sources();

}  // namespace treadwater::answer
