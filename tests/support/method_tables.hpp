// The tables of docs/method.md, made from the core's own records. method_tables.cpp writes them;
// tests/unit/method_test.cpp fails when they are stale.
#pragma once

#include <string>

#include "core/quantity/text.hpp"
#include "core/quantity/write.hpp"
#include "core/sheets/sources.hpp"
#include "core/water/estimate.hpp"
#include "core/water/measured.hpp"

namespace treadwater::testing {

inline std::string cells(std::initializer_list<std::string_view> texts) {
  std::string row = "|";
  for (std::string_view text : texts) row += joined({" ", text, " |"});
  return row + "\n";
}

inline std::string measured_rows() {
  std::string rows;
  for (const auto& row : water::measured_onsets()) {
    const auto band = *water::aquaplaning_onset({kilopascals(220.0), row.tread, 1.0,
                                                 row.section_width.value_or(millimetres(205.0)),
                                                 row.film, millimetres(0.7)});
    const auto kmh = [](Speed v) { return fixed(in_kilometres_per_hour(v), 0); };
    rows += cells({row.id, write_depth(row.tread, UnitSystem::metric),
                   write_water(row.film, UnitSystem::metric), row.remark, kmh(band.low),
                   kmh(band.central), kmh(band.high),
                   kmh(floor_to_five(band.low * water::hold_to_share, UnitSystem::metric))});
  }
  return rows;
}

inline std::string source_rows() {
  std::string rows = "| id | source | clause | year | known |\n|---|---|---|---|---|\n";
  for (const Source* source : sheets::all_sources())
    rows += cells({source->id, source->title, source->clause, source->year,
                   standing_name(source->standing).english()});
  return rows;
}

// Replaces what stands between two marker lines.
inline std::string replaced(std::string text, const std::string& from, const std::string& to,
                            const std::string& rows) {
  const std::size_t begin = text.find(from);
  const std::size_t end = text.find(to);
  if (begin == std::string::npos || end == std::string::npos) return text;
  const std::size_t first = begin + from.size();
  return text.substr(0, first) + rows + text.substr(end);
}

// The table's rows must follow its head directly, so the first marker is the head's last line.
inline std::string with_tables(const std::string& text) {
  const std::string with_rows =
      replaced(text,
               "| row | tread | water | measured, km/h | low | central | high | hold to |\n"
               "|---|---|---|---|---|---|---|---|\n",
               "\n<!-- end of rows -->", measured_rows());
  return replaced(with_rows, "<!-- sources made from the core -->\n", "<!-- end of sources -->",
                  "\n" + source_rows() + "\n");
}

}  // namespace treadwater::testing
