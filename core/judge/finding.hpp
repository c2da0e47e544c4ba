// Findings: what was found out about a tyre, a car or a road, without the sentence that tells it. A
// danger is judged here, once, for every sheet; the words are in sheets/sayings.hpp.
//
// The room `judge`:
//   finding   the findings, their levels and what cures them (findings.inc is the table), limits
//   tyre      what its sidewall says and leaves open, its speed symbol, what it is for
//   pressure  the load at this pressure and speed
//   pressure_setting  what to set; readings; a hot pressure that is wanted; another place
//   water     floating                               crossing  fords, floods, a field of tyres
//   stopping  what the driver can see, an obstacle, a bend, a grade
//   tread     the law's depth, winter, advice        age  of the tyre
//   car       what holds between the tyres of one car
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

// What makes an unfit tyre drivable again. What driving slower cures, and what is driven to the
// nearest pump to be put right, stops nobody; the rest is a limit of 0 km/h, also what wants air
// where it stands.
enum class Cure { nothing, air, slower, pump };

// A row of the table of findings. Each is an object of its own, so that a module holds the
// sentences of what it can find and no others.
struct FindingRow {
  std::string_view id;  // as the JSON names it; two findings may share one
  Level level;
  Cure cure;
  Phrase reason;    // a clause for the verdict; empty where there is none
  Phrase sentence;  // empty where the first value is one
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
bool air_cures(Finding finding);   // where it stands or at a pump
bool has_reason(Finding finding);  // for a verdict to give
// One danger at one level, in whatever situation?
bool same_danger(Finding one, Finding other);

using Sources = std::vector<const Source*>;

// Some values or sources, lent for the length of a call: a list written out, or one already kept.
// They are copied once, where they are kept, which is much less code than to hand vectors around.
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

// Adds a source that is not there yet; two sources never share an id.
void add_once(Sources& sources, const Source& source);
void add_once(Sources& sources, const Sources& more);

// What fills a gap of a finding's sentence: a number with the way it is to be written, or a name.
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
    rain,
    duration,
    seconds,  // a number of them, as given
    duration_at_most,
    way_at_least,  // on the road, in km or miles
    way_at_most,
    odometer,
    worn,      // tread worn off
    month,     // that a day is in
    readings,  // how many earlier ones
    seconds_lost,
    kelvins,
    chance,
    hold_to,  // a speed, and walking pace for 0
    number,   // with `decimals`
    text,     // a name, as it stands
    kind,     // a name of ours, with a capital where a sentence begins with it
    quoted,   // what somebody typed
  };

  Value(Speed v) : as_(As::speed), number_(v.stored()) {}
  Value(Mass m) : as_(As::mass), number_(m.stored()) {}
  Value(GaugePressure p) : as_(As::pressure), number_(p.stored()) {}
  Value(Temperature t) : as_(As::temperature), number_(t.stored()) {}
  Value(Duration d) : as_(As::duration), number_(d.stored()) {}
  Value(TemperatureDifference d) : as_(As::kelvins), number_(d.stored()) {}
  Value(RainIntensity r) : as_(As::rain), number_(r.stored()) {}
  // These and their like are not inlined: they stand at hundreds of places.
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
  // Of a day since 1 January 1970.
  static Value month(long day) { return {As::month, static_cast<double>(day)}; }
  static Value earlier_readings(std::size_t n) { return {As::readings, static_cast<double>(n)}; }
  static Value at_most(GaugePressure p) { return {As::pressure_at_most, p.stored()}; }
  static Value depth(Length l) { return {As::depth, l.stored()}; }
  static Value water(Length l) { return {As::water, l.stored()}; }
  static Value size(Length l, int decimals = 0) { return {As::size, l.stored(), decimals}; }
  static Value rim(Length width) { return {As::rim, width.stored()}; }
  static Value distance(Length l) { return {As::distance, l.stored()}; }
  static Value estimated_distance(Length l) { return {As::estimated_distance, l.stored()}; }
  static Value seconds(Duration t) { return {As::seconds, t.stored()}; }
  static Value seconds_lost(Duration d) { return {As::seconds_lost, d.stored()}; }
  static Value chance(double share) { return {As::chance, share}; }
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
  Value(As as, double number, int decimals = 0)
      : as_(as), decimals_(static_cast<std::int8_t>(decimals)), number_(number) {}

  As as_;
  std::int8_t decimals_ = 0;
  double number_ = 0.0;
  std::string text_;
};

using Values = std::vector<Value>;
using SomeValues = Some<Value>;

struct Limit;

// Whose a finding is, where it is not of all that was judged: wheels of a car, tyres of a list.
struct Whose {
  Text names{};       // in front of its sentence
  Text within{};      // the same as they stand within one: in brackets behind its reason
  bool alike = true;  // word for word the same of each; else its reason stands for its sentence
};

// The first values fill the reason as well as the sentence, unless it has values of its own. One
// that is about a limit takes the limit's label and its speeds for the gaps after those.
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
  std::optional<Finding> remark{};  // whose sentence is said after its own
  Values of_reason{};
  Whose of{};
  // Where a danger is less than its level says: why, stands where this is set.
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
  // How the speeds are told: one speed, a band, a band that is an estimate, or none to go by.
  enum class Shown : std::uint8_t { exact, band, estimate, do_not_enter, beyond };

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
  double share_kept = 1.0;  // of the low value, for the hold-to speed
  Shown shown = Shown::exact;
  Values label;  // the gaps of its label
  Values why;    // the gaps of its reason
  Sources sources;
  // What stops it, where the words are a finding's: LimitName::unfit, soft_tyre.
  std::optional<Found> found{};
  // Whose it is, in front of its label: a wheel, a tyre of a list.
  Text of{};

  Speed kept() const { return low * share_kept; }
};
// A limit without a band.
Limit fixed_limit(LimitName what, Speed speed, SomeValues label, SomeValues why,
                  SomeSources sources);
std::string_view id_of(const Limit& limit);
// Do they limit by the same thing? Of alike limits the lowest is enough.
bool alike(const Limit& one, const Limit& other);

// ---- all that was found ----

// Findings stand most serious first, limits lowest first; equals in the order in which they came.
struct Findings {
  std::vector<Found> found;
  std::vector<Limit> limits;

  void add(Finding what, SomeValues values = {}, SomeSources sources = {});
  void add(Found one);
  void add(Limit limit);
  bool has(Finding what) const;
};

// What makes it unfit at any speed becomes a limit, where none of the limits says so already. Does
// it stand still?
bool stop_where_no_speed_helps(Findings& findings);

}  // namespace treadwater::judge
