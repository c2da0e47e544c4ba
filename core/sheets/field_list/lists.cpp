#include "core/sheets/field_list/lists.hpp"

#include <algorithm>

#include "core/sheets/sayings.hpp"

namespace treadwater::sheets::field_list {
namespace {

Phrase in_words(Standing standing) {
  constexpr Phrase words[] = {Phrase("not fit"), Phrase("not read"), Phrase("care"), Phrase("fit")};
  return words[static_cast<std::size_t>(standing)];
}

Text hold_of(const Row& row, UnitSystem units) {
  if (row.unlimited) return Phrase("no limit here");
  if (!row.hold) return Phrase("not judged");
  if (*row.hold > Speed()) return write(*row.hold, units);
  return Phrase("not at any speed");
}

// Cautions already given for all rows are not repeated for each, except what makes it unfit.
Text cautions_of(const Row& row, const Field& field, UnitSystem units) {
  std::string text;
  const auto add = [&](const std::string& one) {
    text = text.empty() ? one : say("#; #", {text, one});
  };
  for (const std::size_t i : row.said)
    if (!field.of_all(field.said[i]) || field.said[i].first.level() == Level::unfit)
      add(reason(field.said[i].first, units));
  if (!row.faults.empty()) add(row.faults.str());
  if (text.empty() && row.standing != Standing::fit) return Phrase("what is said of all");
  return text;
}

std::vector<const Row*> worst_first(const Field& field) {
  std::vector<const Row*> order;
  order.reserve(field.rows.size());
  for (const Row& row : field.rows) order.push_back(&row);
  std::sort(order.begin(), order.end(), [](const Row* a, const Row* b) {
    if (a->standing != b->standing) return a->standing < b->standing;
    const auto speed = [](const Row& row) {
      return row.hold.value_or(row.unlimited ? water::no_floating : kilometres_per_hour(-1.0));
    };
    const Speed one = speed(*a);
    const Speed other = speed(*b);
    return one < other || (!(other < one) && a->number < b->number);
  });
  return order;
}

Table unread_rows(const Field& field) {
  Table table{"unread",
              Phrase("Could not be read"),
              {},
              {Phrase("Line no."), Phrase("Name"), Phrase("What is wrong")},
              {}};
  for (const Row& row : field.rows)
    if (!row.read) table.rows.push_back({std::to_string(row.number), row.name, row.faults});
  return table;
}

Table whole_field(const Field& field, const std::vector<const Row*>& order, UnitSystem units) {
  const auto count = [&](Standing standing) {
    return std::to_string(names_of(field, standing).count());
  };
  Table table{"field",
              Phrase("The field, worst first"),
              say("Of #: # not fit, # not read, # with care, # fit.",
                  {std::to_string(field.rows.size()), count(Standing::unfit),
                   count(Standing::unread), count(Standing::care), count(Standing::fit)}),
              {Phrase("Name"), Phrase("Finding"), Phrase("Hold to"), Phrase("Governed by"),
               Phrase("Cautions"), Phrase("Tread"), Phrase("Tyre")},
              {},
              Phrase("Finding")};
  table.rows.reserve(order.size());
  for (const Row* row : order)
    table.rows.push_back({row->name, in_words(row->standing), hold_of(*row, units),
                          row->governed_by, cautions_of(*row, field, units), row->tread,
                          row->tyre});
  return table;
}

Table for_the_scrutineer(const std::vector<const Row*>& order) {
  Table table{"scrutineer",
              Phrase("For the scrutineer"),
              Phrase("Markings are those in the text that was given."),
              {Phrase("Name"), Phrase("Finding"), Phrase("Tread against the law"),
               Phrase("Markings"), Phrase("Age")},
              {},
              Phrase("Finding")};
  table.rows.reserve(order.size());
  for (const Row* row : order)
    table.rows.push_back(
        {row->name, in_words(row->standing), row->against_the_law, row->markings, row->age});
  return table;
}

}  // namespace

void list_rows(const Field& field, AnswerBuilder& answer) {
  const std::vector<const Row*> order = worst_first(field);
  std::vector<Table>& tables = answer.answer().tables;
  if (field.unread > 0) tables.push_back(unread_rows(field));
  tables.push_back(whole_field(field, order, answer.units()));
  tables.push_back(for_the_scrutineer(order));
}

}  // namespace treadwater::sheets::field_list
