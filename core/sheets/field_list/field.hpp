// A whole field: its rows as they were read and judged, and what is said of them together.
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

// What is said of one row or more.
struct Said {
  judge::Found first;
  std::string sentence{};  // the first one's
  std::size_t rows = 0;
  bool alike = true;  // word for word the same of each
};

struct Field {
  std::vector<Row> rows{};
  std::vector<Said> said{};
  std::vector<judge::Limit> limits{};  // of alike ones the lowest, with the name of its row
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

// What is to be said of the field: of its rows together, with their names where it is not of all.
judge::Findings findings_of(const Field& field);

}  // namespace treadwater::sheets::field_list
