#include "core/sheets/sheets.hpp"

#include <iterator>

#include "core/sheets/sources.hpp"

// What each sheet's folder defines.
#define TREADWATER_SHEET(name)         \
  namespace treadwater::sheets::name { \
  extern const SheetHead head;         \
  const SheetDescription& describe();  \
  Answer answer(const Input& input);   \
  }
#define TREADWATER_SHEET_FIRST(name) TREADWATER_SHEET(name)
#define TREADWATER_SHEET_LATER(name) TREADWATER_SHEET(name)
#include "core/sheets/sheets.inc"
#undef TREADWATER_SHEET_FIRST
#undef TREADWATER_SHEET_LATER
#undef TREADWATER_SHEET

namespace treadwater::sheets {
namespace {

#define TREADWATER_SHEET_FIRST(name) {name::head, name::describe, name::answer},
#define TREADWATER_SHEET_LATER(name)
constexpr Sheet first[] = {
#include "core/sheets/sheets.inc"
};
#undef TREADWATER_SHEET_LATER
#define TREADWATER_SHEET_LATER(name) TREADWATER_SHEET_FIRST(name)
constexpr Sheet all[] = {
#include "core/sheets/sheets.inc"
};
#undef TREADWATER_SHEET_LATER
#undef TREADWATER_SHEET_FIRST

Sources no_sources() { return {}; }

}  // namespace

Sheets all_sheets() { return {all, std::size(all), all_sources}; }
Sheets first_sheets() { return {first, std::size(first), no_sources}; }

const std::vector<const SheetHead*>& all_heads() {
#define TREADWATER_SHEET_FIRST(name) &name::head,
#define TREADWATER_SHEET_LATER(name) &name::head,
  static const std::vector<const SheetHead*> heads = {
#include "core/sheets/sheets.inc"
  };
#undef TREADWATER_SHEET_FIRST
#undef TREADWATER_SHEET_LATER
  return heads;
}

const Sheet* find_sheet(Sheets sheets, std::string_view id) {
  for (const Sheet& sheet : sheets)
    if (sheet.head.id == id) return &sheet;
  return nullptr;
}

const std::vector<Way>& ways() {
  static const std::vector<Way> table = {
      {{"kerb",
        Phrase("At the kerb"),
        Phrase("Kneeling beside a car, with its sidewall and a gauge."),
        {}},
       "tyre-check"},
      {{"stage",
        Phrase("At the stage"),
        Phrase("A ruler in a puddle: how fast may each kind of tyre come through?"),
        {{"tyres.0.tyre_kind", "gravel"}}},
       "standing-water"},
      {{"club",
        Phrase("On the club's page"),
        Phrase("Fill it in for your cars, then share the link: it holds the whole sheet."),
        {}},
       "tyre-check"},
  };
  return table;
}

}  // namespace treadwater::sheets
