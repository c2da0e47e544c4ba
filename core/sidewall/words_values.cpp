// The values of a Reading.
#include <algorithm>

#include "core/sidewall/words.hpp"

namespace treadwater::sidewall {
namespace {

bool rim_in_millimetres(Shape shape) {
  return shape == Shape::metric_rim_mm || shape == Shape::no_series_rim_mm ||
         shape == Shape::crossed_rim_mm || shape == Shape::crossed_rim_cm ||
         shape == Shape::outer_dashed;
}

ServiceDescription description(const Service& service) {
  ServiceDescription out;
  out.load_index = service.load_index;
  if (service.twin >= 0) out.twin_load_index = service.twin;
  out.symbol = service.symbol;
  return out;
}

ServiceDescription lower_of(ServiceDescription one, const ServiceDescription& other) {
  one.load_index = std::min(one.load_index, other.load_index);
  if (standard::speed_row(other.symbol).speed < standard::speed_row(one.symbol).speed)
    one.symbol = other.symbol;
  return one;
}

struct Values : Gathered {
  void put() {
    sizes();
    services();
    flags();
    marks();
  }

  void sizes() {
    const Shape shape = tyre.size.shape;
    const Second second = second_meaning();
    const double per_unit = !width_in_inches(shape)      ? 1.0
                            : second == Second::outer_cm ? 10.0
                                                         : 25.4;
    if (facts.width > 0) {
      reading.section_width = per_unit == 25.4 ? inches(number(facts.width))
                                               : millimetres(number(facts.width) * per_unit);
    }
    if (facts.series > 0) reading.aspect_percent = number(facts.series);
    if (facts.rim > 0) {
      reading.rim_diameter =
          rim_in_millimetres(shape) ? millimetres(number(facts.rim)) : inches(number(facts.rim));
    }
    if (facts.second > 0) {
      switch (shape) {
        case Shape::outer_metric:
        case Shape::outer_dashed:
        case Shape::outer_mm_crossed:
          reading.stated_outer_diameter = millimetres(number(facts.second));
          break;
        case Shape::inch_slash:
          if (second == Second::series) reading.aspect_percent = number(facts.second);
          if (second == Second::outer_in) {
            reading.stated_outer_diameter = inches(number(facts.second));
          }
          if (second == Second::outer_cm) {
            reading.stated_outer_diameter = millimetres(number(facts.second) * 10.0);
          }
          break;
        default:
          reading.stated_outer_diameter = inches(number(facts.second));
          break;
      }
    }
    switch (facts.construction) {
      case 'R':
        reading.construction = Construction::radial;
        break;
      case 'B':
        reading.construction = Construction::bias_belted;
        break;
      case 'D':
      case '-':
      case 'X':
        reading.construction = Construction::cross_ply;
        break;
      default:
        break;
    }
    settle_construction();
    if (facts.size_symbol != 0) reading.size_symbol = symbol_in_size(facts.size_symbol);
    if (const Hit* build = find_hit(tyre.size, Element::build)) reading.run_flat = build->flat;
  }

  // In inches no letter means cross-ply (3.00S18). Before a rim in millimetres, and in competition
  // sizes in centimetres, a dash was put for radials too: it says nothing.
  void settle_construction() {
    const Shape shape = tyre.size.shape;
    if (facts.construction == 0 && width_in_inches(shape) && shape != Shape::outer_in_crossed &&
        shape != Shape::flotation_slashes) {
      reading.construction = Construction::cross_ply;
    }
    const bool says_nothing = shape == Shape::metric_rim_mm || shape == Shape::no_series_rim_mm ||
                              shape == Shape::crossed_rim_mm || shape == Shape::crossed_rim_cm ||
                              shape == Shape::no_series_crossed || shape == Shape::outer_metric ||
                              second_meaning() == Second::outer_cm;
    if (says_nothing && (facts.construction == '-' || facts.construction == 'X')) {
      reading.construction.reset();
    }
  }

  void services() {
    if (facts.has_service()) {
      reading.service = description(facts.service);
      const bool may_exceed = facts.size_symbol == 'Z' || facts.size_symbol == 'V';
      reading.service->above_symbol = facts.service.bracketed && may_exceed;
    }
    if (tyre.second_service.load_index >= 0) {
      reading.second_service = description(tyre.second_service);
      if (!may_have_two_services(reading.family))
        reading.service = lower_of(*reading.service, *reading.second_service);
    }
  }

  void flags() {
    reading.high_load = facts.prefix == 'H';
    reading.temporary_spare = facts.prefix == 'T';
    reading.commercial = facts.commercial || facts.camper;
    reading.camper = facts.camper;
    reading.light_truck = facts.light_truck || facts.prefix == 'L';
    reading.motorcycle = facts.motorcycle || reading.family == Family::motorcycle_metric ||
                         reading.family == Family::motorcycle_inch ||
                         reading.family == Family::motorcycle_alpha;
    if (facts.ply > 0) {
      reading.ply_rating = facts.ply;
    } else if (ply_rating_of(facts.load_range) > 0) {
      reading.ply_rating = ply_rating_of(facts.load_range);
    }
  }

  void marks() {
    for (std::size_t i = 0; i < tyre.mark_count; ++i) {
      const Seen& seen = tyre.marks[i];
      take(mark_table().rows[seen.row].effect, seen);
    }
  }

  void take(Effect effect, const Seen& seen) {
    switch (effect) {
      case Effect::extra_load:
        reading.extra_load = true;
        break;
      case Effect::run_flat:
        reading.run_flat = true;
        break;
      case Effect::radial:
        if (!reading.construction || facts.construction == '-' || facts.construction == 'X' ||
            facts.construction == 0) {
          reading.construction = Construction::radial;
        }
        break;
      case Effect::cross_ply:
        if (!reading.construction) reading.construction = Construction::cross_ply;
        break;
      case Effect::bias_belted:
        if (!reading.construction) reading.construction = Construction::bias_belted;
        break;
      case Effect::kilopascals:
        if (!reading.marked_pressure) reading.marked_pressure = kilopascals(number_of(seen));
        break;
      case Effect::psi:
        if (!reading.marked_pressure) reading.marked_pressure = psi(number_of(seen));
        break;
      case Effect::bar:
        if (!reading.marked_pressure) reading.marked_pressure = bars(number_of(seen));
        break;
      default:
        break;
    }
  }

  double number_of(const Seen& seen) const {
    return number(decimal_at(text, seen.value.begin).scaled);
  }
};

}  // namespace

void put_values(const Gathered& gathered) { Values{gathered}.put(); }

}  // namespace treadwater::sidewall
