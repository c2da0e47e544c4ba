#include "core/judge/car.hpp"

#include <algorithm>

#include "core/car/corner.hpp"
#include "core/car/rules.hpp"
#include "core/judge/advice.hpp"
#include "core/judge/verdict.hpp"
#include "core/patch/rating.hpp"
#include "core/quantity/text.hpp"

namespace treadwater::judge {
namespace {

// UN R64, as moulded on them.
constexpr GaugePressure of_a_temporary_spare = kilopascals(420.0);
constexpr double soft_spare = 0.9;  // of that

// Wheels by their names: "Front left, Rear left".
class Wheels {
 public:
  void add(std::size_t wheel) {
    const std::string name = say(wheel_name(wheel));
    add_item(names_, name);
    add_item(within_, within_sentence(name));
    ++count_;
  }
  std::size_t count() const { return count_; }
  Value value() const { return {names_}; }
  Whose whose() const { return {names_, within_}; }

 private:
  std::string names_;
  std::string within_;
  std::size_t count_ = 0;
};

void add_of(const Wheels& wheels, Finding what, const Sources& sources, Findings& findings,
            const Values& more = {}) {
  if (wheels.count() == 0) return;
  Values values{wheels.value()};
  values.insert(values.end(), more.begin(), more.end());
  findings.add(what, std::move(values), sources);
}

// ---- each tyre alone ----

// Notes on a sidewall's text are for the check of one tyre; the spare is not checked in water.
bool matters_to_the_car(const Found& found, std::size_t wheel) {
  return found.level() != Level::note || found.what == finding::run_flat ||
         (found.what == finding::water_not_given && wheel != spare_wheel);
}

bool has_danger(const Corner& corner, Finding what) {
  return corner.judged &&
         std::any_of(corner.judged->findings.found.begin(), corner.judged->findings.found.end(),
                     [&](const Found& found) { return same_danger(found.what, what); });
}

// How likely aquaplaning is; the same for all findings of another kind.
double likelihood(const Found& found) {
  const bool floats =
      found.what == finding::floats_sometimes || found.what == finding::floats_too_often;
  return floats ? found.values.back().stored() : 0.0;
}

// A finding on this wheel, as given for the car: of aquaplaning that of the likeliest wheel.
Found told_of_the_car(const Car& car, std::size_t first, Found found) {
  Wheels wheels;
  for (std::size_t wheel = first; wheel < all_wheels; ++wheel) {
    if (!has_danger(car.corners[wheel], found.what)) continue;
    wheels.add(wheel);
    for (const Found& one : car.corners[wheel].judged->findings.found)
      if (one.what == found.what && likelihood(one) > likelihood(found)) found.values = one.values;
  }
  // What applies to all of them needs no names.
  if (wheels.count() < wheels_on_the_road) found.of = wheels.whose();
  // The car is not on its spare: a fault of the spare alone does not stop it.
  if (first == spare_wheel && found.level() == Level::unfit) found.lowered = Level::care;
  return found;
}

void tell_of_wheels(const Car& car, Findings& findings) {
  std::vector<Finding> told;
  for (std::size_t wheel = 0; wheel < all_wheels; ++wheel) {
    if (!car.corners[wheel].judged) continue;
    for (const Found& found : car.corners[wheel].judged->findings.found) {
      if (!matters_to_the_car(found, wheel) ||
          std::any_of(told.begin(), told.end(),
                      [&](Finding what) { return same_danger(what, found.what); }))
        continue;
      told.push_back(found.what);
      findings.add(told_of_the_car(car, wheel, found));
    }
  }
}

void keep_the_lowest(std::vector<Limit>& limits) {
  std::vector<Limit> kept;
  for (Limit& limit : limits)
    if (std::none_of(kept.begin(), kept.end(), [&](const Limit& k) { return alike(k, limit); }))
      kept.push_back(std::move(limit));
  limits = std::move(kept);
}

// ---- an axle ----

void judge_tyres_of(const Axle& axle, const sidewall::Reading& left, const sidewall::Reading& right,
                    Findings& findings) {
  const auto match = car::match_on_axle(left, right);
  if (match == car::AxleMatch::different_construction || match == car::AxleMatch::different_size)
    findings.add(match == car::AxleMatch::different_construction
                     ? finding::two_constructions_on_axle
                     : finding::two_sizes_on_axle,
                 {axle.name, left.canonical, right.canonical},
                 {&car::same_axle_source(), &car::mixing_source()});
  if (sidewall::has_mark(left, "three_peak") != sidewall::has_mark(right, "three_peak"))
    findings.add(finding::mixed_winter, {axle.name}, {&car::mixing_source()});
}

void judge_axle(const Axle& axle, const Car& car, Findings& findings) {
  const Corner& left = car.corners[axle.left];
  const Corner& right = car.corners[axle.right];
  if (!left.has_tyre() || !right.has_tyre()) return;
  const TyreCase &l = left.tyre, &r = right.tyre;
  if (l.size->temporary_spare || r.size->temporary_spare) return;  // has its own rules
  judge_tyres_of(axle, *l.size, *r.size, findings);
  if (l.gauge && r.gauge) {
    const auto difference = car::pressure_difference(*l.gauge, *r.gauge);
    if (difference != car::Difference::none)
      findings.add(difference == car::Difference::too_great ? finding::very_uneven_pressure
                                                            : finding::uneven_pressure,
                   {axle.name, *l.gauge, *r.gauge}, {&car::pressure_difference_source()});
  }
  if (l.tread && r.tread && car::tread_difference(*l.tread, *r.tread) != car::Difference::none)
    findings.add(finding::uneven_tread, {axle.name, Value::depth(*l.tread), Value::depth(*r.tread)},
                 {&car::tread_difference_source()});
}

// ---- front and rear ----

std::optional<sidewall::Construction> construction_on(const Axle& axle, const Car& car) {
  for (const std::size_t wheel : {axle.left, axle.right}) {
    const Corner& corner = car.corners[wheel];
    if (corner.has_tyre() && !corner.tyre.size->temporary_spare)
      return corner.tyre.size->construction;
  }
  return std::nullopt;
}

std::optional<Length> least_tread_on(const Axle& axle, const Car& car) {
  const auto& left = car.corners[axle.left].tyre.tread;
  const auto& right = car.corners[axle.right].tyre.tread;
  if (!left || !right) return std::nullopt;
  return std::min(*left, *right);
}

void judge_front_against_rear(const Car& car, Findings& findings) {
  const auto front = construction_on(axles[0], car);
  const auto rear = construction_on(axles[1], car);
  if (front && rear && !car::may_be_mixed(*front, *rear))
    findings.add(finding::mixed_construction,
                 {sidewall::construction_name(*front), sidewall::construction_name(*rear)},
                 {&car::mixing_source()});
  const auto front_tread = least_tread_on(axles[0], car);
  const auto rear_tread = least_tread_on(axles[1], car);
  if (front_tread && rear_tread && car::deeper_tread_in_front(*front_tread, *rear_tread))
    findings.add(finding::deeper_in_front, {Value::depth(*front_tread), Value::depth(*rear_tread)},
                 {&car::deeper_to_the_rear_source()});
}

// ---- the car's top speed, and spares ----

void judge_top_speed(const Car& car, Findings& findings) {
  if (!car.top_speed) return;
  Wheels slow, winter;
  for (std::size_t wheel = 0; wheel < wheels_on_the_road; ++wheel) {
    if (!car.corners[wheel].has_tyre()) continue;
    const sidewall::Reading& tyre = *car.corners[wheel].tyre.size;
    const auto symbol = patch::speed_symbol(tyre);
    if (!symbol) continue;
    const auto fit =
        car::symbol_fit(*symbol, *car.top_speed, sidewall::has_mark(tyre, "three_peak"));
    if (fit == car::SymbolFit::too_low) slow.add(wheel);
    if (fit == car::SymbolFit::winter_exception) winter.add(wheel);
  }
  add_of(slow, finding::symbol_below_car, {&standard::speed_symbol_source()}, findings,
         {*car.top_speed});
  add_of(winter, finding::winter_label, {&car::winter_exception_source()}, findings);
}

void judge_spares_in_use(const Car& car, Findings& findings) {
  const auto in_use =
      std::count_if(car.corners.begin(), car.corners.begin() + wheels_on_the_road,
                    [](const Corner& c) { return c.has_tyre() && c.tyre.size->temporary_spare; });
  if (in_use > 1) findings.add(finding::two_spares, {}, {&advice::spare_on_board});
}

void judge_spare(const Car& car, Findings& findings) {
  if (!car.spare().has_tyre()) return;
  const TyreCase& spare = car.spare().tyre;
  if (spare.size->temporary_spare) {
    if (spare.gauge && *spare.gauge < of_a_temporary_spare * soft_spare)
      findings.add(finding::spare_soft, {*spare.gauge, of_a_temporary_spare},
                   {&advice::spare_on_board});
    return;
  }
  const bool same = std::all_of(
      car.corners.begin(), car.corners.begin() + wheels_on_the_road, [&](const Corner& c) {
        return c.has_tyre() &&
               car::match_on_axle(*spare.size, *c.tyre.size) == car::AxleMatch::same;
      });
  if (!same) findings.add(finding::spare_differs, {}, {&advice::spare_on_board});
}

// ---- beaded edges ----

bool has_beaded_edge(const Corner& corner) {
  return corner.has_tyre() && corner.tyre.size->family == sidewall::Family::beaded_edge &&
         corner.tyre.gauge && corner.tyre.size->section_width;
}

void judge_beaded_edges(const Car& car, Findings& findings) {
  Wheels soft, low;
  for (std::size_t wheel = 0; wheel < wheels_on_the_road; ++wheel) {
    const Corner& corner = car.corners[wheel];
    if (!has_beaded_edge(corner)) continue;
    const TyreCase& tyre = corner.tyre;
    const auto band = beaded_edge_band(corner);
    if (*tyre.gauge < patch::least_pressure_of(*tyre.size, corner.load).pressure)
      soft.add(wheel);
    else if (band && *tyre.gauge < band->high)
      low.add(wheel);
  }
  add_of(soft, finding::beaded_edge_soft, beaded_edge_sources(), findings);
  add_of(low, finding::beaded_edge_low, beaded_edge_sources(), findings);
}

}  // namespace

Phrase wheel_name(std::size_t wheel) {
  return wheel == spare_wheel ? Phrase("Spare") : car::corners[wheel].name;
}

std::optional<Level> Corner::level() const {
  if (!judged || !whole) return std::nullopt;
  return verdict(judged->findings, judged->hold).level;
}

void judge_wear(const Car& car, Findings& findings) {
  for (std::size_t wheel = 0; wheel < all_wheels; ++wheel) {
    const Corner& corner = car.corners[wheel];
    if (!corner.inner || !corner.centre || !corner.outer) continue;
    const auto pattern = car::wear_pattern(*corner.inner, *corner.centre, *corner.outer);
    if (!pattern) continue;
    const auto add = [&](Finding what) {
      findings.add(what, {wheel_name(wheel)}, {&car::wear_pattern_source()});
    };
    if (pattern->under_inflated) add(finding::worn_shoulders);
    if (pattern->over_inflated) add(finding::worn_middle);
    if (pattern->alignment == car::Side::inner) add(finding::worn_inside);
    if (pattern->alignment == car::Side::outer) add(finding::worn_outside);
  }
}

void judge_corners(Car& car, UnitSystem units, Findings& findings) {
  for (std::size_t wheel = 0; wheel < all_wheels; ++wheel) {
    Corner& corner = car.corners[wheel];
    if (!corner.may_be_judged()) continue;
    corner.judged = judge_tyre(corner.tyre);
    if (corner.whole) conclude(*corner.judged, corner.tyre, units);
    if (wheel == spare_wheel) continue;
    for (Limit limit : corner.judged->findings.limits) {
      limit.of = wheel_name(wheel);
      findings.add(std::move(limit));
    }
  }
  keep_the_lowest(findings.limits);
  tell_of_wheels(car, findings);
}

void judge_together(const Car& car, Findings& findings) {
  for (const Axle& axle : axles) judge_axle(axle, car, findings);
  judge_front_against_rear(car, findings);
  judge_top_speed(car, findings);
  judge_spares_in_use(car, findings);
  judge_spare(car, findings);
  judge_beaded_edges(car, findings);
}

void conclude(const Car& car, Findings& findings) {
  const bool known_of_all =
      std::all_of(car.corners.begin(), car.corners.begin() + wheels_on_the_road,
                  [](const Corner& c) { return c.judged && c.judged->speed_known(); });
  if (stop_where_no_speed_helps(findings) || known_of_all) return;
  findings.no_speed = true;
  findings.add(finding::no_speed_told);
}

std::optional<patch::PressureBand> beaded_edge_band(const Corner& corner) {
  if (!has_beaded_edge(corner)) return std::nullopt;
  return patch::beaded_edge_pressure(*corner.tyre.size->section_width,
                                     corner.load.value_or(Mass()) * 2.0, patch::Wheels::single);
}

const Sources& beaded_edge_sources() {
  static const Sources all{&patch::beaded_edge_1909_source(), &patch::beaded_edge_1921_source(),
                           &patch::beaded_edge_least_source(),
                           &patch::beaded_edge_practice_source()};
  return all;
}

}  // namespace treadwater::judge
