// One spelling per tyre: the size as its family writes it, then the service description, then the
// marks in the order of their table.
#include "core/sidewall/tyre.hpp"

namespace treadwater::sidewall {
namespace {

constexpr Element same_as(Element element) {
  switch (element) {
    case Element::width_3:
      return Element::width_mm;
    case Element::series_2:
      return Element::series;
    default:
      return element;
  }
}

const Hit* find_alike(const Size& size, Element element) {
  const Pattern& pattern = shape_row(size.shape).pattern;
  for (std::size_t i = 0; i < pattern.size; ++i) {
    if (same_as(pattern.steps[i].element) == element && size.hits[i].there()) return &size.hits[i];
  }
  return nullptr;
}

void append_index(std::string& out, const Service& service) {
  append(out, service.load_index);
  if (service.twin >= 0) {
    out.push_back('/');
    append(out, service.twin);
  }
  out += standard::speed_row(service.symbol).letters;
}

}  // namespace

std::string mark_value(const Text& text, const Seen& seen) {
  if (mark_table().rows[seen.row].effect == Effect::approval) {
    return text.quote(seen.value.begin, seen.value.end);  // E4 and e4 are different marks
  }
  std::string out;
  for (std::size_t k = seen.value.begin; k < seen.value.end; ++k) {
    out.push_back(text.at(k) == ',' ? '.' : text.at(k));
  }
  return out;
}

std::string canonical_size(const Tyre& tyre, Family family) {
  const ShapeRow& row = shape_row(shape_row(tyre.size.shape).canonical);
  Hits hits{};
  for (std::size_t i = 0; i < row.pattern.size; ++i) {
    const Step& step = row.pattern.steps[i];
    if (step.element == Element::literal) {
      hits[i].present = true;
    } else if (const Hit* hit = find_alike(tyre.size, step.element)) {
      hits[i] = *hit;
    }
    if (step.element == Element::prefix) {
      if (family == Family::flotation) hits[i] = Hit{};
      if (family == Family::lt_metric) {
        hits[i].present = true;
        hits[i].letter = 'L';
      }
    }
  }
  std::string out;
  out.reserve(96);
  write(row.pattern, hits, out);
  const Facts& facts = tyre.facts;
  if (facts.camper) {
    out += " CP";
  } else if (facts.commercial) {
    out += " C";
  }
  const bool light = facts.light_truck || facts.prefix == 'L';
  if (light && family != Family::lt_metric) out += " LT";
  if (facts.motorcycle) out += " M/C";
  return out;
}

std::string canonical(const Text& text, const Tyre& tyre, Family family) {
  std::string out = canonical_size(tyre, family);
  const Facts& facts = tyre.facts;
  if (facts.has_service()) {
    const bool above =
        facts.service.bracketed && (facts.size_symbol == 'Z' || facts.size_symbol == 'V');
    out += above ? " (" : " ";
    append_index(out, facts.service);
    if (above) out.push_back(')');
  }
  if (tyre.second_service.load_index >= 0) {
    out += " (";
    append_index(out, tyre.second_service);
    out.push_back(')');
  }
  for (std::size_t i = 0; i < tyre.mark_count; ++i) {
    const Seen& seen = tyre.marks[i];
    const MarkRow& row = mark_table().rows[seen.row];
    if (row.canonical.empty() || seen.in_code) continue;
    out.push_back(' ');
    out += with_value(row.canonical, mark_value(text, seen));
    if (out.back() == ' ') out.pop_back();
  }
  return out;
}

}  // namespace treadwater::sidewall
