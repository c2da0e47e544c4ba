// A Reading as lines of text, so that two can be compared and a difference be seen.
#pragma once

#include <cstdio>
#include <string>

#include "core/sidewall/sidewall.hpp"

namespace treadwater::testing {

inline void line(std::string& out, const char* name, const std::string& value) {
  out += name;
  out += ": ";
  out += value;
  out += '\n';
}

inline void line(std::string& out, const char* name, double value) {
  char digits[40];
  std::snprintf(digits, sizeof digits, "%.17g", value);
  line(out, name, std::string(digits));
}

inline void line(std::string& out, const char* name, const sidewall::ServiceDescription& service) {
  std::string value = std::to_string(service.load_index);
  if (service.twin_load_index) value += "/" + std::to_string(*service.twin_load_index);
  value += standard::speed_row(service.symbol).letters;
  if (service.above_symbol) value += " and more";
  line(out, name, value);
}

// What the tyre is: values, flags and marks. Not the parts, which point into one spelling of the
// text, nor remarks on that spelling, nor words that were not understood.
inline std::string what_it_is(const sidewall::Reading& r) {
  std::string out;
  line(out, "family", std::string(sidewall::family_name(r.family).english()));
  line(out, "canonical", r.canonical);
  if (r.section_width) line(out, "width", in_metres(*r.section_width));
  if (r.aspect_percent) line(out, "aspect", *r.aspect_percent);
  if (r.construction) {
    line(out, "construction", std::string(sidewall::construction_name(*r.construction).english()));
  }
  if (r.rim_diameter) line(out, "rim", in_metres(*r.rim_diameter));
  if (r.stated_outer_diameter) line(out, "outer", in_metres(*r.stated_outer_diameter));
  if (r.service) line(out, "service", *r.service);
  if (r.second_service) line(out, "second service", *r.second_service);
  if (r.size_symbol) {
    line(out, "size symbol", std::string(standard::speed_row(*r.size_symbol).letters));
  }
  if (r.marked_pressure) line(out, "pressure", in_kilopascals(*r.marked_pressure));
  if (r.ply_rating) line(out, "ply", *r.ply_rating);
  std::string flags;
  if (r.run_flat) flags += "run-flat ";
  if (r.extra_load) flags += "extra-load ";
  if (r.high_load) flags += "high-load ";
  if (r.commercial) flags += "commercial ";
  if (r.camper) flags += "camper ";
  if (r.light_truck) flags += "light-truck ";
  if (r.motorcycle) flags += "motor-cycle ";
  if (r.temporary_spare) flags += "temporary ";
  line(out, "flags", flags);
  line(out, "date", r.date_code);
  for (const auto& mark : r.marks) {
    if (mark.id == "not_understood") continue;
    line(out, "mark", std::string(mark.id) + " " + mark.value + " " + mark.meaning);
  }
  for (const auto& candidate : r.candidates) line(out, "candidate", candidate);
  return out;
}

// All of it but the parts.
inline std::string everything(const sidewall::Reading& r) {
  std::string out = what_it_is(r);
  for (const auto& mark : r.marks) line(out, "mark", std::string(mark.id) + " " + mark.value);
  for (const auto& sentence : r.unsaid) line(out, "unsaid", sentence);
  for (const auto& sentence : r.assumed) line(out, "assumed", sentence);
  return out;
}

// One line: family and the numbers, for tables of examples. "- " where the text gives none.
inline std::string summary(const std::string& text) {
  const auto got = sidewall::read(text);
  if (!got) return "trouble " + got.error().code;
  const auto& r = *got;
  char digits[64];
  std::string out(sidewall::family_name(r.family).english());
  const auto number = [&](const char* lead, double value) {
    std::snprintf(digits, sizeof digits, "%s%.6g", lead, value);
    out += digits;
  };
  if (r.section_width) number(" | S ", in_millimetres(*r.section_width));
  if (r.aspect_percent) number(" a ", *r.aspect_percent);
  if (r.construction) {
    out += ' ';
    out += sidewall::construction_name(*r.construction).english();
  }
  if (r.rim_diameter) number(" d ", in_inches(*r.rim_diameter));
  if (r.stated_outer_diameter) number(" D ", in_millimetres(*r.stated_outer_diameter));
  if (r.size_symbol) {
    out += ' ';
    out += standard::speed_row(*r.size_symbol).letters;
  }
  const auto service = [&](const sidewall::ServiceDescription& s) {
    out += " " + std::to_string(s.load_index);
    if (s.twin_load_index) out += "/" + std::to_string(*s.twin_load_index);
    out += standard::speed_row(s.symbol).letters;
    if (s.above_symbol) out += "+";
  };
  if (r.service) service(*r.service);
  if (r.second_service) {
    out += " then";
    service(*r.second_service);
  }
  if (r.run_flat) out += " RF";
  if (r.extra_load) out += " XL";
  if (r.high_load) out += " HL";
  if (r.camper) out += " CP";
  if (r.commercial && !r.camper) out += " C";
  if (r.light_truck) out += " LT";
  if (r.ply_rating) out += " " + std::to_string(*r.ply_rating) + "PR";
  return out;
}

}  // namespace treadwater::testing
