// The room `sheets`: a folder a sheet. A sheet describes its form as data and turns what a person
// typed into an Answer: it reads the form, has judge/ judge what it read, says what was found, and
// draws. Nothing here knows JSON or HTML.
//
//   field          the fields of a form, as typed values       shared_fields   those of several
//   sheets input          what a person typed                         form_reader     the fields,
//   read sayings        what is said of findings and limits         answer          what the page
//   draws answer_builder puts an answer together                     sheets          the list of
//   sheets
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
