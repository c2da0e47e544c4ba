// Reads the form of the sheet `field-list`, and judges each row as the check of one tyre does.
#pragma once

#include <optional>

#include "core/judge/tyre.hpp"
#include "core/sheets/field_list/field.hpp"
#include "core/sheets/form_reader.hpp"

namespace treadwater::sheets::field_list {

// Shared by all rows. The onsets in its water are made once for all of them, and lent to it.
struct Shared {
  judge::TyreCase tyre{};
  std::unique_ptr<judge::OnsetsOnRoad> onsets{};
};
void read_shared(FormReader& form, Shared& shared);

// The rows that are not blank, with their numbers and names. A list without any is a problem.
Field gather_rows(FormReader& form);
// Reads and judges each of them. One unreadable row does not fail the whole answer.
void judge_rows(FormReader& form, const Shared& shared, Field& field);

}  // namespace treadwater::sheets::field_list
