// The room `sidewall`: the text moulded on a tyre -> what it says, and what it leaves out.
//
// `read(text)` takes a line as a person copies it, in any order, case and spacing, and returns one
// Reading or one Trouble. It never guesses silently: assumptions are listed in `assumed`, what the
// text leaves out in `unsaid`, and if two meanings fit, `candidates` has both. Nothing is reported
// that is not in the text.
//
// Terms: ISO 4223-1 (tyre terms); patterns and examples are cited in families.cpp beside each row.
// Range: texts up to 400 bytes of UTF-8; longer ones are refused with a Trouble, not read in part.
// Errors: Trouble, by value. Nothing throws.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <tl/expected.hpp>
#include <vector>

#include "core/quantity/quantity.hpp"
#include "core/standard/speed_symbol.hpp"
#include "core/words/phrase.hpp"

namespace treadwater::sidewall {

enum class Family {
  metric_car,             // 205/55 R16 91V            UN R30, ISO 4000-1
  metric_no_series,       // 165 SR 13, 165 R 13
  p_metric,               // P205/75R15                The Tire and Rim Association
  lt_metric,              // LT235/85R16 120/116R
  flotation,              // 31x10.50 R15 LT
  commercial,             // 195/75 R16 C 107/105R     UN R54
  truck_inch,             // 8.25-20 10PR, 11 R 22.5 148/145L
  truck_metric,           // 315/80 R22.5 156/150L
  temporary_spare,        // T125/80 D15               UN R64
  special_trailer,        // ST225/70R15
  inch_cross_ply,         // 5.60-15
  us_alphanumeric,        // FR78-15
  millimetre_rim,         // 165HR400
  overall_diameter,       // 200/580 R15
  inch_overall_diameter,  // 9.2/20.0-13
  beaded_edge,            // 815x105, 30x3 1/2
  motorcycle_metric,      // 180/55 ZR 17 M/C (73W)
  motorcycle_inch,        // 3.00S18 4PR
  motorcycle_alpha,       // MT90B16 72H
};

enum class Construction { radial, cross_ply, bias_belted };

// `91V`, `104/102R`, `(94Y)`. The first index is for a single tyre, the second for twins.
struct ServiceDescription {
  int load_index = 0;
  std::optional<int> twin_load_index;
  standard::SpeedSymbol symbol{};
  bool above_symbol =
      false;  // in brackets on a ZR size: the tyre is rated for more than the symbol
};

// One stretch of the text with its meaning, for the picture of the sidewall. Byte offsets.
struct Part {
  std::size_t begin = 0;
  std::size_t end = 0;
  std::string_view id;  // a constant: "section_width", "aspect_ratio", "load_index", ...
  std::string meaning;  // plain words: "Section width 205 mm"
};

// Any other mark, with its plain meaning: "xl", "tubeless", "m_s", "date_code", ...
struct Mark {
  std::string_view id;  // a constant
  std::string value;    // as read: "2319", "AA", "E4"; empty if the mark says everything
  std::string meaning;
};

struct Reading {
  Family family = Family::metric_car;
  // One spelling per tyre; reading it gives the same Reading again, except for the parts, remarks
  // on spelling and words not understood.
  std::string canonical;

  std::optional<Length> section_width;   // nominal
  std::optional<double> aspect_percent;  // nominal aspect ratio, section height / width, per cent
  std::optional<Construction> construction;
  std::optional<Length> rim_diameter;           // code x 25.4 mm, or the millimetre number itself
  std::optional<Length> stated_outer_diameter;  // if the size itself gives it

  std::optional<ServiceDescription> service;
  std::optional<ServiceDescription> second_service;
  // SR, HR, VR, ZR inside the size: the symbol as written there.
  std::optional<standard::SpeedSymbol> size_symbol;

  bool run_flat = false;     // RF instead of R, ZRF: self-supporting
  bool extra_load = false;   // XL, EXTRA LOAD, REINFORCED, REINF, trailing RF
  bool high_load = false;    // HL before the size
  bool commercial = false;   // C after the rim
  bool camper = false;       // CP after the rim
  bool light_truck = false;  // LT before or after
  bool motorcycle = false;
  bool temporary_spare = false;
  std::optional<GaugePressure> marked_pressure;  // "475 kPa", "69 PSI" moulded beside the load
  std::optional<int> ply_rating;                 // 10PR, or from the load range letter
  std::string date_code;                         // digits as moulded, empty if not in the text

  std::vector<Mark> marks;
  std::vector<Part> parts;
  std::vector<std::string> unsaid;      // sentences: what the text does not say
  std::vector<std::string> assumed;     // sentences: what was assumed, and why
  std::vector<std::string> candidates;  // other canonical readings that fit the same text
};

struct Trouble {
  std::string code;  // "empty", "too_long", "not_a_size", "incomplete", "unknown_load_index", ...
  std::size_t position = 0;  // byte offset of the first thing that did not fit
  std::string text;          // a sentence: what was read, where it stopped, what to enter
  std::string nearest;       // the nearest size that can be read, or empty
};

tl::expected<Reading, Trouble> read(std::string_view text);

bool has_mark(const Reading& tyre, std::string_view id);

Phrase family_name(Family family);              // "metric car tyre"
Phrase construction_name(Construction family);  // "radial"

}  // namespace treadwater::sidewall
