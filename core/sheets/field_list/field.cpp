#include "core/sheets/field_list/field.hpp"

#include <algorithm>

#include "core/quantity/text.hpp"

namespace treadwater::sheets::field_list {
namespace {

constexpr std::size_t names_shown = 6;

template <class Wanted>
Names names_where(const Field& field, Wanted wanted) {
  Names names;
  for (const Row& row : field.rows)
    if (wanted(row)) names.add(row.name);
  return names;
}

std::string number(std::size_t n) { return std::to_string(n); }

void say_unread(const Field& field, judge::Findings& findings) {
  if (field.unread == 0) return;
  judge::Found unread{judge::finding::rows_unread};
  unread.values = {names_where(field, [](const Row& row) { return !row.read; }).text()};
  unread.of_reason = {number(field.unread), number(field.rows.size())};
  findings.add(std::move(unread));
}

void say_without_speed(const Field& field, judge::Findings& findings) {
  const Names names =
      names_where(field, [](const Row& row) { return row.read && !row.speed_known(); });
  if (names.count() == 0) return;
  findings.no_speed = true;
  findings.add(judge::finding::rows_without_speed, {names.text()});
}

// A finding that is word for word the same for all rows is given in full; for some, with their
// names; one that differs from row to row, by its reason.
void say_of_rows(const Field& field, judge::Findings& findings) {
  for (std::size_t i = 0; i < field.said.size(); ++i) {
    const Said& said = field.said[i];
    judge::Found found = said.first;
    if (!field.of_all(said) && found.level() != judge::Level::note) {
      const std::string names =
          names_where(field, [&](const Row& row) {
            return std::find(row.said.begin(), row.said.end(), i) != row.said.end();
          }).text();
      found.of = {names, names, said.alike};
    }
    findings.add(std::move(found));
  }
}

}  // namespace

void Names::add(const Text& name) {
  if (count_++ < names_shown) add_item(text_, name);
}

std::string Names::text() const {
  return count_ <= names_shown ? text_ : say("# and # more", {text_, number(count_ - names_shown)});
}

Names names_of(const Field& field, Standing standing) {
  return names_where(field, [&](const Row& row) { return row.standing == standing; });
}

judge::Findings findings_of(const Field& field) {
  judge::Findings findings;
  for (const judge::Limit& limit : field.limits) findings.add(limit);
  say_unread(field, findings);
  say_without_speed(field, findings);
  say_of_rows(field, findings);
  return findings;
}

}  // namespace treadwater::sheets::field_list
