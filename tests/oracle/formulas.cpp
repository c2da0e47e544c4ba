#include "tests/oracle/formulas.hpp"

#include <cstdio>
#include <cstdlib>
#include <tuple>
#include <type_traits>
#include <vector>

#include "core/air/gas_law.hpp"
#include "core/air/get_home.hpp"
#include "core/air/leak.hpp"
#include "core/air/natural_loss.hpp"
#include "core/air/odds.hpp"
#include "core/air/repair.hpp"
#include "core/air/warning.hpp"
#include "core/car/axle_load.hpp"
#include "core/car/fitment.hpp"
#include "core/car/wheel.hpp"
#include "core/grip/cornering.hpp"
#include "core/grip/film.hpp"
#include "core/grip/friction.hpp"
#include "core/grip/limits.hpp"
#include "core/grip/skid.hpp"
#include "core/grip/stopping.hpp"
#include "core/patch/beaded_edge.hpp"
#include "core/patch/contact.hpp"
#include "core/patch/cross_ply.hpp"
#include "core/patch/inclined.hpp"
#include "core/patch/measured.hpp"
#include "core/patch/pressure_demand.hpp"
#include "core/quantity/power.hpp"
#include "core/quantity/read.hpp"
#include "core/quantity/write.hpp"
#include "core/stage/decision.hpp"
#include "core/stage/event.hpp"
#include "core/stage/weather.hpp"
#include "core/standard/load_adjustment.hpp"
#include "core/standard/load_index.hpp"
#include "core/standard/speed_load.hpp"
#include "core/standard/speedometer.hpp"
#include "core/water/crossing.hpp"
#include "core/water/estimate.hpp"
#include "core/water/film.hpp"
#include "core/water/measured.hpp"
#include "core/water/onset.hpp"
#include "core/wear/rate.hpp"

namespace treadwater::oracle {
namespace {

// ---- arguments ----

class Words {
 public:
  explicit Words(std::string_view line) : rest_(line) {}
  bool any() const { return !rest_.empty(); }
  std::string next() {
    if (rest_.empty()) missing_ = true;
    const std::size_t end = std::min(rest_.find(' '), rest_.size());
    const std::string word(rest_.substr(0, end));
    rest_.remove_prefix(std::min(end + 1, rest_.size()));
    return word;
  }
  bool next_is_none() {
    const bool none = rest_.substr(0, 4) == "none";
    if (none) next();
    return none;
  }
  double number() { return std::strtod(next().c_str(), nullptr); }
  bool wrong() const { return missing_ || any(); }

 private:
  std::string_view rest_;
  bool missing_ = false;
};

template <class T>
struct As {};

template <class T>
T take(Words& w, As<T>) {
  static_assert(std::is_arithmetic_v<T> || std::is_enum_v<T>);
  if constexpr (std::is_same_v<T, double>)
    return w.number();
  else
    return static_cast<T>(static_cast<int>(w.number()));
}
template <class Kind>
Quantity<Kind> take(Words& w, As<Quantity<Kind>>) {
  return Quantity<Kind>::stored(w.number());
}
Temperature take(Words& w, As<Temperature>) { return Temperature::stored(w.number()); }

template <class T>
T take(Words& w) {
  return take(w, As<T>{});
}
template <class T>
std::optional<T> take(Words& w, As<std::optional<T>>) {
  if (w.next_is_none()) return std::nullopt;
  return take<T>(w);
}
// As many as are left.
template <class T>
std::vector<T> take(Words& w, As<std::vector<T>>) {
  std::vector<T> all;
  while (w.any()) all.push_back(take<T>(w));
  return all;
}

// A struct from its members, in order.
template <class S, class... Members>
S made_of(Words& w) {
  const std::tuple<Members...> parts{take<Members>(w)...};
  return std::apply([](const Members&... part) { return S{part...}; }, parts);
}

patch::TyreSize take(Words& w, As<patch::TyreSize>) {
  return made_of<patch::TyreSize, Length, double, Length>(w);
}
patch::LoadLaw take(Words& w, As<patch::LoadLaw>) {
  switch (take<int>(w)) {
    case 0:
      return patch::european_standard_load();
    case 1:
      return patch::european_extra_load();
    case 2:
      return patch::temporary_spare_law();
    case 3:
      return patch::p_metric_standard_load();
    case 4:
      return patch::p_metric_extra_load();
    case 5:
      return patch::european_at_marked_pressure(take<GaugePressure>(w));
    default:
      return patch::linear_at_marked_pressure(take<GaugePressure>(w));
  }
}
patch::RatedTyre take(Words& w, As<patch::RatedTyre>) {
  const Mass greatest = take<Mass>(w);
  const auto symbol = take<standard::SpeedSymbol>(w);
  const auto law = take<patch::LoadLaw>(w);
  const auto second = take<std::optional<patch::LoadLaw>>(w);
  return {greatest, symbol, law, second, take<standard::Vehicle>(w)};
}
patch::Duty take(Words& w, As<patch::Duty>) {
  return made_of<patch::Duty, Mass, Speed, double, Speed, bool>(w);
}
patch::CrossPly take(Words& w, As<patch::CrossPly>) {
  return made_of<patch::CrossPly, Length, Length, GaugePressure, GaugePressure>(w);
}
water::FlowPath take(Words& w, As<water::FlowPath>) {
  return made_of<water::FlowPath, Length, double>(w);
}
water::RainOnRoad take(Words& w, As<water::RainOnRoad>) {
  return made_of<water::RainOnRoad, RainIntensity, water::FlowPath, Length, water::Pavement>(w);
}
water::FilmConditions take(Words& w, As<water::FilmConditions>) {
  return made_of<water::FilmConditions, GaugePressure, Length, Length, Length, double>(w);
}
water::OnsetConditions take(Words& w, As<water::OnsetConditions>) {
  return made_of<water::OnsetConditions, GaugePressure, Length, Length, Length,
                 std::optional<double>, std::optional<Force>, bool>(w);
}
water::WetTyre take(Words& w, As<water::WetTyre>) {
  return made_of<water::WetTyre, GaugePressure, Length, double, std::optional<Length>, Length,
                 Length>(w);
}
water::Flow take(Words& w, As<water::Flow>) {
  return made_of<water::Flow, bool, std::optional<Speed>>(w);
}
grip::Road take(Words& w, As<grip::Road>) {
  return made_of<grip::Road, double, std::optional<Length>, double>(w);
}
grip::GripCase take(Words& w, As<grip::GripCase>) {
  grip::GripCase c;
  c.surface = standard::find_friction_surface(w.next());
  c.tyre = grip::find_tyre_grip(w.next());
  c.tread = take<Length>(w);
  c.film = take<Length>(w);
  return c;
}
grip::SpeedBand take(Words& w, As<grip::SpeedBand>) {
  return made_of<grip::SpeedBand, Speed, Speed, Speed>(w);
}
grip::SquareLaw take(Words& w, As<grip::SquareLaw>) {
  return made_of<grip::SquareLaw, double, double>(w);
}
// A case with all that may be told of it.
struct ToldCase {
  grip::GripCase all;
};
ToldCase take(Words& w, As<ToldCase>) {
  ToldCase told{take<grip::GripCase>(w)};
  told.all.road = take<grip::RoadGrip>(w);
  told.all.old_or_hard = take<bool>(w);
  told.all.onset = take<std::optional<grip::SpeedBand>>(w);
  return told;
}
air::Conditions take(Words& w, As<air::Conditions>) {
  return made_of<air::Conditions, Temperature, AbsolutePressure>(w);
}
air::GaugeReading take(Words& w, As<air::GaugeReading>) {
  return made_of<air::GaugeReading, GaugePressure, air::Conditions>(w);
}
air::Discharge take(Words& w, As<air::Discharge>) {
  return made_of<air::Discharge, double, double>(w);
}
air::Leak take(Words& w, As<air::Leak>) { return made_of<air::Leak, double, double>(w); }
air::PunctureRate take(Words& w, As<air::PunctureRate>) {
  return made_of<air::PunctureRate, Duration, Length>(w);
}
car::Wheel take(Words& w, As<car::Wheel>) {
  return made_of<car::Wheel, patch::TyreSize, bool, std::optional<Length>, Length>(w);
}
car::CarLoad take(Words& w, As<car::CarLoad>) {
  return made_of<car::CarLoad, Mass, double, bool, int, int, Mass, Mass, Mass, Mass>(w);
}
wear::Depth take(Words& w, As<wear::Depth>) { return made_of<wear::Depth, double, Length>(w); }
stage::Chances take(Words& w, As<stage::Chances>) {
  stage::Chances chances{};
  for (double& chance : chances) chance = w.number();
  return chances;
}

// ---- values ----

// Where a reading lies against the line through all of them.
struct Off {
  Length line;
  bool odd;
};

struct Fit {
  std::optional<wear::Rate> rate;
  std::optional<double> earliest, central, latest;
};

// A stage on tarmac and gravel for one of the core's kinds of tyre: seconds on the right tyre, then
// seconds lost and wear in this weather.
struct Run {
  double right, lost, wear, worn;
  double pace[6];  // low, high, safe; tarmac, then gravel
  Length life[2];
};

// A class, so that each kind of value can be made of any other.
struct Values {
  std::string text;

  void put(double value) {
    char digits[40];
    std::snprintf(digits, sizeof digits, "%.17g", value);
    if (!text.empty()) text += ' ';
    text += digits;
  }
  void put(bool value) { put(value ? 1.0 : 0.0); }
  template <class E>
  requires(std::is_enum_v<E> || std::is_same_v<E, int>) void put(E value) {
    put(static_cast<double>(value));
  }
  template <class Q>
  requires requires(Q q) { q.stored(); }
  void put(Q q) { put(q.stored()); }
  template <class T>
  void put(const std::optional<T>& value) {
    if (value)
      put(*value);
    else
      text += text.empty() ? "none" : " none";
  }

  template <class... Parts>
  void put_all(const Parts&... parts) {
    (put(parts), ...);
  }

  void put(const patch::LengthBand& b) { put_all(b.low, b.nominal, b.high); }
  void put(const patch::PressureBand& b) { put_all(b.low, b.high); }
  void put(const patch::AreaBand& b) { put_all(b.low, b.nominal, b.high); }
  void put(const standard::Allowance& a) {
    put_all(a.percent, a.at_most, a.at_least_more, a.of(Mass::stored(615.0)));
  }
  void put(const patch::ContactPatch& p) {
    put_all(p.stiffness, p.deflection, p.length, p.width, p.area, p.aspect_ratio,
            p.ground_pressure);
  }
  void put(const patch::CrossPlyPatch& p) {
    put_all(p.deflection_low, p.deflection_high, p.length_low, p.length_high, p.area_low,
            p.area_high);
  }
  void put(const patch::CamberShares& s) {
    put_all(s.stiffness, s.length, s.width, s.area_low, s.area, s.area_high);
  }
  void put(const tl::expected<patch::PressureDemand, patch::NoPressure>& d) {
    if (d)
      put_all(d->base, d->speed, d->camber, d->towing, d->total());
    else
      text += "none";
  }
  void put(const water::FlowPath& p) { put_all(p.length, p.slope); }
  void put(const water::RainFilm& f) { put_all(f.low, f.central, f.high); }
  void put(const water::SpeedBand& b) { put_all(b.low, b.central, b.high); }
  void put(const water::CrossingLimits& l) { put_all(l.stable_to, l.afloat_at); }
  void put(const grip::FrictionBand& b) { put_all(b.low, b.central, b.high); }
  void put(const grip::SpeedBand& b) { put_all(b.low, b.central, b.high); }
  void put(const grip::DistanceBand& b) { put_all(b.shortest, b.central, b.longest); }
  void put(const grip::Ratio& r) { put_all(r.low, r.central, r.high); }
  void put(const grip::RuleDistance& d) { put_all(d.thinking, d.braking, d.total()); }
  void put(const grip::TextureShare& s) { put_all(s.low, s.high); }
  void put(const air::Leak& l) { put_all(l.slowest, l.fastest); }
  void put(const air::TimeBand& t) { put_all(t.soonest, t.latest); }
  void put(const air::PressureBand& b) { put_all(b.low, b.high); }
  void put(const air::LossJudgement& j) {
    put_all(j.kind, j.lost);
    put(j.natural);
  }
  void put(const air::GetHome& g) { put_all(g.speed, g.distance); }
  void put(const car::FitmentChange& c) {
    put_all(c.circumference, c.diameter, c.ride_height, c.section_width, c.inward, c.outward,
            c.engine_speed());
  }
  void put(const car::AxleLoads& l) { put_all(l.front, l.rear, l.total()); }
  void put(const wear::Rate& r) { put_all(r.per_unit, r.low, r.high, r.zero, r.depth_there); }
  void put(const stage::Judgement& j) {
    put_all(j.expected, j.expected_regret, j.largest_regret, j.tail_mean, j.worst);
  }
  void put(const stage::Chances& chances) {
    for (double chance : chances) put(chance);
  }
  void put(const stage::Follows& follows) {
    for (const auto& row : follows) put(row);
  }
  template <class T>
  void put(const std::vector<T>& all) {
    for (const T& one : all) put(one);
  }

  void put(const Off& off) { put_all(off.line, off.odd); }
  void put(const Fit& fit) { put_all(fit.rate, fit.earliest, fit.central, fit.latest); }
  void put(const Run& run) {
    put_all(run.right, run.lost, run.wear, run.worn);
    for (double p : run.pace) put(p);
    for (Length l : run.life) put(l);
  }
};

// ---- from a function of the core to a line ----

template <class R, class... Args>
std::string called(R (*function)(Args...), Words& w) {
  std::tuple<std::decay_t<Args>...> args{take<std::decay_t<Args>>(w)...};
  Values out;
  out.put(std::apply(function, args));
  return out.text;
}

// A function of the core, or a lambda without captures.
template <auto function>
std::string ask(Words& w) {
  return called(+function, w);
}

struct Formula {
  std::string_view name;
  std::string (*ask)(Words& w);
};

// ---- quantity ----

// Reads "VALUE UNIT" as a person writes it.
std::string read_text(Words& w) {
  const auto dimension = take<Dimension>(w);
  const QuantityRequest request{dimension, "", -1e300, 1e300, "", "", ""};
  std::string text = w.next();
  while (w.any()) text += " " + w.next();
  const auto read = read_stored(text, request);
  Values out;
  out.put(read ? std::optional(*read) : std::nullopt);
  return out.text;
}

std::string write_number(Words& w) {
  const double value = w.number();
  return fixed(value, take<int>(w));
}

// ---- what is easier to ask of the core in one go ----

Length diameter(const patch::TyreSize& size) { return patch::overall_diameter(size); }
double punctures_in_time(const air::PunctureRate& rate, Duration time) {
  return air::expected_punctures(rate, time);
}
double punctures_over_distance(const air::PunctureRate& rate, Length distance) {
  return air::expected_punctures(rate, distance);
}
Volume cavity(const patch::TyreSize& size, double fill) { return air::cavity_volume(size, fill); }
double twice_capacity(const patch::LoadLaw& law, Mass greatest, GaugePressure p) {
  return patch::pressure_needed(law, greatest, patch::load_capacity(law, greatest, p)) / p;
}

std::optional<water::SpeedBand> onset_by_word(GaugePressure pressure, Length tread, double credit,
                                              std::optional<Length> width,
                                              standard::Wetness wetness, Length texture) {
  return water::aquaplaning_onset(
      {pressure, tread, credit, width, water::Water::by_word(wetness), texture});
}

std::optional<Speed> onset_model(int which, const water::OnsetConditions& conditions) {
  return water::onset_models().begin()[which].onset(conditions);
}
double onset_model_count() {
  return static_cast<double>(water::onset_models().end() - water::onset_models().begin());
}

grip::FrictionBand friction_at(const grip::GripCase& c, Speed v) { return grip::Grip(c).at(v); }
grip::FrictionBand friction_told(const ToldCase& c, Speed v) { return friction_at(c.all, v); }
grip::DistanceBand braking_told(const ToldCase& c, Speed from, Speed to, double grade) {
  return grip::braking_band(c.all, from, to, {grade, std::nullopt, 0.0});
}

stage::Judgement judged(int choices, int states, int choice, double level,
                        const std::vector<double>& numbers) {
  const auto n = static_cast<std::size_t>(states);
  stage::LossTable table{n, {}, {}};
  const auto split = numbers.begin() + states;
  if (numbers.size() != n * static_cast<std::size_t>(choices + 1)) return {};
  table.chance.assign(numbers.begin(), split);
  table.loss.assign(split, numbers.end());
  return stage::judge(table, static_cast<std::size_t>(choice), level);
}

Fit worn_down_to(Length depth, const std::vector<wear::Depth>& readings) {
  const auto rate = wear::rate_of(readings);
  if (!rate) return {};
  const auto until = wear::until(*rate, depth);
  return {rate, until.earliest, until.central, until.latest};
}

Off off_the_line(double at, Length depth, const std::vector<wear::Depth>& readings) {
  const auto rate = wear::rate_of(readings).value_or(wear::Rate{});
  return {wear::depth_at(rate, at), wear::is_odd(rate, {at, depth})};
}

double usable_life(Length new_tread, Length worn_out, Length least) {
  stage::SetKind kind = stage::set_kind(0);
  kind.new_tread = new_tread;
  kind.least_tread = worn_out;
  stage::Rules rules;
  rules.least_tread = least;
  return stage::usable_life(kind, rules);
}

patch::LengthBand length_band(Length length) {
  patch::ContactPatch patch{};
  patch.length = length;
  return patch::contact_length_band(patch);
}
patch::AreaBand area_band(Area area) {
  patch::ContactPatch patch{};
  patch.area = area;
  return patch::contact_area_band(patch);
}

Run stage_run(int kind, Length length, Speed average, double gravel, double abrasion, int weather,
              bool careful, Length tread) {
  const stage::SetKind k = stage::set_kind(static_cast<std::size_t>(kind));
  stage::Stage s;
  s.length = length;
  s.average = average;
  s.gravel = gravel;
  s.abrasion = abrasion;
  const auto w = static_cast<stage::Weather>(weather);
  const auto& tarmac = k.pace[0][stage::index(w)];
  const auto& loose = k.pace[1][stage::index(w)];
  return {stage::right_tyre_seconds(s),
          stage::seconds_lost(k, s, w, careful),
          stage::wear(k, s, w),
          stage::worn(k, tread),
          {tarmac.low, tarmac.high, tarmac.safe ? 1.0 : 0.0, loose.low, loose.high,
           loose.safe ? 1.0 : 0.0},
          {k.life[0][stage::wetness(w)], k.life[1][stage::wetness(w)]}};
}

#define UNIT(name)                                 \
  Formula {                                        \
#name, ask < [](double v) { return name(v); }> \
  }
#define IN_UNIT(Type, name)                      \
  Formula {                                      \
#name, ask < [](Type q) { return name(q); }> \
  }
#define SAME(room, name) \
  Formula { #name, ask < room::name> }

constexpr Formula formulas[] = {
    // quantity
    UNIT(metres),
    UNIT(millimetres),
    UNIT(inches),
    UNIT(kilometres),
    UNIT(miles),
    UNIT(feet),
    UNIT(thirty_seconds),
    UNIT(square_centimetres),
    UNIT(litres),
    UNIT(minutes),
    UNIT(days),
    UNIT(months),
    UNIT(miles_per_hour),
    UNIT(knots),
    UNIT(metres_per_second),
    UNIT(pounds),
    UNIT(newtons_per_millimetre),
    UNIT(kilograms_force_per_millimetre),
    UNIT(bars),
    UNIT(psi),
    UNIT(inches_per_hour),
    UNIT(celsius),
    UNIT(fahrenheit),
    IN_UNIT(Length, in_millimetres),
    IN_UNIT(Length, in_inches),
    IN_UNIT(Length, in_kilometres),
    IN_UNIT(Length, in_feet),
    IN_UNIT(Length, in_thirty_seconds),
    IN_UNIT(Area, in_square_centimetres),
    IN_UNIT(Area, in_square_inches),
    IN_UNIT(Volume, in_litres),
    IN_UNIT(Speed, in_miles_per_hour),
    IN_UNIT(Speed, in_metres_per_second),
    IN_UNIT(Mass, in_pounds),
    IN_UNIT(Mass, weight),
    IN_UNIT(Stiffness, in_newtons_per_millimetre),
    IN_UNIT(GaugePressure, in_bars),
    IN_UNIT(GaugePressure, in_psi),
    IN_UNIT(RainIntensity, in_inches_per_hour),
    IN_UNIT(Temperature, in_celsius),
    {"absolute", ask<[](GaugePressure p, AbsolutePressure a) { return absolute(p, a); }>},
    {"gauge", ask<[](AbsolutePressure p, AbsolutePressure a) { return gauge(p, a); }>},
    {"travelled", ask<[](Speed v, Duration t) { return travelled(v, t); }>},
    {"rectangle", ask<[](Length a, Length b) { return rectangle(a, b); }>},
    {"floor_to_five", ask<[](Speed v, UnitSystem units) { return floor_to_five(v, units); }>},
    {"read", read_text},
    {"fixed", write_number},

    // standard
    SAME(standard, load_of_index),
    SAME(standard, load_percent),
    SAME(standard, pressure_for_speed),
    SAME(standard, camber_load_factor),
    SAME(standard, camber_pressure_factor),
    SAME(standard, low_speed_percent),
    SAME(standard, commercial_percent),
    SAME(standard, motorcycle_percent),
    SAME(standard, percent_at_speed),
    SAME(standard, nearest_load_index),
    SAME(standard, us_trailer_tyre),
    {"speedometer_allowed",
     ask<[](Speed shown, Speed truth) { return standard::speedometer_allowed(shown, truth); }>},
    {"true_speed_after",
     ask<[](Speed before, double ratio) { return standard::true_speed_after(before, ratio); }>},
    {"most_shown", ask<[](Speed v) { return standard::most_shown(v); }>},

    // patch
    SAME(patch, load_capacity),
    SAME(patch, pressure_needed),
    SAME(patch, p_metric_capacity),
    {"there_and_back", ask<twice_capacity>},
    SAME(patch, section_height),
    {"overall_diameter", ask<diameter>},
    SAME(patch, overall_diameter_band),
    SAME(patch, theoretical_rim_width),
    SAME(patch, section_width_on_rim),
    SAME(patch, rolling_circumference),
    SAME(patch, vertical_stiffness),
    SAME(patch, deflection),
    SAME(patch, static_loaded_radius),
    SAME(patch, contact_length),
    SAME(patch, contact_area),
    SAME(patch, contact_width),
    SAME(patch, contact_patch),
    SAME(patch, fitted_area_255_40_17),
    {"contact_length_band", ask<length_band>},
    {"contact_area_band", ask<area_band>},
    SAME(patch, camber_shares),
    SAME(patch, cross_ply_load),
    SAME(patch, cross_ply_deflection),
    SAME(patch, cross_ply_length),
    SAME(patch, cross_ply_area),
    SAME(patch, cross_ply_patch),
    SAME(patch, beaded_edge_1909),
    SAME(patch, beaded_edge_1921),
    SAME(patch, beaded_edge_pressure),
    {"beaded_edge_least",
     ask<[](Length s, Mass m) { return patch::beaded_edge_least(s, m).pressure; }>},
    SAME(patch, beaded_edge_load_today),
    SAME(patch, beaded_edge_motorcycle),
    SAME(patch, straight_side_1921),
    {"beaded_edge_rim", ask<[](Length d, Length s) { return patch::beaded_edge_rim(d, s); }>},
    SAME(patch, greatest_load_at),
    SAME(patch, pressure_demand),

    // water
    SAME(water, flow_path),
    SAME(water, film_depth),
    SAME(water, rain_film),
    SAME(water, rut_water),
    SAME(water, pressure_only_onset),
    SAME(water, spin_up_onset),
    SAME(water, footprint_onset),
    SAME(water, truck_onset),
    SAME(water, film_onset),
    SAME(water, film_tyre_factor),
    SAME(water, film_water_factor),
    SAME(water, design_onset),
    SAME(water, smooth_tyre_onset),
    {"onset_model", ask<onset_model>},
    {"onset_model_count", ask<onset_model_count>},
    SAME(water, clearing),
    SAME(water, aquaplaning_onset),
    {"onset_by_word", ask<onset_by_word>},
    SAME(standard, ruler_error_at),
    SAME(water, crossing_limits),
    SAME(water, judge_crossing),
    SAME(treadwater, log2_of),
    SAME(treadwater, exp2_of),
    SAME(treadwater, power),

    // grip
    SAME(grip, skid_number),
    SAME(grip, skid_number_at_zero_speed),
    SAME(grip, skid_gradient),
    SAME(grip, skid_number_from_pendulum),
    SAME(grip, sand_patch_texture),
    SAME(grip, index_friction),
    SAME(grip, speed_constant_from_profile),
    SAME(grip, speed_constant_from_sand_patch),
    SAME(grip, estimated_sand_patch),
    SAME(grip, estimated_profile),
    SAME(grip, texture_share),
    SAME(grip, deceleration),
    SAME(grip, braking_distance),
    SAME(grip, stopping_distance),
    SAME(grip, speed_left),
    SAME(grip, speed_to_stop_within),
    SAME(grip, highway_code),
    SAME(grip, driving_school),
    SAME(grip, sight_distance_us),
    SAME(grip, sight_distance_metric),
    SAME(grip, sight_distance_on_grade),
    SAME(grip, following_time),
    SAME(grip, following_gap),
    SAME(grip, radius_from_chord),
    SAME(grip, corner_speed),
    SAME(grip, corner_speed_simple),
    SAME(grip, design_radius_us),
    SAME(grip, design_radius_metric),
    SAME(grip, comfortable_side_friction),
    SAME(grip, comfortable_corner_speed),
    SAME(grip, side_demand),
    SAME(grip, braking_left),
    SAME(grip, half_way),
    SAME(grip, handbook_friction),
    SAME(grip, share_kept),
    {"friction_at", ask<friction_at>},
    {"friction_told", ask<friction_told>},
    {"braking_told", ask<braking_told>},
    SAME(grip, wet_grip_at_rest),
    SAME(grip, dry_grip),
    SAME(grip, wet_tread_share),
    SAME(grip, grip_gone_at),
    SAME(grip, braked_by),
    SAME(grip, braking_band),
    SAME(grip, stopping_band),
    SAME(grip, seen_distance_speed),
    SAME(grip, speed_left_band),
    SAME(grip, corner_speed_band),
    SAME(grip, worn_stop_ratio),

    // air
    SAME(air, carried_over),
    SAME(air, outside_at),
    {"cavity_volume", ask<cavity>},
    SAME(air, air_density),
    SAME(air, orifice_flow),
    SAME(air, choking_pressure),
    SAME(air, leak_through),
    SAME(air, leak_between),
    SAME(air, hole_of),
    SAME(air, time_between),
    SAME(air, pressure_after),
    SAME(air, natural_loss),
    SAME(air, after_months),
    SAME(air, judge_loss),
    {"punctures_in_time", ask<punctures_in_time>},
    {"punctures_over_distance", ask<punctures_over_distance>},
    SAME(air, chance_of_more_than),
    SAME(air, repairable_width),
    {"warning_pressure", ask<[](int rule, GaugePressure set) {
       return air::warning_pressure(air::warning_rules().begin()[rule], set);
     }>},
    SAME(air, do_not_drive_below),
    SAME(air, get_home),

    // wear
    {"worn_down_to", ask<worn_down_to>},
    {"off_the_line", ask<off_the_line>},

    // car
    SAME(car, fitment_change),
    SAME(car, turns_per_kilometre),
    SAME(car, pressure_for_equal_load),
    SAME(car, axle_loads),
    SAME(car, wheel_hop_hertz),
    SAME(car, hop_speed),
    SAME(car, movement_for),
    SAME(car, ride_rate),
    SAME(car, equivalent_mass),
    SAME(car, equivalent_mass_factor),
    SAME(car, tyre_equivalent_mass),
    SAME(car, wheel_in),
    SAME(car, speed_with_tolerance),
    SAME(car, symbol_fit),

    // stage
    {"judge", ask<judged>},
    SAME(stage, weather_follows),
    SAME(stage, wet_chance),
    SAME(stage, with_wet_chance),
    {"stage_run", ask<stage_run>},
    {"usable_life", ask<usable_life>},
};

std::string answer(std::string_view line) {
  Words words(line);
  const std::string name = words.next();
  for (const Formula& formula : formulas)
    if (formula.name == name) {
      const std::string values = formula.ask(words);
      return words.wrong() ? "? arguments" : values;
    }
  if (name != "names") return "? name";
  std::string all;
  for (const Formula& formula : formulas) all += std::string(formula.name) + " ";
  return all;
}

}  // namespace

std::string evaluate(std::string_view lines) {
  std::string out;
  while (!lines.empty()) {
    const std::size_t end = std::min(lines.find('\n'), lines.size());
    out += answer(lines.substr(0, end)) + '\n';
    lines.remove_prefix(std::min(end + 1, lines.size()));
  }
  return out;
}

}  // namespace treadwater::oracle
