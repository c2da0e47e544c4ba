// A soft tyre: how fast it leaks, what makes it unfit even if it holds air, and the way home; on a
// closed stage, whether to change the wheel there (puncture_stage.cpp). Whether the hole may be
// repaired is in repair.hpp.
#pragma once

#include <optional>

#include "core/air/get_home.hpp"
#include "core/air/leak.hpp"
#include "core/air/repair.hpp"
#include "core/air/stage_stop.hpp"
#include "core/judge/finding.hpp"
#include "core/sidewall/sidewall.hpp"
#include "core/standard/date.hpp"
#include "core/standard/tyre_age.hpp"

namespace treadwater::judge {

// If no set pressure is given. Common practice, no source.
inline constexpr GaugePressure usual_pressure = kilopascals(230.0);
// Of the air inside, if not asked for: a mild day.
inline constexpr Temperature mild = celsius(15.0);

// What there is to drive on.
enum class Help {
  nothing,          // but this tyre
  self_supporting,  // this tyre, made to run flat
  lubricated,       // the same, of an early kind
  temporary_spare,
  full_spare,
  sealant_kit
};

struct SoftTyre {
  std::optional<sidewall::Reading> size{};
  GaugePressure set = usual_pressure;    // cold, as it should be
  std::optional<GaugePressure> first{};  // as read
  std::optional<GaugePressure> second{};
  bool first_hot = false;  // read warm or hot from driving
  bool second_hot = false;
  std::optional<Duration> apart{};
  std::optional<Length> tread{};
  std::optional<Mass> load{};  // on the wheel
  std::optional<standard::TyreAge> age{};
  // The hole; its place is nothing if it was not found.
  std::optional<Length> hole{};  // its width
  std::optional<air::Place> place{};
  std::optional<Length> from_centre{};
  std::optional<bool> between_outer_grooves{};
  int earlier_repairs = 0;
  bool driven_flat = false;
  bool damaged = false;  // visible cord, a bulge, cracks
  bool sealed = false;   // sealant was put in
  // Nothing if not known.
  std::optional<Help> help{};
  std::optional<Length> way{};  // to go; on a stage to its finish
  std::optional<int> spares{};  // on board
  // On a closed stage.
  bool on_stage = false;
  bool on_gravel = false;
  std::optional<Speed> approach{};  // of the cars behind

  // The latest reading as it may be at least when cold.
  std::optional<GaugePressure> latest() const;
  bool latest_hot() const { return second ? second_hot : first_hot; }
  bool read_twice() const { return first && second && apart; }
  bool outside_tread() const { return place && *place != air::Place::tread; }
  // What it is driven on with: what is on board; else what is in it, or what it is made for.
  std::optional<Help> driven_by() const;
  // A wheel takes its place.
  bool comes_off() const;
  // Made to, and judged only by the way home.
  bool runs_flat() const;
  GaugePressure stop_below() const;
};

struct LeakFound {
  air::Leak leak;
  GaugePressure now;
  Sources sources;
};

// What still carries the car on this tyre.
enum class CarriedBy { its_air, itself, nothing };

// What must be done before the car drives on: with this tyre as it is, it must not.
enum class First { nothing, change_the_wheel, seal_it };

struct SoftTyreJudged {
  Findings findings;
  CarriedBy carried = CarriedBy::its_air;
  First first = First::nothing;
  std::optional<LeakFound> leak;
};

SoftTyreJudged judge_soft_tyre(const SoftTyre& tyre);

struct WayHome {
  air::GetHome by;
  Sources sources;
};

// Nothing if it is driven on as before, or not at all.
std::optional<WayHome> judge_way_home(const SoftTyre& tyre, SoftTyreJudged& judged);

// What applies at any roadside.
void judge_roadside(Findings& findings);

struct StageStop {
  Length triangle;  // before the car
  std::optional<air::TimeLost> change{};
  std::optional<air::TimeLost> drive_out{};
  bool may_drive_out = false;        // by the clock, or as far as is known
  std::optional<int> spares_left{};  // after the change
};

// On a stage, instead of a roadside.
StageStop judge_stage_stop(const SoftTyre& tyre, SoftTyreJudged& judged);

}  // namespace treadwater::judge
