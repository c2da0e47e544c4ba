#include "core/grip/limits.hpp"

#include <algorithm>
#include <cmath>

#include "core/grip/cornering.hpp"

namespace treadwater::grip {
namespace {

constexpr int fastest = static_cast<int>(in_kilometres_per_hour(end_of_model));
constexpr double ratio_widening = 1.2;

constexpr double to_ms(double kmh) { return kmh / 3.6; }

// One side of the band on this road.
class Slowing {
 public:
  Slowing(const Grip& grip, Side side, const Road& road)
      : grip_(grip),
        side_(side),
        road_(road),
        told_to_(grip.told_to(side, road.grade)),
        law_(road.radius ? std::nullopt : grip.square_law(side)) {}

  Speed told_to() const { return told_to_; }
  bool in_closed_form() const { return law_.has_value(); }
  // Closed form.
  std::optional<Length> braked(Speed from, Speed to) const {
    return braked_by(*law_, from, to, road_.grade);
  }

  // The deceleration by steps of 1 km/h; zero or less where the car does not slow, or does not hold
  // the bend.
  double in_step(int kmh) const {
    const Speed top = kilometres_per_hour(kmh + 1.0);
    double friction = grip_.at(top).*side_;
    if (road_.radius) {
      friction = braking_left(friction, friction * side_share,
                              side_demand(top, *road_.radius, road_.bank));
      if (!(friction > 0.0)) return 0.0;
    }
    return deceleration(friction, road_.grade);
  }

 private:
  const Grip& grip_;
  Side side_;
  const Road& road_;
  Speed told_to_;
  std::optional<SquareLaw> law_;
};

bool sensible(Speed speed) { return speed >= Speed() && speed <= kilometres_per_hour(fastest); }

// The greatest speed of a range that still does, where a greater one never does what a lesser one
// does not. The least of the range is taken to do.
template <class Does>
Speed greatest(Speed least, Speed most, const Does& does) {
  if (does(most)) return most;
  double low = in_kilometres_per_hour(least), high = in_kilometres_per_hour(most);
  for (int halving = 0; halving < 60; ++halving) {
    const double middle = (low + high) / 2.0;
    (does(kilometres_per_hour(middle)) ? low : high) = middle;
  }
  return kilometres_per_hour(low);
}

std::optional<Length> braking(const Slowing& slowing, Speed from, Speed to) {
  if (!sensible(from) || !sensible(to) || from > slowing.told_to()) return std::nullopt;
  if (slowing.in_closed_form()) return slowing.braked(from, to);
  const double top = in_kilometres_per_hour(from);
  const double bottom = in_kilometres_per_hour(to);
  double distance = 0.0;
  for (int step = static_cast<int>(bottom); step < top; ++step) {
    const double a = slowing.in_step(step);
    if (!(a > 0.0)) return std::nullopt;
    const double v1 = to_ms(std::min(step + 1.0, top));
    const double v0 = to_ms(std::max<double>(step, bottom));
    distance += std::max(0.0, v1 * v1 - v0 * v0) / (2.0 * a);
  }
  return metres(distance);
}

Speed seen_speed_by_steps(const Slowing& slowing, Length seen, Duration reaction) {
  const double t = in_seconds(reaction);
  double room = in_metres(seen);
  // `room` is what is left of the seen distance after braking from `step`; reaction comes on top.
  for (int step = 0; step < fastest; ++step) {
    const double a = slowing.in_step(step);
    const double v0 = to_ms(step);
    if (!(a > 0.0)) return kilometres_per_hour(step);
    const double v1 = to_ms(step + 1.0);
    const double braked = (v1 * v1 - v0 * v0) / (2.0 * a);
    if (braked + v1 * t > room) {
      const double v = std::sqrt(a * a * t * t + v0 * v0 + 2.0 * a * room) - a * t;
      return kilometres_per_hour(std::clamp<double>(v * 3.6, step, step + 1.0));
    }
    room -= braked;
  }
  return kilometres_per_hour(fastest);
}

Speed seen_speed(const Slowing& slowing, Length seen, Duration reaction) {
  if (!(seen > Length()) || !(reaction >= Duration())) return Speed();
  const Speed most = std::min(slowing.told_to(), kilometres_per_hour(fastest));
  if (!slowing.in_closed_form())
    return std::min(most, seen_speed_by_steps(slowing, seen, reaction));
  return greatest(Speed(), most, [&](Speed speed) {
    const auto braked = slowing.braked(speed, Speed());
    return braked && *braked + travelled(speed, reaction) <= seen;
  });
}

Speed left_over(const Slowing& slowing, Speed speed, Length given) {
  if (!sensible(speed) || !(given >= Length())) return speed;
  if (slowing.in_closed_form() && speed <= slowing.told_to()) {
    const auto whole = slowing.braked(speed, Speed());
    if (whole)
      return *whole <= given ? Speed() : greatest(Speed(), speed, [&](Speed left) {
        return *slowing.braked(speed, left) >= given;
      });
  }
  double room = in_metres(given);
  double top = in_kilometres_per_hour(speed);
  while (top > 0.0) {
    const int step = static_cast<int>(std::ceil(top)) - 1;
    const double a = slowing.in_step(step);
    const double v1 = to_ms(top), v0 = to_ms(step);
    const double needed = (v1 * v1 - v0 * v0) / (2.0 * a);
    if (!(a > 0.0) || needed > room)
      return metres_per_second(std::sqrt(std::max(v1 * v1 - 2.0 * a * room, 0.0)));
    room -= needed;
    top = step;
  }
  return Speed();
}

Speed corner(const Grip& grip, Side side, Length radius, double bank) {
  double low = 0.0, high = fastest;
  for (int i = 0; i < 30; ++i) {
    const double middle = (low + high) / 2.0;
    const Speed speed = kilometres_per_hour(middle);
    (side_demand(speed, radius, bank) <= grip.at(speed).*side * side_share ? low : high) = middle;
  }
  return kilometres_per_hour(low);
}

void add(std::optional<Length>& sum, const std::optional<Length>& more) {
  if (sum && more)
    sum = *sum + *more;
  else
    sum.reset();
}

}  // namespace

DistanceBand braking_band(const GripCase& given, Speed from, Speed to, const Road& road) {
  const Grip grip(given);
  return {braking({grip, &FrictionBand::high, road}, from, to),
          braking({grip, &FrictionBand::central, road}, from, to),
          braking({grip, &FrictionBand::low, road}, from, to)};
}

const DistanceBand& BrakingBySpeed::up_to(Speed speed) {
  const DistanceBand more = braking_band(case_, speed, from_, road_);
  add(sum_.shortest, more.shortest);
  add(sum_.central, more.central);
  add(sum_.longest, more.longest);
  from_ = speed;
  return sum_;
}

DistanceBand stopping_band(const GripCase& given, Speed speed, Duration reaction,
                           const Road& road) {
  if (!(reaction >= Duration())) return {};
  DistanceBand band = braking_band(given, speed, Speed(), road);
  for (std::optional<Length>* side : {&band.shortest, &band.central, &band.longest})
    if (*side) **side = **side + travelled(speed, reaction);
  return band;
}

SpeedBand seen_distance_speed(const GripCase& given, Length seen, Duration reaction,
                              const Road& road) {
  const Grip grip(given);
  return {seen_speed({grip, &FrictionBand::low, road}, seen, reaction),
          seen_speed({grip, &FrictionBand::central, road}, seen, reaction),
          seen_speed({grip, &FrictionBand::high, road}, seen, reaction)};
}

SpeedBand speed_left_band(const GripCase& given, Speed speed, Length room, const Road& road) {
  const Grip grip(given);
  const auto left = [&](Side side) { return left_over({grip, side, road}, speed, room); };
  // Down a steep hill a grip that holds the bend gains speed, while one that does not keeps it:
  // less grip must not look better for that.
  SpeedBand band{left(&FrictionBand::high), left(&FrictionBand::central), left(&FrictionBand::low)};
  band.central = std::max(band.central, band.low);
  band.high = std::max(band.high, band.central);
  return band;
}

SpeedBand corner_speed_band(const GripCase& given, Length radius, double bank) {
  const Grip grip(given);
  return {corner(grip, &FrictionBand::low, radius, bank),
          corner(grip, &FrictionBand::central, radius, bank),
          corner(grip, &FrictionBand::high, radius, bank)};
}

bool wear_matters(const GripCase& given) {
  return given.surface->ground == standard::Ground::paved && given.film > Length() &&
         given.tread < new_tread && groove_credit(*given.tyre) > 0.0;
}

GripCase when_new(GripCase grip_case) {
  grip_case.tread = new_tread;
  grip_case.onset = grip_case.onset_when_new;
  return grip_case;
}

std::optional<SpeedBand> speed_where_new_stops(const GripCase& given, Speed speed,
                                               const Road& road) {
  const DistanceBand stop = braking_band(when_new(given), speed, Speed(), road);
  if (!stop.longest) return std::nullopt;
  const Speed best = speed_left_band(given, speed, *stop.shortest, road).low;
  const Speed central = speed_left_band(given, speed, *stop.central, road).central;
  const Speed worst = speed_left_band(given, speed, *stop.longest, road).high;
  return SpeedBand{std::min({best, central, worst}), central, std::max({best, central, worst})};
}

GapRoad gap_road(const GripCase& given) {
  const standard::Ground ground = given.surface->ground;
  if (ground == standard::Ground::snow || ground == standard::Ground::ice) return GapRoad::ice;
  return given.film > Length() ? GapRoad::wet : GapRoad::dry;
}

std::optional<Ratio> worn_stop_ratio(const GripCase& given, Speed speed) {
  const DistanceBand worn = braking_band(given, speed, Speed(), {});
  const DistanceBand fresh = braking_band(when_new(given), speed, Speed(), {});
  if (!worn.longest || !fresh.longest || !(*fresh.shortest > Length())) return std::nullopt;
  const double low = *worn.shortest / *fresh.shortest;
  const double central = *worn.central / *fresh.central;
  const double high = *worn.longest / *fresh.longest;
  return Ratio{std::min({low, central, high}), central,
               ratio_widening * std::max({low, central, high})};
}

}  // namespace treadwater::grip
