// Measured onsets of aquaplaning from published tests: what every estimate here must respect.
//
// Pressures are not stated in any of them (cars: about 220 to 250 kPa), and tests differ in what
// they call the onset. If a source gives a single speed, low and high are the same.
#pragma once

#include <iterator>
#include <optional>
#include <string_view>

#include "core/quantity/quantity.hpp"
#include "core/standard/source.hpp"

namespace treadwater::water {

struct MeasuredOnset {
  std::string_view id;
  Length tread;
  Length film;
  Speed low;
  Speed high;
  std::optional<Length> section_width;  // if the source gives it
  std::string_view remark;
  Source source;
};

struct MeasuredOnsets {
  const MeasuredOnset* first;
  const MeasuredOnset* last;
  const MeasuredOnset* begin() const { return first; }
  const MeasuredOnset* end() const { return last; }
};

MeasuredOnsets measured_onsets();

// Further tests, and stops, between which the rise in thin water was shaped: what the estimate is
// checked against. If a source does not state its water, the depths are those that such tests use;
// if it does not state its tread, the one that its words mean. The remark says so.
//   onset       aquaplaned, straight and rolling: the maximum speed is no higher
//   afloat      said to aquaplane or to be about to, with its wheel locked, or in a bend: likewise
//   not_afloat  stopped on its tyres, or in touch with the road: the central value is no lower,
//               except in the two rows of `contradicts`
struct OnsetEvidence {
  enum class Says { onset, afloat, not_afloat };
  std::string_view id;
  Says says;
  Length tread;
  Length film;
  Length film_to;  // as film if one depth is stated
  Speed low;
  Speed high;
  std::optional<GaugePressure> pressure;
  std::optional<Length> section_width;
  bool contradicts;  // the central value is below what it shows
  std::string_view remark;
  Source source;
};

struct OnsetEvidences {
  const OnsetEvidence* first;
  const OnsetEvidence* last;
  const OnsetEvidence* begin() const { return first; }
  const OnsetEvidence* end() const { return last; }
};

OnsetEvidences further_onsets();

// How much water grooves of this depth clear, relative to a new 8 mm tread: a published test
// (205/55 R16, 9 mm of water, 80 km/h) found 1, 0.80 and 0.55 at 8, 3 and 1.6 mm. Straight lines
// between, 1 above 8 mm. Below 1.6 mm nothing was measured: a straight line to `bare`, the caller's
// own figure for no grooves. Never falls with depth.
double clearing(Length grooves, double bare);
inline constexpr double clearing_at_1_6_mm = 0.55;
const Source& clearing_source();

}  // namespace treadwater::water
