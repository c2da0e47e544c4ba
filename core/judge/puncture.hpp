// A soft tyre: how fast it leaks, what makes it unfit even if it holds air, and the way home.
// Whether the hole may be repaired is in repair.hpp.
#pragma once

#include <optional>

#include "core/air/get_home.hpp"
#include "core/air/leak.hpp"
#include "core/air/repair.hpp"
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
  GaugePressure set = usual_pressure;  // cold, as it should be
  std::optional<GaugePressure> first{};
  std::optional<GaugePressure> second{};
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
  std::optional<Length> way{};  // to go

  std::optional<GaugePressure> latest() const { return second ? second : first; }
  bool read_twice() const { return first && second && apart; }
  bool outside_tread() const { return place && *place != air::Place::tread; }
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

struct SoftTyreJudged {
  Findings findings;
  CarriedBy carried = CarriedBy::its_air;
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

}  // namespace treadwater::judge
