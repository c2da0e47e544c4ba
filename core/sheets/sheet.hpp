// The room `sheets`: one folder per sheet. A sheet describes its form as data and turns what a
// person typed into an Answer: it reads the form, has the room `judge` check it, says what was
// found, and draws. Nothing here knows JSON or HTML.
//
//   field           the fields of a form, as typed values
//   shared_fields   those that several sheets have
//   input           what a person typed
//   form_reader     reads the fields
//   sayings         the words for findings and limits
//   answer          what the page draws
//   answer_builder  puts an answer together
//   sheets          the list of sheets
//
// A sheet is a namespace of its own with three things in it:
//   const SheetHead head;  const SheetDescription& describe();  Answer answer(const Input&);
// and a line in sheets.inc.
#pragma once

#include "core/sheets/answer.hpp"
#include "core/sheets/field.hpp"
#include "core/sheets/input.hpp"

namespace treadwater::sheets {

struct Sheet {
  const SheetHead& head;
  const SheetDescription& (*describe)();
  Answer (*answer)(const Input&);
};

}  // namespace treadwater::sheets
