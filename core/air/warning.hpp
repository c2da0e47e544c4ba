// The pressure at which the warning lamp comes on, and at which to stop whatever the lamp says.
//
// Sources, one for each rule, in warning.cpp: the US rule's quarter below the placard was read in
// the rule itself, its floors only elsewhere (light trucks: 35 psi for every load range is printed
// against 200 kPa remembered for C; the higher is kept). UN R141 read in a national summary. Range:
// cars and light vans with the system the rule asks for. Older cars warn later or not at all, and
// no lamp warns of a burst.
#pragma once

#include <iterator>
#include <string_view>

#include "core/quantity/quantity.hpp"
#include "core/standard/source.hpp"
#include "core/words/phrase.hpp"

namespace treadwater::air {

struct WarningRule {
  std::string_view id;
  Phrase title;
  double share;              // of the cold placard pressure; UN R141: of the warm pressure in use
  GaugePressure floor;       // the higher of the two counts
  Duration within;           // how long the lamp may take
  Speed from;                // the rule applies from this driving speed
  const Source* source;      // of the share and the time
  const Source* floor_from;  // of the floor
};

struct WarningRules {
  const WarningRule* first;
  const WarningRule* last;
  const WarningRule* begin() const { return first; }
  const WarningRule* end() const { return last; }
};

WarningRules warning_rules();
const WarningRule* find_warning_rule(std::string_view id);  // null where there is none

GaugePressure warning_pressure(const WarningRule& rule, GaugePressure set);

// Ours: two thirds of the pressure the car needs; and the 150 kPa below which no load is supported
// if the car needs more than 188 kPa, otherwise four fifths of what it needs.
GaugePressure do_not_drive_below(GaugePressure set);

const Source& do_not_drive_source();

}  // namespace treadwater::air
