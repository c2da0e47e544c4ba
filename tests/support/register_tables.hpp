// The register of checks as tables for docs/accuracy.md: counts by room and standing, and a line
// for each thing checked.
#pragma once

#include <algorithm>
#include <cmath>
#include <fstream>
#include <sstream>
#include <string>
#include <vector>

#include "core/quantity/write.hpp"
#include "tests/register/register.hpp"
#include "tests/support/method_tables.hpp"

namespace treadwater::testing {

inline std::vector<checks::Room> register_rooms(const std::string& root) {
  std::vector<checks::Room> rooms;
  for (const char* name :
       {"quantity", "standard", "sidewall", "patch", "water", "grip", "air", "car", "stage"}) {
    std::ifstream in(root + "/tests/register/" + name + ".json");
    std::stringstream text;
    text << in.rdbuf();
    rooms.push_back(checks::judged(text.str()));
  }
  return rooms;
}

inline std::string count(std::size_t n) { return std::to_string(n); }

template <class Rows, class Which>
std::string count_of(const Rows& rows, Which which) {
  return count(static_cast<std::size_t>(std::count_if(rows.begin(), rows.end(), which)));
}

// ---- one figure ----

// The decimals and the power of ten that a printed number has: "6.51e-4" two and -4.
struct Digits {
  int decimals;
  int power;
};
inline Digits digits_of(const std::string& printed) {
  const std::size_t e = printed.find('e');
  const std::size_t point = printed.find('.');
  const std::size_t end = std::min(e, printed.size());
  return {point == std::string::npos ? 0 : static_cast<int>(end - point - 1),
          e == std::string::npos ? 0 : std::stoi(printed.substr(e + 1))};
}

// With one digit more than is printed, so that what rounding hides is seen.
inline std::string beside(double value, const std::string& printed) {
  const Digits digits = digits_of(printed);
  const std::string text =
      trimmed(value / std::pow(10.0, digits.power), std::min(digits.decimals + 1, 9));
  if (text == "-0") return "0";
  return digits.power == 0 ? text : joined({text, "e", std::to_string(digits.power)});
}

inline std::string ours_of(const checks::Row& row) {
  if (const double* number = std::get_if<double>(&row.ours)) return beside(*number, row.printed);
  if (const auto* band = std::get_if<checks::Band>(&row.ours))
    return joined({beside(band->low, row.printed), " to ", beside(band->high, row.printed)});
  return std::get<std::string>(row.ours);
}

inline std::string difference_of(const checks::Row& row) {
  if (!row.agrees) return "**not met**";
  if (std::holds_alternative<std::string>(row.ours)) return "as printed";
  if (row.compare == checks::Compare::inside) return "inside";
  const std::string text = beside(std::fabs(row.difference), row.printed);
  const bool none = text.find_first_of("123456789") == std::string::npos || text.rfind("0e") == 0;
  if (row.compare == checks::Compare::equal && none) return "0";
  return joined({row.difference < 0.0 ? "−" : "+", text});
}

// ---- one thing checked ----

using Group = std::vector<const checks::Row*>;

inline std::vector<Group> groups_of(const std::vector<checks::Row>& rows) {
  std::vector<Group> groups;
  for (const checks::Row& row : rows) {
    const auto same = [&](const Group& group) {
      const checks::Row& first = *group.front();
      return first.entry == row.entry && first.source.title == row.source.title &&
             first.source.standing == row.source.standing && first.worked_out == row.worked_out &&
             first.check == row.check && first.compare == row.compare && first.unit == row.unit;
    };
    const auto at = std::find_if(groups.begin(), groups.end(), same);
    if (at == groups.end())
      groups.push_back({&row});
    else
      at->push_back(&row);
  }
  return groups;
}

// How near a row comes to not being met, among rows that are compared alike.
inline double strain(const checks::Row& row) {
  if (!row.agrees) return HUGE_VAL;
  if (row.compare == checks::Compare::inside) return 0.0;
  if (row.compare != checks::Compare::equal) return -std::fabs(row.difference);
  return row.tolerance > 0.0 ? std::fabs(row.difference) / row.tolerance : 0.0;
}

inline std::string group_line(const Group& group, bool several_checks) {
  const checks::Row& first = *group.front();
  const checks::Row& worst = **std::max_element(
      group.begin(), group.end(),
      [](const checks::Row* a, const checks::Row* b) { return strain(*a) < strain(*b); });
  std::string printed, ours;
  if (group.size() <= 4) {
    for (const checks::Row* row : group) {
      add_item(printed, row->printed, "; ");
      add_item(ours, ours_of(*row), "; ");
    }
  } else {
    printed = worst.printed;
    ours = ours_of(worst);
  }
  if (!first.unit.empty()) printed += " " + first.unit;
  const std::string difference = difference_of(worst);
  if (group.size() > 4) {
    const bool alike = difference == "as printed" || difference == "0" || difference == "inside";
    printed += alike ? "; …" : " at " + worst.inputs;
    ours += alike ? "; …" : "";
  }
  const Source& source = first.source;
  return cells(
      {several_checks ? joined({first.entry, ": ", first.check}) : first.entry,
       source.id.empty() ? source.title : source.id,
       joined({standing_name(source.standing).english(), first.worked_out ? ", worked out" : ""}),
       count(group.size()), printed, ours, difference});
}

// ---- the tables ----

inline std::string register_counts(const std::vector<checks::Room>& rooms) {
  std::string text =
      "| room | checks | met | published | secondary | memory | common practice | printed | worked "
      "out |\n|---|---|---|---|---|---|---|---|---|\n";
  checks::Room all{"", "**All**", {}};
  for (const checks::Room& room : rooms)
    all.rows.insert(all.rows.end(), room.rows.begin(), room.rows.end());
  const auto line = [](const checks::Room& room) {
    const auto known = [&](Standing standing) {
      return count_of(room.rows,
                      [&](const checks::Row& row) { return row.source.standing == standing; });
    };
    return cells({room.title, count(room.rows.size()),
                  count_of(room.rows, [](const checks::Row& row) { return row.agrees; }),
                  known(Standing::published), known(Standing::secondary), known(Standing::memory),
                  known(Standing::common_practice),
                  count_of(room.rows, [](const checks::Row& row) { return !row.worked_out; }),
                  count_of(room.rows, [](const checks::Row& row) { return row.worked_out; })});
  };
  for (const checks::Room& room : rooms) text += line(room);
  return text + line(all);
}

inline std::string register_tables(const std::vector<checks::Room>& rooms) {
  std::string text;
  for (const checks::Room& room : rooms) {
    text += joined({"<details>\n<summary>", room.title, ": ", count(room.rows.size()),
                    " checks</summary>\n\n| what | source | known | checks | printed | ours | "
                    "difference |\n|---|---|---|---|---|---|---|\n"});
    const auto groups = groups_of(room.rows);
    for (const Group& group : groups)
      text += group_line(group, std::any_of(groups.begin(), groups.end(), [&](const Group& other) {
                           return other.front()->entry == group.front()->entry &&
                                  other.front()->check != group.front()->check;
                         }));
    text += "\n</details>\n\n";
  }
  return text;
}

}  // namespace treadwater::testing
