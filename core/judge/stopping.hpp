// Stopping: does the car stop within what its driver can see, before an obstacle, on this gradient,
// in this water; does it hold the bend; and up to what speed on the low estimate?
#pragma once

#include <optional>

#include "core/grip/limits.hpp"
#include "core/judge/hold_to.hpp"
#include "core/judge/water.hpp"
#include "core/standard/tyre_kind.hpp"

namespace treadwater::judge {

// Assumed if the tread was not measured.
inline constexpr Length usual_tread = millimetres(3.0);

// By its radius, or by a chord paced out across it and the arc's greatest distance from the chord.
struct BendGiven {
  std::optional<Length> radius{};
  std::optional<Length> chord{};
  std::optional<Length> sagitta{};
  std::optional<double> bank{};  // a ratio, see grip/cornering.hpp

  bool is_paced() const { return !radius && chord && sagitta; }
  std::optional<Length> radius_found() const;
};

struct StopCase {
  Speed speed{};
  grip::GripCase grip{};  // its film and onsets are filled in by judge_stop()
  const standard::TyreKind* kind = nullptr;
  bool tread_given = false;
  RoadWater water{};
  std::optional<GaugePressure> pressure{};
  std::optional<Length> width{};  // of the tyre's section
  std::optional<Duration> reaction_given{};
  double grade = 0.0;  // a ratio, uphill positive
  BendGiven bend{};
  std::optional<Length> seen{};
  std::optional<Length> obstacle{};

  Duration reaction() const { return reaction_given.value_or(grip::cautious_reaction); }
  grip::Road straight() const { return {grade, {}, 0.0}; }
  grip::Road road() const { return {grade, bend.radius_found(), bend.bank.value_or(0.0)}; }
  Length room_before_obstacle() const;  // to brake in; if there is one
  bool is_wet() const { return water.is_wet(); }
};

struct StopJudged {
  Findings findings{};
  std::optional<HoldTo> hold{};
  std::optional<NoLimit> no_limit{};
  StopCase stop{};               // with its film and onsets
  std::optional<Onset> onset{};  // of aquaplaning

  // None of this if the water is too deep.
  grip::Friction friction{};
  grip::DistanceBand braking{};
  grip::DistanceBand stopping{};                      // with the reaction
  std::optional<grip::SpeedBand> left_at_obstacle{};  // of the speed
};

StopJudged judge_stop(StopCase stop, UnitSystem units);

// The ends of an onset as the laws of grip take them.
grip::SpeedBand for_grip(const water::SpeedBand& onset);

}  // namespace treadwater::judge
