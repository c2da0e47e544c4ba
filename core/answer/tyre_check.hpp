// The sheet `tyre-check`: one tyre, its load, pressure, tread, the water and the road -> whether it
// is fit, how fast it may go before which limit bites, and what to do about it.
#pragma once

#include <optional>

#include "core/answer/sheet.hpp"
#include "core/answer/tyre_age.hpp"
#include "core/sidewall/sidewall.hpp"
#include "core/standard/tread_law.hpp"
#include "core/water/estimate.hpp"

namespace treadwater::answer {

const SheetDescription& tyre_check_sheet();
Answer tyre_check(const Input& input);
Sources tyre_check_sources();

// One tyre of many by the same rules: its problems, verdict, hold-to speed and cautions are those
// of its own sheet, and so are the low and the central speed of each limit. Figures, drawings, the
// high ends and the sentence to read out are left to that sheet.
struct TyreFinding {
  Answer answer;
  std::optional<sidewall::Reading> tyre;
  std::optional<Length> tread;
  const standard::TreadLaw* law = nullptr;
  std::optional<TyreAge> age;
};

// `water` is the depth and the road that the input gives; null where it gives no standing water.
TyreFinding find_tyre(const Input& input, const water::OnsetsInWater* water);

}  // namespace treadwater::answer
