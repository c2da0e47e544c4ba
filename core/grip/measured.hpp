// Measured stops on wet roads, from published tests and reports of them.
//
// 44 open rows (T) and the three of a test house (M). Where a source does not state its depth of
// water the film is empty; a tread that is told as new counts as 8 mm. Braked to a standstill, all
// of them. `worked_out`: reckoned from speeds left or metres longer that the source prints.
#pragma once

#include <iterator>
#include <optional>
#include <string_view>

#include "core/quantity/quantity.hpp"
#include "core/standard/source.hpp"

namespace treadwater::grip {

struct MeasuredStop {
  std::string_view id;
  Length tread;
  std::optional<Length> film;
  Speed from;
  Length stop;
  const Source* source;
  std::string_view remark;
  bool worked_out;
};

struct MeasuredStops {
  const MeasuredStop* first;
  const MeasuredStop* last;
  const MeasuredStop* begin() const { return first; }
  const MeasuredStop* end() const { return last; }
};

MeasuredStops measured_stops();

}  // namespace treadwater::grip
