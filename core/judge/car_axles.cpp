#include "core/judge/car_axles.hpp"

#include <algorithm>
#include <cmath>

#include "core/car/rules.hpp"
#include "core/judge/advice.hpp"
#include "core/patch/geometry.hpp"

namespace treadwater::judge {
namespace {

// What a hot reading has more than a cold one, at the least: the other end of `hot_excess`
// (advice::hot_reading).
constexpr GaugePressure least_hot_excess = kilopascals(20.0);

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
  const car::Unlike unlike = car::unlike(left, right);
  if (unlike.winter) findings.add(finding::mixed_winter, {axle.name}, {&car::mixing_source()});
  if (unlike.run_flat)
    findings.add(finding::run_flat_beside_plain, {axle.name}, {&car::run_flat_source()});
}

// What it may have when cold, from its reading.
struct ColdPressure {
  explicit ColdPressure(const TyreCase& tyre)
      : low(*tyre.gauge - (tyre.hot == false ? GaugePressure() : hot_excess)),
        high(*tyre.gauge - (tyre.hot == true ? least_hot_excess : GaugePressure())) {}
  GaugePressure low;
  GaugePressure high;
};

// Too great only if it is whatever the cold pressures are; none only if there is none.
car::Difference cold_difference(const ColdPressure& left, const ColdPressure& right) {
  const car::Difference ends[] = {car::pressure_difference(left.low, right.low),
                                  car::pressure_difference(left.low, right.high),
                                  car::pressure_difference(left.high, right.low),
                                  car::pressure_difference(left.high, right.high)};
  const auto [least, most] = std::minmax_element(std::begin(ends), std::end(ends));
  return *most == car::Difference::none ? *most
                                        : std::max(*least, car::Difference::worth_correcting);
}

void judge_pressures_of(const Axle& axle, const TyreCase& left, const TyreCase& right,
                        Findings& findings) {
  if (!left.gauge || !right.gauge) return;
  const Sources sources{&car::pressure_difference_source()};
  if (left.hot == right.hot) {
    const auto difference = car::pressure_difference(*left.gauge, *right.gauge);
    if (difference != car::Difference::none)
      findings.add(difference == car::Difference::too_great ? finding::very_uneven_pressure
                                                            : finding::uneven_pressure,
                   {axle.name, *left.gauge, *right.gauge}, sources);
    return;
  }
  const ColdPressure l(left), r(right);
  const auto difference = cold_difference(l, r);
  if (difference != car::Difference::none)
    findings.add(difference == car::Difference::too_great ? finding::very_uneven_pressure_as_cold
                                                          : finding::uneven_pressure_as_cold,
                 {axle.name, l.low, r.low},
                 {&car::pressure_difference_source(), &advice::hot_reading});
}

void judge_axle(const Axle& axle, const Car& car, Findings& findings) {
  const Corner& left = car.corners[axle.left];
  const Corner& right = car.corners[axle.right];
  if (!left.has_tyre() || !right.has_tyre()) return;
  const TyreCase &l = left.tyre, &r = right.tyre;
  if (l.size->temporary_spare || r.size->temporary_spare) return;  // has its own rules
  judge_tyres_of(axle, *l.size, *r.size, findings);
  judge_pressures_of(axle, l, r, findings);
  if (l.tread && r.tread && car::tread_difference(*l.tread, *r.tread) != car::Difference::none)
    findings.add(finding::uneven_tread, {axle.name, Value::depth(*l.tread), Value::depth(*r.tread)},
                 {&car::tread_difference_source()});
}

// ---- front and rear ----

// One that is no temporary spare; null if there is none.
const sidewall::Reading* tyre_on(const Axle& axle, const Car& car) {
  for (const std::size_t wheel : {axle.left, axle.right}) {
    const Corner& corner = car.corners[wheel];
    if (corner.has_tyre() && !corner.tyre.size->temporary_spare) return &*corner.tyre.size;
  }
  return nullptr;
}

// Its sides being alike is judged on the axle.
bool is_alike(const Axle& axle, const Car& car, bool car::Unlike::*in) {
  const Corner &left = car.corners[axle.left], &right = car.corners[axle.right];
  if (!left.has_tyre() || !right.has_tyre()) return true;
  const sidewall::Reading &l = *left.tyre.size, &r = *right.tyre.size;
  return l.temporary_spare || r.temporary_spare || !(car::unlike(l, r).*in);
}

std::optional<Length> least_tread_on(const Axle& axle, const Car& car) {
  const auto& left = car.corners[axle.left].tyre.tread;
  const auto& right = car.corners[axle.right].tyre.tread;
  if (!left || !right) return std::nullopt;
  return std::min(*left, *right);
}

void judge_circumferences(const sidewall::Reading& front, const sidewall::Reading& rear,
                          Findings& findings) {
  const auto one = patch::nominal_size(front), other = patch::nominal_size(rear);
  if (!one || !other) return;
  const auto around = [](const sidewall::Reading& tyre, const patch::TyreSize& size) {
    return patch::rolling_circumference(size, tyre.construction != sidewall::Construction::radial)
        .nominal;
  };
  const double ratio = around(rear, *other) / around(front, *one);
  const auto difference = car::circumference_difference(ratio);
  if (difference != car::Difference::none)
    findings.add(difference == car::Difference::too_great ? finding::axles_differ_far
                                                          : finding::axles_differ,
                 {Value::number(100.0 * std::fabs(ratio - 1.0), 1)}, {&advice::size_change});
}

void judge_kinds_of_axles(const Car& car, const sidewall::Reading& front,
                          const sidewall::Reading& rear, Findings& findings) {
  const car::Unlike unlike = car::unlike(front, rear);
  const auto only_one = [&](bool car::Unlike::*in) {
    return unlike.*in && is_alike(axles[0], car, in) && is_alike(axles[1], car, in);
  };
  if (only_one(&car::Unlike::winter))
    findings.add(finding::winter_on_one_axle,
                 {axles[sidewall::has_mark(front, "three_peak") ? 0 : 1].name},
                 {&car::mixing_source()});
  if (only_one(&car::Unlike::run_flat))
    findings.add(finding::run_flat_on_one_axle, {axles[front.run_flat ? 0 : 1].name},
                 {&car::run_flat_source()});
}

void judge_front_against_rear(const Car& car, Findings& findings) {
  const sidewall::Reading *front = tyre_on(axles[0], car), *rear = tyre_on(axles[1], car);
  if (front != nullptr && rear != nullptr) {
    if (front->construction && rear->construction &&
        !car::may_be_mixed(*front->construction, *rear->construction))
      findings.add(finding::mixed_construction,
                   {sidewall::construction_name(*front->construction),
                    sidewall::construction_name(*rear->construction)},
                   {&car::mixing_source()});
    judge_circumferences(*front, *rear, findings);
    judge_kinds_of_axles(car, *front, *rear, findings);
  }
  const auto front_tread = least_tread_on(axles[0], car);
  const auto rear_tread = least_tread_on(axles[1], car);
  if (front_tread && rear_tread && car::deeper_tread_in_front(*front_tread, *rear_tread))
    findings.add(finding::deeper_in_front, {Value::depth(*front_tread), Value::depth(*rear_tread)},
                 {&car::deeper_to_the_rear_source()});
}

}  // namespace

void judge_axles(const Car& car, Findings& findings) {
  for (const Axle& axle : axles) judge_axle(axle, car, findings);
  judge_front_against_rear(car, findings);
}

}  // namespace treadwater::judge
