// Marks that are not fixed words: approvals, grades, dates, identification codes. For this room
// only.
#pragma once

#include "core/sidewall/marks.hpp"

namespace treadwater::sidewall {

// Each returns the end of the mark that begins at `i`, or `nowhere`, and its value.
std::size_t find_approval(const Text& text, std::size_t i, Span& value);
std::size_t find_emissions(const Text& text, std::size_t i, Span& value);
std::size_t find_quality_grades(const Text& text, std::size_t i, Span& value);
std::size_t find_date(const Text& text, std::size_t i, Span& value);
std::size_t find_dot(const Text& text, std::size_t i, Span& value);

// What follows DOT, in what was found there.
void find_identification(const Text& text, MarkFound& found);

}  // namespace treadwater::sidewall
