#include "core/sheets/puncture/repair_table.hpp"

#include <algorithm>

namespace treadwater::sheets::puncture {
namespace {

Phrase words_of(air::Verdict verdict) {
  switch (verdict) {
    case air::Verdict::may:
      return Phrase("may be, if a fitter finds the inside sound");
    case air::Verdict::ask:
      return Phrase("a fitter must decide");
    case air::Verdict::no:
      break;
  }
  return Phrase("no");
}

Phrase what_it_says(air::Verdict verdict) {
  switch (verdict) {
    case air::Verdict::may:
      return Phrase("how");
    case air::Verdict::ask:
      return Phrase("ask");
    case air::Verdict::no:
      break;
  }
  return Phrase("no repair");
}

// The section seen from outside: its whole width, the band that may be repaired, the hole.
void draw(const air::Damage& damage, AnswerBuilder& answer) {
  constexpr double high = 60.0;
  constexpr double least_to_be_seen = 2.0;
  const UnitSystem units = answer.units();
  const Length repairable = air::repairable_width(damage.section_width);
  const double width = in_millimetres(damage.section_width);
  const double band = in_millimetres(repairable);
  const double hole = std::max(least_to_be_seen, in_millimetres(damage.hole));
  const double at =
      std::min(width - hole, width / 2.0 + in_millimetres(damage.from_centre) - hole / 2.0);
  Drawing drawing;
  drawing.id = "repair_band";
  drawing.title = Phrase("Where it may be repaired, to scale");
  drawing.text = say("The middle # of a section # wide, with the hole # from its middle.",
                     {write_size(repairable, units), write_size(damage.section_width, units),
                      write_size(damage.from_centre, units)});
  drawing.width = width;
  drawing.height = high;
  drawing.boxes = {
      {0.0, 0.0, width, high, 12.0, "reference", Phrase("Whole section")},
      {(width - band) / 2.0, 0.0, band, high, 0.0, "subject", Phrase("Band that may be repaired")},
      {at, high / 2.0 - hole / 2.0, hole, hole, hole / 2.0, "detail", Phrase("Hole")}};
  answer.answer().drawings.push_back(std::move(drawing));
}

}  // namespace

void tell_repair(const judge::RepairJudged& judged, AnswerBuilder& answer) {
  const air::Repair& found = judged.repair;
  Table table{"repair", Phrase("May it be repaired?"), {}, {Phrase("Reason"), Phrase("Says")}, {}};
  table.text = say("By the British standard: #. By the US rule: #.",
                   {words_of(found.british), words_of(found.american)});
  for (const air::Reason* reason : found.reasons)
    table.rows.push_back({reason->text, what_it_says(reason->verdict)});
  answer.answer().tables.push_back(std::move(table));
  if (judged.damage.place == air::Place::tread) draw(judged.damage, answer);
}

}  // namespace treadwater::sheets::puncture
