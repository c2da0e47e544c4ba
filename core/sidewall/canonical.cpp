// One spelling per tyre: the size as its family writes it, then the service description, then the
// marks in the order of their table.
#include "core/sidewall/tyre.hpp"

namespace treadwater::sidewall {
namespace {

constexpr Element same_as(Element element) {
  switch (element) {
    case Element::width_3:
      return Element::width_mm;
    case Element::width_hundredths:
      return Element::width_in;
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

void add_index(Line& out, const Service& service) {
  out.add_number(service.load_index);
  if (service.twin >= 0) out.add('/').add_number(service.twin);
  out.add(standard::speed_row(service.symbol).letters);
}

}  // namespace

std::string mark_value(const Text& text, const Seen& seen) {
  std::string out;
  for (std::size_t k = seen.value.begin; k < seen.value.end; ++k) {
    out.push_back(text.at(k) == ',' ? '.' : text.at(k));
  }
  if (mark_table().rows[seen.row].effect == Effect::approval) {  // E4 and e4 are different marks
    out.replace(0, 1, text.quote(seen.value.begin, seen.value.begin + 1U));
  }
  return out;
}

namespace {

Line size_line(const Tyre& tyre, Family family) {
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
  Line out;
  write(row.pattern, hits, out);
  const Facts& facts = tyre.facts;
  if (facts.camper) {
    out.add(" CP");
  } else if (facts.commercial) {
    out.add(" C");
  }
  const bool light = facts.light_truck || facts.prefix == 'L';
  if (light && family != Family::lt_metric) out.add(" LT");
  if (facts.motorcycle) out.add(" M/C");
  return out;
}

}  // namespace

std::string canonical_size(const Tyre& tyre, Family family) {
  return size_line(tyre, family).text();
}

std::string canonical(const Text& text, const Tyre& tyre, Family family) {
  Line line = size_line(tyre, family);
  const Facts& facts = tyre.facts;
  if (facts.has_service()) {
    const bool above =
        facts.service.bracketed && (facts.size_symbol == 'Z' || facts.size_symbol == 'V');
    line.add(above ? " (" : " ");
    add_index(line, facts.service);
    if (above) line.add(')');
  }
  if (tyre.second_service.load_index >= 0) {
    line.add(" (");
    add_index(line, tyre.second_service);
    line.add(')');
  }
  std::string out = line.text();
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
