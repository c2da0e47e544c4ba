// Findings: what was found about a tyre, a car or a road. Each danger is judged in this room, once,
// for every sheet; findings.inc has its words, and sheets/sayings.hpp says them.
//
// The room `judge`:
//   finding   the findings, their levels and what cures them (findings.inc is the table), limits
//   tyre      what its sidewall says and leaves out, its speed symbol, its use
//   pressure  the load at this pressure and speed
//   pressure_setting  what to set; readings; a target hot pressure; another place
//   water     aquaplaning                            crossing  fords, floods, a field of tyres
//   stopping  what the driver can see, an obstacle, a bend, a grade
//   tread     the law's depth, winter, advice        age  of the tyre
//   car       the tyres of one car together          car_axles  its sides, front and rear
//   car_load  what each of its wheels carries
//   size_change  another size on it
//   puncture  a soft tyre: its leak, the way home    repair  its hole
//   wear      the log of one tyre, and of two that stand side by side
//   stages    sets on the stages ahead
//   hold_to   from limits to a speed                 verdict  from findings to a level and reasons
#pragma once

#include <cstdint>
#include <initializer_list>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/quantity/quantity.hpp"
#include "core/standard/source.hpp"
#include "core/words/say.hpp"

namespace treadwater::judge {

enum class Level { note, care, unfit };

// What makes an unfit tyre drivable again. Faults cured by driving slower, or by a drive to the
// nearest pump, do not stop the car; the rest are limits of 0 km/h, including a tyre that needs air
// before it moves.
enum class Cure { nothing, air, slower, pump };

// A row of the table of findings. Each is an object of its own, so that a module contains only the
// sentences it can say.
struct FindingRow {
  std::string_view id;  // its id in the JSON; two findings may share one
  Level level;
  Cure cure;
  Phrase reason;    // a clause for the verdict; empty if there is none
  Phrase sentence;  // empty if the first value is the sentence
};

class Finding {
 public:
  constexpr explicit Finding(const FindingRow& row) : row_(&row) {}
  const FindingRow& row() const { return *row_; }
  bool operator==(const Finding&) const = default;

 private:
  const FindingRow* row_;
};

namespace finding {
#define TREADWATER_FINDING(name, id, level, cure, reason, sentence)                 \
  namespace row {                                                                   \
  inline constexpr FindingRow name{id, Level::level, Cure::cure, reason, sentence}; \
  }                                                                                 \
  inline constexpr Finding name(row::name);
#include "core/judge/findings.inc"
#undef TREADWATER_FINDING
}  // namespace finding

std::string_view id_of(Finding finding);
Level level_of(Finding finding);
Cure cure_of(Finding finding);
bool air_cures(Finding finding);   // on the spot or at a pump
bool has_reason(Finding finding);  // a reason for the verdict
// The same danger at the same level, in any situation?
bool same_danger(Finding one, Finding other);

using Sources = std::vector<const Source*>;

// Some values or sources, lent for the length of a call: a list written out, or a stored one. They
// are copied once, where they are stored, which is much less code than passing vectors.
template <class T>
class Some {
 public:
  Some() = default;
  Some(std::initializer_list<T> list) : count_(list.size()) { first_ = list.begin(); }
  Some(const std::vector<T>& kept) : first_(kept.data()), count_(kept.size()) {}
  std::vector<T> kept() const { return std::vector<T>(first_, first_ + count_); }

 private:
  const T* first_ = nullptr;
  std::size_t count_ = 0;
};
using SomeSources = Some<const Source*>;

// Adds a source if it is not there yet; two sources never share an id.
void add_once(Sources& sources, const Source& source);
void add_once(Sources& sources, const Sources& more);

// Fills a gap in a finding's sentence: a number with how to write it, or a name.
class Value {
 public:
  enum class As : std::uint8_t {
    speed,
    mass,
    mass_at_least,
    mass_at_most,
    pressure,
    pressure_at_least,
    pressure_at_most,
    temperature,
    depth,  // of tread
    water,
    size,
    rim,
    distance,
    estimated_distance,
    longest_distance,
    rain,
    duration,
    seconds,  // a number of them, as given
    duration_at_most,
    way_at_least,  // on the road, in km or miles
    way_at_most,
    odometer,
    worn,      // tread worn off
    month,     // of a day
    readings,  // how many earlier ones
    seconds_lost,
    kelvins,
    chance,
    speed_rounded_down,  // to a multiple of five, as a maximum speed is
    hold_to,             // a speed, and walking pace for 0
    number,              // with `decimals`
    text,                // a name, as it stands
    kind,                // our own name, with a capital at the start of a sentence
    quoted,              // what somebody typed
  };

  Value(Speed v) : Value(As::speed, v.stored()) {}
  Value(Mass m) : Value(As::mass, m.stored()) {}
  Value(GaugePressure p) : Value(As::pressure, p.stored()) {}
  Value(Temperature t) : Value(As::temperature, t.stored()) {}
  Value(Duration d) : Value(As::duration, d.stored()) {}
  Value(TemperatureDifference d) : Value(As::kelvins, d.stored()) {}
  Value(RainIntensity r) : Value(As::rain, r.stored()) {}
  // These are not inlined: they are called from hundreds of places.
  Value(const Value&);
  Value(Value&&) noexcept;
  Value& operator=(const Value&);
  Value& operator=(Value&&) noexcept;
  ~Value();
  Value(Phrase name);
  Value(const Text& text);
  Value(std::string text);
  Value(const Typed& name);

  static Value at_least(Mass m) { return {As::mass_at_least, m.stored()}; }
  static Value at_most(Mass m) { return {As::mass_at_most, m.stored()}; }
  static Value at_least(GaugePressure p) { return {As::pressure_at_least, p.stored()}; }
  static Value at_most(Duration d) { return {As::duration_at_most, d.stored()}; }
  static Value way_at_least(Length l) { return {As::way_at_least, l.stored()}; }
  static Value way_at_most(Length l) { return {As::way_at_most, l.stored()}; }
  static Value odometer(Length l) { return {As::odometer, l.stored()}; }
  static Value worn(Length l) { return {As::worn, l.stored()}; }
  // A day, counted from 1 January 1970.
  static Value month(long day) { return {As::month, static_cast<double>(day)}; }
  static Value earlier_readings(std::size_t n) { return {As::readings, static_cast<double>(n)}; }
  static Value at_most(GaugePressure p) { return {As::pressure_at_most, p.stored()}; }
  static Value depth(Length l) { return {As::depth, l.stored()}; }
  static Value water(Length l) { return {As::water, l.stored()}; }
  static Value size(Length l, int decimals = 0) { return {As::size, l.stored(), decimals}; }
  static Value rim(Length width) { return {As::rim, width.stored()}; }
  static Value distance(Length l) { return {As::distance, l.stored()}; }
  static Value longest_distance(Length l) { return {As::longest_distance, l.stored()}; }
  static Value estimated_distance(Length l) { return {As::estimated_distance, l.stored()}; }
  static Value seconds(Duration t) { return {As::seconds, t.stored()}; }
  static Value seconds_lost(Duration d) { return {As::seconds_lost, d.stored()}; }
  static Value chance(double share) { return {As::chance, share}; }
  static Value rounded_down(Speed v) { return {As::speed_rounded_down, v.stored()}; }
  static Value hold_to(Speed v) { return {As::hold_to, v.stored()}; }
  static Value number(double n, int decimals = 0) { return {As::number, n, decimals}; }
  static Value kind(const Text& name);
  static Value quoted(std::string_view typed);
  static Value either(const std::vector<std::string>& names);  // "a, or b"

  As as() const { return as_; }
  double stored() const { return number_; }
  int decimals() const { return decimals_; }
  const std::string& text() const { return text_; }
  bool operator==(const Value&) const = default;

 private:
  Value(As as, double number, int decimals = 0);

  As as_;
  std::int8_t decimals_ = 0;
  double number_ = 0.0;
  std::string text_;
};

using Values = std::vector<Value>;
using SomeValues = Some<Value>;

struct Limit;

// Whose finding it is, if not everyone's: wheels of a car, tyres in a list.
struct Whose {
  Text names{};       // in front of its sentence
  Text within{};      // the same within a sentence: in brackets after its reason
  bool alike = true;  // word for word the same for each; otherwise the reason replaces the sentence
};

// The first values fill the reason as well as the sentence, unless the reason has its own. A
// finding about a limit fills the remaining gaps with the limit's label and speeds.
struct Found {
  Found(Finding which, SomeValues gaps = {}, SomeSources from = {});
  Found(const Found&);
  Found(Found&&) noexcept;
  Found& operator=(const Found&);
  Found& operator=(Found&&) noexcept;
  ~Found();

  Finding what;
  Values values{};
  Sources sources{};
  std::vector<Limit> about;         // one, or none
  std::optional<Finding> remark{};  // whose sentence follows its own
  Values of_reason{};
  Whose of{};
  // For a danger that is less than its level says; the reason is given where this is set.
  std::optional<Level> lowered{};

  Level level() const { return lowered.value_or(level_of(what)); }
};

// ---- limits ----

enum class LimitName : std::uint8_t {
#define TREADWATER_LIMIT(name, id, label, why) name,
#include "core/judge/limits.inc"
#undef TREADWATER_LIMIT
};
std::string_view id_of(LimitName name);

struct Limit {
  // How the speeds are given: one speed, a band, the estimated band of an onset, or none.
  enum class Shown : std::uint8_t { exact, band, onset, beyond };

  Limit();
  Limit(const Limit&);
  Limit(Limit&&) noexcept;
  Limit& operator=(const Limit&);
  Limit& operator=(Limit&&) noexcept;
  ~Limit();

  LimitName what{};
  Speed central;
  Speed low;
  Speed high;
  double share_kept = 1.0;  // of the low value, for the maximum speed
  Shown shown = Shown::exact;
  bool beside = false;  // told beside the maximum speed, which it does not set
  Values label;         // the gaps of its label
  Values why;           // the gaps of its reason
  Sources sources;
  // What stops it, if the words are a finding's: LimitName::unfit, soft_tyre.
  std::optional<Found> found{};
  // Whose it is, in front of its label: a wheel, a tyre in a list.
  Text of{};

  Speed kept() const { return low * share_kept; }
};
// A limit without a band.
Limit fixed_limit(LimitName what, Speed speed, SomeValues label, SomeValues why,
                  SomeSources sources);
std::string_view id_of(const Limit& limit);
// Are they the same kind of limit? Of those only the lowest matters.
bool alike(const Limit& one, const Limit& other);

// ---- all that was found ----

// Findings are most serious first, limits lowest first and those told beside the maximum speed
// last; equals stay in the order they were added.
struct Findings {
  std::vector<Found> found;
  std::vector<Limit> limits;
  // Is something not known that every speed rests on, such as the load this tyre may carry?
  bool no_speed = false;

  void add(Finding what, SomeValues values = {}, SomeSources sources = {});
  void add(Found one);
  void add(Limit limit);
  bool has(Finding what) const;
  const Limit* lowest() const;  // that sets the maximum speed; null if none does
  const Limit* beside() const;  // told beside it; null if there is none
};

// What makes it unfit at any speed becomes a limit, unless one of the limits already says so. True
// if it must not move.
bool stop_where_no_speed_helps(Findings& findings);

}  // namespace treadwater::judge
