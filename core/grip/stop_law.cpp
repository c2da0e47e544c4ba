// Symbols: V speed in km/h, h film in mm, c = loss/(at rest + grade), p and q = 1 - c V^2 at the
// lower and the higher speed, z = (p - q)/(p + q).
#include "core/grip/stop_law.hpp"

#include <algorithm>
#include <cmath>

#include "core/grip/stopping.hpp"
#include "core/quantity/power.hpp"

namespace treadwater::grip {
namespace {

struct Worn {
  double tread;  // mm
  double k;      // per (km/h)^2 at 1 mm of water
  double a;
};
constexpr Worn worn[] = {{0.0, 10e-5, 0.80}, {1.0, 7.2e-5, 0.84}, {1.6, 6.1e-5, 0.85},
                         {3.0, 5.9e-5, 1.0}, {4.7, 1.9e-5, 1.0},  {8.0, 1.2e-5, 1.0}};

constexpr double road_spread = 0.15;
constexpr FrictionBand s{1.25, 1.0, 0.7};
constexpr double tests_to_mm = 2.0;
// To this depth, and from this tread up, test cars stopped from above the onset's low end.
constexpr Length seen_to_stop_in = millimetres(2.0);
constexpr Length seen_to_stop_on = millimetres(1.0);
constexpr double onset_from_mm = 3.0;

// Here and below a number that is none stays none: it stands first in min and max.
double by_tread(Length tread, double Worn::*figure) {
  const double mm = in_millimetres(tread);
  const Worn* row = std::begin(worn);
  while (row + 2 != std::end(worn) && mm > row[1].tread) ++row;
  const double share = std::min((mm - row->tread) / (row[1].tread - row->tread), 1.0);
  return row->*figure + (row[1].*figure - row->*figure) * share;
}

// atanh(z)/z to the last digit for |z| up to 1/3.
double atanh_over(double z) {
  double sum = 0.0;
  for (int n = 37; n >= 1; n -= 2) sum = sum * (z * z) + 1.0 / n;
  return sum;
}

double longest_film_factor(double h) {
  return h < 1.0 ? std::sqrt(h) : power(std::min(h, tests_to_mm), 0.7);
}

Speed on(Side side, const SpeedBand& band) {
  return side == &FrictionBand::low       ? band.low
         : side == &FrictionBand::central ? band.central
                                          : band.high;
}

double per_square(Speed v) {
  const double kmh = std::max(in_kilometres_per_hour(v), 1.0);
  return 1.0 / (kmh * kmh);
}

}  // namespace

FrictionBand wet_grip_at_rest(RoadGrip road) {
  double central = 0.76;
  switch (road) {
    case RoadGrip::not_told:
      return {0.55, 0.76, 1.04};
    case RoadGrip::grippy:
      central = 0.90;
      break;
    case RoadGrip::ordinary:
      break;
    case RoadGrip::polished:
      central = 0.65;
      break;
  }
  return {central * (1.0 - road_spread), central, central * (1.0 + road_spread)};
}

FrictionBand dry_grip(RoadGrip road) {
  return {std::max(0.70, wet_grip_at_rest(road).low), 0.98, 1.20};
}

double wet_tread_share(Length tread) { return by_tread(tread, &Worn::a); }

SpeedBand grip_gone_at(Length tread, Length film, const std::optional<SpeedBand>& onset) {
  const double h = in_millimetres(film);
  const double k = by_tread(tread, &Worn::k);
  const double f = std::min(h, 1.0);
  const double afloat = std::clamp((h - tests_to_mm) / (onset_from_mm - tests_to_mm), 0.0, 1.0);
  const auto gone = [&](double loss, Speed floats_from) {
    if (afloat > 0.0 && onset) loss += (std::max(per_square(floats_from), loss) - loss) * afloat;
    return kilometres_per_hour(1.0 / std::sqrt(loss));
  };
  const SpeedBand from = onset.value_or(SpeedBand{});
  return {gone(k * s.low * longest_film_factor(h), from.low), gone(k * s.central * f, from.central),
          gone(k * s.high * f, from.high)};
}

PavedSide paved_side(Side side, const PavedCase& paved, double share, double in_dry,
                     double in_wet) {
  const double wetness = wetness_of(paved.film);
  const double most = dry_grip(paved.road).*side * in_dry;
  // Even rubber at its best in the wet grips no better there than in the dry.
  const double soaked =
      std::min(most, wet_grip_at_rest(paved.road).*side * wet_tread_share(paved.tread) * in_wet);
  const double gone =
      in_kilometres_per_hour(on(side, grip_gone_at(paved.tread, paved.film, paved.onset)));
  return {{share * blend(most, soaked, wetness), share * soaked * wetness / (gone * gone)},
          share * most * (1.0 - wetness)};
}

Speed told_to(Side side, const PavedCase& paved, const SquareLaw& law, double grade) {
  const double fastest = in_kilometres_per_hour(fastest_of_paved_law);
  const double vg =
      in_kilometres_per_hour(on(side, grip_gone_at(paved.tread, paved.film, paved.onset)));
  // Downhill what is left at Vg and below may not hold the car.
  const double held = std::max(0.0, law.at_rest + std::min(0.0, grade));
  const double gone = law.loss > 0.0 ? std::sqrt(held / law.loss) : 2.0 * fastest;
  const Speed most =
      kilometres_per_hour(std::min(fastest, told_share_of_gone * std::min(gone, vg)));
  if (!paved.onset || !(paved.film > Length())) return most;
  const bool seen_to_stop = paved.film <= seen_to_stop_in && paved.tread >= seen_to_stop_on;
  const Speed floats_from =
      side == &FrictionBand::low && seen_to_stop ? paved.onset->central : on(side, *paved.onset);
  return std::min(most, kilometres_per_hour(std::nextafter(
                            std::max(0.0, in_kilometres_per_hour(floats_from)), 0.0)));
}

std::optional<Length> braked_by(const SquareLaw& law, Speed from, Speed to, double grade) {
  const double high = in_kilometres_per_hour(from), low = in_kilometres_per_hour(to);
  if (!(low >= 0.0)) return std::nullopt;
  if (high <= low) return Length();
  const double held = law.at_rest + grade;
  const double squares = (high - low) * (high + low);
  const double c = law.loss / held;
  const double q = 1.0 - c * (high * high);
  if (!(held > 0.0) || !(q > 0.0) || !(squares > 0.0)) return std::nullopt;
  const double p = q + c * squares;
  // ln(p/q) / (p - q): 1 where friction does not change, without a difference of near numbers.
  double longer;
  if (const double z = (p - q) / (p + q); z <= 1.0 / 3.0) {
    longer = 2.0 / (p + q) * atanh_over(z);
  } else {
    double root = p / q, times = 2.0;
    for (; root > 2.0; times *= 2.0) root = std::sqrt(root);
    const double near = (root - 1.0) / (root + 1.0);
    longer = times * near * atanh_over(near) / (p - q);
  }
  constexpr double kmh_per_ms_squared = 12.96;
  return metres(squares * longer / (2.0 * kmh_per_ms_squared * deceleration(law.at_rest, grade)));
}

}  // namespace treadwater::grip
