// A whole field: its rows as read and judged, and the findings on all of them together.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/judge/finding.hpp"

namespace treadwater::sheets::field_list {

enum class Standing { unfit, unread, care, fit };  // worst first

struct Row {
  std::size_t number = 0;  // from 1, as in the list
  Text name{};
  bool read = false;  // all of it
  Standing standing = Standing::unread;
  std::optional<Speed> hold{};
  bool unlimited = false;  // nothing here limits it below the road's own limit

  bool speed_known() const { return hold || unlimited; }
  // As the lists show it.
  Text governed_by{};
  Text tyre{};
  Text tread{};
  Text against_the_law{};
  Text markings{};
  Text age{};
  Text faults{};
  std::vector<std::size_t> said{};  // places in Field::said
};

// A finding on one row or more.
struct Said {
  judge::Found first;
  std::string sentence{};  // the first one's
  std::size_t rows = 0;
  bool alike = true;  // word for word the same for each
};

struct Field {
  std::vector<Row> rows{};
  std::vector<Said> said{};
  std::vector<judge::Limit> limits{};  // the lowest of each kind, with the name of its row
  std::size_t unread = 0;

  bool of_all(const Said& one) const { return one.alike && one.rows + unread >= rows.size(); }
};

// The first few names, and how many more.
class Names {
 public:
  void add(const Text& name);
  std::size_t count() const { return count_; }
  std::string text() const;

 private:
  std::string text_;
  std::size_t count_ = 0;
};
Names names_of(const Field& field, Standing standing);

// The findings on the field: on its rows together, with their names if not on all.
judge::Findings findings_of(const Field& field);

}  // namespace treadwater::sheets::field_list
