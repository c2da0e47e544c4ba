// Tread rubber: how its grip compares with that of ordinary synthetic rubber, and how warm it needs
// to be.
//
// Ranges are relative to ordinary synthetic rubber, dry and wet. Print says only that
// high-hysteresis rubber brakes best in the wet; that natural rubber comes last there, that the
// differences are small in the dry, and the figures are from memory, those of stage and race rubber
// common practice. A rule of thumb agrees: a good high-grip synthetic in the wet comes close to
// natural rubber in the dry.
//
// Temperatures are those of the tread, common practice. Stage and race rubber must be warmed: it
// works after a lap or two, a soft race compound near 110 °C (230 °F).
#pragma once

#include <optional>
#include <string_view>

#include "core/quantity/quantity.hpp"
#include "core/standard/friction.hpp"
#include "core/standard/source.hpp"
#include "core/words/phrase.hpp"

namespace treadwater::grip {

struct ShareRange {
  double low;
  double high;
};

struct Rubber {
  std::string_view id;
  Phrase label;
  ShareRange dry;
  ShareRange wet;
  Temperature works_from;
  Temperature works_to;
  bool needs_heat;  // cold at the start: no credit until it is known to be warm
};

standard::Rows<Rubber> rubbers();
const Rubber* find_rubber(std::string_view id);  // null where there is none

enum class Heat { unknown, cold, working, too_hot };
Heat heat_of(const Rubber& rubber, std::optional<Temperature> tread);

// What to say about it; empty if nothing.
Phrase heat_caution(const Rubber& rubber, Heat heat);

// The share of its grip that rubber outside its window is sure to keep. Our choice, no source.
inline constexpr double share_outside_window = 0.8;

inline constexpr Source rubber_order_source{
    "grip-rubber", "R. A. Moyer, Highway Research Record 28; Tire Science and Technology 2(4)",
    "abstracts: butyl brakes best in the wet, SBR between, butadiene least", "1963",
    Standing::published};
inline constexpr Source rubber_range_source{"grip-rubber-range",
                                            "Grip of natural and high-hysteresis rubber, wet",
                                            "rough multipliers", "", Standing::memory};
inline constexpr Source rubber_heat_source{
    "grip-rubber-heat", "Stage and race rubber: ranges of grip, and temperatures to work at",
    "no source", "", Standing::common_practice};

}  // namespace treadwater::grip
