#include "core/judge/car.hpp"

#include <algorithm>

#include "core/car/corner.hpp"
#include "core/car/rules.hpp"
#include "core/judge/advice.hpp"
#include "core/judge/car_axles.hpp"
#include "core/judge/verdict.hpp"
#include "core/patch/rating.hpp"
#include "core/quantity/text.hpp"

namespace treadwater::judge {
namespace {

// UN R64, as moulded on them.
constexpr GaugePressure of_a_temporary_spare = kilopascals(420.0);
constexpr double soft_spare = 0.9;  // of that
// The car is not on its spare: a fault of the spare alone does not stop it.
constexpr Level most_of_a_spare = Level::care;

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
  if (first == spare_wheel && found.level() > most_of_a_spare) found.lowered = most_of_a_spare;
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

// ---- for another kind of vehicle ----

bool is_a_motorcycles_among_others(const Car& car, std::size_t wheel) {
  const sidewall::Reading& tyre = *car.corners[wheel].tyre.size;
  return tyre.motorcycle &&
         std::any_of(car.corners.begin(), car.corners.begin() + wheels_on_the_road,
                     [&](const Corner& other) {
                       return other.has_tyre() && car::unlike(tyre, *other.tyre.size).vehicle;
                     });
}

bool is_for_another_vehicle(const Car& car, std::size_t wheel) {
  return car::for_trailers_only(*car.corners[wheel].tyre.size) ||
         is_a_motorcycles_among_others(car, wheel);
}

void add_of_another_vehicle(const Wheels& wheels, Finding what, bool on_the_road,
                            Findings& findings) {
  if (wheels.count() == 0) return;
  Found found(what, {wheels.value()}, {&advice::who_decides});
  if (!on_the_road) found.lowered = most_of_a_spare;
  findings.add(std::move(found));
}

void judge_vehicle(const Car& car, Findings& findings) {
  Wheels trailer[2], motorcycle[2];  // on the road, and the spare
  for (std::size_t wheel = 0; wheel < all_wheels; ++wheel) {
    if (!car.corners[wheel].has_tyre()) continue;
    const int spare = wheel == spare_wheel ? 1 : 0;
    if (car::for_trailers_only(*car.corners[wheel].tyre.size)) trailer[spare].add(wheel);
    if (is_a_motorcycles_among_others(car, wheel)) motorcycle[spare].add(wheel);
  }
  for (const int spare : {0, 1}) {
    add_of_another_vehicle(trailer[spare], finding::trailer_tyre_on_car, spare == 0, findings);
    add_of_another_vehicle(motorcycle[spare], finding::motorcycle_tyre_on_car, spare == 0,
                           findings);
  }
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
        if (!c.has_tyre()) return false;
        const car::Unlike unlike = car::unlike(*spare.size, *c.tyre.size);
        return !unlike.winter && !unlike.run_flat && !unlike.vehicle &&
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

std::optional<Level> Car::own_level(std::size_t wheel) const {
  const Corner& corner = corners[wheel];
  if (!corner.judged || !corner.whole) return std::nullopt;
  if (is_for_another_vehicle(*this, wheel)) return Level::unfit;
  return verdict(corner.judged->findings, corner.judged->hold).level;
}

std::optional<Level> Car::level(std::size_t wheel) const {
  const auto own = own_level(wheel);
  return own && wheel == spare_wheel ? std::min(*own, most_of_a_spare) : own;
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
  judge_axles(car, findings);
  judge_vehicle(car, findings);
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
