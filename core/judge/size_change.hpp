// Another size of tyre or wheel on the same car: does it fit, is it the right kind, is its load and
// speed rating enough, and what pressure does it need?
#pragma once

#include <optional>

#include "core/car/fitment.hpp"
#include "core/judge/finding.hpp"
#include "core/patch/rating.hpp"
#include "core/standard/date.hpp"

namespace treadwater::judge {

// A tyre and the wheel under it.
struct Fitted {
  std::optional<sidewall::Reading> tyre{};
  std::optional<Length> rim{};
  std::optional<Length> offset{};

  // What the sidewall says of it.
  std::optional<patch::TyreSize> size() const;
  std::optional<patch::GreatestLoad> greatest(std::optional<Mass> load = {}) const;
  std::optional<standard::SpeedSymbol> symbol() const;
  bool cross_ply() const;  // or not marked as a radial
};

struct SizeChangeCase {
  Fitted now{};
  Fitted then{};
  std::optional<Speed> top_speed{};  // of the car
  std::optional<Mass> asked{};       // by the car's papers
  std::optional<GaugePressure> pressure{};
  std::optional<Mass> load{};
  Speed on_dial = kilometres_per_hour(100.0);  // to judge the speedometer at
  standard::Date today{};

  bool sizes_known() const { return now.size() && then.size(); }
  // The load rating the new tyre should have; nothing if not given.
  std::optional<Mass> asked_rating() const;
  // What is left of it at that speed: by the tyre now, or by the new one if the tyre now does not
  // reach that speed or is not known.
  std::optional<Mass> asked_at(Speed speed) const;
};

struct SizeChangeJudged {
  Findings findings{};
  struct Sizes {
    car::Wheel now;
    car::Wheel then;
    car::FitmentChange change;
    // With the new size, at the speed the dial shows: if the dial was true before, and if it read
    // as high as the rule allows.
    Speed true_if_true;
    Speed true_if_high;
  };
  std::optional<Sizes> sizes{};
  std::optional<patch::GreatestLoad> rating{};  // of the new tyre, if judged
  std::optional<GaugePressure> equal_pressure{};
};

SizeChangeJudged judge_size_change(const SizeChangeCase& change);
// The formulas behind the pressure for equal load; none if one is not known.
Sources laws_of_equal_load(const SizeChangeCase& change);

}  // namespace treadwater::judge
